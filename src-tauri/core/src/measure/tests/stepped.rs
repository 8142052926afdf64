//! Doses that step: each figure worked by hand.

use super::*;
use crate::plan::doc::{Count, Graded, Grows, Ramp};
use crate::record::StepWhy;
use crate::steps::Ladder;

/// The heel slide alone, three times a day, graded: 1, 2 or 3 sets of 10, from the second on.
fn graded(from: &str) -> Period {
    changed(from, |item| {
        let dose = |sets| crate::plan::doc::Dose { sets, ..item.dose.clone() };
        item.graded = Some(Graded {
            doses: vec![dose(1), dose(2), dose(3)],
            start: 2,
            up_after_sessions: 2,
            up_pain_at_most: 2,
            up_effort_at_most: None,
            down_pain_over: 4,
        });
    })
}

/// The same with sets that grow: 1, 3, 4.
fn ramp(from: &str) -> Period {
    let ramp = Ramp { grows: Grows::Sets, start: 1, step: 2, every_days: 3, cap: 4 };
    changed(from, |item| item.ramp = Some(ramp))
}

fn changed(from: &str, change: impl FnOnce(&mut crate::plan::doc::Item)) -> Period {
    let period = slide_only(from, 3);
    let mut doc = period.plan.doc().clone();
    change(doc.items.iter_mut().find(|item| item.id == id("slide")).expect("there"));
    Period { plan: sample::signed(doc), ..period }
}

fn stepped(period: &Period, from: u16, to: u16) -> Body {
    let ladder = Ladder::of(period.plan.item(&id("slide")).expect("there")).expect("it moves");
    Body::DoseStepped { item: id("slide"), from, to, list: ladder.list(), why: StepWhy::Chose }
}

fn prescribed(measures: &Measures) -> Vec<u32> {
    measures.days.iter().map(|day| day.items.iter().map(|(_, p)| p.prescribed).sum()).collect()
}

/// Monday asks 3 times 2 sets: 6. After the first time a yes: 2 + 3 + 3. Tuesday asks 9. On Wednesday the
/// first time hurts, one down: 3 + 2 + 2. Thursday asks 6. Done: 2 + 3 + 3, 9, 3 + 2 + 2, none of 6.
#[test]
fn across_steps_of_a_graded_dose() {
    let period = graded("2026-03-01");
    let mut diary = Diary::default();
    let set = (10, 10);
    diary.session("2026-03-02", "slide", &[set; 2], Ending::Whole).add("2026-03-02", stepped(&period, 2, 3));
    diary.session("2026-03-02", "slide", &[set; 6], Ending::Whole);
    diary.session("2026-03-03", "slide", &[set; 9], Ending::Whole);
    diary.session("2026-03-04", "slide", &[set; 3], Ending::Whole).add("2026-03-04", stepped(&period, 3, 2));
    diary.session("2026-03-04", "slide", &[set; 4], Ending::Whole);
    let measures = of(&[period], &diary, "2026-03-02", "2026-03-05");
    assert_eq!(prescribed(&measures), [8, 9, 7, 6]);
    let dose = measures.overall.dose;
    assert!(close(dose.done(), 24.0) && close(dose.beyond, 0.0), "{dose:?}");
    let marks: Vec<_> = measures.days.iter().map(|day| day.mark).collect();
    assert_eq!(marks, [DayMark::Whole, DayMark::Whole, DayMark::Whole, DayMark::NoRecord]);
}

/// From 1 set to 3 on Tuesday before anything was done: 3, 9, 9. By hand on Wednesday, once 3 sets of 10.
#[test]
fn across_a_step_of_a_ramp() {
    let period = ramp("2026-03-01");
    let mut diary = Diary::default();
    diary.session("2026-03-02", "slide", &[(10, 10); 3], Ending::Whole);
    diary.add("2026-03-03", stepped(&period, 1, 2)).by_hand("2026-03-04", "2026-03-04", 3, 10);
    let measures = of(&[period], &diary, "2026-03-02", "2026-03-04");
    assert_eq!(prescribed(&measures), [3, 9, 9]);
    assert!(close(measures.overall.dose.counted, 3.0) && close(measures.overall.dose.remembered, 3.0));
}

/// Repetitions that grow from 5 to 10: at the first step 5 from memory are a whole set, at the second half
/// of one.
#[test]
fn what_is_remembered_is_held_against_the_step_of_its_day() {
    let ramp = Ramp { grows: Grows::Repetitions, start: 5, step: 5, every_days: 3, cap: 10 };
    let period = changed("2026-03-01", |item| item.ramp = Some(ramp));
    let first = period.plan.item(&id("slide")).and_then(Ladder::of).expect("it moves").dose(1).clone();
    assert_eq!(first.repetitions, Some(Count::Exactly(5)));
    let mut diary = Diary::default();
    diary.by_hand("2026-03-02", "2026-03-02", 1, 5).add("2026-03-02", stepped(&period, 1, 2));
    diary.by_hand("2026-03-03", "2026-03-03", 1, 5);
    let measures = of(&[period], &diary, "2026-03-02", "2026-03-03");
    let done: Vec<f64> = measures.days.iter().map(|day| day.items[0].1.done()).collect();
    assert!(close(done[0], 1.0) && close(done[1], 0.5), "{done:?}");
}

/// At 3 sets until Wednesday, 9 a day. On Thursday a plan with another list: it begins at its own start, 1
/// set, 3 a day, whatever was stepped to before.
#[test]
fn a_revision_in_mid_week_begins_at_its_own_start() {
    let (first, second) = (graded("2026-03-01"), ramp("2026-03-05"));
    let mut diary = Diary::default();
    diary.add("2026-03-01", stepped(&first, 2, 3));
    let same = Period { from: date("2026-03-04"), ..first.clone() };
    let measures = of(&[first, same, second], &diary, "2026-03-02", "2026-03-06");
    assert_eq!(prescribed(&measures), [9, 9, 9, 3, 3]);
}

/// At 3 sets, last done on 3 March. On the 10th the return dose, 1 set of 5, three times; then 2 sets, the
/// start, from the first day on after the day back.
#[test]
fn after_a_gap_the_return_dose_and_then_the_start() {
    let period = graded("2026-03-01");
    let mut diary = Diary::default();
    diary.add("2026-03-01", stepped(&period, 2, 3));
    diary.session("2026-03-03", "slide", &[(10, 10); 9], Ending::Whole);
    diary.session("2026-03-10", "slide", &[(5, 5); 3], Ending::Whole);
    let measures = of(&[period], &diary, "2026-03-08", "2026-03-12");
    assert_eq!(prescribed(&measures), [9, 9, 3, 6, 6]);
    let marks: Vec<_> = measures.days.iter().map(|day| day.mark).collect();
    assert_eq!(marks[2], DayMark::Whole);
}
