//! How a test is said to the patient: what to do and the bare figure. What the table says of it belongs to
//! the clinic.

use sendaluna_core::home_test::{Stance, TestResult};
use sendaluna_core::plan::doc::TestKind;
use sendaluna_words::Words;

/// A test's name.
pub(crate) fn name(words: &Words, kind: TestKind) -> String {
    let id = match kind {
        TestKind::ChairStand => "test-chair-stand",
        TestKind::TimedUpAndGo => "test-timed-up-and-go",
        TestKind::FourStageBalance => "test-four-stage-balance",
    };
    words.say(id, &[])
}

/// How to get ready, what to do, and what the helper does: after CDC STEADI, from memory.
pub(super) fn how(words: &Words, kind: TestKind) -> Vec<String> {
    let ids = match kind {
        TestKind::ChairStand => [
            "test-chair-stand-place",
            "test-chair-stand-how",
            "test-chair-stand-go",
            "test-chair-stand-helper",
        ],
        TestKind::TimedUpAndGo => [
            "test-timed-up-and-go-place",
            "test-timed-up-and-go-how",
            "test-timed-up-and-go-go",
            "test-timed-up-and-go-helper",
        ],
        TestKind::FourStageBalance => [
            "test-four-stage-balance-place",
            "test-four-stage-balance-how",
            "test-four-stage-balance-go",
            "test-four-stage-balance-helper",
        ],
    };
    ids.map(|id| words.say(id, &[])).into()
}

/// What to mind in every test.
pub(super) fn cautions(words: &Words) -> Vec<String> {
    ["test-close", "test-unsafe", "caution-nobody-sees-if-worried"].map(|id| words.say(id, &[])).into()
}

/// How to stand.
pub(super) fn stance(words: &Words, stance: Stance) -> String {
    let id = match stance {
        Stance::SideBySide => "test-stance-side-by-side",
        Stance::SemiTandem => "test-stance-semi-tandem",
        Stance::Tandem => "test-stance-tandem",
        Stance::OneLeg => "test-stance-one-leg",
    };
    words.say(id, &[])
}

/// A result, in sentences.
pub(crate) fn result(words: &Words, result: &TestResult) -> Vec<String> {
    match result {
        TestResult::ChairStand { stands, arms_used } => {
            let mut said = vec![words.say("test-result-chair-stand", &[("n", (*stands).into())])];
            said.extend(arms_used.then(|| words.say("test-result-arms", &[])));
            said
        }
        TestResult::TimedUpAndGo { tenths_s } => {
            vec![words.say("test-result-timed-up-and-go", &[("seconds", seconds(words, *tenths_s).into())])]
        }
        TestResult::FourStageBalance { held_tenths_s } => {
            held_tenths_s.iter().map(|(stance, tenths)| held(words, stance, tenths)).collect()
        }
    }
}

/// How long a stance was held.
pub(super) fn held(words: &Words, stance: Stance, tenths_s: u8) -> String {
    let id = match stance {
        Stance::SideBySide => "test-held-side-by-side",
        Stance::SemiTandem => "test-held-semi-tandem",
        Stance::Tandem => "test-held-tandem",
        Stance::OneLeg => "test-held-one-leg",
    };
    words.say(id, &[("seconds", seconds(words, tenths_s.into()).into())])
}

/// That it is written down; with whom to ring, if it was not allowed.
pub(super) fn written(words: &Words, done: &TestResult, against_gate: bool) -> String {
    let mut said = result(words, done);
    said.push(words.say("test-written", &[]));
    if against_gate {
        said.extend(["did-against-gate", "caution-nobody-sees"].map(|id| words.say(id, &[])));
    }
    said.join("\n")
}

/// Seconds to a tenth; whole ones without.
fn seconds(words: &Words, tenths: u16) -> String {
    words.decimal(f64::from(tenths) / 10.0, usize::from(!tenths.is_multiple_of(10)))
}
