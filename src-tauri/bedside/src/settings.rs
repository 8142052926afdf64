//! How the patient wants it.

use sendaluna_core::calendar::Waking;
use sendaluna_core::session::Pace;
use sendaluna_store::Store;
use sendaluna_words::LANGUAGES;
use serde::{Deserialize, Serialize};

use crate::error::BedsideError;
use crate::home::Bedside;
use crate::reminding::{Reminding, RemindingChange};

const LANGUAGE: &str = "language";
const WAKING: &str = "waking";
const TEXT: &str = "text";
const THEME: &str = "theme";
const FIRST_DONE: &str = "first-done";
const REMINDING: &str = "reminding";
const VOICE: &str = "voice";
const PACE: &str = "pace";

/// Rate and pitch of the voice go from this much below the voice's own to this much above.
pub const VOICE_MOST: i8 = 100;

/// Text sizes, in per cent.
pub const TEXT_SIZES: [u16; 4] = [100, 125, 150, 200];

/// Light, dark, or as the device.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Theme {
    /// As the device.
    #[default]
    System,
    /// Light paper.
    Light,
    /// Dark paper.
    Dark,
}

/// How a session is to be heard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Hearing {
    /// Cues are spoken.
    pub speech: bool,
    /// Cues have tones.
    pub tones: bool,
    /// How fast it speaks, -100 to 100; 0 is the voice's own.
    pub rate: i8,
    /// How high it speaks, -100 to 100; 0 is the voice's own.
    pub pitch: i8,
}

impl Default for Hearing {
    /// A little slower than the voice's own: common practice, no source.
    fn default() -> Self {
        Self { speech: true, tones: true, rate: -20, pitch: 0 }
    }
}

/// What can be set.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Settings {
    /// The language; if not set, the plan's first.
    pub language: Option<String>,
    /// When the patient is awake.
    pub waking: Waking,
    /// Text size in per cent; if not set, 100.
    pub text: Option<u16>,
    /// Light, dark, or as the device.
    pub theme: Theme,
    /// The first two minutes were gone through.
    pub first_done: bool,
    /// How the patient wants to be reminded.
    pub reminding: Reminding,
    /// How a session is to be heard.
    pub hearing: Hearing,
    /// How fast the count goes.
    pub pace: Pace,
}

/// What the patient changes; what is not given stays.
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Change {
    /// The language.
    pub language: Option<String>,
    /// Text size, in per cent.
    pub text: Option<u16>,
    /// Light, dark, or as the device.
    pub theme: Option<Theme>,
    /// Awake from, in minutes after midnight.
    pub awake_from_min: Option<u16>,
    /// Awake to, in minutes after midnight.
    pub awake_to_min: Option<u16>,
    /// The first two minutes were gone through.
    pub first_done: Option<bool>,
    /// How the patient wants to be reminded.
    pub reminding: Option<RemindingChange>,
    /// How a session is to be heard.
    pub hearing: Option<Hearing>,
    /// How fast the count goes.
    pub pace: Option<Pace>,
}

impl Settings {
    pub(crate) fn read(store: &Store) -> Result<Self, BedsideError> {
        let waking = get::<(u16, u16)>(store, WAKING)?;
        let waking = waking.map_or_else(Waking::default, |(from_min, to_min)| Waking { from_min, to_min });
        Ok(Self {
            language: get(store, LANGUAGE)?,
            waking,
            text: get(store, TEXT)?,
            theme: get(store, THEME)?.unwrap_or_default(),
            first_done: get(store, FIRST_DONE)?.unwrap_or(false),
            reminding: get(store, REMINDING)?.unwrap_or_default(),
            hearing: get(store, VOICE)?.unwrap_or_default(),
            pace: get(store, PACE)?.unwrap_or_default(),
        })
    }
}

/// A setting; one that this version cannot read counts as not set.
fn get<T: for<'a> Deserialize<'a>>(store: &Store, name: &str) -> Result<Option<T>, BedsideError> {
    Ok(store.setting(name)?.and_then(|json| serde_json::from_str(&json).ok()))
}

impl Bedside {
    /// The settings.
    pub fn settings(&self) -> Result<Settings, BedsideError> {
        Settings::read(self.store())
    }

    /// Changes settings: all of them or none.
    pub fn change_settings(&mut self, change: &Change) -> Result<(), BedsideError> {
        let held = self.settings()?;
        let from = change.awake_from_min.unwrap_or(held.waking.from_min);
        let to = change.awake_to_min.unwrap_or(held.waking.to_min);
        if from >= to || to > 24 * 60 {
            return Err(BedsideError::WakingHours);
        }
        if let Some(lang) = change.language.as_deref().filter(|lang| !LANGUAGES.contains(lang)) {
            return Err(BedsideError::NoSuchLanguage(lang.to_string()));
        }
        if change.text.is_some_and(|text| !TEXT_SIZES.contains(&text)) {
            return Err(BedsideError::FigureOutOfRange);
        }
        let out_of_range = |value: i8| !(-VOICE_MOST..=VOICE_MOST).contains(&value);
        if change.hearing.is_some_and(|hearing| out_of_range(hearing.rate) || out_of_range(hearing.pitch)) {
            return Err(BedsideError::FigureOutOfRange);
        }
        let reminding = change.reminding.as_ref().map(|change| held.reminding.with(change)).transpose()?;
        let waking = change.awake_from_min.or(change.awake_to_min).map(|_| serde_json::json!([from, to]));
        let changes = [
            (LANGUAGE, change.language.as_ref().map(|lang| serde_json::json!(lang))),
            (WAKING, waking),
            (TEXT, change.text.map(|text| serde_json::json!(text))),
            (THEME, change.theme.map(|theme| serde_json::json!(theme))),
            (FIRST_DONE, change.first_done.map(|done| serde_json::json!(done))),
            (REMINDING, reminding.map(|reminding| serde_json::json!(reminding))),
            (VOICE, change.hearing.map(|hearing| serde_json::json!(hearing))),
            (PACE, change.pace.map(|pace| serde_json::json!(pace))),
        ];
        self.store_mut().write(|w| {
            for (name, value) in changes {
                if let Some(value) = value {
                    w.setting(name, &value.to_string())?;
                }
            }
            Ok(())
        })
    }
}
