//! Narrative: a few elements of XHTML, with everything in them escaped.

use std::fmt::Write as _;

use sendaluna_words::Words;
use serde_json::{Value, json};

/// What a part of the document says to people.
#[derive(Default)]
pub(crate) struct Narrative(String);

impl Narrative {
    /// A paragraph.
    pub(crate) fn paragraph(mut self, text: &str) -> Self {
        self.element("p", text);
        self
    }

    /// A paragraph in English, whatever the language around it.
    pub(crate) fn in_english(mut self, text: &str) -> Self {
        let _ = write!(self.0, r#"<p lang="en" xml:lang="en">{}</p>"#, escaped(text));
        self
    }

    /// Paragraphs.
    pub(crate) fn paragraphs(self, texts: &[String]) -> Self {
        texts.iter().fold(self, |narrative, text| narrative.paragraph(text))
    }

    /// A list; nothing if there is nothing in it.
    pub(crate) fn list(mut self, lines: &[String]) -> Self {
        if !lines.is_empty() {
            self.0.push_str("<ul>");
            for line in lines {
                self.element("li", line);
            }
            self.0.push_str("</ul>");
        }
        self
    }

    /// A table; nothing if it has no rows.
    pub(crate) fn table<const N: usize>(mut self, head: &[String; N], rows: &[[String; N]]) -> Self {
        if !rows.is_empty() {
            self.0.push_str("<table><thead>");
            self.row("th", head);
            self.0.push_str("</thead><tbody>");
            for row in rows {
                self.row("td", row);
            }
            self.0.push_str("</tbody></table>");
        }
        self
    }

    /// As FHIR carries it.
    pub(crate) fn into_text(self, words: &Words) -> Value {
        let (lang, dir) = (words.lang(), if words.is_right_to_left() { "rtl" } else { "ltr" });
        let head = format!(
            r#"<div xmlns="http://www.w3.org/1999/xhtml" lang="{lang}" xml:lang="{lang}" dir="{dir}">"#
        );
        json!({ "status": "generated", "div": format!("{head}{}</div>", self.0) })
    }

    fn row(&mut self, name: &str, cells: &[String]) {
        self.0.push_str("<tr>");
        for cell in cells {
            self.element(name, cell);
        }
        self.0.push_str("</tr>");
    }

    fn element(&mut self, name: &str, text: &str) {
        let _ = write!(self.0, "<{name}>{}</{name}>", escaped(text));
    }
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
