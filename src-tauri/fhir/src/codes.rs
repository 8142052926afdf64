//! Codes of others: LOINC for what is observed, UCUM for units, HL7 for categories.

use serde_json::{Value, json};

/// A code of LOINC with its official name, which its licence asks for beside the code.
pub(crate) struct Loinc {
    code: &'static str,
    name: &'static str,
}

/// Pain of 0 to 10, as reported.
pub(crate) const PAIN: Loinc =
    Loinc { code: "72514-3", name: "Pain severity - 0-10 verbal numeric rating [Score] - Reported" };

/// Effort: 0 is sitting, 10 the highest.
pub(crate) const EFFORT: Loinc = Loinc { code: "82289-0", name: "Rating of perceived exertion [Score]" };

/// How often somebody stands up in 30 seconds, without the arms.
pub(crate) const CHAIR_STAND: Loinc = Loinc { code: "66247-8", name: "Sit to stand frequency in 30 seconds" };

/// The same with the arms.
pub(crate) const CHAIR_STAND_WITH_ARMS: Loinc =
    Loinc { code: "93125-3", name: "Modified 30 seconds Sit to stand --with use of upper extremities" };

/// The time alone: LOINC's panel has a look at the gait in it too, which nobody takes here.
pub(crate) const UP_AND_GO: Loinc = Loinc {
    code: "89423-8",
    name: "Time to rise from chair, walk 10 feet and back, and return to sitting [TUG]",
};

/// What LOINC's licence asks to be said, in its own words.
pub(crate) const LOINC_NOTICE: &str = "This material contains content from LOINC (http://loinc.org). LOINC \
    is copyright © Regenstrief Institute, Inc. and the Logical Observation Identifiers Names and Codes \
    (LOINC) Committee and is available at no cost under the license at http://loinc.org/license. LOINC® is \
    a registered United States trademark of Regenstrief Institute, Inc.";

/// A unit of UCUM.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Unit {
    Score,
    Sets,
    Days,
    Stands,
    Seconds,
}

impl Unit {
    /// Its code.
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Score => "{score}",
            Self::Sets => "{set}",
            Self::Days => "d",
            Self::Stands => "{#}/(30.s)",
            Self::Seconds => "s",
        }
    }

    /// The message that says it to people.
    pub(crate) fn message(self) -> &'static str {
        match self {
            Self::Score => "fhir-unit-score",
            Self::Sets => "fhir-unit-sets",
            Self::Days => "fhir-unit-days",
            Self::Stands => "fhir-unit-stands",
            Self::Seconds => "fhir-unit-seconds",
        }
    }
}

/// How an observation came about.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Category {
    /// Somebody was asked.
    Survey,
    /// Somebody did something.
    Activity,
}

/// A concept of LOINC, whose whole meaning is the text: the code may say less.
pub(crate) fn loinc(loinc: &Loinc, said: &str) -> Value {
    let coding = json!({ "system": "http://loinc.org", "code": loinc.code, "display": loinc.name });
    json!({ "coding": [coding], "text": said })
}

/// A category of HL7's.
pub(crate) fn category(category: Category) -> Value {
    let (code, display) = match category {
        Category::Survey => ("survey", "Survey"),
        Category::Activity => ("activity", "Activity"),
    };
    json!({ "coding": [hl7("observation-category", code, display)] })
}

/// Why there is no figure: it was not tried.
pub(crate) fn not_performed(said: &str) -> Value {
    json!({ "coding": [hl7("data-absent-reason", "not-performed", "Not Performed")], "text": said })
}

fn hl7(system: &str, code: &str, display: &str) -> Value {
    let system = format!("http://terminology.hl7.org/CodeSystem/{system}");
    json!({ "system": system, "code": code, "display": display })
}
