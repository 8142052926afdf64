//! What was due, and what was done of it, day by day; weeks, items and the whole add days up.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::Serialize;

use crate::calendar::{DueItem, History, due, week_of};
use crate::gate::{GateDay, Gates};
use crate::ids::ItemId;
use crate::measure::{Left, Measured, Period, Portion, last_plan_with, within};
use crate::plan::{Amount, Plan};
use crate::record::{
    Body, BreakWhy, Ending, Event, How, LeaveReason, SessionRecord, SetBackKind, State, last_day_once_ended,
};
use crate::steps::{Stand, Stepped};

/// What a day comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum DayMark {
    /// Nothing was due.
    NotDue,
    /// Every due item was done as often as asked.
    Whole,
    /// Something was done.
    Part,
    /// The pain rule or a warning sign said to stop.
    StoppedAsTold,
    /// Nothing is known.
    NoRecord,
}

/// A day.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct DayMeasure {
    /// Which.
    pub day: NaiveDate,
    /// What it comes to.
    pub mark: DayMark,
    /// In a break that the patient declared.
    pub in_break: bool,
    /// That break was declared after it had begun.
    pub declared_late: bool,
    /// Each due item, and each that was done.
    pub items: Vec<(ItemId, Portion)>,
}

/// Days and sets, added up.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct Adherence {
    /// Days on which something was due.
    pub days_due: u32,
    /// Of these: whole.
    pub whole: u32,
    /// Part.
    pub part: u32,
    /// Stopped as told.
    pub stopped_as_told: u32,
    /// No record.
    pub no_record: u32,
    /// Sets.
    pub dose: Portion,
}

/// A week.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WeekMeasure {
    /// Counted from 1; 0 before day 0 of every episode.
    pub week: u16,
    /// Its first day in the span.
    pub from: NaiveDate,
    /// Its last day in the span.
    pub through: NaiveDate,
    /// With breaks that the patient declared.
    pub all: Adherence,
    /// Without them.
    pub without_breaks: Adherence,
}

/// An item.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemMeasure {
    /// Which.
    pub item: ItemId,
    /// Sets, with breaks that the patient declared.
    pub all: Portion,
    /// Sets, without them.
    pub without_breaks: Portion,
    /// Days on which more was done than asked.
    pub days_beyond: u32,
    /// How often it was left out, by reason.
    pub left: Vec<Left>,
    /// How often it was done in its easier variant.
    pub easier: u32,
    /// Days on which it was done against a gate.
    pub against_gate: u32,
}

/// Every day of a span, with the plan that was in force on it.
pub(super) fn of_span(measured: &Measured<'_>, from: NaiveDate, through: NaiveDate) -> Vec<DayMeasure> {
    let done = Done::of(measured.events);
    let breaks = breaks(measured.events);
    let mut before = State::default();
    let mut events = measured.events.iter().peekable();
    let mut days = Vec::new();
    for day in from.iter_days().take_while(|day| *day <= through) {
        while let Some(event) = events.next_if(|event| event.stamp.day() < day) {
            before.apply(event);
        }
        let period = measured.periods.iter().rev().find(|period| period.from <= day);
        let look = Look { measured, done: &done, breaks: &breaks, day };
        days.push(look.day(period, &before));
    }
    days
}

/// What was done, by day, with every correction; and doses that stepped on that day.
#[derive(Default)]
struct Done {
    sessions: BTreeMap<NaiveDate, Vec<SessionRecord>>,
    by_hand: BTreeMap<NaiveDate, Vec<(ItemId, u8, u16)>>,
    moved: BTreeMap<NaiveDate, Vec<Moved>>,
}

/// A dose that stepped, after so many times done that day.
struct Moved {
    item: ItemId,
    after: u16,
    stepped: Stepped,
}

impl Done {
    fn of(events: &[Event]) -> Self {
        let (mut done, mut state) = (Self::default(), State::default());
        for event in events {
            state.apply(event);
            let on = event.stamp.day();
            match &event.body {
                Body::DoneByHand { item, day, sets, each, .. } => {
                    done.by_hand.entry(*day).or_default().push((item.clone(), *sets, *each));
                }
                Body::DoseStepped { item, .. } => {
                    let after = state.history.times(item, on);
                    let stepped = state.history.steps.get(item).copied();
                    let moved = stepped.map(|stepped| Moved { item: item.clone(), after, stepped });
                    done.moved.entry(on).or_default().extend(moved);
                }
                _ => {}
            }
        }
        for session in state.sessions {
            done.sessions.entry(session.day).or_default().push(session);
        }
        done
    }
}

/// A break, and whether it was declared in time.
struct Break {
    from: NaiveDate,
    through: NaiveDate,
    why: BreakWhy,
    late: bool,
}

/// Breaks that were declared, and stays in hospital: from a readmission until anything is recorded on a
/// later day.
fn breaks(events: &[Event]) -> Vec<Break> {
    let mut breaks = Vec::new();
    for (n, event) in events.iter().enumerate() {
        match &event.body {
            Body::BreakDeclared { from, through, why, .. } => breaks.push(Break {
                from: *from,
                through: *through,
                why: *why,
                late: event.stamp.day() > *from,
            }),
            Body::BreakEnded { day } => {
                for rest in &mut breaks {
                    rest.through = last_day_once_ended(rest.from, rest.through, *day);
                }
            }
            Body::SetBack { what: SetBackKind::Readmission, day } => {
                let home = events[n + 1..].iter().map(|event| event.stamp.day()).find(|on| on > day);
                let through = home.and_then(|home| home.pred_opt()).unwrap_or(NaiveDate::MAX);
                breaks.push(Break { from: *day, through, why: BreakWhy::Hospital, late: false });
            }
            _ => {}
        }
    }
    breaks
}

struct Look<'a> {
    measured: &'a Measured<'a>,
    done: &'a Done,
    breaks: &'a [Break],
    day: NaiveDate,
}

impl Look<'_> {
    fn day(&self, period: Option<&Period>, before: &State) -> DayMeasure {
        let on = |why: &dyn Fn(BreakWhy) -> bool| {
            self.breaks.iter().find(|b| why(b.why) && within(self.day, b.from, b.through))
        };
        let excused = on(&|why| why != BreakWhy::Own).is_some();
        let own = on(&|why| why == BreakWhy::Own);
        let mut items: Vec<(ItemId, Portion)> = Vec::new();
        if let Some(period) = period.filter(|_| !excused) {
            items = self.due(period, before);
        }
        self.put_done(period.map(|period| &period.plan), before, &mut items);
        DayMeasure {
            day: self.day,
            mark: self.mark(&items),
            in_break: own.is_some(),
            declared_late: own.is_some_and(|own| own.late),
            items,
        }
    }

    fn due(&self, period: &Period, before: &State) -> Vec<(ItemId, Portion)> {
        let asked = self.asked(period, before, &before.history).into_iter();
        let open = asked.filter(|due| due.gate.is_open() && due.most > 0);
        open.map(|due| (due.item.clone(), self.prescribed(period, before, &due))).collect()
    }

    fn asked(&self, period: &Period, before: &State, history: &History) -> Vec<DueItem> {
        let Measured { library, waking, .. } = self.measured;
        let (plan, standing) = (&period.plan, &period.standing);
        let gates = Gates { plan, library, standing, tightened: &before.tightened };
        let set_back = before.set_back_since(standing.set_backs_released_until);
        let at = GateDay::held(self.day, plan.head().review_by, set_back);
        due(&gates, self.day, &at, history, *waking).items
    }

    /// Sets asked for. A dose that stepped on the day counts from the next time on.
    fn prescribed(&self, period: &Period, before: &State, due: &DueItem) -> Portion {
        let mut sets = vec![due.dose.sets; usize::from(due.most.max(due.times))];
        let mut history = before.history.clone();
        for moved in self.moved(&due.item) {
            history.steps.insert(due.item.clone(), moved.stepped);
            let now = self.asked(period, before, &history);
            if let Some(now) = now.iter().find(|now| now.item == due.item) {
                sets.iter_mut().skip(moved.after.into()).for_each(|sets| *sets = now.dose.sets);
            }
        }
        let passes = period.plan.item(&due.item).map_or(1, |item| period.plan.passes(item));
        let (asked, offered) = sets.split_at(due.times.into());
        let sum = |sets: &[u8]| passes * sets.iter().copied().map(u32::from).sum::<u32>();
        Portion { prescribed: sum(asked), offered: sum(offered), ..Portion::default() }
    }

    fn moved(&self, item: &ItemId) -> impl Iterator<Item = &Moved> {
        self.done.moved.get(&self.day).into_iter().flatten().filter(move |moved| moved.item == *item)
    }

    /// Sets of sessions, then what was done by hand.
    fn put_done(&self, plan: Option<&Plan>, before: &State, items: &mut Vec<(ItemId, Portion)>) {
        for session in self.sessions() {
            for (record, how) in &session.sets {
                let how = if session.ending.is_some() && !session.confirmed {
                    How::CountedNotConfirmed
                } else {
                    *how
                };
                portion(items, &record.set.item).put(part(record.done, record.of), how);
            }
        }
        for (item, sets, each) in self.done.by_hand.get(&self.day).into_iter().flatten() {
            let of = plan.and_then(|plan| enough(plan, item, before, self.day)).unwrap_or(*each);
            for _ in 0..*sets {
                portion(items, item).put(part(*each, of), How::Remembered);
            }
        }
    }

    fn sessions(&self) -> impl Iterator<Item = &SessionRecord> {
        self.done.sessions.get(&self.day).into_iter().flatten()
    }

    fn mark(&self, items: &[(ItemId, Portion)]) -> DayMark {
        let is_due = items.iter().any(|(_, portion)| portion.prescribed > 0);
        let is_whole = items.iter().all(|(_, p)| p.done() >= f64::from(p.prescribed) - 1e-9);
        let is_begun = items.iter().any(|(_, p)| p.done() + p.as_needed + p.beyond > 0.0);
        let as_told = self.sessions().any(|session| session.ending == Some(Ending::StoppedAsTold));
        match () {
            () if !is_due => DayMark::NotDue,
            () if is_whole => DayMark::Whole,
            () if as_told => DayMark::StoppedAsTold,
            () if is_begun => DayMark::Part,
            () => DayMark::NoRecord,
        }
    }
}

/// The part of a set that was done, at most the whole.
fn part(done: u16, of: u16) -> f64 {
    if of == 0 { 1.0 } else { (f64::from(done) / f64::from(of)).min(1.0) }
}

fn portion<'a>(items: &'a mut Vec<(ItemId, Portion)>, item: &ItemId) -> &'a mut Portion {
    let known = items.iter().position(|(id, _)| id == item);
    let at = known.unwrap_or_else(|| {
        items.push((item.clone(), Portion::default()));
        items.len() - 1
    });
    &mut items[at].1
}

/// What is enough of an item's own dose, or of the step that it stands at.
fn enough(plan: &Plan, item: &ItemId, before: &State, day: NaiveDate) -> Option<u16> {
    let item = plan.item(item)?;
    let stand = Stand::of(plan, item, &before.history, day);
    let dose = stand.as_ref().map_or(&item.dose, Stand::dose);
    Some(dose.amount().map_or(0, Amount::least))
}

impl Adherence {
    fn add(&mut self, day: &DayMeasure) {
        for (_, portion) in &day.items {
            self.dose.add(portion);
        }
        let count = match day.mark {
            DayMark::NotDue => return,
            DayMark::Whole => &mut self.whole,
            DayMark::Part => &mut self.part,
            DayMark::StoppedAsTold => &mut self.stopped_as_told,
            DayMark::NoRecord => &mut self.no_record,
        };
        *count += 1;
        self.days_due += 1;
    }

    /// Several, added up: weeks add up to the whole.
    pub fn sum<'a>(parts: impl IntoIterator<Item = &'a Self>) -> Self {
        parts.into_iter().fold(Self::default(), |mut sum, part| {
            sum.days_due += part.days_due;
            sum.whole += part.whole;
            sum.part += part.part;
            sum.stopped_as_told += part.stopped_as_told;
            sum.no_record += part.no_record;
            sum.dose.add(&part.dose);
            sum
        })
    }

    fn of<'a>(days: impl IntoIterator<Item = &'a DayMeasure>) -> Self {
        let mut sum = Self::default();
        days.into_iter().for_each(|day| sum.add(day));
        sum
    }
}

/// With and without breaks that the patient declared.
pub(super) fn overall(days: &[DayMeasure]) -> (Adherence, Adherence) {
    (Adherence::of(days), Adherence::of(days.iter().filter(|day| !day.in_break)))
}

pub(super) fn late_break_days(days: &[DayMeasure]) -> u32 {
    days.iter().map(|day| u32::from(day.in_break && day.declared_late)).sum()
}

/// Weeks of the first episode whose day 0 is known in the last plan; days before it are week 0.
pub(super) fn weeks(measured: &Measured<'_>, days: &[DayMeasure]) -> Vec<WeekMeasure> {
    let zero = measured.periods.last().and_then(|period| period.plan.doc().first_day());
    let zero = zero.or_else(|| days.first().map(|day| day.day));
    let week = |day: &DayMeasure| zero.and_then(|zero| week_of(zero, day.day)).unwrap_or(0);
    let runs = days.chunk_by(|a, b| week(a) == week(b));
    runs.map(|run| {
        let (all, without_breaks) = overall(run);
        WeekMeasure {
            week: week(&run[0]),
            from: run[0].day,
            through: run[run.len() - 1].day,
            all,
            without_breaks,
        }
    })
    .collect()
}

pub(super) fn items(measured: &Measured<'_>, days: &[DayMeasure]) -> Vec<ItemMeasure> {
    let mut sums: BTreeMap<&ItemId, ItemMeasure> = BTreeMap::new();
    for day in days {
        for (item, portion) in &day.items {
            let sum = sums.entry(item).or_insert_with(|| ItemMeasure::of(measured, days, item));
            sum.all.add(portion);
            sum.days_beyond += u32::from(portion.beyond > 0.0);
            if !day.in_break {
                sum.without_breaks.add(portion);
            }
        }
    }
    let mut items: Vec<ItemMeasure> = sums.into_values().collect();
    let order =
        |id: &ItemId| last_plan_with(measured.periods, id).and_then(|plan| plan.item(id)).map(|i| i.order);
    items.sort_by_key(|measure| order(&measure.item));
    items
}

impl ItemMeasure {
    /// What the record says of an item, apart from its sets.
    fn of(measured: &Measured<'_>, days: &[DayMeasure], item: &ItemId) -> Self {
        let mut measure = Self {
            item: item.clone(),
            all: Portion::default(),
            without_breaks: Portion::default(),
            days_beyond: 0,
            left: Vec::new(),
            easier: 0,
            against_gate: 0,
        };
        let first_and_last = days.first().zip(days.last()).map(|(a, b)| (a.day, b.day));
        for event in measured.events {
            let of_span = |day: NaiveDate| first_and_last.is_some_and(|(a, b)| within(day, a, b));
            let on = event.stamp.day();
            match &event.body {
                Body::ItemLeft { item: of, reason, .. } if of == item && of_span(on) => {
                    measure.leave(*reason);
                }
                Body::ItemEasier { item: of, .. } if of == item && of_span(on) => measure.easier += 1,
                Body::DoneByHand { item: of, day, against_gate: true, .. } if of == item && of_span(*day) => {
                    measure.against_gate += 1;
                }
                _ => {}
            }
        }
        measure
    }

    fn leave(&mut self, reason: LeaveReason) {
        match self.left.iter_mut().find(|left| left.reason == reason) {
            Some(left) => left.times += 1,
            None => self.left.push(Left { reason, times: 1 }),
        }
    }
}
