//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod export;
mod fit;
mod fronts;
mod hand_made;
mod json_schema;
mod plan;
mod own_way;
mod post;
mod random;
mod schedule;
mod sample;
mod supplies;
mod tidy;
mod tidying;
mod work;
mod handout;
mod sample;
mod tidy;
mod words;
