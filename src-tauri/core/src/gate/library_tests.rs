//! What single precautions shut of the library, and what they leave open, done by the left leg of
//! somebody of 1.70 m and 70 kg.

use std::collections::BTreeSet;

use super::*;
use crate::facts::{BodySize, Drive, ItemSide, Joint, Manner, Motion, OperatedSide};
use crate::library::{Form, Movement};
use crate::plan::doc::Load;
use crate::precaution::{ForbiddenPosition, Rule, WeightBearing};
use crate::sample::{left, performed, precaution, through};

fn breaks(rule: &Rule, performed: &Performed) -> bool {
    breach(&precaution("a", rule.clone(), through("2026-05-24")), performed).is_some()
}

/// The movements that a precaution shuts, done by the left.
fn shut(rule: &Rule) -> BTreeSet<String> {
    let all = Library::shipped();
    let ids = all.iter().map(|movement| movement.id.to_string());
    ids.filter(|id| breaks(rule, &left(id))).collect()
}

fn names(ids: &[&str]) -> BTreeSet<String> {
    ids.iter().map(ToString::to_string).collect()
}

fn expect(rule: &Rule, are_shut: &[&str], are_open: &[&str]) {
    let shut = shut(rule);
    for id in are_shut {
        assert!(shut.contains(*id), "{id} is open under {rule:?}");
    }
    for id in are_open {
        assert!(!shut.contains(*id), "{id} is shut under {rule:?}");
    }
}

fn hip_flexion_moment() -> Rule {
    Rule::Moment { joint: Joint::Hip, motion: Motion::Flexion, most_nm_per_kg: 0.25 }
}

fn range(joint: Joint, motion: Motion, most_deg: f64) -> Rule {
    Rule::Range { joint, motion, most_deg, only: vec![] }
}

#[test]
fn a_moment_shuts_what_lifts_so_much_and_nothing_else() {
    let shut = shut(&hip_flexion_moment());
    let lifts = names(&[
        "abdominal-brace-marching",
        "marching",
        "marching-high",
        "seated-march",
        "seated-march-cuff",
        "seated-march-low",
        "standing-straight-hip-flexion",
        "straight-leg-raise",
        "straight-leg-raise-cuff",
    ]);
    assert_eq!(shut, lifts);
}

#[test]
fn an_ankle_weight_shuts_what_passed_bare_and_a_helpers_hands_open_it() {
    let (rule, library) = (hip_flexion_moment(), Library::shipped());
    let with = |form: &Form, load_kg: Option<f64>| {
        let movement = Movement::new(form.clone()).expect("possible");
        let load = load_kg.map(|load_kg| Load::Weight { load_kg });
        let size = BodySize { height_cm: Some(170), mass_kg: Some(70) };
        let operated = OperatedSide::Left;
        let manner =
            Manner { side: ItemSide::Operated, operated, load: load.as_ref(), with_brace: false, size };
        breaks(&rule, &Performed::new(&movement, &manner))
    };
    let form = |id: &str| library.get(&MovementId::new(id).expect("an id")).expect("ships").form().clone();
    // By hand, thigh at 40° and shank at 15° behind the vertical: 0.235 N·m/kg bare; 1 kg at the ankle
    // adds 9.81 × (0.245 sin 40° − 0.246 sin 15°) × 1.70 / 70 = 0.022.
    let low = form("marching-low");
    assert!(!with(&low, None));
    assert!(with(&low, Some(1.0)));
    let mut raise = form("straight-leg-raise");
    assert!(with(&raise, None));
    raise.drive.working = Drive::Passive;
    assert!(!with(&raise, None) && !with(&raise, Some(2.0)));
    assert!(!with(&form("passive-straight-leg-raise"), None));
}

#[test]
fn an_unknown_height_is_judged_by_the_tallest() {
    let of = |height_cm| {
        let library = Library::shipped();
        let id = MovementId::new("straight-leg-raise").expect("an id");
        let movement = library.get(&id).expect("ships");
        let size = BodySize { height_cm, mass_kg: Some(70) };
        let operated = OperatedSide::Left;
        let manner = Manner { side: ItemSide::Operated, operated, load: None, with_brace: false, size };
        let done = Performed::new(movement, &manner);
        done.moments.iter().filter(|m| m.joint == Joint::Hip).map(|m| m.nm_per_kg).fold(0.0, f64::max)
    };
    assert!((of(None) - of(Some(220))).abs() < 1e-12);
    assert!(of(None) > of(Some(219)));
}

#[test]
fn hip_flexion_over_90() {
    let rule = range(Joint::Hip, Motion::Flexion, 90.0);
    expect(
        &rule,
        &[
            "seated-march-low",
            "sit-to-stand-low",
            "marching-high",
            "single-knee-to-chest",
            "double-knee-to-chest",
        ],
        &["heel-slide", "marching", "long-arc-quad", "seated-knee-bend", "mini-squat-deeper", "step-up-high"],
    );
    let mut slide = left("heel-slide");
    for range in slide.ranges.iter_mut().filter(|r| r.joint == Joint::Hip) {
        range.to_deg = range.to_deg.min(60.0);
    }
    assert!(!breaks(&rule, &slide));
}

#[test]
fn adduction_not_past_the_middle() {
    let shut = shut(&range(Joint::Hip, Motion::Adduction, 0.0));
    let cross = ["seated-knee-bend-assisted", "semi-tandem-stance", "standing-adduction", "tandem-stance"];
    assert_eq!(shut, names(&cross));
}

#[test]
fn no_active_hip_abduction() {
    let rule = Rule::Action { joint: Joint::Hip, motion: Motion::Abduction, assisted_allowed: false };
    expect(
        &rule,
        &["side-lying-abduction", "clam", "hip-abduction-press", "standing-abduction", "abduction-slide"],
        &["heel-slide", "mini-squat", "calf-raise", "standing-knee-curl", "bridge", "long-arc-quad"],
    );
    // The other leg lifts: this one stands, and holds the pelvis.
    for id in ["standing-abduction", "standing-knee-curl", "marching", "standing-extension"] {
        assert!(breaks(&rule, &performed(id, ItemSide::Other)), "{id}");
    }
    // Whose other leg lies beneath does nothing.
    assert!(!breaks(&rule, &performed("side-lying-abduction", ItemSide::Other)));
}

#[test]
fn floor_kneeling_and_weight_shut_theirs_and_nothing_else() {
    let position = |not| Rule::Position { not };
    let down = names(&["hands-and-knees-arch", "kneeling-weight-shift"]);
    assert_eq!(shut(&position(ForbiddenPosition::OnTheFloor)), down);
    assert_eq!(shut(&position(ForbiddenPosition::Kneeling)), down);
    let touch =
        Rule::WeightBearing { term: WeightBearing::TouchDown, most_kg: None, most_percent: Some(10.0) };
    let bears = names(&[
        "bridge",
        "bridge-one-leg",
        "calf-raise",
        "calf-raise-one-leg",
        "hands-and-knees-arch",
        "hip-hinge",
        "hip-hinge-shallow",
        "hip-hinge-stick",
        "isometric-rotation",
        "isometric-rotation-inward",
        "kneeling-weight-shift",
        "mini-squat",
        "mini-squat-deeper",
        "one-leg-stance",
        "pendulum",
        "pendulum-sideways",
        "semi-tandem-stance",
        "sit-to-stand",
        "sit-to-stand-arms",
        "sit-to-stand-low",
        "step-up",
        "step-up-high",
        "step-up-low",
        "tandem-stance",
        "walking",
    ]);
    assert_eq!(shut(&touch), bears);
}

#[test]
fn a_brace_is_worn_by_the_leg_that_stands_and_a_band_pulls_on_both() {
    let brace = Rule::Brace { brace: crate::sample::words("the splint") };
    assert!(breaks(&brace, &performed("standing-abduction", ItemSide::Other)));
    assert!(!breaks(&brace, &performed("heel-slide", ItemSide::Other)));
    assert!(breaks(&brace, &performed("glute-set", ItemSide::Other)), "both buttocks tighten");
    let resistance = Rule::Resistance {};
    for id in ["standing-abduction-band", "standing-extension-band", "clam-band"] {
        assert!(breaks(&resistance, &performed(id, ItemSide::Other)), "{id}");
    }
    assert!(!breaks(&resistance, &performed("side-lying-abduction-cuff", ItemSide::Other)));
}
