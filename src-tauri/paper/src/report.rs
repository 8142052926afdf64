//! The report: two pages, of which the top strip is read in thirty seconds.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::measure::FlagGroup;
use sendaluna_core::record::{Body, Event, State};
use sendaluna_say::report::{ReportSpeaker, Reported};
use sendaluna_words::{Value, Words};
use serde::Serialize;

use crate::leaf::{Leaf, Paper};
use crate::picture::Picture;
use crate::picture::Pictures;
use crate::press::{MOST_PAGES, NotPrinted, Sheet, pdf};

mod chart;
mod strip;
mod tables;

use strip::Strip;
use tables::{ExerciseRow, PainRow, WeekRow};

const TEMPLATE: &str = include_str!("../templates/report.typ");
/// So many of the patient's own entries are printed, the latest first; the record has them all.
const MOST_WORDS: usize = 8;

/// So many flags of a group are printed, the latest; the record has them all.
const MOST_FLAGS: usize = 5;

/// What is printed.
#[derive(Debug, Clone, Copy)]
pub struct PrintedReport<'a> {
    /// What it is made from.
    pub reported: Reported<'a>,
    /// What was found when it was checked, in sentences; none if nobody has checked it.
    pub checked: &'a [String],
    /// When it is made.
    pub at: DateTime<Utc>,
    /// The date on it.
    pub day: NaiveDate,
}

/// The report, as a PDF.
pub fn report(printed: &PrintedReport<'_>, words: &Words) -> Result<Vec<u8>, NotPrinted> {
    let mut pictures = Pictures::default();
    let speaker = ReportSpeaker::new(words, printed.reported.library, printed.reported.periods);
    let page = Page { printed, words, speaker, state: State::of(printed.reported.events) };
    let data = page.data(&mut pictures).ok_or_else(|| NotPrinted("no plan".to_string()))?;
    let (pictures, at) = (pictures.svg, printed.at);
    pdf(&Sheet { template: TEMPLATE, data: &data, pictures, at, most_pages: MOST_PAGES })
}

/// Everything on it, said.
#[derive(Debug, Serialize)]
struct Data {
    leaf: Leaf,
    labels: serde_json::Map<String, serde_json::Value>,
    span: String,
    made: String,
    strip: Strip,
    weeks: Vec<WeekRow>,
    breaks: String,
    exercises: Vec<ExerciseRow>,
    pain: Vec<PainRow>,
    chart: Option<Picture>,
    trend: String,
    tests: Vec<String>,
    words: Vec<(String, String)>,
    words_notes: Vec<String>,
    checked: Vec<String>,
    definitions: Vec<String>,
}

struct Page<'a> {
    printed: &'a PrintedReport<'a>,
    words: &'a Words,
    speaker: ReportSpeaker<'a>,
    state: State,
}

impl Page<'_> {
    fn data(&self, pictures: &mut Pictures) -> Option<Data> {
        let (printed, measures) = (self.printed, self.printed.reported.measures);
        let period = printed.reported.periods.last()?;
        let head = period.plan.head();
        let day = self.words.day_and_year(printed.day);
        let called: (&str, Value<'_>) = ("called", head.called.as_str().into());
        let title = self.words.say("report-page-title", std::slice::from_ref(&called));
        let foot = self.words.say("report-page-foot", &[called, ("day", day.as_str().into())]);
        let made = [("day", day.as_str().into()), ("revision", head.revision.into())];
        let (words, words_notes) = self.own_words();
        Some(Data {
            leaf: Leaf::new(self.words, Paper::default(), title, foot),
            labels: self.labels(),
            span: self.span(measures.from, measures.through),
            made: self.words.say("report-page-made", &made),
            strip: self.strip(period),
            weeks: self.week_rows(),
            breaks: self.words.say("report-page-breaks", &[("n", measures.late_break_days.into())]),
            exercises: self.exercise_rows(),
            pain: self.pain_rows(),
            chart: self.chart(pictures),
            trend: self.trend(),
            tests: measures.tests.iter().map(|test| self.speaker.home_test(test)).collect(),
            words,
            words_notes,
            checked: match printed.checked {
                [] => vec![self.say("report-page-not-checked")],
                checked => checked.to_vec(),
            },
            definitions: self.definitions(),
        })
    }

    fn say(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    /// "1 March 2026 to 24 May 2026"; one day stands alone.
    fn span(&self, from: NaiveDate, through: NaiveDate) -> String {
        if from == through {
            return self.words.say("report-page-day", &[("day", self.words.day_and_year(from).into())]);
        }
        let args = [
            ("from", self.words.day_and_year(from).into()),
            ("through", self.words.day_and_year(through).into()),
        ];
        self.words.say("report-page-span", &args)
    }

    fn labels(&self) -> serde_json::Map<String, serde_json::Value> {
        let label = |id: &&str| {
            (id.trim_start_matches("report-").trim_start_matches("page-").to_string(), self.say(id).into())
        };
        LABELS.iter().map(label).collect()
    }

    fn flags(&self, group: FlagGroup) -> Vec<String> {
        let these = self.printed.reported.measures.flags.iter().filter(|flag| flag.group == group);
        let mut said: Vec<String> = these.map(|flag| self.speaker.flag(flag)).collect();
        let earlier = said.len().saturating_sub(MOST_FLAGS);
        said.drain(..earlier);
        if earlier > 0 {
            said.insert(0, self.words.say("report-page-earlier", &[("n", earlier.into())]));
        }
        said
    }

    /// What the patient wrote down, the latest first, and what of it is not here.
    fn own_words(&self) -> (Vec<(String, String)>, Vec<String>) {
        let said = |event: &Event| {
            let (Body::SessionEnded { words, .. } | Body::BreakDeclared { words, .. }) = &event.body else {
                return None;
            };
            Some((self.words.day_and_year(event.stamp.day()), words.clone()?))
        };
        let all: Vec<(String, String)> = self.printed.reported.events.iter().rev().filter_map(said).collect();
        let more = all.len().saturating_sub(MOST_WORDS);
        let notes = [
            ("report-page-words-more", more),
            ("report-page-words-withheld", self.printed.reported.withheld),
        ];
        let notes = notes.into_iter().filter(|(_, n)| *n > 0);
        let notes: Vec<String> = notes.map(|(id, n)| self.words.say(id, &[("n", n.into())])).collect();
        let none = all.is_empty() && notes.is_empty();
        let notes = if none { vec![self.say("report-page-words-none")] } else { notes };
        (all.into_iter().take(MOST_WORDS).collect(), notes)
    }

    fn trend(&self) -> String {
        let Some(trend) = self.printed.reported.measures.feeling.trend else {
            return self.say("report-page-trend-none");
        };
        let args = [
            ("slope", self.words.decimal(trend.slope, 2).into()),
            ("low", self.words.decimal(trend.low, 2).into()),
            ("high", self.words.decimal(trend.high, 2).into()),
            ("n", trend.points.into()),
        ];
        self.words.say("report-page-trend", &args)
    }

    fn definitions(&self) -> Vec<String> {
        [
            "report-page-def-due",
            "report-page-def-days",
            "report-page-def-dose",
            "report-page-def-how",
            "report-page-def-pain",
            "report-page-def-trend",
            "report-caution",
            "caution-nobody-sees-if-worried",
        ]
        .into_iter()
        .map(|id| self.say(id))
        .collect()
    }
}

/// Titles and column heads: the messages `report-page-…`.
const LABELS: &[&str] = &[
    "report-page-weight",
    "report-page-gates",
    "report-page-ring",
    "report-page-talk",
    "report-page-file",
    "report-page-last",
    "report-page-worst",
    "report-page-pain",
    "report-page-asks",
    "report-page-weeks",
    "report-page-week",
    "report-page-due",
    "report-page-whole",
    "report-page-part",
    "report-page-told",
    "report-page-none",
    "report-page-dose",
    "report-page-counted",
    "report-page-unconfirmed",
    "report-page-remembered",
    "report-page-beyond",
    "report-page-needed",
    "report-page-bar",
    "report-page-exercises",
    "report-page-exercise",
    "report-page-also",
    "report-page-feeling",
    "report-page-rest",
    "report-page-during",
    "report-page-after",
    "report-page-morning",
    "report-page-effort",
    "report-page-chart-key",
    "report-page-no-pain",
    "report-tests",
    "report-page-words",
    "report-page-checked",
    "report-page-definitions",
];
