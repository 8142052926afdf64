//! Steps of doses that move.

use sendaluna_core::ids::ItemId;
use serde::Serialize;

use crate::view::figure::FigureAsked;

/// Where an item stands among its signed doses.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StepView {
    /// The step, counted from 1.
    pub step: u16,
    /// How many there are.
    pub of: u16,
    /// "Step 2 of 4."
    pub said: String,
    /// One up that the clinic's rule allows now, in words.
    pub up: Option<String>,
    /// There is a smaller step.
    pub can_down: bool,
}

/// One up that the patient is asked about.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StepOfferView {
    /// Of which item.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub item: ItemId,
    /// "Bridge: your clinic allows one up. …"
    pub said: String,
    /// Its figure.
    pub figure: FigureAsked,
}

/// Pain had risen by the next morning.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct MorningView {
    /// That it has, and what is smaller today.
    pub said: Vec<String>,
    /// Nobody at the clinic sees this now.
    pub nobody_sees: String,
}
