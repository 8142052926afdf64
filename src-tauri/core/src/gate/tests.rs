use super::*;
use crate::facts::{Drive, ItemSide, Joint, Motion, Performed, Side, Surface};
use crate::precaution::{
    DailyRule, End, ForbiddenPosition, Only, PrecautionSide, RangeOver, Rule, WeightBearing,
};
use crate::sample::{self, date, in_force, left, performed, precaution, statement, through, words};
use chrono::Days;
use proptest::prelude::*;

fn breaks(rule: Rule, performed: &Performed) -> bool {
    breach(&precaution("a", rule, through("2026-05-24")), performed).is_some()
}

fn range(joint: Joint, motion: Motion, most_deg: f64) -> Rule {
    Rule::Range { joint, motion, most_deg, only: vec![] }
}

#[test]
fn a_family_is_shut_whole() {
    let family =
        || Rule::Movement { family: crate::ids::FamilyId::new("straight-leg-raise").expect("an id") };
    for shut in ["straight-leg-raise", "straight-leg-raise-cuff", "standing-straight-hip-flexion"] {
        assert!(breaks(family(), &left(shut)), "{shut}");
        // The precaution is about the left; the right leg may.
        assert!(!breaks(family(), &performed(shut, ItemSide::Other)), "{shut}");
    }
    assert!(!breaks(family(), &left("heel-slide")));
}

#[test]
fn a_range_is_shut_beyond_its_limit_and_not_at_it() {
    let flexion = |most| range(Joint::Hip, Motion::Flexion, most);
    let slide = left("heel-slide");
    let reach = slide.ranges.iter().filter_map(|r| r.reach_tenths(Joint::Hip, Motion::Flexion)).max();
    let reach = reach.expect("a heel slide bends the hip");
    let deg = |tenths: i64| f64::from(i32::try_from(tenths).expect("small")) / 10.0;
    assert!(!breaks(flexion(deg(reach)), &slide));
    assert!(breaks(flexion(deg(reach - 1)), &slide));
    // Less than the rounding to 0.1° is no difference.
    assert!(!breaks(flexion(deg(reach) - 0.04), &slide));
    assert!(breaks(flexion(90.0), &left("seated-march")));
}

#[test]
fn a_joint_that_is_not_mentioned_rests_at_neutral() {
    // "The last 30° of knee extension are not allowed": a straight knee is shut.
    let block = range(Joint::Knee, Motion::Extension, -30.0);
    assert!(breaks(block, &left("ankle-pump")));
    assert!(!breaks(range(Joint::Knee, Motion::Extension, 0.0), &left("ankle-pump")));
}

#[test]
fn conditions_narrow_a_range() {
    let only =
        |only: Vec<Only>| Rule::Range { joint: Joint::Knee, motion: Motion::Flexion, most_deg: 5.0, only };
    let prop = left("heel-prop");
    assert!(prop.ranges.iter().all(|r| r.joint != Joint::Knee || r.drive == Drive::Passive));
    assert!(breaks(only(vec![]), &prop));
    assert!(!breaks(only(vec![Only::Active]), &prop));
    let curl = performed("standing-knee-curl", ItemSide::Operated);
    assert!(breaks(only(vec![Only::Active]), &curl));
    let mut braced = left("heel-slide");
    assert!(breaks(only(vec![Only::WithoutBrace]), &braced));
    braced.with_brace = true;
    assert!(!breaks(only(vec![Only::WithoutBrace]), &braced));
    assert!(!breaks(only(vec![Only::Loaded]), &left("heel-slide")));
}

#[test]
fn ranges_together_are_shut_only_together() {
    let both = |flexion: f64, rotation: f64| Rule::Together {
        ranges: vec![
            RangeOver { joint: Joint::Hip, motion: Motion::Flexion, over_deg: flexion },
            RangeOver { joint: Joint::Hip, motion: Motion::ExternalRotation, over_deg: rotation },
        ],
    };
    let clam = left("clam");
    assert!(breaks(both(40.0, 20.0), &clam));
    assert!(!breaks(both(50.0, 20.0), &clam));
    assert!(!breaks(both(40.0, 40.0), &clam));
    assert!(
        breaks(both(-10.0, -10.0), &left("ankle-pump")),
        "a joint that is not mentioned rests at neutral"
    );
}

#[test]
fn no_active_hip_abduction_shuts_the_stance_leg_too() {
    let action =
        |assisted_allowed| Rule::Action { joint: Joint::Hip, motion: Motion::Abduction, assisted_allowed };
    for shut in ["side-lying-abduction", "clam", "standing-abduction"] {
        assert!(breaks(action(false), &left(shut)), "{shut}");
    }
    // Lifting the other leg, the left stands and its abductors hold the pelvis.
    assert!(breaks(action(false), &performed("standing-abduction", ItemSide::Other)));
    assert!(!breaks(action(false), &performed("side-lying-abduction", ItemSide::Other)));
    let mut done = left("side-lying-abduction");
    for (drive, shut, shut_if_assisted_is_allowed) in [
        (Drive::Active, true, true),
        (Drive::Isometric, true, true),
        (Drive::Assisted, true, false),
        (Drive::Passive, false, false),
    ] {
        done.actions.iter_mut().for_each(|action| action.drive = drive);
        assert_eq!(breaks(action(false), &done), shut, "{drive:?}");
        assert_eq!(breaks(action(true), &done), shut_if_assisted_is_allowed, "{drive:?}");
    }
}

#[test]
fn a_moment_is_estimated_from_the_segment_table() {
    let moment = |most_nm_per_kg| Rule::Moment { joint: Joint::Hip, motion: Motion::Flexion, most_nm_per_kg };
    let raise = left("straight-leg-raise");
    // By hand from Winter, Table 4.1: straight leg level, thigh and shank-and-foot, 70 kg, 1.70 m:
    // (7.0 × 0.433 × 0.4165 + 4.27 × (0.4165 + 0.606 × 0.4182)) × 9.81 = 40.45 N·m.
    let hip = raise.moments.iter().find(|m| m.joint == Joint::Hip).expect("a moment");
    assert!((hip.nm_per_kg * 70.0 - 40.45).abs() < 0.05, "{}", hip.nm_per_kg * 70.0);
    assert!(breaks(moment(0.25), &raise));
    assert!(!breaks(moment(0.58), &raise));
    assert!(breaks(moment(0.25), &left("standing-straight-hip-flexion")));
    assert!(breaks(moment(0.25), &left("marching")));
    assert!(!breaks(moment(0.25), &left("heel-prop")));
    let mut passive = raise.clone();
    passive.moments.iter_mut().for_each(|m| m.drive = Drive::Passive);
    assert!(!breaks(moment(0.25), &passive));
}

#[test]
fn an_ankle_weight_adds_to_the_moment_and_an_unknown_body_is_judged_at_its_worst() {
    use crate::facts::{BodySize, Manner, OperatedSide};
    use crate::plan::doc::Load;
    let library = Library::shipped();
    let raise = library.get(&MovementId::new("straight-leg-raise").expect("an id")).expect("ships");
    let load = Load::Weight { load_kg: 1.0 };
    let hip = |load: Option<&Load>, size: BodySize| {
        let manner =
            Manner { side: ItemSide::Operated, operated: OperatedSide::Left, load, with_brace: false, size };
        let done = Performed::new(raise, &manner);
        done.moments.iter().find(|m| m.joint == Joint::Hip).expect("a moment").nm_per_kg
    };
    let known = BodySize { height_cm: Some(170), mass_kg: Some(70) };
    // By hand: 1 kg × 9.81 × 0.491 × 1.70 = 8.19 N·m at the hip.
    let added = (hip(Some(&load), known) - hip(None, known)) * 70.0;
    assert!((added - 8.19).abs() < 0.01, "{added}");
    let unknown = BodySize::default();
    assert!(hip(None, unknown) > hip(None, known));
    assert!(hip(Some(&load), unknown) > hip(Some(&load), known));
}

#[test]
fn positions_are_shut_each_for_itself() {
    let not = |not| Rule::Position { not };
    assert!(breaks(not(ForbiddenPosition::Prone), &left("prone-press-up")));
    assert!(breaks(not(ForbiddenPosition::Kneeling), &left("hands-and-knees-arch")));
    assert!(breaks(not(ForbiddenPosition::OnTheFloor), &left("hands-and-knees-arch")));
    assert_eq!(left("hands-and-knees-arch").surface, Surface::Floor);
    assert!(breaks(not(ForbiddenPosition::Standing), &left("mini-squat")));
    assert!(breaks(not(ForbiddenPosition::LowSeat), &left("seated-march-low")));
    assert!(breaks(not(ForbiddenPosition::Supine), &left("heel-slide")));
    for not_shut in ["heel-slide", "seated-march", "standing-abduction"] {
        for other in [ForbiddenPosition::Prone, ForbiddenPosition::Kneeling, ForbiddenPosition::LowSeat] {
            assert!(!breaks(not(other), &left(not_shut)), "{not_shut} {other:?}");
        }
    }
    // Lifting the right leg on its side, one lies on the left.
    assert!(breaks(not(ForbiddenPosition::LyingOnSide), &performed("clam", ItemSide::Other)));
    assert!(!breaks(not(ForbiddenPosition::LyingOnSide), &left("clam")));
}

#[test]
fn weight_bearing_shuts_what_puts_more_on_the_leg() {
    let most = |term, percent| Rule::WeightBearing { term, most_kg: None, most_percent: Some(percent) };
    let touch = || most(WeightBearing::TouchDown, 10.0);
    for shut in ["mini-squat", "calf-raise", "sit-to-stand"] {
        assert!(breaks(touch(), &left(shut)), "{shut}");
    }
    for open in ["heel-slide", "quad-set", "long-arc-quad", "straight-leg-raise"] {
        assert!(!breaks(touch(), &left(open)), "{open}");
    }
    // Lifting the other leg, the left stands.
    assert!(breaks(touch(), &performed("standing-abduction", ItemSide::Other)));
    assert!(!breaks(most(WeightBearing::AsTolerated, 100.0), &left("mini-squat")));
    // The graver term decides, whatever figure stands beside it.
    assert!(breaks(most(WeightBearing::NonWeightBearing, 100.0), &left("mini-squat")));
    let kg = |kg| Rule::WeightBearing { term: WeightBearing::Partial, most_kg: Some(kg), most_percent: None };
    assert!(breaks(kg(34.9), &left("mini-squat")));
    assert!(!breaks(kg(35.0), &left("mini-squat")));
    let mut unknown = left("mini-squat");
    unknown.size.mass_kg = None;
    assert!(breaks(kg(100.0), &unknown));
}

#[test]
fn resistance_brace_spine_and_daily_rules() {
    assert!(breaks(Rule::Resistance {}, &left("long-arc-quad-band")));
    assert!(breaks(Rule::Resistance {}, &left("straight-leg-raise-cuff")));
    assert!(!breaks(Rule::Resistance {}, &left("long-arc-quad")));
    let brace = || Rule::Brace { brace: words("the splint") };
    let mut slide = left("heel-slide");
    assert!(breaks(brace(), &slide));
    slide.with_brace = true;
    assert!(!breaks(brace(), &slide));
    assert!(!breaks(brace(), &performed("heel-slide", ItemSide::Other)));
    let spine = |no_bending, no_twisting, lift_most_kg| Rule::Spine { no_bending, no_twisting, lift_most_kg };
    assert!(breaks(spine(false, true, None), &left("knee-rolls")));
    assert!(!breaks(spine(true, false, None), &left("knee-rolls")));
    assert!(breaks(spine(true, false, None), &left("hip-hinge")));
    let mut heavy = left("mini-squat");
    heavy.load_kg = 5.1;
    assert!(breaks(spine(false, false, Some(5.0)), &heavy));
    heavy.load_kg = 5.0;
    assert!(!breaks(spine(false, false, Some(5.0)), &heavy));
    let daily = |rule| Rule::Daily { rule };
    assert!(breaks(daily(DailyRule::ChairNotBelowKnee), &left("seated-march-low")));
    assert!(!breaks(daily(DailyRule::ChairNotBelowKnee), &left("seated-march")));
    assert!(!breaks(daily(DailyRule::NoDriving), &left("seated-march-low")));
}

#[test]
fn the_clinic_is_warned_within_ten_degrees_of_a_limit() {
    let near = |most| {
        near_limit(
            &precaution("a", range(Joint::Knee, Motion::Flexion, most), through("2026-05-24")),
            &left("heel-slide"),
        )
    };
    assert_eq!(near(89.9), None, "beyond the limit is a breach, not a warning");
    assert!(near(90.0).is_some() && near(99.9).is_some());
    assert_eq!(near(100.0), None);
    // Sitting at 85° is close to 90°, though nothing moves there.
    let flexion = precaution("a", range(Joint::Hip, Motion::Flexion, 90.0), through("2026-05-24"));
    assert!(near_limit(&flexion, &left("long-arc-quad")).is_some());
    assert_eq!(near_limit(&flexion, &left("heel-slide")), None);
}

fn shut_until(day: &str) -> Standing {
    statement_of(vec![precaution("a", Rule::Position { not: ForbiddenPosition::Supine }, through(day))])
}

fn statement_of(precautions: Vec<Precaution>) -> Standing {
    Standing::of(&[statement(precautions)])
}

fn gate_of(standing: &Standing, item: &str, at: &GateDay) -> Gate {
    let (plan, library) = (sample::plan(), Library::shipped());
    let gates = Gates { plan: &plan, library: &library, standing, tightened: &[] };
    let item = plan.item(&ItemId::new(item).expect("an id")).expect("in the sample").clone();
    gates.item(&item, &item.dose, at)
}

#[test]
fn the_day_before_is_shut_and_the_day_itself_is_not() {
    let standing = shut_until("2026-05-24");
    let on = |day: &str| gate_of(&standing, "slide", &GateDay::new(date(day)));
    let Gate::NotYet(not_yet) = on("2026-05-24") else { panic!("the day before is shut") };
    assert_eq!(not_yet.opens, Some(date("2026-05-25")));
    assert!(on("2026-05-25").is_open());
}

#[test]
fn while_the_plans_day_stands_still_nothing_opens() {
    let standing = shut_until("2026-05-24");
    let review = date("2026-05-20");
    let shut = |at: &GateDay| match gate_of(&standing, "slide", at) {
        Gate::NotYet(not_yet) => not_yet.opens.is_none(),
        Gate::Open => false,
    };
    assert!(shut(&GateDay::held(date("2026-06-01"), review, None)));
    let Gate::NotYet(held) = gate_of(&standing, "slide", &GateDay::held(date("2026-06-01"), review, None))
    else {
        panic!("shut")
    };
    assert_eq!(held.reasons[0].cause, Cause::StandsStill(Standstill::PastReview));
    assert!(held.reasons.iter().all(|reason| reason.opens.is_none()), "no day that has passed");
    assert!(!shut(&GateDay::held(date("2026-06-01"), date("2026-06-01"), None)));
    let set_back = GateDay::held(date("2026-06-01"), date("2026-06-14"), Some(date("2026-05-10")));
    assert_eq!(set_back.stands_still(), Some(Standstill::SetBack));
    assert!(shut(&set_back));
    // What was open on the day of the set-back stays open.
    let late = GateDay::held(date("2026-06-03"), date("2026-06-14"), Some(date("2026-06-01")));
    assert!(gate_of(&standing, "slide", &late).is_open());
}

#[test]
fn a_gate_past_review_by_names_no_day() {
    let standing = shut_until("2026-06-20");
    let Gate::NotYet(not_yet) = gate_of(&standing, "slide", &GateDay::new(date("2026-03-05"))) else {
        panic!("shut")
    };
    assert_eq!(not_yet.opens, None);
}

#[test]
fn changed_facts_unknown_movements_and_tightening_shut() {
    let (library, standing) = (Library::shipped(), Standing::default());
    let at = GateDay::new(date("2026-03-05"));
    let causes = |plan: &Plan, tightened: &[Tightened]| {
        let gates = Gates { plan, library: &library, standing: &standing, tightened };
        let item = &plan.doc().items[1];
        match gates.item(item, &item.dose, &at) {
            Gate::Open => vec![],
            Gate::NotYet(not_yet) => not_yet.reasons.into_iter().map(|r| r.cause).collect(),
        }
    };
    let plan = sample::plan();
    assert_eq!(causes(&plan, &[]), []);
    let since = date("2026-03-04");
    let stopped = Tightened { item: plan.doc().items[1].id.clone(), since };
    assert_eq!(causes(&plan, &[stopped]), [Cause::Tightened { since }]);
    let mut doc = plan.doc().clone();
    doc.items[1].facts = Some(crate::digest::Digest::of(b"other facts"));
    assert_eq!(causes(&Plan::new(doc.clone()).expect("valid"), &[]), [Cause::FactsDiffer]);
    doc.items[1].movement = MovementId::new("of-a-later-version").expect("an id");
    let unknown = Cause::MovementUnknown(doc.items[1].movement.clone());
    assert_eq!(causes(&Plan::new(doc).expect("valid"), &[]), [unknown]);
}

#[test]
fn the_clinics_own_movement_counts_once_it_was_seen() {
    let library = Library::shipped();
    let mut doc = sample::doc();
    let shipped = library.get(&MovementId::new("heel-slide").expect("an id")).expect("ships");
    let id = MovementId::new("our-slide").expect("an id");
    let form = crate::library::Form { id, ..shipped.form().clone() };
    let movement = crate::library::Movement::new(form).expect("possible");
    let facts = movement.digest();
    let text = || words("said");
    doc.movements = vec![crate::plan::doc::OwnMovement {
        movement,
        name: text(),
        set_up: text(),
        how: text(),
        feel: None,
        faults: text(),
    }];
    doc.items[0].movement = MovementId::new("our-slide").expect("an id");
    let mut plan_doc = sample::signed(sample::doc()).doc().clone();
    plan_doc.movements = doc.movements;
    plan_doc.items[0].movement = doc.items[0].movement.clone();
    plan_doc.items[0].facts = Some(facts);
    let plan = Plan::new(plan_doc).expect("valid");
    let open = |standing: &Standing| {
        let gates = Gates { plan: &plan, library: &library, standing, tightened: &[] };
        gates
            .item(&plan.doc().items[0], &plan.doc().items[0].dose, &GateDay::new(date("2026-03-05")))
            .is_open()
    };
    assert!(open(&Standing::default()), "no precaution stands");
    let mut standing = statement_of(vec![precaution("a", Rule::Resistance {}, through("2026-05-24"))]);
    assert!(!open(&standing));
    standing.movements_seen.push(facts);
    assert!(open(&standing));
}

#[test]
fn the_walk_finds_every_day_on_which_a_gate_is_shut() {
    let (plan, library) = (sample::plan(), Library::shipped());
    let standing = shut_until("2026-04-10");
    let found = walk(plan.doc(), &library, &standing);
    assert!(found.contradictions.iter().any(|c| c.item.as_str() == "slide"));
    for c in &found.contradictions {
        assert_eq!((c.from, c.through), (Some(date("2026-03-02")), Some(date("2026-04-10"))));
    }
    for stage in &plan.doc().stages {
        let (first, last) =
            crate::calendar::week_span(date("2026-03-02"), stage.from_week, stage.through_week);
        for entry in &stage.items {
            let item = plan.item(&entry.item).expect("in the sample");
            for day in first.iter_days().take_while(|day| *day <= last) {
                let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
                let shut = !gates.item(item, entry.dose(item), &GateDay::new(day)).is_open();
                let walked = found.contradictions.iter().any(|c| {
                    c.item == item.id
                        && c.movement == item.movement
                        && c.from <= Some(day)
                        && Some(day) <= c.through
                });
                assert_eq!(shut, walked, "{} on {day}", item.id);
            }
        }
    }
}

fn any_rule() -> impl Strategy<Value = Rule> {
    let joint = prop_oneof![
        Just((Joint::Hip, Motion::Flexion)),
        Just((Joint::Knee, Motion::Flexion)),
        Just((Joint::Hip, Motion::Abduction)),
        Just((Joint::Knee, Motion::Extension)),
        Just((Joint::Hip, Motion::Adduction))
    ];
    prop_oneof![
        (joint.clone(), -40.0f64..120.0)
            .prop_map(|((joint, motion), most_deg)| range(joint, motion, most_deg)),
        (joint.clone(), any::<bool>()).prop_map(|((joint, motion), assisted_allowed)| Rule::Action {
            joint,
            motion,
            assisted_allowed
        }),
        (joint, 0.0f64..1.0).prop_map(|((joint, motion), most_nm_per_kg)| Rule::Moment {
            joint,
            motion,
            most_nm_per_kg
        }),
        Just(Rule::Resistance {}),
        Just(Rule::Brace { brace: words("the splint") }),
        Just(Rule::Position { not: ForbiddenPosition::Supine }),
        Just(Rule::Position { not: ForbiddenPosition::Standing }),
        (0.0f64..100.0).prop_map(|most| Rule::WeightBearing {
            term: WeightBearing::Partial,
            most_kg: None,
            most_percent: Some(most),
        }),
    ]
}

fn any_precaution() -> impl Strategy<Value = Precaution> {
    let side =
        prop_oneof![Just(PrecautionSide::Left), Just(PrecautionSide::Right), Just(PrecautionSide::Both)];
    let ends = prop_oneof![
        (0u64..150).prop_map(|n| End::Through { day: date("2026-03-02") + Days::new(n), week: None }),
        Just(End::UntilLifted { not_before: None, week: None }),
    ];
    (any_rule(), side, ends, 0u32..10_000)
        .prop_map(|(rule, side, ends, n)| Precaution { side, ..precaution(&format!("p{n}"), rule, ends) })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn adding_a_precaution_never_opens_anything(
        before in proptest::collection::vec(any_precaution(), 0..4),
        added in any_precaution(),
        day in 0u64..150,
    ) {
        let at = GateDay::new(date("2026-03-02") + Days::new(day));
        let without = statement_of(before.clone());
        let with = statement_of(before.into_iter().chain([added]).collect());
        for item in &sample::plan().doc().items {
            let (a, b) = (gate_of(&without, item.id.as_str(), &at), gate_of(&with, item.id.as_str(), &at));
            if let Gate::NotYet(a) = a {
                let Gate::NotYet(b) = b else { panic!("{} was opened", item.id) };
                // None is later than any day.
                prop_assert!(b.opens.is_none() || (a.opens.is_some() && b.opens >= a.opens));
            }
        }
    }

    #[test]
    fn opens_is_the_first_open_day(precautions in proptest::collection::vec(any_precaution(), 1..4), day in 0u64..100) {
        let standing = statement_of(precautions);
        for item in &sample::plan().doc().items {
            let at = GateDay::new(date("2026-03-02") + Days::new(day));
            if let Gate::NotYet(NotYet { opens: Some(opens), .. }) = gate_of(&standing, item.id.as_str(), &at) {
                prop_assert!(gate_of(&standing, item.id.as_str(), &GateDay::new(opens)).is_open());
                let eve = opens.pred_opt().expect("a day before");
                prop_assert!(!gate_of(&standing, item.id.as_str(), &GateDay::new(eve)).is_open());
            }
        }
    }
}

#[test]
fn day_rules_stand_on_their_days() {
    let daily = precaution("sleep", Rule::Daily { rule: DailyRule::SleepOnYourBack }, through("2026-04-12"));
    let standing = statement_of(vec![daily]);
    let on = |day: &str| day_rules(&standing, &GateDay::new(date(day)), date("2026-06-14"));
    assert_eq!(on("2026-04-12").len(), 1);
    assert_eq!(on("2026-04-12")[0].opens, Some(date("2026-04-13")));
    assert!(on("2026-04-13").is_empty());
    assert_eq!(
        in_force(precaution("x", Rule::Resistance {}, through("2026-04-12"))).set_by.name,
        "A surgeon"
    );
    assert_eq!(Side::Left.opposite(), Side::Right);
}
