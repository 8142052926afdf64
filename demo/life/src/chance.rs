//! Chance that comes out the same every time: splitmix64 (Steele, Lea, Flood 2014, OOPSLA), from memory.

/// A stream of numbers from a seed.
pub struct Chance(u64);

impl Chance {
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// True so many times in a hundred.
    pub fn in_hundred(&mut self, times: u64) -> bool {
        self.next() % 100 < times
    }

    /// From `least` to `most`, both included.
    pub fn between(&mut self, least: u8, most: u8) -> u8 {
        least + u8::try_from(self.next() % u64::from(most - least + 1)).unwrap_or(0)
    }
}
