//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod drawn;
mod fronts;
mod hand_made;
mod kept;
mod own_way;
mod random;
mod schedule;
mod tidy;
mod tidying;
