//! Today on one page, for somebody beside the patient: who holds it in the hand, counts and ticks.

use std::collections::BTreeMap;

use chrono::{DateTime, NaiveDate, NaiveTime, Utc};
use sendaluna_core::calendar::{DueItem, EpisodeDay};
use sendaluna_core::library::Library;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::{Item, SharpPain};
use sendaluna_core::precaution::Standing;
use sendaluna_core::session::{Arranged, Block, Part, arrange};
use sendaluna_say::Speaker;
use sendaluna_words::Words;
use serde::Serialize;

use crate::item::{OnPaper, tally};
use crate::leaf::{Leaf, Paper};
use crate::picture::{Picture, Pictures};
use crate::press::{NotPrinted, Sheet, pdf};
use crate::ring::{OfTier, signs, whom};

const TEMPLATE: &str = include_str!("../templates/today.typ");

/// What is printed.
#[derive(Debug, Clone)]
pub struct TodayPage<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// What its statements add up to.
    pub standing: &'a Standing,
    /// The movements that ship.
    pub library: &'a Library,
    /// Today.
    pub date: NaiveDate,
    /// The day by which limits are judged.
    pub gate_day: NaiveDate,
    /// Where each episode stands.
    pub episodes: &'a [EpisodeDay],
    /// Items of today.
    pub asked: Vec<Asked<'a>>,
    /// Items that may not be done yet.
    pub shut: Vec<Shut<'a>>,
    /// Things to know first.
    pub notices: Vec<String>,
    /// Why nothing may be done before the clinic is rung: then no exercise is printed.
    pub held: Option<String>,
    /// When it is printed.
    pub at: DateTime<Utc>,
}

/// An item of today.
#[derive(Debug, Clone, Copy)]
pub struct Asked<'a> {
    /// How much, how often, and how often done.
    pub due: &'a DueItem,
    /// From when on again, while the plan asks for a rest between.
    pub again_from: Option<NaiveTime>,
}

/// An item that may not be done yet.
#[derive(Debug, Clone, Copy)]
pub struct Shut<'a> {
    /// The item.
    pub item: &'a Item,
    /// When it opens, if that is known.
    pub opens: Option<NaiveDate>,
}

/// Today, as a PDF of one page.
pub fn today_page(printed: &TodayPage<'_>, words: &Words) -> Result<Vec<u8>, NotPrinted> {
    let mut pictures = Pictures::default();
    let page = Page { printed, speaker: Speaker::new(words, Some(printed.plan)) };
    let data = page.data(&mut pictures);
    let (pictures, at) = (pictures.svg, printed.at);
    pdf(&Sheet { template: TEMPLATE, data: &data, pictures, at, most_pages: 1 })
}

/// Everything on it, said.
#[derive(Debug, Serialize)]
struct Data {
    leaf: Leaf,
    labels: Labels,
    date: String,
    called: String,
    weeks: Vec<String>,
    notices: Vec<String>,
    held: Option<String>,
    exercises: Vec<Exercise>,
    /// Done as often as today asks, and what is left for today.
    settled: Vec<String>,
    not_yet: Vec<String>,
    stop: Vec<OfTier>,
    whom: Vec<(String, String)>,
    pain: String,
}

/// An exercise to do.
#[derive(Debug, Serialize)]
struct Exercise {
    n: usize,
    name: String,
    side: String,
    pictures: Vec<Picture>,
    dose: String,
    times: String,
    /// Times to tick, and how many of them are done.
    boxes: (u16, u16),
    tally: Option<(u16, u8)>,
    /// How several are done in turn; said at the first of them.
    round: Option<String>,
    beside: Option<String>,
    brace: Option<String>,
    things: Option<String>,
    note: Option<String>,
    set_up: String,
}

/// What does not change from day to day.
#[derive(Debug, Serialize)]
struct Labels {
    how: String,
    nothing: String,
    not_yet: String,
    not_yet_how: String,
    signs: String,
    hurts: String,
    nobody_sees: String,
    left_out: String,
    set_up: String,
    before: String,
    after: String,
    effort: String,
    words: String,
    note: String,
}

struct Page<'a> {
    printed: &'a TodayPage<'a>,
    speaker: Speaker<'a>,
}

impl Page<'_> {
    fn data(&self, pictures: &mut Pictures) -> Data {
        let (printed, plan, words) = (self.printed, self.printed.plan, self.speaker.words);
        let head = plan.head();
        let called = [("called", head.called.as_str().into())];
        let foot = [called[0].clone(), ("revision", head.revision.into())];
        let foot = words.say("sheet-foot", &foot);
        let mut stop = signs(&self.speaker, plan);
        stop.retain(|tier| tier.tier != "note");
        Data {
            leaf: Leaf::new(words, Paper::default(), words.say("today-title", &called), foot),
            labels: self.labels(),
            date: capital(&words.day_and_year(printed.date)),
            called: words.say("sheet-for", &called),
            weeks: printed.episodes.iter().map(|day| self.speaker.week_of(plan, day)).collect(),
            notices: printed.notices.clone(),
            held: printed.held.clone(),
            exercises: self.exercises(pictures),
            settled: self.settled(),
            not_yet: self.not_yet(),
            stop,
            whom: whom(&self.speaker, plan),
            pain: self.pain(),
        }
    }

    fn say(&self, id: &str) -> String {
        self.speaker.words.say(id, &[])
    }

    fn labels(&self) -> Labels {
        Labels {
            how: self.say("today-how"),
            nothing: self.say("day-nothing-now"),
            not_yet: self.say("day-not-yet"),
            not_yet_how: self.say("today-not-yet-how"),
            signs: self.say("today-signs"),
            hurts: self.say("today-hurts"),
            nobody_sees: self.say("caution-nobody-sees"),
            left_out: self.say("today-left-out"),
            set_up: self.say("sheet-set-up"),
            before: self.say("today-pain-before"),
            after: self.say("today-pain-after"),
            effort: self.say("after-effort"),
            words: self.say("today-words"),
            note: self.speaker.words.say(
                "today-note",
                &[
                    ("least", self.say("after-effort-least").into()),
                    ("most", self.say("after-effort-most").into()),
                ],
            ),
        }
    }

    /// What is left to do today, in the order of a session.
    fn exercises(&self, pictures: &mut Pictures) -> Vec<Exercise> {
        if self.printed.held.is_some() {
            return Vec::new();
        }
        let open: Vec<&Asked<'_>> = self.printed.asked.iter().filter(|asked| is_left(asked.due)).collect();
        let due: Vec<&DueItem> = open.iter().map(|asked| asked.due).collect();
        let arranged = arrange(self.printed.plan, self.printed.library, &due);
        let exercise = |(n, part): (usize, &Part)| {
            let asked = open.iter().find(|asked| asked.due.item == part.item)?;
            self.exercise(n, part, asked, &arranged, pictures)
        };
        arranged.parts.iter().enumerate().filter_map(exercise).collect()
    }

    fn exercise(
        &self,
        n: usize,
        part: &Part,
        asked: &Asked<'_>,
        arranged: &Arranged,
        pictures: &mut Pictures,
    ) -> Option<Exercise> {
        let (plan, library, speaker) = (self.printed.plan, self.printed.library, &self.speaker);
        let item = plan.item(&part.item)?;
        let mut dose = asked.due.dose.clone();
        // A round has its own number of sets, and its own rest.
        (dose.sets, dose.rest_s) = (part.sets, part.rest_s);
        // Done in turn with others, once each: how often is said of all of them, above the first.
        let in_turn = |block: &Block| matches!(block, Block::Round { parts, .. } if parts.contains(&n));
        let mut said = dose.clone();
        if arranged.blocks.iter().any(in_turn) {
            (said.sets, said.rest_s) = (1, 0);
        }
        let on_paper = self.on_paper();
        let most = asked.due.most.max(asked.due.times);
        Some(Exercise {
            n: n + 1,
            name: speaker.name(library, plan, &item.movement),
            side: speaker.side(plan, item),
            pictures: on_paper.pictures(item, &item.movement, pictures),
            dose: speaker.dose(&said),
            times: speaker.times(asked.due, asked.again_from),
            boxes: (most, asked.due.done),
            tally: tally(&dose),
            round: self.round(n, arranged),
            beside: on_paper.beside(item),
            brace: on_paper.brace(item),
            things: on_paper.things(item),
            note: item.note.as_ref().map(|note| speaker.text(note)),
            set_up: speaker.set_up(library, plan, &item.movement),
        })
    }

    /// "… one round of each in turn", at the first exercise of a round.
    fn round(&self, n: usize, arranged: &Arranged) -> Option<String> {
        let of = arranged.blocks.iter().find_map(|block| match block {
            Block::Round { parts, rounds, rest_s } if parts.first() == Some(&n) => {
                Some((parts, *rounds, *rest_s))
            }
            _ => None,
        });
        let (parts, rounds, rest_s) = of?;
        let names: Vec<String> =
            parts.iter().filter_map(|at| Some(self.name(&arranged.parts.get(*at)?.item))).collect();
        let items = self.speaker.words.list(&names);
        let args = [("items", items.into()), ("rounds", rounds.into()), ("rest", rest_s.into())];
        Some(self.speaker.words.say("sheet-round", &args))
    }

    fn name(&self, id: &sendaluna_core::ids::ItemId) -> String {
        let (plan, library) = (self.printed.plan, self.printed.library);
        plan.item(id).map_or_else(String::new, |item| self.speaker.name(library, plan, &item.movement))
    }

    fn on_paper(&self) -> OnPaper<'_> {
        let TodayPage { plan, standing, library, gate_day, .. } = *self.printed;
        OnPaper { plan, standing, library, day: gate_day, speaker: &self.speaker }
    }

    fn settled(&self) -> Vec<String> {
        let listed = |id: &str, which: &dyn Fn(&DueItem) -> bool| {
            let these = self.printed.asked.iter().filter(|asked| which(asked.due));
            let names: Vec<String> = these.map(|asked| self.name_and_side(&asked.due.item)).collect();
            let names_said = self.speaker.words.list(&names);
            (!names.is_empty()).then(|| self.speaker.words.say(id, &[("names", names_said.into())]))
        };
        [
            listed("today-rests", &|due| due.gate.is_open() && due.rests_today),
            listed("today-done", &|due| {
                due.gate.is_open() && !due.rests_today && due.most > 0 && due.is_enough_today()
            }),
        ]
        .into_iter()
        .flatten()
        .collect()
    }

    fn name_and_side(&self, id: &sendaluna_core::ids::ItemId) -> String {
        let Some(item) = self.printed.plan.item(id) else { return String::new() };
        let side = self.speaker.side(self.printed.plan, item);
        format!("{} ({side})", self.name(id))
    }

    /// What opens on the same day is said together; what has no day comes last.
    fn not_yet(&self) -> Vec<String> {
        let mut by_day: BTreeMap<(bool, Option<NaiveDate>), Vec<String>> = BTreeMap::new();
        for shut in &self.printed.shut {
            let name = self.name_and_side(&shut.item.id);
            by_day.entry((shut.opens.is_none(), shut.opens)).or_default().push(name);
        }
        let said = |((_, opens), names): ((bool, Option<NaiveDate>), Vec<String>)| {
            let names = self.speaker.words.list(&names);
            match opens {
                Some(day) => {
                    let day = self.speaker.words.day_and_year(day);
                    self.speaker.words.say("weeks-opens", &[("name", names.into()), ("day", day.into())])
                }
                None => self.speaker.words.say("today-until-lifted", &[("names", names.into())]),
            }
        };
        by_day.into_iter().map(said).collect()
    }

    fn pain(&self) -> String {
        let rule = &self.printed.plan.doc().pain;
        let sharp = match rule.sharp {
            SharpPain::StopExercise => "exercise",
            SharpPain::StopToday => "today",
        };
        let args = [
            ("rest", rule.rest_stop_today_at.into()),
            ("stop", rule.stop_exercise_at.into()),
            ("rise", rule.rise_stop_exercise.into()),
            ("today", rule.stop_today_at.into()),
            ("sharp", sharp.into()),
        ];
        self.speaker.words.say("today-pain", &args)
    }
}

/// Allowed, and not yet done as often as today asks or allows.
fn is_left(due: &DueItem) -> bool {
    due.gate.is_open() && !due.rests_today && !due.is_enough_today()
}

/// As a title begins.
fn capital(said: &str) -> String {
    let mut letters = said.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests;
