//! Opens a sealed file as the clinic's program does: the identity as an argument, the file on standard
//! input, what was in it on standard output. Exit code 1 if it does not open, 2 if the identity is none of ours.

use std::io::{Read, Write};
use std::process::ExitCode;

use sendaluna_authority::ReportKey;

fn main() -> ExitCode {
    let identity = std::env::args().nth(1).unwrap_or_default();
    let Ok(key) = ReportKey::from_identity(&identity) else { return ExitCode::from(2) };
    let mut sealed = Vec::new();
    if std::io::stdin().read_to_end(&mut sealed).is_err() {
        return ExitCode::from(3);
    }
    match key.unseal(&sealed) {
        Some(plain) if std::io::stdout().write_all(&plain).is_ok() => ExitCode::SUCCESS,
        _ => ExitCode::FAILURE,
    }
}
