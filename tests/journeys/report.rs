//! From the bedside to the clinic: what is handed back is opened, verified and worked out again, and
//! whatever was changed on the way is found and said.

use sendaluna_bedside::hand::{Break, WhichDay};
use sendaluna_bedside::hand_back::{HandBack, Wishes};
use sendaluna_bedside::types::{BreakWhy, By, SetBackKind, Words};
use sendaluna_clinic::ClinicError;
use sendaluna_clinic::report::{Ground, Opened, Remark, open_report};
use sendaluna_core::Coded;
use sendaluna_core::measure::{DayMark, FlagRule};
use sendaluna_exchange::report::{Report, seal};
use sendaluna_tests::device::{Device, answered, at, id, world};
use sendaluna_tests::world::World;

/// A device with a week of life in it: slides by hand on two days, a fall, a leg raise against its gate.
fn lived(world: &World) -> Device {
    let device = Device::with("Europe/Berlin", world, &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    for day in ["05", "06"] {
        let now = at(&format!("2026-03-{day}T10:00:00Z"));
        answered(&mut home, &now);
        home.did(&id("slide"), WhichDay::Today, 1, 10, By::Patient, &now).expect("written");
    }
    let now = at("2026-03-08T10:00:00Z");
    home.did(&id("raise"), WhichDay::Today, 1, 5, By::Patient, &now).expect("recording never refuses");
    home.set_back(SetBackKind::Fall, By::Patient, &at("2026-03-08T11:00:00Z")).expect("written");
    device
}

fn handed_back(device: &Device, moment: &str) -> HandBack {
    let wishes = Wishes { asks: Some("May I drive?".into()), ..Wishes::default() };
    device.open().hand_back(&wishes, &Words::new(["en"]), &at(moment)).expect("made")
}

fn opened(world: &World, sealed: &[u8], earlier: &[&[u8]]) -> Result<Opened, ClinicError> {
    let earlier = earlier.iter().map(|sealed| sealed.to_vec()).collect();
    open_report(sealed, &world.reports, &Ground { signers: Some(world.signers.clone()), earlier })
}

#[test]
fn the_clinic_works_out_every_figure_that_the_patient_saw() {
    let world = world();
    let made = handed_back(&lived(&world), "2026-03-09T10:00:00Z");
    let opened = opened(&world, &made.sealed, &[]).expect("opens");
    assert!(opened.is_vouched_for());
    assert_eq!(opened.remarks, [Remark::DeviceNew]);
    assert_eq!(opened.measures, made.measures);
    assert_eq!(opened.report.doc.asks.as_deref(), Some("May I drive?"));
    let marks: Vec<DayMark> = made.measures.days.iter().map(|day| day.mark).collect();
    assert_eq!(marks[2], DayMark::NoRecord, "nothing was written down on the third day");
    let rules: Vec<_> = made.measures.flags.iter().map(|flag| flag.rule.clone()).collect();
    assert!(rules.contains(&FlagRule::Fall) && rules.contains(&FlagRule::AgainstGate { item: id("raise") }));
    assert!(made.table.starts_with("date,time,what,") && made.table.contains("done-by-hand,raise"));
}

/// What the patient's program would seal again, with something changed by whoever holds the device.
fn forged(world: &World, sealed: &[u8], change: impl FnOnce(String) -> String) -> Vec<u8> {
    let plain = world.reports.unseal(sealed).expect("opens");
    let changed = change(String::from_utf8(plain).expect("text"));
    seal(changed.as_bytes(), &world.reports.recipient()).expect("sealed")
}

#[test]
fn one_changed_letter_is_found() {
    let world = world();
    let made = handed_back(&lived(&world), "2026-03-09T10:00:00Z");
    let forged = forged(&world, &made.sealed, |text| {
        let at = text.find("\"report\":\"").expect("a report") + 400;
        let other = if &text[at..=at] == "A" { "B" } else { "A" };
        format!("{}{other}{}", &text[..at], &text[at + 1..])
    });
    assert_eq!(opened(&world, &forged, &[]).expect_err("is found").code(), "report-altered");
}

/// The device itself signs other figures, or a record that does not follow.
#[test]
fn a_device_that_lies_is_found() {
    use sendaluna_exchange::device::DeviceKey;
    use sendaluna_exchange::report::write;
    let world = world();
    let made = handed_back(&lived(&world), "2026-03-09T10:00:00Z");
    let report = Report::read(&world.reports.unseal(&made.sealed).expect("opens")).expect("holds");
    let key = DeviceKey::from_seed(&zeroize::Zeroizing::new([9; 32]));
    let secret = world.plan.reply_secret.expect("filled");
    let signed = |change: &dyn Fn(&mut sendaluna_exchange::report::ReportDoc), secret| {
        let mut doc = report.doc.clone();
        doc.device = key.public();
        change(&mut doc);
        seal(&write(&doc, &key, secret), &world.reports.recipient()).expect("sealed")
    };
    let better = signed(&|doc| doc.measures = doc.measures.replace("\"whole\":0", "\"whole\":4"), secret);
    let remarks = opened(&world, &better, &[]).expect("opens").remarks;
    assert!(remarks.contains(&Remark::FiguresDiffer), "{remarks:?}");
    let stranger = signed(&|_| {}, sendaluna_core::digest::Digest::of(b"guessed"));
    let remarks = opened(&world, &stranger, &[]).expect("opens").remarks;
    assert!(remarks.contains(&Remark::NotAuthentic), "{remarks:?}");
    let event = signed(&|doc| doc.record[2].event = doc.record[2].event.replace("patient", "helper"), secret);
    assert_eq!(opened(&world, &event, &[]).expect_err("is found").code(), "report-chain-broken");
    let without_plan = signed(&|doc| doc.plans.clear(), secret);
    assert_eq!(opened(&world, &without_plan, &[]).expect_err("is found").code(), "report-plan-missing");
}

#[test]
fn an_older_report_another_persons_and_another_devices_are_told() {
    let world = world();
    let device = lived(&world);
    let first = handed_back(&device, "2026-03-09T10:00:00Z");
    let now = at("2026-03-10T10:00:00Z");
    device.open().did(&id("slide"), WhichDay::Today, 1, 10, By::Patient, &now).expect("written");
    let second = handed_back(&device, "2026-03-10T11:00:00Z");
    let remarks = |sealed: &[u8], earlier: &[&[u8]]| opened(&world, sealed, earlier).expect("opens").remarks;
    assert_eq!(remarks(&second.sealed, &[&first.sealed]), []);
    assert_eq!(remarks(&first.sealed, &[&second.sealed]), [Remark::Older]);
    let elsewhere = handed_back(&lived(&world), "2026-03-09T10:00:00Z");
    assert_eq!(remarks(&second.sealed, &[&elsewhere.sealed]), [Remark::DoesNotExtend]);
    let mut other = World::new();
    other.same_keys_as(&world);
    other.plan.head.person = sendaluna_core::ids::PersonId::new("p-2").expect("an id");
    other.statement.person = other.plan.head.person.clone();
    let others = handed_back(&lived(&other), "2026-03-09T10:00:00Z");
    assert_eq!(remarks(&others.sealed, &[&first.sealed]), [Remark::PersonOther]);
}

#[test]
fn another_clinics_key_opens_nothing_and_another_clinics_list_vouches_for_nothing() {
    let (ours, theirs) = (world(), world());
    let made = handed_back(&lived(&ours), "2026-03-09T10:00:00Z");
    assert_eq!(opened(&theirs, &made.sealed, &[]).expect_err("sealed to us").code(), "report-not-unsealed");
    let ground = Ground { signers: Some(theirs.signers.clone()), earlier: vec![] };
    let refused = open_report(&made.sealed, &ours.reports, &ground).expect_err("not theirs");
    assert_eq!(refused.code(), "report-clinic-other");
}

#[test]
fn a_break_of_ones_own_is_told_both_ways_and_its_words_can_stay_at_home() {
    let world = world();
    let device = lived(&world);
    let rest = |from: &str, through: &str| Break {
        from: from.parse().expect("a day"),
        through: through.parse().expect("a day"),
        why: BreakWhy::Own,
        words: Some("my sister's wedding".into()),
    };
    let now = at("2026-03-09T09:00:00Z");
    let wrong = device.open().declare_break(rest("2026-03-08", "2026-03-07"), By::Patient, &now);
    assert_eq!(wrong.expect_err("reversed").code(), "break-days");
    device.open().declare_break(rest("2026-03-07", "2026-03-08"), By::Patient, &now).expect("written");
    let wishes = Wishes { without_words: true, ..Wishes::default() };
    let made =
        device.open().hand_back(&wishes, &Words::new(["en"]), &at("2026-03-09T10:00:00Z")).expect("made");
    assert_eq!((made.measures.overall.days_due, made.measures.without_breaks.days_due), (5, 3));
    assert_eq!(made.measures.late_break_days, 2);
    assert!(!made.table.contains("wedding") && made.words == 0);
    let opened = opened(&world, &made.sealed, &[]).expect("opens");
    assert!(opened.is_vouched_for() && opened.remarks.contains(&Remark::WordsWithheld));
    assert_eq!(opened.report.withheld, 1);
}

#[test]
fn days_that_end_before_they_begin_are_no_days() {
    let world = world();
    let wishes = Wishes { from: "2026-04-01".parse().ok(), ..Wishes::default() };
    let made = lived(&world).open().hand_back(&wishes, &Words::new(["en"]), &at("2026-03-09T10:00:00Z"));
    assert_eq!(made.expect_err("no days").code(), "no-days");
}
