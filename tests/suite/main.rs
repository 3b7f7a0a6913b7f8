//! One test binary, by capability, in reading order.

mod describe;
mod diagnostics;
mod keys;
mod tidy;
