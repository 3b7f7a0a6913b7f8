//! Every smaller kit: vectors of counts, numbered in a mixed base.

/// All vectors `0 <= count <= wanted`, numbered from none to all.
///
/// A vector's number is the sum of its counts times the weight of their place,
/// so that numbers of disjoint kits add up to the number of the joint kit, and a
/// part of a kit has a smaller number than the kit.
#[derive(Clone, Debug)]
pub(super) struct Counts {
    wanted: Vec<u32>,
    weights: Vec<usize>,
    len: usize,
}

impl Counts {
    /// Numbers the vectors, if there are at most `limit`.
    pub(super) fn new(wanted: &[u32], limit: usize) -> Option<Self> {
        let mut len = 1_usize;
        let mut weights = Vec::with_capacity(wanted.len());
        for &count in wanted {
            weights.push(len);
            let choices = usize::try_from(count).ok()?.checked_add(1)?;
            len = len.checked_mul(choices).filter(|&it| it <= limit)?;
        }
        Some(Self { wanted: wanted.to_vec(), weights, len })
    }

    /// How many vectors there are.
    pub(super) fn len(&self) -> usize {
        self.len
    }

    /// The number of the whole kit.
    pub(super) fn all(&self) -> usize {
        self.len - 1
    }

    /// What one more of a kind adds to a number.
    pub(super) fn weights(&self) -> &[usize] {
        &self.weights
    }

    /// How many of each kind the vector with a number holds.
    pub(super) fn vector(&self, number: usize) -> Vec<u32> {
        let mut vector = vec![0; self.wanted.len()];
        self.read(number, &mut vector);
        vector
    }

    /// Writes the vector with a number into `vector`.
    pub(super) fn read(&self, number: usize, vector: &mut [u32]) {
        let mut left = number;
        for (count, &weight) in vector.iter_mut().zip(&self.weights).rev() {
            *count =
                u32::try_from(left / weight).expect("a count is at most what is wanted");
            left %= weight;
        }
    }

    /// The next vector in the order of numbers.
    pub(super) fn step(&self, vector: &mut [u32]) {
        for (count, &wanted) in vector.iter_mut().zip(&self.wanted) {
            if *count < wanted {
                *count += 1;
                return;
            }
            *count = 0;
        }
    }

    /// How many ways there are to divide a kit in two, both orders counted:
    /// the steps that looking at all of them takes.
    pub(super) fn splits(vector: &[u32]) -> u64 {
        vector
            .iter()
            .fold(1, |product: u64, &it| product.saturating_mul(u64::from(it) + 1))
    }
}

/// Walks through all parts of a kit in the order of their numbers.
pub(super) struct Parts<'a> {
    of: &'a [u32],
    weights: &'a [usize],
    part: Vec<u32>,
    number: usize,
}

impl<'a> Parts<'a> {
    /// Starts before the smallest part that is not empty.
    pub(super) fn new(counts: &'a Counts, of: &'a [u32]) -> Self {
        Self { of, weights: &counts.weights, part: vec![0; of.len()], number: 0 }
    }
}

impl Iterator for Parts<'_> {
    type Item = usize;

    /// The number of the next part; the last is the kit itself.
    fn next(&mut self) -> Option<usize> {
        for ((count, &most), &weight) in
            self.part.iter_mut().zip(self.of).zip(self.weights)
        {
            if *count < most {
                *count += 1;
                self.number += weight;
                return Some(self.number);
            }
            self.number -= usize::try_from(*count).expect("counts are small") * weight;
            *count = 0;
        }
        None
    }
}
