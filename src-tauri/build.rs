//! Embeds the window: its pages, its icon, and the list of commands it may call. A command that is
//! not in this list, or not in `capabilities/patient.json`, cannot be reached from the window.

use tauri_build::{AppManifest, Attributes};

const COMMANDS: &[&str] = &[
    "start",
    "retry",
    "reveal",
    "change",
    "pick_file",
    "next_file",
    "watch_files",
    "take_begin",
    "try_code",
    "take_in",
    "day",
    "past",
    "figure",
    "to_hand_back",
    "hand_back",
    "before",
    "confirm_date",
    "answer_before",
    "begin",
    "attach",
    "press",
    "before_test",
    "begin_test",
    "press_test",
    "spoke",
    "did",
    "did_care",
    "stop_item",
    "step",
    "set_back",
    "send_one",
    "try_voice",
    "start_at_login",
    "save_calendar",
    "save_today",
    "declare_break",
    "end_break",
    "not_today_because",
    "ring",
];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let attributes = Attributes::new().app_manifest(AppManifest::new().commands(COMMANDS));
    Ok(tauri_build::try_build(attributes)?)
}
