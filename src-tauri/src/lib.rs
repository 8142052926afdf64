//! `sendaluna`: the patient's program. Without a command, the window opens; with one, it answers in
//! the terminal: for a helper, a screen reader or a bench.

mod answer;
mod args;
mod at_login;
pub mod clock;
mod hand_back;
mod hands;
pub mod hearing;
mod home_test;
pub mod leader;
mod led;
pub mod phone;
mod questions;
mod receive;
mod reminders;
mod session;
mod sheet;
mod today;
mod window;

use std::process::ExitCode;

/// Runs the program on the arguments it was started with.
pub fn run() -> ExitCode {
    answer::run()
}
