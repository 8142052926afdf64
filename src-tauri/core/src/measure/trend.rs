//! A slope that one bad day does not bend: Theil (1950), Sen (1968).

use serde::Serialize;

/// The normal distribution's 97.5th percentile, for an interval of 95 %: 1.959963984540054.
const Z: f64 = 1.959_963_984_540_054;

/// A slope, with its interval.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Trend {
    /// The median slope.
    pub slope: f64,
    /// The lower end of its 95 % interval.
    pub low: f64,
    /// The upper end.
    pub high: f64,
    /// How many points it stands on.
    pub points: usize,
}

/// The Theil-Sen slope of points (x, y), and its 95 % interval after Sen (1968), equation 2.6, ties
/// in x and in y included. `None` without two points that differ in x, or where ties leave no interval.
pub fn theil_sen(points: &[(f64, f64)]) -> Option<Trend> {
    let mut slopes = slopes(points);
    let last = slopes.len().checked_sub(1)?;
    let spread = sen_variance(points).max(0.0).sqrt();
    #[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
    let count = slopes.len() as f64;
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to the list")]
    let at = |index: f64| (index.max(0.0) as usize).min(last);
    let upper = at(f64::midpoint(count, Z * spread).round_ties_even());
    let lower = at(f64::midpoint(count, -Z * spread).round_ties_even() - 1.0);
    // Three places of millions: to sort them all would take ten times as long.
    let mut place = |at: usize| *slopes.select_nth_unstable_by(at, f64::total_cmp).1;
    let (low, high) = (place(lower), place(upper));
    let slope =
        if last % 2 == 0 { place(last / 2) } else { f64::midpoint(place(last / 2), place(last / 2 + 1)) };
    Some(Trend { slope, low, high, points: points.len() })
}

/// The middle of sorted values; between the two middle ones of an even number.
pub fn median(sorted: &[f64]) -> Option<f64> {
    let half = sorted.len() / 2;
    match sorted.len() {
        0 => None,
        odd if odd % 2 == 1 => Some(sorted[half]),
        _ => Some(f64::midpoint(sorted[half - 1], sorted[half])),
    }
}

fn slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let pairs = points.iter().flat_map(|a| points.iter().map(move |b| (a, b)));
    pairs.filter(|(a, b)| a.0 > b.0).map(|(a, b)| (a.1 - b.1) / (a.0 - b.0)).collect()
}

fn sen_variance(points: &[(f64, f64)]) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
    let n = points.len() as f64;
    let of = |k: f64| k * (k - 1.0) * (2.0 * k + 5.0);
    let ties = |values: Vec<f64>| repeats(values).into_iter().map(of).sum::<f64>();
    let (x, y) = points.iter().copied().unzip();
    (of(n) - ties(x) - ties(y)) / 18.0
}

/// How often each value comes that comes more than once.
fn repeats(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_by(f64::total_cmp);
    let runs = values.chunk_by(|a, b| a.total_cmp(b).is_eq());
    #[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
    let lengths = runs.map(|run| run.len() as f64);
    lengths.filter(|length| *length > 1.0).collect()
}
