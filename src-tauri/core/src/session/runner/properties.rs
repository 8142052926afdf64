//! Whatever happens to a session: nothing is lost, repeated or reordered.

use super::tests::{arranged, lead};
use super::*;
use crate::facts::Position;
use crate::ids::ItemId;
use crate::plan::doc::Tempo;
use crate::session::{Block, closed_length_ms};
use proptest::prelude::*;

/// What a patient, a busy device and chance may do to a session.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Act {
    Wake,
    Spurious,
    Pause,
    GoOn,
    Hurts,
    Leave,
    Easier,
    GoOnNow,
    Fewer,
    Late,
}

fn any_act() -> impl Strategy<Value = Act> {
    prop_oneof![
        12 => Just(Act::Wake),
        3 => Just(Act::Spurious),
        2 => Just(Act::Pause),
        3 => Just(Act::GoOn),
        1 => Just(Act::Hurts),
        1 => Just(Act::Leave),
        1 => Just(Act::Easier),
        1 => Just(Act::GoOnNow),
        1 => Just(Act::Fewer),
        1 => Just(Act::Late),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    /// Whatever happens, repetitions of a set are done in order, each once; a set that is written
    /// says what was done; sets come in order, none twice; and after all that, the session still
    /// leads to an end.
    #[test]
    fn no_repetition_is_lost_repeated_or_reordered(acts in proptest::collection::vec((any_act(), 1u64..700), 0..400)) {
        let mut runner = Runner::new(&arranged(&["pump", "walk", "curl", "knee"]));
        let mut now = 0u64;
        let mut told = runner.start(now).expect("not begun");
        // Where the easier way begins, with what was done of the set still counting.
        let mut eased = Vec::new();
        let finish = std::iter::repeat_n((Act::Wake, 1), 4_000);
        for (act, by) in acts.into_iter().chain(finish) {
            let cues = match act {
                Act::Wake => match runner.state() {
                    State::Prepare | State::Walking => runner.ready(now),
                    State::Saving => runner.saved(now),
                    State::Paused => runner.go_on(now),
                    State::Asking => runner.answered(now),
                    _ => {
                        now = runner.wake_at().unwrap_or(now);
                        Ok(runner.wake(now))
                    }
                },
                Act::Spurious => {
                    if runner.wake_at().is_some_and(|at| now + by < at) {
                        now += by;
                        prop_assert_eq!(runner.wake(now), vec![]);
                    }
                    Ok(vec![])
                }
                Act::Late => {
                    now += 10_000 * by;
                    Ok(runner.wake(now))
                }
                Act::Pause => runner.pause(now).map(|()| vec![]),
                Act::Hurts => runner.hurts(now).map(|()| vec![]),
                Act::GoOn => runner.go_on(now),
                Act::Leave => runner.leave(now),
                Act::Easier => runner.easier(now),
                Act::GoOnNow => runner.go_on_now(now),
                Act::Fewer => runner.end_set(),
            };
            if act == Act::Easier && cues.is_ok() {
                eased.push(told.len());
            }
            told.extend(cues.unwrap_or_default());
        }
        prop_assert_eq!(runner.state(), State::Done);
        let mut courses = 0u16;
        let mut written = Vec::new();
        for (i, cue) in told.iter().enumerate() {
            match cue {
                Cue::RepetitionDone { number, sides } => {
                    let in_turn = matches!(sides, SidesAtOnce::Left | SidesAtOnce::Right)
                        && told_in_turn(&told, cue);
                    let expected = if in_turn { courses / 2 + 1 } else { courses + 1 };
                    prop_assert_eq!(*number, expected);
                    courses += 1;
                }
                Cue::SetDone { set, done, .. } => {
                    let in_turn = matches!(set.sides, SidesAtOnce::TurnsFromLeft | SidesAtOnce::TurnsFromRight);
                    prop_assert_eq!(*done, if in_turn { courses / 2 } else { courses });
                    prop_assert!(!written.contains(set), "{:?} twice", set);
                    written.push(set.clone());
                    courses = 0;
                }
                Cue::SetUp { .. } if !eased.contains(&i) => courses = 0,
                _ => {}
            }
        }
        let order = |item: &str| written.iter().filter(|set| set.item.as_str() == item).map(|set| set.set).collect::<Vec<_>>();
        prop_assert!(order("pump").is_sorted());
        prop_assert!(order("walk").is_sorted());
    }

    /// Any doses: the compiled script is as long as the closed formula.
    #[test]
    fn any_script_has_its_closed_length(
        doses in proptest::collection::vec((1u8..4, 1u16..6, 1u16..5, 0u16..6, 1u16..5, 0u16..4, 0u16..40, 0usize..4), 1..5),
    ) {
        let passes = [
            vec![SidesAtOnce::Left],
            vec![SidesAtOnce::Both],
            vec![SidesAtOnce::TurnsFromRight],
            vec![SidesAtOnce::Right, SidesAtOnce::Left],
        ];
        let parts: Vec<Part> = doses
            .iter()
            .enumerate()
            .map(|(i, (sets, most, out_s, hold_s, back_s, pause_s, rest_s, pass))| Part {
                item: ItemId::new(format!("i{i}")).expect("an id"),
                sets: *sets,
                work: Amount::Repetitions {
                    least: 1,
                    most: *most,
                    tempo: Tempo { out_s: *out_s, hold_s: *hold_s, back_s: *back_s, pause_s: *pause_s },
                },
                rest_s: *rest_s,
                passes: passes[*pass].clone(),
                position: Position::Supine,
                beside_you: false,
            })
            .collect();
        let blocks: Vec<Block> = (0..parts.len()).map(Block::Whole).collect();
        let arranged = Arranged { parts, blocks };
        let told = lead(&mut Runner::new(&arranged));
        let length = closed_length_ms(&arranged.parts, &arranged.blocks);
        prop_assert_eq!(told.last().map(|(at, _)| *at), Some(length));
        prop_assert_eq!(Script::compile(&arranged.parts, &turns(&arranged.parts, &arranged.blocks)).length_ms, length);
    }
}

/// Whether this very cue stands in a set that is done in turn: the set-up before it says so.
fn told_in_turn(told: &[Cue], cue: &Cue) -> bool {
    let at = told.iter().position(|other| std::ptr::eq(other, cue)).expect("it was told");
    told[..at]
        .iter()
        .rev()
        .find_map(|cue| match cue {
            Cue::SetUp { set, .. } => {
                Some(matches!(set.sides, SidesAtOnce::TurnsFromLeft | SidesAtOnce::TurnsFromRight))
            }
            _ => None,
        })
        .unwrap_or(false)
}
