//! Asks the desktop, over its message bus.

use std::collections::HashMap;

use zbus::blocking::{Connection, Proxy};
use zbus::proxy::MethodFlags;
use zbus::zvariant::{DynamicDeserialize, DynamicType, OwnedObjectPath, Value};

use super::NoAwake;
use crate::App;
use crate::bus::Bus;

/// Name on the bus, path, interface.
type Who = (&'static str, &'static str, &'static str);

const SAVER: Who =
    ("org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver", "org.freedesktop.ScreenSaver");
const PORTAL: Who =
    ("org.freedesktop.portal.Desktop", "/org/freedesktop/portal/desktop", "org.freedesktop.portal.Inhibit");
const REQUEST: &str = "org.freedesktop.portal.Request";
/// The portal's flag for "the session is not idle".
const IDLE: u32 = 8;

/// Who asks.
pub(super) struct Asker {
    app: App,
    bus: Bus,
}

/// What was granted. The connection is part of it: without it the desktop takes it back.
pub(super) struct Held {
    connection: Connection,
    by: By,
}

enum By {
    Saver(u32),
    Portal(OwnedObjectPath),
}

impl Asker {
    pub(super) fn new(app: &App) -> Self {
        Self { app: app.clone(), bus: Bus::Session }
    }

    pub(super) fn ask(&self) -> Result<Held, NoAwake> {
        let connection = self.bus.connect().map_err(|_| NoAwake::NoDesktop)?;
        let saver = || self.saver(&connection).map(By::Saver);
        let portal = |_| self.portal(&connection).map(By::Portal);
        let by = saver().or_else(portal).map_err(|_| NoAwake::Refused)?;
        Ok(Held { connection, by })
    }

    fn saver(&self, connection: &Connection) -> zbus::Result<u32> {
        let asks = (self.app.name.as_str(), self.app.why_awake.as_str());
        call(connection, SAVER, "Inhibit", &asks)
    }

    fn portal(&self, connection: &Connection) -> zbus::Result<OwnedObjectPath> {
        let options = HashMap::from([("reason", Value::from(self.app.why_awake.as_str()))]);
        let asks = ("", IDLE, options);
        call(connection, PORTAL, "Inhibit", &asks)
    }
}

/// A service that would have to be started first has no screen to keep on.
fn call<A, R>(
    connection: &Connection,
    (name, path, interface): (&str, &str, &str),
    method: &str,
    asks: &A,
) -> zbus::Result<R>
where
    A: serde::Serialize + DynamicType,
    R: for<'d> DynamicDeserialize<'d>,
{
    let proxy = Proxy::new(connection, name, path, interface)?;
    let answer = proxy.call_with_flags(method, MethodFlags::NoAutoStart.into(), asks)?;
    answer.ok_or(zbus::Error::InvalidReply)
}

impl Drop for Held {
    /// Tells so as well: a desktop that has missed it sees the connection go right after.
    fn drop(&mut self) {
        let _: zbus::Result<()> = match &self.by {
            By::Saver(cookie) => call(&self.connection, SAVER, "UnInhibit", cookie),
            By::Portal(handle) => call(&self.connection, (PORTAL.0, handle.as_str(), REQUEST), "Close", &()),
        };
    }
}

#[cfg(test)]
mod tests {
    use std::os::unix::net::UnixListener;
    use std::sync::mpsc::{Receiver, Sender, channel};
    use std::time::{Duration, Instant};

    use super::*;
    use crate::Have;
    use crate::awake::Awake;
    use crate::bus::tests::Own;

    const PATIENCE: Duration = Duration::from_secs(10);

    fn app() -> App {
        App { id: "tested".into(), name: "Tested".into(), why_awake: "Exercises".into() }
    }

    struct Saver(Sender<String>);

    #[zbus::interface(name = "org.freedesktop.ScreenSaver")]
    impl Saver {
        fn inhibit(&self, app: &str, why: &str) -> u32 {
            self.0.send(format!("{app}: {why}")).expect("there");
            7
        }
        fn un_inhibit(&self, cookie: u32) {
            self.0.send(format!("let go of {cookie}")).expect("there");
        }
    }

    struct Portal(Sender<String>);

    #[zbus::interface(name = "org.freedesktop.portal.Inhibit")]
    impl Portal {
        #[expect(clippy::needless_pass_by_value, reason = "as the bus hands it over")]
        fn inhibit(&self, window: &str, flags: u32, options: HashMap<String, Value<'_>>) -> OwnedObjectPath {
            let why = options.get("reason").and_then(|why| why.downcast_ref::<String>().ok());
            self.0.send(format!("{window}{flags} {}", why.unwrap_or_default())).expect("there");
            OwnedObjectPath::try_from("/asked/1").expect("a path")
        }
    }

    struct Request(Sender<String>);

    #[zbus::interface(name = "org.freedesktop.portal.Request")]
    impl Request {
        fn close(&self) {
            self.0.send("let go".into()).expect("there");
        }
    }

    fn saver(bus: &Bus) -> (Connection, Receiver<String>) {
        let (to, told) = channel();
        let served = bus.builder().and_then(|b| b.serve_at(SAVER.1, Saver(to))).and_then(|b| b.name(SAVER.0));
        (served.and_then(zbus::blocking::connection::Builder::build).expect("served"), told)
    }

    #[test]
    fn the_screen_stays_on_until_it_is_let_go() {
        let own = Own::start();
        let (_served, told) = saver(&own.bus);
        let awake = Awake::asking(Asker { app: app(), bus: own.bus.clone() });
        awake.keep(true);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("Tested: Exercises"));
        awake.keep(true);
        awake.keep(false);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("let go of 7"), "asked for once only");
        awake.keep(true);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("Tested: Exercises"));
        drop(awake);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("let go of 7"));
    }

    #[test]
    fn the_portal_is_asked_where_nobody_else_is() {
        let own = Own::start();
        let (to, told) = channel();
        let served = own.bus.builder().and_then(|b| b.serve_at(PORTAL.1, Portal(to.clone())));
        let served = served.and_then(|b| b.serve_at("/asked/1", Request(to))).and_then(|b| b.name(PORTAL.0));
        let _served = served.and_then(zbus::blocking::connection::Builder::build).expect("served");
        let awake = Awake::asking(Asker { app: app(), bus: own.bus.clone() });
        awake.keep(true);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("8 Exercises"));
        awake.keep(false);
        assert_eq!(told.recv_timeout(PATIENCE).as_deref(), Ok("let go"));
    }

    #[test]
    fn without_a_bus_or_a_desktop_there_is_a_reason() {
        let nowhere = Asker { app: app(), bus: Bus::At("unix:path=/nonexistent/bus".into()) };
        assert_eq!(nowhere.ask().err(), Some(NoAwake::NoDesktop));
        let own = Own::start();
        let nobody = Asker { app: app(), bus: own.bus.clone() };
        assert_eq!(nobody.ask().err(), Some(NoAwake::Refused));
    }

    #[test]
    fn nobody_waits_for_a_bus_that_says_nothing() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("bus");
        let _silent = UnixListener::bind(&path).expect("bound");
        let began = Instant::now();
        let bus = Bus::At(format!("unix:path={}", path.display()));
        let awake = Awake::asking(Asker { app: app(), bus });
        awake.keep(true);
        assert_eq!(awake.state(), Have::NotYet);
        awake.keep(false);
        drop(awake);
        assert!(began.elapsed() < Duration::from_secs(1));
    }
}
