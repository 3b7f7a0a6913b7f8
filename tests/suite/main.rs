//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod export;
mod fit;
mod fronts;
mod hand_made;
mod handout;
mod json_schema;
mod own_plan;
mod own_way;
mod plan;
mod post;
mod random;
mod sample;
mod sample_pages;
mod schedule;
mod supplies;
mod tidy;
mod tidying;
mod words;
mod work;
