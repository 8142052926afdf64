//! `sendaluna`: the patient's program, without a window: for a helper, a screen reader or a bench.

mod answer;
mod args;
mod clock;
mod hands;
mod led;
mod questions;
mod receive;
mod session;
mod today;

use std::process::ExitCode;

fn main() -> ExitCode {
    answer::run()
}
