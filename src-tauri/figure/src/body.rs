//! The person: capsule limbs, the near side dark.

use glam::DVec3;
use sendaluna_core::body::{Placed, segment};
use sendaluna_core::facts::{Joint, Limb, OperatedSide, Side};
use sendaluna_core::library::{Course, LimbAngles, Moment, Segment};

use crate::camera::{View, on_paper};
use crate::path::{Ball, Path};
use crate::{Part, Piece, Showing, middle};

/// Half the thickness of each part, as a part of stature: an illustrator's, a little stout, so that a
/// person is seen at the size of a thumbnail.
mod girth {
    pub const HIP: f64 = 0.050;
    pub const KNEE: f64 = 0.034;
    pub const CALF: f64 = 0.034;
    pub const ANKLE: f64 = 0.022;
    pub const HEEL: f64 = 0.021;
    pub const TOE: f64 = 0.016;
    pub const SHOULDER: f64 = 0.034;
    pub const ELBOW: f64 = 0.025;
    pub const WRIST: f64 = 0.018;
    pub const FINGERS: f64 = 0.013;
    pub const PELVIS: f64 = 0.062;
    pub const WAIST: f64 = 0.055;
    pub const CHEST: f64 = 0.066;
    pub const NECK: f64 = 0.027;
    pub const SKULL: f64 = 0.053;
    pub const CHIN: f64 = 0.036;
    pub const NOSE: f64 = 0.010;
}

/// How far the toes stand out sideways for each length that they stand forward.
const TOES_OUT: f64 = 0.22;

/// A capsule in the room.
type Capsule = ((DVec3, f64), (DVec3, f64));

/// Trunk, head and limbs.
pub fn pieces(course: &Course<'_>, moments: &[Moment], view: &View, showing: &Showing) -> Vec<Piece> {
    let piece = |part, nearer: f64, limb: bool, of: &dyn Fn(&Placed) -> Vec<Capsule>| {
        let first = of(&moments[0].placed);
        let last = of(&moments[moments.len() - 1].placed);
        let depth = f64::midpoint(mean_depth(view, &first), mean_depth(view, &last)) - nearer;
        let frames = moments.iter().map(|moment| outline(view, &of(&moment.placed), limb)).collect();
        Piece { part, depth, frames }
    };
    let mut pieces = vec![piece(Part::Near, 0.0, false, &torso), piece(Part::Near, 0.002, false, &head)];
    for side in Side::BOTH {
        let near = view.faces || side == course.working();
        let operated = is_operated(showing.operated, side);
        let (leg_operated, arm_operated) = (operated && !is_of_arm(course), operated && is_of_arm(course));
        let flat = lies_flat(course, side);
        pieces.push(piece(part(near, leg_operated), 0.004, true, &|placed| leg(placed, side)));
        pieces.push(piece(part(near, arm_operated), arms_nearer(view), true, &|placed| {
            arm(placed, side, flat)
        }));
    }
    pieces
}

fn is_operated(operated: OperatedSide, side: Side) -> bool {
    match operated {
        OperatedSide::Left => side == Side::Left,
        OperatedSide::Right => side == Side::Right,
        OperatedSide::Both => true,
        OperatedSide::Neither => false,
    }
}

/// Seen from before or above, hands lie upon what they rest on.
fn arms_nearer(view: &View) -> f64 {
    if view.faces { 0.06 } else { 0.008 }
}

fn part(near: bool, operated: bool) -> Part {
    match (near, operated) {
        (true, true) => Part::NearOperated,
        (true, false) => Part::Near,
        (false, true) => Part::FarOperated,
        (false, false) => Part::Far,
    }
}

/// Whether a movement is the arm's rather than the leg's.
pub fn is_of_arm(course: &Course<'_>) -> bool {
    let form = course.form();
    let arm = |joint| matches!(joint, Joint::Shoulder | Joint::Elbow);
    let (first, last) = (&form.poses[0].working, &form.poses[form.poses.len() - 1].working);
    let apart = |get: fn(&LimbAngles) -> f64| (get(first) - get(last)).abs();
    let leg_moves = apart(|a| a.knee_flexion_deg).max(apart(|a| a.hip_abduction_deg));
    let arm_moves = apart(|a| a.shoulder_flexion_deg)
        .max(apart(|a| a.shoulder_abduction_deg))
        .max(apart(|a| a.shoulder_internal_rotation_deg))
        .max(apart(|a| a.elbow_flexion_deg));
    form.efforts.iter().any(|effort| arm(effort.joint)) || (arm_moves > 1.0 && leg_moves < 1.0)
}

fn lies_flat(course: &Course<'_>, side: Side) -> bool {
    let place = &course.form().place;
    let rests = if side == course.side(Limb::Working) { &place.working_rests } else { &place.other_rests };
    rests.contains(&Segment::Hand)
}

fn mean_depth(view: &View, capsules: &[Capsule]) -> f64 {
    let sum: f64 = capsules.iter().map(|(a, b)| view.depth(middle(a.0, b.0))).sum();
    #[expect(clippy::cast_precision_loss, reason = "a handful")]
    let count = capsules.len() as f64;
    sum / count
}

/// A limb seen from the side is drawn as far away as its root.
fn outline(view: &View, capsules: &[Capsule], limb: bool) -> Path {
    let root = capsules.first().map(|((root, _), _)| view.depth(*root)).filter(|_| limb && !view.faces);
    let point = |at: DVec3| root.map_or_else(|| view.point(at), |depth| view.point_as_far(at, depth));
    let ball = |(at, radius): (DVec3, f64)| Ball { at: point(at), radius: on_paper(radius) };
    let mut path = Path::default();
    for (a, b) in capsules {
        path.add_capsule(ball(*a), ball(*b));
    }
    path
}

fn torso(placed: &Placed) -> Vec<Capsule> {
    let (left, right) = (placed.leg(Side::Left).hip, placed.leg(Side::Right).hip);
    let (to_left, to_right) = (placed.arm(Side::Left).shoulder, placed.arm(Side::Right).shoulder);
    let (pelvis, waist, chest) = (placed.hips, placed.lumbar, placed.thoracic);
    let shoulders = middle(to_left, to_right);
    let inwards = |at: DVec3, from: DVec3, share: f64| at.lerp(from, share);
    let flank = |hip: DVec3, shoulder: DVec3| {
        ((inwards(shoulder, shoulders, 0.35), 0.046), (inwards(hip, pelvis, 0.25), 0.046))
    };
    vec![
        ((inwards(left, pelvis, 0.15), girth::PELVIS), (inwards(right, pelvis, 0.15), girth::PELVIS)),
        ((pelvis, girth::PELVIS), (waist, girth::WAIST)),
        ((chest, girth::CHEST), (waist, girth::WAIST)),
        ((chest, girth::CHEST), (shoulders - placed.chest * DVec3::Y * 0.018, girth::WAIST)),
        flank(left, to_left),
        flank(right, to_right),
        ((inwards(to_left, shoulders, 0.12), 0.034), (inwards(to_right, shoulders, 0.12), 0.034)),
        ((shoulders, 0.040), (placed.neck, girth::NECK)),
    ]
}

fn head(placed: &Placed) -> Vec<Capsule> {
    let at = |x: f64, y: f64| placed.head + placed.head_frame * DVec3::new(x, y, 0.0);
    vec![
        ((at(-0.004, 0.018), girth::SKULL), (at(0.010, -0.030), girth::CHIN)),
        ((at(0.030, -0.004), girth::NOSE + 0.010), (at(0.052, -0.010), girth::NOSE)),
        ((placed.neck, girth::NECK), (at(-0.006, -0.020), girth::NECK)),
    ]
}

fn leg(placed: &Placed, side: Side) -> Vec<Capsule> {
    let leg = placed.leg(side);
    // Feet turn out a little, so that toes are seen from before.
    let out = if side == Side::Right { TOES_OUT } else { -TOES_OUT };
    let foot = |x: f64, y: f64| leg.ankle + leg.foot * DVec3::new(x, y, x.max(0.0) * out);
    let sole = -segment::SOLE;
    // The calf sits behind the shin, a third of the way down.
    let calf = leg.knee.lerp(leg.ankle, 0.30) + leg.shank * DVec3::NEG_X * 0.008;
    vec![
        ((leg.hip, girth::HIP), (leg.knee, girth::KNEE)),
        ((calf, girth::CALF), (leg.knee, girth::KNEE - 0.002)),
        ((calf, girth::CALF), (leg.ankle, girth::ANKLE)),
        ((foot(-0.020, sole + girth::HEEL), girth::HEEL), (foot(0.0, 0.0), girth::ANKLE)),
        ((foot(-0.020, sole + girth::HEEL), girth::HEEL), (foot(0.100, sole + girth::TOE), girth::TOE)),
        ((foot(0.0, 0.0), girth::ANKLE), (foot(0.068, sole + 0.019), 0.018)),
    ]
}

fn arm(placed: &Placed, side: Side, flat: bool) -> Vec<Capsule> {
    let arm = placed.arm(side);
    let fingers = fingers(placed, side, flat);
    vec![
        ((arm.shoulder, girth::SHOULDER), (arm.elbow, girth::ELBOW)),
        ((arm.elbow, girth::ELBOW), (arm.wrist, girth::WRIST)),
        ((arm.wrist.lerp(fingers, 0.40), girth::WRIST + 0.003), (arm.wrist, girth::WRIST)),
        ((arm.wrist.lerp(fingers, 0.40), girth::WRIST + 0.003), (fingers, girth::FINGERS)),
    ]
}

/// A hand that rests lies level; one that does not goes on from the forearm, a little bent.
fn fingers(placed: &Placed, side: Side, flat: bool) -> DVec3 {
    let arm = placed.arm(side);
    let on = (arm.wrist - arm.elbow).normalize_or(DVec3::NEG_Y);
    let length = segment::HAND * 0.62;
    if !flat {
        return arm.wrist + (on + arm.forearm * DVec3::X * 0.25).normalize_or(on) * length;
    }
    let level = on.with_y(0.0);
    let ahead = placed.pelvis * DVec3::X;
    let level = if level.length() > 0.25 { level } else { ahead.with_y(0.0) };
    arm.wrist + level.normalize_or(DVec3::X) * length
}
