//! Taking a plan file in.

use std::fs::File;
use std::io::Read;
use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use sendaluna_bedside::BedsideError;
use sendaluna_bedside::handed::Handed;
use sendaluna_bedside::receive::Confirmation;
use sendaluna_bedside::types::{OperatedSide, PICTURE_LIMIT, SIZE_LIMIT, is_picture};
use sendaluna_bedside::view::receive::SummaryView;
use serde_json::json;

use crate::answer::{Desk, Trouble, now, print};
use crate::args::Side;
use crate::questions::{ask_for, is_yes};

/// `receive`.
pub fn receive(
    desk: &Desk,
    files: &[PathBuf],
    code: Option<&str>,
    sides: &[Side],
    today: Option<NaiveDate>,
    yes: bool,
) -> Result<u8, Trouble> {
    let bytes = handed(files)?;
    let mut home = desk.open()?;
    let offer = home.offer(&bytes, code, &now(desk))?;
    let summary = home.summary(&desk.words, &offer, &now(desk));
    if !desk.json {
        print(&summary_text(desk, &summary));
    }
    let confirmation = if offer.first { Some(confirm(desk, &summary, sides, today, yes)?) } else { None };
    let taken = home.take_in(&offer, confirmation.as_ref(), &now(desk))?;
    let said = if taken.same_again { "receive-same-again" } else { "receive-done" };
    let text = desk.say(said, &[("revision", summary.revision.into())]);
    let answer = json!({
        "received": true,
        "same_again": taken.same_again,
        "lifts_ignored": taken.lifts_ignored,
        "summary": summary,
    });
    desk.answer(&text, &answer);
    Ok(0)
}

/// Reads a file, but never more than one that could be ours.
pub fn read(path: &Path) -> Result<Vec<u8>, Trouble> {
    let mut bytes = Vec::new();
    let most = u64::try_from(PICTURE_LIMIT).unwrap_or(u64::MAX) + 1;
    File::open(path)
        .and_then(|file| file.take(most).read_to_end(&mut bytes))
        .map_err(|e| Trouble::File { path: path.display().to_string(), what: e.to_string() })?;
    if !is_picture(&bytes) {
        bytes.truncate(SIZE_LIMIT + 1);
    }
    Ok(bytes)
}

/// The plan file that these are: the first that is one, or that completes a letter's pictures.
fn handed(files: &[PathBuf]) -> Result<Vec<u8>, Trouble> {
    let mut handed = Handed::default();
    let mut wanting = BedsideError::NoCodes;
    for file in files {
        match handed.take(read(file)?) {
            Ok(bytes) => return Ok(bytes),
            Err(error) => wanting = error,
        }
    }
    Err(wanting.into())
}

/// The side is asked, not shown.
fn confirm(
    desk: &Desk,
    summary: &SummaryView,
    sides: &[Side],
    today: Option<NaiveDate>,
    yes: bool,
) -> Result<Confirmation, Trouble> {
    let mut said = Vec::new();
    for (i, episode) in summary.episodes.iter().enumerate() {
        let question = desk.say("receive-which-side", &[("name", episode.name.as_str().into())]);
        said.push(match sides.get(i) {
            Some(side) => operated(*side),
            None => ask_for(desk, &question, "--side", |answer| side(desk, answer))?,
        });
    }
    let today = match today {
        Some(today) => today,
        None if yes => summary.today,
        None => {
            let question = desk.say("ask-date", &[("day", summary.today_said.as_str().into())]);
            let right = ask_for(desk, &question, "--today", |answer| is_yes(desk, answer))?;
            if right { summary.today } else { NaiveDate::MIN }
        }
    };
    let question = desk.say("receive-is-it-yours", &[]);
    if !yes && !ask_for(desk, &question, "--yes", |answer| is_yes(desk, answer))? {
        return Err(Trouble::NotYours);
    }
    Ok(Confirmation { sides: said, today })
}

fn operated(side: Side) -> OperatedSide {
    match side {
        Side::Left => OperatedSide::Left,
        Side::Right => OperatedSide::Right,
        Side::Both => OperatedSide::Both,
        Side::Neither => OperatedSide::Neither,
    }
}

fn side(desk: &Desk, answer: &str) -> Option<OperatedSide> {
    let answer = answer.to_lowercase();
    let is = |id: &str, english: &str| {
        answer == english || desk.say(id, &[]).split(' ').any(|word| word == answer)
    };
    [
        ("answers-left", "left", OperatedSide::Left),
        ("answers-right", "right", OperatedSide::Right),
        ("answers-both", "both", OperatedSide::Both),
        ("answers-neither", "neither", OperatedSide::Neither),
    ]
    .into_iter()
    .find_map(|(id, english, side)| is(id, english).then_some(side))
}

fn summary_text(desk: &Desk, summary: &SummaryView) -> String {
    let mut lines = vec![
        desk.say("receive-title", &[]),
        desk.say(
            "receive-for",
            &[
                ("called", summary.called.as_str().into()),
                ("born", summary.born.to_string().into()),
                ("clinic", summary.clinic.as_str().into()),
            ],
        ),
    ];
    lines.extend(summary.episodes.iter().map(|episode| {
        let args = [("name", episode.name.as_str().into()), ("day", episode.day_said.as_str().into())];
        desk.say("receive-episode", &args)
    }));
    lines.push(desk.say("receive-exercises", &[("n", summary.exercises.into())]));
    if !summary.not_yet.is_empty() {
        lines.push(desk.say("receive-not-yet", &[]));
    }
    lines.extend(summary.not_yet.iter().map(|item| format!("  {}: {}", item.name, item.said)));
    lines.extend(summary.lifts_ignored.iter().cloned());
    let contacts = &summary.contacts;
    let phone = [("clinic", contacts.clinic.as_str().into()), ("phone", contacts.phone.as_str().into())];
    lines.push(desk.say("ring-clinic", &phone));
    lines.extend(contacts.cautions.iter().cloned());
    lines.join("\n")
}
