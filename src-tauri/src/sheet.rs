//! `sheet`: the plan on paper.

use std::path::Path;

use serde_json::json;

use crate::answer::{Desk, Trouble, now};
use crate::hand_back::trouble;

/// Prints the plan to a file, and says where it lies.
pub fn sheet(desk: &Desk, out: &Path, large: bool) -> Result<u8, Trouble> {
    let pdf = desk.look()?.sheet(&desk.words, large, &now(desk))?;
    std::fs::write(out, pdf).map_err(|e| trouble(out, &e))?;
    let said = desk.say("sheet-written", &[("path", out.display().to_string().into())]);
    desk.answer(&said, &json!({ "written": out }));
    Ok(0)
}
