use super::*;
use crate::calendar::{Away, DueDay, Waking, due};
use crate::gate::{GateDay, Gates, Tightened};
use crate::ids::SessionId;
use crate::library::Library;
use crate::plan::Amount;
use crate::plan::doc::{PlanDoc, When};
use crate::precaution::Standing;
use crate::record::{By, Ending, Event, How, Pain, SetRecord, Stamp, genesis};
use crate::sample::{self, date};
use crate::session::{PainAnswer, SetId, SidesAtOnce};

/// The sample, with a graded heel slide and a heel prop whose minutes grow: 2, 4, 5.
fn doc() -> PlanDoc {
    let mut doc = sample::doc();
    for item in &mut doc.items {
        match item.id.as_str() {
            "slide" => item.graded = Some(graded()),
            "knee" => {
                item.ramp = Some(Ramp { grows: Grows::Minutes, start: 2, step: 2, every_days: 3, cap: 5 });
                item.when = When::TimesADay { times: 1, least_hours_between: 0 };
            }
            _ => {}
        }
    }
    doc
}

fn graded() -> Graded {
    let dose = |sets, repetitions| Dose {
        sets,
        repetitions: Some(Count::Exactly(repetitions)),
        breaths: None,
        minutes: None,
        steps: None,
        tempo: Some(Tempo { out_s: 2, hold_s: 0, back_s: 2, pause_s: 1 }),
        rest_s: 20,
        load: None,
    };
    Graded {
        doses: vec![dose(1, 8), dose(2, 8), dose(2, 10), dose(2, 12)],
        start: 2,
        up_after_sessions: 2,
        up_pain_at_most: 2,
        up_effort_at_most: Some(5),
        down_pain_over: 4,
    }
}

fn id(item: &str) -> ItemId {
    ItemId::new(item).expect("an id")
}

/// A patient whose record is being written, under a plan.
struct Patient {
    plan: Plan,
    events: Vec<Event>,
    sessions: u32,
    standing: Standing,
    tightened: Vec<Tightened>,
}

impl Patient {
    fn new() -> Self {
        let (plan, standing) = (sample::signed(doc()), Standing::default());
        Self { plan, events: Vec::new(), sessions: 0, standing, tightened: Vec::new() }
    }

    fn add(&mut self, day: &str, body: Body) {
        let seq = self.events.len() as u64 + 1;
        let prev = self.events.last().map_or_else(genesis, |event| Digest::of(&event.to_bytes()));
        let at = format!("{day}T10:00:00Z").parse().expect("a moment");
        let stamp = Stamp { at, offset_s: 0, boot: "b".into(), mono_ms: seq };
        self.events.push(Event { seq, prev, stamp, by: By::Patient, body });
    }

    fn state(&self) -> State {
        State::of(&self.events)
    }

    fn day(&self, day: &str) -> DueDay {
        let (library, state) = (Library::shipped(), self.state());
        let gates = self.gates(&library);
        due(&gates, date(day), &GateDay::new(date(day)), &state.history, Waking::default())
    }

    fn gates<'a>(&'a self, library: &'a Library) -> Gates<'a> {
        Gates { plan: &self.plan, library, standing: &self.standing, tightened: &self.tightened }
    }

    fn step(&self, item: &str, day: &str) -> u16 {
        let item = self.plan.item(&id(item)).expect("there");
        Stand::of(&self.plan, item, &self.state().history, date(day)).expect("it moves").step
    }

    fn look<T>(&self, day: &str, at: &GateDay, then: impl FnOnce(&Look<'_>) -> T) -> T {
        let (library, state, due) = (Library::shipped(), self.state(), self.day(day));
        let gates = self.gates(&library);
        then(&Look { gates: &gates, state: &state, due: &due, day: date(day), at })
    }

    fn up(&self, item: &str, day: &str) -> Result<u16, NoUp> {
        self.look(day, &GateDay::new(date(day)), |look| look.up(&id(item)).map(|up| up.change.to))
    }

    fn offer(&self, day: &str) -> Option<ItemId> {
        self.look(day, &GateDay::new(date(day)), |look| look.offer().map(|up| up.change.item))
    }

    /// The patient says yes.
    fn yes(&mut self, item: &str, day: &str) {
        let up = self.look(day, &GateDay::new(date(day)), |look| look.up(&id(item)));
        self.add(day, up.expect("allowed").change.into());
    }

    /// A whole session of an item at the dose that the day asks, but for a change.
    fn session(&mut self, item: &str, day: &str, but: impl FnOnce(&mut Said)) {
        let due = self.day(day).items.into_iter().find(|due| due.item == id(item)).expect("of the day");
        let of = due.dose.amount().map_or(0, Amount::least);
        let mut said = Said { done: of, effort: Some(4), confirmed: true, pain: None, ending: Ending::Whole };
        but(&mut said);
        self.sessions += 1;
        let session = SessionId::new(format!("s-{}", self.sessions)).expect("an id");
        self.add(day, Body::SessionStarted { session: session.clone(), items: vec![id(item)] });
        for set in 1..=due.dose.sets {
            let set = SetId { item: id(item), set, sides: SidesAtOnce::Left };
            let record = SetRecord { set, done: said.done, of, easier: false };
            self.add(day, Body::SetDone { session: session.clone(), record, how: How::Counted });
        }
        if let Some(level) = said.pain {
            let state = self.state();
            let pain = pain(Moment::During, level, Some(id(item)));
            self.add(day, Body::PainAnswered { session: Some(session.clone()), pain });
            let item = self.plan.item(&id(item)).expect("there");
            if let Some(down) = down_for_pain(&self.plan, item, &state, date(day), level) {
                self.add(day, down.into());
            }
        }
        let Said { ending, confirmed, effort, .. } = said;
        self.add(day, Body::SessionEnded { session, ending, confirmed, effort, words: None });
    }

    fn by_hand(&mut self, item: &str, day: &str) {
        let day_of = date(day);
        self.add(
            day,
            Body::DoneByHand { item: id(item), day: day_of, sets: 2, each: 12, against_gate: false },
        );
    }
}

/// What a session comes to.
struct Said {
    done: u16,
    effort: Option<u8>,
    confirmed: bool,
    pain: Option<u8>,
    ending: Ending,
}

fn pain(moment: Moment, level: u8, item: Option<ItemId>) -> Pain {
    let answer = PainAnswer::GoOn;
    Pain { moment, level: Some(level), distress: None, kind: None, place: None, item, answer }
}

#[test]
fn a_ramp_and_a_graded_dose_are_lists_of_signed_doses() {
    let doc = doc();
    let ladder = |id: &str| {
        let item = doc.items.iter().find(|item| item.id.as_str() == id);
        Ladder::of(item.expect("in the sample"))
    };
    let minutes: Vec<_> = {
        let ramp = ladder("knee").expect("it grows");
        (1..=ramp.steps()).map(|step| ramp.dose(step).minutes).collect()
    };
    assert_eq!(minutes, [Some(2), Some(4), Some(5)], "the last step ends at the cap");
    let slide = ladder("slide").expect("it is graded");
    assert_eq!((slide.start(), slide.steps(), slide.dose(9)), (2, 4, &graded().doses[3]));
    assert_eq!(ladder("pump"), None);
}

#[test]
fn one_up_comes_after_whole_counted_sessions_in_a_row_and_only_with_a_yes() {
    let mut patient = Patient::new();
    assert_eq!(patient.up("slide", "2026-03-05"), Err(NoUp::RuleNotMet));
    patient.session("slide", "2026-03-05", |_| {});
    assert_eq!(patient.up("slide", "2026-03-06"), Err(NoUp::RuleNotMet), "one of two");
    patient.session("slide", "2026-03-06", |_| {});
    assert_eq!(patient.up("slide", "2026-03-06"), Ok(3));
    assert_eq!(patient.step("slide", "2026-03-07"), 2, "nothing moves without a yes");
    patient.yes("slide", "2026-03-06");
    assert_eq!(patient.step("slide", "2026-03-06"), 3);
    let day = patient.day("2026-03-07");
    let slide = day.items.iter().find(|due| due.item == id("slide")).expect("of the day");
    assert_eq!(
        (slide.dose.clone(), slide.step),
        (graded().doses[2].clone(), Some(StepOf { step: 3, of: 4 }))
    );
    assert_eq!(patient.up("slide", "2026-03-07"), Err(NoUp::RuleNotMet), "the row begins again");
    for day in ["2026-03-07", "2026-03-08"] {
        patient.session("slide", day, |_| {});
    }
    patient.yes("slide", "2026-03-08");
    for day in ["2026-03-09", "2026-03-10"] {
        patient.session("slide", day, |_| {});
    }
    assert_eq!(patient.up("slide", "2026-03-10"), Err(NoUp::Top));
}

#[test]
fn what_breaks_the_row() {
    type But = fn(&mut Said);
    let breaks: [(&str, But); 7] = [
        ("pain over the figure", |said| said.pain = Some(3)),
        ("effort over the figure", |said| said.effort = Some(6)),
        ("effort not said", |said| said.effort = None),
        ("nobody answered", |said| said.confirmed = false),
        ("fewer than asked", |said| said.done -= 1),
        ("stopped as told", |said| said.ending = Ending::StoppedAsTold),
        ("none done", |said| said.done = 0),
    ];
    for (why, but) in breaks {
        let mut patient = Patient::new();
        patient.session("slide", "2026-03-05", |_| {});
        patient.session("slide", "2026-03-06", but);
        patient.session("slide", "2026-03-07", |_| {});
        assert_eq!(patient.up("slide", "2026-03-07"), Err(NoUp::RuleNotMet), "{why}");
        patient.session("slide", "2026-03-08", |said| said.pain = Some(2));
        assert_eq!(patient.up("slide", "2026-03-08"), Ok(3), "{why}: two in a row after it");
    }
}

#[test]
fn remembered_sessions_neither_count_nor_break_the_row() {
    let mut patient = Patient::new();
    for day in ["2026-03-04", "2026-03-05", "2026-03-06"] {
        patient.by_hand("slide", day);
        patient.by_hand("knee", day);
    }
    assert_eq!(patient.up("slide", "2026-03-09"), Err(NoUp::RuleNotMet));
    assert_eq!(patient.up("knee", "2026-03-09"), Err(NoUp::RuleNotMet));
    patient.session("slide", "2026-03-07", |_| {});
    patient.by_hand("slide", "2026-03-08");
    patient.session("slide", "2026-03-09", |_| {});
    assert_eq!(patient.up("slide", "2026-03-09"), Ok(3));
}

#[test]
fn a_ramp_goes_up_after_its_days_if_it_was_really_done_in_them() {
    let mut patient = Patient::new();
    patient.session("knee", "2026-03-05", |_| {});
    patient.session("knee", "2026-03-07", |_| {});
    assert_eq!(patient.up("knee", "2026-03-07"), Err(NoUp::RuleNotMet), "two days of three");
    assert_eq!(patient.up("knee", "2026-03-08"), Ok(2));
    let mut left = Patient::new();
    left.session("knee", "2026-03-05", |_| {});
    left.session("knee", "2026-03-07", |said| said.done = 1);
    assert_eq!(left.up("knee", "2026-03-08"), Err(NoUp::RuleNotMet), "the latest was not whole");
    patient.yes("knee", "2026-03-08");
    assert_eq!(patient.step("knee", "2026-03-08"), 2);
    assert_eq!(patient.up("knee", "2026-03-13"), Err(NoUp::RuleNotMet), "not done at this step yet");
    patient.session("knee", "2026-03-10", |_| {});
    assert_eq!(patient.up("knee", "2026-03-12"), Err(NoUp::RuleNotMet));
    assert_eq!(patient.up("knee", "2026-03-13"), Ok(3));
}

#[test]
fn not_now_asks_again_only_after_as_much_again_but_may_be_changed_at_any_time() {
    let mut patient = Patient::new();
    for day in ["2026-03-05", "2026-03-06"] {
        patient.session("slide", day, |_| {});
    }
    assert_eq!(patient.offer("2026-03-06"), Some(id("slide")));
    patient.add("2026-03-06", Body::StepKept { item: id("slide"), at: 2 });
    assert_eq!(patient.offer("2026-03-06"), None);
    assert_eq!(patient.up("slide", "2026-03-06"), Ok(3), "who asks may");
    patient.session("slide", "2026-03-07", |_| {});
    assert_eq!(patient.offer("2026-03-07"), None);
    patient.session("slide", "2026-03-08", |_| {});
    assert_eq!(patient.offer("2026-03-08"), Some(id("slide")));
}

#[test]
fn pain_over_the_figure_steps_down_at_once_and_once_a_session() {
    let mut patient = Patient::new();
    patient.session("slide", "2026-03-05", |said| said.pain = Some(4));
    assert_eq!(patient.step("slide", "2026-03-05"), 2, "at the figure is not over it");
    patient.session("slide", "2026-03-06", |said| said.pain = Some(5));
    assert_eq!(patient.step("slide", "2026-03-06"), 1);
    let state = patient.state();
    let slide = patient.plan.item(&id("slide")).expect("there").clone();
    assert_eq!(down_for_pain(&patient.plan, &slide, &state, date("2026-03-06"), 9), None, "once a session");
    for _ in 0..2 {
        patient.session("slide", "2026-03-06", |_| {});
    }
    assert_eq!(patient.up("slide", "2026-03-06"), Err(NoUp::RuleNotMet), "never up on the day it went down");
    assert_eq!(patient.up("slide", "2026-03-07"), Ok(2));
    patient.session("slide", "2026-03-07", |said| said.pain = Some(9));
    assert_eq!(patient.step("slide", "2026-03-07"), 1, "never below what was signed");
    assert_eq!(down(&patient.plan, &slide, &patient.state().history, date("2026-03-07")), Err(NoDown::Least));
    let pump = patient.plan.item(&id("pump")).expect("there");
    assert_eq!(down(&patient.plan, pump, &patient.state().history, date("2026-03-07")), Err(NoDown::NoSteps));
}

#[test]
fn a_bad_morning_goes_one_below_what_was_done_the_day_before() {
    let mut patient = Patient::new();
    patient.add("2026-03-05", Body::PainAnswered { session: None, pain: pain(Moment::Before, 2, None) });
    patient.session("slide", "2026-03-05", |_| {});
    patient.session("slide", "2026-03-05", |_| {});
    let morning = |patient: &Patient, day: &str| {
        let changes = down_next_morning(&patient.plan, &patient.state(), date(day));
        changes.into_iter().map(|change| (change.item, change.to)).collect::<Vec<_>>()
    };
    assert_eq!(level_before_yesterday(&patient.state(), date("2026-03-06")), Some(2));
    assert_eq!(
        level_before_yesterday(&patient.state(), date("2026-03-07")),
        None,
        "no session the day before"
    );
    assert!(!rose_overnight(&patient.plan, 2, 3) && rose_overnight(&patient.plan, 2, 4));
    assert_eq!(morning(&patient, "2026-03-06"), [(id("slide"), 1)]);
    // A yes of the evening before was not done yet: what hurt was the step below it.
    patient.yes("slide", "2026-03-05");
    assert_eq!(morning(&patient, "2026-03-06"), [(id("slide"), 1)]);
    let mut hurt = Patient::new();
    hurt.session("slide", "2026-03-05", |said| said.pain = Some(5));
    assert_eq!(morning(&hurt, "2026-03-06"), [], "it has stepped down since already");
}

#[test]
fn after_a_break_it_stands_at_its_start_and_never_goes_up_on_the_first_day_back() {
    let mut patient = Patient::new();
    for day in ["2026-03-05", "2026-03-06"] {
        patient.session("slide", day, |_| {});
    }
    patient.yes("slide", "2026-03-06");
    patient.session("slide", "2026-03-07", |_| {});
    assert_eq!(patient.step("slide", "2026-03-13"), 3, "six days are no break");
    let back = patient.day("2026-03-14");
    let slide = back.items.iter().find(|due| due.item == id("slide")).expect("of the day");
    assert_eq!((back.away, slide.dose.sets, slide.step), (Away::Restart, 1, None), "the return dose");
    assert_eq!(patient.up("slide", "2026-03-14"), Err(NoUp::AfterBreak));
    let changes = after_break(&patient.plan, &patient.state().history, date("2026-03-14"));
    assert_eq!(changes.iter().map(|c| (c.from, c.to, c.why)).collect::<Vec<_>>(), [(3, 2, StepWhy::Break)]);
    // Recorded or not, it comes to the same.
    patient.session("slide", "2026-03-14", |_| {});
    assert_eq!(patient.step("slide", "2026-03-15"), 2);
    for change in changes {
        patient.add("2026-03-14", change.into());
    }
    assert_eq!((patient.step("slide", "2026-03-14"), patient.step("slide", "2026-03-15")), (2, 2));
    // Neither sessions before the break nor the first day back count.
    patient.session("slide", "2026-03-15", |_| {});
    assert_eq!(patient.up("slide", "2026-03-15"), Err(NoUp::RuleNotMet));
    patient.session("slide", "2026-03-16", |_| {});
    assert_eq!(patient.up("slide", "2026-03-16"), Ok(3));
}

#[test]
fn what_stood_below_its_start_stays_there_after_a_break() {
    let mut patient = Patient::new();
    patient.session("slide", "2026-03-05", |said| said.pain = Some(5));
    assert_eq!(patient.step("slide", "2026-03-20"), 1);
}

#[test]
fn another_list_in_a_new_plan_begins_at_its_own_start() {
    let mut patient = Patient::new();
    for day in ["2026-03-05", "2026-03-06"] {
        patient.session("slide", day, |_| {});
    }
    patient.yes("slide", "2026-03-06");
    let (old, history) = (patient.plan.clone(), patient.state().history);
    let with = |change: &dyn Fn(&mut Graded)| {
        let mut doc = doc();
        let slide = doc.items.iter_mut().find(|item| item.id == id("slide"));
        change(slide.and_then(|item| item.graded.as_mut()).expect("graded"));
        sample::signed(doc)
    };
    let rule = with(&|graded| graded.up_after_sessions = 5);
    assert_eq!(in_new_plan(&old, &rule, &history, date("2026-03-07")), [], "the same doses: it holds");
    let doses = with(&|graded| drop(graded.doses.pop()));
    let changes = in_new_plan(&old, &doses, &history, date("2026-03-07"));
    assert_eq!(changes.iter().map(|c| (c.from, c.to, c.why)).collect::<Vec<_>>(), [(3, 2, StepWhy::NewPlan)]);
    patient.plan = doses;
    assert_eq!(patient.step("slide", "2026-03-07"), 2);
    patient.add("2026-03-07", changes[0].clone().into());
    patient.session("slide", "2026-03-07", |_| {});
    assert_eq!(patient.up("slide", "2026-03-07"), Err(NoUp::RuleNotMet), "the row begins again too");
    // The old list again: its step is not taken up without a yes.
    let again = in_new_plan(&patient.plan, &old, &patient.state().history, date("2026-03-08"));
    assert_eq!(again.iter().map(|c| c.to).collect::<Vec<_>>(), [2]);
}

#[test]
fn never_up_past_a_gate_a_ring_or_a_day_that_stands_still() {
    let mut patient = Patient::new();
    for day in ["2026-03-05", "2026-03-06"] {
        patient.session("slide", day, |_| {});
    }
    let held = GateDay::held(date("2026-03-06"), date("2026-06-14"), Some(date("2026-03-06")));
    assert_eq!(patient.look("2026-03-06", &held, |look| look.up(&id("slide"))), Err(NoUp::StandsStill));
    patient.tightened = vec![Tightened { item: id("slide"), since: date("2026-03-06") }];
    assert!(matches!(patient.up("slide", "2026-03-06"), Err(NoUp::Gated(_))));
    patient.tightened.clear();
    // The bigger dose adds a weight, and weights are not allowed yet.
    let mut doc = doc();
    let slide = doc.items.iter_mut().find(|item| item.id == id("slide")).expect("there");
    let graded = slide.graded.as_mut().expect("graded");
    graded.doses[2].load = Some(crate::plan::doc::Load::Weight { load_kg: 1.0 });
    let mut weighted = Patient::new();
    weighted.plan = sample::signed(doc);
    for day in ["2026-03-05", "2026-03-06"] {
        weighted.session("slide", day, |_| {});
    }
    assert_eq!(weighted.up("slide", "2026-03-06"), Ok(3));
    let no_weights =
        sample::precaution("a", crate::precaution::Rule::Resistance {}, sample::through("2026-05-01"));
    weighted.standing = Standing::of(&[sample::statement(vec![no_weights])]);
    assert!(matches!(weighted.up("slide", "2026-03-06"), Err(NoUp::Gated(_))));
    patient.add(
        "2026-03-06",
        Body::SignsAnswered { signs: vec![], gravest: Some(crate::plan::doc::Tier::RingToday) },
    );
    assert_eq!(patient.up("slide", "2026-03-06"), Err(NoUp::Rings));
    assert_eq!(patient.offer("2026-03-06"), None);
}

mod properties;
