//! Where is every joint, and what must the muscles hold?
//!
//! A skeleton in three dimensions, in the conventions of the International Society of Biomechanics
//! (Wu 2002 for the hip, knee and ankle; Wu 2005 for the shoulder and elbow): X forward, Y up, Z to
//! the right; angles are taken about the mediolateral axis first, then the floating axis, then the
//! long axis of the segment. Flexion, abduction, internal rotation and dorsiflexion are positive.
//!
//! Lengths, masses and centres of mass are fractions of stature and body mass (Winter, *Biomechanics
//! and Motor Control of Human Movement*, Table 4.1, after Dempster; lengths Fig. 4.1, after Drillis
//! and Contini 1966). Moments are static and gravity's share only: shank and foot are one segment,
//! and what muscles that work against each other add is not known.

use glam::{DQuat, DVec3};

use crate::facts::{Joint, Motion, PerSide, Side};

mod moment;

pub use moment::{gravity_moment_nm_per_kg, lever_to_end_m};

/// Fractions of stature and of body mass.
mod segment {
    /// Hip to knee.
    pub const THIGH: f64 = 0.245;
    pub const THIGH_MASS: f64 = 0.100;
    pub const THIGH_CENTRE: f64 = 0.433;
    /// Knee to ankle.
    pub const SHANK: f64 = 0.246;
    /// Shank and foot as one, its centre measured along the shank.
    pub const SHANK_AND_FOOT_MASS: f64 = 0.061;
    pub const SHANK_AND_FOOT_CENTRE: f64 = 0.606;
    /// Heel to toe.
    pub const FOOT: f64 = 0.152;
    pub const FOOT_MASS: f64 = 0.0145;
    pub const FOOT_CENTRE: f64 = 0.500;
    /// Shoulder to elbow.
    pub const UPPER_ARM: f64 = 0.186;
    pub const UPPER_ARM_MASS: f64 = 0.028;
    pub const UPPER_ARM_CENTRE: f64 = 0.436;
    /// Elbow to wrist.
    pub const FOREARM: f64 = 0.146;
    pub const FOREARM_MASS: f64 = 0.016;
    pub const FOREARM_CENTRE: f64 = 0.430;
    /// Wrist to fingertips.
    pub const HAND: f64 = 0.108;
    pub const HAND_MASS: f64 = 0.006;
    pub const HAND_CENTRE: f64 = 0.500;
    /// Hips to shoulders: shoulder height 0.818 less hip height 0.530 (Winter, Fig. 4.1, from memory).
    pub const TRUNK: f64 = 0.288;
    /// Midline to hip joint, and to shoulder joint (Winter, Fig. 4.1, from memory).
    pub const HALF_HIPS: f64 = 0.0955;
    pub const HALF_SHOULDERS: f64 = 0.1295;
}

/// Angles of one leg, in degrees.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[expect(missing_docs, reason = "the names say it")]
pub struct LegAngles {
    pub hip_flexion_deg: f64,
    pub hip_abduction_deg: f64,
    pub hip_internal_rotation_deg: f64,
    pub knee_flexion_deg: f64,
    pub ankle_dorsiflexion_deg: f64,
}

/// Angles of one arm, in degrees.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[expect(missing_docs, reason = "the names say it")]
pub struct ArmAngles {
    pub shoulder_flexion_deg: f64,
    pub shoulder_abduction_deg: f64,
    pub shoulder_internal_rotation_deg: f64,
    pub elbow_flexion_deg: f64,
}

/// How the pelvis lies in the room; the trunk follows it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lying {
    /// Upright: standing, sitting, kneeling.
    Upright,
    /// On the back.
    OnTheBack,
    /// Face down.
    FaceDown,
    /// On this side.
    OnSide(Side),
}

impl Lying {
    fn rotation(self) -> DQuat {
        let quarter = std::f64::consts::FRAC_PI_2;
        match self {
            Self::Upright => DQuat::IDENTITY,
            Self::OnTheBack => DQuat::from_rotation_z(quarter),
            Self::FaceDown => DQuat::from_rotation_z(-quarter),
            Self::OnSide(Side::Left) => DQuat::from_rotation_x(-quarter),
            Self::OnSide(Side::Right) => DQuat::from_rotation_x(quarter),
        }
    }
}

/// A pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// How the pelvis lies.
    pub lying: Lying,
    /// The legs.
    pub legs: PerSide<LegAngles>,
    /// The arms.
    pub arms: PerSide<ArmAngles>,
}

impl Pose {
    /// Every joint at neutral.
    pub fn neutral(lying: Lying) -> Self {
        Self { lying, legs: PerSide::default(), arms: PerSide::default() }
    }
}

/// The joints of one leg, in metres from the middle between the hips, and the frames that hang on
/// them.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "the names say it")]
pub struct Leg {
    pub hip: DVec3,
    pub knee: DVec3,
    pub ankle: DVec3,
    pub toe: DVec3,
    /// Pelvis turned by hip flexion: its X is the floating axis.
    floating: DQuat,
    thigh: DQuat,
    shank: DQuat,
}

/// The joints of one arm, likewise.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "the names say it")]
pub struct Arm {
    pub shoulder: DVec3,
    pub elbow: DVec3,
    pub wrist: DVec3,
    pub fingertips: DVec3,
    floating: DQuat,
    upper: DQuat,
}

/// A pose in the room, for a stature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    stature_m: f64,
    pelvis: DQuat,
    left_leg: Leg,
    right_leg: Leg,
    left_arm: Arm,
    right_arm: Arm,
}

impl Placed {
    /// Places a pose: forward kinematics from the pelvis outwards.
    pub fn new(pose: &Pose, stature_m: f64) -> Self {
        let pelvis = pose.lying.rotation();
        let leg = |side| leg(pelvis, side, pose.legs.get(side), stature_m);
        let arm = |side| arm(pelvis, side, pose.arms.get(side), stature_m);
        Self {
            stature_m,
            pelvis,
            left_leg: leg(Side::Left),
            right_leg: leg(Side::Right),
            left_arm: arm(Side::Left),
            right_arm: arm(Side::Right),
        }
    }

    /// A leg.
    pub fn leg(&self, side: Side) -> &Leg {
        match side {
            Side::Left => &self.left_leg,
            Side::Right => &self.right_leg,
        }
    }

    /// An arm.
    pub fn arm(&self, side: Side) -> &Arm {
        match side {
            Side::Left => &self.left_arm,
            Side::Right => &self.right_arm,
        }
    }

    /// The direction about which a joint turns in a motion, by the right-hand rule; `None` for what a
    /// joint does not do, and for the trunk, which is one piece here.
    fn axis(&self, joint: Joint, motion: Motion, side: Side) -> Option<DVec3> {
        let (leg, arm) = (self.leg(side), self.arm(side));
        let (floating, long) = match joint {
            Joint::Hip => (leg.floating, leg.thigh),
            Joint::Shoulder => (arm.floating, arm.upper),
            Joint::Knee => {
                return hinge(motion, Motion::Flexion, Motion::Extension, leg.thigh * DVec3::NEG_Z);
            }
            Joint::Elbow => {
                return hinge(motion, Motion::Flexion, Motion::Extension, arm.upper * DVec3::Z);
            }
            Joint::Ankle => {
                return hinge(motion, Motion::Dorsiflexion, Motion::Plantarflexion, leg.shank * DVec3::Z);
            }
            Joint::Trunk => return None,
        };
        // Away from the midline is the other way round on the left.
        let out = if side == Side::Right { 1.0 } else { -1.0 };
        match motion {
            Motion::Flexion => Some(self.pelvis * DVec3::Z),
            Motion::Extension => Some(self.pelvis * DVec3::NEG_Z),
            Motion::Abduction => Some(floating * DVec3::NEG_X * out),
            Motion::Adduction => Some(floating * DVec3::X * out),
            Motion::InternalRotation => Some(long * DVec3::Y * out),
            Motion::ExternalRotation => Some(long * DVec3::NEG_Y * out),
            _ => None,
        }
    }
}

fn hinge(motion: Motion, positive: Motion, negative: Motion, axis: DVec3) -> Option<DVec3> {
    if motion == positive { Some(axis) } else { (motion == negative).then_some(-axis) }
}

/// About the mediolateral axis, then the floating axis, then the long axis: the frame after the
/// first turn, and after all three.
fn ball(root: DQuat, side: Side, flexion: f64, abduction: f64, internal: f64) -> (DQuat, DQuat) {
    let out = if side == Side::Right { 1.0 } else { -1.0 };
    let floating = root * DQuat::from_rotation_z(flexion.to_radians());
    let abducted = floating * DQuat::from_rotation_x(-out * abduction.to_radians());
    (floating, abducted * DQuat::from_rotation_y(out * internal.to_radians()))
}

fn leg(pelvis: DQuat, side: Side, angles: &LegAngles, stature_m: f64) -> Leg {
    let out = if side == Side::Right { 1.0 } else { -1.0 };
    let (floating, thigh) = ball(
        pelvis,
        side,
        angles.hip_flexion_deg,
        angles.hip_abduction_deg,
        angles.hip_internal_rotation_deg,
    );
    let shank = thigh * DQuat::from_rotation_z(-angles.knee_flexion_deg.to_radians());
    let foot = shank * DQuat::from_rotation_z(angles.ankle_dorsiflexion_deg.to_radians());
    let hip = pelvis * DVec3::Z * (out * segment::HALF_HIPS * stature_m);
    let knee = hip + thigh * DVec3::NEG_Y * (segment::THIGH * stature_m);
    let ankle = knee + shank * DVec3::NEG_Y * (segment::SHANK * stature_m);
    let toe = ankle + foot * DVec3::X * (segment::FOOT * stature_m);
    Leg { hip, knee, ankle, toe, floating, thigh, shank }
}

fn arm(pelvis: DQuat, side: Side, angles: &ArmAngles, stature_m: f64) -> Arm {
    let out = if side == Side::Right { 1.0 } else { -1.0 };
    let (floating, upper_arm) = ball(
        pelvis,
        side,
        angles.shoulder_flexion_deg,
        angles.shoulder_abduction_deg,
        angles.shoulder_internal_rotation_deg,
    );
    let forearm = upper_arm * DQuat::from_rotation_z(angles.elbow_flexion_deg.to_radians());
    let shoulder = pelvis * DVec3::new(0.0, segment::TRUNK, out * segment::HALF_SHOULDERS) * stature_m;
    let elbow = shoulder + upper_arm * DVec3::NEG_Y * (segment::UPPER_ARM * stature_m);
    let wrist = elbow + forearm * DVec3::NEG_Y * (segment::FOREARM * stature_m);
    let fingertips = wrist + forearm * DVec3::NEG_Y * (segment::HAND * stature_m);
    Arm { shoulder, elbow, wrist, fingertips, floating, upper: upper_arm }
}

#[cfg(test)]
mod tests;
