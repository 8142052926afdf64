//! Parts that many elements are made of.

use chrono::{DateTime, FixedOffset, SecondsFormat, Utc};
use serde_json::{Map, Number, Value, json};

use crate::Writer;
use crate::codes::{Category, Unit, category};

/// FHIR knows no offset beyond this one, in seconds.
const MOST_OFFSET_S: i32 = 14 * 3600;

/// An element in the making. What is empty is left out, as FHIR wants it.
pub(crate) struct Element(Map<String, Value>);

impl Element {
    /// Without any field.
    pub(crate) fn new() -> Self {
        Self(Map::new())
    }

    /// A resource.
    pub(crate) fn resource(kind: &str) -> Self {
        Self::new().with("resourceType", kind)
    }

    /// With a field.
    pub(crate) fn with(mut self, name: &str, value: impl Into<Value>) -> Self {
        self.0.insert(name.to_string(), value.into());
        self
    }

    /// With a field, if there is something to say.
    pub(crate) fn with_some(self, name: &str, value: Option<impl Into<Value>>) -> Self {
        match value {
            Some(value) => self.with(name, value),
            None => self,
        }
    }

    /// With a list, if there is something in it.
    pub(crate) fn with_each(self, name: &str, values: Vec<Value>) -> Self {
        if values.is_empty() { self } else { self.with(name, values) }
    }
}

impl From<Element> for Value {
    fn from(element: Element) -> Self {
        Self::Object(element.0)
    }
}

impl Writer<'_> {
    /// An observation of the patient.
    pub(crate) fn observation(&self, of: Category, code: Value) -> Element {
        Element::resource("Observation")
            .with("status", "final")
            .with("category", vec![category(of)])
            .with("code", code)
            .with("subject", self.urns.way("patient"))
    }

    /// A figure with its unit.
    pub(crate) fn quantity(&self, value: f64, unit: Unit) -> Value {
        json!({
            "value": number(value),
            "unit": self.say(unit.message()),
            "system": "http://unitsofmeasure.org",
            "code": unit.code(),
        })
    }

    /// A part of an observation, with a name that is the same in every language.
    pub(crate) fn component(&self, id: &str, said: &str, value: f64, unit: Unit) -> Value {
        json!({ "id": id, "code": concept(said), "valueQuantity": self.quantity(value, unit) })
    }

    /// The days that are measured.
    pub(crate) fn span(&self) -> Value {
        let measures = self.report.reported.measures;
        json!({ "start": measures.from.to_string(), "end": measures.through.to_string() })
    }
}

/// Something named by its text alone.
pub(crate) fn concept(said: &str) -> Value {
    json!({ "text": said })
}

/// A note on something.
pub(crate) fn notes(said: &[String]) -> Vec<Value> {
    said.iter().map(|said| json!({ "text": said })).collect()
}

/// A moment on the clock of the place: FHIR's offsets are whole minutes, and what none can be is UTC.
pub(crate) fn local(at: DateTime<Utc>, offset_s: i32) -> DateTime<FixedOffset> {
    let whole = offset_s - offset_s % 60;
    let known = Some(whole).filter(|whole| (-MOST_OFFSET_S..=MOST_OFFSET_S).contains(whole));
    at.with_timezone(&known.and_then(FixedOffset::east_opt).unwrap_or(chrono::Offset::fix(&Utc)))
}

/// A moment as FHIR writes it.
pub(crate) fn moment(at: DateTime<FixedOffset>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Secs, false)
}

/// A figure to two decimals; a whole one without any.
fn number(value: f64) -> Value {
    let rounded = (value * 100.0).round() / 100.0;
    format!("{rounded}").parse::<Number>().map_or(Value::Null, Value::Number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_rounded_to_two_decimals_and_whole_ones_have_none() {
        for (value, written) in [(4.0, "4"), (60.5, "60.5"), (65.0 / 3.0, "21.67"), (0.0, "0")] {
            assert_eq!(number(value).to_string(), written);
        }
    }

    #[test]
    fn moments_have_whole_minutes_of_offset_that_fhir_knows() {
        let at = "2026-11-09T23:30:12.5Z".parse().expect("a moment");
        for (offset_s, written) in [
            (3600, "2026-11-10T00:30:12+01:00"),
            (0, "2026-11-09T23:30:12+00:00"),
            (-12_600, "2026-11-09T20:00:12-03:30"),
            (1_172, "2026-11-09T23:49:12+00:19"),
            (-1_172, "2026-11-09T23:11:12-00:19"),
            (50_400, "2026-11-10T13:30:12+14:00"),
            (50_460, "2026-11-09T23:30:12+00:00"),
            (i32::MIN, "2026-11-09T23:30:12+00:00"),
        ] {
            assert_eq!(moment(local(at, offset_s)), written, "{offset_s}");
        }
    }
}
