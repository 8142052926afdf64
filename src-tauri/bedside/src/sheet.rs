//! The plan on paper, as it holds from today on; and today alone, on one page.

use sendaluna_core::calendar::Away;
use sendaluna_core::gate::Gate;
use sendaluna_core::plan::doc::Item;
use sendaluna_paper::Paper;
use sendaluna_paper::sheet::{PlanSheet, plan_sheet};
use sendaluna_paper::today::{Asked, Shut, TodayPage, today_page};
use sendaluna_say::Speaker;
use sendaluna_words::Words;

use crate::clock::Now;
use crate::day::{View, again_from};
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::stop::stop_view;

impl Bedside {
    /// The plan sheet, as a tagged PDF, in ordinary or in large print.
    pub fn sheet(&self, words: &Words, large: bool, now: &Now) -> Result<Vec<u8>, BedsideError> {
        let known = self.known()?;
        let printed = PlanSheet {
            plan: &known.plan,
            standing: &known.standing,
            library: self.library(),
            day: known.today(now.at).gate_day,
            set_back: known.state.set_back_since(known.standing.set_backs_released_until),
            tightened: &known.state.tightened,
            history: Some(&known.state.history),
            at: now.at,
        };
        Ok(plan_sheet(&printed, words, Paper { large })?)
    }

    /// Today on one page, as a tagged PDF, for somebody beside the patient who counts and ticks.
    pub fn today_page(&self, words: &Words, now: &Now) -> Result<Vec<u8>, BedsideError> {
        let known = self.known()?;
        let day = self.due_day(&known, now);
        let asked = |due| Asked { due, again_from: again_from(&known, due, now) };
        let speaker = Speaker::new(words, Some(&known.plan));
        let must_ring = known.state.must_ring.map(|(_, tier)| stop_view(&known.plan, &speaker, tier).said);
        let ring_first = (day.away == Away::RingFirst).then(|| words.say("notice-ring-first", &[]));
        // A long break is said once: in place of the exercises.
        let held = must_ring.or_else(|| ring_first.clone());
        let mut notices = View::new(self, &known, words, now).notices_apart();
        notices.retain(|said| ring_first.as_ref() != Some(said) || held != ring_first);
        let printed = TodayPage {
            plan: &known.plan,
            standing: &known.standing,
            library: self.library(),
            date: known.today(now.at).session_day,
            gate_day: known.today(now.at).gate_day,
            episodes: &day.episodes,
            asked: day.items.iter().map(asked).collect(),
            shut: self.shut(&known, now),
            notices,
            held,
            at: now.at,
        };
        Ok(today_page(&printed, words)?)
    }

    /// What may not be done yet, of the whole plan.
    fn shut<'a>(&self, known: &'a Known, now: &Now) -> Vec<Shut<'a>> {
        let (today, gates) = (self.due_day(known, now).items, known.gates(self.library()));
        let shut = |item: &'a Item| {
            let of_today = today.iter().find(|due| due.item == item.id).map(|due| due.gate.clone());
            let apart = || gates.item(item, &known.dose_apart(item, now), &known.gate_day(now.at));
            let day_zero = known.plan.episode(&item.episode).and_then(|episode| episode.day_zero.date());
            match of_today.unwrap_or_else(apart) {
                Gate::NotYet(not_yet) => Some(Shut { item, opens: not_yet.opens }),
                Gate::Open => day_zero.is_none().then_some(Shut { item, opens: None }),
            }
        };
        known.plan.doc().items.iter().filter_map(shut).collect()
    }
}
