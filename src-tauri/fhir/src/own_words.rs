//! What the patient wrote down, and asks.

use sendaluna_core::record::{Body, Event};

use crate::Writer;
use crate::section::Section;
use crate::xhtml::Narrative;

impl Writer<'_> {
    /// Words are for people alone: no resource repeats them.
    pub(crate) fn own_words(&self) -> Section {
        let asks =
            self.report.reported.asks.map(|asks| self.words.say("report-asks", &[("words", asks.into())]));
        let rows: Vec<[String; 2]> = self.events().filter_map(|event| self.written(event)).collect();
        let withheld = Some(self.report.reported.withheld).filter(|n| *n > 0);
        let withheld = withheld.map(|n| self.words.say("report-page-words-withheld", &[("n", n.into())]));
        let is_empty = asks.is_none() && rows.is_empty() && withheld.is_none();
        let none = is_empty.then(|| self.say("report-page-words-none"));
        let title = self.say("report-page-words");
        let head = [self.say("fhir-when"), title.clone()];
        Section {
            id: "words",
            title,
            author: Some(self.urns.way("patient")),
            narrative: Narrative::default()
                .paragraphs(asks.as_slice())
                .table(&head, &rows)
                .paragraphs(withheld.as_slice())
                .paragraphs(none.as_slice()),
            entries: Vec::new(),
        }
    }

    fn written(&self, event: &Event) -> Option<[String; 2]> {
        match &event.body {
            Body::SessionEnded { words, .. } | Body::BreakDeclared { words, .. } => {
                Some([self.words.day_and_year(event.stamp.day()), words.clone()?])
            }
            _ => None,
        }
    }
}
