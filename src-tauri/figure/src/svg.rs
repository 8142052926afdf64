//! Stills, as SVG.

use std::fmt::Write as _;

use crate::{Drawing, Part, Shape};

/// Colours of a still.
#[derive(Debug, Clone, Copy)]
pub struct Palette {
    /// What the figure stands on.
    pub ground: &'static str,
    /// Near limbs.
    pub ink: &'static str,
    /// Far limbs, furniture.
    pub edge: &'static str,
    /// The operated side.
    pub operated: &'static str,
    /// The arc of what is allowed.
    pub limit: &'static str,
}

/// Ink on the sheet of the light theme.
pub const LIGHT: Palette =
    Palette { ground: "#FCF8EF", ink: "#241C14", edge: "#857661", operated: "#9C5A2B", limit: "#431645" };

/// Ink on white paper.
pub const PRINT: Palette =
    Palette { ground: "#FFFFFF", ink: "#241C14", edge: "#857661", operated: "#9C5A2B", limit: "#431645" };

/// A still of a frame; a share of 1 is the end of the way out.
pub fn still(drawing: &Drawing, share: f64, palette: &Palette) -> String {
    let [left, top, width, height] = drawing.view;
    let mut svg = format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="{left} {top} {width} {height}">{}"#,
        hatch(palette)
    );
    svg.push_str(&paths(drawing, share, palette));
    svg.push_str("</svg>\n");
    svg
}

/// Stills side by side: the first frame and the last, or the only one.
pub fn stills(drawing: &Drawing, palette: &Palette) -> String {
    if drawing.is_still() {
        return still(drawing, 0.0, palette);
    }
    let [left, top, width, height] = drawing.view;
    let gap = 6.0;
    let mut svg = format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="{left} {top} {} {height}">{}"#,
        2.0 * width + gap,
        hatch(palette)
    );
    svg.push_str(&paths(drawing, 0.0, palette));
    let _ = write!(svg, r#"<g transform="translate({} 0)">"#, width + gap);
    svg.push_str(&paths(drawing, 1.0, palette));
    svg.push_str("</g></svg>\n");
    svg
}

/// The pattern that operated limbs are filled with, beside their tint.
pub fn hatch(palette: &Palette) -> String {
    format!(
        r#"<defs><pattern id="hatch" width="3" height="3" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="3" height="3" fill="{}"/><rect width="0.9" height="3" fill="{}"/></pattern></defs>"#,
        palette.operated, palette.ground
    )
}

/// The paths of a frame, without the element around them.
pub fn paths(drawing: &Drawing, share: f64, palette: &Palette) -> String {
    let mut svg = String::new();
    for shape in &drawing.shapes {
        let _ = write!(svg, r#"<path d="{}" {}/>"#, shape.at(share), paint(shape.part, palette));
    }
    svg
}

impl Drawing {
    /// Whether nothing in it moves.
    pub fn is_still(&self) -> bool {
        self.shapes.iter().all(|shape| shape.frames.len() == 1)
    }
}

impl Shape {
    /// The path at a share of the way out, between the two frames about it.
    pub fn at(&self, share: f64) -> String {
        #[expect(clippy::cast_precision_loss, reason = "a handful of frames")]
        let at = share.clamp(0.0, 1.0) * (self.frames.len() - 1) as f64;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "from 0 to the last frame"
        )]
        let (before, part) = (at.floor() as usize, at.fract());
        let after = (before + 1).min(self.frames.len() - 1);
        let mut numbers = self.frames[before].iter().zip(&self.frames[after]);
        let mut path = String::with_capacity(self.form.len() * 4);
        for letter in self.form.chars() {
            match letter {
                '~' => {
                    let (a, b) = numbers.next().unwrap_or((&0.0, &0.0));
                    let _ = write!(path, "{}", crate::path::rounded(a + (b - a) * part));
                }
                letter => path.push(letter),
            }
        }
        path
    }
}

fn paint(part: Part, palette: &Palette) -> String {
    let Palette { ground, ink, edge, limit, .. } = palette;
    let limb =
        |fill: &str| format!(r#"fill="{fill}" stroke="{ground}" stroke-width="1.6" paint-order="stroke""#);
    let line = |stroke: &str, width: f64| {
        format!(
            r#"fill="none" stroke="{stroke}" stroke-width="{width}" stroke-linecap="round" stroke-linejoin="round""#
        )
    };
    match part {
        Part::Near => limb(ink),
        Part::Far => limb(edge),
        Part::NearOperated | Part::FarOperated => limb("url(#hatch)"),
        Part::Shadow => format!(r#"fill="{edge}" fill-opacity="0.35""#),
        Part::Ground => line(edge, 0.8),
        Part::Top => format!(
            r#"fill="{edge}" fill-opacity="0.18" stroke="{edge}" stroke-width="0.8" stroke-linejoin="round""#
        ),
        Part::Face => format!(
            r#"fill="{edge}" fill-opacity="0.34" stroke="{edge}" stroke-width="0.8" stroke-linejoin="round""#
        ),
        Part::Soft => format!(r#"fill="{ground}" stroke="{edge}" stroke-width="1.2""#),
        Part::Line => line(edge, 1.6),
        Part::Carried => line(ink, 1.5),
        Part::Arc => line(limit, 0.9),
        Part::Tick => line(limit, 1.6),
    }
}
