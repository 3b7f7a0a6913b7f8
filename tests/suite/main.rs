//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod tidy;
