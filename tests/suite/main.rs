//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod export;
mod fit;
mod fronts;
mod hand_made;
mod handout;
mod orchard;
mod random;
mod schedule;
mod tidy;
mod words;
