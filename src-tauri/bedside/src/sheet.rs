//! The plan on paper, as it holds from today on.

use sendaluna_paper::Paper;
use sendaluna_paper::sheet::{PlanSheet, plan_sheet};
use sendaluna_words::Words;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::Bedside;

impl Bedside {
    /// The plan sheet, as a tagged PDF, in ordinary or in large print.
    pub fn sheet(&self, words: &Words, large: bool, now: &Now) -> Result<Vec<u8>, BedsideError> {
        let known = self.known()?;
        let printed = PlanSheet {
            plan: &known.plan,
            standing: &known.standing,
            library: self.library(),
            day: known.today(now.at).gate_day,
            set_back: known.state.set_back_since(known.standing.set_backs_released_until),
            tightened: &known.state.tightened,
            history: Some(&known.state.history),
            at: now.at,
        };
        Ok(plan_sheet(&printed, words, Paper { large })?)
    }
}
