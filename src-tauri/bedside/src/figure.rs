//! How does somebody look who does this exercise?

use sendaluna_core::facts::{OperatedSide, Side};
use sendaluna_core::gate::GateDay;
use sendaluna_core::library::Library;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Item;
use sendaluna_core::precaution::Standing;
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
    let limit = Limit::standing(found.movement(), standing, at.day(), asked.working);
    let showing = Showing { working: asked.working, both: asked.both, operated: operated(plan, item), limit };
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
    let (working, both) = Showing::first_side(item, operated(plan, item));
    FigureAsked { item: item.id.clone(), easier: false, working, both }
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
