//! The documentation says what the code says: the generated parts of DEVELOPERS.md are current, and
//! its tables of codes are whole.

use sendaluna_authority::KeyError;
use sendaluna_bedside::BedsideError;
use sendaluna_clinic::ClinicError;
use sendaluna_clinic::schema::{Source, bounds_table, table};
use sendaluna_core::Coded;
use sendaluna_exchange::refusal::Refusal;
use sendaluna_store::StoreError;
use sendaluna_tests::root;

fn developers() -> String {
    std::fs::read_to_string(root().join("DEVELOPERS.md")).expect("there")
}

#[test]
fn generated_parts_are_current() {
    let text = developers();
    let parts = [
        ("schema plan", table(Source::Plan)),
        ("schema signers", table(Source::Signers)),
        ("schema precautions", table(Source::Precautions)),
        ("bounds", bounds_table()),
    ];
    let mut current = text.clone();
    for (name, content) in parts {
        let begin = format!("<!-- generated: {name} -->\n");
        let at = current.find(&begin).unwrap_or_else(|| panic!("{name} has its place")) + begin.len();
        let end = at + current[at..].find("<!-- end -->").expect("an end");
        current.replace_range(at..end, &format!("\n{content}\n"));
    }
    if std::env::var_os("SENDALUNA_WRITE_DOCS").is_some() {
        std::fs::write(root().join("DEVELOPERS.md"), &current).expect("written");
    } else {
        assert_eq!(text, current, "stale: run the tests once with SENDALUNA_WRITE_DOCS=1");
    }
}

#[test]
fn every_code_is_in_a_table() {
    let text = developers();
    let (refusals, stores, bedside) = (Refusal::all(), StoreError::all(), BedsideError::all());
    let (clinic, reports) = (ClinicError::all(), sendaluna_exchange::report::ReportFault::all());
    let refusals = refusals.iter().map(Coded::code).chain(stores.iter().map(Coded::code));
    let others = bedside.iter().map(Coded::code).chain(clinic.iter().map(Coded::code));
    let others = others.chain(reports.iter().map(Coded::code));
    for code in refusals.chain(others).chain(KeyError::ALL.iter().map(Coded::code)) {
        assert!(text.contains(&format!("| `{code}` |")), "{code}");
    }
}

#[test]
fn the_readme_carries_the_cautions() {
    let text = std::fs::read_to_string(root().join("README.md")).expect("there");
    for caution in [
        "not a medical device",
        "Nobody at the clinic sees this now",
        "emergency number",
        "demo/run",
        "tests/run",
    ] {
        assert!(text.contains(caution), "{caution}");
    }
}
