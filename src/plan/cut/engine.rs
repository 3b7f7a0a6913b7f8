//! stub
/// What is known about the fewest sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bound {
    /// No plan can do with fewer sheets than this.
    pub sheets: u32,
    /// By which argument.
    pub how: How,
}

/// By which argument a number of sheets is known to be needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// The pieces together have more area than fewer sheets.
    Area,
    /// Large pieces that can't share a sheet.
    Pairs,
    /// Every way to cut was searched.
    Search,
    /// A weighting of the pieces (linear programming bound).
    Weights,
}
