//! Reminders on a phone, where no program of ours may wait: the system is handed the next of them at every
//! start, and shows them by itself. It holds few at a time, so this is a rolling window, planned anew whenever the
//! record changes.
//!
//! Compiled on a desktop, so that its types are held; run on no phone yet.

use chrono::{DateTime, Utc};
use sendaluna_bedside::front::next_notices;
use sendaluna_bedside::types::{Front, IanaZone};
use tauri::{AppHandle, Runtime};
use tauri_plugin_notification::{NotificationExt, Schedule};

/// A system holds 64 at most; four are left for what else it may have to say.
pub const MOST: usize = 60;

/// Where notices are handed to.
pub trait Schedules {
    /// What goes wrong.
    type Error;
    /// Takes back all that were handed over and not shown.
    fn clear(&self) -> Result<(), Self::Error>;
    /// Hands one over.
    fn put(&self, number: i32, notice: &Notice<'_>) -> Result<(), Self::Error>;
}

/// A notice that is to be shown at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Notice<'a> {
    /// When.
    pub at: DateTime<Utc>,
    /// What it says first.
    pub title: &'a str,
    /// What it says.
    pub text: &'a str,
    /// Without a sound.
    pub silent: bool,
}

/// Plans the next notices anew.
pub fn plan<S: Schedules>(
    to: &S,
    front: &Front,
    now: DateTime<Utc>,
    zone: &IanaZone,
) -> Result<usize, S::Error> {
    to.clear()?;
    let doc = front.doc();
    let next = next_notices(front, now, zone, MOST);
    for (number, (at, kind)) in next.iter().enumerate() {
        let text = if kind.asks_kindly() { &doc.words.after_silence } else { &doc.words.now };
        let notice = Notice { at: *at, title: &doc.words.title, text, silent: !doc.sound };
        to.put(i32::try_from(number).unwrap_or(i32::MAX), &notice)?;
    }
    Ok(next.len())
}

/// The system's scheduled notices.
pub struct OfSystem<'a, R: Runtime>(pub &'a AppHandle<R>);

impl<R: Runtime> Schedules for OfSystem<'_, R> {
    type Error = tauri_plugin_notification::Error;

    #[cfg(mobile)]
    fn clear(&self) -> Result<(), Self::Error> {
        self.0.notification().cancel_all()
    }

    /// A desktop's are shown by the reminder program; there is nothing to take back.
    #[cfg(not(mobile))]
    fn clear(&self) -> Result<(), Self::Error> {
        Ok(())
    }

    fn put(&self, number: i32, notice: &Notice<'_>) -> Result<(), Self::Error> {
        // A moment beyond what the system can name is not within any window.
        let Ok(date) = time::OffsetDateTime::from_unix_timestamp(notice.at.timestamp()) else {
            return Ok(());
        };
        let schedule = Schedule::At { date, repeating: false, allow_while_idle: true };
        let builder = self.0.notification().builder();
        let builder = builder.id(number).title(notice.title).body(notice.text).schedule(schedule);
        if notice.silent { builder.silent().show() } else { builder.show() }
    }
}
