//! The thread that leads a session or a home test. It sleeps to absolute deadlines and passes on what is to
//! be shown, whether or not a window is to be seen.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread::JoinHandle;
use std::time::Duration;

use sendaluna_bedside::home_test::TestLead;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::lead::heard::Heard;
use sendaluna_bedside::view::home_test::{TestPress, TestTold};
use sendaluna_bedside::view::session::{Press, Told};
use sendaluna_bedside::{Bedside, Clock};

use crate::clock::DeviceClock;
use crate::hearing::Hears;

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
    /// What is to be heard since this was last asked.
    fn take_heard(&mut self) -> Vec<Heard>;
    /// Whether it goes on, and the screen must stay on.
    fn is_going(&self) -> bool;
    /// What a headset's key means now.
    fn main_press(&self) -> Option<Self::Press>;
}

/// What is asked of the thread.
pub enum Order<L: Leads = Lead> {
    /// Something was pressed.
    Press(L::Press),
    /// A headset's key was pressed.
    Key,
    /// Nobody looks on any more.
    End,
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
    /// Begins to lead. `ears` makes whoever hears it; what it is given is called when a headset's key is
    /// pressed.
    pub fn start<H: Hears + 'static>(
        lead: L,
        clock: Arc<DeviceClock>,
        to: Sink<L::Told>,
        ears: impl FnOnce(Box<dyn Fn() + Send + Sync>) -> H,
    ) -> Self {
        let (orders, received) = channel();
        let over = Arc::new(AtomicBool::new(false));
        let (tell, key) = (Arc::clone(&over), orders.clone());
        let ears = ears(Box::new(move || drop(key.send(Order::Key))));
        let run = Run { lead, clock, to, ears, over: tell };
        let thread = std::thread::spawn(move || run.until_end(&received));
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
        // A thread that has ended needs no telling.
        let _ = self.orders.send(Order::End);
        self.thread.join().ok()
    }
}

struct Run<L: Leads, H: Hears> {
    lead: L,
    clock: Arc<DeviceClock>,
    to: Sink<L::Told>,
    ears: H,
    over: Arc<AtomicBool>,
}

impl<L: Leads, H: Hears + 'static> Run<L, H> {
    fn until_end(mut self, orders: &Receiver<Order<L>>) -> Bedside {
        let told = self.lead.start(&self.clock);
        self.send(told, None);
        while !self.lead.has_ended() {
            match wait(orders, &self.lead, &self.clock) {
                Ok(Order::Press(press)) => self.press(&press),
                Ok(Order::Key) => {
                    if let Some(press) = self.lead.main_press() {
                        self.press(&press);
                    }
                }
                Ok(Order::Attach(sink)) => {
                    self.to = sink;
                    let told = vec![self.lead.look(&self.clock)];
                    self.send(told, None);
                }
                Ok(Order::End) | Err(RecvTimeoutError::Disconnected) => {
                    self.lead.abandon(&self.clock);
                    break;
                }
                Err(RecvTimeoutError::Timeout) => {
                    let due = self.lead.wake_at();
                    let told = self.lead.wake(&self.clock);
                    self.send(told, due);
                }
            }
        }
        let Self { lead, ears, .. } = self;
        // The last words are said beside whatever comes next.
        std::thread::spawn(move || drop(ears));
        lead.into_home()
    }

    fn press(&mut self, press: &L::Press) {
        let told = self.lead.press(press, &self.clock);
        self.send(told, None);
    }

    /// First what is heard: the ear is quicker than the eye.
    fn send(&mut self, told: Vec<L::Told>, due: Option<u64>) {
        let heard = self.lead.take_heard();
        self.ears.hear(heard);
        self.ears.goes(self.lead.is_going());
        // Before the last word goes out, so that whatever it brings about finds the record free.
        self.over.store(told.iter().any(L::is_last), Ordering::Release);
        for told in told {
            (self.to)(told, due);
        }
    }
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
    fn take_heard(&mut self) -> Vec<Heard> {
        self.take_heard()
    }
    fn is_going(&self) -> bool {
        self.is_going()
    }
    fn main_press(&self) -> Option<Press> {
        self.main_press()
    }
}

impl Leads for TestLead {
    type Press = TestPress;
    type Told = TestTold;

    fn start(&mut self, _: &DeviceClock) -> Vec<TestTold> {
        self.start()
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
    fn take_heard(&mut self) -> Vec<Heard> {
        self.take_heard()
    }
    fn is_going(&self) -> bool {
        self.is_going()
    }
    fn main_press(&self) -> Option<TestPress> {
        self.main_press()
    }
}
