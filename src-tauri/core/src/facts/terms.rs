//! The trade's terms: sides, limbs, positions, joints, directions of movement, drive.

use serde::{Deserialize, Serialize};

/// A side of the body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Side {
    Left,
    Right,
}

impl Side {
    /// Both sides.
    pub const BOTH: [Self; 2] = [Self::Left, Self::Right];

    /// The opposite side.
    pub fn opposite(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// A value for each side.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[expect(missing_docs, reason = "the names say it")]
pub struct PerSide<T> {
    pub left: T,
    pub right: T,
}

impl<T> PerSide<T> {
    /// The value of a side.
    pub fn get(&self, side: Side) -> &T {
        match side {
            Side::Left => &self.left,
            Side::Right => &self.right,
        }
    }

    /// The value of a side, to change.
    pub fn get_mut(&mut self, side: Side) -> &mut T {
        match side {
            Side::Left => &mut self.left,
            Side::Right => &mut self.right,
        }
    }
}

/// The operated or injured side of an episode.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum OperatedSide {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Both.
    Both,
    /// Neither: the back, say.
    Neither,
}

/// Which side does an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum ItemSide {
    /// The operated side.
    Operated,
    /// The other side.
    Other,
    /// Both at once.
    BothTogether,
    /// All sets on the operated side, then all on the other.
    OneAfterTheOther,
    /// In turn, repetition by repetition; so many repetitions a side.
    Alternating,
}

impl ItemSide {
    /// The sides that work, in the order in which they do.
    pub fn working(self, operated: OperatedSide) -> Vec<Side> {
        let first = match operated {
            OperatedSide::Left => Some(Side::Left),
            OperatedSide::Right => Some(Side::Right),
            OperatedSide::Both | OperatedSide::Neither => None,
        };
        match (self, first) {
            (Self::Operated, Some(side)) => vec![side],
            (Self::Other, Some(side)) => vec![side.opposite()],
            (_, Some(side)) => vec![side, side.opposite()],
            (_, None) => vec![Side::Left, Side::Right],
        }
    }
}

/// Which limb a movement's fact is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Limb {
    /// The limb that does the movement.
    Working,
    /// The limb of the other side: it stands, lies beneath, or rests.
    Other,
    /// The trunk; counts for both sides.
    Trunk,
}

/// Positions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Position {
    /// On the back.
    Supine,
    /// On the back with knees bent and feet flat.
    HookLying,
    /// On the side.
    SideLying,
    /// Face down.
    Prone,
    /// Sitting.
    Seated,
    /// Standing.
    Standing,
    /// Standing bent forward with the trunk supported.
    BentOver,
    /// On both knees or one.
    Kneeling,
    /// On hands and knees.
    HandsAndKnees,
}

/// What the body is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Surface {
    /// A bed or couch.
    Bed,
    /// A chair.
    Chair,
    /// The feet, on the ground.
    Ground,
    /// Down on the floor.
    Floor,
}

/// How high a seat is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Seat {
    /// Lower than the knee.
    Low,
    /// Level with the knee.
    Knee,
    /// Higher than the knee.
    High,
}

/// Joints.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Joint {
    Hip,
    Knee,
    Ankle,
    Shoulder,
    Elbow,
    Trunk,
}

impl Joint {
    /// The name, as documents write it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Hip => "hip",
            Self::Knee => "knee",
            Self::Ankle => "ankle",
            Self::Shoulder => "shoulder",
            Self::Elbow => "elbow",
            Self::Trunk => "trunk",
        }
    }
}

/// A direction of movement at a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Motion {
    Flexion,
    Extension,
    Abduction,
    Adduction,
    InternalRotation,
    ExternalRotation,
    Dorsiflexion,
    Plantarflexion,
    /// Of the trunk, to either side.
    SideBending,
    /// Of the trunk, to either side.
    Twisting,
}

/// An axis of a joint, named by its positive direction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Axis {
    Flexion,
    Abduction,
    InternalRotation,
    Dorsiflexion,
    SideBending,
    Twisting,
}

impl Axis {
    /// The direction that it is named by.
    pub fn positive(self) -> Motion {
        match self {
            Self::Flexion => Motion::Flexion,
            Self::Abduction => Motion::Abduction,
            Self::InternalRotation => Motion::InternalRotation,
            Self::Dorsiflexion => Motion::Dorsiflexion,
            Self::SideBending => Motion::SideBending,
            Self::Twisting => Motion::Twisting,
        }
    }

    /// Whether a joint has this axis.
    pub fn is_of(self, joint: Joint) -> bool {
        match self {
            Self::Flexion => joint != Joint::Ankle,
            Self::Abduction | Self::InternalRotation => matches!(joint, Joint::Hip | Joint::Shoulder),
            Self::Dorsiflexion => joint == Joint::Ankle,
            Self::SideBending | Self::Twisting => joint == Joint::Trunk,
        }
    }
}

impl Motion {
    /// The name, as documents write it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Flexion => "flexion",
            Self::Extension => "extension",
            Self::Abduction => "abduction",
            Self::Adduction => "adduction",
            Self::InternalRotation => "internal-rotation",
            Self::ExternalRotation => "external-rotation",
            Self::Dorsiflexion => "dorsiflexion",
            Self::Plantarflexion => "plantarflexion",
            Self::SideBending => "side-bending",
            Self::Twisting => "twisting",
        }
    }

    /// The other way round; to either side is its own.
    pub fn opposite(self) -> Self {
        match self {
            Self::Flexion => Self::Extension,
            Self::Extension => Self::Flexion,
            Self::Abduction => Self::Adduction,
            Self::Adduction => Self::Abduction,
            Self::InternalRotation => Self::ExternalRotation,
            Self::ExternalRotation => Self::InternalRotation,
            Self::Dorsiflexion => Self::Plantarflexion,
            Self::Plantarflexion => Self::Dorsiflexion,
            Self::SideBending | Self::Twisting => self,
        }
    }

    /// The axis this direction lies on.
    pub fn axis(self) -> Axis {
        match self {
            Self::Flexion | Self::Extension => Axis::Flexion,
            Self::Abduction | Self::Adduction => Axis::Abduction,
            Self::InternalRotation | Self::ExternalRotation => Axis::InternalRotation,
            Self::Dorsiflexion | Self::Plantarflexion => Axis::Dorsiflexion,
            Self::SideBending => Axis::SideBending,
            Self::Twisting => Axis::Twisting,
        }
    }

    /// How far a range on this direction's axis reaches in this direction, in degrees.
    pub(super) fn reach(self, from_deg: f64, to_deg: f64) -> f64 {
        match self {
            Self::Flexion | Self::Abduction | Self::InternalRotation | Self::Dorsiflexion => {
                from_deg.max(to_deg)
            }
            Self::Extension | Self::Adduction | Self::ExternalRotation | Self::Plantarflexion => {
                -from_deg.min(to_deg)
            }
            Self::SideBending | Self::Twisting => from_deg.abs().max(to_deg.abs()),
        }
    }
}

/// What drives a stretch of a movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Drive {
    /// The limb's own muscles move it.
    Active,
    /// The limb's own muscles hold against something, without movement.
    Isometric,
    /// Muscles with help: a strap, a stick, a hand, the other limb.
    Assisted,
    /// Something else moves it; the muscles are at rest.
    Passive,
}
