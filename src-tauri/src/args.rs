//! Arguments.

use std::path::PathBuf;

use chrono::NaiveDate;
use clap::{Parser, Subcommand, ValueEnum};

/// Your clinic's exercise plan, at home. The plan is the clinic's; this program is not a medical
/// device and gives no medical advice.
#[derive(Parser)]
///
/// Without a command, the window opens.
#[command(name = "sendaluna", version, subcommand_precedence_over_arg = true)]
pub struct Cli {
    /// Where your data lives; else `SENDALUNA_HOME`, else the platform's own place.
    #[arg(long, global = true, env = "SENDALUNA_HOME")]
    pub data: Option<PathBuf>,
    /// Language: en, es. Else what you have set, else the plan's, else the system's.
    #[arg(long, global = true)]
    pub lang: Option<String>,
    /// Answer in JSON.
    #[arg(long, global = true)]
    pub json: bool,
    /// Keep the key in a file beside the record, and do not ask the platform's keyring.
    #[arg(long, global = true)]
    pub key_in_file: bool,
    /// A plan file to take in, in the window.
    pub file: Option<PathBuf>,
    #[command(subcommand)]
    pub command: Option<Command>,
}

/// The file that arguments hand over, if they do.
pub fn file_of(args: &[String]) -> Option<PathBuf> {
    Cli::try_parse_from(args).ok().and_then(|cli| cli.file)
}

/// What to do.
#[derive(Subcommand)]
pub enum Command {
    /// Take a plan file in.
    Receive {
        /// The file from your clinic, or photos or scans of its letter (PNG, JPEG), all of them.
        #[arg(required = true)]
        files: Vec<PathBuf>,
        /// The code on your letter; for the first file.
        #[arg(long)]
        code: Option<String>,
        /// Answers "which side was operated on?"; once for each operation.
        #[arg(long, value_enum)]
        side: Vec<Side>,
        /// Answers "what is today's date?", as 2026-05-25.
        #[arg(long)]
        today: Option<NaiveDate>,
        /// Answers "is this your plan?" with yes.
        #[arg(long)]
        yes: bool,
    },
    /// What is due today, what is not yet, and whom to ring.
    Due,
    /// What is allowed and what is not yet, until when, and who says so.
    Gates,
    /// Be led through a session, in real time.
    Session {
        /// Only this item.
        #[arg(long, value_name = "ITEM")]
        only: Option<String>,
        /// Warning signs that are new or worse, by id; `none` if there are none.
        #[arg(long, value_delimiter = ',')]
        signs: Option<Vec<String>>,
        /// Pain this morning, 0 to 10, if it is asked.
        #[arg(long, value_name = "LEVEL")]
        morning: Option<u8>,
        /// Pain now, at rest, 0 to 10.
        #[arg(long)]
        pain: Option<u8>,
        /// Answers "what is today's date?", if it is asked.
        #[arg(long)]
        today: Option<NaiveDate>,
        /// Go on with today's open session without asking.
        #[arg(long, conflicts_with = "anew")]
        go_on: bool,
        /// Begin anew without asking.
        #[arg(long)]
        anew: bool,
        /// A helper leads and answers.
        #[arg(long)]
        helper: bool,
    },
    /// Do a test from your clinic, with somebody beside you; without a name, see which are asked for.
    HomeTest {
        /// Which test.
        test: Option<String>,
        /// Warning signs that are new or worse, by id; `none` if there are none.
        #[arg(long, value_delimiter = ',')]
        signs: Option<Vec<String>>,
        /// Pain this morning, 0 to 10, if it is asked.
        #[arg(long)]
        morning: Option<u8>,
        /// Pain now, at rest, 0 to 10.
        #[arg(long)]
        pain: Option<u8>,
        /// Answers "what is today's date?", if it is asked.
        #[arg(long)]
        today: Option<NaiveDate>,
        /// Answers "is somebody beside you?" with yes.
        #[arg(long)]
        helper: bool,
        /// Done without the program: how often you stood up in 30 seconds.
        #[arg(long, conflicts_with_all = ["seconds", "held"])]
        stands: Option<u16>,
        /// You pushed with your arms.
        #[arg(long, requires = "stands")]
        arms: bool,
        /// Done without the program: seconds until you sat again.
        #[arg(long, conflicts_with = "held")]
        seconds: Option<f64>,
        /// Done without the program: seconds of each stance, as 10,10,4.5.
        #[arg(long, value_delimiter = ',')]
        held: Option<Vec<f64>>,
        /// Done yesterday, not today.
        #[arg(long)]
        yesterday: bool,
    },
    /// Write down what was done without the program.
    Did {
        /// Which exercise or care item.
        item: String,
        /// Yesterday, not today.
        #[arg(long)]
        yesterday: bool,
        /// How many sets.
        #[arg(long, default_value_t = 1)]
        sets: u8,
        /// How many repetitions, breaths, minutes or steps in each.
        #[arg(long, default_value_t = 0)]
        each: u16,
    },
    /// Whom to ring, and when to stop.
    Contacts,
    /// "My clinic told me to stop this."
    StopItem {
        /// Which exercise.
        item: String,
        /// Take it back.
        #[arg(long)]
        undo: bool,
    },
    /// Take an exercise one step up, if your clinic's rule allows it, or one step down, at any time.
    Step {
        /// Which way.
        #[arg(value_enum)]
        way: StepWay,
        /// Which exercise.
        item: String,
    },
    /// Write down a fall or a stay in hospital: nothing new opens until your clinic says so.
    SetBack {
        /// Which.
        #[arg(value_enum)]
        what: SetBack,
    },
    /// Declare a break: days on which you do not exercise, and why.
    Break {
        /// First day, as 2026-05-25.
        #[arg(long)]
        from: NaiveDate,
        /// Last day, included.
        #[arg(long)]
        through: NaiveDate,
        /// Who wants it.
        #[arg(long, value_enum, default_value_t = Why::Own)]
        why: Why,
        /// Why, in your own words.
        #[arg(long)]
        words: Option<String>,
    },
    /// "I have spoken to the clinic", after a stop that said to ring.
    Spoke,
    /// Make what goes back to the clinic: a sealed file that only the clinic opens, and your record as a
    /// table.
    HandBack {
        /// The folder to write to.
        #[arg(long)]
        out: PathBuf,
        /// First day, as 2026-05-25; else the day of your first plan.
        #[arg(long)]
        from: Option<NaiveDate>,
        /// Keep your own words back.
        #[arg(long)]
        without_words: bool,
        /// What you want to ask at your visit.
        #[arg(long)]
        ask: Option<String>,
    },
    /// Print your plan for the fridge: a tagged PDF.
    Sheet {
        /// Where to write it.
        #[arg(long)]
        out: PathBuf,
        /// In large print, of 17 pt.
        #[arg(long)]
        large: bool,
    },
    /// Show or change settings.
    Settings {
        /// The language.
        #[arg(long)]
        language: Option<String>,
        /// When you are awake, as 08:00-21:00.
        #[arg(long, value_parser = awake)]
        awake: Option<(u16, u16)>,
    },
}

/// Sides.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Side {
    /// The left.
    Left,
    /// The right.
    Right,
    /// Both.
    Both,
    /// Neither: the back, say.
    Neither,
}

/// Who wants a break.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Why {
    /// You do.
    Own,
    /// Your clinic ordered it.
    Clinic,
    /// You are in hospital.
    Hospital,
}

/// Ways to step.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum StepWay {
    /// One up.
    Up,
    /// One down.
    Down,
}

/// Set-backs.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum SetBack {
    /// A fall.
    Fall,
    /// A stay in hospital.
    Readmission,
}

fn awake(text: &str) -> Result<(u16, u16), String> {
    let minutes = |text: &str| {
        let time = chrono::NaiveTime::parse_from_str(text, "%H:%M").ok()?;
        u16::try_from(chrono::Timelike::num_seconds_from_midnight(&time) / 60).ok()
    };
    let (from, to) = text.split_once('-').ok_or("write it as 08:00-21:00")?;
    minutes(from).zip(minutes(to)).ok_or_else(|| "write it as 08:00-21:00".to_string())
}
