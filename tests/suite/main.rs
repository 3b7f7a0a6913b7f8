//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod cutting_known;
mod naive;
mod tidy;
