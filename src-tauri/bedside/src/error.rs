//! What can go wrong at the bedside. Nothing that was held is lost by any of it.

use chrono::{NaiveDate, NaiveTime};
use sendaluna_core::Coded;
use sendaluna_core::gate::NotYet;
use sendaluna_core::plan::doc::Tier;
use sendaluna_exchange::refusal::Refusal;
use sendaluna_paper::NotPrinted;
use sendaluna_store::StoreError;
use sendaluna_words::LANGUAGES;

/// A failure of a use case.
#[derive(Debug)]
pub enum BedsideError {
    /// The file was refused.
    Refused(Refusal),
    /// The record could not be read or written.
    Store(StoreError),
    /// There is no plan yet.
    NoPlan,
    /// The side the patient named is not the plan's.
    SideDiffers,
    /// A home test needs somebody beside the patient.
    HelperNeeded,
    /// A home test cannot have come to that.
    NoTestResult,
    /// The patient says today is another date.
    DateDiffers,
    /// There is no such item in the plan.
    NoSuchItem(String),
    /// It is not allowed yet.
    NotYet {
        /// Which item or test.
        what: String,
        /// When, and who says so.
        not_yet: Box<NotYet>,
    },
    /// Nothing is left to do today.
    NothingDue,
    /// It hurt today, and is left for today.
    RestsToday,
    /// The plan does not ask for it now; if it does later, from which day.
    NotInPlanNow(Option<NaiveDate>),
    /// It was done today as often as the plan allows.
    EnoughToday,
    /// Not before this time of day, by the plan's spacing.
    TooSoon(NaiveTime),
    /// The clock has jumped; today's date must be confirmed.
    DateNotConfirmed(NaiveDate),
    /// The warning signs were not asked yet today.
    SignsNotAsked,
    /// A warning sign or pain said to ring; the clinic was not spoken to yet.
    MustRing(Tier),
    /// No session for so long that the plan says to ring first.
    AwayTooLong,
    /// A session is being led: nothing else is written meanwhile.
    SessionUnderWay,
    /// It is another day than that of the session.
    AnotherDay,
    /// There is no file on its way in.
    NoFile,
    /// There is no session to go on with.
    NoOpenSession,
    /// This does not fit the present moment of the session.
    NotNow,
    /// The item's dose does not move.
    NoSteps,
    /// It stands at the most that was signed.
    TopStep,
    /// It stands at the least that was signed.
    LeastStep,
    /// The clinic's rule for one up is not met yet.
    UpNotYet,
    /// There is no easier way for this exercise, or it is not allowed yet.
    NoEasierWay,
    /// A figure is outside what can be.
    FigureOutOfRange,
    /// The waking hours end before they begin.
    WakingHours,
    /// There is no such warning sign in the plan.
    NoSuchSign(String),
    /// A break ends before it begins, or is longer than half a year.
    BreakDays,
    /// No break holds today.
    NoBreak,
    /// The days to hand back end before they begin, or before there was a plan.
    NoDays,
    /// The clinic's list names no place that reports can be sealed to.
    NotSealed,
    /// A picture holds no code of ours, or cannot be read.
    NoCodes,
    /// More pictures of the letter are needed.
    CodesMissing {
        /// So many codes are there.
        have: usize,
        /// Of so many.
        of: usize,
    },
    /// The pictures are of several letters.
    CodesMixed,
    /// What the pictures hold is not whole.
    CodesDamaged,
    /// A page could not be set.
    NotPrinted(String),
    /// That language does not ship.
    NoSuchLanguage(String),
}

impl BedsideError {
    /// One of each of its own, for tables and tests.
    pub fn all() -> Vec<Self> {
        let not_yet = Box::new(NotYet { opens: None, reasons: vec![] });
        vec![
            Self::NoPlan,
            Self::SideDiffers,
            Self::DateDiffers,
            Self::HelperNeeded,
            Self::NoTestResult,
            Self::NoSuchItem(String::new()),
            Self::NotYet { what: String::new(), not_yet },
            Self::NothingDue,
            Self::RestsToday,
            Self::NotInPlanNow(None),
            Self::EnoughToday,
            Self::TooSoon(NaiveTime::MIN),
            Self::DateNotConfirmed(NaiveDate::MIN),
            Self::SignsNotAsked,
            Self::MustRing(Tier::RingToday),
            Self::MustRing(Tier::Emergency),
            Self::AwayTooLong,
            Self::SessionUnderWay,
            Self::AnotherDay,
            Self::NoFile,
            Self::NoOpenSession,
            Self::NotNow,
            Self::NoSteps,
            Self::TopStep,
            Self::LeastStep,
            Self::UpNotYet,
            Self::NoEasierWay,
            Self::FigureOutOfRange,
            Self::WakingHours,
            Self::NoSuchSign(String::new()),
            Self::BreakDays,
            Self::NoBreak,
            Self::NoDays,
            Self::NotSealed,
            Self::NoCodes,
            Self::CodesMissing { have: 0, of: 0 },
            Self::CodesMixed,
            Self::CodesDamaged,
            Self::NotPrinted(String::new()),
            Self::NoSuchLanguage(String::new()),
        ]
    }
}

impl From<Refusal> for BedsideError {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
    }
}

impl From<NotPrinted> for BedsideError {
    fn from(error: NotPrinted) -> Self {
        Self::NotPrinted(error.0)
    }
}

impl From<StoreError> for BedsideError {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
}

impl Coded for BedsideError {
    fn code(&self) -> &'static str {
        match self {
            Self::Refused(refusal) => refusal.code(),
            Self::Store(error) => error.code(),
            Self::NoPlan => "no-plan",
            Self::SideDiffers => "side-differs",
            Self::DateDiffers => "date-differs",
            Self::HelperNeeded => "helper-needed",
            Self::NoTestResult => "no-test-result",
            Self::NoSuchItem(_) => "no-such-item",
            Self::NotYet { .. } => "not-yet",
            Self::NothingDue => "nothing-due",
            Self::RestsToday => "rests-today",
            Self::NotInPlanNow(_) => "not-in-plan-now",
            Self::EnoughToday => "enough-today",
            Self::TooSoon(_) => "too-soon",
            Self::DateNotConfirmed(_) => "date-not-confirmed",
            Self::SignsNotAsked => "signs-not-asked",
            Self::MustRing(Tier::Emergency) => "must-ring-emergency",
            Self::MustRing(_) => "must-ring",
            Self::AwayTooLong => "away-too-long",
            Self::BreakDays => "break-days",
            Self::NoBreak => "no-break",
            Self::NoDays => "no-days",
            Self::NotSealed => "not-sealed",
            Self::NoCodes => "no-codes",
            Self::CodesMissing { .. } => "codes-missing",
            Self::CodesMixed => "codes-mixed",
            Self::CodesDamaged => "codes-damaged",
            Self::NotPrinted(_) => "not-printed",
            Self::SessionUnderWay => "session-under-way",
            Self::AnotherDay => "another-day",
            Self::NoFile => "no-file",
            Self::NoOpenSession => "no-open-session",
            Self::NotNow => "not-now",
            Self::NoSteps => "no-steps",
            Self::TopStep => "top-step",
            Self::LeastStep => "least-step",
            Self::UpNotYet => "up-not-yet",
            Self::NoEasierWay => "no-easier-way",
            Self::FigureOutOfRange => "figure-out-of-range",
            Self::WakingHours => "waking-hours",
            Self::NoSuchSign(_) => "no-such-sign",
            Self::NoSuchLanguage(_) => "no-such-language",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::Refused(refusal) => refusal.args(),
            Self::Store(error) => error.args(),
            Self::NoSuchItem(id) | Self::NoSuchSign(id) => vec![("id", id.clone())],
            Self::TooSoon(from) => vec![("time", from.format("%H:%M").to_string())],
            Self::CodesMissing { have, of } => vec![("have", have.to_string()), ("of", of.to_string())],
            Self::NotPrinted(what) => vec![("what", what.clone())],
            Self::NoSuchLanguage(tag) => vec![("lang", tag.clone()), ("languages", LANGUAGES.join(", "))],
            _ => Vec::new(),
        }
    }
}
