//! The numbers that tables of lengths are made of.

/// A number that lanes of a table are made of: narrow ones are faster.
pub(super) trait Lane: Copy + Ord {
    /// More than any sheet.
    const FAR: Self;
    /// The largest sheet, with room for one more.
    const MOST: i64;
    /// From a length; what is too long is [`Lane::FAR`].
    fn from_length(length: i64) -> Self;
    /// As a length.
    fn length(self) -> i64;
    /// Both together, at most [`Lane::FAR`] or something else beyond any sheet.
    fn plus(self, other: Self) -> Self;
    /// What is left if another is taken away, at least nothing.
    fn less(self, other: Self) -> Self;
}

impl Lane for u8 {
    const FAR: Self = Self::MAX;
    const MOST: i64 = 253;
    fn from_length(length: i64) -> Self {
        Self::try_from(length).unwrap_or(Self::FAR)
    }
    fn length(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self.saturating_add(other)
    }
    fn less(self, other: Self) -> Self {
        self.saturating_sub(other)
    }
}

/// Wider numbers never overflow: twice [`Lane::FAR`] has room.
macro_rules! wide_lane {
    ($number:ty, $far:expr) => {
        impl Lane for $number {
            const FAR: Self = $far;
            const MOST: i64 = $far - 2;
            fn from_length(length: i64) -> Self {
                Self::try_from(length).unwrap_or(Self::FAR).min(Self::FAR)
            }
            fn length(self) -> i64 {
                i64::from(self)
            }
            fn plus(self, other: Self) -> Self {
                self + other
            }
            fn less(self, other: Self) -> Self {
                (self - other).max(0)
            }
        }
    };
}

wide_lane!(i16, 16_000);
wide_lane!(i32, 1_000_000_000);

/// Walks along lanes `at` growing extents beside the lanes `theirs` of the other axis,
/// which fall: `meet` is told how many of `theirs` are beyond the extent of its lane.
pub(super) fn walk<T: Lane>(
    mine: &mut [T],
    at: &[i64],
    theirs: &[T],
    mut meet: impl FnMut(&mut T, usize),
) {
    let mut beyond = theirs.len();
    for (lane, &extent) in mine.iter_mut().zip(at) {
        while 0 < beyond && theirs[beyond - 1].length() <= extent {
            beyond -= 1;
        }
        meet(lane, beyond);
    }
}
