//! Forward kinematics: a pose in the room.

use glam::{DQuat, DVec3};

use crate::body::{ArmAngles, LegAngles, Pose, segment};
use crate::facts::{Joint, Motion, PerSide, Side};

/// The joints of one leg, in metres, and the frames that hang on them.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "the names say it")]
pub struct Leg {
    pub hip: DVec3,
    pub knee: DVec3,
    pub ankle: DVec3,
    pub toe: DVec3,
    /// Pelvis turned by hip flexion: its X is the floating axis.
    floating: DQuat,
    /// The thigh's frame.
    pub thigh: DQuat,
    /// The shank's frame.
    pub shank: DQuat,
    /// The foot's frame: X to the toes, Y from the sole to the ankle.
    pub foot: DQuat,
}

impl Leg {
    /// The sole below the heel, below the ankle and below the toes.
    pub fn sole(&self, stature_m: f64) -> [DVec3; 3] {
        let down = self.foot * DVec3::NEG_Y * (segment::SOLE * stature_m);
        let heel = self.foot * DVec3::NEG_X * (segment::HEEL * segment::FOOT * stature_m);
        let toe = self.foot * DVec3::X * ((1.0 - segment::HEEL) * segment::FOOT * stature_m);
        [self.ankle + heel + down, self.ankle + down, self.ankle + toe + down]
    }

    fn moved(self, by: DVec3) -> Self {
        let Self { hip, knee, ankle, toe, .. } = self;
        Self { hip: hip + by, knee: knee + by, ankle: ankle + by, toe: toe + by, ..self }
    }
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
    /// The upper arm's frame.
    pub upper: DQuat,
    /// The forearm's frame.
    pub forearm: DQuat,
}

impl Arm {
    fn moved(self, by: DVec3) -> Self {
        let Self { shoulder, elbow, wrist, fingertips, .. } = self;
        let [shoulder, elbow, wrist, fingertips] = [shoulder, elbow, wrist, fingertips].map(|at| at + by);
        Self { shoulder, elbow, wrist, fingertips, ..self }
    }
}

/// A pose in the room, for a stature. Until it is moved, the middle between the hips is the origin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// Stature, in m.
    pub stature_m: f64,
    /// The middle between the hips.
    pub hips: DVec3,
    /// Where the trunk bends first.
    pub lumbar: DVec3,
    /// Where the trunk bends again.
    pub thoracic: DVec3,
    /// The base of the neck.
    pub neck: DVec3,
    /// The middle of the head.
    pub head: DVec3,
    /// The pelvis's frame.
    pub pelvis: DQuat,
    /// The chest's frame.
    pub chest: DQuat,
    /// The head's frame.
    pub head_frame: DQuat,
    legs: PerSide<Leg>,
    arms: PerSide<Arm>,
}

impl Placed {
    /// Places a pose: forward kinematics from the pelvis outwards.
    pub fn new(pose: &Pose, stature_m: f64) -> Self {
        let pelvis = pelvis_frame(pose);
        let (middle, chest) = trunk_frames(pelvis, pose);
        let head_frame = chest * DQuat::from_rotation_z(-pose.trunk.neck_flexion_deg.to_radians());
        let up = |frame: DQuat, length: f64| frame * DVec3::Y * (length * stature_m);
        let lumbar = up(pelvis, segment::LUMBAR);
        let thoracic = lumbar + up(middle, segment::THORACIC - segment::LUMBAR);
        let neck = thoracic + up(chest, segment::NECK - segment::THORACIC);
        let shoulders = thoracic + up(chest, segment::TRUNK - segment::THORACIC);
        let leg = |side| leg(pelvis, side, pose.legs.get(side), stature_m);
        let arm = |side| arm(shoulders, chest, side, pose.arms.get(side), stature_m);
        Self {
            stature_m,
            hips: DVec3::ZERO,
            lumbar,
            thoracic,
            neck,
            head: neck + up(head_frame, segment::HEAD),
            pelvis,
            chest,
            head_frame,
            legs: PerSide { left: leg(Side::Left), right: leg(Side::Right) },
            arms: PerSide { left: arm(Side::Left), right: arm(Side::Right) },
        }
    }

    /// The same, elsewhere in the room.
    pub fn moved(self, by: DVec3) -> Self {
        let [hips, lumbar, thoracic, neck, head] =
            [self.hips, self.lumbar, self.thoracic, self.neck, self.head].map(|at| at + by);
        Self {
            hips,
            lumbar,
            thoracic,
            neck,
            head,
            legs: PerSide { left: self.legs.left.moved(by), right: self.legs.right.moved(by) },
            arms: PerSide { left: self.arms.left.moved(by), right: self.arms.right.moved(by) },
            ..self
        }
    }

    /// A leg.
    pub fn leg(&self, side: Side) -> &Leg {
        self.legs.get(side)
    }

    /// An arm.
    pub fn arm(&self, side: Side) -> &Arm {
        self.arms.get(side)
    }

    /// The direction about which a joint turns in a motion, by the right-hand rule; `None` for what a
    /// joint does not do, and for the trunk.
    pub fn axis(&self, joint: Joint, motion: Motion, side: Side) -> Option<DVec3> {
        let (leg, arm) = (self.leg(side), self.arm(side));
        let (root, floating, long) = match joint {
            Joint::Hip => (self.pelvis, leg.floating, leg.thigh),
            Joint::Shoulder => (self.chest, arm.floating, arm.upper),
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
        let out = outward(side);
        match motion {
            Motion::Flexion => Some(root * DVec3::Z),
            Motion::Extension => Some(root * DVec3::NEG_Z),
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

/// Away from the midline is the other way round on the left.
fn outward(side: Side) -> f64 {
    if side == Side::Right { 1.0 } else { -1.0 }
}

fn pelvis_frame(pose: &Pose) -> DQuat {
    let angles = pose.pelvis;
    pose.lying.rotation()
        * DQuat::from_rotation_z(-angles.lean_deg.to_radians())
        * DQuat::from_rotation_x(angles.tilt_deg.to_radians())
        * DQuat::from_rotation_y(-angles.turn_deg.to_radians())
}

/// The frames of the trunk's middle and of the chest: the bend is shared evenly by the two joints.
fn trunk_frames(pelvis: DQuat, pose: &Pose) -> (DQuat, DQuat) {
    let angles = pose.trunk;
    let half = DQuat::from_rotation_z(-angles.flexion_deg.to_radians() / 2.0)
        * DQuat::from_rotation_x(angles.side_bending_deg.to_radians() / 2.0)
        * DQuat::from_rotation_y(-angles.twisting_deg.to_radians() / 2.0);
    (pelvis * half, pelvis * half * half)
}

/// About the mediolateral axis, then the floating axis, then the long axis: the frame after the
/// first turn, and after all three.
fn ball(root: DQuat, side: Side, flexion: f64, abduction: f64, internal: f64) -> (DQuat, DQuat) {
    let out = outward(side);
    let floating = root * DQuat::from_rotation_z(flexion.to_radians());
    let abducted = floating * DQuat::from_rotation_x(-out * abduction.to_radians());
    (floating, abducted * DQuat::from_rotation_y(out * internal.to_radians()))
}

fn leg(pelvis: DQuat, side: Side, angles: &LegAngles, stature_m: f64) -> Leg {
    let (floating, thigh) = ball(
        pelvis,
        side,
        angles.hip_flexion_deg,
        angles.hip_abduction_deg,
        angles.hip_internal_rotation_deg,
    );
    let shank = thigh * DQuat::from_rotation_z(-angles.knee_flexion_deg.to_radians());
    let foot = shank * DQuat::from_rotation_z(angles.ankle_dorsiflexion_deg.to_radians());
    let hip = pelvis * DVec3::Z * (outward(side) * segment::HALF_HIPS * stature_m);
    let knee = hip + thigh * DVec3::NEG_Y * (segment::THIGH * stature_m);
    let ankle = knee + shank * DVec3::NEG_Y * (segment::SHANK * stature_m);
    let toe = ankle + foot * DVec3::X * (segment::FOOT * stature_m);
    Leg { hip, knee, ankle, toe, floating, thigh, shank, foot }
}

fn arm(shoulders: DVec3, chest: DQuat, side: Side, angles: &ArmAngles, stature_m: f64) -> Arm {
    let (floating, upper) = ball(
        chest,
        side,
        angles.shoulder_flexion_deg,
        angles.shoulder_abduction_deg,
        angles.shoulder_internal_rotation_deg,
    );
    let forearm = upper * DQuat::from_rotation_z(angles.elbow_flexion_deg.to_radians());
    let shoulder = shoulders + chest * DVec3::Z * (outward(side) * segment::HALF_SHOULDERS * stature_m);
    let elbow = shoulder + upper * DVec3::NEG_Y * (segment::UPPER_ARM * stature_m);
    let wrist = elbow + forearm * DVec3::NEG_Y * (segment::FOREARM * stature_m);
    let fingertips = wrist + forearm * DVec3::NEG_Y * (segment::HAND * stature_m);
    Arm { shoulder, elbow, wrist, fingertips, floating, upper, forearm }
}
