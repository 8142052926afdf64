//! The top strip.

use sendaluna_core::gate::{Gate, GateDay, Gates, Standstill};
use sendaluna_core::measure::{DayMark, FlagGroup, Period};
use sendaluna_core::precaution::Rule;
use sendaluna_say::Speaker;
use serde::Serialize;

use super::Page;

/// Days of the strip.
const LAST_DAYS: usize = 7;

/// What a therapist sees first.
#[derive(Debug, Serialize)]
pub(super) struct Strip {
    pub episodes: Vec<String>,
    pub weight: Vec<String>,
    pub gates: Vec<String>,
    pub ring: Vec<String>,
    pub ring_none: Option<String>,
    pub talk: Vec<String>,
    pub file: Vec<String>,
    pub last: Vec<LastDay>,
    pub worst: String,
    pub pain: Vec<String>,
    pub asks: String,
}

/// One of the last days.
#[derive(Debug, Serialize)]
pub(super) struct LastDay {
    pub weekday: String,
    /// How it is drawn.
    pub mark: DayMark,
    pub said: String,
}

impl Page<'_> {
    pub(super) fn strip(&self, period: &Period) -> Strip {
        let ring = self.flags(FlagGroup::RingToday);
        Strip {
            episodes: self.episodes(period),
            weight: self.weight(period),
            gates: self.gates(period),
            ring_none: ring.is_empty().then(|| self.say("report-page-ring-none")),
            ring,
            talk: self.flags(FlagGroup::TalkAbout),
            file: self.flags(FlagGroup::TheFile),
            last: self.last_days(),
            worst: self.worst(),
            pain: self.pain(),
            asks: self
                .printed
                .reported
                .asks
                .map_or_else(|| self.say("report-page-asks-none"), str::to_string),
        }
    }

    fn plan_speaker<'a>(&'a self, period: &'a Period) -> Speaker<'a> {
        Speaker::new(self.words, Some(&period.plan))
    }

    fn episodes(&self, period: &Period) -> Vec<String> {
        let through = self.printed.reported.measures.through;
        period.plan.doc().episodes.iter().map(|episode| self.speaker.episode(episode, through)).collect()
    }

    fn gate_day(&self, period: &Period) -> GateDay {
        let set_back = self.state.set_back_since(period.standing.set_backs_released_until);
        GateDay::held(self.printed.reported.measures.through, period.plan.head().review_by, set_back)
    }

    fn weight(&self, period: &Period) -> Vec<String> {
        let day = self.gate_day(period).day();
        let speaker = self.plan_speaker(period);
        let holds = period.standing.in_force.iter().filter(|p| p.opens.is_none_or(|opens| day < opens));
        let weight = holds.filter(|p| matches!(p.precaution.rule, Rule::WeightBearing { .. }));
        let said: Vec<String> = weight.map(|p| speaker.text(&p.precaution.why)).collect();
        if said.is_empty() { vec!["–".to_string()] } else { said }
    }

    fn gates(&self, period: &Period) -> Vec<String> {
        let (plan, at) = (&period.plan, self.gate_day(period));
        let gates = Gates {
            plan,
            library: self.printed.reported.library,
            standing: &period.standing,
            tightened: &self.state.tightened,
        };
        let shut = plan.doc().items.iter().filter_map(|item| match gates.item(item, &item.dose, &at) {
            Gate::Open => None,
            Gate::NotYet(not_yet) => Some((item, not_yet.opens)),
        });
        let shut: Vec<_> = shut.collect();
        let mut said = vec![self.words.say("report-page-gates-n", &[("n", shut.len().into())])];
        let next = shut.iter().filter_map(|(item, opens)| Some((opens.as_ref()?, item)));
        match next.min_by_key(|(opens, item)| (**opens, item.order)) {
            Some((opens, item)) => {
                let name = self.speaker.name(&item.id);
                let day = self.words.day_and_year(*opens);
                said.push(self.words.say("report-page-next", &[("name", name.into()), ("day", day.into())]));
            }
            None if !shut.is_empty() => said.push(self.say("report-page-next-none")),
            None => {}
        }
        said.extend(at.stands_still().map(|why| match why {
            Standstill::SetBack => self.say("reason-set-back"),
            Standstill::PastReview => {
                let day = self.words.day_and_year(plan.head().review_by);
                self.words.say("report-page-review", &[("day", day.into())])
            }
        }));
        said
    }

    fn last_days(&self) -> Vec<LastDay> {
        let days = &self.printed.reported.measures.days;
        let last = days.iter().skip(days.len().saturating_sub(LAST_DAYS));
        let said = |day: &sendaluna_core::measure::DayMeasure| LastDay {
            weekday: self.words.weekday_short(day.day),
            mark: day.mark,
            said: self.speaker.mark(day.mark),
        };
        last.map(said).collect()
    }

    fn worst(&self) -> String {
        let worst = self.printed.reported.measures.least_done();
        let Some(worst) = worst else { return self.say("report-page-worst-none") };
        let reasons = self.speaker.left_out(worst);
        let reasons = if reasons.is_empty() {
            String::new()
        } else {
            self.words.say("report-page-left", &[("reasons", reasons.into())])
        };
        let args = [
            ("item", self.speaker.name(&worst.item).into()),
            ("part", self.speaker.part(&worst.all).into()),
            ("reasons", reasons.into()),
        ];
        self.words.say("report-page-worst-of", &args)
    }

    fn pain(&self) -> Vec<String> {
        let feeling = &self.printed.reported.measures.feeling;
        let last =
            |of: &dyn Fn(&sendaluna_core::measure::PainWeek) -> Option<sendaluna_core::measure::Levels>| {
                self.speaker.levels(feeling.weeks.iter().rev().find_map(of).as_ref())
            };
        let line = |id: &str, levels: String| self.words.say(id, &[("levels", levels.into())]);
        let mut said = vec![
            line("report-page-pain-rest", last(&|week| week.before)),
            line("report-page-pain-morning", last(&|week| week.next_morning)),
        ];
        said.extend(feeling.change.map(|change| {
            let way = match () {
                () if feeling.rises() => "rose",
                () if change < -2.0 => "fell",
                () => "same",
            };
            let points = self.words.decimal(change.abs(), usize::from(change.fract() != 0.0));
            self.words.say("report-page-pain-change", &[("change", way.into()), ("points", points.into())])
        }));
        said
    }
}
