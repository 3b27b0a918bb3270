//! Inputs changed at random: the same seed gives the same changes.

/// Xorshift.
pub struct Chance(u64);

/// What a number is replaced by.
const NUMBERS: [&str; 9] = [
    "0",
    "-1",
    "1",
    "9223372036854775807",
    "-9223372036854775808",
    "4294967296",
    "1e308",
    "0.1",
    "99999999999999999999",
];

impl Chance {
    pub const fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1)
    }

    fn below(&mut self, bound: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % bound.max(1) as u64) as usize
    }

    /// Returns `input` with one to four changes, parts of `other` among them.
    pub fn changed(&mut self, input: &[u8], other: &[u8]) -> Vec<u8> {
        let mut bytes = input.to_vec();
        for _ in 0..=self.below(4) {
            self.change(&mut bytes, other);
        }
        bytes
    }

    fn change(&mut self, bytes: &mut Vec<u8>, other: &[u8]) {
        let from = self.below(bytes.len());
        let to = from + self.below(bytes.len().saturating_sub(from).min(200) + 1);
        match self.below(7) {
            0 if !bytes.is_empty() => bytes[from] ^= 1 << self.below(8),
            1 if !bytes.is_empty() => bytes[from] = [0, b' ', b'"', b'\n', b'9', b'<', 0xff][self.below(7)],
            2 => drop(bytes.drain(from..to)),
            3 => drop(bytes.splice(from..from, bytes[from..to].to_vec())),
            4 => {
                let start = self.below(other.len());
                let end = start + self.below(other.len().saturating_sub(start).min(400) + 1);
                bytes.splice(from..to, other[start..end].iter().copied());
            }
            5 => self.renumber(bytes, from),
            _ => bytes.truncate(to),
        }
    }

    /// Replaces the first number behind a place.
    fn renumber(&mut self, bytes: &mut Vec<u8>, from: usize) {
        let Some(start) = bytes[from..].iter().position(u8::is_ascii_digit).map(|place| from + place) else { return };
        let length = bytes[start..].iter().take_while(|byte| byte.is_ascii_digit()).count();
        let number = NUMBERS[self.below(NUMBERS.len())];
        bytes.splice(start..start + length, number.bytes());
    }
}
