//! How what went wrong is said.

use sendaluna_core::Coded;
use sendaluna_say::Speaker;
pub use sendaluna_say::error as coded;
use sendaluna_words::Words;

use crate::error::BedsideError;
use crate::home::Known;
use crate::view::window::ProblemView;

/// What happened, and what to do next.
pub fn error(speaker: &Speaker<'_>, error: &BedsideError) -> (String, String) {
    let (happened, to_do) = coded(speaker.words, error);
    match error {
        BedsideError::NotYet { not_yet, .. } => (speaker.opens(not_yet), to_do),
        BedsideError::DateNotConfirmed(day) => {
            let day = speaker.words.day_and_year(*day);
            (speaker.words.say("err-date-not-confirmed", &[("day", day.into())]), to_do)
        }
        BedsideError::NotInPlanNow(Some(day)) => {
            let day = speaker.words.day_and_year(*day);
            (speaker.words.say("gate-open-from", &[("day", day.into())]), to_do)
        }
        _ => (happened, to_do),
    }
}

/// Whom to ring, in working hours.
pub(crate) fn ring_clinic(words: &Words, known: &Known) -> String {
    let clinic = &known.plan.doc().clinic;
    let args = [("clinic", clinic.name.as_str().into()), ("phone", clinic.phone.as_str().into())];
    words.say("ring-clinic", &args)
}

/// A failure, whole: with who says so, and whom to ring if a plan is held.
pub fn problem(words: &Words, known: Option<&Known>, error: &BedsideError) -> ProblemView {
    let speaker = Speaker::new(words, known.map(|known| &known.plan));
    let (happened, to_do) = self::error(&speaker, error);
    let reasons = match error {
        BedsideError::NotYet { not_yet, .. } => {
            not_yet.reasons.iter().map(|reason| speaker.reason(reason)).collect()
        }
        _ => Vec::new(),
    };
    let ring = known.map(|known| ring_clinic(words, known));
    ProblemView { code: error.code().to_string(), happened, to_do, reasons, ring }
}
