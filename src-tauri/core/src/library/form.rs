//! A movement as its file says it: poses, what drives them, what the body rests on.
//!
//! Sides are relative: the working limb and the other one. Angles are in degrees, named as the body
//! model names them; what is not said is 0. Lengths are parts of stature.

use serde::{Deserialize, Serialize};

use crate::facts::{Drive, Joint, Limb, Motion, Position, Surface};
use crate::ids::{FamilyId, MovementId};

/// A movement, as written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Form {
    /// Immutable id.
    pub id: MovementId,
    /// The family that a precaution can name whole.
    pub family: FamilyId,
    /// Whether it strengthens; effort is asked for after such items.
    #[serde(default, skip_serializing_if = "is_default")]
    pub strengthens: bool,
    /// What to have ready.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub props: Vec<Prop>,
    /// The muscles it is for.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub targets: Vec<Target>,
    /// The usual easier variant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub easier: Option<MovementId>,
    /// The usual harder variant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub harder: Option<MovementId>,
    /// The dose that a protocol may start from; the clinic decides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub starter: Option<Starter>,
    /// Where it is done, and what carries the body.
    pub place: Place,
    /// What moves the limbs.
    pub drive: Drives,
    /// Muscles that press or pull against something without moving it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub efforts: Vec<Effort>,
    /// The way out, pose by pose; the way back is the same, backwards.
    pub poses: Vec<PoseForm>,
}

pub(super) fn is_default<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}

/// Things to have ready.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Prop {
    Chair,
    Rail,
    Towel,
    Roll,
    Strap,
    Step,
    /// Round both limbs, or held in both hands.
    Band,
    /// Tied to something that stands: it pulls on the working limb alone.
    TiedBand,
    Cuff,
    Pillow,
    Stick,
    WalkingAid,
    Table,
    Wall,
    /// Somebody's two hands.
    Helper,
}

/// Muscles that a movement is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Target {
    Calf,
    Shin,
    Quadriceps,
    Hamstrings,
    HipFlexors,
    HipExtensors,
    HipAbductors,
    HipAdductors,
    HipRotators,
    Abdominals,
    BackExtensors,
    ShoulderFlexors,
    RotatorCuff,
    ShoulderBlade,
    ElbowFlexors,
    Mobility,
    Balance,
    Endurance,
}

/// A dose to start from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Starter {
    /// Sets.
    pub sets: u8,
    /// Repetitions in a set, if it is counted so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub repetitions: Option<u16>,
    /// Minutes, if it is timed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u16>,
    /// Seconds to hold.
    #[serde(default, skip_serializing_if = "is_default")]
    pub hold_s: u16,
    /// Where the figures come from.
    pub source: String,
}

/// Where a movement is done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// The posture.
    pub position: Position,
    /// What the body is on.
    pub surface: Surface,
    /// In side-lying: which limb lies beneath.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lies_on: Option<Limb>,
    /// What keeps its place in the room while the rest moves.
    #[serde(default, skip_serializing_if = "is_default")]
    pub anchor: Anchor,
    /// From where it is seen.
    #[serde(default, skip_serializing_if = "is_default")]
    pub camera: Camera,
    /// How high the step is on which the working foot stands.
    #[serde(default, skip_serializing_if = "is_default")]
    pub step_height: f64,
    /// What of the working side rests on something, all the way.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub working_rests: Vec<Segment>,
    /// What of the other side rests on something, all the way.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub other_rests: Vec<Segment>,
    /// Feet whose sole is level all the way: the ankle follows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub level_feet: Vec<Limb>,
    /// Hands that stay where they are all the way: the arm follows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub still_hands: Vec<Limb>,
    /// Legs that push the body, or a part of it, away from what they rest on, without standing.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pushing_legs: Vec<Limb>,
    /// Arms that do.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pushing_arms: Vec<Limb>,
    /// Most weight on the leg of the working side, in per cent of body weight.
    #[serde(default, skip_serializing_if = "is_default")]
    pub working_weight_percent: f64,
    /// Most weight on the other leg, in per cent of body weight.
    #[serde(default, skip_serializing_if = "is_default")]
    pub other_weight_percent: f64,
}

/// What keeps its place in the room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Anchor {
    /// The pelvis: lying and sitting.
    #[default]
    Pelvis,
    /// The upper back: the hips are lifted.
    Shoulders,
    /// The working foot, flat.
    WorkingFoot,
    /// The other foot, flat.
    OtherFoot,
    /// The ball of the working foot.
    WorkingToes,
    /// The knee of the other side.
    OtherKnee,
}

/// From where a movement is seen; the working side is the near one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Camera {
    /// From the side.
    #[default]
    Side,
    /// From before: the front of who stands or sits, the feet of who lies on the back, the belly of
    /// who lies on the side.
    Front,
    /// From behind who stands.
    Back,
    /// From above.
    Above,
}

/// A segment that can rest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Segment {
    Thigh,
    Shank,
    Foot,
    UpperArm,
    Forearm,
    Hand,
}

/// What moves each limb where it moves, and holds it where it does not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Drives {
    /// The working limb.
    pub working: Drive,
    /// The other limb.
    #[serde(default = "passive", skip_serializing_if = "is_passive")]
    pub other: Drive,
    /// The trunk.
    #[serde(default = "passive", skip_serializing_if = "is_passive")]
    pub trunk: Drive,
    /// Joints that are driven otherwise.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub joints: Vec<JointDrive>,
}

fn passive() -> Drive {
    Drive::Passive
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_passive(drive: &Drive) -> bool {
    *drive == Drive::Passive
}

/// A joint that is driven otherwise than its limb.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[expect(missing_docs, reason = "the names say it")]
pub struct JointDrive {
    pub limb: Limb,
    pub joint: Joint,
    pub drive: Drive,
}

/// Muscles at work without movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Effort {
    /// Whose joint.
    pub limb: Limb,
    /// Which joint.
    pub joint: Joint,
    /// In which direction the muscles pull.
    pub motion: Motion,
}

/// A pose on the way out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PoseForm {
    /// When, as a part of the way out: 0 at its beginning, 1 at its end.
    pub at: f64,
    /// The limbs of the working side.
    #[serde(default, skip_serializing_if = "is_default")]
    pub working: LimbAngles,
    /// The limbs of the other side.
    #[serde(default, skip_serializing_if = "is_default")]
    pub other: LimbAngles,
    /// Pelvis, trunk and head.
    #[serde(default, skip_serializing_if = "is_default")]
    pub trunk: TrunkForm,
    /// What moves the working limb on the stretch that ends here, if not what moves it else.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drive: Option<Drive>,
}

/// Angles of the leg and the arm of one side.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
#[expect(missing_docs, reason = "the names say it")]
pub struct LimbAngles {
    #[serde(skip_serializing_if = "is_default")]
    pub hip_flexion_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub hip_abduction_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub hip_internal_rotation_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub knee_flexion_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub ankle_dorsiflexion_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub shoulder_flexion_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub shoulder_abduction_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub shoulder_internal_rotation_deg: f64,
    #[serde(skip_serializing_if = "is_default")]
    pub elbow_flexion_deg: f64,
}

/// How pelvis, trunk and head are turned; sideways is towards the working side.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields, default)]
pub struct TrunkForm {
    /// The pelvis tipped forward, towards the belly.
    #[serde(skip_serializing_if = "is_default")]
    pub pelvis_lean_deg: f64,
    /// The pelvis turned about the body's length.
    #[serde(skip_serializing_if = "is_default")]
    pub pelvis_turn_deg: f64,
    /// The hip of the working side lower.
    #[serde(skip_serializing_if = "is_default")]
    pub pelvis_tilt_deg: f64,
    /// The trunk bent forward.
    #[serde(skip_serializing_if = "is_default")]
    pub flexion_deg: f64,
    /// The trunk bent to the working side.
    #[serde(skip_serializing_if = "is_default")]
    pub side_bending_deg: f64,
    /// The chest twisted to the working side.
    #[serde(skip_serializing_if = "is_default")]
    pub twisting_deg: f64,
    /// The head bent forward.
    #[serde(skip_serializing_if = "is_default")]
    pub neck_flexion_deg: f64,
}

/// One angle of a limb.
#[derive(Debug, Clone, Copy)]
pub struct LimbAxis {
    /// The joint.
    pub joint: Joint,
    /// The direction that counts positive.
    pub motion: Motion,
    /// The field's name.
    pub name: &'static str,
    /// Reads it.
    pub get: fn(&LimbAngles) -> f64,
    /// The least that a human joint reaches, in degrees.
    pub least: f64,
    /// The most that a human joint reaches, in degrees.
    pub most: f64,
}

const fn axis(
    joint: Joint,
    motion: Motion,
    name: &'static str,
    get: fn(&LimbAngles) -> f64,
    least: f64,
    most: f64,
) -> LimbAxis {
    LimbAxis { joint, motion, name, get, least, most }
}

/// Every angle of a limb, with the ends of human range: the usual tables of joint range with some
/// room at either end (from memory); a guard against slips of the pen, never advice.
pub const LIMB_AXES: [LimbAxis; 9] = [
    axis(Joint::Hip, Motion::Flexion, "hip_flexion_deg", |a| a.hip_flexion_deg, -30.0, 130.0),
    axis(Joint::Hip, Motion::Abduction, "hip_abduction_deg", |a| a.hip_abduction_deg, -30.0, 50.0),
    axis(
        Joint::Hip,
        Motion::InternalRotation,
        "hip_internal_rotation_deg",
        |a| a.hip_internal_rotation_deg,
        -50.0,
        45.0,
    ),
    axis(Joint::Knee, Motion::Flexion, "knee_flexion_deg", |a| a.knee_flexion_deg, -5.0, 150.0),
    axis(
        Joint::Ankle,
        Motion::Dorsiflexion,
        "ankle_dorsiflexion_deg",
        |a| a.ankle_dorsiflexion_deg,
        -60.0,
        35.0,
    ),
    axis(Joint::Shoulder, Motion::Flexion, "shoulder_flexion_deg", |a| a.shoulder_flexion_deg, -60.0, 180.0),
    axis(
        Joint::Shoulder,
        Motion::Abduction,
        "shoulder_abduction_deg",
        |a| a.shoulder_abduction_deg,
        -45.0,
        180.0,
    ),
    axis(
        Joint::Shoulder,
        Motion::InternalRotation,
        "shoulder_internal_rotation_deg",
        |a| a.shoulder_internal_rotation_deg,
        -100.0,
        100.0,
    ),
    axis(Joint::Elbow, Motion::Flexion, "elbow_flexion_deg", |a| a.elbow_flexion_deg, -5.0, 150.0),
];
