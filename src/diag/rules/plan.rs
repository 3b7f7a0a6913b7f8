//! Rules of the plan: what is only known once cutting and placing are computed.
//!
//! Their fixtures stand with the tests of the plan, since reading alone doesn't
//! find them.

use crate::diag::Rule;

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[];
