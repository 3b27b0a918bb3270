//! Xorshift: the same accidents in every run.

/// Source: G. Marsaglia, Xorshift RNGs, Journal of Statistical Software 8(14), 2003: the triple 13, 7, 17.
#[derive(Clone, Debug)]
pub struct Chance(u64);

impl Chance {
    /// Returns a source that begins at `seed`; zero would only give zeros.
    pub fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1)
    }

    /// Returns a number from 0 to `bound` − 1.
    pub fn below(&mut self, bound: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) % bound.max(1)
    }

    /// Returns true in `per_cent` of 100 cases.
    pub fn happens(&mut self, per_cent: u64) -> bool {
        self.below(100) < per_cent
    }
}
