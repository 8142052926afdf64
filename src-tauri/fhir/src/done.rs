//! Days and exercises: what was done of what was asked.

use sendaluna_core::measure::{Adherence, ItemMeasure, Portion};
use serde_json::{Value, json};

use crate::Writer;
use crate::codes::{Category, Unit};
use crate::element::{Element, concept, notes};
use crate::section::{Entry, Section};
use crate::xhtml::Narrative;

/// Figures of days: their names in every language, and the messages that say them.
const DAYS: [(&str, &str); 5] = [
    ("due", "report-page-due"),
    ("whole", "report-page-whole"),
    ("part", "report-page-part"),
    ("stopped-as-told", "report-page-told"),
    ("no-record", "report-page-none"),
];

/// Heads of the table of exercises.
const HEADS: [&str; 8] = [
    "report-page-exercise",
    "report-page-dose",
    "report-page-counted",
    "report-page-unconfirmed",
    "report-page-remembered",
    "report-page-beyond",
    "report-page-needed",
    "report-page-also",
];

/// What the figures mean.
const DEFINITIONS: [&str; 4] =
    ["report-page-def-due", "report-page-def-days", "report-page-def-dose", "report-page-def-how"];

impl Writer<'_> {
    pub(crate) fn done(&self) -> Section {
        let measures = self.report.reported.measures;
        let spans = [
            ("days", "fhir-days", &measures.overall),
            ("days-without-breaks", "fhir-days-without-breaks", &measures.without_breaks),
        ];
        let days = spans.iter().map(|(part, said, of)| Entry::new(*part, self.days(said, of)));
        let exercises = measures
            .items
            .iter()
            .map(|item| Entry::new(format!("exercise-{}", item.item), self.exercise(item)));
        let definitions = DEFINITIONS.map(|id| self.say(id));
        Section {
            id: "done",
            title: self.say("fhir-done"),
            author: None,
            narrative: Narrative::default()
                .table(&self.days_heads(), &spans.map(|(_, said, of)| self.days_row(said, of)))
                .table(&HEADS.map(|id| self.say(id)), &self.exercise_rows())
                .paragraphs(&definitions),
            entries: days.chain(exercises).collect(),
        }
    }

    /// Of the whole span, by the program.
    fn measured(&self, said: &str) -> Element {
        self.observation(Category::Activity, concept(said))
            .with("effectivePeriod", self.span())
            .with("device", self.urns.way("device"))
    }

    fn days(&self, said: &str, of: &Adherence) -> Value {
        let parts = DAYS.iter().zip(figures(of));
        let parts: Vec<Value> =
            parts.map(|((id, said), n)| self.component(id, &self.say(said), n.into(), Unit::Days)).collect();
        self.measured(&self.say(said)).with("component", parts).into()
    }

    fn days_heads(&self) -> [String; 6] {
        let [due, whole, part, told, none] = DAYS.map(|(_, said)| self.say(said));
        [self.say("fhir-what"), due, whole, part, told, none]
    }

    fn days_row(&self, said: &str, of: &Adherence) -> [String; 6] {
        let [due, whole, part, told, none] = figures(of).map(|n| n.to_string());
        [self.say(said), due, whole, part, told, none]
    }

    fn exercise(&self, item: &ItemMeasure) -> Value {
        let name = self.speaker.name(&item.item);
        let said = self.words.say("fhir-exercise", &[("name", name.into())]);
        let ratio = (item.all.prescribed > 0).then(|| {
            json!({
                "numerator": self.quantity(item.all.done(), Unit::Sets),
                "denominator": self.quantity(item.all.prescribed.into(), Unit::Sets),
            })
        });
        self.measured(&said)
            .with_some("valueRatio", ratio)
            .with_each("note", notes(&self.speaker.also(item)))
            .with("component", self.sets(&item.all))
            .into()
    }

    /// Sets by how their record came about; what is only offered, if anything was.
    fn sets(&self, portion: &Portion) -> Vec<Value> {
        let asked = [
            ("prescribed", "fhir-prescribed", portion.prescribed.into()),
            ("counted", "report-page-counted", portion.counted),
            ("counted-not-confirmed", "report-page-unconfirmed", portion.not_confirmed),
            ("remembered", "report-page-remembered", portion.remembered),
            ("beyond", "report-page-beyond", portion.beyond),
        ];
        let offered = [
            ("offered", "fhir-offered", portion.offered.into()),
            ("as-needed", "report-page-needed", portion.as_needed),
        ];
        let offered = offered.into_iter().filter(|_| portion.offered > 0);
        let part = |(id, said, sets)| self.component(id, &self.say(said), sets, Unit::Sets);
        asked.into_iter().chain(offered).map(part).collect()
    }

    fn exercise_rows(&self) -> Vec<[String; 8]> {
        let row = |item: &ItemMeasure| {
            let of = &item.all;
            let [counted, unconfirmed, remembered, beyond, needed] =
                [of.counted, of.not_confirmed, of.remembered, of.beyond, of.as_needed]
                    .map(|sets| self.speaker.sets(sets));
            let (name, part) = (self.speaker.name(&item.item), self.speaker.part(of));
            let also = self.speaker.also(item).join(" ");
            [name, part, counted, unconfirmed, remembered, beyond, needed, also]
        };
        self.report.reported.measures.items.iter().map(row).collect()
    }
}

/// As [`DAYS`] names them.
fn figures(of: &Adherence) -> [u32; 5] {
    [of.days_due, of.whole, of.part, of.stopped_as_told, of.no_record]
}
