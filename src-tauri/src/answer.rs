//! From arguments to an answer. Exit codes: 0 done; 1 refused, not yet, or stopped as told; 2 the
//! call was wrong; 3 the record could not be read or written.

use std::cell::Cell;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Parser;
use sendaluna_bedside::hand::Break;
use sendaluna_bedside::hand_back::Wishes;
use sendaluna_bedside::say;
use sendaluna_bedside::types::Speaker;
use sendaluna_bedside::types::{BreakWhy, Coded, IanaZone, KeyringOrFile, Value, Words};
use sendaluna_bedside::{Bedside, BedsideError, Clock};
use serde_json::json;

use crate::args::{Cli, Command, Why};
use crate::clock::DeviceClock;
use crate::home_test::ByHand;
use crate::{hand_back, home_test, receive, reminders, session, sheet, today, window};

/// What a command works with.
pub struct Desk {
    /// The clock.
    pub clock: DeviceClock,
    /// The words.
    pub words: Words,
    /// Answer in JSON.
    pub json: bool,
    folder: PathBuf,
    keys: KeyringOrFile,
    /// The record was opened for use.
    opened: Cell<bool>,
}

/// A command that could not be carried out.
pub enum Trouble {
    /// A use case said no.
    Bedside(BedsideError),
    /// A file could not be read.
    File {
        /// Which.
        path: String,
        /// What the system said.
        what: String,
    },
    /// A file could not be written.
    FileNotWritten {
        /// Which.
        path: String,
        /// What the system said.
        what: String,
    },
    /// The patient says that it is not their plan.
    NotYours,
    /// A question was not answered, and there is nobody to ask.
    NotAnswered(&'static str),
}

impl From<BedsideError> for Trouble {
    fn from(error: BedsideError) -> Self {
        Self::Bedside(error)
    }
}

impl Coded for Trouble {
    fn code(&self) -> &'static str {
        match self {
            Self::Bedside(error) => error.code(),
            Self::File { .. } => "file-not-read",
            Self::FileNotWritten { .. } => "file-not-written",
            Self::NotYours => "not-yours",
            Self::NotAnswered(_) => "not-answered",
        }
    }
    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::Bedside(error) => error.args(),
            Self::File { path, what } | Self::FileNotWritten { path, what } => {
                vec![("path", path.clone()), ("what", what.clone())]
            }
            Self::NotYours => Vec::new(),
            Self::NotAnswered(option) => vec![("option", (*option).to_string())],
        }
    }
}

impl Desk {
    /// Opens the record for use.
    pub fn open(&self) -> Result<Bedside, Trouble> {
        self.opened.set(true);
        Ok(Bedside::open(&self.folder, &self.keys, IanaZone::of_device())?)
    }

    /// Opens the record only to look.
    pub fn look(&self) -> Result<Bedside, Trouble> {
        Ok(Bedside::look(&self.folder, &self.keys, IanaZone::of_device())?)
    }

    /// The data folder.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Has reminders follow what was changed. What stands in its way stands in no command's way.
    fn tend(&self) {
        if self.opened.get()
            && let Ok(mut home) = self.open()
        {
            let words = home.words(&system_language());
            let _ = home.tend(&words, &self.clock.now());
        }
    }

    /// A message.
    pub fn say(&self, id: &str, args: &[(&str, Value<'_>)]) -> String {
        self.words.say(id, args)
    }

    /// Prints an answer for people, or its JSON.
    pub fn answer(&self, text: &str, json: &serde_json::Value) {
        if self.json {
            print(&serde_json::to_string_pretty(json).unwrap_or_default());
        } else {
            print(text);
        }
    }
}

/// Runs the command line.
pub fn run() -> ExitCode {
    let cli = match Cli::try_parse() {
        Ok(cli) => cli,
        Err(error) => return usage(&error),
    };
    let Some(folder) = cli.data.clone().or_else(own_place) else {
        print(&Words::new([""]).say("err-no-place", &[]));
        return ExitCode::from(3);
    };
    let keys = KeyringOrFile { file_only: cli.key_in_file };
    let Some(command) = cli.command else {
        let language = cli.lang.unwrap_or_else(system_language);
        let (file, begin) = (cli.file, cli.begin);
        return window::open(window::Wishes { folder, keys, language, file, begin });
    };
    let words = words(cli.lang, &folder, keys);
    let desk =
        Desk { clock: DeviceClock::new(), words, json: cli.json, folder, keys, opened: Cell::new(false) };
    let done = carry_out(&desk, command);
    desk.tend();
    match done {
        Ok(code) => ExitCode::from(code),
        Err(trouble) => {
            report(&desk, &trouble);
            ExitCode::from(match trouble {
                Trouble::Bedside(BedsideError::Store(_))
                | Trouble::File { .. }
                | Trouble::FileNotWritten { .. } => 3,
                _ => 1,
            })
        }
    }
}

/// A call that was wrong, or a question about how to call: in JSON too, if that was asked for.
fn usage(error: &clap::Error) -> ExitCode {
    if error.use_stderr() && std::env::args().any(|arg| arg == "--json") {
        let words = Words::new([system_language().as_str()]);
        let (happened, to_do) = (error.to_string(), words.say("do-usage", &[]));
        let answer = json!({ "error": { "code": "usage", "happened": happened.trim(), "do": to_do } });
        print(&serde_json::to_string_pretty(&answer).unwrap_or_default());
    } else {
        let _ = error.print();
    }
    ExitCode::from(u8::from(error.use_stderr()) * 2)
}

/// The language that the system is set to.
fn system_language() -> String {
    let set = |name: &&str| std::env::var(name).ok().filter(|lang| !lang.is_empty());
    ["LC_ALL", "LC_MESSAGES", "LANG"].iter().find_map(set).unwrap_or_default()
}

fn carry_out(desk: &Desk, command: Command) -> Result<u8, Trouble> {
    match command {
        Command::Receive { files, code, side, today, yes } => {
            receive::receive(desk, &files, code.as_deref(), &side, today, yes)
        }
        Command::Due => today::due(desk),
        Command::Gates => today::gates(desk),
        Command::Session { only, signs, morning, pain, today, go_on, anew, helper } => {
            let wishes = session::Wishes { only, signs, morning, pain, today, go_on, anew, helper };
            session::session(desk, &wishes)
        }
        Command::HomeTest {
            test,
            signs,
            morning,
            pain,
            today,
            helper,
            stands,
            arms,
            seconds,
            held,
            yesterday,
        } => {
            let by_hand = ByHand { stands, arms, seconds, held };
            let wishes = home_test::Wishes { test, signs, morning, pain, today, helper, by_hand, yesterday };
            home_test::home_test(desk, &wishes)
        }
        Command::Did { item, yesterday, sets, each } => today::did(desk, &item, yesterday, sets, each),
        Command::Contacts => today::contacts(desk),
        Command::StopItem { item, undo } => today::stop_item(desk, &item, undo),
        Command::Step { way, item } => today::step(desk, way, &item),
        Command::SetBack { what } => today::set_back(desk, what),
        Command::Break { from: Some(from), through: Some(through), why, words, .. } => {
            let why = match why {
                Why::Own => BreakWhy::Own,
                Why::Clinic => BreakWhy::Clinic,
                Why::Hospital => BreakWhy::Hospital,
            };
            today::declare_break(desk, Break { from, through, why, words })
        }
        Command::Break { .. } => today::end_break(desk),
        Command::Spoke => today::spoke(desk),
        Command::HandBack { out, from, without_words, ask } => {
            hand_back::hand_back(desk, &out, &Wishes { from, without_words, asks: ask })
        }
        Command::Sheet { out, large } => sheet::sheet(desk, &out, large),
        Command::Today { out } => sheet::today(desk, &out),
        Command::Reminders(asked) => reminders::reminders(desk, &asked),
        Command::NotToday { why } => reminders::not_today(desk, why),
        Command::Calendar { out } => reminders::calendar(desk, &out),
        Command::Settings { language, awake } => today::settings(desk, language.as_deref(), awake),
    }
}

/// The platform's own place for a program's data.
pub fn own_place() -> Option<PathBuf> {
    directories::ProjectDirs::from("org", "Sendaluna", "Sendaluna").map(|dirs| dirs.data_dir().to_path_buf())
}

/// The words of the language that was asked for, set, the plan's, or the system's.
fn words(asked: Option<String>, folder: &Path, keys: KeyringOrFile) -> Words {
    let mut wanted: Vec<String> = asked.into_iter().collect();
    if let Ok(home) = Bedside::look(folder, &keys, IanaZone::of_device()) {
        wanted.extend(home.settings().ok().and_then(|settings| settings.language));
        let of_plan = home.known().map(|known| known.plan.head().languages.clone()).unwrap_or_default();
        wanted.extend(of_plan.iter().map(ToString::to_string));
    }
    wanted.push(system_language());
    Words::new(wanted.iter().map(String::as_str))
}

fn report(desk: &Desk, trouble: &Trouble) {
    let (happened, to_do) = match trouble {
        Trouble::Bedside(error) => {
            let home = desk.look().ok();
            let known = home.as_ref().and_then(|home| home.known().ok());
            let speaker = Speaker::new(&desk.words, known.as_ref().map(|known| &known.plan));
            say::error(&speaker, error)
        }
        other => say::coded(&desk.words, other),
    };
    if desk.json {
        let mut error = json!({ "code": trouble.code(), "happened": happened, "do": to_do });
        if let Trouble::Bedside(BedsideError::NotYet { not_yet, .. }) = trouble {
            error["opens"] = json!(not_yet.opens);
            error["reasons"] = json!(today::reasons_said(desk, not_yet).unwrap_or_default());
        }
        print(&serde_json::to_string_pretty(&json!({ "error": error })).unwrap_or_default());
    } else {
        let _ = writeln!(std::io::stderr(), "{happened}\n{to_do}");
        let hint = format!("hint-{}", trouble.code());
        if desk.words.has(&hint) {
            let _ = writeln!(std::io::stderr(), "{}", desk.say(&hint, &[]));
        }
        if let Trouble::Bedside(BedsideError::NotYet { not_yet, .. }) = trouble {
            for reason in today::reasons_said(desk, not_yet).unwrap_or_default() {
                let _ = writeln!(std::io::stderr(), "  {reason}");
            }
        }
        if let Ok(contacts) = desk.look().and_then(|home| Ok(home.contacts(&desk.words)?)) {
            let phone = [("clinic", contacts.clinic.into()), ("phone", contacts.phone.into())];
            let _ = writeln!(std::io::stderr(), "{}", desk.say("ring-clinic", &phone));
        }
    }
}

/// Says on standard error what went wrong.
pub fn complain(text: &str) {
    let _ = writeln!(std::io::stderr(), "{text}");
}

/// Prints a line.
pub fn print(text: &str) {
    let mut out = std::io::stdout();
    let _ = writeln!(out, "{text}");
    let _ = out.flush();
}

/// A reading of the clock.
pub fn now(desk: &Desk) -> sendaluna_bedside::Now {
    desk.clock.now()
}
