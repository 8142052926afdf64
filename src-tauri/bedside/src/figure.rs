//! How does somebody look who does this exercise?

use sendaluna_core::facts::{ItemSide, Limb, OperatedSide, Side};
use sendaluna_core::gate::GateDay;
use sendaluna_core::library::{Library, Movement};
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Item;
use sendaluna_core::precaution::{Rule, Standing};
use sendaluna_core::session::SidesAtOnce;
use sendaluna_figure::{Drawing, Limit, Shape, Showing, draw};

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::Bedside;
use crate::view::figure::{FigureAsked, FigureView, ShapeView};

impl Bedside {
    /// The figure of an item, with the limit that a precaution sets to what moves in it; `None` if this
    /// version does not know the movement. Looking at a gated exercise is not an attempt.
    pub fn figure(&self, asked: &FigureAsked, now: &Now) -> Result<Option<FigureView>, BedsideError> {
        let known = self.known()?;
        let at = known.gate_day(now.at);
        Ok(drawn(self.library(), &known.plan, &known.standing, asked, &at))
    }
}

/// The figure of an item of a plan, in force or offered.
pub(crate) fn drawn(
    library: &Library,
    plan: &Plan,
    standing: &Standing,
    asked: &FigureAsked,
    at: &GateDay,
) -> Option<FigureView> {
    let item = plan.item(&asked.item)?;
    let easier = item.easier.as_ref().filter(|_| asked.easier);
    let movement = easier.map_or(&item.movement, |easier| &easier.movement);
    let found = library.find(plan, movement)?;
    let limit = limit(found.movement(), standing, at, asked.working);
    let operated = operated(plan, item);
    let showing = Showing { working: asked.working, both: asked.both, operated, limit };
    Some(draw(found.movement(), &showing).into())
}

impl From<Drawing> for FigureView {
    fn from(drawing: Drawing) -> Self {
        let shape = |Shape { part, form, frames }| ShapeView { part, form, frames };
        Self { view: drawing.view, shapes: drawing.shapes.into_iter().map(shape).collect() }
    }
}

fn operated(plan: &Plan, item: &Item) -> OperatedSide {
    plan.episode(&item.episode).map_or(OperatedSide::Neither, |episode| episode.side)
}

/// The figure of an item before anything of it was begun: as its first side does it.
pub fn of_item(plan: &Plan, item: &Item) -> FigureAsked {
    let working = item.side.working(operated(plan, item));
    FigureAsked {
        item: item.id.clone(),
        easier: false,
        working: working.first().copied().unwrap_or(Side::Right),
        both: item.side == ItemSide::BothTogether,
    }
}

/// The figure of an item while these sides do it.
pub fn of_sides(asked: &FigureAsked, sides: SidesAtOnce) -> FigureAsked {
    let (working, both) = match sides {
        SidesAtOnce::Left | SidesAtOnce::TurnsFromLeft => (Side::Left, false),
        SidesAtOnce::Right | SidesAtOnce::TurnsFromRight => (Side::Right, false),
        SidesAtOnce::Both => (asked.working, true),
    };
    FigureAsked { working, both, ..asked.clone() }
}

/// The strictest limit that stands today to a joint that the movement moves.
fn limit(movement: &Movement, standing: &Standing, at: &GateDay, working: Side) -> Option<Limit> {
    let holds = standing.in_force.iter().filter(|p| p.opens.is_none_or(|opens| at.day() < opens));
    let limits = holds.filter_map(|in_force| match &in_force.precaution.rule {
        Rule::Range { joint, motion, most_deg, .. } if in_force.precaution.side.covers(working) => {
            Some(Limit { joint: *joint, motion: *motion, most_deg: *most_deg })
        }
        _ => None,
    });
    limits.filter(|limit| moves(movement, limit)).min_by(|a, b| a.most_deg.total_cmp(&b.most_deg))
}

fn moves(movement: &Movement, limit: &Limit) -> bool {
    let axis = limit.motion.axis();
    movement.facts().ranges.iter().any(|range| {
        range.limb == Limb::Working
            && range.joint == limit.joint
            && range.axis == axis
            && range.to_deg - range.from_deg > 1.0
    })
}
