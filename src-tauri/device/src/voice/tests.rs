//! A voice whose speech and output belong to the test.

use std::cell::RefCell;
use std::sync::mpsc::{Receiver, Sender};

use super::*;
use crate::queue::Ticket;
use crate::sound::{HearsLoss, Output};
use crate::speech::{Happened, Hears, Speech};
use crate::tone::Tone;

const PATIENCE: Duration = Duration::from_secs(10);
const SENTENCE: Duration = Duration::from_secs(8);

/// What the voice did.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Did {
    Opened,
    Manner(String),
    Said(Ticket, String),
    Hushed,
    OutputOpened,
    Sounded(Tone),
    Quiet,
}

/// What the test holds of the two ports.
struct Backstage {
    did: Receiver<Did>,
    /// Done, and not asked for yet: speech and tones come in any order.
    passed_over: RefCell<Vec<Did>>,
    hears: Receiver<Hears>,
    lost: Receiver<HearsLoss>,
}

struct FakeEngine {
    did: Sender<Did>,
    hears: Sender<Hears>,
    fails: Option<NoSpeech>,
}

impl Engine for FakeEngine {
    fn open(&self, hears: Hears) -> Result<Box<dyn Speech>, NoSpeech> {
        let _ = self.did.send(Did::Opened);
        if let Some(reason) = self.fails {
            return Err(reason);
        }
        let _ = self.hears.send(Arc::clone(&hears));
        Ok(Box::new(FakeSpeech(self.did.clone(), hears)))
    }
}

struct FakeSpeech(Sender<Did>, Hears);

/// As the service does: whoever lets go of a talk hears of its end.
impl Drop for FakeSpeech {
    fn drop(&mut self) {
        (self.1)(Happened::Lost(NoSpeech::Lost));
    }
}

impl Speech for FakeSpeech {
    fn manner(&mut self, manner: &Manner) -> Result<(), NoSpeech> {
        let _ = self.0.send(Did::Manner(manner.lang.clone()));
        if manner.lang == "xx" { Err(NoSpeech::NoVoice) } else { Ok(()) }
    }
    fn say(&mut self, ticket: Ticket, text: &str) -> Result<(), NoSpeech> {
        let _ = self.0.send(Did::Said(ticket, text.to_string()));
        if text == "fail" { Err(NoSpeech::Unanswered) } else { Ok(()) }
    }
    fn hush(&mut self) -> Result<(), NoSpeech> {
        let _ = self.0.send(Did::Hushed);
        Ok(())
    }
}

struct FakeOutputs {
    did: Sender<Did>,
    lost: Sender<HearsLoss>,
    fails: Option<NoSound>,
}

impl Outputs for FakeOutputs {
    fn open(&self, lost: HearsLoss) -> Result<Box<dyn Output>, NoSound> {
        let _ = self.did.send(Did::OutputOpened);
        let _ = self.lost.send(lost);
        self.fails.map_or_else(|| Ok(Box::new(FakeOutput(self.did.clone())) as Box<dyn Output>), Err)
    }
}

struct FakeOutput(Sender<Did>);

impl Output for FakeOutput {
    fn sound(&mut self, tone: Tone) {
        let _ = self.0.send(Did::Sounded(tone));
    }
    fn hush(&mut self) {
        let _ = self.0.send(Did::Quiet);
    }
}

fn open(wish: &Wish, speech: Option<NoSpeech>, tones: Option<NoSound>) -> (Voice, Backstage) {
    let ((did_to, did), (hears_to, hears), (lost_to, lost)) = (channel(), channel(), channel());
    let ports = Ports {
        speech: Box::new(FakeEngine { did: did_to.clone(), hears: hears_to, fails: speech }),
        tones: Box::new(FakeOutputs { did: did_to, lost: lost_to, fails: tones }),
    };
    (Voice::open(wish, ports), Backstage { did, passed_over: RefCell::default(), hears, lost })
}

impl Backstage {
    /// Waits until this was done.
    fn until(&self, wanted: impl Fn(&Did) -> bool) -> Did {
        let mut passed_over = self.passed_over.borrow_mut();
        if let Some(at) = passed_over.iter().position(&wanted) {
            return passed_over.remove(at);
        }
        let until = Instant::now() + PATIENCE;
        loop {
            let left = until.saturating_duration_since(Instant::now());
            let did = self.did.recv_timeout(left).expect("it was done");
            if wanted(&did) {
                return did;
            }
            passed_over.push(did);
        }
    }

    /// What was done and not asked for, as far as it has happened.
    fn rest(&self) -> Vec<Did> {
        self.passed_over.borrow().iter().cloned().chain(self.did.try_iter()).collect()
    }

    /// The same, after the voice is gone.
    fn last(&self) -> Vec<Did> {
        self.passed_over.borrow().iter().cloned().chain(self.did.iter()).collect()
    }

    fn said(&self, text: &str) -> Ticket {
        match self.until(|did| matches!(did, Did::Said(_, said) if said == text)) {
            Did::Said(ticket, _) => ticket,
            other => panic!("{other:?}"),
        }
    }
}

fn text(text: &str, matters: Duration) -> Heard {
    let (due, text) = (Instant::now(), Some(text.to_string()));
    Heard { text, tone: None, due, how_long_it_matters: matters, urgent: false }
}

#[test]
fn it_speaks_one_after_the_other_and_sounds_meanwhile() {
    let (voice, backstage) = open(&Wish::new("en"), None, None);
    voice.say(text("first", SENTENCE));
    voice.say(Heard { tone: Some(Tone::Out), ..text("second", SENTENCE) });
    let first = backstage.said("first");
    backstage.until(|did| *did == Did::Sounded(Tone::Out));
    let hears = backstage.hears.recv_timeout(PATIENCE).expect("opened");
    hears(Happened::Began(first));
    hears(Happened::Over(first));
    let second = backstage.said("second");
    assert!(!voice.quiet(Duration::from_millis(20)), "it is speaking");
    hears(Happened::Over(second));
    assert!(voice.quiet(PATIENCE));
}

#[test]
fn a_cut_silences_both() {
    let (voice, backstage) = open(&Wish::new("en"), None, None);
    voice.settled(PATIENCE);
    voice.say(Heard { tone: Some(Tone::Hold), ..text("long", SENTENCE) });
    voice.say(text("more", SENTENCE));
    backstage.said("long");
    voice.cut();
    backstage.until(|did| *did == Did::Hushed);
    backstage.until(|did| *did == Did::Quiet);
    assert!(voice.quiet(PATIENCE), "and what waited is forgotten");
    drop(voice);
    assert!(!backstage.last().iter().any(|did| matches!(did, Did::Said(..))));
}

#[test]
fn dropped_while_it_speaks_it_is_silent() {
    let (voice, backstage) = open(&Wish::new("en"), None, None);
    voice.say(text("long", SENTENCE));
    backstage.said("long");
    drop(voice);
    let rest = backstage.last();
    assert!(rest.contains(&Did::Hushed) && rest.contains(&Did::Quiet), "{rest:?}");
}

#[test]
fn the_state_says_why() {
    let ready = State { speech: Have::Yes, tones: Have::Yes };
    assert_eq!(open(&Wish::new("en"), None, None).0.settled(PATIENCE), ready);

    let none = open(&Wish::new("en"), Some(NoSpeech::NoService), Some(NoSound::NoDevice)).0;
    let state = none.settled(PATIENCE);
    assert_eq!(state.speech, Have::No(NoSpeech::NoService));
    assert_eq!(state.tones, Have::No(NoSound::NoDevice));

    let (unspoken, _backstage) = open(&Wish::new("xx"), None, None);
    assert_eq!(unspoken.settled(PATIENCE).speech, Have::No(NoSpeech::NoVoice));
    // That the talk has ended, because nobody speaks the language, is no reason of its own.
    unspoken.say(text("unheard", SENTENCE));
    assert!(unspoken.quiet(PATIENCE));
    assert_eq!(unspoken.state().speech, Have::No(NoSpeech::NoVoice));

    let silent = Wish { speech: false, tones: false, ..Wish::new("en") };
    let (voice, backstage) = open(&silent, None, None);
    let off = State { speech: Have::No(NoSpeech::Off), tones: Have::No(NoSound::Off) };
    assert_eq!(voice.settled(PATIENCE), off);
    voice.say(Heard { tone: Some(Tone::Out), ..text("unheard", SENTENCE) });
    assert!(voice.quiet(PATIENCE));
    assert!(backstage.rest().is_empty(), "nothing was even opened");
    voice.wish(Wish::new("es"));
    assert_eq!(voice.settled(PATIENCE), ready);
    backstage.until(|did| *did == Did::Manner("es".into()));
}

#[test]
fn what_cannot_be_said_does_not_hold_up_the_rest() {
    let (voice, backstage) = open(&Wish::new("en"), Some(NoSpeech::NoService), None);
    voice.settled(PATIENCE);
    for n in 0..20 {
        voice.say(Heard { tone: Some(Tone::Tick), ..text(&n.to_string(), SENTENCE) });
    }
    assert!(voice.quiet(PATIENCE));
    let did = backstage.rest();
    assert_eq!(did.iter().filter(|did| **did == Did::Sounded(Tone::Tick)).count(), 20);
    assert_eq!(did.iter().filter(|did| **did == Did::Opened).count(), 1, "it is not asked at every cue");
}

#[test]
fn a_service_that_is_back_speaks_again() {
    let (voice, backstage) = open(&Wish::new("en"), None, None);
    let hears = backstage.hears.recv_timeout(PATIENCE).expect("opened");
    voice.say(text("one", SENTENCE));
    backstage.said("one");
    hears(Happened::Lost(NoSpeech::Lost));
    // Its end never came; the next is said all the same, over a new talk.
    voice.say(text("two", SENTENCE));
    backstage.until(|did| *did == Did::Opened);
    backstage.said("two");
    // What an old talk still tells is nobody's.
    hears(Happened::Lost(NoSpeech::Lost));
    voice.say(text("fail", SENTENCE));
    let hears = backstage.hears.recv_timeout(PATIENCE).expect("opened again");
    hears(Happened::Over(Ticket(2)));
    backstage.said("fail");
    assert!(voice.quiet(PATIENCE));
    assert_eq!(voice.state().speech, Have::No(NoSpeech::Unanswered));
}

#[test]
fn an_output_that_goes_is_opened_again_at_the_next_tone_and_not_at_every_one() {
    let (voice, backstage) = open(&Wish::new("en"), None, None);
    voice.settled(PATIENCE);
    let lost = backstage.lost.recv_timeout(PATIENCE).expect("opened");
    lost(NoSound::Lost);
    let tick = || Heard { text: None, tone: Some(Tone::Tick), ..text("", SENTENCE) };
    // The first try was so short a while ago that the next has to wait.
    (0..5).for_each(|_| voice.say(tick()));
    assert!(voice.quiet(PATIENCE));
    assert_eq!(voice.state().tones, Have::No(NoSound::Lost));
    let opened = backstage.rest().iter().filter(|did| **did == Did::OutputOpened).count();
    assert_eq!(opened, 1);
}

#[test]
fn patience_has_its_measure() {
    let start = Instant::now();
    let mut patience = Patience::new(Duration::from_secs(3));
    assert!(patience.may_try(start));
    assert!(!patience.may_try(start + Duration::from_millis(2999)));
    assert!(patience.may_try(start + Duration::from_secs(3)));
    patience.forget();
    assert!(patience.may_try(start + Duration::from_secs(4)));
}

#[test]
fn handing_over_takes_no_time() {
    struct Stuck(Receiver<()>);
    impl Engine for Stuck {
        fn open(&self, _: Hears) -> Result<Box<dyn Speech>, NoSpeech> {
            let _ = self.0.recv();
            Err(NoSpeech::Lost)
        }
    }
    let (release, stuck) = channel();
    let ((did, _backstage), (lost, _lost)) = (channel(), channel());
    let ports =
        Ports { speech: Box::new(Stuck(stuck)), tones: Box::new(FakeOutputs { did, lost, fails: None }) };
    let voice = Voice::open(&Wish::new("en"), ports);
    let began = Instant::now();
    for n in 0..1000 {
        voice.say(text(&n.to_string(), Duration::from_millis(800)));
    }
    voice.cut();
    assert!(began.elapsed() < Duration::from_millis(500), "a thousand took {:?}", began.elapsed());
    assert_eq!(voice.state().speech, Have::NotYet);
    drop(voice);
    drop(release);
}
