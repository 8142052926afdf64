//! Whether an exercise, as performed, breaks a precaution, and by how much.

use crate::facts::{
    Drive, Joint, Motion, Performed, Position, Seat, Side, SidedAction, Surface, tenths, thousandths,
};
use crate::precaution::{
    DailyRule, ForbiddenPosition, Only, Precaution, PrecautionSide, RangeOver, Rule, WeightBearing,
};

/// How close to a range limit the clinic is warned, in tenths of a degree.
const NEAR_TENTHS: i64 = 100;

/// By how much an exercise breaks a precaution.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measured {
    /// It simply is what is not allowed.
    Is,
    /// A quantity over its limit.
    Over {
        /// What was measured.
        quantity: Quantity,
        /// On which side.
        side: Side,
        /// What it reaches: tenths of a degree, of a kilogram or of a per cent; thousandths of N·m/kg.
        reaches: i64,
        /// What is allowed, in the same unit.
        allowed: i64,
    },
}

/// What was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    /// An angle, in tenths of a degree.
    AngleTenths(Joint, Motion),
    /// A moment, in thousandths of N·m/kg.
    MomentThousandths(Joint, Motion),
    /// Weight on a leg, in tenths of a per cent of body weight.
    WeightPercentTenths,
    /// Weight on a leg, in tenths of a kilogram.
    WeightKgTenths,
}

/// By how much an exercise breaks a precaution; `None` if it does not.
pub fn breach(precaution: &Precaution, performed: &Performed) -> Option<Measured> {
    let side = precaution.side;
    match &precaution.rule {
        Rule::Movement { family } => is(performed.family == *family
            && Side::BOTH.iter().any(|s| side.covers(*s) && *performed.works.get(*s))),
        Rule::Range { joint, motion, most_deg, only } => reach(performed, side, *joint, *motion, only)
            .and_then(|(s, reaches)| {
                over(Quantity::AngleTenths(*joint, *motion), s, reaches, tenths(*most_deg))
            }),
        Rule::Together { ranges } => is(Side::BOTH
            .iter()
            .any(|s| side.covers(*s) && ranges.iter().all(|range| is_beyond(performed, *s, range)))),
        Rule::Action { joint, motion, assisted_allowed } => is(performed.actions.iter().any(|action| {
            side.covers(action.side)
                && action.joint == *joint
                && action.motion == *motion
                && works(action.drive, *assisted_allowed)
        })),
        Rule::Moment { joint, motion, most_nm_per_kg } => performed
            .moments
            .iter()
            .filter(|m| side.covers(m.side) && m.joint == *joint && m.motion == *motion)
            .filter(|m| matches!(m.drive, Drive::Active | Drive::Isometric))
            .map(|m| (m.side, thousandths(m.nm_per_kg)))
            .max_by_key(|(_, moment)| *moment)
            .and_then(|(s, moment)| {
                over(Quantity::MomentThousandths(*joint, *motion), s, moment, thousandths(*most_nm_per_kg))
            }),
        Rule::Position { not } => is(is_in(performed, side, *not)),
        Rule::WeightBearing { term, most_kg, most_percent } => {
            too_much_weight(performed, side, *term, *most_kg, *most_percent)
        }
        Rule::Resistance {} => {
            is(Side::BOTH.iter().any(|s| side.covers(*s) && *performed.resistance.get(*s)))
        }
        Rule::Brace { .. } => {
            is(!performed.with_brace && Side::BOTH.iter().any(|s| side.covers(*s) && is_used(performed, *s)))
        }
        Rule::Spine { no_bending, no_twisting, lift_most_kg } => {
            let lifts_too_much = lift_most_kg.is_some_and(|most| tenths(performed.load_kg) > tenths(most));
            is((*no_bending && performed.bends_spine)
                || (*no_twisting && performed.twists_spine)
                || lifts_too_much)
        }
        Rule::Daily { rule } => is(match rule {
            DailyRule::ChairNotBelowKnee => performed.seat == Some(Seat::Low),
            DailyRule::LegsNotCrossed => {
                reach(performed, side, Joint::Hip, Motion::Adduction, &[]).is_some_and(|(_, reach)| reach > 0)
            }
            _ => false,
        }),
    }
}

/// How close an exercise comes to a range limit that it keeps, if that is within 10°.
pub fn near_limit(precaution: &Precaution, performed: &Performed) -> Option<Measured> {
    let Rule::Range { joint, motion, most_deg, only } = &precaution.rule else { return None };
    let (side, reaches) = reach(performed, precaution.side, *joint, *motion, only)?;
    let allowed = tenths(*most_deg);
    // What stays on the other side of neutral comes close to nothing.
    let goes_there = reaches > 0 || allowed < 0;
    (goes_there && reaches <= allowed && allowed - reaches < NEAR_TENTHS).then_some(Measured::Over {
        quantity: Quantity::AngleTenths(*joint, *motion),
        side,
        reaches,
        allowed,
    })
}

/// Whether a side works, bears weight, or holds anything.
fn is_used(performed: &Performed, side: Side) -> bool {
    let holds = |action: &SidedAction| action.side == side && action.drive != Drive::Passive;
    *performed.works.get(side)
        || *performed.weight_percent.get(side) > 0.0
        || performed.actions.iter().any(holds)
}

fn is(broken: bool) -> Option<Measured> {
    broken.then_some(Measured::Is)
}

fn over(quantity: Quantity, side: Side, reaches: i64, allowed: i64) -> Option<Measured> {
    (reaches > allowed).then_some(Measured::Over { quantity, side, reaches, allowed })
}

fn works(drive: Drive, assisted_allowed: bool) -> bool {
    match drive {
        Drive::Active | Drive::Isometric => true,
        Drive::Assisted => !assisted_allowed,
        Drive::Passive => false,
    }
}

/// The furthest reach on a covered side under the conditions, in tenths of a degree. A joint of
/// which a movement says nothing rests at neutral.
fn reach(
    performed: &Performed,
    side: PrecautionSide,
    joint: Joint,
    motion: Motion,
    only: &[Only],
) -> Option<(Side, i64)> {
    let without_brace = !only.contains(&Only::WithoutBrace) || !performed.with_brace;
    let active = |drive: Drive| !only.contains(&Only::Active) || drive != Drive::Passive;
    let loaded = |s: Side| !only.contains(&Only::Loaded) || performed.is_loaded(s);
    let reach_of = |s: Side| {
        let said: Vec<_> = performed
            .ranges
            .iter()
            .filter(|r| r.side == s)
            .filter_map(|r| Some((r.drive, r.reach_tenths(joint, motion)?)))
            .collect();
        if said.is_empty() {
            return active(Drive::Passive).then_some((s, 0));
        }
        said.into_iter().filter(|(drive, _)| active(*drive)).map(|(_, reach)| (s, reach)).max_by_key(|r| r.1)
    };
    Side::BOTH
        .into_iter()
        .filter(|s| side.covers(*s) && without_brace && loaded(*s))
        .filter_map(reach_of)
        .max_by_key(|r| r.1)
}

/// Whether a joint goes beyond a limit; one of which a movement says nothing rests at neutral.
fn is_beyond(performed: &Performed, side: Side, range: &RangeOver) -> bool {
    let reaches = performed.ranges.iter().filter(|r| r.side == side);
    let reach = reaches.filter_map(|r| r.reach_tenths(range.joint, range.motion)).max();
    reach.unwrap_or(0) > tenths(range.over_deg)
}

fn is_in(performed: &Performed, side: PrecautionSide, not: ForbiddenPosition) -> bool {
    let position = performed.position;
    match not {
        ForbiddenPosition::OnTheFloor => performed.surface == Surface::Floor,
        ForbiddenPosition::Prone => position == Position::Prone,
        ForbiddenPosition::Supine => matches!(position, Position::Supine | Position::HookLying),
        ForbiddenPosition::LyingOnSide => {
            Side::BOTH.iter().any(|s| side.covers(*s) && *performed.lies_on.get(*s))
        }
        ForbiddenPosition::Kneeling => matches!(position, Position::Kneeling | Position::HandsAndKnees),
        ForbiddenPosition::Standing => matches!(position, Position::Standing | Position::BentOver),
        ForbiddenPosition::LowSeat => performed.seat == Some(Seat::Low),
    }
}

fn too_much_weight(
    performed: &Performed,
    side: PrecautionSide,
    term: WeightBearing,
    most_kg: Option<f64>,
    most_percent: Option<f64>,
) -> Option<Measured> {
    let none_at_all = term == WeightBearing::NonWeightBearing;
    let covered = Side::BOTH.into_iter().filter(|s| side.covers(*s));
    let percent = covered.map(|s| (s, *performed.weight_percent.get(s))).max_by(|a, b| a.1.total_cmp(&b.1));
    let (s, percent) = percent?;
    match (most_percent, most_kg) {
        _ if none_at_all => over(Quantity::WeightPercentTenths, s, tenths(percent), 0),
        (Some(most), _) => over(Quantity::WeightPercentTenths, s, tenths(percent), tenths(most)),
        (None, Some(most)) => {
            let kg = percent / 100.0 * performed.size.most_mass_kg();
            over(Quantity::WeightKgTenths, s, tenths(kg), tenths(most))
        }
        (None, None) => None,
    }
}
