//! Wakes at a moment of the wall clock, and whenever that clock is set.

#[cfg(not(any(target_os = "linux", target_os = "android")))]
pub use elsewhere::Waker;
#[cfg(any(target_os = "linux", target_os = "android"))]
pub use linux::Waker;

/// A timer of the system's on the wall clock: it counts on while the device sleeps, and tells when the
/// clock is set. Between deadlines nothing wakes.
#[cfg(any(target_os = "linux", target_os = "android"))]
mod linux {
    use std::io;
    use std::os::fd::OwnedFd;
    use std::sync::Arc;

    use chrono::{DateTime, Utc};
    use rustix::io::Errno;
    use rustix::time::{
        Itimerspec, TimerfdClockId, TimerfdFlags, TimerfdTimerFlags, Timespec, timerfd_create,
        timerfd_settime,
    };

    /// As good as never, in s; with a deadline, however far, the timer still tells that the clock was set.
    const NEVER_S: i64 = 1 << 40;

    /// Wakes at a moment.
    pub struct Waker(Arc<OwnedFd>);

    impl Waker {
        /// Calls from a thread of its own at every deadline, and when the clock was set.
        pub fn new(call: impl Fn() -> bool + Send + 'static) -> io::Result<Self> {
            let timer = Arc::new(timerfd_create(TimerfdClockId::Realtime, TimerfdFlags::CLOEXEC)?);
            let waits = Arc::clone(&timer);
            let waker = Self(timer);
            waker.set(None)?;
            std::thread::Builder::new().name("waker".into()).stack_size(64 * 1024).spawn(move || {
                let mut fired = [0u8; 8];
                loop {
                    match rustix::io::read(&*waits, &mut fired) {
                        Err(Errno::INTR) => {}
                        // The clock was set: the deadline is set anew by whoever is called.
                        Ok(_) | Err(Errno::CANCELED) if call() => {}
                        _ => return,
                    }
                }
            })?;
            Ok(waker)
        }

        /// The next deadline.
        pub fn set(&self, at: Option<DateTime<Utc>>) -> io::Result<()> {
            let at = at.map_or(Timespec { tv_sec: NEVER_S, tv_nsec: 0 }, |at| Timespec {
                // A deadline of nought would put the timer out.
                tv_sec: at.timestamp().max(1),
                tv_nsec: at.timestamp_subsec_nanos().into(),
            });
            let once = Itimerspec { it_interval: Timespec { tv_sec: 0, tv_nsec: 0 }, it_value: at };
            let flags = TimerfdTimerFlags::ABSTIME | TimerfdTimerFlags::CANCEL_ON_SET;
            match timerfd_settime(&*self.0, flags, &once) {
                // The clock was set since: the thread tells.
                Ok(_) | Err(Errno::CANCELED) => Ok(()),
                Err(error) => Err(error.into()),
            }
        }
    }
}

/// A wait that looks at the wall clock now and then, where no timer tells that it was set.
#[cfg(not(any(target_os = "linux", target_os = "android")))]
mod elsewhere {
    use std::io;
    use std::sync::mpsc::{RecvTimeoutError, Sender, channel};
    use std::time::Duration;

    use chrono::{DateTime, Utc};

    /// How soon a clock that was set is noticed.
    const LOOK: Duration = Duration::from_secs(60);

    /// Wakes at a moment.
    pub struct Waker(Sender<Option<DateTime<Utc>>>);

    impl Waker {
        /// Calls from a thread of its own at every deadline, and when the clock was set.
        pub fn new(call: impl Fn() -> bool + Send + 'static) -> io::Result<Self> {
            let (set, deadlines) = channel::<Option<DateTime<Utc>>>();
            std::thread::Builder::new().name("waker".into()).spawn(move || {
                let mut deadline = None;
                loop {
                    let left =
                        deadline.map(|at: DateTime<Utc>| (at - Utc::now()).to_std().unwrap_or_default());
                    match deadlines.recv_timeout(left.map_or(LOOK, |left| left.min(LOOK))) {
                        Ok(at) => deadline = at,
                        Err(RecvTimeoutError::Disconnected) => return,
                        Err(RecvTimeoutError::Timeout) => {
                            if deadline.is_some_and(|at| at <= Utc::now()) {
                                deadline = None;
                                if !call() {
                                    return;
                                }
                            }
                        }
                    }
                }
            })?;
            Ok(Self(set))
        }

        /// The next deadline.
        pub fn set(&self, at: Option<DateTime<Utc>>) -> io::Result<()> {
            self.0.send(at).map_err(io::Error::other)
        }
    }
}
