//! The program; see `cli` for what it can do.

fn main() {}
