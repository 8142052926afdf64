//! Whatever happens, a dose is one that was signed, and rises only with a yes.

use super::*;
use proptest::prelude::*;

/// What may happen on a day.
#[derive(Debug, Clone)]
enum Happens {
    Whole,
    Short,
    Hurts(u8),
    ByHand,
    Rest(u64),
    SaysYes,
    NotNow,
    Down,
}

fn happens() -> impl Strategy<Value = Vec<Happens>> {
    let one = prop_oneof![
        4 => Just(Happens::Whole),
        1 => Just(Happens::Short),
        1 => (0u8..=10).prop_map(Happens::Hurts),
        1 => Just(Happens::ByHand),
        1 => (1u64..9).prop_map(Happens::Rest),
        3 => Just(Happens::SaysYes),
        1 => Just(Happens::NotNow),
        1 => Just(Happens::Down),
    ];
    proptest::collection::vec(one, 1..24)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Whatever happens: only signed doses are asked for, and no step is higher than the one before it
    /// without a yes, by one at a time.
    #[test]
    fn a_dose_is_always_a_signed_one_and_rises_only_with_a_yes(all in happens(), ramp: bool) {
        let item = if ramp { "knee" } else { "slide" };
        let mut patient = Patient::new();
        let ladder = Ladder::of(patient.plan.item(&id(item)).expect("there")).expect("it moves");
        let restart = patient.plan.doc().return_dose.doses[0].dose.clone();
        let mut day = date("2026-03-05");
        let mut step = ladder.start();
        for what in all {
            let on = day.to_string();
            let before = patient.step(item, &on);
            prop_assert!(before <= step, "no day that passes raises it");
            let mut yes = false;
            match what {
                Happens::Whole => patient.session(item, &on, |_| {}),
                Happens::Short => patient.session(item, &on, |said| said.done = 1),
                Happens::Hurts(level) => patient.session(item, &on, |said| said.pain = Some(level)),
                Happens::ByHand => patient.by_hand(item, &on),
                Happens::Rest(days) => day = day + chrono::Days::new(days),
                Happens::SaysYes => {
                    yes = patient.up(item, &on).is_ok();
                    if yes {
                        patient.yes(item, &on);
                    }
                }
                Happens::NotNow => patient.add(&on, Body::StepKept { item: id(item), at: before }),
                Happens::Down => {
                    let state = patient.state();
                    let of_plan = patient.plan.item(&id(item)).expect("there").clone();
                    if let Ok(change) = down(&patient.plan, &of_plan, &state.history, day) {
                        patient.add(&on, change.into());
                    }
                }
            }
            step = patient.step(item, &on);
            prop_assert!(step <= before + u16::from(yes));
            prop_assert!((1..=ladder.steps()).contains(&step));
            let due = patient.day(&on).items.into_iter().find(|due| due.item == id(item)).expect("of the day");
            let signed = (1..=ladder.steps()).any(|step| *ladder.dose(step) == due.dose);
            prop_assert!(signed || due.dose == restart);
            day = day.succ_opt().expect("a day");
        }
    }
}
