//! Many movements on one page, each with its name.

use std::fmt::Write as _;

use crate::svg::{self, Palette};
use crate::{Drawing, svg::LIGHT};

/// A picture of a contact sheet: what it is called, and its drawing.
pub type Entry = (String, Drawing);

const CELL: [f64; 2] = [150.0, 116.0];
const PICTURE: [f64; 2] = [138.0, 84.0];

/// A page of so many columns.
pub fn sheet(entries: &[Entry], columns: usize) -> String {
    let Palette { ground, ink, .. } = LIGHT;
    let columns = columns.max(1);
    let rows = entries.len().div_ceil(columns);
    let [width, height] = [cells(columns, 0), cells(rows, 1)];
    let mut page = format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" font-family="Atkinson Hyperlegible Next, sans-serif">{}<rect width="{width}" height="{height}" fill="{ground}"/>"#,
        svg::hatch(&LIGHT)
    );
    for (n, (name, drawing)) in entries.iter().enumerate() {
        let (x, y) = (cells(n % columns, 0) + 6.0, cells(n / columns, 1) + 6.0);
        let pictures: &[f64] = if drawing.is_still() { &[0.0] } else { &[0.0, 1.0] };
        for (m, share) in pictures.iter().enumerate() {
            let of = if m == 0 { 0.0 } else { 1.0 };
            let [left, top, w, h] = drawing.view;
            // Whoever lies is shown below himself, whoever stands beside himself.
            let (across, down) = match pictures.len() {
                1 => (1.0, 1.0),
                _ if w > 1.4 * h => (1.0, 2.0),
                _ => (2.0, 1.0),
            };
            let [width, height] = [PICTURE[0] / across, PICTURE[1] / down];
            let _ = write!(
                page,
                r#"<svg x="{}" y="{}" width="{width}" height="{height}" viewBox="{left} {top} {w} {h}" preserveAspectRatio="xMidYMax meet">{}</svg>"#,
                x + of * width * (across - 1.0),
                y + of * height * (down - 1.0),
                svg::paths(drawing, *share, &LIGHT)
            );
        }
        let _ = write!(
            page,
            r#"<text x="{x}" y="{}" font-size="6.4" fill="{ink}">{}</text>"#,
            y + PICTURE[1] + 13.0,
            escaped(name)
        );
    }
    page.push_str("</svg>\n");
    page
}

#[expect(clippy::cast_precision_loss, reason = "a page of pictures")]
fn cells(count: usize, axis: usize) -> f64 {
    count as f64 * CELL[axis]
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
