//! What people read and hear: Fluent messages from `locales/`, with fallback to English, and dates
//! and numbers as each language says them.

use std::borrow::Cow;

use chrono::{Locale, NaiveDate};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

mod files;

pub use files::{FILES, LANGUAGES};
pub use fluent_bundle::FluentValue as Value;

/// The words of one language.
pub struct Words {
    lang: Cow<'static, str>,
    bundle: FluentBundle<FluentResource>,
    english: Option<FluentBundle<FluentResource>>,
}

impl Words {
    /// The words of the first of the wanted languages that ships, else English.
    pub fn new<'a>(wanted: impl IntoIterator<Item = &'a str>) -> Self {
        let ships = |tag: &str| {
            let primary = tag.split(['-', '_', '.']).next().unwrap_or(tag);
            LANGUAGES.iter().copied().find(|lang| *lang == primary)
        };
        let lang = wanted.into_iter().find_map(ships).unwrap_or("en");
        Self { lang: lang.into(), bundle: bundle(lang), english: (lang != "en").then(|| bundle("en")) }
    }

    /// A language that does not ship yet, from texts of its own; what they lack is English.
    pub fn unshipped(lang: &str, texts: String) -> Self {
        let mut own = empty(lang);
        let resource = FluentResource::try_new(texts).unwrap_or_else(|(resource, _)| resource);
        // Of a message that comes twice, the first stands.
        let _ = own.add_resource(resource);
        Self { lang: lang.to_string().into(), bundle: own, english: Some(bundle("en")) }
    }

    /// The language.
    pub fn lang(&self) -> &str {
        &self.lang
    }

    /// Whether a message exists.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    /// A message, in this language, else in English; the id itself only if there is none at all,
    /// which the tests rule out.
    pub fn say(&self, id: &str, args: &[(&str, Value<'_>)]) -> String {
        let args: FluentArgs = args.iter().map(|(name, value)| (*name, value.clone())).collect();
        let in_bundle = |bundle: &FluentBundle<FluentResource>| {
            let pattern = bundle.get_message(id)?.value()?;
            Some(bundle.format_pattern(pattern, Some(&args), &mut Vec::new()).into_owned())
        };
        in_bundle(&self.bundle)
            .or_else(|| self.english.as_ref().and_then(in_bundle))
            .unwrap_or_else(|| id.to_string())
    }

    /// A date as people say it: "Monday 25 May".
    pub fn day(&self, date: NaiveDate) -> String {
        self.date("date-day", date)
    }

    /// The same with its year: "Monday 25 May 2026".
    pub fn day_and_year(&self, date: NaiveDate) -> String {
        self.date("date-day-and-year", date)
    }

    /// A date without its weekday: "25 May".
    pub fn short_day(&self, date: NaiveDate) -> String {
        self.date("date-short", date)
    }

    /// The name of a date's day of the week.
    pub fn weekday(&self, date: NaiveDate) -> String {
        date.format_localized("%A", self.locale()).to_string()
    }

    /// The short name of a date's day of the week.
    pub fn weekday_short(&self, date: NaiveDate) -> String {
        // In Arabic the short name is a single letter, which says too little.
        let short = if self.lang == "ar" { "%A" } else { "%a" };
        date.format_localized(short, self.locale()).to_string()
    }

    /// Several things: "a, b and c".
    pub fn list(&self, things: &[String]) -> String {
        match things {
            [] => String::new(),
            [one] => one.clone(),
            [first @ .., last] => {
                let first = first.join(&self.say("list-comma", &[]));
                self.say("list-last", &[("first", first.into()), ("last", last.as_str().into())])
            }
        }
    }

    /// Whether it is written from right to left.
    pub fn is_right_to_left(&self) -> bool {
        self.lang == "ar"
    }

    fn date(&self, id: &str, date: NaiveDate) -> String {
        let part = |format: &str| date.format_localized(format, self.locale()).to_string();
        self.say(
            id,
            &[
                ("weekday", part("%A").into()),
                ("day", part("%-d").into()),
                ("month", part("%B").into()),
                ("year", part("%Y").into()),
            ],
        )
    }

    /// A number with so many decimals, with the language's decimal mark.
    pub fn decimal(&self, value: f64, places: usize) -> String {
        let plain = format!("{value:.places$}");
        // Arabic is written with the digits 0 to 9 here, and with the point that goes with them.
        if matches!(&*self.lang, "en" | "ar") { plain } else { plain.replace('.', ",") }
    }

    fn locale(&self) -> Locale {
        match &*self.lang {
            "ar" => Locale::ar_EG,
            "de" => Locale::de_DE,
            "es" => Locale::es_ES,
            _ => Locale::en_GB,
        }
    }
}

/// What stands in for English in a build for tests: with a made-up language, everything that is still
/// English was left in code. No released program has it.
#[cfg(debug_assertions)]
fn stand_in(lang: &str) -> Option<FluentResource> {
    let file = std::env::var_os("SENDALUNA_ENGLISH").filter(|_| lang == "en")?;
    FluentResource::try_new(std::fs::read_to_string(file).ok()?).ok()
}

fn bundle(lang: &str) -> FluentBundle<FluentResource> {
    let mut bundle = empty(lang);
    #[cfg(debug_assertions)]
    if let Some(resource) = stand_in(lang) {
        // Of a message that comes twice, the first stands.
        let _ = bundle.add_resource(resource);
        return bundle;
    }
    for (_, _, text) in FILES.iter().filter(|(of, ..)| *of == lang) {
        let resource = FluentResource::try_new((*text).to_string()).unwrap_or_else(|(resource, _)| resource);
        // The tests refuse a file with an error or a message that comes twice.
        let _ = bundle.add_resource(resource);
    }
    bundle
}

fn empty(lang: &str) -> FluentBundle<FluentResource> {
    let id: LanguageIdentifier = lang.parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![id]);
    bundle.set_use_isolating(false);
    bundle
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_said_as_people_say_them() {
        let day = NaiveDate::from_ymd_opt(2026, 5, 25).expect("a date");
        assert_eq!(Words::new(["en"]).day(day), "Monday 25 May");
        assert_eq!(Words::new(["en"]).day_and_year(day), "Monday 25 May 2026");
        assert_eq!(Words::new(["es"]).day(day), "lunes 25 de mayo");
        assert_eq!(Words::new(["es"]).day_and_year(day), "lunes 25 de mayo de 2026");
        assert_eq!(Words::new(["de"]).day(day), "Montag, 25. Mai");
        assert_eq!(Words::new(["ar"]).day(day), "الاثنين 25 مايو");
    }

    #[test]
    fn the_first_wanted_language_that_ships_is_taken() {
        assert_eq!(Words::new(["xx", "es_ES.UTF-8", "en"]).lang(), "es");
        assert_eq!(Words::new(["xx"]).lang(), "en");
        assert_eq!(Words::new(["es"]).decimal(0.25, 2), "0,25");
    }
}
