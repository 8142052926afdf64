//! Static moments: what gravity asks of the muscles that cross a joint.

use glam::DVec3;

use crate::body::{Placed, segment};
use crate::facts::{Joint, Motion, Side};

/// Gravity, m/s²: the usual rounding of the standard acceleration 9.80665 (ISO 80000-3).
const GRAVITY: f64 = 9.81;

/// A mass in the room: its share of body mass, and where it is.
#[derive(Debug, Clone, Copy)]
struct Share {
    mass: f64,
    at: DVec3,
}

/// The moment that muscles must give in a motion against gravity, in N·m per kg of body mass; zero
/// or less where gravity itself pulls that way. `load_share` is an outside load at the ankle or the
/// wrist, as a share of body mass. Nothing that the limb rests on is known here. Zero for what a
/// joint does not do.
pub fn gravity_moment_nm_per_kg(
    placed: &Placed,
    joint: Joint,
    motion: Motion,
    side: Side,
    load_share: f64,
) -> f64 {
    let Some(axis) = placed.axis(joint, motion, side) else { return 0.0 };
    let (at, carried) = placed.carried(joint, side);
    let load = load_at(placed, joint, side).map(|at| Share { mass: load_share, at });
    let pull = |share: Share| (share.at - at).cross(DVec3::NEG_Y * (GRAVITY * share.mass));
    let total: DVec3 = carried.into_iter().chain(load).map(pull).sum();
    -total.dot(axis)
}

/// How far a load at the ankle or the wrist lies from the vertical through a joint, in m.
pub fn lever_to_end_m(placed: &Placed, joint: Joint, side: Side) -> f64 {
    let (at, _) = placed.carried(joint, side);
    let reach = load_at(placed, joint, side).map_or(DVec3::ZERO, |end| end - at);
    reach.with_y(0.0).length()
}

fn load_at(placed: &Placed, joint: Joint, side: Side) -> Option<DVec3> {
    match joint {
        Joint::Hip | Joint::Knee => Some(placed.leg(side).ankle),
        Joint::Shoulder | Joint::Elbow => Some(placed.arm(side).wrist),
        Joint::Ankle | Joint::Trunk => None,
    }
}

impl Placed {
    /// Where a joint is, and the segments that hang on it.
    fn carried(&self, joint: Joint, side: Side) -> (DVec3, Vec<Share>) {
        let (leg, arm) = (self.leg(side), self.arm(side));
        let between = |a: DVec3, b: DVec3, fraction: f64, mass: f64| Share { mass, at: a.lerp(b, fraction) };
        let thigh = between(leg.hip, leg.knee, segment::THIGH_CENTRE, segment::THIGH_MASS);
        let shank =
            between(leg.knee, leg.ankle, segment::SHANK_AND_FOOT_CENTRE, segment::SHANK_AND_FOOT_MASS);
        let foot = between(leg.ankle, leg.toe, segment::FOOT_CENTRE, segment::FOOT_MASS);
        let upper = between(arm.shoulder, arm.elbow, segment::UPPER_ARM_CENTRE, segment::UPPER_ARM_MASS);
        let fore = between(arm.elbow, arm.wrist, segment::FOREARM_CENTRE, segment::FOREARM_MASS);
        let hand = between(arm.wrist, arm.fingertips, segment::HAND_CENTRE, segment::HAND_MASS);
        match joint {
            Joint::Hip => (leg.hip, vec![thigh, shank]),
            Joint::Knee => (leg.knee, vec![shank]),
            Joint::Ankle => (leg.ankle, vec![foot]),
            Joint::Shoulder => (arm.shoulder, vec![upper, fore, hand]),
            Joint::Elbow => (arm.elbow, vec![fore, hand]),
            Joint::Trunk => (DVec3::ZERO, Vec::new()),
        }
    }

    /// The height of everything that hangs on a joint, weighted by mass, in kg·m per kg of body mass:
    /// gravity's potential over g.
    #[cfg(test)]
    pub(super) fn potential(&self, joint: Joint, side: Side) -> f64 {
        self.carried(joint, side).1.iter().map(|share| share.mass * share.at.y).sum()
    }
}
