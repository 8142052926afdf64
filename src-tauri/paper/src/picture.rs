//! Figures on paper: the start and the end of a movement, each a still of its own.

use chrono::NaiveDate;
use sendaluna_core::facts::OperatedSide;
use sendaluna_core::library::Movement;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Item;
use sendaluna_core::precaution::Standing;
use sendaluna_figure::svg::{PRINT, still};
use sendaluna_figure::{Limit, Showing, draw};
use serde::Serialize;

/// Pictures of a document, numbered as the template names them.
#[derive(Debug, Default)]
pub(crate) struct Pictures {
    pub svg: Vec<String>,
}

/// A picture on the page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Picture {
    /// Its number.
    pub n: usize,
    /// For whom it cannot be seen.
    pub alt: String,
    /// Width over height.
    pub aspect: f64,
    /// What stands under it.
    pub label: String,
}

/// How the figure of an item is drawn.
pub(crate) struct Drawn<'a> {
    pub plan: &'a Plan,
    pub standing: &'a Standing,
    pub day: NaiveDate,
}

impl Pictures {
    fn put(&mut self, svg: String, aspect: f64, alt: String, label: String) -> Picture {
        self.svg.push(svg);
        Picture { n: self.svg.len() - 1, alt, aspect, label }
    }

    /// A picture that is no figure.
    pub(crate) fn plain(&mut self, svg: String, alt: String, label: String) -> Picture {
        self.put(svg, 1.0, alt, label)
    }

    /// The start and the end, or the only pose; each with its alternative text and its label.
    pub(crate) fn of_item(
        &mut self,
        drawn: &Drawn<'_>,
        item: &Item,
        movement: &Movement,
        said: &[(String, String); 3],
    ) -> Vec<Picture> {
        let operated = drawn.plan.episode(&item.episode).map_or(OperatedSide::Neither, |e| e.side);
        let (working, both) = Showing::first_side(item, operated);
        let limit = Limit::standing(movement, drawn.standing, drawn.day, working);
        let drawing = draw(movement, &Showing { working, both, operated, limit });
        let [_, _, width, height] = drawing.view;
        let [start, end, only] = said.clone();
        let shares: &[(f64, (String, String))] =
            if drawing.is_still() { &[(0.0, only)] } else { &[(0.0, start), (1.0, end)] };
        let still = |(share, (alt, label)): &(f64, (String, String))| {
            self.put(still(&drawing, *share, &PRINT), width / height, alt.clone(), label.clone())
        };
        shares.iter().map(still).collect()
    }
}
