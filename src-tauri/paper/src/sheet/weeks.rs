//! Which weeks, and what to do in each.

use chrono::NaiveDate;
use sendaluna_core::calendar::{History, week_of, week_span};
use sendaluna_core::gate::{Gate, Gates};
use sendaluna_core::ids::ItemId;
use sendaluna_core::plan::doc::{Dose, Episode, Item, Round, Stage, StageItem};
use sendaluna_core::steps::Stand;
use serde::Serialize;

use super::{Page, PlanSheet};

/// The weeks of an episode.
#[derive(Debug, Serialize)]
pub(super) struct EpisodeWeeks {
    pub title: String,
    pub weeks: Vec<Week>,
    /// Why there are none.
    pub unknown: Option<String>,
}

/// A week.
#[derive(Debug, Serialize)]
pub(super) struct Week {
    pub number: u16,
    pub days: String,
    pub stages: String,
    pub opens: Vec<String>,
    /// It lies before the day from which on the sheet holds.
    pub past: bool,
    /// Something stands across it that only the clinic takes away.
    pub review: Option<String>,
}

/// What to do in a stage.
#[derive(Debug, Serialize)]
pub(super) struct StageTable {
    pub name: String,
    pub weeks: String,
    pub days: Option<String>,
    pub rows: Vec<Asked>,
    pub rounds: Vec<String>,
}

/// An exercise in a stage.
#[derive(Debug, Serialize)]
pub(super) struct Asked {
    /// The number of the exercise further down.
    pub n: usize,
    pub name: String,
    pub when: String,
    pub dose: String,
    pub not_yet: Option<String>,
}

impl Page<'_> {
    /// "Weeks 3 to 6"
    pub(super) fn span(&self, from: u16, through: u16) -> String {
        let id = if from == through { "sheet-stage-week" } else { "sheet-stage-weeks" };
        self.speaker.words.say(id, &[("from", from.into()), ("through", through.into())])
    }

    pub(super) fn weeks(&self) -> Vec<EpisodeWeeks> {
        let of = |episode: &Episode| {
            let name = self.speaker.text(&episode.name);
            let title = self.speaker.words.say("sheet-weeks-of", &[("name", name.into())]);
            let Some(zero) = episode.day_zero.date() else {
                let unknown = Some(self.say("sheet-unknown-zero"));
                return EpisodeWeeks { title, weeks: Vec::new(), unknown };
            };
            let last = week_of(zero, self.printed.plan.head().last_day).unwrap_or(0);
            let weeks = (1..=last).map(|number| self.week(episode, zero, number)).collect();
            EpisodeWeeks { title, weeks, unknown: None }
        };
        self.printed.plan.doc().episodes.iter().map(of).collect()
    }

    fn week(&self, episode: &Episode, zero: NaiveDate, number: u16) -> Week {
        let (words, plan) = (self.speaker.words, self.printed.plan);
        let (first, last) = week_span(zero, number, number);
        let holds = |stage: &&Stage| {
            stage.episode == episode.id && (stage.from_week..=stage.through_week).contains(&number)
        };
        let stages: Vec<String> =
            plan.doc().stages.iter().filter(holds).map(|stage| self.speaker.text(&stage.name)).collect();
        let of_episode = plan.doc().items.iter().filter(|item| item.episode == episode.id);
        let opens = of_episode.filter_map(|item| {
            let day = self.opens(item).filter(|day| (first..=last).contains(day))?;
            let name = self.speaker.name(self.printed.library, plan, &item.movement);
            Some(words.say("weeks-opens", &[("name", name.into()), ("day", words.day(day).into())]))
        });
        let review_by = plan.head().review_by;
        Week {
            number,
            days: words.say(
                "sheet-stage-days",
                &[("from", words.short_day(first).into()), ("through", words.short_day(last).into())],
            ),
            stages: stages.join(". "),
            opens: opens.collect(),
            past: last < self.printed.day,
            review: (first > review_by).then(|| self.say("sheet-review-week")),
        }
    }

    /// Where an item whose dose moves stands; at its start, where nothing was done yet.
    pub(super) fn stand(&self, item: &Item) -> Option<Stand> {
        let fresh = History::default();
        let history = self.printed.history.unwrap_or(&fresh);
        Stand::of(self.printed.plan, item, history, self.printed.day)
    }

    /// The dose of an item where no stage has one of its own.
    pub(super) fn dose(&self, item: &Item) -> Dose {
        self.stand(item).map_or_else(|| item.dose.clone(), |stand| stand.dose().clone())
    }

    fn opens(&self, item: &Item) -> Option<NaiveDate> {
        match self.gate(item, &item.dose) {
            Gate::Open => None,
            Gate::NotYet(not_yet) => not_yet.opens,
        }
    }

    pub(super) fn gate(&self, item: &Item, dose: &Dose) -> Gate {
        self.gates().item(item, dose, &self.gate_day())
    }

    pub(super) fn gates(&self) -> Gates<'_> {
        let PlanSheet { plan, standing, library, tightened, .. } = *self.printed;
        Gates { plan, library, standing, tightened }
    }

    pub(super) fn stages(&self) -> Vec<StageTable> {
        let stages = &self.printed.plan.doc().stages;
        let to_come = stages.iter().filter(|stage| !self.is_over(stage));
        let mut tables: Vec<StageTable> = to_come.map(|stage| self.stage(stage)).collect();
        let asked =
            |item: &&Item| !stages.iter().any(|stage| stage.items.iter().any(|entry| entry.item == item.id));
        let rest: Vec<&Item> = self.printed.plan.doc().items.iter().filter(asked).collect();
        if !rest.is_empty() {
            tables.push(StageTable {
                name: self.say("sheet-not-in-stage"),
                weeks: self.say("sheet-not-in-stage-why"),
                days: None,
                rows: rest.into_iter().map(|item| self.row(item, &item.dose, None, None)).collect(),
                rounds: Vec::new(),
            });
        }
        tables
    }

    fn is_over(&self, stage: &Stage) -> bool {
        let zero = self.printed.plan.episode(&stage.episode).and_then(|episode| episode.day_zero.date());
        zero.is_some_and(|zero| week_span(zero, stage.from_week, stage.through_week).1 < self.printed.day)
    }

    fn stage(&self, stage: &Stage) -> StageTable {
        let plan = self.printed.plan;
        let zero = plan.episode(&stage.episode).and_then(|episode| episode.day_zero.date());
        let days = zero.map(|zero| {
            let (first, last) = week_span(zero, stage.from_week, stage.through_week);
            let words = self.speaker.words;
            let args = [("from", words.day(first).into()), ("through", words.day_and_year(last).into())];
            words.say("sheet-stage-days", &args)
        });
        let mut entries: Vec<(&StageItem, &Item)> =
            stage.items.iter().filter_map(|entry| Some((entry, plan.item(&entry.item)?))).collect();
        entries.sort_by_key(|(_, item)| item.order);
        let rows = entries.into_iter().map(|(entry, item)| {
            let round = stage.rounds.iter().find(|round| round.items.contains(&item.id));
            let dose = entry.dose.clone().unwrap_or_else(|| self.dose(item));
            self.row(item, &dose, entry.when.as_ref(), round)
        });
        StageTable {
            name: self.speaker.text(&stage.name),
            weeks: self.span(stage.from_week, stage.through_week),
            days,
            rows: rows.collect(),
            rounds: stage.rounds.iter().map(|round| self.round(round)).collect(),
        }
    }

    fn row(
        &self,
        item: &Item,
        dose: &Dose,
        when: Option<&sendaluna_core::plan::doc::When>,
        round: Option<&Round>,
    ) -> Asked {
        let mut dose = dose.clone();
        if let Some(round) = round {
            (dose.sets, dose.rest_s) = (round.rounds, round.rest_s);
        }
        let not_yet = match self.gate(item, &dose) {
            Gate::Open => None,
            Gate::NotYet(not_yet) => Some(self.speaker.opens(&not_yet)),
        };
        Asked {
            n: self.number(&item.id),
            name: self.speaker.name(self.printed.library, self.printed.plan, &item.movement),
            when: self.speaker.when(when.unwrap_or(&item.when)),
            dose: self.speaker.dose(&dose),
            not_yet,
        }
    }

    fn round(&self, round: &Round) -> String {
        let name = |id: &ItemId| {
            let item = self.printed.plan.item(id)?;
            Some(self.speaker.name(self.printed.library, self.printed.plan, &item.movement))
        };
        let names: Vec<String> = round.items.iter().filter_map(name).collect();
        let args = [
            ("items", self.speaker.words.list(&names).into()),
            ("rounds", round.rounds.into()),
            ("rest", round.rest_s.into()),
        ];
        self.speaker.words.say("sheet-round", &args)
    }

    /// The number of an exercise, counted from 1 in the plan's order.
    pub(super) fn number(&self, id: &ItemId) -> usize {
        self.ordered().iter().position(|item| item.id == *id).map_or(0, |at| at + 1)
    }

    /// Items in the order of a session.
    pub(super) fn ordered(&self) -> Vec<&Item> {
        let mut items: Vec<&Item> = self.printed.plan.doc().items.iter().collect();
        items.sort_by_key(|item| item.order);
        items
    }
}
