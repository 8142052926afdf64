//! How far a joint may go: a thin arc about it, with a tick where it ends.

use glam::DVec3;
use sendaluna_core::body::{Placed, Pose};
use sendaluna_core::facts::{Axis, Joint, Motion, Side};
use sendaluna_core::library::{Course, Moment};

use crate::camera::View;
use crate::path::Path;
use crate::{Limit, Part, Piece};

/// Points along the arc.
const POINTS: u32 = 12;

/// The arc and its tick; nothing for what has no limb that sweeps.
pub fn pieces(course: &Course<'_>, moments: &[Moment], view: &View, limit: &Limit) -> Vec<Piece> {
    let side = course.working();
    let (positive, sign) = signed(limit.motion);
    let most = sign * limit.most_deg;
    let frame = |moment: &Moment| -> Option<(Path, Path)> {
        let reach = |deg: f64, share: f64| {
            let turned = with_angle(&moment.pose, limit.joint, positive, side, deg)?;
            let placed = Placed::new(&turned, 1.0);
            let (joint, end) = limb(&placed, limit.joint, side)?;
            let (here, _) = limb(&moment.placed, limit.joint, side)?;
            Some(view.point(here + (end - joint) * share))
        };
        let arc: Option<Vec<_>> =
            (0..=POINTS).map(|n| reach(most * f64::from(n) / f64::from(POINTS), 0.62)).collect();
        Some((Path::line(&arc?), Path::line(&[reach(most, 0.50)?, reach(most, 0.98)?])))
    };
    // Where the movement goes furthest: there it matters.
    let Some((arc, tick)) = moments.last().and_then(frame) else { return Vec::new() };
    vec![Piece::still(Part::Arc, -9.0, arc), Piece::still(Part::Tick, -9.1, tick)]
}

fn signed(motion: Motion) -> (Motion, f64) {
    let positive = motion.axis().positive();
    (positive, if positive == motion { 1.0 } else { -1.0 })
}

/// A joint, and the far end of the segment that it moves.
fn limb(placed: &Placed, joint: Joint, side: Side) -> Option<(DVec3, DVec3)> {
    let (leg, arm) = (placed.leg(side), placed.arm(side));
    match joint {
        Joint::Hip => Some((leg.hip, leg.knee)),
        Joint::Knee => Some((leg.knee, leg.ankle)),
        Joint::Ankle => Some((leg.ankle, leg.toe)),
        Joint::Shoulder => Some((arm.shoulder, arm.elbow)),
        Joint::Elbow => Some((arm.elbow, arm.wrist)),
        Joint::Trunk => None,
    }
}

fn with_angle(pose: &Pose, joint: Joint, positive: Motion, side: Side, deg: f64) -> Option<Pose> {
    let mut pose = *pose;
    let (leg, arm) = (pose.legs.get_mut(side), pose.arms.get_mut(side));
    let angle = match (joint, positive.axis()) {
        (Joint::Hip, Axis::Flexion) => &mut leg.hip_flexion_deg,
        (Joint::Hip, Axis::Abduction) => &mut leg.hip_abduction_deg,
        (Joint::Knee, Axis::Flexion) => &mut leg.knee_flexion_deg,
        (Joint::Ankle, Axis::Dorsiflexion) => &mut leg.ankle_dorsiflexion_deg,
        (Joint::Shoulder, Axis::Flexion) => &mut arm.shoulder_flexion_deg,
        (Joint::Shoulder, Axis::Abduction) => &mut arm.shoulder_abduction_deg,
        (Joint::Elbow, Axis::Flexion) => &mut arm.elbow_flexion_deg,
        _ => return None,
    };
    *angle = deg;
    Some(pose)
}
