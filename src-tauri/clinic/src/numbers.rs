//! What each item of a plan asks of the body: the numbers that are held against precautions.

use sendaluna_core::facts::{
    Axis, Drive, Joint, Motion, Performed, Position, Seat, Side, Surface, tenths, thousandths,
};
use sendaluna_core::library::Library;
use sendaluna_core::plan::doc::PlanDoc;
use serde::Serialize;

/// A joint at rest that is bent by less is not worth a line, in degrees.
const BENT_DEG: f64 = 30.0;

/// What an item, or a movement, asks of the body, left and right.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `Performed`")]
pub struct NumbersView {
    /// The item, or the movement itself.
    pub of: String,
    pub movement: String,
    pub family: String,
    pub position: Position,
    pub surface: Surface,
    pub seat: Option<Seat>,
    pub ranges: Vec<RangeView>,
    pub actions: Vec<ActionView>,
    pub moments: Vec<MomentView>,
    pub weight_percent: [f64; 2],
    pub bends_spine: bool,
    pub twists_spine: bool,
    pub resistance: bool,
}

/// A range, in degrees.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `SidedRange`")]
pub struct RangeView {
    pub side: Side,
    pub joint: Joint,
    pub axis: Axis,
    pub from_deg: f64,
    pub to_deg: f64,
    pub drive: Drive,
}

/// A muscle action.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `SidedAction`")]
pub struct ActionView {
    pub side: Side,
    pub joint: Joint,
    pub motion: Motion,
    pub drive: Drive,
}

/// A peak moment, gravity's share: an estimate.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `SidedMoment`")]
pub struct MomentView {
    pub side: Side,
    pub joint: Joint,
    pub motion: Motion,
    pub nm_per_kg: f64,
    pub drive: Drive,
}

/// What every item of a plan asks, its easier variant included.
pub fn numbers(doc: &PlanDoc, library: &Library) -> Vec<NumbersView> {
    let mut all = Vec::new();
    for item in &doc.items {
        let movements = [Some(&item.movement), item.easier.as_ref().map(|easier| &easier.movement)];
        for movement in movements.into_iter().flatten() {
            let found = library.find_in(doc, movement).zip(doc.manner(item, &item.dose));
            if let Some((found, manner)) = found {
                all.push(of_performed(item.id.as_str(), &Performed::new(found.movement(), &manner)));
            }
        }
    }
    all
}

/// What an exercise, as performed, asks.
pub fn of_performed(of: &str, done: &Performed) -> NumbersView {
    let mut view = NumbersView {
        of: of.to_string(),
        movement: done.movement.to_string(),
        family: done.family.to_string(),
        position: done.position,
        surface: done.surface,
        seat: done.seat,
        ranges: Vec::new(),
        actions: Vec::new(),
        moments: Vec::new(),
        weight_percent: [done.weight_percent.left, done.weight_percent.right],
        bends_spine: done.bends_spine,
        twists_spine: done.twists_spine,
        resistance: done.resistance.left || done.resistance.right,
    };
    for range in &done.ranges {
        let said = RangeView {
            side: range.side,
            joint: range.joint,
            axis: range.axis,
            from_deg: range.from_deg,
            to_deg: range.to_deg,
            drive: range.drive,
        };
        if !view.ranges.contains(&said) {
            view.ranges.push(said);
        }
    }
    for action in &done.actions {
        let (side, joint, motion, drive) = (action.side, action.joint, action.motion, action.drive);
        let said = ActionView { side, joint, motion, drive };
        if !view.actions.contains(&said) {
            view.actions.push(said);
        }
    }
    for moment in &done.moments {
        add_moment(&mut view.moments, moment);
    }
    view
}

/// The greatest of each joint and direction.
fn add_moment(all: &mut Vec<MomentView>, moment: &sendaluna_core::facts::SidedMoment) {
    let (side, joint, motion, drive) = (moment.side, moment.joint, moment.motion, moment.drive);
    let nm_per_kg = rounded(thousandths(moment.nm_per_kg), 1000.0);
    match all.iter_mut().find(|m| (m.side, m.joint, m.motion, m.drive) == (side, joint, motion, drive)) {
        Some(known) => known.nm_per_kg = known.nm_per_kg.max(nm_per_kg),
        None => all.push(MomentView { side, joint, motion, nm_per_kg, drive }),
    }
}

#[expect(clippy::cast_precision_loss, reason = "bounds keep values far below 2^53")]
fn rounded(count: i64, per_unit: f64) -> f64 {
    count as f64 / per_unit
}

impl RangeView {
    /// Whether it says more than that the joint is at rest, about straight.
    pub fn is_telling(&self) -> bool {
        let moves = tenths(self.from_deg) != tenths(self.to_deg);
        let held = self.drive != Drive::Passive && tenths(self.to_deg) != 0;
        moves || held || self.to_deg.abs() >= BENT_DEG
    }
}
