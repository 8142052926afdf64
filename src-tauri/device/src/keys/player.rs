//! A player on the session bus.

use std::collections::HashMap;
use std::sync::Arc;
use std::sync::mpsc::Receiver;

use zbus::blocking::Connection;
use zbus::fdo::RequestNameFlags;
use zbus::zvariant::{ObjectPath, Value};
use zbus::{block_on, interface};

use super::{Hears, Key, WindowHandle};
use crate::App;
use crate::bus::Bus;

const PATH: &str = "/org/mpris/MediaPlayer2";
const NAME: &str = "org.mpris.MediaPlayer2";

/// Listens until `told` ends.
pub(super) fn serve(app: &App, _: Option<WindowHandle>, hears: &Hears, told: &Receiver<bool>) {
    serve_on(&Bus::Session, app, hears, told);
}

fn serve_on(bus: &Bus, app: &App, hears: &Hears, told: &Receiver<bool>) {
    let own = format!("{NAME}.{}", app.id);
    // Somebody else may listen under the program's name: a second data folder has its own window.
    let second = format!("{own}.instance{}", std::process::id());
    let served = connect(bus, app, hears).and_then(|connection| {
        take(&connection, &own).or_else(|_| take(&connection, &second))?;
        Ok(connection)
    });
    for plays in told {
        if let Ok(connection) = &served {
            // Nobody may be there any more to be told.
            let _ = tell(connection, plays);
        }
    }
}

fn connect(bus: &Bus, app: &App, hears: &Hears) -> zbus::Result<Connection> {
    let player = Player { plays: false, hears: Arc::clone(hears) };
    let root = Root { identity: app.name.clone(), desktop_entry: app.id.clone() };
    bus.builder()?.serve_at(PATH, root)?.serve_at(PATH, player)?.build()
}

/// Takes a name, or fails: by itself the connection would wait in a queue for it, and call that success.
fn take(connection: &Connection, name: &str) -> zbus::Result<()> {
    connection.request_name_with_flags(name, RequestNameFlags::DoNotQueue.into()).map(|_| ())
}

fn tell(connection: &Connection, plays: bool) -> zbus::Result<()> {
    let player = connection.object_server().interface::<_, Player>(PATH)?;
    player.get_mut().plays = plays;
    block_on(player.get().playback_status_changed(player.signal_emitter()))
}

struct Root {
    identity: String,
    desktop_entry: String,
}

#[expect(clippy::unused_self, reason = "every player has to answer these; ours are the same for all")]
#[interface(name = "org.mpris.MediaPlayer2")]
impl Root {
    fn raise(&self) {}
    fn quit(&self) {}
    #[zbus(property)]
    fn can_quit(&self) -> bool {
        false
    }
    #[zbus(property)]
    fn can_raise(&self) -> bool {
        false
    }
    #[zbus(property)]
    fn has_track_list(&self) -> bool {
        false
    }
    #[zbus(property)]
    fn identity(&self) -> &str {
        &self.identity
    }
    #[zbus(property)]
    fn desktop_entry(&self) -> &str {
        &self.desktop_entry
    }
    #[zbus(property)]
    fn supported_uri_schemes(&self) -> Vec<String> {
        Vec::new()
    }
    #[zbus(property)]
    fn supported_mime_types(&self) -> Vec<String> {
        Vec::new()
    }
}

struct Player {
    plays: bool,
    hears: Hears,
}

#[expect(clippy::unused_self, reason = "every player has to answer these; ours are the same for all")]
#[interface(name = "org.mpris.MediaPlayer2.Player")]
impl Player {
    fn play_pause(&self) {
        (self.hears)(Key::PlayPause);
    }
    fn play(&self) {
        (self.hears)(Key::Play);
    }
    fn pause(&self) {
        (self.hears)(Key::Pause);
    }
    fn stop(&self) {
        (self.hears)(Key::Pause);
    }
    fn next(&self) {
        (self.hears)(Key::Next);
    }
    fn previous(&self) {}
    #[zbus(property)]
    fn playback_status(&self) -> &str {
        if self.plays { "Playing" } else { "Paused" }
    }
    #[zbus(property)]
    fn rate(&self) -> f64 {
        1.0
    }
    #[zbus(property)]
    fn minimum_rate(&self) -> f64 {
        1.0
    }
    #[zbus(property)]
    fn maximum_rate(&self) -> f64 {
        1.0
    }
    #[zbus(property)]
    fn metadata(&self) -> HashMap<String, Value<'_>> {
        let track = ObjectPath::from_static_str_unchecked("/org/mpris/MediaPlayer2/session");
        HashMap::from([("mpris:trackid".to_string(), Value::from(track))])
    }
    #[zbus(property)]
    fn volume(&self) -> f64 {
        1.0
    }
    #[zbus(property)]
    fn position(&self) -> i64 {
        0
    }
    #[zbus(property)]
    fn can_go_next(&self) -> bool {
        true
    }
    #[zbus(property)]
    fn can_go_previous(&self) -> bool {
        false
    }
    #[zbus(property)]
    fn can_play(&self) -> bool {
        true
    }
    #[zbus(property)]
    fn can_pause(&self) -> bool {
        true
    }
    #[zbus(property)]
    fn can_seek(&self) -> bool {
        false
    }
    #[zbus(property)]
    fn can_control(&self) -> bool {
        true
    }
}

#[cfg(test)]
mod tests {
    use std::sync::mpsc::{Sender, channel};
    use std::thread::JoinHandle;
    use std::time::{Duration, Instant};

    use zbus::blocking::Proxy;

    use super::*;
    use crate::bus::tests::Own;

    const PATIENCE: Duration = Duration::from_secs(10);
    const PLAYER: &str = "org.mpris.MediaPlayer2.Player";

    fn app() -> App {
        App { id: "tested".into(), name: "Tested".into(), why_awake: String::new() }
    }

    fn served(bus: &Bus) -> (Sender<bool>, Receiver<Key>, JoinHandle<()>) {
        let ((plays, told), (to, pressed)) = (channel(), channel());
        let bus = bus.clone();
        let hears: Hears = Arc::new(move |key| to.send(key).expect("there"));
        (plays, pressed, std::thread::spawn(move || serve_on(&bus, &app(), &hears, &told)))
    }

    /// Another's view of a player, once it is there.
    fn seen(bus: &Bus, name: &str) -> Proxy<'static> {
        let connection = bus.connect().expect("a bus");
        let properties = Some("org.freedesktop.DBus.Properties");
        let asks = (PLAYER, "CanControl");
        let until = Instant::now() + PATIENCE;
        while connection.call_method(Some(name), PATH, properties, "Get", &asks).is_err() {
            assert!(Instant::now() < until, "{name} is not there");
            std::thread::yield_now();
        }
        Proxy::new(&connection, name.to_string(), PATH, PLAYER).expect("a proxy")
    }

    #[test]
    fn keys_come_out_and_what_plays_goes_in() {
        let own = Own::start();
        let (plays, pressed, thread) = served(&own.bus);
        let player = seen(&own.bus, "org.mpris.MediaPlayer2.tested");
        let cases = [
            ("PlayPause", Some(Key::PlayPause)),
            ("Play", Some(Key::Play)),
            ("Pause", Some(Key::Pause)),
            ("Stop", Some(Key::Pause)),
            ("Previous", None),
            ("Next", Some(Key::Next)),
        ];
        for (method, key) in cases {
            player.call_method(method, &()).expect("taken");
            assert_eq!(pressed.try_recv().ok(), key, "{method}");
        }
        assert_eq!(player.get_property::<String>("PlaybackStatus").as_deref(), Ok("Paused"));
        let mut changes = player.receive_property_changed::<String>("PlaybackStatus");
        plays.send(true).expect("there");
        let status = std::iter::from_fn(|| changes.next()).map(|change| change.get().expect("a text"));
        assert_eq!(status.into_iter().find(|status| status != "Paused").as_deref(), Some("Playing"));
        drop(plays);
        thread.join().expect("it ends");
        assert!(
            player.get_property::<bool>("CanControl").is_err() || player.call_method("Play", &()).is_err()
        );
    }

    #[test]
    fn a_second_one_has_a_name_of_its_own() {
        let own = Own::start();
        let (_plays, _pressed, _thread) = served(&own.bus);
        seen(&own.bus, "org.mpris.MediaPlayer2.tested");
        let (_plays, pressed, _thread) = served(&own.bus);
        let name = format!("org.mpris.MediaPlayer2.tested.instance{}", std::process::id());
        seen(&own.bus, &name).call_method("Next", &()).expect("taken");
        assert_eq!(pressed.recv_timeout(PATIENCE), Ok(Key::Next));
    }

    #[test]
    fn without_a_bus_it_is_quiet() {
        let (plays, pressed, thread) = served(&Bus::At("unix:path=/nonexistent/bus".into()));
        plays.send(true).expect("there");
        drop(plays);
        thread.join().expect("it ends");
        assert!(pressed.try_recv().is_err());
    }
}
