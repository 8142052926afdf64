//! The weeks of an episode, one even mark each: stages in words, and what opens when.

use chrono::NaiveDate;
use sendaluna_core::calendar::{week_of, week_span};
use sendaluna_core::plan::doc::Episode;

use crate::home::Known;
use crate::view::day::{EpisodeWeeksView, ItemView, OpensView, WeekView};
use sendaluna_say::Speaker;

/// The weeks of every episode whose day 0 is known.
pub(crate) fn weeks(
    known: &Known,
    speaker: &Speaker<'_>,
    today: NaiveDate,
    not_yet: &[ItemView],
) -> Vec<EpisodeWeeksView> {
    let of = |episode: &Episode| of_episode(known, speaker, today, not_yet, episode);
    known.plan.doc().episodes.iter().filter_map(of).collect()
}

fn of_episode(
    known: &Known,
    speaker: &Speaker<'_>,
    today: NaiveDate,
    not_yet: &[ItemView],
    episode: &Episode,
) -> Option<EpisodeWeeksView> {
    let zero = episode.day_zero.date()?;
    let last = week_of(zero, known.plan.head().last_day)?;
    let this = week_of(zero, today);
    let name = speaker.text(&episode.name);
    let of_episode = |item: &&ItemView| known.plan.item(&item.item).is_some_and(|i| i.episode == episode.id);
    let items: Vec<&ItemView> = not_yet.iter().filter(of_episode).collect();
    let week = |number: u16| {
        let span = week_span(zero, number, number);
        let gates = items.iter().filter_map(|item| opens_in(speaker, item, span)).collect();
        let now = this == Some(number);
        week_view(speaker, number, this, stages(known, speaker, episode, number), gates, now)
    };
    let said = match this {
        Some(week) => speaker.words.say("day-week", &[("week", week.into()), ("name", name.as_str().into())]),
        None => speaker.words.say("day-week-unknown", &[("name", name.as_str().into())]),
    };
    Some(EpisodeWeeksView { said, weeks: (1..=last).map(week).collect(), name })
}

fn stages(known: &Known, speaker: &Speaker<'_>, episode: &Episode, week: u16) -> Vec<String> {
    let holds = |stage: &&sendaluna_core::plan::doc::Stage| {
        stage.episode == episode.id && (stage.from_week..=stage.through_week).contains(&week)
    };
    known.plan.doc().stages.iter().filter(holds).map(|stage| speaker.text(&stage.name)).collect()
}

fn opens_in(speaker: &Speaker<'_>, item: &ItemView, span: (NaiveDate, NaiveDate)) -> Option<OpensView> {
    let day = item.gate.opens.filter(|day| (span.0..=span.1).contains(day))?;
    let args = [("name", item.name.as_str().into()), ("day", speaker.words.day(day).into())];
    Some(OpensView { said: speaker.words.say("weeks-opens", &args), figure: item.figure.clone() })
}

fn week_view(
    speaker: &Speaker<'_>,
    number: u16,
    this: Option<u16>,
    stages: Vec<String>,
    gates: Vec<OpensView>,
    now: bool,
) -> WeekView {
    let title = speaker.words.say(if now { "weeks-this" } else { "weeks-one" }, &[("week", number.into())]);
    let opens = gates.iter().map(|gate| &gate.said);
    let said = std::iter::once(&title).chain(&stages).chain(opens).map(String::as_str);
    WeekView {
        number,
        past: this.is_some_and(|this| number < this),
        now,
        said: said.collect::<Vec<_>>().join(". "),
        stages,
        gates,
    }
}
