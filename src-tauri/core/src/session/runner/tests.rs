use super::*;
use crate::calendar::DueItem;
use crate::facts::Position;
use crate::gate::Gate;
use crate::ids::{ItemId, StageId};
use crate::library::Library;
use crate::plan::doc::{PlanDoc, Round};
use crate::sample;
use crate::session::{Block, arrange, closed_length_ms};

fn due(doc: &PlanDoc, id: &str) -> DueItem {
    let item = doc.items.iter().find(|item| item.id.as_str() == id).expect("in the sample");
    let stage = doc.stages.iter().find(|s| s.items.iter().any(|entry| entry.item == item.id));
    DueItem {
        item: item.id.clone(),
        stage: stage.map_or_else(|| StageId::new("none").expect("an id"), |stage| stage.id.clone()),
        dose: item.dose.clone(),
        when: item.when.clone(),
        step: None,
        times: 1,
        most: 1,
        done: 0,
        not_before: None,
        rests_today: false,
        gate: Gate::Open,
    }
}

pub(super) fn arranged(ids: &[&str]) -> Arranged {
    let plan = sample::plan();
    let due: Vec<_> = ids.iter().map(|id| due(plan.doc(), id)).collect();
    arrange(&plan, &Library::shipped(), &due.iter().collect::<Vec<_>>())
}

/// Leads to the end: wakes at each deadline, says "ready" and "saved" at once.
pub(super) fn lead(runner: &mut Runner) -> Vec<(u64, Cue)> {
    let mut now = 0;
    let mut told = Vec::new();
    let mut keep = |now: u64, cues: Vec<Cue>| told.extend(cues.into_iter().map(|cue| (now, cue)));
    keep(now, runner.start(now).expect("not begun"));
    while runner.state() != State::Done {
        match runner.state() {
            State::Prepare | State::Walking => keep(now, runner.ready(now).expect("waits")),
            State::Saving => keep(now, runner.saved(now).expect("waits")),
            _ => {
                now = runner.wake_at().expect("time goes on");
                keep(now, runner.wake(now));
            }
        }
    }
    told
}

#[test]
fn a_set_is_led_second_by_second() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    let told = lead(&mut runner);
    let said: Vec<String> = told
        .iter()
        .take_while(|(at, _)| *at < 8_000 + 3_000 + 9_000)
        .map(|(at, cue)| match cue {
            Cue::SetUp { seconds, .. } => format!("{at} set up {seconds}"),
            Cue::AwaitReady { .. } => format!("{at} ready"),
            Cue::CountIn { left } => format!("{at} {left}"),
            Cue::Phase { phase, number, of, .. } => format!("{at} {phase:?} {number}/{of}"),
            Cue::Tick { left } => format!("{at} tick {left}"),
            Cue::RepetitionDone { number, .. } => format!("{at} done {number}"),
            other => format!("{at} {other:?}"),
        })
        .collect();
    assert_eq!(
        said,
        [
            "0 set up 8",
            "8000 ready",
            "8000 3",
            "9000 2",
            "10000 1",
            "11000 Out 1/10",
            "14000 Hold 1/10",
            "15000 tick 1",
            "16000 Back 1/10",
            "19000 done 1",
            "19000 Pause 1/10",
        ]
    );
    let rests = told.iter().filter(|(_, cue)| matches!(cue, Cue::Rest { .. })).count();
    let sets: Vec<u16> = told
        .iter()
        .filter_map(|(_, cue)| if let Cue::SetDone { done, .. } = cue { Some(*done) } else { None })
        .collect();
    assert_eq!((rests, sets), (1, vec![10, 10]));
}

#[test]
fn the_script_is_as_long_as_its_closed_formula() {
    for ids in [&["slide"][..], &["pump", "slide", "knee"], &["walk", "curl"], &["raise", "curl", "pump"]] {
        let arranged = arranged(ids);
        let told = lead(&mut Runner::new(&arranged));
        let length = closed_length_ms(&arranged.parts, &arranged.blocks);
        assert_eq!(told.last().map(|(at, _)| *at), Some(length), "{ids:?}");
    }
    // By hand: get ready 8, then two sets of 3 + 10 × (3 + 2 + 3 + 1), one rest of 30.
    let slide = arranged(&["slide"]);
    assert_eq!(closed_length_ms(&slide.parts, &slide.blocks), 1000 * (8 + 2 * (3 + 90) + 30));
    // Eight each side, one after the other: twice two sets of 3 + 8 × 5, one rest of 20 each, one change.
    let curl = arranged(&["curl"]);
    assert_eq!(closed_length_ms(&curl.parts, &curl.blocks), 1000 * (8 + 2 * (2 * (3 + 40) + 20) + 6));
    // In turn, up to twelve each side: 3 + 24 × 5.
    let rolls = arranged(&["walk"]);
    assert_eq!(closed_length_ms(&rolls.parts, &rolls.blocks), 1000 * (8 + 3 + 120));
}

#[test]
fn to_roll_over_to_the_other_side_waits_for_ready() {
    let mut turned = arranged(&["curl"]);
    turned.parts[0].position = Position::SideLying;
    let waits = |arranged: &Arranged| {
        let told = lead(&mut Runner::new(arranged));
        told.iter().filter(|(_, cue)| matches!(cue, Cue::AwaitReady { .. })).count()
    };
    assert_eq!((waits(&arranged(&["curl"])), waits(&turned)), (1, 2));
}

#[test]
fn rounds_go_from_item_to_item() {
    let mut doc = sample::doc();
    let id = |id: &str| ItemId::new(id).expect("an id");
    doc.stages[0].rounds = vec![Round { items: vec![id("slide"), id("curl")], rounds: 3, rest_s: 60 }];
    let plan = sample::signed(doc);
    let due: Vec<_> = ["slide", "pump", "curl"].iter().map(|id| due(plan.doc(), id)).collect();
    let arranged = arrange(&plan, &Library::shipped(), &due.iter().collect::<Vec<_>>());
    assert!(arranged.blocks.iter().any(|block| matches!(block, Block::Round { rounds: 3, .. })));
    let told = lead(&mut Runner::new(&arranged));
    assert_eq!(told.last().map(|(at, _)| *at), Some(closed_length_ms(&arranged.parts, &arranged.blocks)));
    let sets: Vec<_> = told
        .iter()
        .filter_map(|(_, cue)| match cue {
            Cue::SetDone { set, .. } if set.item.as_str() != "pump" => Some((set.item.to_string(), set.set)),
            _ => None,
        })
        .collect();
    let round = |n| [("slide".to_string(), n), ("curl".into(), n), ("curl".into(), n)];
    assert_eq!(sets, [round(1), round(2), round(3)].concat());
    // With only one of them left, it is done alone, as often.
    let alone = arrange(&plan, &Library::shipped(), &[&due[0]]);
    assert_eq!((alone.blocks.len(), alone.parts[0].sets, alone.parts[0].rest_s), (1, 3, 60));
}

#[test]
fn lying_comes_before_standing_where_the_clinic_leaves_it_open() {
    let positions: Vec<_> = arranged(&["curl", "slide", "pump"]).parts.iter().map(|p| p.position).collect();
    assert_eq!(positions.last(), Some(&Position::Standing));
    assert_eq!(positions.iter().filter(|p| **p == Position::Standing).count(), 1);
}

#[test]
fn whoever_is_ready_early_need_not_wait_for_the_question() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    runner.start(0).expect("not begun");
    assert!(runner.is_getting_ready());
    let cues = runner.ready(2_000).expect("while getting ready");
    assert!(matches!(cues[..], [Cue::AwaitReady { .. }, Cue::CountIn { left: 3 }]), "{cues:?}");
    assert_eq!(runner.wake_at(), Some(3_000));
    assert_eq!(runner.ready(2_500), Err(NotNow(State::Running)));
}

#[test]
fn early_wakes_do_nothing_and_a_late_one_pauses() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    runner.start(0).expect("not begun");
    assert_eq!(runner.wake(7_999), []);
    assert_eq!(runner.wake(10_001), [Cue::LostTime]);
    assert_eq!(runner.state(), State::Paused);
    assert_eq!(runner.wake_at(), None);
    // Getting ready had eight seconds, none of which was surely there.
    assert_eq!(runner.go_on(60_000), Ok(vec![Cue::GoingOn { seconds: 3 }]));
    assert_eq!(runner.wake_at(), Some(71_000));
}

#[test]
fn a_pause_in_a_repetition_leads_it_again_and_counts_it_once() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    runner.start(0).expect("not begun");
    runner.wake(8_000);
    runner.ready(8_000).expect("waits");
    for at in [9_000, 10_000, 11_000, 14_000] {
        runner.wake(at);
    }
    runner.pause(14_500).expect("runs");
    assert_eq!(runner.state(), State::Paused);
    assert_eq!(runner.pause(14_600), Err(NotNow(State::Paused)));
    runner.go_on(20_000).expect("paused");
    let again = runner.wake(23_000);
    assert!(matches!(again[..], [Cue::Phase { phase: Phase::Out, number: 1, .. }]), "{again:?}");
}

#[test]
fn fewer_leave_easier_and_stop_finish_what_was_done() {
    let begun = || {
        let mut runner = Runner::new(&arranged(&["slide", "knee"]));
        runner.start(0).expect("not begun");
        runner.wake(8_000);
        runner.ready(8_000).expect("waits");
        for at in (9..=31).map(|s| s * 1000) {
            runner.wake(at);
        }
        runner
    };
    let done = |cues: &[Cue]| match cues {
        [Cue::SetDone { done, of, .. }] => Some((*done, *of)),
        _ => None,
    };
    assert_eq!(done(&begun().end_set().expect("two done")), Some((2, 10)));
    assert_eq!(done(&begun().stop(31_500).expect("runs")), Some((2, 10)));
    let mut stopped = begun();
    stopped.stop(31_500).expect("runs");
    assert_eq!(stopped.saved(31_600), Ok(vec![Cue::End]));
    assert_eq!(stopped.state(), State::Stopped);
    let mut left = begun();
    assert_eq!(done(&left.leave(31_500).expect("runs")), Some((2, 10)));
    let next = left.saved(31_600).expect("waits");
    assert!(matches!(&next[..], [Cue::SetUp { set, .. }] if set.item.as_str() == "knee"), "{next:?}");
    assert_eq!(Runner::new(&arranged(&["slide"])).end_set(), Err(NotNow(State::Prepare)));
}

/// Leads on from a moment to the first set that is done, answering as soon as it waits.
fn to_set_done(runner: &mut Runner, mut now: u64) -> (Vec<u16>, Cue) {
    let mut numbers = Vec::new();
    loop {
        let cues = if runner.state() == State::Prepare {
            runner.ready(now).expect("waits")
        } else {
            now = runner.wake_at().expect("time goes on");
            runner.wake(now)
        };
        for cue in cues {
            match cue {
                Cue::RepetitionDone { number, .. } => numbers.push(number),
                Cue::SetDone { .. } => return (numbers, cue),
                _ => {}
            }
        }
    }
}

#[test]
fn the_easier_way_goes_on_with_what_is_left_of_the_set() {
    for sets_before in [0, 1] {
        let mut runner = Runner::new(&arranged(&["slide"]));
        runner.start(0).expect("not begun");
        let mut now = 0;
        for _ in 0..sets_before {
            to_set_done(&mut runner, now);
            now = 200_000;
            runner.saved(now).expect("waits");
        }
        let mut done = 0;
        while done < 2 {
            if runner.state() == State::Prepare {
                runner.ready(now).expect("waits");
            } else {
                now = runner.wake_at().expect("time goes on");
                let cues = runner.wake(now);
                done += cues.iter().filter(|cue| matches!(cue, Cue::RepetitionDone { .. })).count();
            }
        }
        let cues = runner.easier(now).expect("runs");
        assert!(matches!(&cues[..], [Cue::SetUp { .. }]), "{cues:?}");
        assert!(runner.can_end_set(), "what was done counts");
        let (numbers, last) = to_set_done(&mut runner, now);
        assert_eq!(numbers, (3..=10).collect::<Vec<_>>());
        assert!(matches!(last, Cue::SetDone { done: 10, of: 10, .. }), "{last:?}");
    }
}

#[test]
fn pauses_do_not_pile_up() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    runner.start(0).expect("not begun");
    runner.wake(8_000);
    runner.ready(8_000).expect("waits");
    for at in (9..=13).map(|s| s * 1000) {
        runner.wake(at);
    }
    let mut now = 13_200;
    for _ in 0..4 {
        runner.pause(now).expect("runs");
        runner.go_on(now + 100).expect("paused");
        now += 200;
    }
    let wake = runner.wake_at().expect("time goes on");
    assert_eq!(wake, now - 100 + 3_000, "three seconds after the last of them, and no more");
}

#[test]
fn this_hurts_stops_the_clock_at_once_and_in_any_wait() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    runner.start(0).expect("not begun");
    runner.wake(8_000);
    runner.hurts(9_000).expect("even while getting ready");
    assert_eq!((runner.state(), runner.wake_at()), (State::Asking, None));
    assert_eq!(runner.go_on(20_000), Err(NotNow(State::Asking)), "there is no answer yet");
    runner.answered(20_000).expect("answered");
    assert_eq!(runner.state(), State::Prepare);
    runner.ready(20_000).expect("waits");
    runner.pause(20_500).expect("runs");
    runner.hurts(20_600).expect("a pause can turn into it");
    assert_eq!(runner.state(), State::Asking);
}

#[test]
fn a_rest_can_be_cut_short() {
    let mut runner = Runner::new(&arranged(&["slide"]));
    let mut now = 0;
    runner.start(now).expect("not begun");
    while runner.state() != State::Resting || now < 60_000 {
        match runner.state() {
            State::Prepare => drop(runner.ready(now)),
            State::Saving => drop(runner.saved(now)),
            _ => {
                now = runner.wake_at().expect("time goes on");
                runner.wake(now);
            }
        }
    }
    assert_eq!(runner.go_on_now(now), Ok(vec![Cue::CountIn { left: 3 }]));
    assert_eq!(runner.go_on_now(now), Err(NotNow(State::Running)));
}

#[test]
fn going_on_leaves_finished_turns_out() {
    let arranged = arranged(&["slide", "knee"]);
    let mut runner = Runner::going_on(&arranged, |part, turn| part.item.as_str() == "slide" && turn.set == 1);
    let sets: Vec<_> = lead(&mut runner)
        .into_iter()
        .filter_map(|(_, cue)| match cue {
            Cue::SetDone { set, .. } => Some((set.item.to_string(), set.set)),
            _ => None,
        })
        .collect();
    assert_eq!(sets, [("slide".to_string(), 2), ("knee".into(), 1)]);
}
