//! Text that the clinic wrote, by language.

use std::collections::BTreeMap;
use std::fmt;

use serde::{Deserialize, Serialize};

/// A language tag: two or three lower-case letters (ISO 639), as in `en`, `es`, `de`, `ar`.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Lang(String);

/// A text that is no language tag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotALang(String);

impl fmt::Display for NotALang {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?} is not a language tag such as \"en\"", self.0)
    }
}

impl std::error::Error for NotALang {}

impl Lang {
    /// Parses a tag.
    pub fn new(tag: impl Into<String>) -> Result<Self, NotALang> {
        let tag = tag.into();
        if (2..=3).contains(&tag.len()) && tag.bytes().all(|b| b.is_ascii_lowercase()) {
            Ok(Self(tag))
        } else {
            Err(NotALang(tag))
        }
    }

    /// English, the source language of everything that ships.
    pub fn english() -> Self {
        Self("en".into())
    }

    /// The tag.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl TryFrom<String> for Lang {
    type Error = NotALang;
    fn try_from(tag: String) -> Result<Self, NotALang> {
        Self::new(tag)
    }
}

impl From<Lang> for String {
    fn from(lang: Lang) -> String {
        lang.0
    }
}

impl fmt::Display for Lang {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Lang {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Lang".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "pattern": "^[a-z]{2,3}$" })
    }
}

/// The same text in one or more languages, as in `{ "en": "Slowly", "es": "Despacio" }`.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Text(BTreeMap<Lang, String>);

impl Text {
    /// A text in one language.
    pub fn one(lang: Lang, text: impl Into<String>) -> Self {
        Self(BTreeMap::from([(lang, text.into())]))
    }

    /// The text in the first of the wanted languages that it has; else in English; else in its
    /// first language; empty only if it has none.
    pub fn pick<'a>(&'a self, wanted: impl IntoIterator<Item = &'a Lang>) -> &'a str {
        wanted
            .into_iter()
            .find_map(|lang| self.0.get(lang))
            .or_else(|| self.0.get(&Lang::english()))
            .or_else(|| self.0.values().next())
            .map_or("", String::as_str)
    }

    /// Whether it is there in this language.
    pub fn has(&self, lang: &Lang) -> bool {
        self.0.contains_key(lang)
    }

    /// Every language and its text.
    pub fn iter(&self) -> impl Iterator<Item = (&Lang, &str)> {
        self.0.iter().map(|(lang, text)| (lang, text.as_str()))
    }
}

/// Whether a text holds a character that could hide, reorder or fake what is read: control
/// characters other than a line break, and Unicode's invisible direction and format characters
/// (UAX #9 explicit formatting, zero-width and tag characters).
pub fn has_hidden_characters(text: &str) -> bool {
    text.chars().any(|c| {
        (c.is_control() && c != '\n')
            || matches!(c,
                '\u{00AD}' | '\u{061C}' | '\u{180E}' | '\u{200B}' | '\u{200E}' | '\u{200F}'
                | '\u{2028}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{FEFF}'
                | '\u{FFF9}'..='\u{FFFB}' | '\u{E0000}'..='\u{E007F}')
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn falls_back_to_english_then_to_whatever_there_is() {
        let lang = |tag: &str| Lang::new(tag).expect("a tag");
        let text =
            Text(BTreeMap::from([(lang("de"), "Langsam".to_string()), (lang("en"), "Slowly".to_string())]));
        assert_eq!(text.pick([&lang("de")]), "Langsam");
        assert_eq!(text.pick([&lang("ar"), &lang("de")]), "Langsam");
        assert_eq!(text.pick([&lang("ar")]), "Slowly");
        assert_eq!(Text::one(lang("es"), "Despacio").pick([&lang("ar")]), "Despacio");
    }

    #[test]
    fn direction_overrides_and_controls_are_seen() {
        assert!(!has_hidden_characters("Lift\nslowly, señor; ارفع ببطء"));
        for hidden in ["\u{202E}", "\u{2066}", "\u{200B}", "\t", "\u{7}", "\u{85}"] {
            assert!(has_hidden_characters(&format!("a{hidden}b")), "{hidden:?}");
        }
    }
}
