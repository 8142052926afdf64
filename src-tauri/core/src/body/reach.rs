//! A hand that stays where it is while the body moves: the arm's angles that bring the wrist there.

use glam::DVec3;

use crate::body::{ArmAngles, Placed, segment};
use crate::facts::Side;

/// The angles of an arm that bring its wrist to a point of the room, without turning the upper arm
/// about its length. What lies out of reach is reached for: the arm is straight, and points there.
pub fn arm_to(placed: &Placed, side: Side, wrist: DVec3) -> ArmAngles {
    let stature = placed.stature_m;
    let (upper, fore) = (segment::UPPER_ARM * stature, segment::FOREARM * stature);
    let to = placed.chest.inverse() * (wrist - placed.arm(side).shoulder);
    let distance = to.length().clamp((upper - fore).abs() + 1e-9, upper + fore);
    let to = to.normalize_or(DVec3::NEG_Y) * distance;
    let bend = (distance * distance - upper * upper - fore * fore) / (2.0 * upper * fore);
    let elbow = bend.clamp(-1.0, 1.0).acos();
    // Before flexion, the wrist lies this far forward and this far along the upper arm.
    let (forward, along) = (fore * elbow.sin(), upper + fore * elbow.cos());
    let out = if side == Side::Right { to.z } else { -to.z };
    let abduction = (out / along).clamp(-1.0, 1.0).asin();
    let flexion = to.x.atan2(-to.y) - forward.atan2(along * abduction.cos());
    ArmAngles {
        shoulder_flexion_deg: flexion.to_degrees(),
        shoulder_abduction_deg: abduction.to_degrees(),
        shoulder_internal_rotation_deg: 0.0,
        elbow_flexion_deg: elbow.to_degrees(),
    }
}
