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

use glam::DQuat;

use crate::facts::{PerSide, Side};

mod moment;
mod reach;
mod skeleton;

pub use moment::{Rests, gravity_moment_nm_per_kg, limb_potential};
pub use reach::arm_to;
pub use skeleton::{Arm, Leg, Placed};

/// Fractions of stature and of body mass.
pub mod segment {
    #![expect(missing_docs, reason = "each length, mass share and centre is named after its segment")]

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
    /// Hips to the joints of the trunk, where the model lets the spine bend and twist: about the
    /// fourth lumbar and the twelfth thoracic vertebra (from memory).
    pub const LUMBAR: f64 = 0.075;
    pub const THORACIC: f64 = 0.165;
    /// Hips to the base of the neck, and from there to the middle of the head (Winter, Fig. 4.1:
    /// stature 1.000 and chin 0.870 less hip height 0.530, from memory).
    pub const NECK: f64 = 0.312;
    pub const HEAD: f64 = 0.088;
    /// Midline to the centre of the hip joint: about 17 cm between the two at 1.70 m (from memory).
    pub const HALF_HIPS: f64 = 0.050;
    /// Midline to the centre of the shoulder joint: a little inside the shoulder breadth of 0.259
    /// (Winter, Fig. 4.1, from memory).
    pub const HALF_SHOULDERS: f64 = 0.105;
    /// Ankle to the sole (Winter, Fig. 4.1).
    pub const SOLE: f64 = 0.039;
    /// Ankle back to the heel, as a part of the foot's length (from memory).
    pub const HEEL: f64 = 0.25;
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

/// How the pelvis is turned from where its lying puts it, in degrees.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PelvisAngles {
    /// Tipped forward, towards the belly.
    pub lean_deg: f64,
    /// Turned about the body's long axis, towards the right.
    pub turn_deg: f64,
    /// Tipped sideways: the right hip down.
    pub tilt_deg: f64,
}

/// Angles of the trunk from the pelvis to the chest, and of the head, in degrees.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct TrunkAngles {
    /// Bent forward; backward is negative.
    pub flexion_deg: f64,
    /// Bent to the right.
    pub side_bending_deg: f64,
    /// Twisted to the right.
    pub twisting_deg: f64,
    /// The head bent forward on the chest.
    pub neck_flexion_deg: f64,
}

/// A pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// How the pelvis lies.
    pub lying: Lying,
    /// How it is turned from there.
    pub pelvis: PelvisAngles,
    /// The trunk and the head.
    pub trunk: TrunkAngles,
    /// The legs.
    pub legs: PerSide<LegAngles>,
    /// The arms.
    pub arms: PerSide<ArmAngles>,
}

impl Pose {
    /// Every joint at neutral.
    pub fn neutral(lying: Lying) -> Self {
        Self {
            lying,
            pelvis: PelvisAngles::default(),
            trunk: TrunkAngles::default(),
            legs: PerSide::default(),
            arms: PerSide::default(),
        }
    }
}

#[cfg(test)]
mod tests;
