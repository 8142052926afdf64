//! What an offered plan says, for the one sheet that is read before "This is my plan". The side is
//! asked, so it is not in here.

use sendaluna_core::calendar::Today;
use sendaluna_core::gate::{Gate, GateDay, Gates};
use sendaluna_words::Words;

use crate::clock::Now;
use crate::day::contacts;
use crate::figure;
use crate::home::{Bedside, clinic_zone};
use crate::receive::Offer;
use crate::view::receive::{EpisodeView, NotYetView, SummaryView};
use sendaluna_say::Speaker;

impl Bedside {
    /// What an offered plan says.
    pub fn summary(&self, words: &Words, offer: &Offer, now: &Now) -> SummaryView {
        let plan = offer.plan();
        let speaker = Speaker::new(words, Some(plan));
        let days = Today::new(now.at, self.device(), &clinic_zone(plan));
        let today = days.session_day;
        let held = self.known_if_any().ok().flatten();
        let released = offer.standing.set_backs_released_until;
        let set_back = held.and_then(|known| known.state.set_back_since(released));
        let at = GateDay::held(days.gate_day, plan.head().review_by, set_back);
        let gates = Gates { plan, library: self.library(), standing: &offer.standing, tightened: &[] };
        let not_yet = |item: &sendaluna_core::plan::doc::Item| match gates.item(item, &item.dose, &at) {
            Gate::Open => None,
            Gate::NotYet(not_yet) => Some(NotYetView {
                name: speaker.name(self.library(), plan, &item.movement),
                opens: not_yet.opens,
                said: speaker.opens(&not_yet),
                figure: figure::drawn(
                    self.library(),
                    plan,
                    &offer.standing,
                    &figure::of_item(plan, item),
                    &at,
                ),
            }),
        };
        let ignored = &offer.standing.ignored_lifts;
        SummaryView {
            digest: offer.digest(),
            called: plan.head().called.clone(),
            born: plan.head().born,
            clinic: offer.clinic().to_string(),
            revision: plan.head().revision,
            episodes: plan
                .doc()
                .episodes
                .iter()
                .map(|e| EpisodeView { name: speaker.text(&e.name), day_said: speaker.day_zero(e.day_zero) })
                .collect(),
            exercises: plan.doc().items.len(),
            not_yet: plan.doc().items.iter().filter_map(not_yet).collect(),
            lifts_ignored: ignored.iter().map(|lift| speaker.ignored_lift(&offer.standing, lift)).collect(),
            contacts: contacts(plan, &speaker),
            today,
            today_said: words.day_and_year(today),
            first: offer.first,
            same_again: offer.same_again(),
        }
    }
}
