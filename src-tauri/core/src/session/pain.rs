//! What pain decides, by the plan's rule. Every level is the clinic's.

use serde::{Deserialize, Serialize};

use crate::plan::doc::{PainRule, SharpPain};
use crate::record::Distress;

/// What kind of pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PainKind {
    /// A stretching, pulling or tired feeling.
    Stretching,
    /// Sharp, stabbing, catching.
    Sharp,
}

/// The plan's answer, mildest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PainAnswer {
    /// Go on as before.
    GoOn,
    /// Go on, gently.
    Gently,
    /// Take the easier variant.
    Easier,
    /// Stop this exercise.
    StopExercise,
    /// Stop for today and ring.
    StopToday,
}

/// The answer to pain during an exercise. `before` is the level at rest before the session, if it
/// was asked. The gravest that applies is given.
pub fn answer_during(rule: &PainRule, before: Option<u8>, level: u8, kind: PainKind) -> PainAnswer {
    let by_level = [
        (rule.slow_at, PainAnswer::Gently),
        (rule.easier_at, PainAnswer::Easier),
        (rule.stop_exercise_at, PainAnswer::StopExercise),
        (rule.stop_today_at, PainAnswer::StopToday),
    ];
    let level_answer = by_level.into_iter().filter(|(at, _)| level >= *at).map(|(_, answer)| answer).max();
    let risen = before.is_some_and(|before| level >= before.saturating_add(rule.rise_stop_exercise));
    let rise_answer = risen.then_some(PainAnswer::StopExercise);
    let sharp_answer = (kind == PainKind::Sharp && level > 0).then_some(match rule.sharp {
        SharpPain::StopExercise => PainAnswer::StopExercise,
        SharpPain::StopToday => PainAnswer::StopToday,
    });
    level_answer.max(rise_answer).max(sharp_answer).unwrap_or(PainAnswer::GoOn)
}

/// The answer to distress that a helper sees during an exercise, in place of a figure. No level is asked for,
/// so it errs on the side of stopping: common practice, no source.
pub fn answer_to_distress(seen: Distress) -> PainAnswer {
    match seen {
        Distress::None => PainAnswer::GoOn,
        Distress::Some => PainAnswer::StopExercise,
        Distress::Much => PainAnswer::StopToday,
    }
}

/// The answer to distress that a helper sees at rest, before a session. Much of it is a reason to ring, and
/// some is none to begin with care: common practice, no source.
pub fn answer_to_distress_at_rest(seen: Distress) -> PainAnswer {
    if seen == Distress::Much { PainAnswer::StopToday } else { PainAnswer::GoOn }
}

/// The answer to pain at rest, before a session.
pub fn answer_at_rest(rule: &PainRule, level: u8) -> PainAnswer {
    if level >= rule.rest_stop_today_at { PainAnswer::StopToday } else { PainAnswer::GoOn }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Levels after the pain-monitoring model (Silbernagel 2007; Thomeé 1997, from memory): to 3
    /// safe, 4 and 5 acceptable, over 5 stop.
    fn rule() -> PainRule {
        PainRule {
            rest_stop_today_at: 7,
            slow_at: 4,
            easier_at: 5,
            stop_exercise_at: 6,
            stop_today_at: 8,
            rise_stop_exercise: 3,
            sharp: SharpPain::StopExercise,
            settle_minutes: 60,
            next_morning_rise: 2,
        }
    }

    #[test]
    fn distress_that_is_seen_errs_on_the_side_of_stopping() {
        let during = [Distress::None, Distress::Some, Distress::Much].map(answer_to_distress);
        assert_eq!(during, [PainAnswer::GoOn, PainAnswer::StopExercise, PainAnswer::StopToday]);
        let at_rest = [Distress::None, Distress::Some, Distress::Much].map(answer_to_distress_at_rest);
        assert_eq!(at_rest, [PainAnswer::GoOn, PainAnswer::GoOn, PainAnswer::StopToday]);
    }

    #[test]
    fn each_level_has_its_answer() {
        use PainAnswer::{Easier, Gently, GoOn, StopExercise, StopToday};
        let expected = [
            GoOn,
            GoOn,
            GoOn,
            GoOn,
            Gently,
            Easier,
            StopExercise,
            StopExercise,
            StopToday,
            StopToday,
            StopToday,
        ];
        for (level, answer) in (0u8..).zip(expected) {
            assert_eq!(answer_during(&rule(), None, level, PainKind::Stretching), answer, "{level}");
        }
    }

    #[test]
    fn a_rise_and_a_sharp_pain_stop_early() {
        assert_eq!(answer_during(&rule(), Some(0), 3, PainKind::Stretching), PainAnswer::StopExercise);
        assert_eq!(answer_during(&rule(), Some(1), 3, PainKind::Stretching), PainAnswer::GoOn);
        assert_eq!(answer_during(&rule(), None, 1, PainKind::Sharp), PainAnswer::StopExercise);
        assert_eq!(answer_during(&rule(), None, 0, PainKind::Sharp), PainAnswer::GoOn);
        let grave = PainRule { sharp: SharpPain::StopToday, ..rule() };
        assert_eq!(answer_during(&grave, None, 2, PainKind::Sharp), PainAnswer::StopToday);
    }

    #[test]
    fn pain_at_rest_can_end_the_day_before_it_begins() {
        assert_eq!(answer_at_rest(&rule(), 6), PainAnswer::GoOn);
        assert_eq!(answer_at_rest(&rule(), 7), PainAnswer::StopToday);
    }

    proptest! {
        #[test]
        fn more_pain_never_brings_a_milder_answer(
            before in proptest::option::of(0u8..=10), level in 0u8..10, sharp: bool,
        ) {
            let kind = if sharp { PainKind::Sharp } else { PainKind::Stretching };
            let here = answer_during(&rule(), before, level, kind);
            prop_assert!(answer_during(&rule(), before, level + 1, kind) >= here);
            prop_assert!(answer_during(&rule(), before, level, PainKind::Sharp) >= here);
        }
    }
}
