//! Pain by week, drawn: the table beside it says the same.

use std::fmt::Write as _;

use sendaluna_core::measure::{Levels, PainWeek};

use super::Page;
use crate::picture::{Picture, Pictures};

/// Size of the plotted field, in units of the drawing.
const WIDTH: f64 = 620.0;
const HEIGHT: f64 = 100.0;
/// Room for the marks at the edges.
const ROOM: f64 = 6.0;
const INK: &str = "#241C14";
const EDGE: &str = "#857661";

impl Page<'_> {
    /// The chart; none if nobody answered.
    pub(super) fn chart(&self, pictures: &mut Pictures) -> Option<Picture> {
        let weeks = &self.printed.reported.measures.feeling.weeks;
        let answered: Vec<(usize, &PainWeek)> =
            weeks.iter().enumerate().filter(|(_, w)| w.before.is_some() || w.during.is_some()).collect();
        if answered.is_empty() {
            return None;
        }
        let said = answered.iter().filter_map(|(_, week)| {
            let levels = self.speaker.levels(Some(week.before.as_ref()?));
            let args = [("week", week.week.into()), ("levels", levels.into())];
            Some(self.words.say("report-page-chart-week", &args))
        });
        let said = said.collect::<Vec<_>>().join(&self.say("list-semicolon"));
        let alt = self.words.say("report-page-chart", &[("said", said.into())]);
        let (first, last) = self.weeks_between()?;
        let label =
            self.words.say("report-page-weeks-from", &[("first", first.into()), ("last", last.into())]);
        Some(pictures.plain(drawn(weeks), alt, label))
    }
}

fn drawn(weeks: &[PainWeek]) -> String {
    let mut svg = format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="{} {} {} {}">"#,
        -ROOM,
        -ROOM,
        WIDTH + 2.0 * ROOM,
        HEIGHT + 2.0 * ROOM
    );
    for level in (0..=10).step_by(2) {
        let y = height(f64::from(level));
        let _ = write!(svg, r#"<path d="M0 {y}H{WIDTH}" stroke="{EDGE}" stroke-width="0.5"/>"#);
    }
    let rest: Vec<(f64, &Levels)> = weeks
        .iter()
        .enumerate()
        .filter_map(|(n, w)| Some((at(n, weeks.len()), w.before.as_ref()?)))
        .collect();
    for (x, levels) in &rest {
        let (top, foot) = (height(levels.most.into()), height(levels.least.into()));
        let _ = write!(
            svg,
            r#"<path d="M{x:.1} {top:.1}V{foot:.1}" stroke="{INK}" stroke-width="1.2" stroke-opacity="0.55"/>"#
        );
    }
    let line: Vec<String> =
        rest.iter().map(|(x, levels)| format!("{x:.1} {:.1}", height(levels.median))).collect();
    let _ = write!(svg, r#"<path d="M{}" fill="none" stroke="{INK}" stroke-width="1.4"/>"#, line.join("L"));
    for (x, levels) in &rest {
        let y = height(levels.median);
        let _ = write!(svg, r#"<circle cx="{x:.1}" cy="{y:.1}" r="2.4" fill="{INK}"/>"#);
    }
    for (n, week) in weeks.iter().enumerate() {
        let Some(during) = &week.during else { continue };
        let (x, y) = (at(n, weeks.len()), height(during.median));
        let _ = write!(
            svg,
            r#"<path d="M{:.1} {:.1}l5 5m0 -5l-5 5" fill="none" stroke="{INK}" stroke-width="1.1"/>"#,
            x - 2.5,
            y - 2.5
        );
    }
    svg.push_str("</svg>");
    svg
}

fn height(level: f64) -> f64 {
    HEIGHT * (1.0 - level / 10.0)
}

/// The middle of a week's column.
#[expect(clippy::cast_precision_loss, reason = "weeks of a life")]
fn at(week: usize, of: usize) -> f64 {
    WIDTH * (week as f64 + 0.5) / of as f64
}
