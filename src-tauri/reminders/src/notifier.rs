//! Showing a notice, and hearing what is pressed on it.

use std::sync::Arc;
use std::sync::mpsc;
use std::time::Duration;

use async_channel::{Receiver, Sender, bounded};
#[cfg(all(unix, not(target_os = "macos")))]
use futures_lite::future;
#[cfg(all(unix, not(target_os = "macos")))]
use notify_rust::Hint;
use notify_rust::{Notification, NotificationHandle, NotificationResponse, Timeout};
use sendaluna_core::calendar::outbox::ReminderAnswer;

/// How long taking a notice back may take before this program ends.
const TAKEN_BACK_WITHIN: Duration = Duration::from_secs(5);

/// A notice.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Notice {
    /// Its number.
    pub number: u64,
    /// What it says first.
    pub title: String,
    /// What it says.
    pub text: String,
    /// Its actions with their words, in order.
    pub actions: Vec<(ReminderAnswer, String)>,
    /// With a sound.
    pub sound: bool,
}

/// What came of a notice.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// Something was pressed.
    Pressed(ReminderAnswer),
    /// It was put away.
    PutAway,
    /// It could not be shown, or who showed it is gone.
    Lost,
}

/// Shows one notice at a time.
pub trait Notifier {
    /// Shows a notice in place of the one before.
    fn show(&mut self, notice: &Notice);
    /// Takes the notice back.
    fn withdraw(&mut self);
}

/// Called with the number of a notice and what came of it.
pub type Tell = Arc<dyn Fn(u64, Outcome) + Send + Sync>;

/// Notices of the desktop. Each waits on a thread of its own for what is pressed.
pub struct Desktop {
    tell: Tell,
    shown: Option<Shown>,
    /// Of the last one that was taken back: has no sender once that is done.
    taken_back: Option<mpsc::Receiver<()>>,
}

struct Shown {
    /// As the desktop knows it.
    id: u32,
    /// Takes it back; closed once nobody waits for it any more.
    back: Sender<()>,
    /// The same, to be waited for.
    done: mpsc::Receiver<()>,
}

impl Desktop {
    /// Tells what comes of notices.
    pub fn new(tell: Tell) -> Self {
        Self { tell, shown: None, taken_back: None }
    }

    /// Takes the notice back, and waits until that is done, where it can be done.
    pub fn end(mut self) {
        self.withdraw();
        if let Some(done) = self.taken_back.filter(|_| cfg!(all(unix, not(target_os = "macos")))) {
            let _ = done.recv_timeout(TAKEN_BACK_WITHIN);
        }
    }
}

impl Notifier for Desktop {
    fn show(&mut self, notice: &Notice) {
        // The number of a notice that is gone may be another's by now.
        let before = self.shown.take().filter(|shown| !shown.back.is_closed());
        let replaced = before.as_ref().map(|shown| shown.id);
        let Ok(handle) = notification(notice, replaced).show() else {
            // Still to be replaced, by whatever can be shown next.
            self.shown = before;
            return (self.tell)(notice.number, Outcome::Lost);
        };
        let (back, take_back) = bounded(1);
        let (waits, done) = mpsc::channel();
        self.shown = Some(Shown { id: handle.id(), back, done });
        let (number, tell) = (notice.number, Arc::clone(&self.tell));
        let waiting = move || {
            wait(handle, &take_back, |outcome| tell(number, outcome));
            drop(waits);
        };
        let thread = std::thread::Builder::new().name("notice".into()).stack_size(256 * 1024);
        if thread.spawn(waiting).is_err() {
            (self.tell)(notice.number, Outcome::Lost);
        }
    }

    fn withdraw(&mut self) {
        if let Some(shown) = self.shown.take() {
            let _ = shown.back.try_send(());
            self.taken_back = Some(shown.done);
        }
    }
}

fn notification(notice: &Notice, in_place_of: Option<u32>) -> Notification {
    let mut notification = Notification::new();
    notification
        .appname("Sendaluna")
        .icon("sendaluna")
        .summary(&notice.title)
        .body(&notice.text)
        .timeout(Timeout::Never);
    #[cfg(all(unix, not(target_os = "macos")))]
    // The packager names the desktop file after the product (from memory).
    notification.hint(Hint::DesktopEntry("Sendaluna".into())).hint(if notice.sound {
        Hint::SoundName("message-new-instant".into())
    } else {
        Hint::SuppressSound(true)
    });
    for (answer, words) in &notice.actions {
        notification.action(action(*answer), words);
    }
    if let Some(id) = in_place_of {
        notification.id(id);
    }
    notification
}

/// What a response comes to.
fn outcome(response: &NotificationResponse) -> Outcome {
    match response {
        NotificationResponse::Action(name) => answer(name).map_or(Outcome::PutAway, Outcome::Pressed),
        // A press on the notice itself, where the desktop has no buttons.
        NotificationResponse::Default => Outcome::Pressed(ReminderAnswer::Start),
        _ => Outcome::PutAway,
    }
}

/// Waits until something is pressed, the notice is put away or taken back, or who showed it is gone.
#[cfg(all(unix, not(target_os = "macos")))]
#[expect(clippy::needless_pass_by_value, reason = "others have to give it away")]
fn wait(handle: NotificationHandle, take_back: &Receiver<()>, tell: impl Fn(Outcome)) {
    let heard = std::cell::Cell::new(Outcome::Lost);
    let pressed = async {
        handle.wait_for_action_async(|response| heard.set(outcome(response))).await;
        Some(heard.get())
    };
    let gone = async {
        // Where nobody can tell, the notice is taken to stay.
        if server_gone().await.is_err() {
            future::pending::<()>().await;
        }
        Some(Outcome::Lost)
    };
    let back = async {
        // A sender that is gone has been replaced by the next notice, which needs no closing.
        if take_back.recv().await.is_ok() {
            handle.close_async().await;
        }
        None
    };
    if let Some(outcome) = future::block_on(future::or(back, future::or(pressed, gone))) {
        // Not every desktop puts a notice away once something on it was pressed.
        if let Outcome::Pressed(_) = outcome {
            future::block_on(handle.close_async());
        }
        tell(outcome);
    }
}

/// Ends when the desktop's notices lose who shows them.
#[cfg(all(unix, not(target_os = "macos")))]
async fn server_gone() -> zbus::Result<()> {
    let bus = zbus::Connection::session().await?;
    let names = zbus::fdo::DBusProxy::new(&bus).await?;
    let mut changes =
        names.receive_name_owner_changed_with_args(&[(0, "org.freedesktop.Notifications")]).await?;
    while let Some(change) = futures_lite::StreamExt::next(&mut changes).await {
        if change.args()?.new_owner().is_none() {
            break;
        }
    }
    Ok(())
}

/// Waits until something is pressed, or the notice is put away.
#[cfg(not(all(unix, not(target_os = "macos"))))]
fn wait(handle: NotificationHandle, _: &Receiver<()>, tell: impl Fn(Outcome)) {
    let heard = handle.wait_for_response(|response: &NotificationResponse| tell(outcome(response)));
    if heard.is_err() {
        tell(Outcome::Lost);
    }
}

/// Who shows notices here; `None` if nobody does.
#[cfg(all(unix, not(target_os = "macos")))]
pub fn who() -> Option<String> {
    notify_rust::get_server_information().ok().map(|server| server.name)
}

/// The system itself does.
#[cfg(not(all(unix, not(target_os = "macos"))))]
pub fn who() -> Option<String> {
    Some(std::env::consts::OS.to_string())
}

/// Whether notices are held back at the moment, as far as who shows them says so.
#[cfg(all(unix, not(target_os = "macos")))]
pub fn holds_back() -> bool {
    // Where each kind of desktop says it.
    let says = [("org.freedesktop.Notifications", "Inhibited"), ("org.dunstproject.cmd0", "paused")];
    let Ok(bus) = zbus::blocking::Connection::session() else { return false };
    let is_on = |interface: &str, property: &str| {
        let at = ("org.freedesktop.Notifications", "/org/freedesktop/Notifications");
        let proxy = zbus::blocking::Proxy::new(&bus, at.0, at.1, interface).ok()?;
        proxy.get_property::<bool>(property).ok()
    };
    says.iter().any(|(interface, property)| is_on(interface, property) == Some(true))
}

/// Whether notices are held back at the moment: the system does not say.
#[cfg(not(all(unix, not(target_os = "macos"))))]
pub fn holds_back() -> bool {
    false
}

fn action(answer: ReminderAnswer) -> &'static str {
    match answer {
        ReminderAnswer::Start => "start",
        ReminderAnswer::Later => "later",
        ReminderAnswer::NotToday => "not-today",
    }
}

fn answer(action: &str) -> Option<ReminderAnswer> {
    let known = [ReminderAnswer::Start, ReminderAnswer::Later, ReminderAnswer::NotToday];
    known.into_iter().find(|known| self::action(*known) == action)
}
