use super::*;
use crate::facts::{Joint, Motion};
use glam::DVec3;
use proptest::prelude::*;

const STATURE_M: f64 = 1.70;
const MASS_KG: f64 = 70.0;

fn near(a: DVec3, b: DVec3) -> bool {
    (a - b).length() < 1e-12
}

fn leg(lying: Lying, angles: LegAngles) -> Placed {
    let mut pose = Pose::neutral(lying);
    *pose.legs.get_mut(Side::Right) = angles;
    Placed::new(&pose, STATURE_M)
}

#[test]
fn hand_computed_poses() {
    let (thigh, shank, half) = (0.245 * STATURE_M, 0.246 * STATURE_M, 0.050 * STATURE_M);
    // Standing: everything hangs straight down, the toes point forward.
    let stands = leg(Lying::Upright, LegAngles::default());
    assert!(near(stands.leg(Side::Right).ankle, DVec3::new(0.0, -thigh - shank, half)));
    assert!(stands.leg(Side::Right).toe.x > 0.25);
    // Sitting, hip and knee at 90°: thigh forward, shank down.
    let sits = leg(
        Lying::Upright,
        LegAngles { hip_flexion_deg: 90.0, knee_flexion_deg: 90.0, ..LegAngles::default() },
    );
    assert!(near(sits.leg(Side::Right).knee, DVec3::new(thigh, 0.0, half)));
    assert!(near(sits.leg(Side::Right).ankle, DVec3::new(thigh, -shank, half)));
    // Knee bent backwards, standing: the shank points back.
    let curls = leg(Lying::Upright, LegAngles { knee_flexion_deg: 90.0, ..LegAngles::default() });
    assert!(near(curls.leg(Side::Right).ankle, DVec3::new(-shank, -thigh, half)));
    // Leg out to the side: to the right, for the right.
    let out = leg(Lying::Upright, LegAngles { hip_abduction_deg: 90.0, ..LegAngles::default() });
    assert!(near(out.leg(Side::Right).knee, DVec3::new(0.0, 0.0, half + thigh)));
    // Turned in: the toes of the right point to the left.
    let turned = leg(Lying::Upright, LegAngles { hip_internal_rotation_deg: 90.0, ..LegAngles::default() });
    assert!(turned.leg(Side::Right).toe.z < half - 0.2);
    // On the back, leg straight: the head to one side, the feet to the other, level.
    let lies = leg(Lying::OnTheBack, LegAngles::default());
    assert!(near(lies.leg(Side::Right).ankle, DVec3::new(thigh + shank, 0.0, half)));
    assert!(lies.arm(Side::Right).shoulder.x < -0.4 && lies.leg(Side::Right).toe.y > 0.2);
    // On the left side, the right leg is on top.
    let side = leg(Lying::OnSide(Side::Left), LegAngles::default());
    assert!(side.leg(Side::Right).hip.y > 0.0 && side.leg(Side::Left).hip.y < 0.0);
}

/// N·m for 70 kg.
fn moment(placed: &Placed, joint: Joint, motion: Motion) -> f64 {
    gravity_moment_nm_per_kg(placed, Rests::default(), joint, motion, Side::Right, 0.0) * MASS_KG
}

#[test]
fn moments_are_those_of_the_segment_table() {
    // Worked from Winter's fractions at 70 kg and 1.70 m, g = 9.81: our model is thigh plus
    // shank-and-foot; the spread to other lumpings of the same table is given beside it.
    let raise = |deg: f64| {
        let angles = LegAngles { hip_flexion_deg: deg, ..LegAngles::default() };
        moment(&leg(Lying::OnTheBack, angles), Joint::Hip, Motion::Flexion)
    };
    assert!((raise(0.0) - 40.45).abs() < 0.005, "39.78 to 41.25: {}", raise(0.0));
    assert!((raise(30.0) - 40.45 * 30f64.to_radians().cos()).abs() < 0.01, "{}", raise(30.0));
    assert!((raise(60.0) - 40.45 * 0.5).abs() < 0.01, "{}", raise(60.0));
    let sits = leg(Lying::Upright, LegAngles { hip_flexion_deg: 90.0, ..LegAngles::default() });
    assert!((moment(&sits, Joint::Knee, Motion::Extension) - 10.62).abs() < 0.005);
    assert!((moment(&sits, Joint::Knee, Motion::Flexion) + 10.62).abs() < 0.005, "gravity bends it");
    let forward = leg(Lying::Upright, LegAngles { hip_flexion_deg: 30.0, ..LegAngles::default() });
    let normalised = moment(&forward, Joint::Hip, Motion::Flexion) / MASS_KG;
    assert!((0.284..=0.295).contains(&normalised), "{normalised}");
    let marching = LegAngles { hip_flexion_deg: 70.0, knee_flexion_deg: 70.0, ..LegAngles::default() };
    let march = moment(&leg(Lying::Upright, marching), Joint::Hip, Motion::Flexion) / MASS_KG;
    assert!((march - 0.40).abs() < 0.005, "thigh at 70°, shank hanging: {march}");
    let mut arms = Pose::neutral(Lying::Upright);
    arms.arms.get_mut(Side::Right).shoulder_flexion_deg = 90.0;
    let arm = moment(&Placed::new(&arms, STATURE_M), Joint::Shoulder, Motion::Flexion);
    assert!((arm - 10.0).abs() < 0.3, "three segments; 10.27 for the arm in one piece: {arm}");
}

#[test]
fn a_kilogram_at_the_ankle_adds_its_lever() {
    let added = |placed: &Placed, joint, motion| {
        let with =
            |load| gravity_moment_nm_per_kg(placed, Rests::default(), joint, motion, Side::Right, load);
        (with(1.0 / MASS_KG) - with(0.0)) * MASS_KG
    };
    let lies = leg(Lying::OnTheBack, LegAngles::default());
    // 9.81 × 0.491 × 1.70 and 9.81 × 0.246 × 1.70.
    assert!((added(&lies, Joint::Hip, Motion::Flexion) - 8.19).abs() < 0.005);
    assert!((added(&lies, Joint::Knee, Motion::Extension) - 4.10).abs() < 0.005);
}

fn any_leg() -> impl Strategy<Value = LegAngles> {
    (-30.0f64..120.0, -30.0f64..45.0, -40.0f64..40.0, 0.0f64..140.0, -40.0f64..20.0).prop_map(
        |(
            hip_flexion_deg,
            hip_abduction_deg,
            hip_internal_rotation_deg,
            knee_flexion_deg,
            ankle_dorsiflexion_deg,
        )| {
            LegAngles {
                hip_flexion_deg,
                hip_abduction_deg,
                hip_internal_rotation_deg,
                knee_flexion_deg,
                ankle_dorsiflexion_deg,
            }
        },
    )
}

fn any_arm() -> impl Strategy<Value = ArmAngles> {
    (-40.0f64..170.0, 0.0f64..150.0, -60.0f64..60.0, 0.0f64..140.0).prop_map(
        |(
            shoulder_flexion_deg,
            shoulder_abduction_deg,
            shoulder_internal_rotation_deg,
            elbow_flexion_deg,
        )| ArmAngles {
            shoulder_flexion_deg,
            shoulder_abduction_deg,
            shoulder_internal_rotation_deg,
            elbow_flexion_deg,
        },
    )
}

fn any_lying() -> impl Strategy<Value = Lying> {
    prop_oneof![
        Just(Lying::Upright),
        Just(Lying::OnTheBack),
        Just(Lying::FaceDown),
        Just(Lying::OnSide(Side::Left)),
        Just(Lying::OnSide(Side::Right)),
    ]
}

fn any_trunk() -> impl Strategy<Value = (PelvisAngles, TrunkAngles)> {
    (-60.0f64..90.0, -60.0f64..60.0, -30.0f64..30.0, -40.0f64..80.0, -30.0f64..30.0, -40.0f64..40.0).prop_map(
        |(lean_deg, turn_deg, tilt_deg, flexion_deg, side_bending_deg, twisting_deg)| {
            let pelvis = PelvisAngles { lean_deg, turn_deg, tilt_deg };
            let trunk = TrunkAngles {
                flexion_deg,
                side_bending_deg,
                twisting_deg,
                neck_flexion_deg: flexion_deg / 2.0,
            };
            (pelvis, trunk)
        },
    )
}

fn any_pose() -> impl Strategy<Value = Pose> {
    let limbs = (any_leg(), any_leg(), any_arm(), any_arm());
    (any_lying(), any_trunk(), limbs).prop_map(|(lying, (pelvis, trunk), (a, b, c, d))| Pose {
        lying,
        pelvis,
        trunk,
        legs: PerSide { left: a, right: b },
        arms: PerSide { left: c, right: d },
    })
}

fn mirrored(pose: &Pose) -> Pose {
    let lying = match pose.lying {
        Lying::OnSide(side) => Lying::OnSide(side.opposite()),
        other => other,
    };
    Pose {
        lying,
        pelvis: PelvisAngles {
            turn_deg: -pose.pelvis.turn_deg,
            tilt_deg: -pose.pelvis.tilt_deg,
            ..pose.pelvis
        },
        trunk: TrunkAngles {
            side_bending_deg: -pose.trunk.side_bending_deg,
            twisting_deg: -pose.trunk.twisting_deg,
            ..pose.trunk
        },
        legs: PerSide { left: pose.legs.right, right: pose.legs.left },
        arms: PerSide { left: pose.arms.right, right: pose.arms.left },
    }
}

/// Turns one angle of a pose by a little in a motion.
fn turned(pose: &Pose, joint: Joint, motion: Motion, side: Side, deg: f64) -> Pose {
    let mut pose = *pose;
    let (leg, arm) = (pose.legs.get_mut(side), pose.arms.get_mut(side));
    match (joint, motion) {
        (Joint::Hip, Motion::Flexion) => leg.hip_flexion_deg += deg,
        (Joint::Hip, Motion::Abduction) => leg.hip_abduction_deg += deg,
        (Joint::Hip, Motion::InternalRotation) => leg.hip_internal_rotation_deg += deg,
        (Joint::Knee, Motion::Flexion) => leg.knee_flexion_deg += deg,
        (Joint::Ankle, Motion::Dorsiflexion) => leg.ankle_dorsiflexion_deg += deg,
        (Joint::Shoulder, Motion::Flexion) => arm.shoulder_flexion_deg += deg,
        (Joint::Shoulder, Motion::Abduction) => arm.shoulder_abduction_deg += deg,
        (Joint::Shoulder, Motion::InternalRotation) => arm.shoulder_internal_rotation_deg += deg,
        (Joint::Elbow, Motion::Flexion) => arm.elbow_flexion_deg += deg,
        other => panic!("{other:?} is no angle of the model"),
    }
    pose
}

const ANGLES: [(Joint, Motion); 9] = [
    (Joint::Hip, Motion::Flexion),
    (Joint::Hip, Motion::Abduction),
    (Joint::Hip, Motion::InternalRotation),
    (Joint::Knee, Motion::Flexion),
    (Joint::Ankle, Motion::Dorsiflexion),
    (Joint::Shoulder, Motion::Flexion),
    (Joint::Shoulder, Motion::Abduction),
    (Joint::Shoulder, Motion::InternalRotation),
    (Joint::Elbow, Motion::Flexion),
];

proptest! {
    #[test]
    fn mirroring_the_sides_mirrors_the_positions(pose in any_pose()) {
        let (here, there) = (Placed::new(&pose, STATURE_M), Placed::new(&mirrored(&pose), STATURE_M));
        let mirror = |v: DVec3| DVec3::new(v.x, v.y, -v.z);
        for side in Side::BOTH {
            prop_assert!(near(mirror(here.head), there.head));
            prop_assert!(near(mirror(here.leg(side).toe), there.leg(side.opposite()).toe));
            prop_assert!(near(mirror(here.arm(side).fingertips), there.arm(side.opposite()).fingertips));
            for (joint, motion) in ANGLES {
                let moment = |placed: &Placed, side| gravity_moment_nm_per_kg(placed, Rests::default(), joint, motion, side, 0.02);
                prop_assert!((moment(&here, side) - moment(&there, side.opposite())).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn lengths_never_change(pose in any_pose(), stature in 1.0f64..2.2) {
        let placed = Placed::new(&pose, stature);
        for side in Side::BOTH {
            let (leg, arm) = (placed.leg(side), placed.arm(side));
            for (a, b, fraction) in [
                (leg.hip, leg.knee, segment::THIGH), (leg.knee, leg.ankle, segment::SHANK),
                (leg.ankle, leg.toe, segment::FOOT), (arm.shoulder, arm.elbow, segment::UPPER_ARM),
                (arm.elbow, arm.wrist, segment::FOREARM), (arm.wrist, arm.fingertips, segment::HAND),
            ] {
                prop_assert!(((a - b).length() - fraction * stature).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn an_arm_reaches_where_it_was(pose in any_pose(), left: bool) {
        let side = if left { Side::Left } else { Side::Right };
        let mut pose = pose;
        // The upper arm is not turned about its length, nor lifted over the shoulder sideways.
        let arm = pose.arms.get_mut(side);
        arm.shoulder_internal_rotation_deg = 0.0;
        arm.shoulder_abduction_deg = arm.shoulder_abduction_deg.min(80.0);
        let wrist = Placed::new(&pose, STATURE_M).arm(side).wrist;
        let mut reaching = pose;
        *reaching.arms.get_mut(side) = arm_to(&Placed::new(&pose, STATURE_M), side, wrist);
        prop_assert!(Placed::new(&reaching, STATURE_M).arm(side).wrist.distance(wrist) < 1e-9);
    }

    /// Virtual work: the moment is the slope of gravity's potential in the angle.
    #[test]
    fn the_moment_is_the_slope_of_the_potential(pose in any_pose(), which in 0usize..9, left: bool) {
        let (joint, motion) = ANGLES[which];
        let side = if left { Side::Left } else { Side::Right };
        let potential = |deg: f64| {
            9.81 * Placed::new(&turned(&pose, joint, motion, side, deg), STATURE_M).potential(joint, side)
        };
        let step = 1e-3f64;
        let slope = (potential(step) - potential(-step)) / (2.0 * step.to_radians());
        let moment = gravity_moment_nm_per_kg(&Placed::new(&pose, STATURE_M), Rests::default(), joint, motion, side, 0.0);
        prop_assert!((moment - slope).abs() < 1e-8, "{moment} against {slope}");
    }
}

#[test]
fn what_rests_is_carried_no_longer() {
    let sits = leg(Lying::Upright, LegAngles { hip_flexion_deg: 90.0, ..LegAngles::default() });
    let of = |rests, joint, motion| gravity_moment_nm_per_kg(&sits, rests, joint, motion, Side::Right, 0.1);
    let thigh = Rests { thigh: true, ..Rests::default() };
    assert!(of(thigh, Joint::Hip, Motion::Flexion).abs() < 1e-12);
    assert!(of(thigh, Joint::Knee, Motion::Extension) > 0.1, "the shank hangs on the knee still");
    let shank = Rests { shank: true, ..Rests::default() };
    assert!(of(shank, Joint::Knee, Motion::Extension).abs() < 1e-12);
    // The thigh alone, level: 0.100 × 0.433 × 0.245 × 1.70 × 9.81.
    assert!((of(shank, Joint::Hip, Motion::Flexion) - 0.1769).abs() < 1e-4);
}

#[test]
fn the_spine_bends_and_twists() {
    let mut pose = Pose::neutral(Lying::Upright);
    pose.trunk.flexion_deg = 90.0;
    let bent = Placed::new(&pose, STATURE_M);
    // Two joints of 45° each: the chest looks down, the head is before the hips.
    assert!(near(bent.chest * DVec3::Y, DVec3::X) && bent.head.x > 0.3);
    pose.trunk.flexion_deg = 0.0;
    pose.trunk.twisting_deg = 90.0;
    let twisted = Placed::new(&pose, STATURE_M);
    assert!(near(twisted.chest * DVec3::X, DVec3::Z), "to the right");
    assert!(twisted.arm(Side::Right).shoulder.x < -0.1);
    pose.trunk.twisting_deg = 0.0;
    pose.pelvis.lean_deg = 90.0;
    assert!(Placed::new(&pose, STATURE_M).head.x > 0.6, "bowed forward");
}
