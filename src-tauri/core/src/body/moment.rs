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

/// Which segments of one side rest on something. What a segment rests on carries it, and all that
/// hangs on it beyond.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[expect(missing_docs, clippy::struct_excessive_bools, reason = "one for each segment, named after it")]
pub struct Rests {
    pub thigh: bool,
    /// Shank or foot: the model moves them as one.
    pub shank: bool,
    pub upper_arm: bool,
    /// Forearm or hand.
    pub forearm: bool,
}

/// The moment that muscles must give in a motion against gravity, in N·m per kg of body mass; zero
/// or less where gravity itself pulls that way. Positive means that the muscles of this motion work.
/// `load_share` is an outside load at the ankle or the wrist, as a share of body mass. Zero for what a
/// joint does not do, and where everything that hangs on it rests.
pub fn gravity_moment_nm_per_kg(
    placed: &Placed,
    rests: Rests,
    joint: Joint,
    motion: Motion,
    side: Side,
    load_share: f64,
) -> f64 {
    let Some(axis) = placed.axis(joint, motion, side) else { return 0.0 };
    let Carried { from, shares, end } = placed.carried(rests, joint, side);
    let load = end.map(|at| Share { mass: load_share, at });
    let pull = |share: Share| (share.at - from).cross(DVec3::NEG_Y * (GRAVITY * share.mass));
    let total: DVec3 = shares.into_iter().flatten().chain(load).map(pull).sum();
    -total.dot(axis)
}

/// The height of a whole limb weighted by mass, in kg·m per kg of body mass: gravity's potential
/// over g. The leg, or the arm.
pub fn limb_potential(placed: &Placed, joint: Joint, side: Side) -> f64 {
    let root = match joint {
        Joint::Shoulder | Joint::Elbow => Joint::Shoulder,
        _ => Joint::Hip,
    };
    let shares = placed.carried(Rests::default(), root, side).shares;
    shares.into_iter().flatten().map(|share| share.mass * share.at.y).sum()
}

/// What a joint carries: its segments, and where an outside load would hang.
struct Carried {
    from: DVec3,
    shares: [Option<Share>; 3],
    end: Option<DVec3>,
}

impl Placed {
    fn carried(&self, rests: Rests, joint: Joint, side: Side) -> Carried {
        let (leg, arm) = (self.leg(side), self.arm(side));
        let between =
            |a: DVec3, b: DVec3, fraction: f64, mass: f64| Some(Share { mass, at: a.lerp(b, fraction) });
        let thigh = between(leg.hip, leg.knee, segment::THIGH_CENTRE, segment::THIGH_MASS);
        let shank =
            between(leg.knee, leg.ankle, segment::SHANK_AND_FOOT_CENTRE, segment::SHANK_AND_FOOT_MASS);
        let foot = between(leg.ankle, leg.toe, segment::FOOT_CENTRE, segment::FOOT_MASS);
        let upper = between(arm.shoulder, arm.elbow, segment::UPPER_ARM_CENTRE, segment::UPPER_ARM_MASS);
        let fore = between(arm.elbow, arm.wrist, segment::FOREARM_CENTRE, segment::FOREARM_MASS);
        let hand = between(arm.wrist, arm.fingertips, segment::HAND_CENTRE, segment::HAND_MASS);
        let nothing = [None; 3];
        let (from, shares, end) = match joint {
            Joint::Hip if rests.thigh => (leg.hip, nothing, None),
            Joint::Hip if rests.shank => (leg.hip, [thigh, None, None], None),
            Joint::Hip => (leg.hip, [thigh, shank, None], Some(leg.ankle)),
            Joint::Knee if rests.shank => (leg.knee, nothing, None),
            Joint::Knee => (leg.knee, [shank, None, None], Some(leg.ankle)),
            Joint::Ankle if rests.shank => (leg.ankle, nothing, None),
            Joint::Ankle => (leg.ankle, [foot, None, None], None),
            Joint::Shoulder if rests.upper_arm => (arm.shoulder, nothing, None),
            Joint::Shoulder if rests.forearm => (arm.shoulder, [upper, None, None], None),
            Joint::Shoulder => (arm.shoulder, [upper, fore, hand], Some(arm.wrist)),
            Joint::Elbow if rests.forearm => (arm.elbow, nothing, None),
            Joint::Elbow => (arm.elbow, [fore, hand, None], Some(arm.wrist)),
            Joint::Trunk => (DVec3::ZERO, nothing, None),
        };
        Carried { from, shares, end }
    }

    /// The height of everything that hangs on a joint, weighted by mass, in kg·m per kg of body mass:
    /// gravity's potential over g.
    #[cfg(test)]
    pub(super) fn potential(&self, joint: Joint, side: Side) -> f64 {
        let shares = self.carried(Rests::default(), joint, side).shares;
        shares.iter().flatten().map(|share| share.mass * share.at.y).sum()
    }
}
