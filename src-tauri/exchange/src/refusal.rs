//! Why a file is refused. Each reason has its own stable code; the plan in force is untouched by all.

use sendaluna_core::Coded;

/// A refusal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refusal {
    /// Not a plan file of ours.
    NotOurs,
    /// Over the size limit.
    TooLarge,
    /// Nested deeper than the limit.
    TooDeep,
    /// A newer format, or a field this version does not know.
    NewerFormat,
    /// Damaged or altered: not the exact bytes that were signed.
    Altered,
    /// A member comes twice.
    DuplicateMember,
    /// A part of another kind stands where this one belongs.
    WrongType,
    /// A header asks for something critical that we do not do.
    CriticalHeader,
    /// Another algorithm than Ed25519.
    WrongAlgorithm,
    /// A header member that has no business there.
    StrangeHeader,
    /// A key that cannot be trusted with a signature.
    WeakKey,
    /// Signed by nobody on the signers list.
    SignerUnknown,
    /// Signed by someone whose key was revoked.
    SignerRevoked(String),
    /// Signed by someone who could not sign yet.
    SignerNotYetValid(String),
    /// Signed by someone who could no longer sign.
    SignerExpired(String),
    /// Signed by someone without the right.
    SignerWithoutRight(String),
    /// The signers list is not valid in itself.
    SignersInvalid,
    /// The signers list is older than the one held, or than the plan asks for.
    SignersOlder,
    /// The signers list has other content under the same number.
    SignersChanged,
    /// The plan is older than the one held.
    PlanOlder,
    /// The plan has other content under the same revision.
    PlanChanged,
    /// From another clinic than the one held.
    ClinicOther,
    /// For someone else.
    PersonOther,
    /// A statement that the plan rests on is not in the file.
    StatementMissing,
    /// A statement is in the file that the plan does not name.
    StatementExtra,
    /// No statement by anyone who may set precautions.
    NoStatement,
    /// A precaution has other content under the same id.
    PrecautionChanged(String),
    /// Plan and statement disagree about the side or the day of an operation.
    EpisodeDiffers,
    /// A part is properly signed but not valid.
    Invalid(String),
    /// The letter code is needed for the first file.
    CodeNeeded,
    /// The letter code was mistyped.
    CodeMistyped,
    /// The letter code is right in itself, but belongs to another clinic.
    CodeOtherClinic,
}

impl Refusal {
    /// One of each, for tables and tests.
    pub fn all() -> Vec<Self> {
        let name = || "-".to_string();
        vec![
            Self::NotOurs,
            Self::TooLarge,
            Self::TooDeep,
            Self::NewerFormat,
            Self::Altered,
            Self::DuplicateMember,
            Self::WrongType,
            Self::CriticalHeader,
            Self::WrongAlgorithm,
            Self::StrangeHeader,
            Self::WeakKey,
            Self::SignerUnknown,
            Self::SignerRevoked(name()),
            Self::SignerNotYetValid(name()),
            Self::SignerExpired(name()),
            Self::SignerWithoutRight(name()),
            Self::SignersInvalid,
            Self::SignersOlder,
            Self::SignersChanged,
            Self::PlanOlder,
            Self::PlanChanged,
            Self::ClinicOther,
            Self::PersonOther,
            Self::StatementMissing,
            Self::StatementExtra,
            Self::NoStatement,
            Self::PrecautionChanged(name()),
            Self::EpisodeDiffers,
            Self::Invalid(name()),
            Self::CodeNeeded,
            Self::CodeMistyped,
            Self::CodeOtherClinic,
        ]
    }
}

impl Coded for Refusal {
    fn code(&self) -> &'static str {
        match self {
            Self::NotOurs => "file-not-ours",
            Self::TooLarge => "file-too-large",
            Self::TooDeep => "file-too-deep",
            Self::NewerFormat => "format-newer",
            Self::Altered => "file-altered",
            Self::DuplicateMember => "part-duplicate-member",
            Self::WrongType => "part-type",
            Self::CriticalHeader => "part-critical",
            Self::WrongAlgorithm => "part-algorithm",
            Self::StrangeHeader => "part-header",
            Self::WeakKey => "key-weak",
            Self::SignerUnknown => "signer-unknown",
            Self::SignerRevoked(_) => "signer-revoked",
            Self::SignerNotYetValid(_) => "signer-not-yet-valid",
            Self::SignerExpired(_) => "signer-expired",
            Self::SignerWithoutRight(_) => "signer-without-right",
            Self::SignersInvalid => "signers-invalid",
            Self::SignersOlder => "signers-older",
            Self::SignersChanged => "signers-changed",
            Self::PlanOlder => "plan-older",
            Self::PlanChanged => "plan-changed",
            Self::ClinicOther => "clinic-other",
            Self::PersonOther => "person-other",
            Self::StatementMissing => "statement-missing",
            Self::StatementExtra => "statement-extra",
            Self::NoStatement => "statement-none",
            Self::PrecautionChanged(_) => "precaution-changed",
            Self::EpisodeDiffers => "episode-differs",
            Self::Invalid(_) => "part-invalid",
            Self::CodeNeeded => "code-needed",
            Self::CodeMistyped => "code-mistyped",
            Self::CodeOtherClinic => "code-other-clinic",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::SignerRevoked(who)
            | Self::SignerNotYetValid(who)
            | Self::SignerExpired(who)
            | Self::SignerWithoutRight(who) => vec![("who", who.clone())],
            Self::PrecautionChanged(id) => vec![("id", id.clone())],
            Self::Invalid(place) => vec![("place", place.clone())],
            _ => Vec::new(),
        }
    }
}
