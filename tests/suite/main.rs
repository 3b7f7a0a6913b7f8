//! One test binary, by capability, in reading order.

mod random;
mod schedule;
mod tidy;
mod tidying;
