use super::*;

/// A front with these days and times, quiet from ten in the evening to six.
pub(crate) fn front(days: &[(&str, &[&str])]) -> FrontDoc {
    let time = |text: &&str| FrontSlot { time: text.parse().expect("a time"), chosen: false };
    let day = |(day, times): &(&str, &[&str])| FrontDay {
        day: day.parse().expect("a date"),
        slots: times.iter().map(time).collect(),
    };
    let text = || "words".to_string();
    FrontDoc {
        version: VERSION,
        made_at: "2026-03-04T08:00:00Z".parse().expect("a moment"),
        on: true,
        sound: true,
        days: days.iter().map(day).collect(),
        quiet: Quiet { from: "22:00:00".parse().expect("a time"), to: "06:00:00".parse().expect("a time") },
        heard_on: "2026-03-04".parse().expect("a date"),
        answered_until: DateTime::UNIX_EPOCH,
        words: FrontWords {
            lang: "en".into(),
            title: text(),
            now: text(),
            late: text(),
            after_silence: text(),
            start: text(),
            in_30_minutes: text(),
            not_today: text(),
        },
        contacts: FrontContacts {
            clinic: text(),
            phone: text(),
            out_of_hours_phone: text(),
            emergency_phone: text(),
            emergency_advice: text(),
            signs: vec![FrontSign { sign: "calf".into(), tier: Tier::RingToday, text: text() }],
            cautions: vec![text()],
        },
    }
}

fn bytes(change: impl FnOnce(&mut serde_json::Value)) -> Vec<u8> {
    let doc = front(&[("2026-03-04", &["09:00:00", "14:00:00"]), ("2026-03-05", &["09:00:00"])]);
    let mut json = serde_json::to_value(doc).expect("plain data");
    change(&mut json);
    serde_json::to_vec(&json).expect("plain data")
}

#[test]
fn what_is_written_is_read() {
    let doc = front(&[("2026-03-04", &["09:00:00"])]);
    let written = Front::new(doc.clone()).expect("valid").to_bytes();
    assert_eq!(Front::read(&written).expect("read").doc(), &doc);
    assert!(Front::read(&bytes(|_| ())).is_ok());
}

#[test]
fn whatever_is_wrong_is_refused_whole() {
    use serde_json::json;
    type Change = fn(&mut serde_json::Value);
    let wrong: [(FrontFault, Change); 12] = [
        (FrontFault::Newer, |json| json["version"] = json!(2)),
        (FrontFault::Newer, |json| *json = json!({ "version": 7, "shape": "another" })),
        (FrontFault::OutOfBounds("version"), |json| json["version"] = json!(0)),
        (FrontFault::NotReadable, |json| json["on"] = json!("yes")),
        (FrontFault::NotReadable, |json| json["more"] = json!(1)),
        (FrontFault::NotReadable, |json| json["days"][0]["slots"][0]["time"] = json!("25:00")),
        (FrontFault::NotReadable, |json| *json = json!([])),
        (FrontFault::OutOfBounds("order of days"), |json| json["days"][1]["day"] = json!("2026-03-04")),
        (FrontFault::OutOfBounds("order of times"), |json| {
            json["days"][0]["slots"][1]["time"] = json!("09:00:00");
        }),
        (FrontFault::OutOfBounds("texts"), |json| json["words"]["now"] = json!("")),
        (FrontFault::OutOfBounds("texts"), |json| json["words"]["title"] = json!("\u{1b}[2J")),
        (FrontFault::OutOfBounds("texts"), |json| json["contacts"]["phone"] = json!("1".repeat(1_001))),
    ];
    for (fault, change) in wrong {
        assert_eq!(Front::read(&bytes(change)).expect_err("refused"), fault);
    }
    let whole = bytes(|_| ());
    for cut in 0..whole.len() {
        assert_eq!(Front::read(&whole[..cut]).expect_err("torn"), FrontFault::NotReadable, "cut at {cut}");
    }
    assert_eq!(Front::read(&vec![b' '; MOST_BYTES + 1]).expect_err("long"), FrontFault::TooLong);
}
