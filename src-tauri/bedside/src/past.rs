//! What the patient did: a row a week, a stroke a session.

use chrono::{Days, NaiveDate};
use sendaluna_core::record::{Ending, Moment, SessionRecord};

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::view::past::{LevelPointView, PastDayView, PastMark, PastSessionView, PastView, PastWeekView};
use sendaluna_say::Speaker;

impl Bedside {
    /// What was done, newest week first.
    pub fn past(&self, words: &sendaluna_words::Words, now: &Now) -> Result<PastView, BedsideError> {
        let known = self.known()?;
        let speaker = Speaker::new(words, Some(&known.plan));
        let today = known.today(now.at).session_day;
        let since = self.store().events()?.first().map_or(today, |event| event.stamp.day());
        Ok(Past { known: &known, speaker, today, since }.view())
    }
}

struct Past<'a> {
    known: &'a Known,
    speaker: Speaker<'a>,
    today: NaiveDate,
    /// The day on which the record begins.
    since: NaiveDate,
}

impl Past<'_> {
    fn view(&self) -> PastView {
        let words = self.speaker.words;
        let mut weeks: Vec<PastWeekView> = self.weeks().collect();
        weeks.reverse();
        let sessions = self.known.state.sessions.iter().filter(|session| !session.sets.is_empty()).count();
        let pain = self.known.state.pain.iter().filter_map(|(day, pain)| {
            let moment = match pain.moment {
                Moment::Before => "past-pain-before",
                Moment::During => "past-pain-during",
                Moment::After => "past-pain-after",
                Moment::NextMorning => "past-pain-next-morning",
            };
            let (day_said, moment_said) = (words.day(*day), words.say(moment, &[]));
            Some(LevelPointView { day_said, moment_said, level: pain.level? })
        });
        let effort = self.known.state.sessions.iter().filter_map(|session| {
            let (day_said, moment_said) = (words.day(session.day), words.say("past-pain-after", &[]));
            Some(LevelPointView { day_said, moment_said, level: session.effort? })
        });
        PastView {
            weeks,
            pain: pain.collect(),
            effort: effort.collect(),
            said: words.say("past-sessions", &[("n", sessions.into())]),
        }
    }

    /// Weeks of seven days: counted from day 0 of the first episode that has one and holds the first
    /// record, else from the first record.
    fn weeks(&self) -> impl Iterator<Item = PastWeekView> {
        let first = self.first_day();
        let zero = self.known.plan.doc().episodes.iter().find_map(|episode| episode.day_zero.date());
        let zero = zero.filter(|zero| *zero <= first);
        let anchor = zero.unwrap_or(first);
        let skipped = u64::try_from((first - anchor).num_days() / 7).unwrap_or(0);
        let last = u64::try_from((self.today - anchor).num_days() / 7).unwrap_or(0);
        (skipped..=last).map(move |week| {
            let days = (0..7).filter_map(|day| anchor.checked_add_days(Days::new(7 * week + day)));
            let days: Vec<PastDayView> = days.map(|day| self.day(day)).collect();
            let title = match (zero, days.first()) {
                (None, Some(first)) => {
                    self.speaker.words.say("past-week-from", &[("day", first.day_said.as_str().into())])
                }
                _ => self.speaker.words.say("weeks-one", &[("week", (week + 1).into())]),
            };
            PastWeekView { title, days }
        })
    }

    fn first_day(&self) -> NaiveDate {
        let sessions = self.known.state.sessions.iter().map(|session| session.day);
        let by_hand = self.known.state.items.values().flat_map(|days| days.keys().copied());
        sessions.chain(by_hand).chain([self.today]).min().unwrap_or(self.today)
    }

    fn day(&self, day: NaiveDate) -> PastDayView {
        let led = self.known.state.sessions.iter().filter(|session| session.day == day);
        let led = led.filter(|session| !session.sets.is_empty()).map(|session| self.session(session));
        let remembered: u16 =
            self.known.state.items.values().filter_map(|days| days.get(&day)).map(|on| on.remembered).sum();
        let by_hand = (remembered > 0).then(|| PastSessionView {
            mark: PastMark::Part,
            remembered: true,
            said: self.speaker.words.say("past-remembered", &[("n", remembered.into())]),
        });
        let sessions: Vec<PastSessionView> = led.chain(by_hand).collect();
        let day_said = self.speaker.words.day(day);
        let ahead = day > self.today;
        let outside = ahead || day < self.since;
        let what = match sessions.as_slice() {
            [] if ahead => self.speaker.words.say("past-ahead", &[]),
            [] if outside => self.speaker.words.say("past-before-plan", &[]),
            [] => self.speaker.words.say("past-none", &[]),
            sessions => sessions.iter().map(|s| s.said.as_str()).collect::<Vec<_>>().join(" "),
        };
        PastDayView { said: format!("{day_said}: {what}"), day_said, sessions, outside }
    }

    fn session(&self, session: &SessionRecord) -> PastSessionView {
        let (mark, id) = match session.ending {
            Some(Ending::Whole) => (PastMark::Whole, "past-whole"),
            _ => (PastMark::Part, "past-part"),
        };
        PastSessionView { mark, remembered: false, said: self.speaker.words.say(id, &[]) }
    }
}
