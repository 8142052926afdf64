//! A session led for whoever draws it: what is shown at each moment, and what each press does. Time is
//! an argument.

use std::cell::RefCell;

use chrono::Duration;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::types::{By, Pace, PainAnswer, PainKind, Words};
use sendaluna_bedside::view::session::{Press, StageName, StageView, Told, WaitsFor};
use sendaluna_bedside::{Clock, Now};
use sendaluna_tests::device::{Device, Hand, answered, at, id, world};
use sendaluna_tests::world::World;

/// A session of the two sets of ten slides, about to be led.
struct Course {
    /// Its folder lives as long as it does.
    _device: Device,
    lead: Lead,
    clock: Hand,
    told: Vec<Told>,
}

impl Course {
    fn begin() -> Self {
        Self::of(&world())
    }

    fn of(world: &World) -> Self {
        let now: Now = at("2026-03-10T09:00:00Z");
        let device = Device::with("Europe/Dublin", world, &now);
        let mut home = device.open();
        answered(&mut home, &now);
        let guide = home.begin(Some(&id("slide")), By::Patient, &now).expect("allowed");
        let known = home.known().expect("a plan");
        let clock = Hand(RefCell::new(now));
        let mut lead = Lead::new(home, known, guide, Words::new(["en"]), &clock);
        let told = lead.start(&clock);
        Self { _device: device, lead, clock, told }
    }

    fn press(&mut self, press: &Press) -> Vec<Told> {
        let told = self.lead.press(press, &self.clock);
        self.told.extend(told.clone());
        told
    }

    /// Lets time pass to the next deadline.
    fn wait(&mut self) {
        let wake = self.lead.wake_at().expect("time goes on");
        let mut now = self.clock.0.borrow_mut();
        let passed = i64::try_from(wake - now.mono_ms).expect("small");
        now.at += Duration::milliseconds(passed);
        now.mono_ms = wake;
        drop(now);
        let told = self.lead.wake(&self.clock);
        self.told.extend(told);
    }

    /// Lets time pass until it shows something.
    fn until(&mut self, shown: impl Fn(&StageView) -> bool) -> StageView {
        for _ in 0..2_000 {
            let stage = self.stage();
            if shown(&stage) {
                return stage;
            }
            if stage.waits_for.is_some() {
                self.press(&Press::Ready);
            } else {
                self.wait();
            }
        }
        panic!("never shown; last: {:?}", self.stage());
    }

    fn stage(&self) -> StageView {
        let last = self.told.iter().rev().find_map(|told| match told {
            Told::Stage { stage } => Some((**stage).clone()),
            _ => None,
        });
        last.expect("it shows something from the start")
    }

    fn hurts(&mut self, level: u8, kind: PainKind) -> PainAnswer {
        self.press(&Press::Hurts);
        assert_eq!(self.stage().stage, StageName::Asking);
        let told = self.press(&Press::HurtsAnswer { level, kind, place: None });
        told.iter()
            .find_map(|told| match told {
                Told::Pain { pain } => Some(pain.answer),
                _ => None,
            })
            .unwrap_or_else(|| panic!("no answer: {told:?}"))
    }
}

fn repetition(n: u16) -> impl Fn(&StageView) -> bool {
    move |stage| stage.stage == StageName::Running && stage.count == Some(n) && stage.phase == "Go"
}

#[test]
fn it_says_what_to_do_from_the_first_moment() {
    let mut course = Course::begin();
    let stage = course.stage();
    assert_eq!(stage.item.as_ref().map(|item| item.item.as_str()), Some("slide"));
    assert!(stage.said[0].starts_with("If it hurts"), "{:?}", stage.said);
    assert_eq!(stage.left_said, "3 minutes left");
    assert!(stage.can_ready && !stage.can_fewer && !stage.can_go_on);
    course.until(|stage| stage.waits_for == Some(WaitsFor::Ready));
    course.press(&Press::Ready);
    let counting_in = course.until(|stage| stage.count == Some(3));
    assert_eq!(
        (counting_in.phase.as_str(), counting_in.of_said.as_str()),
        ("Ready", "round\u{a0}1\u{a0}of\u{a0}2")
    );
    let third = course.until(repetition(3));
    assert_eq!(third.of_said, "of 10, round\u{a0}1\u{a0}of\u{a0}2");
    assert_eq!(third.tally.iter().map(|round| round.done).collect::<Vec<_>>(), [2, 0]);
    assert_eq!(third.tally_said, "2 of 20 done.");
}

#[test]
fn one_key_does_what_the_moment_asks_for() {
    let mut course = Course::begin();
    let is_ready = |stage: &StageView| stage.main_press == Some(Press::Ready);
    // It can be said while one is still getting ready, and when it is waited for.
    assert!(is_ready(&course.stage()) && course.stage().waits_for.is_none());
    let waits = course.until(|stage| stage.waits_for == Some(WaitsFor::Ready));
    assert!(is_ready(&waits));
    course.press(&Press::Ready);
    let moves = course.until(repetition(2));
    assert_eq!(moves.main_press, Some(Press::Pause));
    course.press(&Press::Pause);
    assert_eq!(course.stage().main_press, Some(Press::GoOn));
}

#[test]
fn what_nobody_does_alone_is_begun_with_its_own_button() {
    let mut world = world();
    world.plan.items[0].beside_you = true;
    let mut course = Course::of(&world);
    let first = course.stage();
    assert!(first.can_ready && first.asks_somebody);
    assert_eq!(first.main_press, Some(Press::Pause), "still getting ready");
    let waits = course.until(|stage| stage.waits_for == Some(WaitsFor::Ready));
    assert!(waits.asks_somebody);
    assert_eq!(waits.main_press, None, "no key says that somebody is there");
}

#[test]
fn a_rest_shows_its_seconds_and_what_comes() {
    let mut course = Course::begin();
    let rest = course.until(|stage| stage.phase == "Rest");
    assert_eq!((rest.count, rest.stage), (Some(20), StageName::Resting));
    assert_eq!(rest.next.map(|next| next.item.to_string()), Some("slide".to_string()));
    assert_eq!(rest.tally[0].done, 10);
    assert_eq!(rest.fewer_most, Some(10));
    assert!(rest.can_go_on_now && rest.can_pause && rest.can_leave);
    let later = course.until(|stage| stage.count == Some(12));
    assert_eq!(later.phase, "Rest");
    course.press(&Press::Fewer { done: Some(7) });
    let corrected = course.stage();
    assert_eq!(corrected.fewer_most, Some(7), "only ever downwards");
    assert_eq!(corrected.tally_said, "7 of 20 done.");
}

#[test]
fn by_hand_the_count_in_passes_and_every_movement_waits() {
    let mut course = Course::begin();
    course.press(&Press::Pace { pace: Pace::ByHand });
    let counting_in = course.until(|stage| stage.count == Some(3));
    assert!(!counting_in.can_step && course.lead.wake_at().is_some(), "nobody taps through a count-in");
    let first = course.until(repetition(1));
    assert!(first.can_step && course.lead.wake_at().is_none(), "time stands still");
    let mut parts = vec![first.phase];
    while parts.len() < 5 {
        course.press(&Press::StepOn);
        parts.push(course.stage().phase);
    }
    assert_eq!(parts, ["Go", "Back", "Go", "Back", "Go"]);
    course.press(&Press::Pace { pace: Pace::Prescribed });
    assert!(course.lead.wake_at().is_some(), "time goes on");
    course.until(|stage| stage.phase == "Rest");
}

#[test]
fn a_pause_repeats_the_repetition_that_was_under_way() {
    let mut course = Course::begin();
    course.until(repetition(4));
    course.press(&Press::Pause);
    let paused = course.stage();
    assert_eq!((paused.stage, paused.count), (StageName::Paused, Some(4)));
    assert!(paused.can_go_on && !paused.can_pause);
    course.press(&Press::GoOn);
    course.until(repetition(4));
    let rest = course.until(|stage| stage.phase == "Rest");
    assert_eq!(rest.tally[0].done, 10);
}

#[test]
fn after_the_answer_to_pain_it_waits_until_the_patient_goes_on() {
    for (level, kind, answer) in
        [(1, PainKind::Stretching, PainAnswer::GoOn), (4, PainKind::Stretching, PainAnswer::StopExercise)]
    {
        let mut course = Course::begin();
        course.until(repetition(2));
        // Risen by three since before the session, which the plan's rule stops at.
        assert_eq!(course.hurts(level, kind), answer);
        if answer == PainAnswer::GoOn {
            let waiting = course.stage();
            assert_eq!((waiting.stage, waiting.said.len()), (StageName::Paused, 0));
            assert_eq!(course.lead.wake_at(), None);
            course.press(&Press::GoOn);
            course.until(repetition(2));
        }
    }
}

#[test]
fn pain_that_stops_for_today_says_whom_to_ring_and_ends_as_told() {
    let mut course = Course::begin();
    course.until(repetition(2));
    assert_eq!(course.hurts(9, PainKind::Sharp), PainAnswer::StopToday);
    let stop = course.told.iter().find_map(|told| match told {
        Told::Stop { stop } => Some(stop.phone.clone()),
        _ => None,
    });
    assert_eq!(stop.as_deref(), Some("555-0100"));
    assert!(course.stage().as_told);
    let ended = course.press(&Press::Finish { effort: None, pain: None, words: None });
    assert!(matches!(&ended[..], [Told::Ended { ended }] if ended.said.starts_with("Stopped as told")));
    assert!(course.lead.has_ended());
}

#[test]
fn unwell_stops_at_any_moment() {
    let mut course = Course::begin();
    course.until(repetition(1));
    let told = course.press(&Press::Unwell);
    assert!(told.iter().any(|told| matches!(told, Told::Stop { .. })), "{told:?}");
    let stage = course.stage();
    assert_eq!((stage.stage, stage.as_told), (StageName::Stopped, true));
}

#[test]
fn what_does_not_fit_is_said_and_changes_nothing() {
    let mut course = Course::begin();
    course.until(repetition(2));
    for press in [
        Press::GoOn,
        Press::GoOnNow,
        Press::Easier,
        Press::HurtsAnswer { level: 3, kind: PainKind::Sharp, place: None },
        Press::Finish { effort: None, pain: None, words: None },
        Press::Finish { effort: Some(11), pain: None, words: None },
    ] {
        let before = course.stage();
        let told = course.press(&press);
        assert!(matches!(told[0], Told::Problem { .. }), "{press:?}: {told:?}");
        let after = course.stage();
        assert_eq!((before.stage, before.count, before.tally), (after.stage, after.count, after.tally));
    }
}

#[test]
fn the_whole_session_ends_with_what_the_patient_says() {
    let mut course = Course::begin();
    let done = course.until(|stage| stage.stage == StageName::Done);
    assert!(!done.as_told);
    let ended = course.press(&Press::Finish { effort: Some(4), pain: Some(1), words: Some("  ".into()) });
    assert!(matches!(&ended[..], [Told::Ended { ended }] if ended.nobody_sees.is_some()), "{ended:?}");
    let known = course.lead.into_home().known().expect("a plan");
    let session = known.state.sessions.last().expect("recorded");
    assert_eq!((session.sets.len(), session.effort), (2, Some(4)));
    assert_eq!(course.clock.now().boot, "b");
}

fn disk(course: &Course, fails: bool) {
    course.lead.home().refuse_writes(fails).expect("set");
}

fn has_problem(told: &[Told]) -> bool {
    told.iter().any(|told| matches!(told, Told::Problem { .. }))
}

fn has_stop(told: &[Told]) -> bool {
    told.iter().any(|told| matches!(told, Told::Stop { .. }))
}

#[test]
fn to_stop_comes_before_a_disk_that_fails() {
    let presses = [Press::Unwell, Press::HurtsAnswer { level: 9, kind: PainKind::Sharp, place: None }];
    for press in presses {
        let mut course = Course::begin();
        course.until(repetition(2));
        if matches!(press, Press::HurtsAnswer { .. }) {
            course.press(&Press::Hurts);
        }
        disk(&course, true);
        let told = course.press(&press);
        assert!(has_stop(&told) && has_problem(&told), "{press:?}: {told:?}");
        assert_eq!(course.stage().stage, StageName::Stopped);
        assert_eq!(course.lead.wake_at(), None, "nothing is counted on");
    }
}

#[test]
fn the_last_answers_wait_for_the_disk_and_are_written_once() {
    let mut course = Course::begin();
    course.until(|stage| stage.stage == StageName::Done);
    let finish = Press::Finish { effort: Some(4), pain: Some(2), words: None };
    disk(&course, true);
    assert!(has_problem(&course.press(&finish)));
    assert!(!course.lead.has_ended());
    disk(&course, false);
    assert!(matches!(&course.press(&finish)[..], [Told::Ended { .. }]));
    let known = course.lead.into_home().known().expect("a plan");
    let after = known.state.pain.iter().filter(|(_, pain)| pain.level == Some(2)).count();
    assert_eq!((after, known.state.sessions[0].effort), (1, Some(4)));
}

#[test]
fn a_set_that_cannot_be_written_is_tried_again_or_given_up() {
    for stops in [false, true] {
        let mut course = Course::begin();
        course.until(repetition(10));
        disk(&course, true);
        while !has_problem(&course.told) {
            course.wait();
        }
        let waiting = course.stage();
        assert_eq!((waiting.stage, waiting.can_go_on), (StageName::Paused, true));
        if stops {
            assert!(has_problem(&course.press(&Press::Stop)));
            assert_eq!(course.stage().stage, StageName::Stopped);
        } else {
            assert!(has_problem(&course.press(&Press::GoOn)), "still failing");
            disk(&course, false);
            course.press(&Press::GoOn);
            let rest = course.until(|stage| stage.phase == "Rest");
            assert_eq!(rest.tally_said, "10 of 20 done.");
        }
    }
}

#[test]
fn a_pause_over_midnight_is_not_gone_on_with() {
    let mut course = Course::begin();
    course.until(repetition(3));
    course.press(&Press::Pause);
    course.clock.0.borrow_mut().at += Duration::hours(20);
    let told = course.press(&Press::GoOn);
    assert!(has_problem(&told), "{told:?}");
    assert_eq!(course.stage().stage, StageName::Stopped);
}
