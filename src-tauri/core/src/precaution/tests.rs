use super::*;
use crate::sample::{date, precaution, statement, through};
use proptest::prelude::*;

fn lift(id: &str, from: Option<&str>) -> Lift {
    Lift { precaution: PrecautionId::new(id).expect("an id"), from: from.map(date) }
}

fn lifting(lifts: Vec<Lift>, may_lift: bool) -> Accepted {
    let mut accepted = statement(vec![]);
    accepted.doc.lifts = lifts;
    accepted.may_lift = may_lift;
    accepted.may_set = false;
    accepted.signer = crate::sample::who("A therapist");
    accepted.digest = Digest::of(b"lifting");
    accepted
}

fn opens(standing: &Standing) -> Vec<Option<NaiveDate>> {
    standing.in_force.iter().map(|p| p.opens).collect()
}

#[test]
fn through_week_12_opens_on_day_84() {
    let zero = date("2026-03-02");
    let last = crate::calendar::last_day_of_week(zero, 12);
    assert_eq!(last, date("2026-05-24"));
    let standing = Standing::of(&[statement(vec![precaution(
        "a",
        Rule::Resistance {},
        End::Through { day: last, week: Some(12) },
    )])]);
    assert_eq!(opens(&standing), [Some(date("2026-05-25"))]);
}

#[test]
fn absence_never_lifts_and_a_lift_needs_its_right() {
    let set = statement(vec![precaution("a", Rule::Resistance {}, through("2026-05-24"))]);
    let without = Standing::of(&[set.clone(), lifting(vec![lift("a", None)], false)]);
    assert_eq!(opens(&without), [Some(date("2026-05-25"))]);
    assert_eq!(without.ignored_lifts.len(), 1);
    assert_eq!(without.ignored_lifts[0].set_by.as_ref().map(|who| who.name.as_str()), Some("A surgeon"));
    let with = Standing::of(&[set, lifting(vec![lift("a", Some("2026-04-01"))], true)]);
    assert_eq!(opens(&with), [Some(date("2026-04-01"))]);
    assert!(with.ignored_lifts.is_empty());
}

#[test]
fn until_lifted_stays_shut_until_it_is_and_never_before_its_day() {
    let not_before = |day: &str| End::UntilLifted { not_before: Some(date(day)), week: None };
    let set = statement(vec![precaution("a", Rule::Resistance {}, not_before("2026-04-27"))]);
    assert_eq!(opens(&Standing::of(std::slice::from_ref(&set))), [None]);
    let early = lifting(vec![lift("a", Some("2026-04-01"))], true);
    assert_eq!(opens(&Standing::of(&[set.clone(), early])), [Some(date("2026-04-27"))]);
    let late = lifting(vec![lift("a", Some("2026-05-09"))], true);
    assert_eq!(opens(&Standing::of(&[set, late])), [Some(date("2026-05-09"))]);
}

#[test]
fn day_zero_unknown_stays_shut() {
    let set = statement(vec![precaution("a", Rule::Resistance {}, End::DayZeroUnknown { week: 6 })]);
    assert_eq!(opens(&Standing::of(&[set])), [None]);
}

#[test]
fn one_id_with_two_contents_stands_twice() {
    let first = statement(vec![precaution("a", Rule::Resistance {}, through("2026-05-24"))]);
    let mut second = statement(vec![precaution("a", Rule::Resistance {}, through("2026-03-24"))]);
    second.doc.issued_at += chrono::Duration::days(1);
    assert_eq!(Standing::of(&[first.clone(), second]).in_force.len(), 2);
    assert_eq!(Standing::of(&[first.clone(), first]).in_force.len(), 1);
}

#[test]
fn a_statement_says_what_it_lacks() {
    let mut doc =
        statement(vec![precaution("a", Rule::Together { ranges: vec![] }, through("2026-05-24"))]).doc;
    let found: Vec<_> = problems(&doc).into_iter().map(|p| (p.code, p.place)).collect();
    assert_eq!(
        found,
        [
            ("unknown-id", "precautions[0].episode".to_string()),
            ("no-conditions", "precautions[0].rule.ranges".to_string()),
        ]
    );
    for week in [0, 261] {
        let mut weeks = doc.clone();
        weeks.precautions[0].ends = End::Through { day: date("2026-03-02"), week: Some(week) };
        assert!(problems(&weeks).iter().any(|p| p.place == "precautions[0].ends.week"), "{week}");
    }
    doc.none = true;
    assert!(problems(&doc).iter().any(|p| p.code == "none-and-some"));
    doc.precautions.clear();
    assert_eq!(problems(&doc), []);
    doc.none = false;
    assert_eq!(problems(&doc)[0].code, "missing");
}

proptest! {
    /// Statements in any order, and lifts among them, add up to the same.
    #[test]
    fn order_does_not_matter(
        days in proptest::collection::vec((0u64..60, proptest::option::of(0u64..60), any::<bool>()), 1..6),
        seed in any::<u64>(),
    ) {
        let start = date("2026-03-02");
        let mut statements: Vec<Accepted> = Vec::new();
        for (i, (last, lifted, may)) in days.iter().enumerate() {
            let id = format!("p{}", i % 4);
            let ends = End::Through { day: start + Days::new(*last), week: None };
            let mut set = statement(vec![precaution(&id, Rule::Resistance {}, ends)]);
            set.digest = Digest::of(&[0, u8::try_from(i).expect("few")]);
            statements.push(set);
            if let Some(from) = lifted {
                let mut lifts = lifting(vec![lift(&id, None)], *may);
                lifts.doc.lifts[0].from = Some(start + Days::new(*from));
                lifts.digest = Digest::of(&[1, u8::try_from(i).expect("few")]);
                statements.push(lifts);
            }
        }
        let mut shuffled = statements.clone();
        let n = u64::try_from(shuffled.len()).expect("few");
        for i in 0..shuffled.len() {
            let mix = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(u64::try_from(i).expect("few") * 7);
            shuffled.swap(i, usize::try_from((mix >> 33) % n).expect("few"));
        }
        prop_assert_eq!(Standing::of(&statements), Standing::of(&shuffled));
    }
}
