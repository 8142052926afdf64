//! Draws a person doing a movement, from the same poses that the gates are worked out from: what the
//! patient sees is what was checked.
//!
//! A [`Drawing`] is plain data: shapes in the order in which they are painted, each with its numbers
//! for every frame of the way out, so that a window can put any moment between two frames. [`svg`]
//! writes stills. Lengths are hundredths of stature, y downwards.

use glam::DVec3;
use sendaluna_core::library::{Moment, Movement};
use serde::Serialize;

mod body;
mod camera;
mod limit;
mod path;
mod place;
mod props;
pub mod sheet;
mod showing;
pub mod svg;

use camera::View;
use path::Path;
pub use showing::{Limit, Showing};

/// Frames of the way out, the first and the last included.
const FRAMES: u32 = 13;
/// Room around everything.
const ROOM: f64 = 3.0;

/// A drawing of a movement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Drawing {
    /// Left, top, width, height of everything in every frame.
    pub view: [f64; 4],
    /// The shapes, the farthest first.
    pub shapes: Vec<Shape>,
}

/// A shape.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Shape {
    /// What it is, which says how it is painted.
    pub part: Part,
    /// An SVG path with `~` for each number.
    pub form: String,
    /// The numbers: one list if it stays as it is, else one for each frame.
    pub frames: Vec<Vec<f64>>,
}

/// What a shape is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    /// Ground, floor: a line.
    Ground,
    /// The shadow on it.
    Shadow,
    /// The upper face of furniture.
    Top,
    /// Its other faces.
    Face,
    /// Its lines.
    Line,
    /// Something soft: pillow, roll.
    Soft,
    /// Something carried or worn: stick, band, strap, ankle weight.
    Carried,
    /// A limb of the far side.
    Far,
    /// A limb of the far side that was operated on.
    FarOperated,
    /// Trunk, head, or a limb of the near side.
    Near,
    /// A limb of the near side that was operated on.
    NearOperated,
    /// How far a joint may go.
    Arc,
    /// Where that ends.
    Tick,
}

impl Part {
    /// Every part.
    pub const ALL: [Self; 13] = [
        Self::Ground,
        Self::Shadow,
        Self::Top,
        Self::Face,
        Self::Line,
        Self::Soft,
        Self::Carried,
        Self::Far,
        Self::FarOperated,
        Self::Near,
        Self::NearOperated,
        Self::Arc,
        Self::Tick,
    ];
}

/// Shapes in the making: where they are and how far away, moment by moment.
struct Piece {
    part: Part,
    depth: f64,
    frames: Vec<Path>,
}

/// Draws a movement, with every frame of its way out.
pub fn draw(movement: &Movement, showing: &Showing) -> Drawing {
    let frame = |n: u32| f64::from(n) / f64::from(FRAMES - 1);
    draw_at(movement, showing, &(0..FRAMES).map(frame).collect::<Vec<_>>())
}

/// Draws a movement at some shares of its way out, in rising order and at least one: its frames. A
/// held pose has one frame only.
pub fn draw_at(movement: &Movement, showing: &Showing, shares: &[f64]) -> Drawing {
    let course = movement.course(showing.working, showing.both);
    let held = course.form().poses.len() == 1 || shares.is_empty();
    let shares = if held { &[0.0] } else { shares };
    let moments: Vec<Moment> = shares.iter().map(|share| course.at(*share)).collect();
    let view = View::new(course.form().place.camera, showing.working);
    let mut pieces = place::pieces(&course, &moments, &view);
    pieces.extend(body::pieces(&course, &moments, &view, showing));
    pieces.extend(props::pieces(&course, &moments, &view));
    if let Some(limit) = &showing.limit {
        pieces.extend(limit::pieces(&course, &moments, &view, limit));
    }
    pieces.sort_by(|a, b| b.depth.total_cmp(&a.depth));
    let view = view_of(&pieces);
    Drawing { view, shapes: pieces.into_iter().map(Piece::into_shape).collect() }
}

impl Piece {
    fn still(part: Part, depth: f64, path: Path) -> Self {
        Self { part, depth, frames: vec![path] }
    }

    fn into_shape(self) -> Shape {
        let moves = self.frames.iter().any(|frame| frame.numbers != self.frames[0].numbers);
        let keep = if moves { self.frames.len() } else { 1 };
        let form = self.frames[0].form.clone();
        let frames = self.frames.into_iter().take(keep).map(|frame| frame.numbers).collect();
        Shape { part: self.part, form, frames }
    }
}

fn view_of(pieces: &[Piece]) -> [f64; 4] {
    let corners = pieces.iter().flat_map(|piece| &piece.frames).flat_map(Path::corners);
    let (mut least, mut most) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
    for [x, y] in corners {
        least = [least[0].min(x), least[1].min(y)];
        most = [most[0].max(x), most[1].max(y)];
    }
    [
        path::rounded(least[0] - ROOM),
        path::rounded(least[1] - ROOM),
        path::rounded(most[0] - least[0] + 2.0 * ROOM),
        path::rounded(most[1] - least[1] + 2.0 * ROOM),
    ]
}

/// A point between others.
fn middle(a: DVec3, b: DVec3) -> DVec3 {
    a.lerp(b, 0.5)
}

#[cfg(test)]
mod tests;
