//! Points of the printed page, and the scale that leads to them.

use crate::geom::Length;

/// A length on the printed page in points of 1/72 in (PDF 32000-2, 8.3.2.3).
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Pt(pub f64);

impl Pt {
    /// A length at its true size.
    pub fn true_size(length: Length) -> Self {
        Scale::FULL.on_page(length)
    }
}

/// How large a thing is drawn: `drawn : real`, as in 1:2 (ISO 5455).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scale {
    /// Units on the page.
    pub drawn: u32,
    /// Units in reality.
    pub real: u32,
}

impl Scale {
    /// True size.
    pub const FULL: Self = Self { drawn: 1, real: 1 };

    /// The scales that ISO 5455 recommends, largest first, from true size down.
    pub const RECOMMENDED: [Self; 5] = [
        Self::FULL,
        Self { drawn: 1, real: 2 },
        Self { drawn: 1, real: 5 },
        Self { drawn: 1, real: 10 },
        Self { drawn: 1, real: 20 },
    ];

    /// How long a length is on the page. The only bridge from paper to page.
    pub fn on_page(self, length: Length) -> Pt {
        // 1 pt is 5080 units, exactly.
        let real = length.units() as f64 / 5080.0;
        Pt(real * f64::from(self.drawn) / f64::from(self.real))
    }
}
