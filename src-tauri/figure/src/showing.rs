//! Who does it, and what is to be seen of it.

use chrono::NaiveDate;
use sendaluna_core::facts::{ItemSide, Joint, Limb, Motion, OperatedSide, Side};
use sendaluna_core::library::Movement;
use sendaluna_core::plan::doc::Item;
use sendaluna_core::precaution::{Rule, Standing};

/// Who does it, and what is to be seen of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Showing {
    /// The side that works, and is near.
    pub working: Side,
    /// Both sides do the same together.
    pub both: bool,
    /// The operated side, tinted and hatched.
    pub operated: OperatedSide,
    /// How far a joint may go.
    pub limit: Option<Limit>,
}

impl Showing {
    /// The side that does an item first, and whether both do it together.
    pub fn first_side(item: &Item, operated: OperatedSide) -> (Side, bool) {
        let working = item.side.working(operated).first().copied().unwrap_or(Side::Right);
        (working, item.side == ItemSide::BothTogether)
    }
}

/// How far a joint of the working side may go.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The joint.
    pub joint: Joint,
    /// In which direction.
    pub motion: Motion,
    /// The furthest allowed, in degrees.
    pub most_deg: f64,
}

impl Limit {
    /// The strictest limit that stands on a day to a joint that the movement moves.
    pub fn standing(movement: &Movement, standing: &Standing, day: NaiveDate, working: Side) -> Option<Self> {
        let holds = standing.in_force.iter().filter(|p| p.opens.is_none_or(|opens| day < opens));
        let limits = holds.filter_map(|in_force| match &in_force.precaution.rule {
            Rule::Range { joint, motion, most_deg, .. } if in_force.precaution.side.covers(working) => {
                Some(Self { joint: *joint, motion: *motion, most_deg: *most_deg })
            }
            _ => None,
        });
        limits.filter(|limit| limit.is_moved_by(movement)).min_by(|a, b| a.most_deg.total_cmp(&b.most_deg))
    }

    fn is_moved_by(&self, movement: &Movement) -> bool {
        movement.facts().ranges.iter().any(|range| {
            range.limb == Limb::Working
                && range.joint == self.joint
                && range.axis == self.motion.axis()
                && range.to_deg - range.from_deg > 1.0
        })
    }
}
