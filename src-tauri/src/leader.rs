//! The thread that leads a session or a home test. It sleeps to absolute deadlines and passes on what is to
//! be shown, whether or not a window is to be seen.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread::JoinHandle;
use std::time::Duration;

use sendaluna_bedside::home_test::TestLead;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::view::home_test::{TestPress, TestTold};
use sendaluna_bedside::view::session::{Press, Told};
use sendaluna_bedside::{Bedside, Clock};

use crate::clock::DeviceClock;

/// Where what is to be shown goes; with the moment it was due, in ms of the clock, if it had one.
pub type Sink<T = Told> = Box<dyn Fn(T, Option<u64>) + Send>;

/// What the thread can lead.
pub trait Leads: Send + 'static {
    /// What can be pressed.
    type Press: Send;
    /// What is told.
    type Told: Send;
    /// Begins.
    fn start(&mut self, clock: &DeviceClock) -> Vec<Self::Told>;
    /// When it must be woken next, in ms of the clock.
    fn wake_at(&self) -> Option<u64>;
    /// It is time.
    fn wake(&mut self, clock: &DeviceClock) -> Vec<Self::Told>;
    /// Something was pressed.
    fn press(&mut self, press: &Self::Press, clock: &DeviceClock) -> Vec<Self::Told>;
    /// What it shows now.
    fn look(&self, clock: &DeviceClock) -> Self::Told;
    /// Nobody looks on any more.
    fn abandon(&mut self, clock: &DeviceClock);
    /// Whether this is the last word.
    fn is_last(told: &Self::Told) -> bool;
    /// It is over.
    fn has_ended(&self) -> bool;
    /// Gives the record back.
    fn into_home(self) -> Bedside;
}

/// What is asked of the thread.
pub enum Order<L: Leads = Lead> {
    /// Something was pressed.
    Press(L::Press),
    /// Somebody else looks on from now on.
    Attach(Sink<L::Told>),
}

/// A session or a home test under way.
pub struct Leader<L: Leads = Lead> {
    orders: Sender<Order<L>>,
    thread: JoinHandle<Bedside>,
    over: Arc<AtomicBool>,
}

impl<L: Leads> Leader<L> {
    /// Begins to lead.
    pub fn start(lead: L, clock: Arc<DeviceClock>, to: Sink<L::Told>) -> Self {
        let (orders, received) = channel();
        let over = Arc::new(AtomicBool::new(false));
        let tell = Arc::clone(&over);
        let thread = std::thread::spawn(move || run(lead, &clock, &received, to, &tell));
        Self { orders, thread, over }
    }

    /// Passes an order on; `false` if it is over.
    pub fn order(&self, order: Order<L>) -> bool {
        self.orders.send(order).is_ok()
    }

    /// It is over, or its thread has failed.
    pub fn is_over(&self) -> bool {
        self.over.load(Ordering::Acquire) || self.thread.is_finished()
    }

    /// Lets it go, and takes the record back; `None` if the thread has failed.
    pub fn end(self) -> Option<Bedside> {
        drop(self.orders);
        self.thread.join().ok()
    }
}

fn run<L: Leads>(
    mut lead: L,
    clock: &DeviceClock,
    orders: &Receiver<Order<L>>,
    mut to: Sink<L::Told>,
    over: &AtomicBool,
) -> Bedside {
    let send = |to: &Sink<L::Told>, told: Vec<L::Told>, due: Option<u64>| {
        // Before the last word goes out, so that whatever it brings about finds the record free.
        over.store(told.iter().any(L::is_last), Ordering::Release);
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
fn wait<L: Leads>(
    orders: &Receiver<Order<L>>,
    lead: &L,
    clock: &DeviceClock,
) -> Result<Order<L>, RecvTimeoutError> {
    match lead.wake_at() {
        Some(at) => {
            let left_ms = at.saturating_sub(clock.now().mono_ms);
            orders.recv_timeout(Duration::from_millis(left_ms))
        }
        None => orders.recv().map_err(|_| RecvTimeoutError::Disconnected),
    }
}

impl Leads for Lead {
    type Press = Press;
    type Told = Told;

    fn start(&mut self, clock: &DeviceClock) -> Vec<Told> {
        self.start(clock)
    }
    fn wake_at(&self) -> Option<u64> {
        self.wake_at()
    }
    fn wake(&mut self, clock: &DeviceClock) -> Vec<Told> {
        self.wake(clock)
    }
    fn press(&mut self, press: &Press, clock: &DeviceClock) -> Vec<Told> {
        self.press(press, clock)
    }
    fn look(&self, clock: &DeviceClock) -> Told {
        self.look(clock)
    }
    fn abandon(&mut self, clock: &DeviceClock) {
        self.abandon(clock);
    }
    fn is_last(told: &Told) -> bool {
        matches!(told, Told::Ended { .. })
    }
    fn has_ended(&self) -> bool {
        self.has_ended()
    }
    fn into_home(self) -> Bedside {
        self.into_home()
    }
}

impl Leads for TestLead {
    type Press = TestPress;
    type Told = TestTold;

    fn start(&mut self, _: &DeviceClock) -> Vec<TestTold> {
        vec![TestLead::look(self)]
    }
    fn wake_at(&self) -> Option<u64> {
        self.wake_at()
    }
    fn wake(&mut self, clock: &DeviceClock) -> Vec<TestTold> {
        self.wake(clock)
    }
    fn press(&mut self, press: &TestPress, clock: &DeviceClock) -> Vec<TestTold> {
        self.press(*press, clock)
    }
    fn look(&self, _: &DeviceClock) -> TestTold {
        TestLead::look(self)
    }
    fn abandon(&mut self, _: &DeviceClock) {}
    fn is_last(told: &TestTold) -> bool {
        matches!(told, TestTold::Ended { .. })
    }
    fn has_ended(&self) -> bool {
        self.has_ended()
    }
    fn into_home(self) -> Bedside {
        self.into_home()
    }
}
