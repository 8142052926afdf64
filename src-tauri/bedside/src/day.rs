//! What is due today, what is not yet, which rules hold, and whom to ring: views in the patient's
//! words, for every shell.

use chrono::NaiveTime;
use sendaluna_core::calendar::{Away, DueDay, DueItem};
use sendaluna_core::gate::{Cause, DayRule, Gate, Standstill, day_rules};
use sendaluna_core::home_test::DueTest;
use sendaluna_core::plan::Amount;
use sendaluna_core::plan::doc::{Dose, Item};
use sendaluna_core::session::{arrange, closed_length_ms};
use sendaluna_words::Words;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::stop::stop_view;
use crate::view::day::{
    CareView, ContactsView, DayView, GateView, GatesView, ItemView, NowView, ReasonView, RuleView, SignView,
};
use crate::view::home_test::TestView;
use crate::weeks::weeks;
use sendaluna_say::{SaidSign, Speaker};

impl Bedside {
    /// Today.
    pub fn day(&self, words: &Words, now: &Now) -> Result<DayView, BedsideError> {
        let known = self.known()?;
        Ok(View::new(self, &known, words, now).day())
    }

    /// Every item's gate, the rules of the day, and lifts that have no effect.
    pub fn gates(&self, words: &Words, now: &Now) -> Result<GatesView, BedsideError> {
        let known = self.known()?;
        let view = View::new(self, &known, words, now);
        let at = known.gate_day(now.at);
        Ok(GatesView {
            date: at.day(),
            notices: view.notices(),
            items: view.all_items(),
            rules: view.rules(),
            lifts_ignored: view.lifts_ignored(),
        })
    }

    /// Whom to ring, and when to stop.
    pub fn contacts(&self, words: &Words) -> Result<ContactsView, BedsideError> {
        let known = self.known()?;
        Ok(contacts(&known.plan, &Speaker::new(words, Some(&known.plan))))
    }
}

pub(crate) struct View<'a> {
    home: &'a Bedside,
    known: &'a Known,
    speaker: Speaker<'a>,
    now: &'a Now,
    due: DueDay,
}

impl<'a> View<'a> {
    pub(crate) fn new(home: &'a Bedside, known: &'a Known, words: &'a Words, now: &'a Now) -> Self {
        let due = home.due_day(known, now);
        View { home, known, speaker: Speaker::new(words, Some(&known.plan)), now, due }
    }

    fn day(&self) -> DayView {
        let due = &self.due;
        let today = self.known.today(self.now.at).session_day;
        let open: Vec<&DueItem> = due.items.iter().filter(|item| item.is_due_at(self.now.at)).collect();
        let arranged = arrange(&self.known.plan, self.home.library(), &open);
        let minutes = closed_length_ms(&arranged.parts, &arranged.blocks).div_ceil(60_000);
        let exercises = open.len();
        let not_yet: Vec<ItemView> = self.all_items().into_iter().filter(|item| !item.gate.open).collect();
        let words = self.speaker.words;
        DayView {
            why_not: self.known.why_not_view(words, self.now),
            line: weeks(self.known, &self.speaker, today, &not_yet),
            stop: self
                .known
                .state
                .must_ring
                .map(|(_, tier)| stop_view(&self.known.plan, &self.speaker, tier)),
            date: today,
            date_said: words.day(today),
            called: self.known.plan.head().called.clone(),
            weeks: due.episodes.iter().map(|day| self.speaker.week_of(&self.known.plan, day)).collect(),
            notices: self.notices(),
            now: NowView {
                exercises,
                minutes,
                said: match exercises {
                    0 => words.say("day-nothing-now", &[]),
                    _ => {
                        words.say("day-now", &[("exercises", exercises.into()), ("minutes", minutes.into())])
                    }
                },
            },
            due: due
                .items
                .iter()
                .filter(|item| item.gate.is_open())
                .filter_map(|item| self.due_item(item))
                .collect(),
            not_yet,
            tests: self.tests(),
            care: due.care.iter().filter_map(|care| self.care(care)).collect(),
            rules: self.rules(),
            lifts_ignored: self.lifts_ignored(),
            contacts: contacts(&self.known.plan, &self.speaker),
            can_begin: exercises > 0 && self.known.state.must_ring.is_none() && due.away != Away::RingFirst,
            ring_first: due.away == Away::RingFirst,
            can_go_on: self.known.state.open_session(today).is_some(),
        }
    }

    fn notices(&self) -> Vec<String> {
        let must_ring = self.known.state.must_ring.map(|_| self.speaker.words.say("notice-must-ring", &[]));
        must_ring.into_iter().chain(self.notices_apart()).collect()
    }

    /// Things to know first, but for a stop that said to ring.
    pub(crate) fn notices_apart(&self) -> Vec<String> {
        let words = self.speaker.words;
        let (away, over) = (self.due.away, self.due.over);
        let stands_still = self.known.gate_day(self.now.at).stands_still().map(|why| match why {
            Standstill::PastReview => "reason-past-review",
            Standstill::SetBack => "reason-set-back",
        });
        let is_back = away == Away::Restart;
        let falls_back = is_back && !self.known.after_break(self.now).is_empty();
        let away = match away {
            Away::Restart if !self.known.plan.doc().return_dose.doses.is_empty() => Some("notice-restart"),
            Away::No | Away::Restart => None,
            Away::RingFirst => Some("notice-ring-first"),
        };
        let falls_back = falls_back.then_some("notice-steps-after-break");
        let clock = self.known.state.clock_jump_at(self.now.at).map(|_| "notice-clock");
        let over = over.then_some("notice-plan-over");
        [stands_still, clock, away, falls_back, over]
            .into_iter()
            .flatten()
            .map(|id| words.say(id, &[]))
            .collect()
    }

    fn due_item(&self, due: &DueItem) -> Option<ItemView> {
        let item = self.known.plan.item(&due.item)?;
        Some(self.item_of_today(item, due))
    }

    /// Every item of the plan: with today's dose if it is of today, else with its own.
    fn all_items(&self) -> Vec<ItemView> {
        let today = &self.due.items;
        let mut items: Vec<&Item> = self.known.plan.doc().items.iter().collect();
        items.sort_by_key(|item| item.order);
        let view = |item: &Item| match today.iter().find(|due| due.item == item.id) {
            Some(due) => self.item_of_today(item, due),
            None => self.item_of_another_day(item),
        };
        items.into_iter().map(view).collect()
    }

    fn item_of_today(&self, item: &Item, due: &DueItem) -> ItemView {
        let mut times_said = self.speaker.times(due, again_from(self.known, due, self.now));
        let mut gate = self.gate(&due.gate);
        if due.rests_today && gate.open {
            times_said = self.speaker.words.say("times-rests-today", &[]);
            gate.said.clone_from(&times_said);
        }
        let is_due = due.is_due_at(self.now.at);
        let can_start = gate.open
            && !due.rests_today
            && !due.is_enough_today()
            && !due.is_too_soon(self.now.at)
            && self.known.state.must_ring.is_none()
            && self.due.away != Away::RingFirst;
        ItemView {
            times: due.times,
            done: due.done,
            times_said,
            is_due,
            can_start,
            gate,
            ..self.item(item, &due.dose)
        }
    }

    /// An item that no stage of today has: what is not forbidden is said to be of another day.
    fn item_of_another_day(&self, item: &Item) -> ItemView {
        let words = self.speaker.words;
        let gates = self.known.gates(self.home.library());
        let dose = self.known.dose_apart(item, self.now);
        let mut gate = self.gate(&gates.item(item, &dose, &self.known.gate_day(self.now.at)));
        let episode = self.known.plan.episode(&item.episode);
        if episode.is_some_and(|episode| episode.day_zero.date().is_none()) {
            gate.open = false;
            gate.said = words.say("not-yet-day-zero-unknown", &[]);
        } else if gate.open {
            gate.said = match self.known.next_day_of(&item.id, self.now) {
                Some(day) => words.say("gate-open-from", &[("day", words.day_and_year(day).into())]),
                None => words.say("gate-not-in-plan", &[]),
            };
        }
        let times = self.known.state.history.times(&item.id, self.known.today(self.now.at).session_day);
        ItemView { done: times, gate, ..self.item(item, &dose) }
    }

    /// What is the same on every day.
    fn item(&self, item: &Item, dose: &Dose) -> ItemView {
        let (library, plan, speaker) = (self.home.library(), &self.known.plan, &self.speaker);
        let facts = library.find(plan, &item.movement).map(|found| found.movement().facts());
        let unknown = || speaker.words.say("position-unknown", &[]);
        ItemView {
            item: item.id.clone(),
            name: speaker.name(library, plan, &item.movement),
            side: speaker.side(plan, item),
            position: facts.map(|facts| facts.position),
            position_said: facts.map_or_else(unknown, |facts| speaker.position(facts)),
            set_up: speaker.set_up(library, plan, &item.movement),
            how: speaker.how(library, plan, &item.movement),
            feel: speaker.feel(library, plan, &item.movement),
            figure: crate::figure::of_item(plan, item),
            faults: speaker.faults(library, plan, &item.movement),
            tightened: self.known.state.tightened.iter().any(|tightened| tightened.item == item.id),
            is_due: false,
            can_start: false,
            dose: speaker.dose(dose),
            step: self.home.step_view(self.known, &self.due, item, speaker, self.now),
            sets: dose.sets,
            each: dose.amount().map_or(0, Amount::most),
            times: 0,
            done: 0,
            times_said: speaker.words.say("times-not-today", &[]),
            beside_you: item.beside_you,
            note: item.note.as_ref().map(|note| speaker.text(note)),
            gate: self.gate(&Gate::Open),
        }
    }

    fn gate(&self, gate: &Gate) -> GateView {
        let Gate::NotYet(not_yet) = gate else {
            let said = self.speaker.words.say("gate-open", &[]);
            return GateView { open: true, opens: None, said, reasons: Vec::new() };
        };
        let reason = |reason: &sendaluna_core::gate::Reason| {
            let (precaution, set_by) = match &reason.cause {
                Cause::Precaution { precaution, set_by, .. } => {
                    (Some(precaution.id.clone()), Some(self.speaker.who(set_by)))
                }
                _ => (None, None),
            };
            ReasonView { precaution, set_by, opens: reason.opens, said: self.speaker.reason(reason) }
        };
        GateView {
            open: false,
            opens: not_yet.opens,
            said: self.speaker.opens(not_yet),
            reasons: not_yet.reasons.iter().map(reason).collect(),
        }
    }

    fn care(&self, due: &sendaluna_core::calendar::DueCare) -> Option<CareView> {
        let care = self.known.plan.doc().care.iter().find(|care| care.id == due.care)?;
        let args = [("done", due.done.into()), ("times", due.times.into())];
        let id = if due.times > 0 { "care-done-of" } else { "care-done" };
        let (text, done_said) = (self.speaker.text(&care.text), self.speaker.words.say(id, &args));
        Some(CareView { care: due.care.clone(), text, times: due.times, done: due.done, done_said })
    }

    fn tests(&self) -> Vec<TestView> {
        let words = self.speaker.words;
        let view = |due: DueTest| TestView {
            name: crate::home_test::name(words, due.kind),
            until_said: words.say("test-until", &[("day", words.day(due.through).into())]),
            can_begin: due.can_begin(),
            gate: self.gate(&due.gate),
            test: due.test,
        };
        self.home.tests_due(self.known, self.now).into_iter().map(view).collect()
    }

    fn rules(&self) -> Vec<RuleView> {
        let at = self.known.gate_day(self.now.at);
        let words = self.speaker.words;
        let view = |rule: DayRule| {
            let set_by = self.speaker.who(&rule.set_by);
            RuleView {
                text: self.speaker.text(&rule.precaution.why),
                until_said: self.speaker.rule_ends(&rule),
                set_by_said: words.say("set-by", &[("who", set_by.as_str().into())]),
                set_by,
                opens: rule.opens,
                precaution: rule.precaution.id,
            }
        };
        day_rules(&self.known.standing, &at, self.known.plan.head().review_by).into_iter().map(view).collect()
    }

    fn lifts_ignored(&self) -> Vec<String> {
        let standing = &self.known.standing;
        standing.ignored_lifts.iter().map(|ignored| self.speaker.ignored_lift(standing, ignored)).collect()
    }
}

/// From when on an item may be done again today, on the clock on the wall, while the plan asks for a rest.
pub(crate) fn again_from(known: &Known, due: &DueItem, now: &Now) -> Option<NaiveTime> {
    let spaced = due.is_too_soon(now.at) && !due.is_enough_today();
    due.not_before.filter(|_| spaced).map(|from| known.local_time(from))
}

pub(crate) fn contacts(plan: &sendaluna_core::plan::Plan, speaker: &Speaker<'_>) -> ContactsView {
    let clinic = &plan.doc().clinic;
    let signs = speaker.signs(plan).into_iter();
    let signs = signs.map(|SaidSign { sign, tier, text }| SignView { sign, tier, text }).collect();
    let phone = [("phone", clinic.emergency_phone.as_str().into())];
    ContactsView {
        clinic: clinic.name.clone(),
        phone: clinic.phone.clone(),
        out_of_hours_phone: clinic.out_of_hours_phone.clone(),
        emergency_phone: clinic.emergency_phone.clone(),
        emergency_advice: speaker.text(&clinic.emergency_advice),
        signs,
        cautions: [
            "caution-plan-is-clinics",
            "caution-nobody-sees",
            "caution-emergency",
            "caution-not-medical",
        ]
        .into_iter()
        .map(|id| speaker.words.say(id, &phone))
        .collect(),
    }
}
