//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod fronts;
mod hand_made;
mod random;
mod schedule;
mod handout;
mod sample;
mod tidy;
mod words;
