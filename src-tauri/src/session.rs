//! A session in the terminal, in real time: counts and phases as lines, the space bar to pause.

use chrono::NaiveDate;
use sendaluna_bedside::begin::{Before, Questions};
use sendaluna_bedside::home::Known;
use sendaluna_bedside::stop::stop_view;
use sendaluna_bedside::types::Speaker;
use sendaluna_bedside::types::{By, PainAnswer, SignId, Tier};
use sendaluna_bedside::{Bedside, BedsideError};
use serde_json::json;

use crate::answer::{Desk, Trouble, now, print};
use crate::led::Led;
use crate::questions::{ask_for, is_none, is_yes, zero_to_ten};
use crate::today::{contacts_text, item_id};

/// What was asked for on the command line.
pub struct Wishes {
    /// Only this item.
    pub only: Option<String>,
    /// Warning signs.
    pub signs: Option<Vec<String>>,
    /// Pain this morning.
    pub morning: Option<u8>,
    /// Pain at rest.
    pub pain: Option<u8>,
    /// Today's date.
    pub today: Option<NaiveDate>,
    /// Go on with today's open session.
    pub go_on: bool,
    /// Begin anew.
    pub anew: bool,
    /// A helper leads.
    pub helper: bool,
}

/// `session`.
pub fn session(desk: &Desk, wishes: &Wishes) -> Result<u8, Trouble> {
    let by = if wishes.helper { By::Helper } else { By::Patient };
    let only = wishes.only.as_deref().map(item_id).transpose()?;
    let mut home = desk.open()?;
    let known = home.known()?;
    // Whoever tells of a warning sign is heard first; else nobody answers questions for nothing.
    let told = wishes.signs.is_some();
    if !told {
        home.check_session(only.as_ref(), &now(desk))?;
    }
    let before = home.before(only.as_ref(), &now(desk))?;
    if let Some(day) = before.confirm_date {
        confirm_date(desk, &mut home, day, wishes.today)?;
    }
    if let Some(code) = ask_before(desk, &mut home, &known, &before, wishes, by)? {
        return Ok(code);
    }
    if told {
        home.check_session(only.as_ref(), &now(desk))?;
    }
    let goes_on = before.open_session.is_some() && only.is_none() && wants_to_go_on(desk, wishes)?;
    let guide =
        if goes_on { home.go_on(by, &now(desk))? } else { home.begin(only.as_ref(), by, &now(desk))? };
    Led::new(desk, &known, home, guide)?.lead()
}

/// Asks for today's date, where the clock has jumped.
pub fn confirm_date(
    desk: &Desk,
    home: &mut Bedside,
    day: NaiveDate,
    said: Option<NaiveDate>,
) -> Result<(), Trouble> {
    let day_said = desk.words.day_and_year(day);
    let confirmed = if let Some(said) = said {
        said
    } else {
        let question = desk.say("ask-date", &[("day", day_said.into())]);
        let right = ask_for(desk, &question, "--today", |answer| is_yes(desk, answer))?;
        if right { day } else { NaiveDate::MIN }
    };
    Ok(home.confirm_date(confirmed, &now(desk))?)
}

/// The questions before a session. An exit code if an answer says: no session.
pub fn ask_before(
    desk: &Desk,
    home: &mut Bedside,
    known: &Known,
    before: &Before,
    wishes: &Wishes,
    by: By,
) -> Result<Option<u8>, Trouble> {
    let questions = before.questions;
    if questions == Questions::None && wishes.signs.is_none() && wishes.pain.is_none() {
        return Ok(None);
    }
    let signs = match &wishes.signs {
        Some(signs) => chosen_signs(signs)?,
        None => ask_signs(desk, home, questions)?,
    };
    let gravest = home.answer_signs(&signs, by, &now(desk))?;
    if let Some(tier @ (Tier::Emergency | Tier::RingToday)) = gravest {
        stop_screen(desk, known, home, tier)?;
        return Ok(Some(1));
    }
    if gravest == Some(Tier::Note) {
        say(desk, "signs-noted");
    }
    if before.morning {
        ask_morning(desk, home, wishes, by)?;
    }
    if questions == Questions::SignsAndPain || wishes.pain.is_some() {
        let level = match wishes.pain {
            Some(level) => level,
            None => ask_for(desk, &desk.say("ask-pain-now", &[]), "--pain", zero_to_ten)?,
        };
        if home.answer_pain_before(level, by, &now(desk))? == PainAnswer::StopToday {
            stop_screen(desk, known, home, Tier::RingToday)?;
            return Ok(Some(1));
        }
    }
    Ok(None)
}

/// Next morning's pain, and what it makes smaller.
fn ask_morning(desk: &Desk, home: &mut Bedside, wishes: &Wishes, by: By) -> Result<(), Trouble> {
    let level = match wishes.morning {
        Some(level) => level,
        None => ask_for(desk, &desk.say("ask-pain-morning", &[]), "--morning", zero_to_ten)?,
    };
    if let Some(view) = home.answer_pain_morning(level, by, &desk.words, &now(desk))? {
        if desk.json {
            print(&json!({ "morning": view }).to_string());
        } else {
            print(&[view.said, vec![view.nobody_sees]].concat().join("\n"));
        }
    }
    Ok(())
}

fn ask_signs(desk: &Desk, home: &Bedside, questions: Questions) -> Result<Vec<SignId>, Trouble> {
    let contacts = home.contacts(&desk.words)?;
    let mut question =
        vec![desk.say(if questions == Questions::OneTap { "ask-signs-again" } else { "ask-signs" }, &[])];
    question.extend(contacts.signs.iter().enumerate().map(|(i, sign)| format!("  {}. {}", i + 1, sign.text)));
    question.push(desk.say("ask-signs-how", &[]));
    let read = |answer: &str| -> Option<Vec<SignId>> {
        if answer.is_empty() || is_yes(desk, answer) == Some(false) || is_none(desk, answer) {
            return Some(Vec::new());
        }
        let numbers = answer.split([' ', ',']).filter(|word| !word.is_empty());
        numbers
            .map(|word| word.parse::<usize>().ok()?.checked_sub(1))
            .map(|i| i.and_then(|i| contacts.signs.get(i)).map(|sign| sign.sign.clone()))
            .collect()
    };
    ask_for(desk, &question.join("\n"), "--signs", read)
}

fn chosen_signs(signs: &[String]) -> Result<Vec<SignId>, Trouble> {
    let wanted = signs.iter().filter(|sign| *sign != "none");
    let id =
        |sign: &String| SignId::new(sign.as_str()).map_err(|_| BedsideError::NoSuchSign(sign.clone()).into());
    wanted.map(id).collect()
}

fn wants_to_go_on(desk: &Desk, wishes: &Wishes) -> Result<bool, Trouble> {
    if wishes.go_on || wishes.anew {
        return Ok(wishes.go_on);
    }
    ask_for(desk, &desk.say("ask-go-on", &[]), "--go-on", |answer| {
        if answer.is_empty() { Some(true) } else { is_yes(desk, answer) }
    })
}

/// The warning stop.
pub fn stop_screen(desk: &Desk, known: &Known, home: &Bedside, tier: Tier) -> Result<(), Trouble> {
    let stop = stop_view(&known.plan, &Speaker::new(&desk.words, Some(&known.plan)), tier);
    let mut lines = vec![stop.said];
    lines.extend(stop.advice);
    lines.push(stop.nobody_sees.clone());
    lines.push(contacts_text(desk, &home.contacts(&desk.words)?));
    lines.push(desk.say("stop-when-spoken", &[]));
    let contacts = home.contacts(&desk.words)?;
    let json = json!({
        "stopped": true,
        "tier": tier,
        "said": lines[0],
        "nobody_sees": stop.nobody_sees,
        "contacts": contacts,
    });
    desk.answer(&lines.join("\n"), &json);
    Ok(())
}

/// Says something, unless the answer is JSON.
fn say(desk: &Desk, id: &str) {
    if !desk.json {
        print(&desk.say(id, &[]));
    }
}
