//! A figure that does a movement.

use sendaluna_core::facts::Side;
use sendaluna_core::ids::ItemId;
use sendaluna_figure::Part;
use serde::{Deserialize, Serialize};

/// Which figure. The same question always has the same answer while a plan is in force.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FigureAsked {
    /// Of which item.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub item: ItemId,
    /// In its easier variant.
    pub easier: bool,
    /// Which side works, and is near.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::WorkingName"))]
    pub working: Side,
    /// Both sides do the same together.
    pub both: bool,
}

/// A figure: shapes in the order in which they are painted, each with its numbers for every frame of
/// the way out. Lengths are hundredths of stature, y downwards.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FigureView {
    /// Left, top, width and height of everything in every frame.
    pub view: [f64; 4],
    /// The shapes, the farthest first.
    pub shapes: Vec<ShapeView>,
}

/// A shape.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ShapeView {
    /// What it is, which says how it is painted.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PartName"))]
    pub part: Part,
    /// An SVG path with `~` for each number.
    pub form: String,
    /// The numbers: one list if it stays as it is, else one for each frame.
    pub frames: Vec<Vec<f64>>,
}
