//! Why a kept plan can't be followed, and how that is said.

use crate::geom::{Length, Size, Unit};
use crate::plan::cut::kept::VERSION;

/// Why a kept plan can't be followed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeptFault {
    /// It is not JSON of this form; what the reader says.
    NotReadable(String),
    /// It was written by a later version.
    OtherVersion(u64),
    /// The paper is not in it.
    NoSuchPaper(String),
    /// A word among the cuts means nothing.
    UnknownCut(String),
    /// Cuts are missing or left over, or a number is out of all proportion.
    OutOfForm(String),
    /// The description has a part that the plan has not, or the other way round.
    OtherParts(String),
    /// A part has another size now: its name, the size in the plan, and now.
    OtherSize(String, Size, Size),
    /// Another number is needed now: the part, the number in the plan, and now.
    OtherCount(String, u64, u64),
    /// No sheet of that size is described.
    OtherSheet(Size),
    /// A part does not come out in its size: the part, what comes out, what it is.
    DoesNotComeOut(String, Size, Size),
    /// A part would lie on its side.
    Turned(String),
    /// More sheets are taken than are at hand: the size, the number in the plan,
    /// and at hand.
    MoreSheets(Size, u32, u32),
    /// A cut is longer than the trimmer makes: the cut, and the longest one.
    CutTooLong(Length, Length),
    /// A part would not lie next to its neighbour, or at its place on the sheet.
    OutOfPlace(String),
    /// Sheets are to be cut alike; the plan cuts them in so many ways.
    NotAlike(usize),
}

impl KeptFault {
    /// The fault as a lower-case phrase, lengths in a unit.
    pub fn message(&self, unit: Unit) -> String {
        let size = |it: &Size| it.show(unit);
        match self {
            Self::NotReadable(why) => format!("the kept plan can't be read: {why}"),
            Self::OtherVersion(version) => {
                format!(
                    "the kept plan is of version {version}; this program reads {VERSION}"
                )
            }
            Self::NoSuchPaper(paper) => format!("the kept plan has no paper `{paper}`"),
            Self::UnknownCut(cut) => format!("the kept plan has a cut `{cut}`"),
            Self::OutOfForm(what) => format!("the kept plan is damaged: {what}"),
            Self::OtherParts(part) => {
                format!("`{part}` is only in one of the kept plan and the description")
            }
            Self::OtherSize(part, kept, now) => format!(
                "`{part}` is {} in the kept plan and {} in the description",
                size(kept),
                size(now)
            ),
            Self::OtherCount(part, kept, now) => {
                format!("the kept plan makes {kept} of `{part}`; {now} are needed")
            }
            Self::OtherSheet(sheet) => {
                format!(
                    "the kept plan is for sheets of {}, which are not described",
                    size(sheet)
                )
            }
            Self::DoesNotComeOut(part, comes, wanted) => format!(
                "the kept plan cuts `{part}` {}, but it is {}",
                size(comes),
                size(wanted)
            ),
            Self::Turned(part) => {
                format!("the kept plan lays `{part}` on its side, against its pattern")
            }
            Self::MoreSheets(sheet, kept, now) => format!(
                "the kept plan takes {kept} sheets of {}; {now} are at hand",
                size(sheet)
            ),
            Self::CutTooLong(cut, longest) => format!(
                "the kept plan has a cut of {}; the trimmer's longest is {}",
                cut.show(unit),
                longest.show(unit)
            ),
            Self::OutOfPlace(part) => {
                format!("the kept plan does not cut `{part}` where it is to lie")
            }
            Self::NotAlike(ways) => {
                format!(
                    "the kept plan cuts sheets in {ways} ways, and they are to be alike"
                )
            }
        }
    }
}
