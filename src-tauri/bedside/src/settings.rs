//! How the patient wants it.

use sendaluna_core::calendar::Waking;
use sendaluna_store::Store;
use sendaluna_words::LANGUAGES;

use crate::error::BedsideError;
use crate::home::Bedside;

const LANGUAGE: &str = "language";
const WAKING: &str = "waking";

/// What can be set.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Settings {
    /// The language; if not set, the plan's first.
    pub language: Option<String>,
    /// When the patient is awake.
    pub waking: Waking,
}

impl Settings {
    pub(crate) fn read(store: &Store) -> Result<Self, BedsideError> {
        let language = store.setting(LANGUAGE)?.and_then(|json| serde_json::from_str(&json).ok());
        let waking = store.setting(WAKING)?.and_then(|json| serde_json::from_str::<(u16, u16)>(&json).ok());
        let waking = waking.map_or_else(Waking::default, |(from_min, to_min)| Waking { from_min, to_min });
        Ok(Self { language, waking })
    }
}

impl Bedside {
    /// The settings.
    pub fn settings(&self) -> Result<Settings, BedsideError> {
        Settings::read(self.store())
    }

    /// Chooses a language that ships.
    pub fn set_language(&mut self, lang: &str) -> Result<(), BedsideError> {
        if !LANGUAGES.contains(&lang) {
            return Err(BedsideError::NoSuchLanguage(lang.to_string()));
        }
        let json = serde_json::Value::from(lang).to_string();
        self.store_mut().write(|w| Ok(w.setting(LANGUAGE, &json)?))
    }

    /// Sets the waking hours, in minutes after midnight.
    pub fn set_waking(&mut self, from_min: u16, to_min: u16) -> Result<(), BedsideError> {
        if from_min >= to_min || to_min > 24 * 60 {
            return Err(BedsideError::WakingHours);
        }
        let json = serde_json::json!([from_min, to_min]).to_string();
        self.store_mut().write(|w| Ok(w.setting(WAKING, &json)?))
    }
}
