//! What an exercise asks of the body: as its movement declares it for a working and another limb,
//! and as performed, left and right.
//!
//! Angles are in degrees with flexion, abduction, internal rotation and dorsiflexion positive; hip
//! flexion is the angle between thigh and trunk. Angles are rounded to 0.1° and moments to
//! 0.001 N·m/kg before any comparison. Moments are estimates of gravity's share only.

use serde::{Deserialize, Serialize};

use crate::bounds;
use crate::digest::Digest;
use crate::ids::{FamilyId, MovementId};
use crate::library::Movement;
use crate::plan::doc::Load;

/// Standard gravity's usual rounding, m/s² (as in the shipped check table of static moments).
const GRAVITY: f64 = 9.81;

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
    fn reach(self, from_deg: f64, to_deg: f64) -> f64 {
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

/// What a movement declares. Sides are relative: working, other.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Facts {
    /// The position.
    pub position: Position,
    /// What the body is on.
    pub surface: Surface,
    /// In side-lying: which limb lies beneath.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lies_on: Option<Limb>,
    /// How high the seat is, if there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seat: Option<Seat>,
    /// Joint ranges.
    #[serde(default)]
    pub ranges: Vec<RangeFact>,
    /// Muscle actions.
    #[serde(default)]
    pub actions: Vec<ActionFact>,
    /// Peak static joint moments.
    #[serde(default)]
    pub moments: Vec<MomentFact>,
    /// Weight on each leg at its peak.
    #[serde(default)]
    pub weight: WeightFact,
    /// The spine bends under way.
    #[serde(default)]
    pub bends_spine: bool,
    /// The spine twists under way.
    #[serde(default)]
    pub twists_spine: bool,
    /// A band, a cuff or a weight belongs to it.
    #[serde(default)]
    pub resistance: bool,
}

impl Facts {
    /// The digest that an item carries.
    pub fn digest(&self) -> Digest {
        Digest::of(&serde_json::to_vec(self).expect("facts are plain data"))
    }
}

/// The range one joint goes through on one axis.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RangeFact {
    /// Whose joint.
    pub limb: Limb,
    /// Which joint.
    pub joint: Joint,
    /// Which axis.
    pub axis: Axis,
    /// One end, in degrees.
    pub from_deg: f64,
    /// The other end, in degrees.
    pub to_deg: f64,
    /// What drives it.
    pub drive: Drive,
}

/// A direction in which muscles work at a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ActionFact {
    /// Whose joint.
    pub limb: Limb,
    /// Which joint.
    pub joint: Joint,
    /// In which direction the muscles pull.
    pub motion: Motion,
    /// How.
    pub drive: Drive,
}

/// A peak static joint moment, scaled so that stature and mass can be put in later.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct MomentFact {
    /// Whose joint.
    pub limb: Limb,
    /// Which joint.
    pub joint: Joint,
    /// The direction in which the muscles must pull against gravity.
    pub motion: Motion,
    /// N·m per kg of body mass and metre of stature.
    pub nm_per_kg_per_m: f64,
    /// Horizontal distance from the joint to an outside load, as a fraction of stature.
    #[serde(default)]
    pub load_lever: f64,
    /// What drives it.
    pub drive: Drive,
}

/// Peak weight on each leg, in per cent of body weight.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WeightFact {
    /// On the working side's leg.
    pub working_percent: f64,
    /// On the other leg.
    pub other_percent: f64,
}

/// Stature and mass, as far as they are known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct BodySize {
    /// Stature in cm.
    pub height_cm: Option<u16>,
    /// Body mass in kg.
    pub mass_kg: Option<u16>,
}

impl BodySize {
    /// Stature in m; the tallest of the bounds if unknown, for which moments are greatest.
    pub fn worst_height_m(self) -> f64 {
        self.height_cm.map_or(bounds::HEIGHT_CM.most, f64::from) / 100.0
    }

    /// Mass in kg; the lightest of the bounds if unknown, for which a load weighs most.
    pub fn least_mass_kg(self) -> f64 {
        self.mass_kg.map_or(bounds::MASS_KG.least, f64::from)
    }

    /// Mass in kg; the heaviest of the bounds if unknown, for which a share of it weighs most.
    pub fn most_mass_kg(self) -> f64 {
        self.mass_kg.map_or(bounds::MASS_KG.most, f64::from)
    }
}

/// How an item has its movement done.
#[derive(Debug, Clone, Copy)]
pub struct Manner<'a> {
    /// Which side.
    pub side: ItemSide,
    /// The operated side of its episode.
    pub operated: OperatedSide,
    /// Outside load.
    pub load: Option<&'a Load>,
    /// With the brace or sling on.
    pub with_brace: bool,
    /// Stature and mass.
    pub size: BodySize,
}

/// A range on an absolute side.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "as in `RangeFact`")]
pub struct SidedRange {
    pub side: Side,
    pub joint: Joint,
    pub axis: Axis,
    pub from_deg: f64,
    pub to_deg: f64,
    pub drive: Drive,
}

impl SidedRange {
    /// How far it reaches in a direction, in tenths of a degree; `None` on another axis.
    pub fn reach_tenths(&self, joint: Joint, motion: Motion) -> Option<i64> {
        (self.joint == joint && self.axis == motion.axis())
            .then(|| tenths(motion.reach(self.from_deg, self.to_deg)))
    }
}

/// A muscle action on an absolute side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "as in `ActionFact`")]
pub struct SidedAction {
    pub side: Side,
    pub joint: Joint,
    pub motion: Motion,
    pub drive: Drive,
}

/// A moment on an absolute side, for this person's stature and mass.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "as in `MomentFact`")]
pub struct SidedMoment {
    pub side: Side,
    pub joint: Joint,
    pub motion: Motion,
    pub nm_per_kg: f64,
    pub drive: Drive,
}

/// An exercise as performed: what a precaution is held against.
#[derive(Debug, Clone, PartialEq)]
#[expect(missing_docs, reason = "as in `Facts`")]
pub struct Performed {
    pub movement: MovementId,
    pub family: FamilyId,
    pub position: Position,
    pub surface: Surface,
    pub lies_on: PerSide<bool>,
    pub seat: Option<Seat>,
    pub works: PerSide<bool>,
    pub ranges: Vec<SidedRange>,
    pub actions: Vec<SidedAction>,
    pub moments: Vec<SidedMoment>,
    pub weight_percent: PerSide<f64>,
    pub bends_spine: bool,
    pub twists_spine: bool,
    pub resistance: PerSide<bool>,
    pub load_kg: f64,
    pub with_brace: bool,
    pub size: BodySize,
}

impl Performed {
    /// A movement done in this manner.
    pub fn new(movement: &Movement, manner: &Manner<'_>) -> Self {
        let facts = &movement.facts;
        let mut done = Self {
            movement: movement.id.clone(),
            family: movement.family.clone(),
            position: facts.position,
            surface: facts.surface,
            lies_on: PerSide::default(),
            seat: facts.seat,
            works: PerSide::default(),
            ranges: Vec::new(),
            actions: Vec::new(),
            moments: Vec::new(),
            weight_percent: PerSide::default(),
            bends_spine: facts.bends_spine,
            twists_spine: facts.twists_spine,
            resistance: PerSide::default(),
            load_kg: match manner.load {
                Some(Load::Weight { load_kg }) => *load_kg,
                _ => 0.0,
            },
            with_brace: manner.with_brace,
            size: manner.size,
        };
        for side in manner.side.working(manner.operated) {
            done.add_working_side(facts, side, manner.load.is_some());
        }
        done
    }

    fn add_working_side(&mut self, facts: &Facts, working: Side, loaded: bool) {
        let sides_of = |limb: Limb| -> &'static [Side] {
            match (limb, working) {
                (Limb::Trunk, _) => &[Side::Left, Side::Right],
                (Limb::Working, Side::Left) | (Limb::Other, Side::Right) => &[Side::Left],
                (Limb::Working, Side::Right) | (Limb::Other, Side::Left) => &[Side::Right],
            }
        };
        *self.works.get_mut(working) = true;
        *self.resistance.get_mut(working) |= facts.resistance || loaded;
        let weight = facts.weight;
        for (side, percent) in [(working, weight.working_percent), (working.opposite(), weight.other_percent)]
        {
            let peak = self.weight_percent.get_mut(side);
            *peak = peak.max(percent);
        }
        for side in facts.lies_on.iter().flat_map(|limb| sides_of(*limb)) {
            *self.lies_on.get_mut(*side) = true;
        }
        for fact in &facts.ranges {
            let RangeFact { limb, joint, axis, from_deg, to_deg, drive } = *fact;
            self.ranges.extend(sides_of(limb).iter().map(|&side| SidedRange {
                side,
                joint,
                axis,
                from_deg,
                to_deg,
                drive,
            }));
        }
        for fact in &facts.actions {
            let ActionFact { limb, joint, motion, drive } = *fact;
            self.actions.extend(sides_of(limb).iter().map(|&side| SidedAction {
                side,
                joint,
                motion,
                drive,
            }));
        }
        for fact in &facts.moments {
            let MomentFact { limb, joint, motion, drive, .. } = *fact;
            let nm_per_kg = self.moment_nm_per_kg(fact);
            self.moments.extend(sides_of(limb).iter().map(|&side| SidedMoment {
                side,
                joint,
                motion,
                nm_per_kg,
                drive,
            }));
        }
    }

    fn moment_nm_per_kg(&self, fact: &MomentFact) -> f64 {
        let added = self.load_kg * GRAVITY * fact.load_lever / self.size.least_mass_kg();
        self.size.worst_height_m() * (fact.nm_per_kg_per_m + added)
    }

    /// Whether a side carries an outside load or body weight.
    pub fn is_loaded(&self, side: Side) -> bool {
        *self.resistance.get(side) || *self.weight_percent.get(side) > 0.0
    }
}

/// Rounded to 0.1, counted in tenths: how degrees, kilograms and per cent are compared.
#[expect(clippy::cast_possible_truncation, reason = "bounds keep values far below 2^53")]
pub fn tenths(value: f64) -> i64 {
    (value * 10.0).round() as i64
}

/// Rounded to 0.001, counted in thousandths: how moments are compared.
#[expect(clippy::cast_possible_truncation, reason = "bounds keep values far below 2^53")]
pub fn thousandths(value: f64) -> i64 {
    (value * 1000.0).round() as i64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_direction_reads_its_end_of_the_range() {
        assert_eq!(tenths(Motion::Flexion.reach(-15.0, 70.0)), 700);
        assert_eq!(tenths(Motion::Extension.reach(-15.0, 70.0)), 150);
        assert_eq!(tenths(Motion::Extension.reach(30.0, 0.0)), 0);
        assert_eq!(tenths(Motion::Adduction.reach(0.0, 25.0)), 0);
        assert_eq!(tenths(Motion::Twisting.reach(-30.0, 10.0)), 300);
    }

    #[test]
    fn the_side_as_performed_follows_the_operated_side() {
        use ItemSide::{Alternating, BothTogether, OneAfterTheOther, Operated, Other};
        let working = |side: ItemSide, operated| side.working(operated);
        assert_eq!(working(Operated, OperatedSide::Right), [Side::Right]);
        assert_eq!(working(Other, OperatedSide::Right), [Side::Left]);
        for both in [BothTogether, OneAfterTheOther, Alternating] {
            assert_eq!(working(both, OperatedSide::Right), [Side::Right, Side::Left]);
        }
        assert_eq!(working(Operated, OperatedSide::Neither), Side::BOTH);
        assert_eq!(working(Other, OperatedSide::Both), Side::BOTH);
    }
}
