//! Problems found in a document, each with its place. All are reported at once.

use crate::bounds::{self, Bound};
use crate::facts::{Joint, Motion};
use crate::text::has_hidden_characters;

/// One problem: a stable code, where it is, and what fills its message (`problem-<code>`).
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// The stable code, in kebab case.
    pub code: &'static str,
    /// Where, as a path such as `items[2].dose.sets`.
    pub place: String,
    /// Names and values for the message.
    pub args: Vec<(&'static str, String)>,
}

/// Collects problems while a document is walked; knows where the walk stands.
#[derive(Debug, Default)]
pub struct Problems {
    found: Vec<Problem>,
    place: Vec<String>,
}

impl Problems {
    /// Every code that a [`Problem`] can carry.
    pub const CODES: &'static [&'static str] = &[
        "missing",
        "out-of-bounds",
        "too-long",
        "empty-text",
        "hidden-characters",
        "language-missing",
        "repeated-id",
        "unknown-id",
        "weeks-reversed",
        "dates-reversed",
        "one-amount",
        "tempo-missing",
        "pain-order",
        "counts-reversed",
        "no-warning-signs",
        "no-emergency-sign",
        "no-conditions",
        "one-most",
        "none-and-some",
        "joint-motion",
        "not-a-key",
        "no-rights",
        "repeated-day",
        "zone-unknown",
        "episode-differs",
        "person-differs",
        "statement-none",
        "other-format",
        "precaution-changed",
        "not-restated",
        "unknown-family",
        "not-a-number",
    ];

    /// Walks one step into a field.
    pub fn within<T>(&mut self, place: impl Into<String>, walk: impl FnOnce(&mut Self) -> T) -> T {
        self.place.push(place.into());
        let result = walk(self);
        self.place.pop();
        result
    }

    /// Walks through a list.
    pub fn each<T>(&mut self, name: &str, list: &[T], mut walk: impl FnMut(&mut Self, &T)) {
        self.bound(name, &bounds::LIST, list.len());
        for (i, entry) in list.iter().enumerate() {
            self.within(format!("{name}[{i}]"), |p| walk(p, entry));
        }
    }

    /// Notes a problem at a field of the present place.
    pub fn add(&mut self, field: &str, code: &'static str, args: Vec<(&'static str, String)>) {
        debug_assert!(Self::CODES.contains(&code), "{code} is not in the list of codes");
        let mut place = self.place.join(".");
        if !field.is_empty() {
            if !place.is_empty() {
                place.push('.');
            }
            place.push_str(field);
        }
        self.found.push(Problem { code, place, args });
    }

    /// Notes that a joint does not move so.
    pub fn add_joint_motion(&mut self, field: &str, joint: Joint, motion: Motion) {
        let names = vec![("joint", joint.name().to_string()), ("motion", motion.name().to_string())];
        self.add(field, "joint-motion", names);
    }

    /// Checks a number against its bounds.
    pub fn bound(&mut self, field: &str, bound: &Bound, value: impl Into<Number>) {
        let value = value.into().0;
        if !bound.holds(value) {
            let code = if bound.name == "list" { "too-long" } else { "out-of-bounds" };
            self.add(
                field,
                code,
                vec![
                    ("value", value.to_string()),
                    ("least", bound.least.to_string()),
                    ("most", bound.most.to_string()),
                    ("unit", bound.unit.to_string()),
                ],
            );
        }
    }

    /// Checks a text in one language: not empty, not too long, nothing hidden.
    pub fn words(&mut self, field: &str, words: &str) {
        if words.trim().is_empty() {
            self.add(field, "empty-text", vec![]);
        }
        self.bound(field, &Bound { least: 0.0, ..bounds::TEXT_CHARS }, words.chars().count());
        if has_hidden_characters(words) {
            self.add(field, "hidden-characters", vec![]);
        }
    }

    /// Checks a text of one line: a line break could pass for a line of ours.
    pub fn line(&mut self, field: &str, words: &str) {
        self.words(field, words);
        if words.contains('\n') {
            self.add(field, "hidden-characters", vec![]);
        }
    }

    /// Checks a number against its bounds, if there is one.
    pub fn bound_opt<T: Into<Number>>(&mut self, field: &str, bound: &Bound, value: Option<T>) {
        if let Some(value) = value {
            self.bound(field, bound, value);
        }
    }

    /// What was found.
    pub fn into_found(self) -> Vec<Problem> {
        self.found
    }
}

/// A number as a bound sees it.
#[derive(Debug, Clone, Copy)]
pub struct Number(f64);

impl From<f64> for Number {
    fn from(n: f64) -> Self {
        Self(n)
    }
}
impl From<u8> for Number {
    fn from(n: u8) -> Self {
        Self(n.into())
    }
}
impl From<u16> for Number {
    fn from(n: u16) -> Self {
        Self(n.into())
    }
}
impl From<u32> for Number {
    fn from(n: u32) -> Self {
        Self(n.into())
    }
}
impl From<i64> for Number {
    #[expect(clippy::cast_precision_loss, reason = "bounds are far below 2^53")]
    fn from(n: i64) -> Self {
        Self(n as f64)
    }
}
impl From<usize> for Number {
    #[expect(clippy::cast_precision_loss, reason = "bounds are far below 2^53")]
    fn from(n: usize) -> Self {
        Self(n as f64)
    }
}
