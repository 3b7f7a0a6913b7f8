//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod describe;
mod diagnostics;
mod export;
mod fit;
mod fronts;
mod hand_made;
mod handout;
mod json_schema;
mod layout;
mod own_plan;
mod own_way;
mod pdf;
mod plan;
mod post;
mod random;
mod readback;
mod sample;
mod sample_pages;
mod schedule;
mod supplies;
mod tidy;
mod tidying;
mod words;
mod work;
