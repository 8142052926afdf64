use super::*;
use crate::facts::{Axis, Drive, Joint, Limb, Motion, Position, Resistance, Seat, Surface, tenths};

fn movement(id: &str) -> Movement {
    let id = MovementId::new(id).expect("an id");
    Library::shipped().get(&id).unwrap_or_else(|| panic!("{id} ships")).clone()
}

fn form(id: &str) -> Form {
    movement(id).form().clone()
}

#[test]
fn every_file_parses_and_is_named_after_its_id() {
    for (name, text) in files::ALL {
        let movement: Movement = toml::from_str(text).unwrap_or_else(|e| panic!("{name}: {e}"));
        assert_eq!(movement.id.as_str(), *name);
    }
    assert_eq!(Library::shipped().iter().count(), files::ALL.len(), "an id comes twice");
    assert!(files::ALL.len() >= 70);
}

#[test]
fn easier_and_harder_lead_to_movements_that_ship() {
    let library = Library::shipped();
    for movement in library.iter() {
        for id in movement.easier.iter().chain(&movement.harder) {
            assert!(library.get(id).is_some(), "{} leads to {id}", movement.id);
            assert_ne!(id, &movement.id);
        }
    }
}

#[test]
fn every_movement_says_what_it_is_for_and_where_its_dose_comes_from() {
    for movement in Library::shipped().iter() {
        assert!(!movement.targets.is_empty(), "{}", movement.id);
        let starter = movement.starter.as_ref().unwrap_or_else(|| panic!("{}", movement.id));
        assert!(!starter.source.is_empty() && starter.repetitions.is_some() != starter.minutes.is_some());
    }
}

/// The movement table that the library is written from: joint, axis, from, to, of the working limb.
/// The figures are `common practice, no source`, as the table says.
#[test]
fn ranges_are_those_of_the_movement_table() {
    use Axis::{Abduction, Dorsiflexion, Flexion, InternalRotation};
    use Joint::{Ankle, Hip, Knee, Shoulder};
    let table = [
        ("ankle-pump", Ankle, Dorsiflexion, -30.0, 10.0),
        ("quad-set", Knee, Flexion, 0.0, 5.0),
        ("heel-slide", Knee, Flexion, 0.0, 90.0),
        ("heel-slide", Hip, Flexion, 0.0, 45.0),
        ("short-arc-quad", Hip, Flexion, 15.0, 15.0),
        ("short-arc-quad", Knee, Flexion, 0.0, 30.0),
        ("straight-leg-raise", Hip, Flexion, 0.0, 30.0),
        ("abduction-slide", Hip, Abduction, 0.0, 25.0),
        ("side-lying-abduction", Hip, Abduction, 0.0, 30.0),
        ("clam", Hip, InternalRotation, -30.0, 0.0),
        ("clam", Hip, Abduction, 0.0, 30.0),
        ("clam", Knee, Flexion, 90.0, 90.0),
        ("seated-knee-spread", Hip, Abduction, 0.0, 25.0),
        ("heel-prop", Knee, Flexion, 0.0, 10.0),
        ("long-arc-quad", Hip, Flexion, 85.0, 85.0),
        ("long-arc-quad", Knee, Flexion, 0.0, 90.0),
        ("standing-knee-curl", Knee, Flexion, 0.0, 90.0),
        ("standing-abduction", Hip, Abduction, 0.0, 25.0),
        ("standing-extension", Hip, Flexion, -15.0, 0.0),
        ("marching", Hip, Flexion, 0.0, 70.0),
        ("marching", Knee, Flexion, 0.0, 90.0),
        ("mini-squat", Hip, Flexion, 0.0, 40.0),
        ("mini-squat", Knee, Flexion, 0.0, 45.0),
        ("mini-squat", Ankle, Dorsiflexion, 0.0, 15.0),
        ("sit-to-stand", Hip, Flexion, 0.0, 95.0),
        ("calf-raise", Ankle, Dorsiflexion, -30.0, 0.0),
        ("standing-straight-hip-flexion", Hip, Flexion, 0.0, 30.0),
        ("seated-march", Hip, Flexion, 85.0, 100.0),
        ("table-slide", Shoulder, Flexion, 5.0, 90.0),
        ("stick-flexion", Shoulder, Flexion, 20.0, 120.0),
        ("stick-external-rotation", Shoulder, InternalRotation, -30.0, 0.0),
        ("single-knee-to-chest", Hip, Flexion, 0.0, 110.0),
        ("hip-hinge", Hip, Flexion, 0.0, 60.0),
    ];
    for (id, joint, axis, from, to) in table {
        let movement = movement(id);
        let range = movement
            .facts()
            .ranges
            .iter()
            .find(|r| r.limb == Limb::Working && r.joint == joint && r.axis == axis)
            .unwrap_or_else(|| panic!("{id}: no {joint:?} {axis:?}"));
        assert_eq!(
            (tenths(range.from_deg), tenths(range.to_deg)),
            (tenths(from), tenths(to)),
            "{id} {joint:?}"
        );
    }
}

fn acts(movement: &Movement, limb: Limb, joint: Joint, motion: Motion) -> Option<Drive> {
    let found =
        movement.facts().actions.iter().find(|a| (a.limb, a.joint, a.motion) == (limb, joint, motion));
    found.map(|action| action.drive)
}

#[test]
fn muscles_follow_from_gravity_from_the_way_and_from_weight() {
    use Joint::{Ankle, Hip, Knee};
    use Motion::{Abduction, Adduction, Extension, Flexion, Plantarflexion};
    let (working, other) = (Limb::Working, Limb::Other);
    for (id, limb, joint, motion, drive) in [
        ("straight-leg-raise", working, Hip, Flexion, Some(Drive::Active)),
        ("straight-leg-raise", working, Hip, Extension, None),
        ("straight-leg-raise", working, Knee, Extension, Some(Drive::Isometric)),
        ("straight-leg-raise", other, Hip, Flexion, None),
        ("passive-straight-leg-raise", working, Hip, Flexion, None),
        ("side-lying-abduction", working, Hip, Abduction, Some(Drive::Active)),
        ("side-lying-abduction", other, Hip, Abduction, None),
        // Gravity pulls neither way: out by the one group, back by the other.
        ("abduction-slide", working, Hip, Abduction, Some(Drive::Active)),
        ("abduction-slide", working, Hip, Adduction, Some(Drive::Active)),
        ("heel-slide", working, Hip, Flexion, Some(Drive::Active)),
        ("heel-slide", working, Knee, Extension, None),
        ("heel-slide-strap", working, Hip, Flexion, Some(Drive::Assisted)),
        ("long-arc-quad", working, Knee, Extension, Some(Drive::Active)),
        ("long-arc-quad", working, Hip, Flexion, None),
        // Downwards, the same muscles give way.
        ("mini-squat", working, Knee, Extension, Some(Drive::Active)),
        ("mini-squat", working, Knee, Flexion, None),
        ("mini-squat", other, Hip, Extension, Some(Drive::Active)),
        ("mini-squat", working, Hip, Abduction, None),
        ("calf-raise", working, Ankle, Plantarflexion, Some(Drive::Active)),
        ("bridge", working, Hip, Extension, Some(Drive::Active)),
        ("bridge", working, Hip, Flexion, None),
        ("standing-abduction", working, Hip, Abduction, Some(Drive::Active)),
        ("standing-abduction", other, Hip, Abduction, Some(Drive::Isometric)),
        ("marching", other, Hip, Abduction, Some(Drive::Isometric)),
        ("marching", working, Hip, Flexion, Some(Drive::Active)),
        ("one-leg-stance", working, Hip, Abduction, Some(Drive::Isometric)),
        ("one-leg-stance", other, Hip, Abduction, None),
        ("hip-abduction-press", working, Hip, Abduction, Some(Drive::Isometric)),
        ("hip-abduction-press", other, Hip, Abduction, Some(Drive::Isometric)),
        ("quad-set", working, Knee, Extension, Some(Drive::Isometric)),
        ("glute-set", working, Hip, Extension, Some(Drive::Isometric)),
        ("heel-prop", working, Knee, Extension, None),
        ("standing-knee-curl", working, Knee, Flexion, Some(Drive::Active)),
        ("standing-extension", working, Hip, Extension, Some(Drive::Active)),
    ] {
        assert_eq!(acts(&movement(id), limb, joint, motion), drive, "{id}: {limb:?} {joint:?} {motion:?}");
    }
}

#[test]
fn seats_spines_and_resistance_follow_from_poses_and_props() {
    let seat = |id| movement(id).facts().seat;
    assert_eq!(seat("seated-march"), Some(Seat::High));
    assert_eq!(seat("seated-march-low"), Some(Seat::Low));
    assert_eq!(seat("sit-to-stand-low"), Some(Seat::Low));
    assert_eq!(seat("marching"), None);
    for id in ["hip-hinge", "pendulum", "prone-press-up", "hands-and-knees-arch", "single-knee-to-chest"] {
        assert!(movement(id).facts().bends_spine, "{id}");
    }
    for id in ["heel-slide", "mini-squat", "sit-to-stand", "bridge", "pelvic-tilt"] {
        assert!(!movement(id).facts().bends_spine, "{id}");
    }
    let twists: Vec<_> =
        Library::shipped().iter().filter(|m| m.facts().twists_spine).map(|m| m.id.to_string()).collect();
    assert_eq!(twists, ["knee-rolls"]);
    for movement in Library::shipped().iter() {
        let named = movement.id.as_str().ends_with("-band") || movement.id.as_str().ends_with("-cuff");
        assert_eq!(movement.facts().resistance != Resistance::None, named, "{}", movement.id);
    }
}

#[test]
fn a_seat_is_a_seat_without_a_chair_and_whichever_way_it_is_left() {
    let mut low = form("seated-march-low");
    low.props.clear();
    assert_eq!(Movement::new(low).expect("possible").facts().seat, Some(Seat::Low));
    let mut down = form("sit-to-stand-low");
    down.poses.reverse();
    let last = down.poses.len() - 1;
    (down.poses[0].at, down.poses[1].at, down.poses[last].at) = (0.0, 0.6, 1.0);
    assert_eq!(Movement::new(down).expect("possible").facts().seat, Some(Seat::Low));
}

#[test]
fn a_band_may_pull_from_anywhere() {
    let mut curl = form("seated-knee-bend");
    curl.props.push(Prop::Band);
    let curl = Movement::new(curl).expect("possible");
    for motion in [Motion::Flexion, Motion::Extension] {
        assert!(acts(&curl, Limb::Working, Joint::Knee, motion).is_some(), "{motion:?}");
    }
    assert!(
        acts(&movement("shoulder-blade-squeeze-band"), Limb::Working, Joint::Shoulder, Motion::Extension)
            .is_some()
    );
}

#[test]
fn a_leg_that_steps_pushes_and_swings() {
    let (working, other) = (Limb::Working, Limb::Other);
    for (id, limb) in [("step-up", other), ("walking", working), ("walking", other)] {
        let movement = movement(id);
        assert!(acts(&movement, limb, Joint::Hip, Motion::Flexion).is_some(), "{id}: swings");
        assert!(acts(&movement, limb, Joint::Hip, Motion::Extension).is_some(), "{id}: pushes");
        assert_eq!(acts(&movement, limb, Joint::Hip, Motion::Abduction), Some(Drive::Isometric), "{id}");
    }
    let mut tiptoe = form("calf-raise");
    tiptoe.poses.remove(0);
    tiptoe.poses[0].at = 0.0;
    let tiptoe = Movement::new(tiptoe).expect("possible");
    assert!(acts(&tiptoe, working, Joint::Ankle, Motion::Plantarflexion).is_some(), "held on the toes");
}

#[test]
fn a_passive_limb_holds_nothing() {
    for movement in Library::shipped().iter() {
        assert!(movement.facts().moments.iter().all(|m| m.drive != Drive::Passive), "{}", movement.id);
        assert!(movement.facts().actions.iter().all(|a| a.drive != Drive::Passive), "{}", movement.id);
    }
}

#[test]
fn what_the_left_does_is_the_mirror_of_what_the_right_does() {
    for movement in Library::shipped().iter() {
        for share in [0.0, 0.37, 1.0] {
            let right = movement.course(Side::Right, false).at(share).placed;
            let left = movement.course(Side::Left, false).at(share).placed;
            for side in Side::BOTH {
                let (here, there) = (right.leg(side), left.leg(side.opposite()));
                for (a, b) in [(here.knee, there.knee), (here.toe, there.toe)] {
                    assert!(a.distance(b * glam::DVec3::new(1.0, 1.0, -1.0)) < 1e-9, "{}", movement.id);
                }
            }
        }
    }
}

#[test]
fn hands_that_hold_on_stay_where_they_are() {
    for movement in Library::shipped().iter() {
        let course = movement.course(Side::Right, false);
        for limb in &movement.place.still_hands {
            let at = |share| course.at(share).placed.arm(course.side(*limb)).wrist;
            assert!(
                at(0.0).distance(at(1.0)) < 0.02,
                "{}: a hand floats {}",
                movement.id,
                at(0.0).distance(at(1.0))
            );
        }
    }
}

/// What an edit makes impossible, and the place that the refusal names.
#[test]
fn an_impossible_movement_is_refused_and_its_place_named() {
    type Edit = fn(&mut Form);
    let cases: [(&str, Edit, &str); 24] = [
        ("heel-slide", |f| f.poses.clear(), "poses"),
        ("heel-slide", |f| f.poses[1].at = 0.5, "poses"),
        ("heel-slide", |f| f.poses[1].at = f64::NAN, "poses"),
        ("heel-slide", |f| f.poses[1].working.hip_flexion_deg = 140.0, "poses[1].working.hip_flexion_deg"),
        (
            "heel-slide",
            |f| f.poses[1].working.knee_flexion_deg = f64::NAN,
            "poses[1].working.knee_flexion_deg",
        ),
        ("heel-slide", |f| f.poses[0].other.knee_flexion_deg = -20.0, "poses[0].other.knee_flexion_deg"),
        ("heel-slide", |f| f.poses[0].trunk.flexion_deg = 100.0, "poses[0].trunk.flexion_deg"),
        // A limb through the bed, a foot through the floor.
        ("straight-leg-raise", |f| f.poses[1].working.hip_flexion_deg = -20.0, "poses[1]"),
        ("long-arc-quad", |f| f.poses[1].other.hip_flexion_deg = 50.0, "poses[1]"),
        ("standing-abduction", |f| f.poses[1].other.hip_flexion_deg = 25.0, "poses[1]"),
        // One leg through the other.
        ("standing-abduction", |f| f.poses[1].working.hip_abduction_deg = -12.0, "poses[1]"),
        // Left and right mixed: nobody lies on a side that is not said, or stands on no leg.
        ("clam", |f| f.place.lies_on = None, "place.lies_on"),
        ("marching", |f| f.place.other_weight_percent = 0.0, "place.surface"),
        (
            "mini-squat",
            |f| f.poses[1].working.ankle_dorsiflexion_deg = 15.0,
            "poses[1].working.ankle_dorsiflexion_deg",
        ),
        // What is said to rest and rises, and who is said not to bear what they stand on.
        ("straight-leg-raise", |f| f.place.working_rests = vec![Segment::Thigh, Segment::Foot], "poses[1]"),
        ("prone-knee-bend", |f| f.place.working_rests.push(Segment::Shank), "poses[1]"),
        (
            "standing-abduction",
            |f| (f.place.working_weight_percent, f.place.other_weight_percent) = (100.0, 0.0),
            "poses[1]",
        ),
        ("mini-squat", |f| f.place.step_height = 0.2, "place.step_height"),
        ("bridge", |f| f.place.pushing_legs.clear(), "place.pushing_legs"),
        ("bridge", |f| f.place.working_weight_percent = 101.0, "place.working_weight_percent"),
        ("hip-hinge", |f| f.poses[1].trunk.pelvis_lean_deg = 100.0, "poses[1]"),
        // Muscles and lists that cannot be.
        ("quad-set", |f| f.efforts[0].motion = Motion::Abduction, "efforts"),
        ("stick-flexion", |f| f.drive.joints.push(f.drive.joints[0]), "drive.joints"),
        ("heel-slide", |f| f.props = vec![Prop::Roll; 20_000], "props"),
    ];
    for (id, edit, place) in cases {
        let mut form = form(id);
        edit(&mut form);
        let refused = Movement::new(form).map(|m| m.id.clone()).expect_err(id);
        assert_eq!((refused.movement.as_str(), refused.place.as_str()), (id, place), "{refused}");
    }
}

#[test]
fn the_digest_is_of_what_the_facts_follow_from() {
    let here = movement("heel-slide");
    let with = |edit: fn(&mut Form)| {
        let mut form = form("heel-slide");
        edit(&mut form);
        Movement::new(form).expect("possible").digest()
    };
    assert_eq!(with(|f| f.easier = None), here.digest());
    assert_eq!(with(|f| f.starter = None), here.digest());
    assert_ne!(with(|f| f.poses[1].working.hip_flexion_deg += 0.1), here.digest());
    assert_ne!(with(|f| f.drive.working = Drive::Assisted), here.digest());
}

#[test]
fn a_movement_survives_its_own_writing() {
    for movement in Library::shipped().iter() {
        let json = serde_json::to_string(movement).expect("plain data");
        let read: Movement = serde_json::from_str(&json).expect("its own form");
        assert_eq!(read, *movement);
    }
}

#[test]
fn positions_and_surfaces_are_as_the_table_says() {
    let at = |id: &str| (movement(id).facts().position, movement(id).facts().surface);
    assert_eq!(at("hands-and-knees-arch"), (Position::HandsAndKnees, Surface::Floor));
    assert_eq!(at("kneeling-weight-shift"), (Position::Kneeling, Surface::Floor));
    assert_eq!(at("clam"), (Position::SideLying, Surface::Bed));
    assert_eq!(at("pendulum"), (Position::BentOver, Surface::Ground));
}
