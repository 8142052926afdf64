//! A report's top strip: what a therapist sees in thirty seconds.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::ids::ItemId;
use sendaluna_core::measure::{DayMark, Flag, FlagGroup, FlagRule, ItemMeasure, Measures, Portion};
use sendaluna_core::plan::Plan;
use sendaluna_words::Value;
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
            lines: self.strip(opened, plan, &called),
            measures: opened.measures.clone(),
            called,
        }
    }

    fn strip(&self, opened: &Opened, plan: Option<&Plan>, called: &str) -> Vec<String> {
        let (doc, measures) = (&opened.report.doc, &opened.measures);
        let vouched = if opened.is_vouched_for() { "report-vouched-for" } else { "report-not-vouched-for" };
        let mut lines = vec![
            self.words.say(
                "report-title",
                &[
                    ("called", called.into()),
                    ("from", self.words.day_and_year(doc.from).into()),
                    ("through", self.words.day_and_year(doc.through).into()),
                ],
            ),
            self.words.say(vouched, &[]),
        ];
        lines.extend(opened.remarks.iter().map(|remark| format!("  {}", self.remark(*remark))));
        for group in [FlagGroup::RingToday, FlagGroup::TalkAbout, FlagGroup::TheFile] {
            lines.extend(self.flags(measures, group, plan));
        }
        lines.push(self.last_days(measures));
        lines.push(self.adherence(measures));
        lines.push(self.sets("report-dose", &measures.overall.dose));
        lines.extend(self.pain(measures));
        lines.extend(self.home_tests(measures));
        lines.extend(worst(measures).map(|item| self.item("report-worst", item)));
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
            Some(format!("  {}", self.item(id, item)))
        }));
        lines.push(self.words.say("report-caution", &[]));
        lines
    }

    fn remark(&self, remark: Remark) -> String {
        let name = serde_json::to_value(remark).unwrap_or_default();
        self.words.say(&format!("report-{}", name.as_str().unwrap_or_default()), &[])
    }

    fn flags(&self, measures: &Measures, group: FlagGroup, plan: Option<&Plan>) -> Vec<String> {
        let these: Vec<&Flag> = measures.flags.iter().filter(|flag| flag.group == group).collect();
        if these.is_empty() {
            return Vec::new();
        }
        let title = match group {
            FlagGroup::RingToday => "report-ring-today",
            FlagGroup::TalkAbout => "report-talk-about",
            FlagGroup::TheFile => "report-the-file",
        };
        let flag = |flag: &&Flag| format!("  {}", self.flag(flag, plan));
        std::iter::once(self.words.say(title, &[])).chain(these.iter().map(flag)).collect()
    }

    fn flag(&self, flag: &Flag, plan: Option<&Plan>) -> String {
        let mut args: Vec<(&str, Value<'_>)> = vec![("day", self.words.day_and_year(flag.day).into())];
        let known = |item: &ItemId| plan.is_some_and(|plan| plan.item(item).is_some());
        let name = |item: &ItemId| if known(item) { item.to_string() } else { format!("{item} (–)") };
        let id = match &flag.rule {
            FlagRule::WarningSign { .. } => "flag-warning-sign",
            FlagRule::PainOverLimit { level } => {
                args.push(("level", level.map_or_else(|| "–".to_string(), |level| level.to_string()).into()));
                "flag-pain-over-limit"
            }
            FlagRule::Fall => "flag-fall",
            FlagRule::Readmission => "flag-readmission",
            FlagRule::AgainstGate { item } => {
                args.push(("item", name(item).into()));
                "flag-against-gate"
            }
            FlagRule::TestAgainstGate { test } => {
                args.push(("test", test.as_str().into()));
                "flag-test-against-gate"
            }
            FlagRule::RisingPain { change } => {
                args.push(("change", self.words.decimal(*change, 1).into()));
                "flag-rising-pain"
            }
            FlagRule::Skipped { item, times } => {
                args.extend([("item", name(item).into()), ("times", (*times).into())]);
                "flag-skipped"
            }
            FlagRule::Overdone { item, days } => {
                args.extend([("item", name(item).into()), ("days", (*days).into())]);
                "flag-overdone"
            }
            FlagRule::LiftIgnored { precaution } => {
                args.push(("precaution", precaution.as_str().into()));
                "flag-lift-ignored"
            }
            FlagRule::Clock { jump_s } => {
                args.push(("hours", (jump_s / 3600).to_string().into()));
                "flag-clock"
            }
            FlagRule::ChainBroken { from } => {
                args.push(("seq", from.to_string().into()));
                "flag-chain-broken"
            }
        };
        self.words.say(id, &args)
    }

    /// A word a day, the last one last.
    fn last_days(&self, measures: &Measures) -> String {
        let mark = |mark: DayMark| {
            let name = serde_json::to_value(mark).unwrap_or_default();
            self.words.say(&format!("mark-{}", name.as_str().unwrap_or_default()), &[])
        };
        let skip = measures.days.len().saturating_sub(LAST_DAYS);
        let days: Vec<String> = measures.days.iter().skip(skip).map(|day| mark(day.mark)).collect();
        self.words.say("report-last-days", &[("days", days.join(", ").into())])
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

    fn item(&self, id: &str, measure: &ItemMeasure) -> String {
        let sets = |sets: f64| self.words.decimal(sets, usize::from(sets.fract() != 0.0));
        let left: u32 = measure.left.iter().map(|left| left.times).sum();
        let args = [
            ("item", measure.item.as_str().into()),
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

/// The exercise of which the least part was done.
fn worst(measures: &Measures) -> Option<&ItemMeasure> {
    let due = measures.items.iter().filter(|item| item.all.prescribed > 0);
    let part = |item: &&ItemMeasure| item.all.done() / f64::from(item.all.prescribed);
    due.min_by(|a, b| part(a).total_cmp(&part(b))).filter(|item| part(item) < 1.0)
}
