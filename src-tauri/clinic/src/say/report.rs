//! A report's top strip: what a therapist sees in thirty seconds.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::library::Library;
use sendaluna_core::measure::{Flag, FlagGroup, ItemMeasure, Measures, Portion};
use sendaluna_say::report::ReportSpeaker;
use serde::Serialize;

use super::ClinicSpeaker;
use crate::report::{Opened, Remark};

/// Days of the strip.
const LAST_DAYS: usize = 7;

/// A report, as a program reads it and as people do.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ReportView {
    /// The clinic's program vouches for it.
    pub vouched_for: bool,
    /// What is to be known of it.
    pub remarks: Vec<Remark>,
    /// The person.
    pub person: String,
    /// What they like to be called.
    pub called: String,
    /// When it was made.
    pub issued_at: DateTime<Utc>,
    /// Its first day.
    pub from: NaiveDate,
    /// Its last day.
    pub through: NaiveDate,
    /// What the patient asks.
    pub asks: Option<String>,
    /// Every figure, worked out again from the record.
    pub measures: Measures,
    /// The same in lines.
    pub lines: Vec<String>,
}

impl ClinicSpeaker<'_> {
    /// The strip, and every figure.
    pub fn report(&self, opened: &Opened) -> ReportView {
        let doc = &opened.report.doc;
        let plan = opened.periods.last().map(|period| &period.plan);
        let called = plan.map(|plan| plan.head().called.clone()).unwrap_or_default();
        ReportView {
            vouched_for: opened.is_vouched_for(),
            remarks: opened.remarks.clone(),
            person: doc.person.to_string(),
            issued_at: doc.issued_at,
            from: doc.from,
            through: doc.through,
            asks: doc.asks.clone(),
            lines: self.strip(opened, &called),
            measures: opened.measures.clone(),
            called,
        }
    }

    /// What was checked, and what was found.
    pub fn checked(&self, opened: &Opened) -> Vec<String> {
        let vouched = if opened.is_vouched_for() { "report-vouched-for" } else { "report-not-vouched-for" };
        let remarks = opened.remarks.iter().map(|remark| self.remark(*remark));
        std::iter::once(self.words.say(vouched, &[])).chain(remarks).collect()
    }

    fn strip(&self, opened: &Opened, called: &str) -> Vec<String> {
        let (doc, measures) = (&opened.report.doc, &opened.measures);
        let library = Library::shipped();
        let speaker = ReportSpeaker::new(self.words, &library, &opened.periods);
        let mut lines = vec![self.words.say(
            if doc.from == doc.through { "report-title-day" } else { "report-title" },
            &[
                ("called", called.into()),
                ("from", self.words.day_and_year(doc.from).into()),
                ("through", self.words.day_and_year(doc.through).into()),
            ],
        )];
        let mut checked = self.checked(opened).into_iter();
        lines.extend(checked.next());
        lines.extend(checked.map(|remark| format!("  {remark}")));
        for group in [FlagGroup::RingToday, FlagGroup::TalkAbout, FlagGroup::TheFile] {
            lines.extend(self.flags(measures, group, &speaker));
        }
        lines.push(self.last_days(measures, &speaker));
        lines.push(self.adherence(measures));
        lines.push(self.sets("report-dose", &measures.overall.dose));
        lines.extend(self.pain(measures));
        if !measures.tests.is_empty() {
            lines.push(self.words.say("report-tests", &[]));
            lines.extend(measures.tests.iter().map(|test| format!("  {}", speaker.home_test(test))));
        }
        lines.extend(measures.least_done().map(|item| self.item("report-worst", item, &speaker)));
        if let Some(asks) = &doc.asks {
            lines.push(self.words.say("report-asks", &[("words", asks.as_str().into())]));
        }
        lines.push(self.words.say("report-exercises", &[]));
        lines.extend(measures.items.iter().filter_map(|item| {
            let id = match item.all {
                Portion { prescribed: 1.., .. } => "report-exercise",
                all if all.as_needed > 0.0 => "report-as-needed",
                all if all.beyond > 0.0 => "report-not-asked",
                _ => return None,
            };
            Some(format!("  {}", self.item(id, item, &speaker)))
        }));
        lines.push(self.words.say("report-caution", &[]));
        lines
    }

    fn remark(&self, remark: Remark) -> String {
        let name = serde_json::to_value(remark).unwrap_or_default();
        self.words.say(&format!("report-{}", name.as_str().unwrap_or_default()), &[])
    }

    fn flags(&self, measures: &Measures, group: FlagGroup, speaker: &ReportSpeaker<'_>) -> Vec<String> {
        let these: Vec<&Flag> = measures.flags.iter().filter(|flag| flag.group == group).collect();
        if these.is_empty() {
            return Vec::new();
        }
        let title = match group {
            FlagGroup::RingToday => "report-ring-today",
            FlagGroup::TalkAbout => "report-talk-about",
            FlagGroup::TheFile => "report-the-file",
        };
        let flag = |flag: &&Flag| format!("  {}", speaker.flag(flag));
        std::iter::once(self.words.say(title, &[])).chain(these.iter().map(flag)).collect()
    }

    /// A word a day, the last one last.
    fn last_days(&self, measures: &Measures, speaker: &ReportSpeaker<'_>) -> String {
        let skip = measures.days.len().saturating_sub(LAST_DAYS);
        let days: Vec<String> = measures.days.iter().skip(skip).map(|day| speaker.mark(day.mark)).collect();
        let comma = self.words.say("list-comma", &[]);
        self.words.say("report-last-days", &[("days", days.join(&comma).into())])
    }

    fn adherence(&self, measures: &Measures) -> String {
        let (all, bare) = (&measures.overall, &measures.without_breaks);
        let args = [
            ("due", all.days_due.into()),
            ("whole", all.whole.into()),
            ("part", all.part.into()),
            ("told", all.stopped_as_told.into()),
            ("none", all.no_record.into()),
            ("bare-due", bare.days_due.into()),
            ("bare-whole", bare.whole.into()),
        ];
        self.words.say("report-days", &args)
    }

    fn sets(&self, id: &str, dose: &Portion) -> String {
        let sets = |sets: f64| self.words.decimal(sets, usize::from(sets.fract() != 0.0));
        let args = [
            ("done", sets(dose.done()).into()),
            ("of", dose.prescribed.into()),
            ("percent", self.words.decimal(dose.percent().unwrap_or(0.0), 0).into()),
            ("counted", sets(dose.counted).into()),
            ("unconfirmed", sets(dose.not_confirmed).into()),
            ("remembered", sets(dose.remembered).into()),
            ("beyond", sets(dose.beyond).into()),
        ];
        self.words.say(id, &args)
    }

    fn pain(&self, measures: &Measures) -> Option<String> {
        let week = measures.feeling.weeks.iter().rev().find_map(|week| week.before)?;
        let args = [
            ("median", self.words.decimal(week.median, usize::from(week.median.fract() != 0.0)).into()),
            ("least", u16::from(week.least).into()),
            ("most", u16::from(week.most).into()),
        ];
        Some(self.words.say("report-pain", &args))
    }

    fn item(&self, id: &str, measure: &ItemMeasure, speaker: &ReportSpeaker<'_>) -> String {
        let sets = |sets: f64| self.words.decimal(sets, usize::from(sets.fract() != 0.0));
        let left: u32 = measure.left.iter().map(|left| left.times).sum();
        let args = [
            ("item", speaker.name(&measure.item).into()),
            ("done", sets(measure.all.done()).into()),
            ("of", measure.all.prescribed.into()),
            ("remembered", sets(measure.all.remembered).into()),
            ("needed", sets(measure.all.as_needed).into()),
            ("beyond", sets(measure.all.beyond).into()),
            ("left", left.into()),
        ];
        self.words.say(id, &args)
    }
}
