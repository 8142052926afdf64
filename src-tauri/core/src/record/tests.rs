use super::*;
use crate::ids::{ItemId, SessionId};
use crate::plan::doc::Tier;
use crate::sample::date;
use crate::session::{PainAnswer, SetId, SidesAtOnce};
use proptest::prelude::*;

fn stamp(at: &str) -> Stamp {
    Stamp { at: at.parse().expect("a moment"), offset_s: 3600, boot: "b".into(), mono_ms: 5 }
}

fn chain(bodies: Vec<Body>) -> Vec<Event> {
    let mut prev = genesis();
    let mut events = Vec::new();
    for (seq, body) in (1u64..).zip(bodies) {
        let event = Event { seq, prev, stamp: stamp("2026-03-05T10:00:00Z"), by: By::Patient, body };
        prev = Digest::of(&event.to_bytes());
        events.push(event);
    }
    events
}

fn session() -> SessionId {
    SessionId::new("s1").expect("an id")
}

fn item() -> ItemId {
    ItemId::new("slide").expect("an id")
}

fn set(set: u8) -> SetId {
    SetId { item: item(), set, sides: SidesAtOnce::Left }
}

fn set_done(n: u8, done: u16) -> Body {
    let record = SetRecord { set: set(n), done, of: 10, easier: false };
    Body::SetDone { session: session(), record, how: How::Counted }
}

fn a_session() -> Vec<Body> {
    vec![
        Body::SignsAnswered { signs: vec![], gravest: None },
        Body::SessionStarted { session: session(), items: vec![item()] },
        set_done(1, 10),
        set_done(2, 10),
        Body::SetCorrected { session: session(), set: set(2), done: 7 },
        Body::SetCorrected { session: session(), set: set(2), done: 9 },
        Body::SessionEnded {
            session: session(),
            ending: Ending::Part,
            confirmed: true,
            effort: Some(4),
            words: Some("warm".into()),
        },
    ]
}

/// The canonical form of an event, frozen: a change here breaks every record there is.
#[test]
fn canonical_bytes_are_frozen() {
    let events = chain(a_session());
    let text = String::from_utf8(events[2].to_bytes()).expect("JSON");
    let prev = events[2].prev;
    assert_eq!(
        text,
        format!(
            "{{\"seq\":3,\"prev\":\"{prev}\",\"stamp\":{{\"at\":\"2026-03-05T10:00:00Z\",\"offset_s\":3600,\
             \"boot\":\"b\",\"mono_ms\":5}},\"by\":\"patient\",\"body\":{{\"kind\":\"set-done\",\"session\":\"s1\",\
             \"record\":{{\"set\":{{\"item\":\"slide\",\"set\":1,\"sides\":\"left\"}},\"done\":10,\"of\":10}},\
             \"how\":\"counted\"}}}}"
        )
    );
}

#[test]
fn canonical_bytes_of_steps_are_frozen() {
    let list = Digest::of(b"a list");
    let stepped = Body::DoseStepped { item: item(), from: 2, to: 3, list, why: StepWhy::Chose };
    let kept = Body::StepKept { item: item(), at: 3 };
    let of = |body: &Body| serde_json::to_string(body).expect("JSON");
    assert_eq!(
        of(&stepped),
        format!(
            "{{\"kind\":\"dose-stepped\",\"item\":\"slide\",\"from\":2,\"to\":3,\"list\":\"{list}\",\"why\":\"chose\"}}"
        )
    );
    assert_eq!(of(&kept), "{\"kind\":\"step-kept\",\"item\":\"slide\",\"at\":3}");
    let why = [StepWhy::Pain, StepWhy::NextMorning, StepWhy::Break, StepWhy::NewPlan];
    let why = why.map(|why| serde_json::to_string(&why).expect("JSON"));
    assert_eq!(why, ["\"pain\"", "\"next-morning\"", "\"break\"", "\"new-plan\""]);
}

#[test]
fn the_latest_step_counts_and_the_first_since_a_session_says_what_was_done() {
    let step = |from, to| Body::DoseStepped {
        item: item(),
        from,
        to,
        list: Digest::of(b"a list"),
        why: StepWhy::Chose,
    };
    let mut bodies = a_session();
    bodies.extend([step(1, 2), step(2, 3), Body::StepKept { item: item(), at: 3 }]);
    let history = State::of(&chain(bodies)).history;
    let stepped = history.steps[&item()];
    assert_eq!((stepped.from, stepped.to, stepped.sessions), (1, 3, 1));
    assert_eq!((stepped.on, history.kept[&item()]), (date("2026-03-05"), 1));
}

#[test]
fn answers_are_counted_by_day_and_what_was_told_unasked_is_none() {
    let pain = |moment| Body::PainAnswered {
        session: None,
        pain: Pain {
            moment,
            level: Some(1),
            distress: None,
            kind: None,
            place: None,
            item: None,
            answer: PainAnswer::GoOn,
        },
    };
    let mut bodies = a_session();
    bodies.extend([pain(Moment::Before), pain(Moment::NextMorning), pain(Moment::During)]);
    // Signs, effort, words, pain before and of the morning.
    assert_eq!(State::of(&chain(bodies)).answers[&date("2026-03-05")], 5);
}

#[test]
fn a_chain_reads_back_and_any_change_shows_where() {
    let events = chain(a_session());
    let mut stored: Vec<Vec<u8>> = events.iter().map(Event::to_bytes).collect();
    let (read, head) = read_chain(&stored).expect("whole");
    assert_eq!(read, events);
    assert_eq!(head, Digest::of(stored.last().expect("not empty")));
    // "done":10 becomes "done":11 in the third event: the fourth no longer follows from it.
    let changed = String::from_utf8(stored[2].clone()).expect("JSON").replace("\"done\":10", "\"done\":11");
    let kept = std::mem::replace(&mut stored[2], changed.into_bytes());
    assert_eq!(read_chain(&stored), Err(Broken { seq: 4 }));
    stored[2] = kept;
    stored.remove(1);
    assert_eq!(read_chain(&stored), Err(Broken { seq: 2 }));
    let spaced = [b" ".to_vec(), events[0].to_bytes()].concat();
    assert_eq!(read_chain([spaced]), Err(Broken { seq: 1 }));
}

#[test]
fn a_session_adds_up_and_corrections_only_go_down() {
    let events = chain(a_session());
    let state = State::of(&events);
    let session = &state.sessions[0];
    assert_eq!(session.set(&set(1)).map(|record| record.done), Some(10));
    assert_eq!(session.set(&set(2)).map(|record| record.done), Some(7), "9 is more than 7");
    assert_eq!(session.ending, Some(Ending::Part));
    // Two sets of one session are one time done.
    assert_eq!(state.history.times(&item(), date("2026-03-05")), 1);
    assert_eq!(state.items[&item()][&date("2026-03-05")].counted, 1);
    assert!(state.open_session(date("2026-03-05")).is_none());
    let open = State::of(&events[..4]);
    assert!(open.open_session(date("2026-03-05")).is_some());
    assert!(open.open_session(date("2026-03-06")).is_none(), "the same day only");
}

#[test]
fn remembered_is_kept_apart_from_counted() {
    let by_hand =
        Body::DoneByHand { item: item(), day: date("2026-03-04"), sets: 2, each: 8, against_gate: true };
    let state = State::of(&chain(vec![by_hand]));
    let day = state.items[&item()][&date("2026-03-04")];
    assert_eq!((day.counted, day.remembered, day.against_gate), (0, 1, true));
}

#[test]
fn a_stop_that_says_to_ring_holds_until_the_clinic_was_spoken_to() {
    let signs = |gravest| Body::SignsAnswered { signs: vec![], gravest };
    assert!(State::of(&chain(vec![signs(Some(Tier::Note))])).must_ring.is_none());
    let mut bodies = vec![signs(Some(Tier::RingToday))];
    assert!(State::of(&chain(bodies.clone())).must_ring.is_some());
    bodies.push(Body::SpokeToClinic { about: Some("2026-03-05T10:00:00Z".parse().expect("a moment")) });
    assert!(State::of(&chain(bodies)).must_ring.is_none());
    let pain = Pain {
        moment: Moment::During,
        level: Some(9),
        distress: None,
        kind: None,
        place: None,
        item: None,
        answer: PainAnswer::StopToday,
    };
    assert!(State::of(&chain(vec![Body::PainAnswered { session: None, pain }])).must_ring.is_some());
}

#[test]
fn a_set_back_holds_until_it_is_released() {
    let fall = Body::SetBack { what: SetBackKind::Fall, day: date("2026-03-05") };
    let state = State::of(&chain(vec![fall]));
    assert_eq!(state.set_back_since(None), Some(date("2026-03-05")));
    let released = |at: &str| state.set_back_since(Some(at.parse().expect("a moment")));
    assert_eq!(released("2026-03-05T09:59:59Z"), Some(date("2026-03-05")));
    assert_eq!(released("2026-03-05T10:00:00Z"), None);
}

proptest! {
    /// The same events give the same state, one by one or all at once.
    #[test]
    fn the_same_events_give_the_same_state(picks in proptest::collection::vec(0usize..7, 0..20), cut in 0usize..20) {
        let all = a_session();
        let events = chain(picks.iter().map(|i| all[*i].clone()).collect());
        let mut stepwise = State::of(&events[..cut.min(events.len())]);
        events[cut.min(events.len())..].iter().for_each(|event| stepwise.apply(event));
        prop_assert_eq!(stepwise, State::of(&events));
    }
}
