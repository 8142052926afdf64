//! What an exercise asks of the body: as it follows from its movement for a working and another limb,
//! and as performed, left and right.
//!
//! Angles are in degrees with flexion, abduction, internal rotation and dorsiflexion positive; hip
//! flexion is the angle between thigh and trunk. Angles are rounded to 0.1° and moments to
//! 0.001 N·m/kg before any comparison. Moments are estimates of gravity's share only.

mod performed;
mod terms;

pub use performed::{BodySize, Manner, Performed, SidedAction, SidedMoment, SidedRange, tenths, thousandths};
pub use terms::{
    Axis, Drive, ItemSide, Joint, Limb, Motion, OperatedSide, PerSide, Position, Seat, Side, Surface,
};

/// What a movement asks. Sides are relative: working, other.
#[derive(Debug, Clone, PartialEq)]
pub struct Facts {
    /// The position.
    pub position: Position,
    /// What the body is on.
    pub surface: Surface,
    /// In side-lying: which limb lies beneath.
    pub lies_on: Option<Limb>,
    /// How high the seat is, if there is one.
    pub seat: Option<Seat>,
    /// Joint ranges.
    pub ranges: Vec<RangeFact>,
    /// Muscle actions.
    pub actions: Vec<ActionFact>,
    /// Peak static joint moments.
    pub moments: Vec<MomentFact>,
    /// Weight on each leg at its peak.
    pub weight: WeightFact,
    /// The spine bends under way.
    pub bends_spine: bool,
    /// The spine twists under way.
    pub twists_spine: bool,
    /// A band or a weight belongs to it, and on whom it pulls.
    pub resistance: Resistance,
}

/// On whom an outside resistance pulls that belongs to a movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Resistance {
    /// There is none.
    None,
    /// On the working limb.
    Working,
    /// On both: a band round both, or held in both hands.
    Both,
}

/// The range one joint goes through on one axis.
#[derive(Debug, Clone, Copy, PartialEq)]
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
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
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
#[derive(Debug, Clone, Copy, PartialEq)]
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
    pub load_lever: f64,
    /// What drives it.
    pub drive: Drive,
}

/// Peak weight on each leg, in per cent of body weight.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WeightFact {
    /// On the working side's leg.
    pub working_percent: f64,
    /// On the other leg.
    pub other_percent: f64,
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
