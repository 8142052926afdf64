//! Prints random series with ties and gaps, and the slopes that the measure gives for them, for an outside
//! check to compute again: one JSON list. The series are the same every time.

use std::io::Write;

use sendaluna_core::measure::theil_sen;
use serde_json::{Value, json};

/// Series.
const SERIES: usize = 1000;

/// Numbers without a pattern that matters here: Knuth's 64-bit linear congruential generator.
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, most: u32) -> u32 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        u32::try_from((self.0 >> 33) % u64::from(most)).unwrap_or(0)
    }

    /// Days with gaps and days that come twice, in weeks; levels from 0 to 10, so with many ties.
    fn series(&mut self) -> Vec<(f64, f64)> {
        let points = 2 + self.below(60);
        let mut day = 0;
        let mut series = Vec::new();
        for _ in 0..points {
            day += self.below(4);
            series.push((f64::from(day) / 7.0, f64::from(self.below(11))));
        }
        series
    }
}

fn entry(numbers: &mut Numbers) -> Value {
    let points = numbers.series();
    let trend = theil_sen(&points);
    json!({ "points": points, "trend": trend })
}

fn main() {
    let mut numbers = Numbers(20_260_309);
    let all: Vec<Value> = (0..SERIES).map(|_| entry(&mut numbers)).collect();
    let _ = writeln!(std::io::stdout(), "{}", Value::from(all));
}
