use super::*;
use sendaluna_core::record::{By, Stamp};
use zeroize::Zeroizing;

fn device(seed: u8) -> DeviceKey {
    DeviceKey::from_seed(&Zeroizing::new([seed; 32]))
}

fn event(seq: u64, prev: Digest, words: Option<&str>) -> Event {
    let at = "2026-03-02T10:00:00Z".parse().expect("a moment");
    let stamp = Stamp { at, offset_s: 0, boot: "b".into(), mono_ms: seq };
    let session = sendaluna_core::ids::SessionId::new("s-1").expect("an id");
    let ending = sendaluna_core::record::Ending::Part;
    let words = words.map(ToString::to_string);
    let body = Body::SessionEnded { session, ending, confirmed: true, effort: None, words };
    Event { seq, prev, stamp, by: By::Patient, body }
}

fn chain(words: &[Option<&str>]) -> Vec<Event> {
    let mut head = genesis();
    let mut events = Vec::new();
    for (seq, words) in (1u64..).zip(words) {
        events.push(event(seq, head, *words));
        head = Digest::of(&events[events.len() - 1].to_bytes());
    }
    events
}

fn doc(events: &[Event], with_words: bool) -> ReportDoc {
    let head = events.last().map_or_else(genesis, |event| Digest::of(&event.to_bytes()));
    let day = |day: &str| day.parse().expect("a day");
    ReportDoc {
        format: FORMAT,
        issued_at: "2026-03-09T10:00:00Z".parse().expect("a moment"),
        device: device(7).public(),
        clinic_key: Digest::of(b"clinic"),
        person: PersonId::new("p-1").expect("an id"),
        plan: Digest::of(b"plan"),
        from: day("2026-03-02"),
        through: day("2026-03-08"),
        awake_from_min: 480,
        awake_to_min: 1260,
        extends: None,
        record: events.iter().map(|event| Entry::new(event, with_words)).collect(),
        head,
        signers: String::new(),
        statements: vec![],
        plans: vec![],
        measures: "{}".into(),
        asks: None,
    }
}

fn secret() -> Digest {
    Digest::of(b"a reply secret")
}

#[test]
fn what_is_written_is_read_and_only_the_plans_secret_makes_it_authentic() {
    let written = write(&doc(&chain(&[None, Some("stiff today")]), true), &device(7), secret());
    let report = Report::read(&written).expect("holds");
    assert_eq!((report.events.len(), report.withheld), (2, 0));
    assert!(report.is_authentic(secret()));
    assert!(!report.is_authentic(Digest::of(b"another")));
}

#[test]
fn words_kept_back_leave_the_chain_whole() {
    let events = chain(&[Some("private"), None, Some("private too")]);
    let written = write(&doc(&events, false), &device(7), secret());
    assert!(!String::from_utf8_lossy(&written).contains("private"));
    let report = Report::read(&written).expect("holds");
    assert_eq!(report.withheld, 2);
    assert_eq!(report.doc.head, Digest::of(&events[2].to_bytes()));
}

#[test]
fn one_event_changed_or_left_out_breaks_the_chain_where_it_was() {
    let events = chain(&[None, None, None]);
    let mut changed = doc(&events, true);
    changed.record[1].event = changed.record[1].event.replace("\"part\"", "\"whole\"");
    let fault = |doc: &ReportDoc| Report::read(&write(doc, &device(7), secret())).expect_err("is found");
    assert_eq!(fault(&changed), ReportFault::ChainBroken(3));
    let mut shorter = doc(&events, true);
    shorter.record.remove(0);
    assert_eq!(fault(&shorter), ReportFault::ChainBroken(1));
    let mut cut = doc(&events, true);
    cut.record.pop();
    assert_eq!(fault(&cut), ReportFault::ChainBroken(2));
}

#[test]
fn every_changed_byte_is_found() {
    let written = write(&doc(&chain(&[None]), true), &device(7), secret());
    for at in 0..written.len() {
        let mut changed = written.clone();
        changed[at] ^= 1;
        let holds = Report::read(&changed).is_ok_and(|report| report.is_authentic(secret()));
        assert!(!holds, "byte {at}");
    }
}

#[test]
fn another_devices_signature_does_not_fit() {
    let written = write(&doc(&chain(&[None]), true), &device(8), secret());
    assert_eq!(Report::read(&written).expect_err("is found"), ReportFault::Altered);
    assert_eq!(Report::read(b"%PDF").expect_err("is found"), ReportFault::NotOurs);
    let newer = br#"{"sendaluna_report":2,"report":"","reply":""}"#;
    assert_eq!(Report::read(newer).expect_err("is found"), ReportFault::NewerFormat);
}

#[test]
fn a_later_report_extends_an_earlier_one_and_never_the_other_way_round() {
    let events = chain(&[None, Some("a"), None, None]);
    let read = |events: &[Event], words| {
        Report::read(&write(&doc(events, words), &device(7), secret())).expect("holds")
    };
    let (first, second) = (read(&events[..2], true), read(&events, false));
    assert!(second.extends(&first) && second.extends(&second));
    assert!(!first.extends(&second), "an older one sent again");
    let other = read(&chain(&[Some("x"), None, None]), true);
    assert!(!other.extends(&first));
}

#[test]
fn what_is_sealed_only_its_key_opens() {
    let identity = age::x25519::Identity::generate();
    let sealed = seal(b"words", &identity.to_public().to_string()).expect("a recipient");
    let opened = age::decrypt(&identity, &sealed).expect("opens");
    assert_eq!(opened, b"words");
    assert!(age::decrypt(&age::x25519::Identity::generate(), &sealed).is_err());
    assert_eq!(seal(b"words", "age1nonsense"), None);
}
