//! `sheet`: the plan on paper; `today`: this day alone, on one page.

use std::path::Path;

use serde_json::json;

use crate::answer::{Desk, Trouble, now};
use crate::hand_back::trouble;

/// Prints the plan to a file, and says where it lies.
pub fn sheet(desk: &Desk, out: &Path, large: bool) -> Result<u8, Trouble> {
    let pdf = desk.look()?.sheet(&desk.words, large, &now(desk))?;
    write(desk, out, &pdf, "sheet-written")
}

/// Prints today to a file, and says where it lies.
pub fn today(desk: &Desk, out: &Path) -> Result<u8, Trouble> {
    let pdf = desk.look()?.today_page(&desk.words, &now(desk))?;
    write(desk, out, &pdf, "today-written")
}

fn write(desk: &Desk, out: &Path, pdf: &[u8], written: &str) -> Result<u8, Trouble> {
    std::fs::write(out, pdf).map_err(|e| trouble(out, &e))?;
    let said = desk.say(written, &[("path", out.display().to_string().into())]);
    desk.answer(&said, &json!({ "written": out }));
    Ok(0)
}
