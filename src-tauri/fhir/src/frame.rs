//! The document itself: whose, by whom, for whom, and its sections in order.

use serde_json::{Value, json};

use crate::Writer;
use crate::codes::LOINC_NOTICE;
use crate::element::{Element, concept, local, moment};
use crate::section::{Entry, Section};
use crate::urns::thumbprint_uri;
use crate::xhtml::Narrative;

/// A URI or URN as an identifier.
const URI: &str = "urn:ietf:rfc:3986";

impl Writer<'_> {
    /// The document.
    pub(crate) fn bundle(&self) -> Value {
        let sections = [self.flags(), self.done(), self.feeling()].into_iter().chain(self.home_tests());
        let sections = sections.chain([self.own_words(), self.about_codes()]);
        let (sections, entries): (Vec<Value>, Vec<Vec<Entry>>) =
            sections.map(|section| self.section(section)).unzip();
        let frame = [
            Entry::new("composition", self.composition(sections)),
            Entry::new("patient", self.patient()),
            Entry::new("device", self.device()),
            Entry::new("clinic", self.clinic()),
        ];
        let entries = frame.into_iter().chain(entries.into_iter().flatten());
        let entries: Vec<Value> = entries.map(|entry| self.entry(entry)).collect();
        Element::resource("Bundle")
            .with("language", self.words.lang())
            .with("identifier", json!({ "system": URI, "value": self.urns.urn("bundle") }))
            .with("type", "document")
            .with("timestamp", self.issued())
            .with("entry", entries)
            .into()
    }

    fn composition(&self, sections: Vec<Value>) -> Value {
        let authors = vec![self.urns.way("patient"), self.urns.way("device")];
        Element::resource("Composition")
            .with("language", self.words.lang())
            .with("text", self.summary().into_text(self.words))
            .with("status", "final")
            .with("type", concept(&self.say("fhir-type")))
            .with("subject", self.urns.way("patient"))
            .with("date", self.issued())
            .with("author", authors)
            .with("title", self.title())
            .with("event", json!([{ "period": self.span() }]))
            .with("section", sections)
            .into()
    }

    fn summary(&self) -> Narrative {
        let (plan, measures) = (self.plan.doc(), self.report.reported.measures);
        let episodes: Vec<String> =
            plan.episodes.iter().map(|episode| self.speaker.episode(episode, measures.through)).collect();
        let day = local(self.report.issued_at, self.report.offset_s).date_naive();
        let made = [("day", self.words.day_and_year(day).into()), ("revision", plan.head.revision.into())];
        Narrative::default()
            .paragraph(&self.title())
            .list(&episodes)
            .paragraph(&self.words.say("fhir-for", &[("clinic", plan.clinic.name.as_str().into())]))
            .paragraph(&self.words.say("report-page-made", &made))
            .paragraph(&self.say("report-caution"))
    }

    fn title(&self) -> String {
        let measures = self.report.reported.measures;
        let args = [
            ("called", self.plan.head().called.as_str().into()),
            ("from", self.words.day_and_year(measures.from).into()),
            ("through", self.words.day_and_year(measures.through).into()),
        ];
        self.words.say("fhir-title", &args)
    }

    /// By the clinic's own id, since the clinic gave it.
    fn patient(&self) -> Value {
        let head = self.plan.head();
        let identifier = json!({
            "system": thumbprint_uri(self.report.clinic_key),
            "value": head.person.as_str(),
            "assigner": self.urns.way("clinic"),
        });
        let born = head.born.to_string();
        let args = [("called", head.called.as_str().into()), ("born", born.as_str().into())];
        let said = Narrative::default().paragraph(&self.words.say("fhir-patient", &args));
        Element::resource("Patient")
            .with("text", said.into_text(self.words))
            .with("identifier", vec![identifier])
            .with("name", json!([{ "use": "usual", "text": head.called }]))
            .with("birthDate", born)
            .into()
    }

    fn device(&self) -> Value {
        let identifier = json!({ "system": URI, "value": thumbprint_uri(self.report.device) });
        Element::resource("Device")
            .with("identifier", vec![identifier])
            .with("deviceName", json!([{ "name": "Sendaluna", "type": "user-friendly-name" }]))
            .with("type", concept(&self.say("fhir-program")))
            .with("version", json!([{ "value": env!("CARGO_PKG_VERSION") }]))
            .into()
    }

    fn clinic(&self) -> Value {
        let clinic = &self.plan.doc().clinic;
        let identifier = json!({ "system": URI, "value": thumbprint_uri(self.report.clinic_key) });
        Element::resource("Organization")
            .with("identifier", vec![identifier])
            .with("name", clinic.name.as_str())
            .with("telecom", json!([{ "system": "phone", "value": clinic.phone, "use": "work" }]))
            .into()
    }

    fn about_codes(&self) -> Section {
        Section {
            id: "codes",
            title: self.say("fhir-codes"),
            author: None,
            narrative: Narrative::default().paragraph(&self.say("fhir-codes-text")).in_english(LOINC_NOTICE),
            entries: Vec::new(),
        }
    }

    fn issued(&self) -> String {
        moment(local(self.report.issued_at, self.report.offset_s))
    }
}
