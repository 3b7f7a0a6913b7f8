//! One test binary, by capability, in reading order.

mod sample;
mod tidy;
