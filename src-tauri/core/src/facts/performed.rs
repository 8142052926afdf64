//! An exercise as performed, left and right, by this person.

use crate::bounds;
use crate::facts::terms::{
    Axis, Drive, ItemSide, Joint, Limb, Motion, OperatedSide, PerSide, Position, Seat, Side, Surface,
};
use crate::facts::{ActionFact, Facts, MomentFact, RangeFact, Resistance};
use crate::ids::{FamilyId, MovementId};
use crate::library::Movement;
use crate::plan::doc::Load;

/// Standard gravity's usual rounding, m/s² (standard acceleration, ISO 80000-3, is 9.80665).
const GRAVITY: f64 = 9.81;

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
        let facts = movement.facts();
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
            done.add_working_side(facts, side, manner.load);
        }
        done
    }

    fn add_working_side(&mut self, facts: &Facts, working: Side, load: Option<&Load>) {
        let sides_of = |limb: Limb| -> &'static [Side] {
            match (limb, working) {
                (Limb::Trunk, _) => &[Side::Left, Side::Right],
                (Limb::Working, Side::Left) | (Limb::Other, Side::Right) => &[Side::Left],
                (Limb::Working, Side::Right) | (Limb::Other, Side::Left) => &[Side::Right],
            }
        };
        *self.works.get_mut(working) = true;
        *self.resistance.get_mut(working) |= facts.resistance != Resistance::None || load.is_some();
        *self.resistance.get_mut(working.opposite()) |= facts.resistance == Resistance::Both;
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
        if matches!(load, Some(Load::Band { .. })) {
            self.add_band(facts, working);
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

    /// A band may pull from anywhere: the muscles of both directions of whatever moves may have to work.
    fn add_band(&mut self, facts: &Facts, side: Side) {
        let moves = |r: &&RangeFact| r.limb == Limb::Working && tenths(r.from_deg) != tenths(r.to_deg);
        for RangeFact { joint, axis, drive, .. } in facts.ranges.iter().filter(moves).copied() {
            if drive != Drive::Passive {
                let motions = [axis.positive(), axis.positive().opposite()];
                self.actions.extend(motions.map(|motion| SidedAction { side, joint, motion, drive }));
            }
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
