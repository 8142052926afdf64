//! "Send me one now": shows a notice, and tells the truth about what came of it.

use std::io::Write;
use std::path::Path;
use std::sync::Arc;
use std::sync::mpsc::channel;
use std::time::Duration;

use sendaluna_core::calendar::front::FILE;
use sendaluna_core::calendar::outbox::ReminderAnswer;
use serde_json::{Value, json};

use crate::folder::Folder;
use crate::notifier::{Desktop, Notice, Notifier, Outcome};

/// A desktop that does not want to show a notice puts it away within this time.
const SOON: Duration = Duration::from_millis(1_500);

/// Shows one, and prints what came of it as a line of JSON: `came` is `taken`, `held`, `closed`, `nobody` or
/// `failed`; `by` names who shows notices here, `what` what went wrong.
pub fn print(data: &Path) -> std::io::Result<()> {
    let came = came(data);
    writeln!(std::io::stdout(), "{came}")
}

fn came(data: &Path) -> Value {
    let front = Folder::of(data).ok().and_then(|folder| folder.front().ok());
    let Some(front) = front else { return json!({ "came": "failed", "what": FILE }) };
    let Some(by) = crate::notifier::who() else { return json!({ "came": "nobody" }) };
    let (told, outcomes) = channel();
    let mut desktop = Desktop::new(Arc::new(move |_, outcome| {
        let _ = told.send(outcome);
    }));
    let words = &front.doc().words;
    desktop.show(&Notice {
        number: 1,
        title: words.title.clone(),
        text: words.now.clone(),
        // Nothing comes of pressing it: whoever would note it is gone by then.
        actions: Vec::<(ReminderAnswer, String)>::new(),
        sound: front.doc().sound,
    });
    match outcomes.recv_timeout(SOON) {
        Ok(Outcome::Lost) => json!({ "came": "nobody" }),
        Ok(Outcome::PutAway) => json!({ "came": "closed", "by": by }),
        _ if crate::notifier::holds_back() => json!({ "came": "held", "by": by }),
        _ => json!({ "came": "taken", "by": by }),
    }
}
