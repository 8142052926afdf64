//! What a window needs first.

use sendaluna_words::{LANGUAGES, Words};

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::Bedside;
use crate::settings::Settings;
use crate::view::day::ContactsView;
use crate::view::window::{LanguageView, ProblemView, SettingsView, StartView};

impl Bedside {
    /// The language the patient has set; else the system's, if the plan is written in it too; else
    /// the plan's first; else the system's.
    pub fn words(&self, system: &str) -> Words {
        let set = self.settings().ok().and_then(|settings| settings.language);
        let known = self.known_if_any().ok().flatten();
        let of_plan = known.map(|known| known.plan.head().languages.clone()).unwrap_or_default();
        let of_plan: Vec<String> = of_plan.iter().map(ToString::to_string).collect();
        let here = Words::new([system]).lang().to_string();
        let both = Some(here.clone()).filter(|here| of_plan.contains(here));
        let wanted: Vec<String> = set.into_iter().chain(both).chain(of_plan).chain([here]).collect();
        Words::new(wanted.iter().map(String::as_str))
    }

    /// What a window needs first, with today if a plan is held.
    pub fn start_view(&self, words: &Words, now: &Now) -> Result<StartView, BedsideError> {
        let settings = self.settings()?;
        let day = match self.day(words, now) {
            Ok(day) => Some(day),
            Err(BedsideError::NoPlan) => None,
            Err(error) => return Err(error),
        };
        let known = self.known_if_any()?;
        Ok(StartView {
            reminding: known.map(|known| known.reminding_view(self, words, now)),
            first_time: !settings.first_done,
            settings: settings_view(&settings, words),
            has_plan: day.is_some(),
            day,
            ..StartView::of_nothing(words)
        })
    }
}

impl StartView {
    /// A program without anything.
    fn of_nothing(words: &Words) -> Self {
        Self {
            settings: settings_view(&Settings::default(), words),
            languages: languages(),
            has_plan: false,
            first_time: true,
            problem: None,
            contacts: None,
            day: None,
            reminding: None,
            starts_at_login: None,
        }
    }

    /// A record that cannot be used, and why; with whom to ring, if it can be looked at at least.
    pub fn of_problem(words: &Words, problem: ProblemView, contacts: Option<ContactsView>) -> Self {
        Self { problem: Some(problem), contacts, first_time: false, ..Self::of_nothing(words) }
    }
}

/// Every language that ships, in its own name.
fn languages() -> Vec<LanguageView> {
    let view = |lang: &&str| LanguageView {
        name: Words::new([*lang]).say("language-name", &[]),
        rtl: Words::new([*lang]).say("language-direction", &[]) == "rtl",
        lang: (*lang).to_string(),
    };
    LANGUAGES.iter().map(view).collect()
}

fn settings_view(settings: &Settings, words: &Words) -> SettingsView {
    let time = |min: u16| format!("{:02}:{:02}", min / 60, min % 60);
    SettingsView {
        language: words.lang().to_string(),
        text: settings.text.unwrap_or(100),
        theme: settings.theme,
        awake_from_min: settings.waking.from_min,
        awake_to_min: settings.waking.to_min,
        awake_from: time(settings.waking.from_min),
        awake_to: time(settings.waking.to_min),
        hearing: settings.hearing,
        pace: settings.pace,
    }
}
