//! A movement that no body could do is refused, and the place that makes it so is named.
//!
//! What is wrong is said in English: whoever writes a movement reads it, never a patient.

use std::fmt;

use glam::DVec3;

use crate::body::Placed;
use crate::facts::{Joint, Limb, Position, Side, Surface};
use crate::ids::MovementId;
use crate::library::course::{Course, Moment};
use crate::library::derive::STANDS_ALONE_PERCENT;
use crate::library::form::{Anchor, Form, LIMB_AXES, LimbAngles, PoseForm, Prop, Segment, Starter};

/// Poses in a movement, at most.
const POSES: usize = 8;
/// How far a limb may seem to sink into what it lies on, as a part of stature: flesh gives way.
const GIVES: f64 = 0.02;
/// How far a foot that bears weight may seem to slide, as a part of stature.
const SLIDES: f64 = 0.03;
/// How far a limb that is said to rest may rise, as a part of stature.
const RISES: f64 = 0.08;
/// Looks between one pose and the next.
const LOOKS: u32 = 6;
/// Entries in one list, at most.
const ENTRIES: usize = 20;
/// Closer than this, one leg's bones would be inside the other leg, as a part of stature.
const APART: f64 = 0.03;

/// Why a movement is impossible, and where it says so.
#[derive(Debug, Clone, PartialEq)]
pub struct Impossible {
    /// The movement.
    pub movement: MovementId,
    /// The field, as a path such as `poses[1].working.hip_flexion_deg`.
    pub place: String,
    /// What is wrong there.
    pub why: Why,
}

/// What is wrong with a movement.
#[derive(Debug, Clone, PartialEq)]
pub enum Why {
    /// None, too many, or not from 0 to 1 in rising order.
    Poses,
    /// An angle that no joint reaches, in degrees.
    BeyondHumanRange {
        /// What is written.
        deg: f64,
        /// The least.
        least: f64,
        /// The most.
        most: f64,
    },
    /// The ankle follows from the level sole, so it is not to be said.
    AnkleFollows,
    /// Below ground, bed or floor, by this part of stature.
    Below {
        /// Which point.
        point: &'static str,
        /// How far.
        by: f64,
    },
    /// A foot that bears weight is not on the ground, or slides on it, by this part of stature.
    FootOff {
        /// How far.
        by: f64,
    },
    /// One leg goes through the other.
    LegsCross,
    /// A limb is said to rest, and rises by this part of stature.
    RestRises {
        /// How far.
        by: f64,
    },
    /// A leg stands alone and is not said to bear the weight, or none stands.
    WeightElsewhere,
    /// A hand that is said to stay cannot reach so far.
    OutOfReach,
    /// Not of this joint, of this limb, or said twice.
    NotOfThis,
    /// Position, surface, weight and what lies beneath do not go together.
    Disagrees,
    /// A part of stature, or a per cent, that cannot be.
    OutOfBounds {
        /// What is written.
        value: f64,
    },
}

impl fmt::Display for Impossible {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "movement {}, {}: ", self.movement, self.place)?;
        match &self.why {
            Why::Poses => {
                write!(f, "1 to {POSES} poses, the first at 0, the last at 1, each later than the one before")
            }
            Why::BeyondHumanRange { deg, least, most } => {
                write!(f, "{deg}° is beyond human range, {least}° to {most}°")
            }
            Why::AnkleFollows => write!(f, "the foot is said to be level, so the ankle's angle follows"),
            Why::Below { point, by } => {
                write!(f, "the {point} goes through the surface by {by:.3} of stature")
            }
            Why::FootOff { by } => {
                write!(f, "the foot bears weight, and is off its place on the ground by {by:.3} of stature")
            }
            Why::LegsCross => write!(f, "one leg goes through the other"),
            Why::RestRises { by } => write!(f, "a limb is said to rest, and rises by {by:.3} of stature"),
            Why::WeightElsewhere => {
                write!(
                    f,
                    "whoever stands on one leg bears at least {STANDS_ALONE_PERCENT} % of the weight on it"
                )
            }
            Why::OutOfReach => write!(f, "a hand is said to stay where it is, and cannot reach so far"),
            Why::NotOfThis => write!(f, "not of this joint or limb, too many, or said twice"),
            Why::Disagrees => write!(f, "position, surface, weight and what lies beneath do not go together"),
            Why::OutOfBounds { value } => write!(f, "{value} is out of bounds"),
        }
    }
}

/// Whether a body could do it.
pub(super) fn possible(form: &Form) -> Result<(), Impossible> {
    let refuse = |place: String, why: Why| Impossible { movement: form.id.clone(), place, why };
    check_times(form).map_err(|why| refuse("poses".into(), why))?;
    check_lists(form).map_err(|place| refuse(place.into(), Why::NotOfThis))?;
    check_place(form).map_err(|(place, why)| refuse(format!("place.{place}"), why))?;
    for (n, pose) in form.poses.iter().enumerate() {
        check_angles(form, pose).map_err(|(field, why)| refuse(format!("poses[{n}].{field}"), why))?;
    }
    let course = Course::new(form, Side::Right, false);
    let start = course.at(0.0);
    for (n, pose) in form.poses.iter().enumerate() {
        let from = form.poses[n.saturating_sub(1)].at;
        for look in 1..=LOOKS {
            let at = from + (pose.at - from) * f64::from(look) / f64::from(LOOKS);
            check_body(&course, &start, &course.at(at)).map_err(|why| refuse(format!("poses[{n}]"), why))?;
        }
    }
    Ok(())
}

/// Lists without doubles, of what there is; motions that their joints have.
fn check_lists(form: &Form) -> Result<(), &'static str> {
    let place = &form.place;
    let lists = [
        ("place.level_feet", &place.level_feet),
        ("place.still_hands", &place.still_hands),
        ("place.pushing_legs", &place.pushing_legs),
        ("place.pushing_arms", &place.pushing_arms),
    ];
    for (name, limbs) in lists {
        if limbs.contains(&Limb::Trunk) || has_doubles(limbs) {
            return Err(name);
        }
    }
    let of_limb = |limb: Limb, joint: Joint| (limb == Limb::Trunk) == (joint == Joint::Trunk);
    if form.efforts.len() > ENTRIES
        || !form.efforts.iter().all(|e| of_limb(e.limb, e.joint) && e.motion.axis().is_of(e.joint))
    {
        return Err("efforts");
    }
    let joints: Vec<_> = form.drive.joints.iter().map(|drive| (drive.limb, drive.joint)).collect();
    if has_doubles(&joints) || !joints.iter().all(|(limb, joint)| of_limb(*limb, *joint)) {
        return Err("drive.joints");
    }
    if has_doubles(&form.props) || has_doubles(&form.targets) {
        return Err("props");
    }
    let empty =
        |starter: &Starter| starter.sets == 0 || starter.repetitions == Some(0) || starter.minutes == Some(0);
    if form.starter.as_ref().is_some_and(empty) { Err("starter") } else { Ok(()) }
}

fn has_doubles<T: PartialEq>(list: &[T]) -> bool {
    list.len() > ENTRIES || list.iter().enumerate().any(|(n, entry)| list[..n].contains(entry))
}

fn check_times(form: &Form) -> Result<(), Why> {
    let times: Vec<f64> = form.poses.iter().map(|pose| pose.at).collect();
    let rises = times.windows(2).all(|two| two[0] < two[1]);
    let ends = match times[..] {
        [] => false,
        [only] => only.abs() < f64::EPSILON,
        [first, .., last] => first.abs() < f64::EPSILON && (last - 1.0).abs() < f64::EPSILON,
    };
    (rises && ends && times.len() <= POSES).then_some(()).ok_or(Why::Poses)
}

fn check_place(form: &Form) -> Result<(), (&'static str, Why)> {
    let place = &form.place;
    let weights = [
        ("working_weight_percent", place.working_weight_percent, 100.0),
        ("other_weight_percent", place.other_weight_percent, 100.0),
        ("step_height", place.step_height, 0.25),
    ];
    for (name, value, most) in weights {
        if !(0.0..=most).contains(&value) {
            return Err((name, Why::OutOfBounds { value }));
        }
    }
    let weight = place.working_weight_percent + place.other_weight_percent;
    let beneath = place.lies_on.is_some_and(|limb| limb != Limb::Trunk);
    if (place.position == Position::SideLying) != beneath {
        return Err(("lies_on", Why::Disagrees));
    }
    let surface_fits = match place.position {
        Position::Standing | Position::BentOver => place.surface == Surface::Ground && weight >= 100.0,
        Position::Supine | Position::HookLying | Position::Prone | Position::SideLying => {
            let pushes = !place.pushing_legs.is_empty();
            matches!(place.surface, Surface::Bed | Surface::Floor) && (weight > 0.0) == pushes
        }
        Position::Seated => matches!(place.surface, Surface::Chair | Surface::Bed),
        Position::Kneeling | Position::HandsAndKnees => {
            matches!(place.surface, Surface::Bed | Surface::Floor)
        }
    };
    if place.step_height > 0.0 && !form.props.contains(&Prop::Step) {
        return Err(("step_height", Why::Disagrees));
    }
    if place.anchor == Anchor::Shoulders && place.pushing_legs.is_empty() {
        return Err(("pushing_legs", Why::Disagrees));
    }
    surface_fits.then_some(()).ok_or(("surface", Why::Disagrees))
}

fn check_angles(form: &Form, pose: &PoseForm) -> Result<(), (String, Why)> {
    for (limb, name, angles) in
        [(Limb::Working, "working", &pose.working), (Limb::Other, "other", &pose.other)]
    {
        for axis in &LIMB_AXES {
            within(&format!("{name}.{}", axis.name), (axis.get)(angles), axis.least, axis.most)?;
        }
        if form.place.level_feet.contains(&limb) && angles.ankle_dorsiflexion_deg != 0.0 {
            return Err((format!("{name}.ankle_dorsiflexion_deg"), Why::AnkleFollows));
        }
    }
    // The ends of human range of the trunk: the usual tables with some room (from memory).
    let trunk = &pose.trunk;
    within("trunk.pelvis_lean_deg", trunk.pelvis_lean_deg, -60.0, 110.0)?;
    within("trunk.pelvis_turn_deg", trunk.pelvis_turn_deg, -60.0, 60.0)?;
    within("trunk.pelvis_tilt_deg", trunk.pelvis_tilt_deg, -30.0, 30.0)?;
    within("trunk.flexion_deg", trunk.flexion_deg, -50.0, 85.0)?;
    within("trunk.side_bending_deg", trunk.side_bending_deg, -40.0, 40.0)?;
    within("trunk.twisting_deg", trunk.twisting_deg, -50.0, 50.0)?;
    within("trunk.neck_flexion_deg", trunk.neck_flexion_deg, -60.0, 60.0)
}

fn within(place: &str, deg: f64, least: f64, most: f64) -> Result<(), (String, Why)> {
    let inside = (least..=most).contains(&deg);
    inside.then_some(()).ok_or_else(|| (place.to_string(), Why::BeyondHumanRange { deg, least, most }))
}

fn check_body(course: &Course<'_>, start: &Moment, now: &Moment) -> Result<(), Why> {
    check_level_ankles(course, now)?;
    if course.form().place.position != Position::BentOver {
        check_surface(&now.placed)?;
    }
    check_feet(course, &start.placed, &now.placed)?;
    check_standing(course, &now.placed)?;
    check_rests(course, &start.placed, &now.placed)?;
    check_hands(course, &start.placed, now)?;
    check_legs(course.form(), &now.placed)
}

/// An ankle that follows from the level sole is held to human range too.
fn check_level_ankles(course: &Course<'_>, now: &Moment) -> Result<(), Why> {
    let ankle = LIMB_AXES.iter().find(|axis| axis.name == "ankle_dorsiflexion_deg").expect("listed");
    for side in Side::BOTH {
        let angles = LimbAngles {
            ankle_dorsiflexion_deg: now.pose.legs.get(side).ankle_dorsiflexion_deg,
            ..LimbAngles::default()
        };
        let level = course.form().place.level_feet.iter().any(|limb| course.side(*limb) == side);
        if level {
            within("", (ankle.get)(&angles), ankle.least, ankle.most).map_err(|(_, why)| why)?;
        }
    }
    Ok(())
}

fn check_surface(placed: &Placed) -> Result<(), Why> {
    let through = |point, at: DVec3| {
        if at.y < -GIVES { Err(Why::Below { point, by: -at.y }) } else { Ok(()) }
    };
    through("head", placed.head)?;
    through("pelvis", placed.hips)?;
    for side in Side::BOTH {
        let (leg, arm) = (placed.leg(side), placed.arm(side));
        through("knee", leg.knee)?;
        through("ankle", leg.ankle)?;
        for sole in leg.sole(placed.stature_m) {
            // Lying, heel and toes may sink in a little further than a bone.
            through("foot", sole + DVec3::Y * GIVES)?;
        }
        through("elbow", arm.elbow)?;
        through("wrist", arm.wrist)?;
    }
    Ok(())
}

fn check_feet(course: &Course<'_>, start: &Placed, now: &Placed) -> Result<(), Why> {
    let place = &course.form().place;
    let limbs = [
        (Limb::Working, place.working_weight_percent, place.step_height, &place.working_rests),
        (Limb::Other, place.other_weight_percent, 0.0, &place.other_rests),
    ];
    for (limb, percent, height, rests) in limbs {
        // The foot that arrives or leaves is looked at by the surface alone.
        if percent < 50.0 || !rests.contains(&Segment::Foot) {
            continue;
        }
        let toes = place.anchor == Anchor::WorkingToes;
        let sole = |placed: &Placed| placed.leg(course.side(limb)).sole(1.0);
        let stands_on = if toes { 2 } else { 1 };
        let slides = (sole(now)[stands_on] - sole(start)[stands_on]).with_y(0.0).length();
        let points = if toes { 2..3 } else { 0..3 };
        let lifts = sole(now)[points].iter().map(|at| (at.y - height).abs()).fold(0.0, f64::max);
        let off = lifts.max(slides);
        if off > SLIDES {
            return Err(Why::FootOff { by: off });
        }
    }
    Ok(())
}

/// Standing, a leg that is alone on its ground bears the weight.
fn check_standing(course: &Course<'_>, now: &Placed) -> Result<(), Why> {
    let place = &course.form().place;
    if !matches!(place.position, Position::Standing | Position::BentOver) {
        return Ok(());
    }
    let stands = |limb: Limb| {
        let on = |at: &DVec3| at.y.min((at.y - place.step_height).abs()) <= SLIDES;
        now.leg(course.side(limb)).sole(1.0).iter().any(on)
    };
    let bears = match (stands(Limb::Working), stands(Limb::Other)) {
        (true, true) => true,
        (true, false) => place.working_weight_percent >= STANDS_ALONE_PERCENT,
        (false, true) => place.other_weight_percent >= STANDS_ALONE_PERCENT,
        (false, false) => false,
    };
    bears.then_some(()).ok_or(Why::WeightElsewhere)
}

/// What is said to rest stays down.
fn check_rests(course: &Course<'_>, start: &Placed, now: &Placed) -> Result<(), Why> {
    for side in Side::BOTH {
        let (rests, then, now) = (course.rests(side), start.leg(side), now.leg(side));
        let rises = [(rests.thigh, now.knee.y - then.knee.y), (rests.shank, now.ankle.y - then.ankle.y)];
        if let Some((_, by)) = rises.into_iter().find(|(rests, by)| *rests && *by > RISES) {
            return Err(Why::RestRises { by });
        }
    }
    Ok(())
}

/// Arms that follow hands that stay are arms of a human.
fn check_hands(course: &Course<'_>, start: &Placed, now: &Moment) -> Result<(), Why> {
    for limb in &course.form().place.still_hands {
        let side = course.side(*limb);
        let (then, here) = (start.arm(side).wrist, now.placed.arm(side).wrist);
        let arm = now.pose.arms.get(side);
        let human = (-60.0..=180.0).contains(&arm.shoulder_flexion_deg)
            && (-5.0..=150.0).contains(&arm.elbow_flexion_deg);
        if then.distance(here) > GIVES || !human {
            return Err(Why::OutOfReach);
        }
    }
    Ok(())
}

fn check_legs(form: &Form, placed: &Placed) -> Result<(), Why> {
    let bones = |side| {
        let leg = placed.leg(side);
        [(leg.hip.lerp(leg.knee, 0.5), leg.knee), (leg.knee, leg.ankle)]
    };
    let near =
        bones(Side::Left).into_iter().any(|a| bones(Side::Right).into_iter().any(|b| distance(a, b) < APART));
    // Side-lying, the legs rest upon each other.
    (!near || form.place.position == Position::SideLying).then_some(()).ok_or(Why::LegsCross)
}

/// The distance between two line segments, found by looking along both.
fn distance(a: (DVec3, DVec3), b: (DVec3, DVec3)) -> f64 {
    const STEPS: u32 = 16;
    let along = |line: (DVec3, DVec3), n: u32| line.0.lerp(line.1, f64::from(n) / f64::from(STEPS));
    let pairs = (0..=STEPS).flat_map(|n| (0..=STEPS).map(move |m| (n, m)));
    pairs.map(|(n, m)| along(a, n).distance(along(b, m))).fold(f64::INFINITY, f64::min)
}
