//! The reminder program, seen from here; and the commands about reminders.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use sendaluna_bedside::reminding::{QuietWish, RemindingChange, Shows};
use sendaluna_bedside::settings::Change;
use sendaluna_bedside::types::{By, NotTodayWhy, Value, Weekday, Words};
use serde_json::json;

use crate::answer::{Desk, Trouble, now};
use crate::args::{ClockTimes, NotTodayReason, OnOff, QuietHours, RemindersArgs};
use crate::at_login::AtLogin;
use crate::hand_back::trouble;

/// The reminder program lies beside this one.
pub fn program() -> Option<PathBuf> {
    let name = format!("sendaluna-reminders{}", std::env::consts::EXE_SUFFIX);
    let beside = std::env::current_exe().ok()?.parent()?.join(name);
    beside.exists().then_some(beside)
}

/// Starts reminding from a data folder. Where that is done already, the second one ends by itself.
pub fn start(folder: &Path) {
    let Some(program) = program() else { return };
    let mut command = Command::new(program);
    command.arg("--data").arg(folder);
    command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    // What ends this program does not end the reminders.
    #[cfg(unix)]
    std::os::unix::process::CommandExt::process_group(&mut command, 0);
    if let Ok(mut reminders) = command.spawn() {
        std::thread::spawn(move || reminders.wait());
    }
}

/// Starting at log-in, for a data folder.
pub fn at_login(folder: &Path) -> Option<AtLogin> {
    let tag = if crate::answer::own_place().is_some_and(|own| own == folder) {
        String::new()
    } else {
        crate::window::tag(folder)
    };
    let folder = std::path::absolute(folder).ok()?;
    Some(AtLogin { program: program()?, folder, tag })
}

/// Shows one notice now, and says what came of it: whether somebody has taken it, in words.
pub fn send_one(folder: &Path, words: &Words) -> String {
    let Some(program) = program() else { return words.say("remind-program-missing", &[]) };
    let answered = Command::new(program).arg("--now").arg(folder).stdin(Stdio::null()).output();
    let came = match answered {
        Ok(output) => serde_json::from_slice::<serde_json::Value>(&output.stdout).unwrap_or_default(),
        Err(error) => json!({ "came": "failed", "what": error.to_string() }),
    };
    let of = |name: &str| Value::from(came[name].as_str().unwrap_or("?").to_string());
    match came["came"].as_str() {
        Some("taken") => words.say("remind-now-taken", &[("by", of("by"))]),
        Some("held") => words.say("remind-now-held", &[("by", of("by"))]),
        Some("closed") => words.say("remind-now-closed", &[("by", of("by"))]),
        Some("nobody") => words.say("remind-now-nobody", &[]),
        _ => words.say("remind-now-failed", &[("what", of("what"))]),
    }
}

/// `reminders`.
pub fn reminders(desk: &Desk, asked: &RemindersArgs) -> Result<u8, Trouble> {
    let change = change(asked);
    if change != RemindingChange::default() {
        desk.open()?.change_settings(&Change { reminding: Some(change), ..Change::default() })?;
    }
    let login = at_login(desk.folder());
    if let (Some(wanted), Some(login)) = (asked.at_login, &login) {
        login.set(wanted == OnOff::On).map_err(|error| trouble(&login.folder, &error))?;
    }
    let home = desk.look()?;
    let view = home.start_view(&desk.words, &now(desk))?;
    let Some(reminding) = view.reminding else { return Err(sendaluna_bedside::BedsideError::NoPlan.into()) };
    let mut lines = said(desk, &reminding);
    let starts = login.as_ref().and_then(AtLogin::is_set);
    lines.push(desk.say(
        match starts {
            Some(true) => "remind-login-on",
            Some(false) => "remind-login-off",
            None => "remind-login-cannot",
        },
        &[],
    ));
    let sent = asked.send_one.then(|| send_one(desk.folder(), &desk.words));
    lines.extend(sent.clone());
    let mut answer = json!(reminding);
    answer["starts_at_login"] = json!(starts);
    answer["sent"] = json!(sent);
    desk.answer(&lines.join("\n"), &answer);
    Ok(0)
}

fn said(desk: &Desk, view: &sendaluna_bedside::view::reminding::RemindingView) -> Vec<String> {
    if !view.on {
        return vec![desk.say("remind-off", &[])];
    }
    let today = if view.today_said.is_empty() {
        desk.say("remind-none-today", &[])
    } else {
        desk.say("remind-at", &[("times", view.today_said.as_str().into())])
    };
    let own = [("n", view.asks_most.into())];
    let times = if view.own_times {
        desk.say("remind-times-own", &own)
    } else {
        desk.say("remind-times-by-plan", &[])
    };
    let off: Vec<String> = view.days_off.iter().filter(|day| day.off).map(|day| day.name.clone()).collect();
    let days = if off.is_empty() {
        desk.say("remind-days-off-none", &[])
    } else {
        desk.say("remind-days-off", &[("days", desk.words.list(&off).into())])
    };
    let quiet = if view.quiet_asleep {
        desk.say("remind-quiet-asleep", &[])
    } else {
        let ends = [("from", view.quiet_from.as_str().into()), ("to", view.quiet_to.as_str().into())];
        desk.say("remind-quiet", &ends)
    };
    let sound = desk.say(if view.sound { "remind-sound-on" } else { "remind-sound-off" }, &[]);
    let shows = match view.shows {
        Shows::Little => desk.say("remind-shows-little", &[("now", desk.say("reminder-now", &[]).into())]),
        Shows::Exercises => {
            desk.say("remind-shows-exercises", &[("now", desk.say("reminder-now-exercises", &[]).into())])
        }
    };
    vec![today, times, days, quiet, sound, shows].into_iter().chain(view.break_said.clone()).collect()
}

fn change(asked: &RemindersArgs) -> RemindingChange {
    let is_on = |wanted: OnOff| wanted == OnOff::On;
    RemindingChange {
        on: asked.switch.map(is_on),
        times_min: asked.times.clone().map(|times| match times {
            ClockTimes::OfPlan => Vec::new(),
            ClockTimes::Own(times) => times,
        }),
        days_off: asked.days_off.clone().map(|days| days.0),
        quiet: asked.quiet.map(|quiet| match quiet {
            QuietHours::Asleep => QuietWish::Asleep,
            QuietHours::Own(from_min, to_min) => QuietWish::Between { from_min, to_min },
        }),
        sound: asked.sound.map(is_on),
        shows: asked.shows.map(Into::into),
    }
}

/// `not-today`.
pub fn not_today(desk: &Desk, why: Option<NotTodayReason>) -> Result<u8, Trouble> {
    let mut home = desk.open()?;
    let at = now(desk);
    let open = home.known()?.asks_why_not(&at);
    let mut said = Vec::new();
    let day = match open {
        Some(day) if why.is_some() => day,
        _ => {
            said.push(home.not_today(By::Patient, &desk.words, &at)?.said);
            home.known()?.today(at.at).session_day
        }
    };
    if let Some(why) = why {
        said.push(home.not_today_because(day, why.into(), By::Patient, &desk.words, &at)?.said);
    }
    let text = said.join("\n");
    desk.answer(&text, &json!({ "not_today": day, "said": text }));
    Ok(0)
}

/// `calendar`.
pub fn calendar(desk: &Desk, out: &Path) -> Result<u8, Trouble> {
    let Some(text) = desk.open()?.calendar_file(&desk.words, &now(desk))? else {
        desk.answer(&desk.say("calendar-nothing", &[]), &json!({ "written": null }));
        return Ok(1);
    };
    std::fs::write(out, text).map_err(|error| trouble(out, &error))?;
    let said = desk.say("calendar-saved", &[("path", out.display().to_string().into())]);
    desk.answer(&said, &json!({ "written": out }));
    Ok(0)
}

impl From<NotTodayReason> for NotTodayWhy {
    fn from(reason: NotTodayReason) -> Self {
        match reason {
            NotTodayReason::Hurts => Self::Hurts,
            NotTodayReason::Unwell => Self::Unwell,
            NotTodayReason::Tired => Self::Tired,
            NotTodayReason::NoTime => Self::NoTime,
            NotTodayReason::Away => Self::Away,
            NotTodayReason::NotSaid => Self::NotSaid,
        }
    }
}

/// A day of the week by its English name.
pub fn weekday(name: &str) -> Option<Weekday> {
    serde_json::from_value(json!(name)).ok()
}
