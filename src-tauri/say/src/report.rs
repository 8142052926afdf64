//! How a record is said: marks of days, figures, flags.

use chrono::NaiveDate;
use sendaluna_core::calendar::week_of;
use sendaluna_core::facts::OperatedSide;
use sendaluna_core::home_test::{Row, Verdict};
use sendaluna_core::ids::ItemId;
use sendaluna_core::library::Library;
use sendaluna_core::measure::{
    DayMark, Flag, FlagRule, ItemMeasure, Left, Levels, Measures, Period, Portion,
};
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Episode;
use sendaluna_core::record::{Event, LeaveReason};
use sendaluna_core::text::Lang;
use sendaluna_words::{Value, Words};

use crate::Speaker;

mod home_tests;

/// What every report is made from.
#[derive(Debug, Clone, Copy)]
pub struct Reported<'a> {
    /// Plans in force, the earliest first; without one there is no report.
    pub periods: &'a [Period],
    /// The record; words that were kept back are absent.
    pub events: &'a [Event],
    /// The measures of it.
    pub measures: &'a Measures,
    /// The movements that ship.
    pub library: &'a Library,
    /// What the patient asks.
    pub asks: Option<&'a str>,
    /// How many entries the patient kept back.
    pub withheld: usize,
}

/// Says what is measured over some plans.
pub struct ReportSpeaker<'a> {
    /// The words.
    pub words: &'a Words,
    library: &'a Library,
    periods: &'a [Period],
}

impl<'a> ReportSpeaker<'a> {
    /// Of these plans, the earliest first.
    pub fn new(words: &'a Words, library: &'a Library, periods: &'a [Period]) -> Self {
        Self { words, library, periods }
    }

    /// The plan in force last.
    pub fn plan(&self) -> Option<&'a Plan> {
        self.periods.last().map(|period| &period.plan)
    }

    /// The name of an item, from the last plan that has it.
    pub fn name(&self, item: &ItemId) -> String {
        let of = |plan: &'a Plan| plan.item(item).map(|item| (plan, item));
        match self.periods.iter().rev().find_map(|period| of(&period.plan)) {
            Some((plan, item)) => {
                Speaker::new(self.words, Some(plan)).name(self.library, plan, &item.movement)
            }
            None => item.to_string(),
        }
    }

    /// An episode with its side, and how far it is on a day: "New hip, left side: week 12, day 80".
    pub fn episode(&self, episode: &Episode, on: NaiveDate) -> String {
        let side = self.words.say(operated_side(episode.side), &[]);
        let name = Speaker::new(self.words, self.plan()).text(&episode.name);
        let mut args: Vec<(&str, Value<'_>)> = vec![("name", name.into()), ("side", side.into())];
        let zero = episode.day_zero.date().filter(|zero| *zero <= on);
        let Some((zero, week)) = zero.and_then(|zero| Some((zero, week_of(zero, on)?))) else {
            return self.words.say("report-page-episode-unknown", &args);
        };
        args.extend([("week", week.into()), ("day", (on - zero).num_days().into())]);
        self.words.say("report-page-episode", &args)
    }

    /// Sets, with a decimal if there is a part of one.
    pub fn sets(&self, sets: f64) -> String {
        self.words.decimal(sets, usize::from((sets - sets.round()).abs() > 0.05))
    }

    /// "12 of 14 (86 %)", numerator and denominator first; a dash if nothing was asked.
    pub fn part(&self, portion: &Portion) -> String {
        let Some(percent) = portion.percent() else { return "–".to_string() };
        let args = [
            ("done", self.sets(portion.done()).into()),
            ("of", portion.prescribed.into()),
            ("percent", self.words.decimal(percent, 0).into()),
        ];
        self.words.say("report-part", &args)
    }

    /// "2 (0–4)": the middle, the least and the most; a dash if nobody answered.
    pub fn levels(&self, levels: Option<&Levels>) -> String {
        let Some(levels) = levels else { return "–".to_string() };
        let median = self.words.decimal(levels.median, usize::from(levels.median.fract() != 0.0));
        if levels.least == levels.most {
            return median;
        }
        let args: [(&str, Value<'_>); 3] = [
            ("median", median.into()),
            ("least", u16::from(levels.least).into()),
            ("most", u16::from(levels.most).into()),
        ];
        self.words.say("report-levels", &args)
    }

    /// What a day comes to.
    pub fn mark(&self, mark: DayMark) -> String {
        let id = match mark {
            DayMark::NotDue => "mark-not-due",
            DayMark::Whole => "mark-whole",
            DayMark::Part => "mark-part",
            DayMark::StoppedAsTold => "mark-stopped-as-told",
            DayMark::NoRecord => "mark-no-record",
        };
        self.words.say(id, &[])
    }

    /// Why something was left out.
    pub fn left(&self, reason: LeaveReason) -> String {
        let id = match reason {
            LeaveReason::Chose => "report-left-chose",
            LeaveReason::Hurt => "report-left-hurt",
            LeaveReason::Tired => "report-left-tired",
            LeaveReason::NoTime => "report-left-no-time",
            LeaveReason::Unsure => "report-left-unsure",
            LeaveReason::NoHelper => "report-left-no-helper",
            LeaveReason::NothingAtHand => "report-left-nothing-at-hand",
        };
        self.words.say(id, &[])
    }

    /// How often an item was left out, by reason: "it hurt (3), no time (1)".
    pub fn left_out(&self, item: &ItemMeasure) -> String {
        let said = |left: &Left| {
            let args = [("reason", self.left(left.reason).into()), ("n", left.times.into())];
            self.words.say("report-page-left-times", &args)
        };
        item.left.iter().map(said).collect::<Vec<_>>().join(&self.words.say("list-comma", &[]))
    }

    /// What else the record says of an item, in sentences: left out, the easier way, against a gate.
    pub fn also(&self, item: &ItemMeasure) -> Vec<String> {
        let reasons = self.left_out(item);
        let left =
            (!reasons.is_empty()).then(|| self.words.say("report-page-left", &[("reasons", reasons.into())]));
        let times = |id: &str, n: u32| (n > 0).then(|| self.words.say(id, &[("n", n.into())]));
        let easier = times("report-page-easier", item.easier);
        let against = times("report-page-against", item.against_gate);
        [left, easier, against].into_iter().flatten().collect()
    }

    /// What the table says of a home test. It belongs to the clinic, never to the patient's screen.
    pub fn verdict(&self, verdict: &Verdict) -> String {
        let say = |id: &str| self.words.say(id, &[]);
        match verdict {
            Verdict::ChairStand { ages, men, women, .. } => {
                let args = [
                    ("younger", ages[0].into()),
                    ("older", ages[1].into()),
                    ("men", self.row(men).into()),
                    ("women", self.row(women).into()),
                ];
                self.words.say("report-chair-stand-table", &args)
            }
            Verdict::TimedUpAndGo { risk } => {
                say(if *risk { "report-walk-risk" } else { "report-walk-no-risk" })
            }
            Verdict::FourStageBalance { risk } => {
                say(if *risk { "report-tandem-risk" } else { "report-tandem-no-risk" })
            }
        }
    }

    fn row(&self, row: &Row) -> String {
        let below: Vec<String> = row.below.iter().map(ToString::to_string).collect();
        self.words.say(&format!("norm-{}", row.norm.code()), &[("below", below.join(" / ").into())])
    }

    /// A flag, with its day and its rule.
    pub fn flag(&self, flag: &Flag) -> String {
        let mut args: Vec<(&str, Value<'_>)> = vec![("day", self.words.day_and_year(flag.day).into())];
        let id = match &flag.rule {
            FlagRule::WarningSign { .. } => "flag-warning-sign",
            FlagRule::PainOverLimit { level } => {
                args.push(("level", level.map_or_else(|| "–".to_string(), |level| level.to_string()).into()));
                "flag-pain-over-limit"
            }
            FlagRule::Fall => "flag-fall",
            FlagRule::Readmission => "flag-readmission",
            FlagRule::AgainstGate { item } => {
                args.push(("item", self.name(item).into()));
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
                args.extend([("item", self.name(item).into()), ("times", (*times).into())]);
                "flag-skipped"
            }
            FlagRule::Overdone { item, days } => {
                args.extend([("item", self.name(item).into()), ("days", (*days).into())]);
                "flag-overdone"
            }
            FlagRule::LiftIgnored { precaution } => {
                args.push(("precaution", self.why(precaution).into()));
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

    /// What a precaution means, in the clinic's words.
    fn why(&self, id: &sendaluna_core::ids::PrecautionId) -> String {
        let in_force = self.periods.iter().rev().flat_map(|period| &period.standing.in_force);
        let found = in_force.map(|in_force| &in_force.precaution).find(|precaution| precaution.id == *id);
        let langs: Vec<Lang> = Lang::new(self.words.lang()).into_iter().collect();
        found.map_or_else(|| id.to_string(), |precaution| precaution.why.pick(&langs).to_string())
    }
}

fn operated_side(side: OperatedSide) -> &'static str {
    match side {
        OperatedSide::Left => "sheet-side-left",
        OperatedSide::Right => "sheet-side-right",
        OperatedSide::Both => "sheet-side-both",
        OperatedSide::Neither => "sheet-side-neither",
    }
}
