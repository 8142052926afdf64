//! Week by week, exercise by exercise, pain by week.

use sendaluna_core::measure::{Adherence, ItemMeasure, PainWeek, Portion, WeekMeasure};
use serde::Serialize;

use super::Page;

/// Weeks that have a row of their own; earlier ones share one.
const MOST_WEEKS: usize = 14;

/// Days and sets of a week, or of more.
#[derive(Debug, Serialize)]
pub(super) struct WeekRow {
    pub week: String,
    pub due: u32,
    pub whole: u32,
    pub part: u32,
    pub told: u32,
    pub none: u32,
    pub dose: Dose,
    /// It is a sum of other rows.
    pub sum: bool,
}

/// Sets, said, and the bar beside them.
#[derive(Debug, Serialize)]
pub(super) struct Dose {
    pub part: String,
    pub counted: String,
    pub unconfirmed: String,
    pub remembered: String,
    pub beyond: String,
    pub needed: String,
    /// Shares of the prescribed: counted, not confirmed, remembered.
    pub bar: [f64; 3],
}

/// An exercise.
#[derive(Debug, Serialize)]
pub(super) struct ExerciseRow {
    pub name: String,
    pub dose: Dose,
    /// Left out, taken the easier way, done while not allowed.
    pub also: String,
}

/// Pain and effort of a week.
#[derive(Debug, Serialize)]
pub(super) struct PainRow {
    pub week: String,
    pub rest: String,
    pub during: String,
    pub after: String,
    pub morning: String,
    pub effort: String,
}

impl Page<'_> {
    fn dose(&self, portion: &Portion) -> Dose {
        let sets = |sets: f64| if sets > 0.0 { self.speaker.sets(sets) } else { "–".to_string() };
        let share = |sets: f64| {
            if portion.prescribed > 0 { sets / f64::from(portion.prescribed) } else { 0.0 }
        };
        Dose {
            part: self.speaker.part(portion),
            counted: sets(portion.counted),
            unconfirmed: sets(portion.not_confirmed),
            remembered: sets(portion.remembered),
            beyond: sets(portion.beyond),
            needed: sets(portion.as_needed),
            bar: [share(portion.counted), share(portion.not_confirmed), share(portion.remembered)],
        }
    }

    fn row(&self, week: String, of: &Adherence, sum: bool) -> WeekRow {
        WeekRow {
            week,
            due: of.days_due,
            whole: of.whole,
            part: of.part,
            told: of.stopped_as_told,
            none: of.no_record,
            dose: self.dose(&of.dose),
            sum,
        }
    }

    pub(super) fn week_rows(&self) -> Vec<WeekRow> {
        let measures = self.printed.reported.measures;
        let (earlier, own) = measures.weeks.split_at(measures.weeks.len().saturating_sub(MOST_WEEKS));
        let mut rows = Vec::new();
        if let (Some(first), Some(last)) = (earlier.first(), earlier.last()) {
            let args = [("first", first.week.into()), ("last", last.week.into())];
            let title = self.words.say("report-page-weeks-from", &args);
            rows.push(self.row(title, &Adherence::sum(earlier.iter().map(|week| &week.all)), true));
        }
        rows.extend(own.iter().map(|week| self.row(week.week.to_string(), &week.all, false)));
        rows.push(self.row(self.say("report-page-all"), &measures.overall, true));
        if measures.days.iter().any(|day| day.in_break) {
            rows.push(self.row(self.say("report-page-bare"), &measures.without_breaks, true));
        }
        rows
    }

    pub(super) fn exercise_rows(&self) -> Vec<ExerciseRow> {
        let row = |item: &ItemMeasure| ExerciseRow {
            name: self.speaker.name(&item.item),
            dose: self.dose(&item.all),
            also: said_or_dash(&self.speaker.also(item)),
        };
        self.printed.reported.measures.items.iter().map(row).collect()
    }

    pub(super) fn pain_rows(&self) -> Vec<PainRow> {
        let measures = self.printed.reported.measures;
        let answered = |week: &&PainWeek| {
            [week.before, week.during, week.after, week.next_morning, week.effort].iter().any(Option::is_some)
        };
        let row = |week: &PainWeek| PainRow {
            week: week.week.to_string(),
            rest: self.speaker.levels(week.before.as_ref()),
            during: self.speaker.levels(week.during.as_ref()),
            after: self.speaker.levels(week.after.as_ref()),
            morning: self.speaker.levels(week.next_morning.as_ref()),
            effort: self.speaker.levels(week.effort.as_ref()),
        };
        let mut rows: Vec<PainRow> =
            measures.feeling.weeks.iter().rev().filter(answered).take(MOST_WEEKS).map(row).collect();
        rows.reverse();
        rows
    }

    /// The first and the last week that are measured.
    pub(super) fn weeks_between(&self) -> Option<(u16, u16)> {
        let weeks: &[WeekMeasure] = &self.printed.reported.measures.weeks;
        Some((weeks.first()?.week, weeks.last()?.week))
    }
}

fn said_or_dash(said: &[String]) -> String {
    if said.is_empty() { "–".to_string() } else { said.join(" ") }
}
