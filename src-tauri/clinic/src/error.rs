//! What can go wrong at the clinic.

use sendaluna_authority::KeyError;
use sendaluna_core::Coded;
use sendaluna_core::problem::Problem;
use sendaluna_exchange::refusal::Refusal;
use sendaluna_exchange::report::ReportFault;

use crate::check::CheckReport;

/// A failure of a use case.
#[derive(Debug)]
pub enum ClinicError {
    /// A file could not be read or written.
    File {
        /// Which.
        path: String,
        /// What the system said.
        what: String,
    },
    /// A source is not TOML, or a field has the wrong type or name.
    Source {
        /// Which file.
        path: String,
        /// Where in it.
        place: String,
        /// What is wrong, in the parser's words.
        what: String,
    },
    /// A source has problems.
    Problems(Vec<Problem>),
    /// The plan contradicts precautions.
    Contradictions(Box<CheckReport>),
    /// A key could not be made or opened.
    Key(KeyError),
    /// A signed part or file is refused.
    Refused(Refusal),
    /// The revision does not follow from the one before.
    RevisionNotNewer,
    /// The key belongs to nobody on the signers list.
    NotASigner,
    /// The key's owner has not the right that this needs.
    NoRight(String),
    /// A week of an episode whose day 0 is missing from the statement's episodes.
    EpisodeUnknown(String),
    /// The library has no such movement.
    UnknownMovement(String),
    /// A report does not open with this key.
    NotUnsealed,
    /// A report that cannot be read.
    Report(ReportFault),
    /// A page could not be set.
    NotPrinted(String),
    /// No passphrase was given, and there is no terminal to ask at.
    NoPassphrase,
}

impl ClinicError {
    /// One of each of its own, for tables and tests.
    pub fn all() -> Vec<Self> {
        let text = String::new;
        vec![
            Self::File { path: text(), what: text() },
            Self::Source { path: text(), place: text(), what: text() },
            Self::Problems(vec![]),
            Self::Contradictions(Box::default()),
            Self::RevisionNotNewer,
            Self::NotASigner,
            Self::NoRight(text()),
            Self::EpisodeUnknown(text()),
            Self::UnknownMovement(text()),
            Self::NotUnsealed,
            Self::NotPrinted(text()),
            Self::NoPassphrase,
        ]
    }

    /// The exit code: 1 if the answer is no, 3 if it could not be given.
    pub fn exit_code(&self) -> u8 {
        match self {
            Self::Problems(_)
            | Self::Contradictions(_)
            | Self::Refused(_)
            | Self::RevisionNotNewer
            | Self::NotASigner
            | Self::NoRight(_)
            | Self::EpisodeUnknown(_)
            | Self::UnknownMovement(_)
            | Self::NotUnsealed
            | Self::Report(_)
            | Self::Source { .. } => 1,
            Self::File { .. } | Self::Key(_) | Self::NotPrinted(_) | Self::NoPassphrase => 3,
        }
    }
}

impl From<KeyError> for ClinicError {
    fn from(error: KeyError) -> Self {
        Self::Key(error)
    }
}

impl From<Refusal> for ClinicError {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
    }
}

impl From<sendaluna_paper::NotPrinted> for ClinicError {
    fn from(error: sendaluna_paper::NotPrinted) -> Self {
        Self::NotPrinted(error.0)
    }
}

impl From<ReportFault> for ClinicError {
    fn from(fault: ReportFault) -> Self {
        Self::Report(fault)
    }
}

impl Coded for ClinicError {
    fn code(&self) -> &'static str {
        match self {
            Self::File { .. } => "clinic-file",
            Self::Source { .. } => "clinic-source",
            Self::Problems(_) => "clinic-problems",
            Self::Contradictions(_) => "clinic-contradictions",
            Self::Key(error) => error.code(),
            Self::Refused(refusal) => refusal.code(),
            Self::RevisionNotNewer => "clinic-revision-not-newer",
            Self::NotASigner => "clinic-not-a-signer",
            Self::NoRight(_) => "clinic-no-right",
            Self::EpisodeUnknown(_) => "clinic-episode-unknown",
            Self::UnknownMovement(_) => "clinic-unknown-movement",
            Self::NotUnsealed => "report-not-unsealed",
            Self::Report(fault) => fault.code(),
            Self::NotPrinted(_) => "not-printed",
            Self::NoPassphrase => "clinic-no-passphrase",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::File { path, what } => vec![("path", path.clone()), ("what", what.clone())],
            Self::Source { path, place, what } => {
                vec![("path", path.clone()), ("place", place.clone()), ("what", what.clone())]
            }
            Self::Problems(problems) => vec![("n", problems.len().to_string())],
            Self::Contradictions(report) => vec![("n", report.walk.contradictions.len().to_string())],
            Self::Refused(refusal) => refusal.args(),
            Self::Report(fault) => fault.args(),
            Self::NotPrinted(what) => vec![("what", what.clone())],
            Self::NoRight(who) => vec![("who", who.clone())],
            Self::EpisodeUnknown(id) | Self::UnknownMovement(id) => vec![("id", id.clone())],
            _ => Vec::new(),
        }
    }
}
