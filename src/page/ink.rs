//! Colours, and how well they can be told apart.

use crate::raster;

/// A colour in sRGB.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Ink(pub [u8; 3]);

impl Ink {
    /// Text and outlines: nearly black, softer than full black.
    pub const TEXT: Self = Self([0x1c, 0x1b, 0x1a]);
    /// The one accent; prints as a clear mid-grey.
    pub const ACCENT: Self = Self([0x1b, 0x6e, 0x78]);
    /// Lesser text: the foot, captions.
    pub const QUIET: Self = Self([0x52, 0x50, 0x4d]);
    /// Thin rules between things.
    pub const RULE: Self = Self([0x8d, 0x8a, 0x85]);
    /// Bare paper.
    pub const PAPER: Self = Self([0xff, 0xff, 0xff]);

    /// Relative luminance (WCAG 2.2), from 0 to 1.
    pub fn luminance(self) -> f64 {
        raster::luminance(self.0)
    }

    /// Contrast ratio with another colour (WCAG 2.2), from 1 to 21.
    pub fn contrast(self, other: Self) -> f64 {
        raster::contrast(self.0, other.0)
    }

    /// The grey of the same luminance.
    pub fn gray(self) -> Self {
        let linear = self.luminance();
        let part = if linear <= 0.003_130_8 {
            12.92 * linear
        } else {
            1.055 * linear.powf(1.0 / 2.4) - 0.055
        };
        Self([level(part * 255.0); 3])
    }

    /// A step of the way from this colour to white; 0 stays, 1 is white.
    pub fn lighter(self, step: f64) -> Self {
        Self(self.0.map(|it| level(f64::from(it) + (255.0 - f64::from(it)) * step)))
    }

    /// The least step to white at which text on it has a contrast of 7 : 1.
    pub fn tint(self) -> Self {
        // Twenty steps of a twentieth: far finer than the eye.
        let steps = (0..=20).map(|it| self.lighter(f64::from(it) / 20.0));
        steps.into_iter().find(|it| it.contrast(Self::TEXT) >= 7.5).unwrap_or(Self::PAPER)
    }
}

/// Rounds to a level that a byte can hold.
fn level(value: f64) -> u8 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "clamped"
    )]
    let level = value.round().clamp(0.0, 255.0) as u8;
    level
}
