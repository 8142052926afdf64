//! A section of the document: what it says to people, and the resources that say the same to programs.

use serde_json::Value;

use crate::Writer;
use crate::element::Element;
use crate::xhtml::Narrative;

/// A resource of the document, by the name that its URN is made from.
pub(crate) struct Entry {
    pub(crate) part: String,
    pub(crate) resource: Value,
}

impl Entry {
    pub(crate) fn new(part: impl Into<String>, resource: impl Into<Value>) -> Self {
        Self { part: part.into(), resource: resource.into() }
    }
}

/// A section.
pub(crate) struct Section {
    /// The same in every language.
    pub(crate) id: &'static str,
    /// What stands over it.
    pub(crate) title: String,
    /// Whose words it holds, if not the program's.
    pub(crate) author: Option<Value>,
    /// For people.
    pub(crate) narrative: Narrative,
    /// For programs.
    pub(crate) entries: Vec<Entry>,
}

impl Writer<'_> {
    /// As the Composition carries it.
    pub(crate) fn section(&self, section: Section) -> (Value, Vec<Entry>) {
        let ways = section.entries.iter().map(|entry| self.urns.way(&entry.part)).collect();
        let element = Element::new()
            .with("id", section.id)
            .with("title", section.title)
            .with_each("author", section.author.into_iter().collect())
            .with("text", section.narrative.into_text(self.words))
            .with_each("entry", ways);
        (element.into(), section.entries)
    }

    /// As the Bundle carries it.
    pub(crate) fn entry(&self, entry: Entry) -> Value {
        let url = self.urns.urn(&entry.part);
        Element::new().with("fullUrl", url).with("resource", entry.resource).into()
    }
}
