//! Arguments.

use std::path::PathBuf;

use chrono::NaiveDate;
use clap::{Parser, Subcommand, ValueEnum};
use sendaluna_bedside::reminding::Shows;
use sendaluna_bedside::types::Weekday;

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
    /// Language: en, es, de, ar. Else what you have set, else the plan's, else the system's.
    #[arg(long, global = true)]
    pub lang: Option<String>,
    /// Answer in JSON.
    #[arg(long, global = true)]
    pub json: bool,
    /// Keep the key in a file beside the record, and do not ask the platform's keyring.
    #[arg(long, global = true)]
    pub key_in_file: bool,
    /// Open the window on the questions before a session.
    #[arg(long)]
    pub begin: bool,
    /// A plan file to take in, in the window.
    pub file: Option<PathBuf>,
    #[command(subcommand)]
    pub command: Option<Command>,
}

/// What the arguments of a second start hand over: a file, and whether to begin.
pub fn handed_over(args: &[String]) -> (Option<PathBuf>, bool) {
    Cli::try_parse_from(args).map_or((None, false), |cli| (cli.file, cli.begin))
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
        #[arg(long, required_unless_present = "end")]
        from: Option<NaiveDate>,
        /// Last day, included.
        #[arg(long, required_unless_present = "end")]
        through: Option<NaiveDate>,
        /// Who wants it.
        #[arg(long, value_enum, default_value_t = Why::Own)]
        why: Why,
        /// Why, in your own words.
        #[arg(long)]
        words: Option<String>,
        /// Exercise again from today, before the last day of a break.
        #[arg(long, conflicts_with_all = ["from", "through", "why", "words"])]
        end: bool,
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
    /// Print today on one page, for somebody beside you: a tagged PDF.
    Today {
        /// Where to write it.
        #[arg(long)]
        out: PathBuf,
    },
    /// Show or change how you are reminded.
    Reminders(RemindersArgs),
    /// "Not today": no more reminders today. With a reason, it also answers why.
    NotToday {
        /// Why.
        #[arg(long, value_enum)]
        why: Option<NotTodayReason>,
    },
    /// Put the times of your plan into a file for the calendar of a phone (iCalendar).
    Calendar {
        /// Where to write it.
        #[arg(long)]
        out: PathBuf,
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

/// How to be reminded.
#[derive(clap::Args)]
pub struct RemindersArgs {
    /// Remind at all.
    #[arg(value_enum)]
    pub switch: Option<OnOff>,
    /// Times of the day, as 09:00,14:00,19:00; `plan` to have them worked out from your plan.
    #[arg(long, value_parser = clock_times)]
    pub times: Option<ClockTimes>,
    /// Days of the week without a reminder, as saturday,sunday; `none` for every day.
    #[arg(long, value_parser = days)]
    pub days_off: Option<Days>,
    /// Quiet hours, as 22:00-07:00; `asleep` for the hours in which you are not awake.
    #[arg(long, value_parser = quiet)]
    pub quiet: Option<QuietHours>,
    /// With a sound.
    #[arg(long, value_enum)]
    pub sound: Option<OnOff>,
    /// How much a notice says.
    #[arg(long, value_enum)]
    pub shows: Option<ShowsWhat>,
    /// Start when this device starts.
    #[arg(long, value_enum)]
    pub at_login: Option<OnOff>,
    /// Send one now, and say what came of it.
    #[arg(long)]
    pub send_one: bool,
}

/// On or off.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum OnOff {
    /// On.
    On,
    /// Off.
    Off,
}

/// How much a notice says.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum ShowsWhat {
    /// No word of health.
    Little,
    /// That it is about exercises.
    Exercises,
}

impl From<ShowsWhat> for Shows {
    fn from(shows: ShowsWhat) -> Self {
        match shows {
            ShowsWhat::Little => Self::Little,
            ShowsWhat::Exercises => Self::Exercises,
        }
    }
}

/// Times of the day.
#[derive(Clone)]
pub enum ClockTimes {
    /// As the plan asks.
    OfPlan,
    /// The patient's own, in minutes after midnight.
    Own(Vec<u16>),
}

/// Days of the week.
#[derive(Clone)]
pub struct Days(pub Vec<Weekday>);

/// Quiet hours.
#[derive(Clone, Copy)]
pub enum QuietHours {
    /// The hours of sleep.
    Asleep,
    /// From and to, in minutes after midnight.
    Own(u16, u16),
}

/// Why not today.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum NotTodayReason {
    /// It hurts.
    Hurts,
    /// You feel unwell.
    Unwell,
    /// You are too tired.
    Tired,
    /// You have no time.
    NoTime,
    /// You are not at home.
    Away,
    /// You would rather not say.
    NotSaid,
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

fn minutes(text: &str) -> Option<u16> {
    let time = chrono::NaiveTime::parse_from_str(text.trim(), "%H:%M").ok()?;
    u16::try_from(chrono::Timelike::num_seconds_from_midnight(&time) / 60).ok()
}

fn clock_times(text: &str) -> Result<ClockTimes, String> {
    if text == "plan" {
        return Ok(ClockTimes::OfPlan);
    }
    let times: Option<Vec<u16>> = text.split(',').map(minutes).collect();
    times.map(ClockTimes::Own).ok_or_else(|| "write them as 09:00,14:00,19:00".to_string())
}

fn days(text: &str) -> Result<Days, String> {
    if text == "none" {
        return Ok(Days(Vec::new()));
    }
    let days: Option<Vec<Weekday>> =
        text.split(',').map(|day| crate::reminders::weekday(day.trim())).collect();
    days.map(Days).ok_or_else(|| "write them as saturday,sunday".to_string())
}

fn quiet(text: &str) -> Result<QuietHours, String> {
    if text == "asleep" {
        return Ok(QuietHours::Asleep);
    }
    let ends = text.split_once('-').and_then(|(from, to)| minutes(from).zip(minutes(to)));
    ends.map(|(from, to)| QuietHours::Own(from, to)).ok_or_else(|| "write them as 22:00-07:00".to_string())
}

fn awake(text: &str) -> Result<(u16, u16), String> {
    let (from, to) = text.split_once('-').ok_or("write it as 08:00-21:00")?;
    minutes(from).zip(minutes(to)).ok_or_else(|| "write it as 08:00-21:00".to_string())
}
