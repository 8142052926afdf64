//! The desktop's message bus.

use std::time::Duration;

use zbus::blocking::{Connection, connection};

/// How long a service on the bus may take to answer.
const ANSWER_WITHIN: Duration = Duration::from_secs(2);

/// Which bus.
#[derive(Debug, Clone)]
pub(crate) enum Bus {
    /// The session's.
    Session,
    /// The one at an address.
    #[cfg(test)]
    At(String),
}

impl Bus {
    /// Prepares a connection.
    pub(crate) fn builder(&self) -> zbus::Result<connection::Builder<'_>> {
        let builder = match self {
            Self::Session => connection::Builder::session()?,
            #[cfg(test)]
            Self::At(address) => connection::Builder::address(address.as_str())?,
        };
        Ok(builder.method_timeout(ANSWER_WITHIN))
    }

    /// Connects.
    pub(crate) fn connect(&self) -> zbus::Result<Connection> {
        self.builder()?.build()
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use std::io::{BufRead, BufReader};
    use std::process::{Child, Command, Stdio};

    use super::Bus;

    /// A bus of a test's own.
    pub(crate) struct Own {
        daemon: Child,
        pub(crate) bus: Bus,
    }

    impl Own {
        pub(crate) fn start() -> Self {
            let mut daemon = Command::new("dbus-daemon")
                .args(["--session", "--nofork", "--print-address=1"])
                .stdout(Stdio::piped())
                .stderr(Stdio::null())
                .spawn()
                .expect("dbus-daemon is installed");
            let mut address = String::new();
            let out = daemon.stdout.take().expect("piped");
            BufReader::new(out).read_line(&mut address).expect("an address");
            Self { daemon, bus: Bus::At(address.trim().to_string()) }
        }
    }

    impl Drop for Own {
        fn drop(&mut self) {
            let _ = self.daemon.kill();
            let _ = self.daemon.wait();
        }
    }
}
