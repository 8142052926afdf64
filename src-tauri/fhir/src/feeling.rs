//! Pain and effort: every answer with its moment.

use chrono::{DateTime, FixedOffset};
use sendaluna_core::record::{Body, By, Distress, Event, Moment, Pain, Place};
use sendaluna_core::session::PainKind;
use serde_json::{Value, json};

use crate::Writer;
use crate::codes::{Category, EFFORT, PAIN, Unit, loinc};
use crate::element::{concept, local, moment, notes};
use crate::section::{Entry, Section};
use crate::xhtml::Narrative;

/// Heads of the table of answers.
const HEADS: [&str; 4] = ["fhir-when", "fhir-what", "fhir-answer", "report-page-also"];

/// An answer: what was asked, and what came back.
struct Answer<'a> {
    kind: &'static str,
    event: &'a Event,
    said: String,
    code: Value,
    by: By,
    given: Given,
    about: Option<&'a Pain>,
}

/// What came back.
enum Given {
    Level(u8),
    Seen(String),
}

impl Writer<'_> {
    pub(crate) fn feeling(&self) -> Section {
        let answers: Vec<Answer<'_>> = self.events().flat_map(|event| self.answers(event)).collect();
        let rows: Vec<[String; 4]> = answers.iter().map(|answer| self.answer_row(answer)).collect();
        let none = answers.is_empty().then(|| self.say("report-page-no-pain"));
        Section {
            id: "feeling",
            title: self.say("fhir-feeling"),
            author: None,
            narrative: Narrative::default()
                .table(&HEADS.map(|id| self.say(id)), &rows)
                .paragraphs(none.as_slice()),
            entries: answers.into_iter().map(|answer| self.answered(answer)).collect(),
        }
    }

    fn answers<'e>(&self, event: &'e Event) -> Vec<Answer<'e>> {
        let answers = match &event.body {
            Body::PainAnswered { pain, .. } => [
                pain.level.map(|level| self.pain(event, pain, level)),
                pain.distress.map(|distress| self.distress(event, pain, distress)),
            ],
            Body::SessionEnded { effort, .. } => [effort.map(|effort| self.effort(event, effort)), None],
            _ => [None, None],
        };
        answers.into_iter().flatten().collect()
    }

    fn pain<'e>(&self, event: &'e Event, pain: &'e Pain, level: u8) -> Answer<'e> {
        let said = self.say(match pain.moment {
            Moment::Before => "fhir-pain-before",
            Moment::During => "fhir-pain-during",
            Moment::After => "fhir-pain-after",
            Moment::NextMorning => "fhir-pain-next-morning",
        });
        let (code, given) = (loinc(&PAIN, &said), Given::Level(level));
        Answer { kind: "pain", event, said, code, by: event.by, given, about: Some(pain) }
    }

    /// The code for pain is of what is reported, so it does not stand here.
    fn distress<'e>(&self, event: &'e Event, pain: &'e Pain, distress: Distress) -> Answer<'e> {
        let said = self.say("fhir-distress");
        let seen = self.say(match distress {
            Distress::None => "fhir-distress-none",
            Distress::Some => "fhir-distress-some",
            Distress::Much => "fhir-distress-much",
        });
        let (code, given) = (concept(&said), Given::Seen(seen));
        Answer { kind: "distress", event, said, code, by: By::Helper, given, about: Some(pain) }
    }

    fn effort<'e>(&self, event: &'e Event, effort: u8) -> Answer<'e> {
        let said = self.say("fhir-effort");
        let (code, given) = (loinc(&EFFORT, &said), Given::Level(effort));
        Answer { kind: "effort", event, said, code, by: event.by, given, about: None }
    }

    fn answered(&self, answer: Answer<'_>) -> Entry {
        let place = answer.about.and_then(|pain| pain.place).map(|place| concept(&self.place(place)));
        let observed = self
            .observation(Category::Survey, answer.code)
            .with("effectiveDateTime", moment(when(answer.event)))
            .with("performer", vec![self.performer(answer.by)])
            .with_each("note", notes(&self.circumstances(answer.about)))
            .with_some("bodySite", place);
        let observed = match &answer.given {
            Given::Level(level) => {
                observed.with("valueQuantity", self.quantity((*level).into(), Unit::Score))
            }
            Given::Seen(seen) => observed.with("valueCodeableConcept", concept(seen)),
        };
        Entry::new(format!("{}-{}", answer.kind, answer.event.seq), observed)
    }

    fn answer_row(&self, answer: &Answer<'_>) -> [String; 4] {
        let at = when(answer.event).format("%Y-%m-%d %H:%M").to_string();
        let given = match &answer.given {
            Given::Level(level) => level.to_string(),
            Given::Seen(seen) => seen.clone(),
        };
        let place = answer.about.and_then(|pain| pain.place).map(|place| self.place(place));
        let helper = (answer.by == By::Helper).then(|| self.say("fhir-helper"));
        let also: Vec<String> =
            place.into_iter().chain(self.circumstances(answer.about)).chain(helper).collect();
        [at, answer.said.clone(), given, also.join(&self.say("list-semicolon"))]
    }

    /// Who answered. The program asks, and answers nothing by itself.
    fn performer(&self, by: By) -> Value {
        match by {
            By::Patient | By::Program => self.urns.way("patient"),
            By::Helper => json!({ "display": self.say("fhir-helper") }),
        }
    }

    /// During which exercise, and what kind of pain.
    fn circumstances(&self, pain: Option<&Pain>) -> Vec<String> {
        let during = pain.and_then(|pain| pain.item.as_ref()).map(|item| {
            let name = self.speaker.name(item);
            self.words.say("fhir-during", &[("name", name.into())])
        });
        let kind = pain.and_then(|pain| pain.kind).map(|kind| {
            self.say(match kind {
                PainKind::Stretching => "hurts-stretching",
                PainKind::Sharp => "hurts-sharp",
            })
        });
        during.into_iter().chain(kind).collect()
    }

    fn place(&self, place: Place) -> String {
        self.say(match place {
            Place::Hip => "hurts-hip",
            Place::Thigh => "hurts-thigh",
            Place::Knee => "hurts-knee",
            Place::Calf => "hurts-calf",
            Place::Foot => "hurts-foot",
            Place::Back => "hurts-back",
            Place::Shoulder => "hurts-shoulder",
            Place::Elsewhere => "hurts-elsewhere",
        })
    }
}

fn when(event: &Event) -> DateTime<FixedOffset> {
    local(event.stamp.at, event.stamp.offset_s)
}
