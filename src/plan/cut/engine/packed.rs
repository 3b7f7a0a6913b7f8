//! Counts of all kinds packed into a few machine words.
//!
//! Each kind has a field with one bit more than its wanted count needs. Adding two
//! words adds all counts at once; adding what is missing up to the top of each
//! field then shows in the spare bits which counts are too many.

/// Some words of counts.
pub(super) trait Packed: Copy + Eq {
    /// So many words.
    const WORDS: usize;
    /// No parts at all.
    const EMPTY: Self;
    /// The words.
    fn words(&self) -> &[u64];
    /// The words, to be written.
    fn words_mut(&mut self) -> &mut [u64];
    /// The counts of both together.
    fn plus(self, other: Self) -> Self;
    /// Where the counts stand in a table of this size, a power of two.
    fn mark(self, size: usize) -> usize {
        let mut mark = 0_u64;
        for &word in self.words() {
            // Multiplying by an odd number near 2^64 / golden ratio spreads bits
            // (D. E. Knuth, The Art of Computer Programming 3, 6.4).
            mark = (mark.rotate_left(23) ^ word).wrapping_mul(0x9E37_79B9_7F4A_7C15);
        }
        let high = usize::try_from(mark >> 32).expect("32 bits are enough");
        high & (size - 1)
    }
}

impl<const N: usize> Packed for [u64; N] {
    const WORDS: usize = N;
    const EMPTY: Self = [0; N];

    fn words(&self) -> &[u64] {
        self
    }

    fn words_mut(&mut self) -> &mut [u64] {
        self
    }

    fn plus(self, other: Self) -> Self {
        let mut sum = self;
        for (a, b) in sum.iter_mut().zip(other) {
            *a += b;
        }
        sum
    }
}

/// Where each kind's count stands.
#[derive(Clone, Debug)]
pub(super) struct Places<P> {
    /// Word, first bit and number of bits of each kind.
    fields: Vec<(usize, u32, u32)>,
    /// What is missing from the wanted counts up to the spare bits.
    missing: P,
    /// The spare bits.
    spare: P,
    /// All that is wanted.
    all: P,
}

impl<P: Packed> Places<P> {
    /// Finds room for the wanted counts, if there are words enough.
    pub(super) fn new(wanted: &[u32]) -> Option<Self> {
        let mut places = Self {
            fields: Vec::new(),
            missing: P::EMPTY,
            spare: P::EMPTY,
            all: P::EMPTY,
        };
        let (mut word, mut bit) = (0, 0);
        for &count in wanted {
            let bits = 32 - count.leading_zeros() + 1;
            if 64 < bit + bits {
                (word, bit) = (word + 1, 0);
            }
            if P::WORDS <= word {
                return None;
            }
            places.fields.push((word, bit, bits));
            let top = 1_u64 << (bits - 1);
            places.missing.words_mut()[word] |= (top - 1 - u64::from(count)) << bit;
            places.spare.words_mut()[word] |= top << bit;
            places.all.words_mut()[word] |= u64::from(count) << bit;
            bit += bits;
        }
        Some(places)
    }

    /// One part of a kind.
    pub(super) fn one(&self, kind: usize) -> P {
        let (word, bit, _) = self.fields[kind];
        let mut packed = P::EMPTY;
        packed.words_mut()[word] = 1 << bit;
        packed
    }

    /// Whether two counts together are no more than wanted.
    pub(super) fn within(&self, a: P, b: P) -> bool {
        let sum = a.plus(b).plus(self.missing);
        let over = sum.words().iter().zip(self.spare.words()).map(|(a, b)| a & b);
        over.fold(0, |any, it| any | it) == 0
    }

    /// What is wanted besides these counts, which are no more than wanted.
    pub(super) fn missing_to_all(&self, counts: P) -> P {
        let mut rest = self.all;
        for (rest, &count) in rest.words_mut().iter_mut().zip(counts.words()) {
            *rest -= count;
        }
        rest
    }

    /// The counts by kind.
    pub(super) fn read(&self, packed: P) -> Vec<u32> {
        self.fields
            .iter()
            .map(|&(word, bit, bits)| {
                let field = (packed.words()[word] >> bit) & ((1 << bits) - 1);
                u32::try_from(field).expect("counts are at most 32 bits")
            })
            .collect()
    }
}
