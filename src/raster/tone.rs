//! How light a colour is, and how well two can be told apart (WCAG 2.2).

/// Relative luminance of a colour in sRGB, from 0 to 1 (WCAG 2.2, "relative
/// luminance").
pub fn luminance(color: [u8; 3]) -> f64 {
    let [red, green, blue] = color.map(linear);
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/// Contrast ratio of two colours, from 1 to 21 (WCAG 2.2, "contrast ratio").
pub fn contrast(one: [u8; 3], other: [u8; 3]) -> f64 {
    let (one, two) = (luminance(one) + 0.05, luminance(other) + 0.05);
    one.max(two) / one.min(two)
}

/// A level of sRGB as a part of the light.
pub(super) fn linear(level: u8) -> f64 {
    let part = f64::from(level) / 255.0;
    if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
}

/// A part of the light as a level of sRGB.
pub(super) fn level(linear: f64) -> u8 {
    let part = if linear <= 0.003_130_8 {
        12.92 * linear
    } else {
        1.055 * linear.powf(1.0 / 2.4) - 0.055
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "clamped"
    )]
    let level = (part * 255.0).round().clamp(0.0, 255.0) as u8;
    level
}

/// Turns red, green and blue into greys of the same luminance, many at a time.
pub(super) struct Greys {
    /// What each level of each colour gives, in 1/65536 of the light.
    parts: [[u32; 256]; 3],
    /// The level of each 1/4096 of the light.
    levels: Vec<u8>,
}

impl Greys {
    pub(super) fn new() -> Self {
        let parts = [0.2126, 0.7152, 0.0722].map(|share| {
            std::array::from_fn(|at| {
                let light = linear(u8::try_from(at).unwrap_or(u8::MAX)) * share;
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "between 0 and 65536"
                )]
                let light = (light * 65536.0).round() as u32;
                light
            })
        });
        let levels = (0..=4096_u32).map(|at| level(f64::from(at) / 4096.0)).collect();
        Self { parts, levels }
    }

    /// The grey of a colour.
    pub(super) fn of(&self, [red, green, blue]: [u8; 3]) -> u8 {
        let light = self.parts[0][usize::from(red)]
            + self.parts[1][usize::from(green)]
            + self.parts[2][usize::from(blue)];
        let at = (light + 8) / 16;
        self.levels[(at as usize).min(self.levels.len() - 1)]
    }
}

#[cfg(test)]
mod tests {
    use super::{Greys, contrast};

    #[test]
    fn greys_of_whole_pictures_are_those_of_single_colours() {
        let greys = Greys::new();
        for color in [[0, 0, 0], [255; 3], [255, 0, 0], [0, 128, 255], [122, 154, 107]] {
            let exact = super::level(super::luminance(color));
            assert!(greys.of(color).abs_diff(exact) <= 1, "{color:?}");
        }
    }

    #[test]
    fn contrast_is_that_of_the_standard() {
        // WCAG 2.2: black on white is 21 : 1. #767676 is commonly given as the
        // lightest grey that keeps 4.5 : 1 on white (from memory).
        assert!((contrast([0; 3], [255; 3]) - 21.0).abs() < 1e-9);
        assert!(contrast([0x76; 3], [255; 3]) >= 4.5);
        assert!(contrast([0x77; 3], [255; 3]) < 4.5);
    }
}
