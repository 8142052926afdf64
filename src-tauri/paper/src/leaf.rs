//! What every printed thing has: its language, its size of print, its foot.

use sendaluna_words::Words;
use serde::Serialize;

/// How it is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Paper {
    /// In large print.
    pub large: bool,
}

/// What every template needs.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Leaf {
    pub title: String,
    pub lang: String,
    pub right_to_left: bool,
    pub large: bool,
    /// Stands on every page.
    pub foot: String,
    /// "Page {n} of {of}", with the marks that the template fills in.
    pub page: String,
}

impl Leaf {
    pub(crate) fn new(words: &Words, paper: Paper, title: String, foot: String) -> Self {
        Self {
            title,
            lang: words.lang().to_string(),
            right_to_left: words.is_right_to_left(),
            large: paper.large,
            foot,
            page: words.say("sheet-page", &[("n", "{n}".into()), ("of", "{of}".into())]),
        }
    }
}
