//! The same, opened in full before it leaves.

use sendaluna_core::measure::{ItemMeasure, Measures};
use sendaluna_core::record::{Body, Event};
use sendaluna_exchange::table::table;
use sendaluna_words::Words;

use super::Wishes;
use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::view::hand_back::{HandBackAsked, HandBackView, OwnWordsView};
use sendaluna_say::Speaker;

impl Bedside {
    /// What the clinic will be able to read.
    pub fn to_hand_back(&self, words: &Words, now: &Now) -> Result<HandBackView, BedsideError> {
        let (known, ground) = self.known_ground()?;
        let measures = self.measured(&known, &ground, None, now)?;
        let days =
            [("from", words.day(measures.from).into()), ("through", words.day(measures.through).into())];
        Ok(HandBackView {
            days_said: words.say(
                if measures.from == measures.through { "hand-back-day" } else { "hand-back-span" },
                &days,
            ),
            figures: figures(words, &measures),
            exercises: self.exercises(words, &known, &measures),
            words: ground.events.iter().filter_map(|event| own_words(words, event)).collect(),
            entries_said: words.say("hand-back-entries", &[("n", ground.events.len().into())]),
            table: table(&ground.events, true),
        })
    }

    fn exercises(&self, words: &Words, known: &Known, measures: &Measures) -> Vec<String> {
        let speaker = Speaker::new(words, Some(&known.plan));
        let said = |measure: &ItemMeasure| {
            let item = known.plan.item(&measure.item)?;
            let name = speaker.name(self.library(), &known.plan, &item.movement);
            let done = measure.all.done();
            let id = if done.fract() > 0.0 { "hand-back-exercise-part" } else { "hand-back-exercise" };
            let args = [
                ("name", name.into()),
                ("done", words.decimal(done.trunc(), 0).into()),
                ("of", measure.all.prescribed.into()),
            ];
            (measure.all.prescribed > 0).then(|| words.say(id, &args))
        };
        measures.items.iter().filter_map(said).collect()
    }
}

fn figures(words: &Words, measures: &Measures) -> Vec<String> {
    let all = &measures.overall;
    let mut said =
        vec![words.say("hand-back-days", &[("whole", all.whole.into()), ("due", all.days_due.into())])];
    if let Some(week) = measures.feeling.weeks.iter().rev().find_map(|week| week.before) {
        let args = [
            ("median", words.decimal(week.median, usize::from(week.median.fract() != 0.0)).into()),
            ("least", u16::from(week.least).into()),
            ("most", u16::from(week.most).into()),
        ];
        let same = week.least == week.most;
        said.push(words.say(if same { "hand-back-pain-same" } else { "hand-back-pain" }, &args));
    }
    for test in &measures.tests {
        let result = crate::home_test::result(words, &test.result).join(" ");
        let args = [("day", words.day(test.day).into()), ("result", result.into())];
        said.push(words.say("hand-back-test", &args));
    }
    said
}

fn own_words(words: &Words, event: &Event) -> Option<OwnWordsView> {
    let (Body::SessionEnded { words: said, .. } | Body::BreakDeclared { words: said, .. }) = &event.body
    else {
        return None;
    };
    Some(OwnWordsView { day_said: words.day(event.stamp.day()), words: said.clone()? })
}

impl From<HandBackAsked> for Wishes {
    fn from(asked: HandBackAsked) -> Self {
        let asks = Some(asked.asks.trim().to_string()).filter(|asks| !asks.is_empty());
        Self { from: None, without_words: asked.without_words, asks }
    }
}
