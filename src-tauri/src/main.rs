//! `sendaluna`: the patient's program.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() -> std::process::ExitCode {
    sendaluna::run()
}
