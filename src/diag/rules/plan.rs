//! Rules of the plan: what is only known once cutting and placing are computed.

use crate::diag::Rule;

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[];
