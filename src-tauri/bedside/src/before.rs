//! Before a session: what is asked, and what is coming.

use std::collections::BTreeSet;

use sendaluna_core::calendar::DueItem;
use sendaluna_core::ids::{ItemId, SignId};
use sendaluna_core::plan::doc::Tier;
use sendaluna_core::record::{By, Distress};
use sendaluna_core::session::{PainAnswer, Runner, answer_at_rest, answer_to_distress_at_rest, arrange};
use sendaluna_words::Words;
use serde::Deserialize;

use crate::begin::gravest;
use crate::clock::Now;
use crate::day::contacts;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::stop::stop_view;
use crate::view::session::{AnsweredView, BeforeView, ComingView, DateView};
use crate::view::window::WrittenView;
use sendaluna_say::Speaker;

/// What is said about pain before a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PainBefore {
    /// This morning, 0 to 10.
    pub morning: Option<u8>,
    /// Now, at rest, 0 to 10.
    pub now: Option<u8>,
    /// What a helper sees now, in place of a figure.
    #[serde(default)]
    pub seen: Option<Distress>,
}

impl Bedside {
    /// What is asked before a session of everything due, or of one item, and what is coming. Refused,
    /// before anybody answers for nothing, if no session could begin anyway.
    pub fn before_view(
        &self,
        only: Option<&ItemId>,
        goes_on: bool,
        words: &Words,
        now: &Now,
    ) -> Result<BeforeView, BedsideError> {
        self.check_session(only, now)?;
        let known = self.known()?;
        let before = self.before(only, now)?;
        let speaker = Speaker::new(words, Some(&known.plan));
        let open = known.state.open_session(known.today(now.at).session_day).filter(|_| goes_on);
        let (mut chosen, runner) = if let Some(open) = open {
            (self.left_of_open(&known, now), self.runner_of_open(&known, open, now))
        } else {
            let chosen = self.chosen(&known, only, now)?;
            let arranged = arrange(&known.plan, self.library(), &chosen.iter().collect::<Vec<_>>());
            (chosen, Runner::new(&arranged))
        };
        chosen.retain(|due| runner.parts_left().any(|part| part.item == due.item));
        let coming = Coming { home: self, known: &known, speaker: &speaker, due: &chosen };
        Ok(BeforeView {
            confirm_date: before.confirm_date.map(|day| DateView { day, said: words.day_and_year(day) }),
            questions: before.questions,
            morning: before.morning,
            signs: contacts(&known.plan, &speaker).signs,
            can_go_on: before.open_session.is_some(),
            coming: runner.parts_left().filter_map(|part| coming.item(&part.item)).collect(),
            minutes: runner.length_ms().div_ceil(60_000),
            have_ready: coming.have_ready(),
            beside_you: coming.items().any(|item| item.beside_you),
        })
    }

    /// The answers before a session: signs first, and pain only if no sign says to ring. That of the
    /// morning counts only where it is asked.
    pub fn answer_before(
        &mut self,
        signs: &[SignId],
        pain: PainBefore,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<AnsweredView, BedsideError> {
        if [pain.morning, pain.now].into_iter().flatten().any(|level| level > 10) {
            return Err(BedsideError::FigureOutOfRange);
        }
        let known = self.known()?;
        let rings = |tier: Option<Tier>| matches!(tier, Some(Tier::Emergency | Tier::RingToday));
        let mut tier = gravest(&known, signs)?;
        let mut written = self.answer_signs(signs, by, now).map(|_| ());
        let mut morning = None;
        if let Some(level) = pain.morning.filter(|_| !rings(tier) && known.asks_morning(now)) {
            written = written.and_then(|()| {
                morning = self.answer_pain_morning(level, by, words, now)?;
                Ok(())
            });
        }
        if let Some(level) = pain.now.filter(|_| !rings(tier)) {
            if answer_at_rest(&known.plan.doc().pain, level) == PainAnswer::StopToday {
                tier = Some(Tier::RingToday);
            }
            written = written.and_then(|()| self.answer_pain_before(level, by, now).map(|_| ()));
        } else if let Some(seen) = pain.seen.filter(|_| !rings(tier)) {
            if answer_to_distress_at_rest(seen) == PainAnswer::StopToday {
                tier = Some(Tier::RingToday);
            }
            written = written.and_then(|()| self.answer_distress_before(seen, by, now));
        }
        // Whom to ring is said even if nothing could be written.
        if !rings(tier) {
            written?;
        }
        let speaker = Speaker::new(words, Some(&known.plan));
        let stop = tier.filter(|_| rings(tier)).map(|tier| stop_view(&known.plan, &speaker, tier));
        let noted = (tier == Some(Tier::Note)).then(|| words.say("signs-noted", &[]));
        Ok(AnsweredView { stop, noted, morning })
    }

    /// "I have spoken to the clinic."
    pub fn spoke_view(&mut self, by: By, words: &Words, now: &Now) -> Result<WrittenView, BedsideError> {
        self.spoke_to_clinic(by, now)?;
        Ok(WrittenView { said: words.say("spoke-done", &[]), against: false })
    }
}

struct Coming<'a> {
    home: &'a Bedside,
    known: &'a Known,
    speaker: &'a Speaker<'a>,
    due: &'a [DueItem],
}

impl<'a> Coming<'a> {
    fn items(&self) -> impl Iterator<Item = &'a sendaluna_core::plan::doc::Item> {
        self.due.iter().filter_map(|due| self.known.plan.item(&due.item))
    }

    fn item(&self, id: &ItemId) -> Option<ComingView> {
        let plan = &self.known.plan;
        let due = self.due.iter().find(|due| due.item == *id)?;
        let item = plan.item(id)?;
        let position = self.home.library().find(plan, &item.movement)?.movement().facts().position;
        Some(ComingView {
            item: id.clone(),
            name: self.speaker.name(self.home.library(), plan, &item.movement),
            side: self.speaker.side(plan, item),
            position,
            figure: crate::figure::of_item(plan, item),
            dose: self.speaker.dose(&due.dose),
        })
    }

    fn have_ready(&self) -> Vec<String> {
        let library = self.home.library();
        let found = self.items().filter_map(|item| library.find(&self.known.plan, &item.movement));
        let props: BTreeSet<_> = found.flat_map(|found| found.movement().props.clone()).collect();
        props.into_iter().map(|prop| self.speaker.prop(prop)).collect()
    }
}
