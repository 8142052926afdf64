//! Asks Windows or macOS, through `keepawake`. Not run by any test.

use super::NoAwake;
use crate::App;

pub(super) struct Asker {
    app: App,
}

/// What was granted, until it is dropped.
pub(super) struct Held {
    _awake: keepawake::KeepAwake,
}

impl Asker {
    pub(super) fn new(app: &App) -> Self {
        Self { app: app.clone() }
    }

    pub(super) fn ask(&self) -> Result<Held, NoAwake> {
        let mut asks = keepawake::Builder::default();
        asks.display(true).app_name(self.app.name.as_str()).reason(self.app.why_awake.as_str());
        asks.create().map(|awake| Held { _awake: awake }).map_err(|_| NoAwake::Refused)
    }
}
