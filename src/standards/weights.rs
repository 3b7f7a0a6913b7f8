//! Weights of paper: what pounds mean, by grade.

/// A grade of paper with its basis size.
///
/// The basis weight of a paper is the mass in pounds of 500 sheets of the basis
/// size of its grade (US Government Paper Specification Standards, Vol. 11).
#[derive(Debug, PartialEq, Eq)]
pub struct Grade {
    /// The word after the pounds.
    pub name: &'static str,
    /// Other words for it.
    pub also: &'static [&'static str],
    /// The area of the basis size in quarters of a square inch.
    quarters: i128,
}

/// Every grade.
pub static GRADES: &[Grade] = &[
    Grade { name: "bond", also: &["writing", "ledger"], quarters: 4 * 17 * 22 },
    Grade { name: "bristol", also: &[], quarters: 45 * 57 },
    Grade { name: "cover", also: &[], quarters: 4 * 20 * 26 },
    Grade { name: "index", also: &[], quarters: 51 * 61 },
    Grade { name: "tag", also: &["newsprint"], quarters: 4 * 24 * 36 },
    Grade { name: "text", also: &["book", "offset"], quarters: 4 * 25 * 38 },
];

/// Hundredths of a gram per square metre from hundredths of a pound, rounded to
/// the nearest; `None` beyond any paper.
///
/// A pound is 453.59237 g and an inch 25.4 mm, both exactly.
pub fn grams_of_pounds(hundredths: u32, grade: &Grade) -> Option<u32> {
    // 453.59237 g over 500 sheets of one quarter of a square inch:
    // 453.59237 / (500 x 0.25 x 0.00064516 m2) = 45 359 237 000 / 8 064 500.
    let over = i128::from(hundredths) * 45_359_237_000;
    let under = 8_064_500 * grade.quarters;
    u32::try_from((2 * over + under) / (2 * under)).ok()
}
