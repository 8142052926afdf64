//! The policy as tables, and what holds of it whatever comes.

use proptest::prelude::*;

use super::*;

/// How long the sentences and the counts of these tests matter, in ms.
const SENTENCE_MS: u64 = 8_000;
const COUNT_MS: u64 = 800;

#[derive(Debug, Clone)]
enum Step {
    Say { text: &'static str, matters_ms: u64, urgent: bool },
    Began,
    Over,
    Cut,
    Time,
}
use Step::{Began, Cut, Over, Say, Time};

const fn sentence(text: &'static str) -> Step {
    Say { text, matters_ms: SENTENCE_MS, urgent: false }
}
const fn count(text: &'static str) -> Step {
    Say { text, matters_ms: COUNT_MS, urgent: false }
}
const fn urgent(text: &'static str) -> Step {
    Say { text, matters_ms: SENTENCE_MS, urgent: true }
}

/// Runs steps at their moments, in ms; gives what was begun (its text) and hushed (`-`).
fn run(steps: &[(u64, Step)]) -> Vec<(u64, String)> {
    let start = Instant::now();
    let mut queue = Queue::default();
    let mut said = Vec::new();
    let mut last = Ticket(0);
    for (ms, step) in steps {
        let now = start + Duration::from_millis(*ms);
        let acts = match step {
            Say { text, matters_ms, urgent } => queue.offer(heard(text, now, *matters_ms, *urgent), now),
            Began => {
                queue.began(last, now);
                Vec::new()
            }
            Over => queue.over(last, now),
            Cut => queue.cut(),
            Time => queue.at(now),
        };
        for act in acts {
            match act {
                Act::Begin { ticket, text, .. } => {
                    last = ticket;
                    said.push((*ms, text));
                }
                Act::Hush => said.push((*ms, "-".to_string())),
                Act::Sound { tone, .. } => said.push((*ms, tone.name().to_string())),
            }
        }
    }
    said
}

fn heard(text: &str, due: Instant, matters_ms: u64, urgent: bool) -> Heard {
    Heard {
        text: Some(text.to_string()),
        tone: None,
        due,
        how_long_it_matters: Duration::from_millis(matters_ms),
        urgent,
    }
}

#[test]
fn what_is_due_is_never_dropped_for_what_is_not() {
    let start = Instant::now();
    let mut queue = Queue::default();
    for n in 1..=MOST_COMING as u64 + 5 {
        queue.offer(heard("ahead", start + Duration::from_secs(n), COUNT_MS, false), start);
    }
    let acts = queue.offer(heard("stop", start, SENTENCE_MS, true), start);
    assert!(matches!(&acts[..], [Act::Begin { text, .. }] if text == "stop"), "{acts:?}");
    assert_eq!(queue.coming.len(), MOST_COMING);
}

#[test]
fn the_policy_case_by_case() {
    type Case = (&'static str, Vec<(u64, Step)>, Vec<(u64, &'static str)>);
    let cases: Vec<Case> = vec![
        ("a count is said at once", vec![(0, count("3"))], vec![(0, "3")]),
        (
            "a count waits for the one before it",
            vec![(0, count("3")), (5, Began), (300, count("2")), (500, Over)],
            vec![(0, "3"), (500, "2")],
        ),
        (
            "a new count takes the place of one that waits",
            vec![(0, sentence("long")), (5, Began), (100, count("3")), (700, count("2")), (900, Over)],
            vec![(0, "long"), (900, "2")],
        ),
        (
            "a count that comes too late is dropped",
            vec![(0, sentence("long")), (5, Began), (100, count("3")), (901, Over)],
            vec![(0, "long")],
        ),
        (
            "to the last moment it is said",
            vec![(0, sentence("long")), (5, Began), (100, count("3")), (900, Over)],
            vec![(0, "long"), (900, "3")],
        ),
        (
            "sentences wait in turn, and a count does not take their place",
            vec![
                (0, sentence("a")),
                (5, Began),
                (10, sentence("b")),
                (20, count("3")),
                (30, Over),
                (35, Over),
            ],
            vec![(0, "a"), (30, "b"), (35, "3")],
        ),
        (
            "of too many sentences the oldest goes",
            vec![
                (0, sentence("a")),
                (1, sentence("b")),
                (2, sentence("c")),
                (3, sentence("d")),
                (4, sentence("e")),
                (5, sentence("f")),
                (6, Over),
            ],
            vec![(0, "a"), (6, "c")],
        ),
        (
            "what is urgent cuts off a sentence and clears what waits",
            vec![(0, sentence("long")), (5, Began), (10, sentence("more")), (20, urgent("stop")), (30, Over)],
            vec![(0, "long"), (20, "-"), (20, "stop")],
        ),
        (
            "what is urgent waits for what is urgent",
            vec![(0, urgent("stop")), (5, Began), (10, urgent("ring them")), (20, Over)],
            vec![(0, "stop"), (20, "ring them")],
        ),
        (
            "a cut silences and forgets",
            vec![
                (0, sentence("long")),
                (5, Began),
                (10, sentence("more")),
                (20, Cut),
                (30, Over),
                (40, count("1")),
            ],
            vec![(0, "long"), (20, "-"), (40, "1")],
        ),
        ("a cut of nothing does nothing", vec![(0, Cut)], vec![]),
        (
            "what never begins is given up, and the next is said",
            vec![(0, count("3")), (1000, count("2")), (1199, Time), (1200, Time)],
            vec![(0, "3"), (1200, "-"), (1200, "2")],
        ),
        (
            "what never ends is given up beyond all measure",
            vec![(0, count("3")), (10, Began), (4259, Time), (4260, Time)],
            vec![(0, "3"), (4260, "-")],
        ),
    ];
    for (name, steps, expected) in cases {
        let expected: Vec<_> = expected.into_iter().map(|(ms, text)| (ms, text.to_string())).collect();
        assert_eq!(run(&steps), expected, "{name}");
    }
}

#[test]
fn nothing_is_heard_before_it_is_due() {
    let start = Instant::now();
    let due = start + Duration::from_secs(1);
    let mut queue = Queue::default();
    let cue = Heard { tone: Some(Tone::Out), ..heard("one", due, COUNT_MS, false) };
    assert_eq!(queue.offer(cue, start), []);
    assert_eq!(queue.wake_at(), Some(due));
    let until = due + Duration::from_millis(COUNT_MS);
    assert_eq!(queue.at(due), [Act::Sound { tone: Tone::Out, until }]);
    // The word follows its tone.
    let sounded = due + Tone::Out.length();
    assert_eq!(queue.wake_at(), Some(sounded));
    assert!(matches!(&queue.at(sounded)[..], [Act::Begin { text, .. }] if text == "one"));
}

#[test]
fn words_wait_for_their_own_tone_only_as_long_as_they_may() {
    let start = Instant::now();
    let said = |acts: &[Act]| acts.iter().any(|act| matches!(act, Act::Begin { .. }));
    let with_tone =
        |matters_ms, urgent| Heard { tone: Some(Tone::Done), ..heard("done", start, matters_ms, urgent) };
    assert!(said(&Queue::default().offer(with_tone(SENTENCE_MS, true), start)), "urgent");
    let mut queue = Queue::default();
    assert!(!said(&queue.offer(with_tone(100, false), start)));
    assert!(said(&queue.at(start + Duration::from_millis(100))), "at its last moment");
}

#[test]
fn a_tone_waits_for_no_sentence_but_not_too_late_either() {
    let start = Instant::now();
    let mut queue = Queue::default();
    queue.offer(heard("long", start, SENTENCE_MS, false), start);
    let tone = |due| Heard { text: None, tone: Some(Tone::Tick), ..heard("", due, 100, false) };
    let late = start + Duration::from_millis(101);
    assert!(matches!(queue.offer(tone(start), start)[..], [Act::Sound { tone: Tone::Tick, .. }]));
    assert_eq!(queue.offer(tone(start), late), []);
}

#[test]
fn what_is_heard_of_an_utterance_long_gone_changes_nothing() {
    let now = Instant::now();
    let mut queue = Queue::default();
    queue.offer(heard("a", now, SENTENCE_MS, false), now);
    queue.offer(heard("b", now, SENTENCE_MS, false), now);
    assert_eq!(queue.over(Ticket(99), now), []);
    queue.began(Ticket(99), now);
    assert!(!queue.is_idle());
}

/// One of anything that can happen.
#[derive(Debug, Clone)]
enum Event {
    Offer { ahead_ms: u64, matters_ms: u64, urgent: bool, tone: bool },
    Began,
    Over,
    Cut,
    Wake,
    Pass(u64),
}

fn event() -> impl Strategy<Value = Event> {
    let matters_ms = prop_oneof![Just(0), 1u64..=2000, 2001u64..20_000];
    let ahead_ms = prop_oneof![4 => Just(0), 1 => 0u64..3000];
    let offer = (ahead_ms, matters_ms, prop::bool::weighted(0.15), any::<bool>());
    prop_oneof![
        4 => offer.prop_map(|(ahead_ms, matters_ms, urgent, tone)| Event::Offer {
            ahead_ms, matters_ms, urgent, tone
        }),
        2 => Just(Event::Began),
        2 => Just(Event::Over),
        1 => Just(Event::Cut),
        3 => Just(Event::Wake),
        3 => (0u64..1500).prop_map(Event::Pass),
    ]
}

/// What must hold, kept beside the queue.
#[derive(Default)]
struct Witness {
    offered: Vec<(Instant, Instant, bool, bool)>,
    saying: Option<(usize, Ticket)>,
    begun: Vec<usize>,
}

impl Witness {
    fn see(&mut self, acts: Vec<Act>, now: Instant, may_hush: bool) {
        for act in acts {
            match act {
                Act::Hush => {
                    assert!(self.saying.take().is_some(), "hushed nothing");
                    assert!(may_hush, "cut off without a reason");
                }
                Act::Sound { until, .. } => assert!(now <= until, "a tone too late"),
                Act::Begin { ticket, text, until } => {
                    let i: usize = text.parse().expect("a number");
                    let (due, matters_until, is_count, _) = self.offered[i];
                    assert!(self.saying.is_none(), "two at once");
                    assert!(due <= now && now <= until && until == matters_until, "outside its span");
                    assert!(!self.begun.contains(&i), "said twice");
                    let counts = self.begun.iter().filter(|j| self.offered[**j].2);
                    let newer = counts.filter(|j| self.offered[**j].0 > due).count();
                    assert!(!is_count || newer == 0, "an older count after a newer one");
                    self.begun.push(i);
                    self.saying = Some((i, ticket));
                }
            }
        }
    }
}

proptest! {
    #[test]
    fn whatever_comes(events in prop::collection::vec(event(), 1..120)) {
        let mut now = Instant::now();
        let mut queue = Queue::default();
        let mut witness = Witness::default();
        let mut deadline = None;
        for event in events {
            let given_up = |now: Instant, deadline: Option<Instant>| deadline.is_some_and(|at| at <= now);
            let may_hush;
            let acts = match event {
                Event::Offer { ahead_ms, matters_ms, urgent, tone } => {
                    let due = now + Duration::from_millis(ahead_ms);
                    let span = Duration::from_millis(matters_ms);
                    let text = witness.offered.len().to_string();
                    witness.offered.push((due, due + span, span <= COUNT_AT_MOST, urgent));
                    let tone = tone.then_some(Tone::Tick);
                    may_hush = true;
                    queue.offer(Heard { tone, ..heard(&text, due, matters_ms, urgent) }, now)
                }
                Event::Began => {
                    may_hush = false;
                    queue.began(witness.saying.map_or(Ticket(0), |(_, ticket)| ticket), now);
                    Vec::new()
                }
                Event::Over => {
                    may_hush = true;
                    let ticket = witness.saying.take().map_or(Ticket(0), |(_, ticket)| ticket);
                    queue.over(ticket, now)
                }
                Event::Cut => {
                    may_hush = true;
                    queue.cut()
                }
                Event::Wake => {
                    now = queue.wake_at().map_or(now, |at| at.max(now));
                    may_hush = given_up(now, deadline) || witness.offered.iter().any(|o| o.3);
                    queue.at(now)
                }
                Event::Pass(ms) => {
                    now += Duration::from_millis(ms);
                    may_hush = given_up(now, deadline) || witness.offered.iter().any(|o| o.3);
                    queue.at(now)
                }
            };
            witness.see(acts, now, may_hush);
            deadline = queue.saying.as_ref().map(|saying| saying.over_by);
            // Telling the time always brings it on: whoever sleeps until then never spins.
            prop_assert!(queue.wake_at().is_none_or(|at| at > now || event_is_began(deadline, now)));
            prop_assert!(queue.waiting.len() <= MOST_WAITING && queue.coming.len() <= MOST_COMING);
            let waits_for_tone = queue.waiting.front().is_none_or(|line| line.from > now);
            prop_assert!(queue.saying.is_some() || waits_for_tone, "it waits for nothing");
            let counts = queue.waiting.iter().filter(|line| line.is_count && !line.urgent).count();
            prop_assert!(counts <= 1, "counts pile up");
        }
    }
}

/// A beginning that is told late is told after its deadline; the next look at the time gives it up.
fn event_is_began(deadline: Option<Instant>, now: Instant) -> bool {
    deadline.is_some_and(|at| at <= now)
}
