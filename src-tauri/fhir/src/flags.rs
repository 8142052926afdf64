//! What needs a call, a talk, or a look at the file.

use sendaluna_core::measure::{Flag, FlagGroup};
use serde_json::Value;

use crate::Writer;
use crate::element::{Element, concept};
use crate::section::{Entry, Section};
use crate::xhtml::Narrative;

/// In the order in which they are told.
const GROUPS: [FlagGroup; 3] = [FlagGroup::RingToday, FlagGroup::TalkAbout, FlagGroup::TheFile];

impl Writer<'_> {
    pub(crate) fn flags(&self) -> Section {
        let flags = &self.report.reported.measures.flags;
        let numbered = (1..).zip(flags);
        Section {
            id: "flags",
            title: self.say("fhir-flags"),
            author: None,
            narrative: self.flags_said(flags),
            entries: numbered.map(|(n, flag)| Entry::new(format!("flag-{n}"), self.flag(flag))).collect(),
        }
    }

    fn flag(&self, flag: &Flag) -> Value {
        Element::resource("Flag")
            .with("status", "active")
            .with("category", vec![concept(&self.group(flag.group))])
            .with("code", concept(&self.speaker.flag(flag)))
            .with("subject", self.urns.way("patient"))
            .with("period", Element::new().with("start", flag.day.to_string()))
            .with("author", self.urns.way("device"))
            .into()
    }

    fn flags_said(&self, flags: &[Flag]) -> Narrative {
        if flags.is_empty() {
            return Narrative::default().paragraph(&self.say("fhir-flags-none"));
        }
        GROUPS.into_iter().fold(Narrative::default(), |narrative, group| {
            let these = flags.iter().filter(|flag| flag.group == group);
            let said: Vec<String> = these.map(|flag| self.speaker.flag(flag)).collect();
            let title = (!said.is_empty()).then(|| self.group(group));
            narrative.paragraphs(title.as_slice()).list(&said)
        })
    }

    fn group(&self, group: FlagGroup) -> String {
        self.say(match group {
            FlagGroup::RingToday => "report-page-ring",
            FlagGroup::TalkAbout => "report-page-talk",
            FlagGroup::TheFile => "report-page-file",
        })
    }
}
