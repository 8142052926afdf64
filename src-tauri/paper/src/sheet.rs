//! The plan on paper, for the fridge: everything that the window shows, for somebody who has paper alone.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::calendar::History;
use sendaluna_core::gate::Tightened;
use sendaluna_core::library::Library;
use sendaluna_core::plan::Plan;
use sendaluna_core::precaution::Standing;
use sendaluna_say::Speaker;
use sendaluna_words::Words;
use serde::Serialize;

use crate::item::OnPaper;
use crate::leaf::{Leaf, Paper};
use crate::picture::Pictures;
use crate::press::{MOST_PAGES, NotPrinted, Sheet, pdf};
use crate::ring::{OfTier, signs, whom};

mod exercise;
mod rest;
mod weeks;

use exercise::Exercise;
use rest::{Care, Return, Row, Test};
use weeks::{EpisodeWeeks, StageTable};

const TEMPLATE: &str = include_str!("../templates/sheet.typ");

/// What is printed.
#[derive(Debug, Clone, Copy)]
pub struct PlanSheet<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// What its statements add up to.
    pub standing: &'a Standing,
    /// The movements that ship.
    pub library: &'a Library,
    /// The day from which on it holds: what has opened by then is open.
    pub day: NaiveDate,
    /// The day of a set-back that holds every opening.
    pub set_back: Option<NaiveDate>,
    /// What the patient was told to stop.
    pub tightened: &'a [Tightened],
    /// What was done so far, where the plan is at home: a dose that moves is printed as it stands.
    pub history: Option<&'a History>,
    /// When it is printed.
    pub at: DateTime<Utc>,
}

/// The plan, as a PDF.
pub fn plan_sheet(printed: &PlanSheet<'_>, words: &Words, paper: Paper) -> Result<Vec<u8>, NotPrinted> {
    let mut pictures = Pictures::default();
    let page = Page { printed, speaker: Speaker::new(words, Some(printed.plan)) };
    let data = page.data(paper, &mut pictures);
    let (pictures, at) = (pictures.svg, printed.at);
    pdf(&Sheet { template: TEMPLATE, data: &data, pictures, at, most_pages: MOST_PAGES })
}

/// Everything on it, said.
#[derive(Debug, Serialize)]
struct Data {
    leaf: Leaf,
    labels: Labels,
    called: String,
    clinic: String,
    revision: String,
    episodes: Vec<String>,
    holds: Vec<String>,
    stop: Vec<OfTier>,
    advice: String,
    whom: Vec<(String, String)>,
    cautions: Vec<String>,
    pain: Vec<Row>,
    rules: Vec<Rule>,
    not_opened: Vec<String>,
    weeks: Vec<EpisodeWeeks>,
    stages: Vec<StageTable>,
    /// Days of the week, for strokes made by hand.
    tick_days: Vec<String>,
    exercises: Vec<Exercise>,
    care: Vec<Care>,
    return_dose: Return,
    tests: Vec<Test>,
    tests_helper: String,
}

/// A rule of the day.
#[derive(Debug, Serialize)]
struct Rule {
    text: String,
    until: String,
    set_by: String,
}

/// Titles and column heads.
#[derive(Debug, Serialize)]
struct Labels {
    stop: String,
    whom: String,
    pain: String,
    pain_scale: String,
    pain_when: String,
    pain_do: String,
    rules: String,
    rule: String,
    until: String,
    who: String,
    not_opened: String,
    week: String,
    days: String,
    what: String,
    opens: String,
    what_to_do: String,
    exercise: String,
    how_often: String,
    how_much: String,
    exercises: String,
    care: String,
    after_break: String,
    tests: String,
    cautions: String,
    tick: String,
    tick_how: String,
    tick_pain: String,
}

struct Page<'a> {
    printed: &'a PlanSheet<'a>,
    speaker: Speaker<'a>,
}

impl Page<'_> {
    fn data(&self, paper: Paper, pictures: &mut Pictures) -> Data {
        let (plan, words) = (self.printed.plan, self.speaker.words);
        let head = plan.head();
        let clinic = &plan.doc().clinic;
        let foot = words.say(
            "sheet-foot",
            &[("called", head.called.as_str().into()), ("revision", head.revision.into())],
        );
        let signed = plan.issued_at().date_naive();
        let revision = [("revision", head.revision.into()), ("day", words.day_and_year(signed).into())];
        Data {
            leaf: Leaf::new(words, paper, words.say("sheet-title", &[]), foot),
            labels: self.labels(),
            called: words.say("sheet-for", &[("called", head.called.as_str().into())]),
            clinic: words.say("sheet-by", &[("clinic", clinic.name.as_str().into())]),
            revision: words.say("sheet-revision", &revision),
            episodes: self.episodes(),
            holds: self.holds(),
            stop: signs(&self.speaker, plan),
            advice: self.speaker.text(&clinic.emergency_advice),
            whom: whom(&self.speaker, plan),
            cautions: self.cautions(),
            pain: self.pain(),
            rules: self.rules(),
            not_opened: self.not_opened(),
            weeks: self.weeks(),
            stages: self.stages(),
            tick_days: self.speaker.week(),
            exercises: self.exercises(pictures),
            care: self.care(),
            return_dose: self.return_dose(),
            tests: self.tests(),
            tests_helper: words.say("sheet-tests-helper", &[]),
        }
    }

    fn say(&self, id: &str) -> String {
        self.speaker.words.say(id, &[])
    }

    fn labels(&self) -> Labels {
        Labels {
            stop: self.say("sheet-stop"),
            whom: self.say("sheet-whom"),
            pain: self.say("sheet-pain"),
            pain_scale: self.say("sheet-pain-scale"),
            pain_when: self.say("sheet-pain-when"),
            pain_do: self.say("sheet-pain-do"),
            rules: self.say("sheet-rules"),
            rule: self.say("sheet-rule"),
            until: self.say("sheet-until"),
            who: self.say("sheet-who"),
            not_opened: self.say("sheet-not-opened"),
            week: self.say("sheet-week"),
            days: self.say("sheet-days"),
            what: self.say("sheet-what"),
            opens: self.say("sheet-opens"),
            what_to_do: self.say("sheet-what-to-do"),
            exercise: self.say("sheet-exercise"),
            how_often: self.say("sheet-how-often"),
            how_much: self.say("sheet-how-much"),
            exercises: self.say("sheet-exercises"),
            care: self.say("sheet-care"),
            after_break: self.say("sheet-return"),
            tests: self.say("sheet-tests"),
            cautions: self.say("sheet-cautions"),
            tick: self.say("sheet-tick"),
            tick_how: self.say("sheet-tick-how"),
            tick_pain: self.say("sheet-tick-pain"),
        }
    }

    fn on_paper(&self) -> OnPaper<'_> {
        let PlanSheet { plan, standing, library, day, .. } = *self.printed;
        OnPaper { plan, standing, library, day, speaker: &self.speaker }
    }
}
