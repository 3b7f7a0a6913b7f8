//! One test binary, by capability, in reading order.

mod cutting;
mod cutting_cross;
mod describe;
mod diagnostics;
mod export;
mod fit;
mod fronts;
mod hand_made;
mod json_schema;
mod own_way;
mod plan;
mod post;
mod random;
mod schedule;
mod supplies;
mod tidy;
mod tidying;
mod work;
