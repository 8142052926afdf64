//! `sendaluna-reminders`: reminds of the plan's times. It reads one file, `front.json`, shows notices, and
//! writes down what was pressed. It opens no database and no internet socket, and has no window.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

mod answers;
mod folder;
mod keeper;
mod memory;
mod notifier;
mod open;
mod try_now;
mod waker;

use std::collections::VecDeque;
use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

use chrono::{Duration, Utc};
use notify::{RecommendedWatcher, RecursiveMode, Watcher};
use sendaluna_core::calendar::front::{FILE, Front, FrontWords};
use sendaluna_core::calendar::outbox::ReminderAnswer;
use sendaluna_zones::IanaZone;

use crate::answers::Answers;
use crate::folder::{Folder, NoFront};
use crate::keeper::{Do, Happened, Keeper, Tone};
use crate::memory::Memory;
use crate::notifier::{Desktop, Notice, Notifier, Outcome};
use crate::waker::Waker;

/// What could not be written is tried again so soon.
const TRY_AGAIN_AFTER: Duration = Duration::minutes(1);

/// Something for the one loop.
enum Signal {
    /// A deadline has come, or the clock was set.
    Time,
    /// A file in the folder is another one.
    Folder,
    /// What came of a notice.
    Notice(u64, Outcome),
    /// The system asks it to end.
    End,
}

/// Exit codes: 0 it has ended as asked, or another one reminds already; 2 the call was wrong; 3 the folder
/// could not be used.
fn main() -> ExitCode {
    let done = match asked() {
        Asked::Remind(data) => remind(data),
        Asked::Now(data) => try_now::print(&data).map_err(Into::into),
        Asked::Nothing => return ExitCode::from(2),
    };
    if done.is_ok() { ExitCode::SUCCESS } else { ExitCode::from(3) }
}

/// What the arguments ask for.
enum Asked {
    /// Remind from a data folder.
    Remind(PathBuf),
    /// Show one notice now.
    Now(PathBuf),
    /// Nothing that is known.
    Nothing,
}

/// `--data FOLDER`, else `SENDALUNA_HOME`, else the platform's own place; or `--now FOLDER`.
fn asked() -> Asked {
    let mut args = std::env::args_os().skip(1);
    match (args.next(), args.next(), args.next()) {
        (Some(name), Some(folder), None) if name == "--data" => Asked::Remind(folder.into()),
        (Some(name), Some(folder), None) if name == "--now" => Asked::Now(folder.into()),
        (None, ..) => {
            let set = std::env::var_os("SENDALUNA_HOME").filter(|folder| !folder.is_empty());
            let own = || directories::ProjectDirs::from("org", "Sendaluna", "Sendaluna");
            let folder = set.map(PathBuf::from).or_else(|| own().map(|dirs| dirs.data_dir().to_path_buf()));
            folder.map_or(Asked::Nothing, Asked::Remind)
        }
        _ => Asked::Nothing,
    }
}

fn remind(data: PathBuf) -> Result<(), Box<dyn std::error::Error>> {
    let folder = Folder::of(&data)?;
    let Some(_claim) = folder.claim()? else { return Ok(()) };
    let (send, signals) = channel();
    let woken = send.clone();
    let waker = Waker::new(move || woken.send(Signal::Time).is_ok())?;
    let _watcher = watch(&folder, send.clone())?;
    let ended = send.clone();
    ctrlc::set_handler(move || drop(ended.send(Signal::End)))?;
    let told = send.clone();
    let desktop = Desktop::new(Arc::new(move |number, outcome| {
        let _ = told.send(Signal::Notice(number, outcome));
    }));
    send.send(Signal::Folder)?;
    let answers = Answers::new(folder.path());
    let mut reminding = Reminding { data, answers, folder, waker, desktop, words: None };
    let ended = reminding.until_end(&signals);
    reminding.answers.write_waiting();
    reminding.desktop.end();
    ended
}

/// Tells whenever the front is another one.
fn watch(folder: &Folder, send: Sender<Signal>) -> notify::Result<RecommendedWatcher> {
    let is_front = |event: &notify::Event| {
        let of_front = |path: &PathBuf| path.file_name().is_some_and(|name| name == FILE);
        !event.kind.is_access() && (event.kind.is_remove() || event.paths.iter().any(of_front))
    };
    let tell = move |event: notify::Result<notify::Event>| {
        if event.as_ref().map_or(true, is_front) {
            let _ = send.send(Signal::Folder);
        }
    };
    let mut watcher = notify::recommended_watcher(tell)?;
    watcher.watch(folder.path(), RecursiveMode::NonRecursive)?;
    Ok(watcher)
}

/// The loop with everything it holds.
struct Reminding {
    data: PathBuf,
    folder: Folder,
    answers: Answers,
    waker: Waker,
    desktop: Desktop,
    /// What notices say, from the front that was last read.
    words: Option<(FrontWords, bool)>,
}

impl Reminding {
    fn until_end(&mut self, signals: &Receiver<Signal>) -> Result<(), Box<dyn std::error::Error>> {
        let memory = self.folder.memory().unwrap_or_default();
        let mut keeper = Keeper::new(Memory::read(&memory, Utc::now()));
        while let Ok(signal) = signals.recv() {
            // Who takes the folder away wants no reminders any more.
            if !self.folder.path().exists() {
                break;
            }
            let happened = match signal {
                Signal::End => break,
                Signal::Time => Happened::Time,
                Signal::Folder => match self.folder.front() {
                    // Whoever wants no reminders needs no program for them.
                    Ok(front) if !front.doc().on => break,
                    Ok(front) => Happened::Front(Some(self.take(front))),
                    Err(NoFront::Missing) => Happened::Front(None),
                    // One that cannot be used changes nothing.
                    Err(NoFront::Unusable) => continue,
                },
                Signal::Notice(number, Outcome::Pressed(answer)) => Happened::Pressed(number, answer),
                Signal::Notice(number, Outcome::PutAway) => Happened::PutAway(number),
                Signal::Notice(number, Outcome::Lost) => Happened::Lost(number),
            };
            self.answers.write_waiting();
            // This program runs for weeks: the device may be in another zone by now.
            let zone = IanaZone::of_device();
            let to_do = keeper.on(happened, Utc::now(), &zone);
            self.carry_out(to_do);
            let now = Utc::now();
            let again = self.answers.are_waiting().then_some(now + TRY_AGAIN_AFTER);
            self.waker.set(keeper.wake_at(now, &zone).into_iter().chain(again).min())?;
        }
        Ok(())
    }

    /// Speaks as this front says from now on.
    fn take(&mut self, front: Front) -> Box<Front> {
        self.words = Some((front.doc().words.clone(), front.doc().sound));
        Box::new(front)
    }

    fn carry_out(&mut self, to_do: VecDeque<Do>) {
        for what in to_do {
            match what {
                // What cannot be written is still kept until this program ends.
                Do::Remember(memory) => drop(self.folder.remember(&memory.to_bytes())),
                Do::Write(line) => self.answers.write(line),
                Do::Show(number, tone) => {
                    if let Some(notice) = self.notice(number, tone) {
                        self.desktop.show(&notice);
                    }
                }
                Do::Withdraw => self.desktop.withdraw(),
                Do::Open => open::window(&self.data),
            }
        }
    }

    fn notice(&self, number: u64, tone: Tone) -> Option<Notice> {
        let (words, sound) = self.words.as_ref()?;
        let text = match tone {
            Tone::Now => &words.now,
            Tone::Late => &words.late,
            Tone::AfterSilence => &words.after_silence,
        };
        let actions = vec![
            (ReminderAnswer::Start, words.start.clone()),
            (ReminderAnswer::Later, words.in_30_minutes.clone()),
            (ReminderAnswer::NotToday, words.not_today.clone()),
        ];
        Some(Notice { number, title: words.title.clone(), text: text.clone(), actions, sound: *sound })
    }
}
