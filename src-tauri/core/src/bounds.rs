//! The one table of bounds: what a number in a plan may be. The parser, the clinic's form, the
//! JSON Schema and the documentation all read this table.
//!
//! The figures are guards against slips of the pen, not advice: common practice, no source.

/// The bounds of one named number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bound {
    /// The field's name, with its unit.
    pub name: &'static str,
    /// The unit, as written in tables.
    pub unit: &'static str,
    /// The least value allowed.
    pub least: f64,
    /// The greatest value allowed.
    pub most: f64,
    /// What the number is, in a few words.
    pub phrase: &'static str,
}

impl Bound {
    /// Whether a value lies within, ends included. Not-a-number never does.
    pub fn holds(&self, value: f64) -> bool {
        (self.least..=self.most).contains(&value)
    }
}

const fn bound(name: &'static str, unit: &'static str, least: f64, most: f64, phrase: &'static str) -> Bound {
    Bound { name, unit, least, most, phrase }
}

/// Year of birth.
pub const BORN: Bound = bound("born", "year", 1900.0, 2100.0, "year of birth");
/// Stature.
pub const HEIGHT_CM: Bound = bound("height_cm", "cm", 100.0, 220.0, "stature");
/// Body mass.
pub const MASS_KG: Bound = bound("mass_kg", "kg", 25.0, 250.0, "body mass");
/// Revision of a plan.
pub const REVISION: Bound = bound("revision", "", 1.0, 9_999.0, "revision of the plan");
/// Number of a signers list.
pub const NUMBER: Bound = bound("number", "", 1.0, 9_999.0, "number of the signers list");
/// Week of an episode.
pub const WEEK: Bound = bound("week", "weeks", 1.0, 260.0, "week after day 0");
/// Length of a plan.
pub const PLAN_DAYS: Bound = bound("plan_days", "days", 1.0, 1_830.0, "days from first to last day");
/// Sets.
pub const SETS: Bound = bound("sets", "", 1.0, 20.0, "sets");
/// Repetitions.
pub const REPETITIONS: Bound = bound("repetitions", "", 1.0, 200.0, "repetitions in a set");
/// Breaths.
pub const BREATHS: Bound = bound("breaths", "", 1.0, 60.0, "breaths in a set");
/// Minutes.
pub const MINUTES: Bound = bound("minutes", "min", 1.0, 120.0, "minutes in a set");
/// Steps.
pub const STEPS: Bound = bound("steps", "", 1.0, 2_000.0, "steps in a set");
/// Time to move out.
pub const OUT_S: Bound = bound("out_s", "s", 1.0, 30.0, "time to move out");
/// Time to hold.
pub const HOLD_S: Bound = bound("hold_s", "s", 0.0, 300.0, "time to hold");
/// Time to move back.
pub const BACK_S: Bound = bound("back_s", "s", 1.0, 30.0, "time to move back");
/// Pause between repetitions.
pub const PAUSE_S: Bound = bound("pause_s", "s", 0.0, 60.0, "pause before the next repetition");
/// Rest between sets.
pub const REST_S: Bound = bound("rest_s", "s", 0.0, 600.0, "rest between sets");
/// Outside load.
pub const LOAD_KG: Bound = bound("load_kg", "kg", 0.1, 50.0, "outside load");
/// Times a day.
pub const TIMES: Bound = bound("times", "", 1.0, 24.0, "times a day");
/// Least time between.
pub const LEAST_HOURS: Bound = bound("least_hours_between", "h", 0.0, 12.0, "least hours between two times");
/// Every n waking hours.
pub const HOURS: Bound = bound("hours", "h", 1.0, 12.0, "hours from one time to the next");
/// Days a week.
pub const DAYS_A_WEEK: Bound = bound("days", "days", 1.0, 4.0, "days a week, none in a row");
/// Daily most.
pub const DAILY_MOST: Bound = bound("daily_most", "", 1.0, 24.0, "most times a day");
/// Rounds.
pub const ROUNDS: Bound = bound("rounds", "", 1.0, 10.0, "rounds of several exercises");
/// Ramp interval.
pub const EVERY_DAYS: Bound = bound("every_days", "days", 1.0, 90.0, "days from one step to the next");
/// Pain.
pub const PAIN: Bound = bound("pain", "0-10", 0.0, 10.0, "pain, 0 none to 10 worst you can imagine");
/// Effort.
pub const EFFORT: Bound = bound("effort", "0-10", 0.0, 10.0, "effort, 0 at rest to 10 all you have");
/// Settling time.
pub const SETTLE_MINUTES: Bound =
    bound("settle_minutes", "min", 0.0, 1_440.0, "time in which pain should settle");
/// Days without a session.
pub const AFTER_DAYS: Bound = bound("after_days", "days", 1.0, 60.0, "days without a session");
/// Sessions.
pub const SESSIONS: Bound = bound("sessions", "", 1.0, 60.0, "sessions in a row");
/// A joint angle.
pub const DEG: Bound = bound("deg", "°", -180.0, 180.0, "joint angle");
/// A static joint moment per body mass.
pub const MOMENT: Bound =
    bound("nm_per_kg", "N·m/kg", 0.0, 5.0, "static joint moment per kilogram of body mass");
/// Weight on a leg, per cent of body weight.
pub const WEIGHT_PERCENT: Bound = bound("most_percent", "% of body weight", 0.0, 100.0, "weight on the leg");
/// Weight on a leg, in kilograms.
pub const WEIGHT_KG: Bound = bound("most_kg", "kg", 0.0, 250.0, "weight on the leg");
/// A lifted load.
pub const LIFT_KG: Bound = bound("lift_most_kg", "kg", 0.0, 100.0, "load that may be lifted");
/// Length of a text.
pub const TEXT_CHARS: Bound = bound("text", "characters", 1.0, 1_000.0, "length of a text");
/// Things in a list.
pub const LIST: Bound = bound("list", "", 0.0, 200.0, "entries in one list");

/// Every bound, in the order of the documentation.
pub const ALL: &[Bound] = &[
    BORN,
    HEIGHT_CM,
    MASS_KG,
    REVISION,
    NUMBER,
    WEEK,
    PLAN_DAYS,
    SETS,
    REPETITIONS,
    BREATHS,
    MINUTES,
    STEPS,
    OUT_S,
    HOLD_S,
    BACK_S,
    PAUSE_S,
    REST_S,
    LOAD_KG,
    TIMES,
    LEAST_HOURS,
    HOURS,
    DAYS_A_WEEK,
    DAILY_MOST,
    ROUNDS,
    EVERY_DAYS,
    PAIN,
    EFFORT,
    SETTLE_MINUTES,
    AFTER_DAYS,
    SESSIONS,
    DEG,
    MOMENT,
    WEIGHT_PERCENT,
    WEIGHT_KG,
    LIFT_KG,
    TEXT_CHARS,
    LIST,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_unique_and_ranges_are_not_empty() {
        for (i, bound) in ALL.iter().enumerate() {
            assert!(bound.least < bound.most, "{}", bound.name);
            assert!(!ALL[..i].iter().any(|other| other.name == bound.name), "{}", bound.name);
            assert!(bound.holds(bound.least) && bound.holds(bound.most) && !bound.holds(f64::NAN));
        }
    }
}
