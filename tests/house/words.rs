//! Every language is whole: no message missing, extra, unused, or different in its variables.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use sendaluna_bedside::BedsideError;
use sendaluna_clinic::ClinicError;
use sendaluna_core::Coded;
use sendaluna_core::gate::Cause;
use sendaluna_core::library::Library;
use sendaluna_core::problem::Problems;
use sendaluna_exchange::refusal::Refusal;
use sendaluna_store::StoreError;
use sendaluna_tests::{files, root};
use sendaluna_words::{FILES, LANGUAGES, Words};

type Messages = BTreeMap<String, BTreeSet<String>>;

/// Ids of a language, with the variables each uses.
fn messages(lang: &str) -> Messages {
    let mut all = Messages::new();
    for (_, file, text) in FILES.iter().filter(|(of, ..)| *of == lang) {
        let resource = fluent_syntax::parser::parse(*text)
            .unwrap_or_else(|(_, errors)| panic!("{lang}/{file}.ftl: {errors:?}"));
        for entry in &resource.body {
            if let Entry::Message(message) = entry {
                let mut variables = BTreeSet::new();
                collect(message.value.as_ref().expect("a message says something"), &mut variables);
                let known = all.insert(message.id.name.to_string(), variables);
                assert!(known.is_none(), "{lang}: {} comes twice", message.id.name);
            }
        }
    }
    all
}

fn collect(pattern: &Pattern<&str>, variables: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            match expression {
                Expression::Inline(inline) => collect_inline(inline, variables),
                Expression::Select { selector, variants } => {
                    collect_inline(selector, variables);
                    for variant in variants {
                        collect(&variant.value, variables);
                    }
                }
            }
        }
    }
}

fn collect_inline(inline: &InlineExpression<&str>, variables: &mut BTreeSet<String>) {
    if let InlineExpression::VariableReference { id } = inline {
        variables.insert(id.name.to_string());
    }
}

#[test]
fn every_file_on_disk_ships() {
    for path in files("locales", ".ftl") {
        let file = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let lang =
            path.parent().and_then(|p| p.file_name()).expect("a folder").to_string_lossy().into_owned();
        assert!(FILES.iter().any(|(l, f, _)| *l == lang && *f == file), "{lang}/{file}.ftl does not ship");
    }
}

#[test]
fn every_language_has_the_same_messages_with_the_same_variables() {
    let english = messages("en");
    for lang in LANGUAGES {
        let other = messages(lang);
        for (id, variables) in &english {
            let theirs = other.get(id).unwrap_or_else(|| panic!("{lang}: {id} is missing"));
            assert_eq!(theirs, variables, "{lang}: variables of {id}");
        }
        let extra: Vec<_> = other.keys().filter(|id| !english.contains_key(*id)).collect();
        assert!(extra.is_empty(), "{lang}: {extra:?} are extra");
    }
}

/// Codes that carry a pair of messages.
fn codes() -> BTreeSet<String> {
    let mut all: Vec<&dyn Coded> = Vec::new();
    let (refusals, stores) = (Refusal::all(), StoreError::all());
    let (bedside, clinic) = (BedsideError::all(), ClinicError::all());
    all.extend(refusals.iter().map(|e| e as &dyn Coded));
    all.extend(stores.iter().map(|e| e as &dyn Coded));
    all.extend(bedside.iter().map(|e| e as &dyn Coded));
    all.extend(clinic.iter().map(|e| e as &dyn Coded));
    let reports = sendaluna_exchange::report::ReportFault::all();
    all.extend(reports.iter().map(|e| e as &dyn Coded));
    all.extend(sendaluna_authority::KeyError::ALL.iter().map(|e| e as &dyn Coded));
    all.into_iter().map(|e| e.code().to_string()).collect()
}

/// Ids that are made from codes, movements, joints and motions.
fn made_ids() -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    for code in codes().into_iter().chain([
        "file-not-read".into(),
        "file-not-written".into(),
        "not-answered".into(),
        "not-yours".into(),
    ]) {
        ids.insert(format!("err-{code}"));
        ids.insert(format!("do-{code}"));
        // What it is in the terminal, where that differs.
        ids.extend(Some(format!("hint-{code}")).filter(|hint| Words::new(["en"]).has(hint)));
    }
    ids.extend(Problems::CODES.iter().map(|code| format!("problem-{code}")));
    for movement in Library::shipped().iter() {
        ids.extend(
            ["name", "set-up", "how", "feel", "faults"]
                .map(|what| format!("movement-{}-{what}", movement.id)),
        );
    }
    ids.extend(["active", "isometric", "assisted", "passive"].map(|name| format!("drive-{name}")));
    ids.extend(["low", "knee", "high"].map(|name| format!("seat-{name}")));
    ids.extend(sendaluna_core::measure::FlagRule::CODES.iter().map(|code| format!("flag-{code}")));
    ids.extend(sendaluna_clinic::report::Remark::CODES.iter().map(|code| format!("report-{code}")));
    ids.extend(
        ["not-due", "whole", "part", "stopped-as-told", "no-record"].map(|mark| format!("mark-{mark}")),
    );
    ids.extend(sendaluna_core::home_test::Norm::CODES.iter().map(|code| format!("norm-{code}")));
    ids.extend(
        ["side-by-side", "semi-tandem", "tandem", "one-leg"].map(|name| format!("report-stance-{name}")),
    );
    ids.extend(Cause::CODES.iter().map(|code| format!("reason-{code}")));
    for name in ["hip", "knee", "ankle", "shoulder", "elbow", "trunk"] {
        ids.insert(format!("joint-{name}"));
    }
    for name in [
        "flexion",
        "extension",
        "abduction",
        "adduction",
        "internal-rotation",
        "external-rotation",
        "dorsiflexion",
        "plantarflexion",
        "side-bending",
        "twisting",
    ] {
        ids.insert(format!("motion-{name}"));
    }
    ids
}

#[test]
fn every_code_has_its_pair() {
    let english = messages("en");
    for id in made_ids() {
        assert!(english.contains_key(&id), "{id} is missing");
    }
    for id in english.keys() {
        if let Some(code) = id.strip_prefix("err-").filter(|code| *code != "no-place") {
            assert!(english.contains_key(&format!("do-{code}")), "err-{code} says nothing to do");
        }
    }
}

/// The sources of the window.
fn window() -> Vec<std::path::PathBuf> {
    files("ui", ".svelte").into_iter().chain(files("ui", ".ts")).collect()
}

#[test]
fn no_message_is_unused() {
    let read = |path| std::fs::read_to_string(path).expect("there");
    let sources: String = files("src-tauri", ".rs").into_iter().chain(window()).map(read).collect();
    let made = made_ids();
    let is_used = |id: &String| {
        made.contains(id) || ["\"", "'"].iter().any(|mark| sources.contains(&format!("{mark}{id}{mark}")))
    };
    let unused: Vec<_> = messages("en").into_keys().filter(|id| !is_used(id)).collect();
    assert!(unused.is_empty(), "{unused:?}");
}

#[test]
fn a_message_that_code_asks_for_exists() {
    let english = messages("en");
    let mut asked = BTreeSet::new();
    // The device has no messages: texts come in, and what it says to its services is no text for people.
    let speaks = |path: &std::path::PathBuf| !path.components().any(|part| part.as_os_str() == "device");
    for path in files("src-tauri", ".rs").into_iter().filter(speaks) {
        let text = std::fs::read_to_string(path).expect("there");
        let calls = text.split(".say(").skip(1).chain(text.split("say(desk, ").skip(1));
        for after in calls.chain(text.split("self.ask(").skip(1)) {
            if let Some(id) = after.trim_start().strip_prefix('"').and_then(|rest| rest.split('"').next()) {
                asked.insert(id.to_string());
            }
        }
    }
    for path in window() {
        let text = std::fs::read_to_string(path).expect("there");
        for after in text.split("say(").skip(1) {
            let id = after.trim_start().strip_prefix('\'').and_then(|rest| rest.split('\'').next());
            asked.extend(id.map(str::to_string));
        }
    }
    assert!(asked.len() > 150, "the search finds calls");
    let missing: Vec<_> = asked.into_iter().filter(|id| !english.contains_key(id)).collect();
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn errors_say_what_to_do_in_every_language() {
    for lang in LANGUAGES {
        let words = Words::new([*lang]);
        for code in codes() {
            let to_do = words.say(&format!("do-{code}"), &[]);
            assert!(to_do.len() > 10 && !to_do.contains('!'), "{lang} do-{code}: {to_do}");
        }
    }
}

#[test]
fn nothing_exclaims_and_nothing_is_called_locked() {
    for path in files("locales", ".ftl") {
        let text = std::fs::read_to_string(&path).expect("there").to_lowercase();
        for word in ["!", "¡", "locked", "streak", "padlock", "congratulations"] {
            assert!(!text.contains(word), "{} says {word}", path.display());
        }
    }
    assert!(root().join("locales/en").is_dir());
}

/// Web views of today draw a word at another height if a vowel sign of its last letter comes first from the left.
/// Without the sign, as print leaves it out too, every word stands on the line. The sign before a last alef falls
/// into the letter before it.
#[test]
fn no_arabic_word_ends_with_a_vowel_sign() {
    let is_sign = |c: char| matches!(c, '\u{64b}'..='\u{652}' | '\u{670}');
    let is_letter = |c: char| ('\u{620}'..='\u{6ff}').contains(&c) && !matches!(c, '؛' | '؟');
    for (_, file, text) in FILES.iter().filter(|(lang, ..)| *lang == "ar") {
        assert!(!text.contains('\u{64b}'), "ar/{file}.ftl");
        for word in text.split(|c| !is_letter(c)) {
            // Lam and alef are one letter to the eye.
            let seen =
                word.strip_suffix('ا').filter(|before| before.trim_end_matches(is_sign).ends_with('ل'));
            assert!(!seen.unwrap_or(word).ends_with(is_sign), "ar/{file}.ftl: {word}");
        }
    }
}
