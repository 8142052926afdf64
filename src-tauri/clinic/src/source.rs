//! Sources: what people write, in TOML. A plan's source is its document without what the program
//! fills; signers and statements have a few conveniences of their own (weeks in place of dates, key
//! files in place of keys).

use std::path::{Path, PathBuf};

use chrono::{DateTime, NaiveDate, Utc};
use schemars::JsonSchema;
use sendaluna_core::calendar::last_day_of_week;
use sendaluna_core::digest::Digest;
use sendaluna_core::facts::OperatedSide;
use sendaluna_core::ids::{EpisodeId, PersonId, PrecautionId, SignerId};
use sendaluna_core::plan::FORMAT;
use sendaluna_core::plan::doc::{Episode, PlanDoc};
use sendaluna_core::precaution::{End, Lift, Precaution, PrecautionSide, Rule, StatementDoc};
use sendaluna_core::text::Text;
use sendaluna_exchange::key::PublicKey;
use sendaluna_exchange::signers::{Right, Signer, SignersDoc};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use crate::error::ClinicError;

/// The source of a signers list.
#[derive(Debug, Clone, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SignersSource {
    /// Counts only ever up.
    pub number: u32,
    /// The clinic's name.
    pub clinic: String,
    /// The age recipient that reports are sealed to, or …
    #[serde(default)]
    pub reports_to: Option<String>,
    /// … the public file of the key that opens them, beside this source.
    #[serde(default)]
    pub reports_to_file: Option<PathBuf>,
    /// Who may sign what.
    pub signers: Vec<SignerSource>,
}

/// Somebody who signs.
#[derive(Debug, Clone, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SignerSource {
    /// Stable id.
    pub id: SignerId,
    /// What patients read.
    pub name: String,
    /// Surgeon, therapist; by language.
    pub role: Text,
    /// The public key, or …
    #[serde(default)]
    pub key: Option<PublicKey>,
    /// … its public file, beside this source.
    #[serde(default)]
    pub key_file: Option<PathBuf>,
    /// The first day of signing.
    pub from: NaiveDate,
    /// The last day of signing.
    #[serde(default)]
    pub until: Option<NaiveDate>,
    /// Since when the key is not to be trusted.
    #[serde(default)]
    pub revoked: Option<NaiveDate>,
    /// What this person may do.
    pub rights: Vec<Right>,
}

/// The source of a precaution statement.
#[derive(Debug, Clone, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StatementSource {
    /// For whom.
    pub person: PersonId,
    /// The episodes that the precautions name, as in the plan.
    #[serde(default)]
    pub episodes: Vec<Episode>,
    /// "None" is said too.
    #[serde(default)]
    pub none: bool,
    /// Precautions set.
    #[serde(default)]
    pub precautions: Vec<PrecautionSource>,
    /// Precautions lifted.
    #[serde(default)]
    pub lifts: Vec<Lift>,
    /// The clinic's own movements that were seen, by the digest of their facts.
    #[serde(default)]
    pub movements_seen: Vec<Digest>,
    /// Set-backs up to this moment no longer hold openings back.
    #[serde(default)]
    pub releases_set_backs_until: Option<DateTime<Utc>>,
}

/// One precaution.
#[derive(Debug, Clone, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PrecautionSource {
    /// Stable id; changed content needs a new one.
    pub id: PrecautionId,
    /// The episode it follows from.
    pub episode: EpisodeId,
    /// The side; the operated one if not given.
    #[serde(default)]
    pub side: SideSource,
    /// What is not allowed.
    pub rule: Rule,
    /// Until when.
    pub ends: EndSource,
    /// Why, and what it means, for the patient.
    pub why: Text,
}

/// A side, or the operated one.
#[derive(Debug, Clone, Copy, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SideSource {
    /// The operated side of the episode.
    #[default]
    Operated,
    /// Left.
    Left,
    /// Right.
    Right,
    /// Either side, and the trunk.
    Both,
}

/// When a precaution ends: in weeks of the episode, or by date.
#[derive(Debug, Clone, Copy, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum EndSource {
    /// Through a week; week 1 is days 0 to 6.
    ThroughWeek {
        /// The week.
        week: u16,
    },
    /// Through a day, included.
    Through {
        /// The last gated day.
        day: NaiveDate,
    },
    /// Until lifted by someone with the right.
    UntilLifted {
        /// Not before the end of this week even then.
        #[serde(default)]
        not_before_end_of_week: Option<u16>,
        /// Not before this day even then.
        #[serde(default)]
        not_before: Option<NaiveDate>,
    },
}

/// Reads a source. Dates may be written as TOML dates or as text.
pub fn read<T: DeserializeOwned>(path: &Path) -> Result<T, ClinicError> {
    let said =
        |place: String, what: String| ClinicError::Source { path: path.display().to_string(), place, what };
    let text = read_text(path)?;
    let value: toml::Value =
        toml::from_str(&text).map_err(|e| said(line_of(&text, &e), e.message().to_string()))?;
    serde_path_to_error::deserialize(dates_as_text(value))
        .map_err(|e| said(e.path().to_string(), e.inner().to_string().trim().to_string()))
}

/// Reads a text file.
pub fn read_text(path: &Path) -> Result<String, ClinicError> {
    std::fs::read_to_string(path)
        .map_err(|e| ClinicError::File { path: path.display().to_string(), what: e.to_string() })
}

/// Reads the source of a plan.
pub fn read_plan(path: &Path) -> Result<PlanDoc, ClinicError> {
    read(path)
}

impl SignersSource {
    /// The document, with the clinic key that is to sign it.
    pub fn to_doc(
        &self,
        beside: &Path,
        clinic_key: PublicKey,
        issued_at: DateTime<Utc>,
    ) -> Result<SignersDoc, ClinicError> {
        let missing = |place: &str| ClinicError::Source {
            path: beside.display().to_string(),
            place: place.to_string(),
            what: "give the key or its file".to_string(),
        };
        let public = |file: &PathBuf| {
            let path = beside.parent().unwrap_or(Path::new(".")).join(file);
            read_text(&path).map(|text| text.trim().to_string())
        };
        let signer = |(i, s): (usize, &SignerSource)| {
            let key = match (&s.key, &s.key_file) {
                (Some(key), _) => *key,
                (None, Some(file)) => PublicKey::parse(&public(file)?)
                    .map_err(|_| missing(&format!("signers[{i}].key_file")))?,
                (None, None) => return Err(missing(&format!("signers[{i}].key"))),
            };
            Ok(Signer {
                id: s.id.clone(),
                name: s.name.clone(),
                role: s.role.clone(),
                key,
                from: s.from,
                until: s.until,
                revoked: s.revoked,
                rights: s.rights.clone(),
            })
        };
        let reports_to = match (&self.reports_to, &self.reports_to_file) {
            (Some(recipient), _) => recipient.clone(),
            (None, Some(file)) => public(file)?,
            (None, None) => return Err(missing("reports_to")),
        };
        Ok(SignersDoc {
            format: FORMAT,
            number: self.number,
            issued_at,
            clinic: self.clinic.clone(),
            clinic_key,
            signers: self.signers.iter().enumerate().map(signer).collect::<Result<_, _>>()?,
            reports_to,
        })
    }
}

impl StatementSource {
    /// The document: sides explicit, ends absolute.
    pub fn to_doc(&self, issued_at: DateTime<Utc>) -> Result<StatementDoc, ClinicError> {
        let precaution = |source: &PrecautionSource| {
            let episode = self
                .episodes
                .iter()
                .find(|episode| episode.id == source.episode)
                .ok_or_else(|| ClinicError::EpisodeUnknown(source.episode.to_string()))?;
            Ok(Precaution {
                id: source.id.clone(),
                episode: source.episode.clone(),
                side: explicit_side(source.side, episode.side),
                rule: source.rule.clone(),
                ends: absolute_end(source.ends, episode),
                why: source.why.clone(),
            })
        };
        Ok(StatementDoc {
            format: FORMAT,
            person: self.person.clone(),
            issued_at,
            episodes: self.episodes.clone(),
            none: self.none,
            precautions: self.precautions.iter().map(precaution).collect::<Result<_, ClinicError>>()?,
            lifts: self.lifts.clone(),
            movements_seen: self.movements_seen.clone(),
            releases_set_backs_until: self.releases_set_backs_until,
        })
    }
}

fn explicit_side(side: SideSource, operated: OperatedSide) -> PrecautionSide {
    match (side, operated) {
        (SideSource::Left, _) | (SideSource::Operated, OperatedSide::Left) => PrecautionSide::Left,
        (SideSource::Right, _) | (SideSource::Operated, OperatedSide::Right) => PrecautionSide::Right,
        (SideSource::Both | SideSource::Operated, _) => PrecautionSide::Both,
    }
}

fn absolute_end(end: EndSource, episode: &Episode) -> End {
    let zero = episode.day_zero.date();
    match end {
        EndSource::Through { day } => End::Through { day, week: None },
        EndSource::ThroughWeek { week } => zero.map_or(End::DayZeroUnknown { week }, |zero| End::Through {
            day: last_day_of_week(zero, week),
            week: Some(week),
        }),
        EndSource::UntilLifted { not_before_end_of_week: week, not_before } => {
            let after_week = zero.zip(week).and_then(|(zero, week)| last_day_of_week(zero, week).succ_opt());
            End::UntilLifted { not_before: not_before.max(after_week), week }
        }
    }
}

/// TOML's own dates become the text that a document holds.
fn dates_as_text(value: toml::Value) -> toml::Value {
    match value {
        toml::Value::Datetime(date) => toml::Value::String(date.to_string()),
        toml::Value::Array(list) => toml::Value::Array(list.into_iter().map(dates_as_text).collect()),
        toml::Value::Table(table) => {
            toml::Value::Table(table.into_iter().map(|(name, value)| (name, dates_as_text(value))).collect())
        }
        other => other,
    }
}

fn line_of(text: &str, error: &toml::de::Error) -> String {
    error.span().map_or_else(String::new, |span| {
        format!("line {}", text[..span.start.min(text.len())].matches('\n').count() + 1)
    })
}
