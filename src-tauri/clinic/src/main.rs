//! `sendaluna-clinic`: the clinic's command line.

use std::process::ExitCode;

fn main() -> ExitCode {
    sendaluna_clinic::cli::run()
}
