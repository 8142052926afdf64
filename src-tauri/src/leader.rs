//! The thread that leads a session. It sleeps to absolute deadlines and passes on what is to be
//! shown, whether or not a window is to be seen.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread::JoinHandle;
use std::time::Duration;

use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::view::session::{Press, Told};
use sendaluna_bedside::{Bedside, Clock};

use crate::clock::DeviceClock;

/// Where what is to be shown goes; with the moment it was due, in ms of the clock, if it had one.
pub type Sink = Box<dyn Fn(Told, Option<u64>) + Send>;

/// What is asked of the thread.
pub enum Order {
    /// Something was pressed.
    Press(Press),
    /// Somebody else looks on from now on.
    Attach(Sink),
}

/// A session under way.
pub struct Leader {
    orders: Sender<Order>,
    thread: JoinHandle<Bedside>,
    over: Arc<AtomicBool>,
}

impl Leader {
    /// Begins to lead.
    pub fn start(lead: Lead, clock: Arc<DeviceClock>, to: Sink) -> Self {
        let (orders, received) = channel();
        let over = Arc::new(AtomicBool::new(false));
        let tell = Arc::clone(&over);
        let thread = std::thread::spawn(move || run(lead, &clock, &received, to, &tell));
        Self { orders, thread, over }
    }

    /// Passes an order on; `false` if the session is over.
    pub fn order(&self, order: Order) -> bool {
        self.orders.send(order).is_ok()
    }

    /// The session is over, or its thread has failed.
    pub fn is_over(&self) -> bool {
        self.over.load(Ordering::Acquire) || self.thread.is_finished()
    }

    /// Lets it go, and takes the record back; `None` if the thread has failed.
    pub fn end(self) -> Option<Bedside> {
        drop(self.orders);
        self.thread.join().ok()
    }
}

fn run(
    mut lead: Lead,
    clock: &DeviceClock,
    orders: &Receiver<Order>,
    mut to: Sink,
    over: &AtomicBool,
) -> Bedside {
    let send = |to: &Sink, told: Vec<Told>, due: Option<u64>| {
        // Before the last word goes out, so that whatever it brings about finds the record free.
        over.store(told.iter().any(|told| matches!(told, Told::Ended { .. })), Ordering::Release);
        for told in told {
            to(told, due);
        }
    };
    send(&to, lead.start(clock), None);
    while !lead.has_ended() {
        match wait(orders, &lead, clock) {
            Ok(Order::Press(press)) => send(&to, lead.press(&press, clock), None),
            Ok(Order::Attach(sink)) => {
                to = sink;
                send(&to, vec![lead.look(clock)], None);
            }
            Err(RecvTimeoutError::Timeout) => {
                let due = lead.wake_at();
                send(&to, lead.wake(clock), due);
            }
            Err(RecvTimeoutError::Disconnected) => {
                lead.abandon(clock);
                break;
            }
        }
    }
    lead.into_home()
}

/// Waits for an order, until the next deadline if time goes on.
fn wait(orders: &Receiver<Order>, lead: &Lead, clock: &DeviceClock) -> Result<Order, RecvTimeoutError> {
    match lead.wake_at() {
        Some(at) => {
            let left_ms = at.saturating_sub(clock.now().mono_ms);
            orders.recv_timeout(Duration::from_millis(left_ms))
        }
        None => orders.recv().map_err(|_| RecvTimeoutError::Disconnected),
    }
}
