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

impl Lane for i16 {
    const FAR: Self = 16_000;
    const MOST: i64 = 15_998;
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

impl Lane for i32 {
    const FAR: Self = 1_000_000_000;
    const MOST: i64 = 999_999_998;
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
