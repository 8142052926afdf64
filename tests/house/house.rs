//! The house: who may know whom, what `core` may never touch, and how long a file may be.

use std::collections::{BTreeMap, BTreeSet};

use sendaluna_tests::{files, root};

/// Who may know whom. A room that is not in this table fails the test.
const MAY_KNOW: &[(&str, &[&str])] = &[
    ("sendaluna-core", &[]),
    ("sendaluna-words", &[]),
    ("sendaluna-say", &["sendaluna-core", "sendaluna-words"]),
    ("sendaluna-figure", &["sendaluna-core"]),
    ("sendaluna-fhir", &["sendaluna-core", "sendaluna-say", "sendaluna-words"]),
    ("sendaluna-paper", &["sendaluna-core", "sendaluna-figure", "sendaluna-say", "sendaluna-words"]),
    ("sendaluna-zones", &["sendaluna-core"]),
    ("sendaluna-exchange", &["sendaluna-core"]),
    ("sendaluna-store", &["sendaluna-core"]),
    ("sendaluna-authority", &["sendaluna-core", "sendaluna-exchange"]),
    (
        "sendaluna-bedside",
        &[
            "sendaluna-core",
            "sendaluna-exchange",
            "sendaluna-fhir",
            "sendaluna-figure",
            "sendaluna-paper",
            "sendaluna-say",
            "sendaluna-store",
            "sendaluna-words",
            "sendaluna-zones",
        ],
    ),
    (
        "sendaluna-clinic",
        &[
            "sendaluna-core",
            "sendaluna-exchange",
            "sendaluna-authority",
            "sendaluna-fhir",
            "sendaluna-figure",
            "sendaluna-paper",
            "sendaluna-say",
            "sendaluna-words",
            "sendaluna-zones",
        ],
    ),
    ("sendaluna-device", &[]),
    ("sendaluna", &["sendaluna-bedside", "sendaluna-device"]),
    ("sendaluna-reminders", &["sendaluna-core", "sendaluna-zones"]),
    ("sendaluna-bare", &[]),
    (
        "sendaluna-life",
        &[
            "sendaluna-authority",
            "sendaluna-bedside",
            "sendaluna-clinic",
            "sendaluna-core",
            "sendaluna-exchange",
        ],
    ),
];

/// Crates from outside that `core` uses: pure ones, each.
const CORE_USES: &[&str] = &["base64", "chrono", "glam", "schemars", "serde", "serde_json", "sha2", "toml"];

fn arrows() -> BTreeMap<String, BTreeSet<String>> {
    let metadata = cargo_metadata::MetadataCommand::new()
        .manifest_path(root().join("Cargo.toml"))
        .no_deps()
        .other_options(["--offline".to_string()])
        .exec()
        .expect("cargo metadata");
    let mut arrows = BTreeMap::new();
    for package in metadata.packages.iter().filter(|p| p.name.as_str() != "sendaluna-tests") {
        let normal =
            package.dependencies.iter().filter(|d| d.kind != cargo_metadata::DependencyKind::Development);
        arrows.insert(package.name.to_string(), normal.map(|d| d.name.clone()).collect());
    }
    arrows
}

#[test]
fn nobody_knows_whom_they_should_not() {
    for (room, knows) in arrows() {
        let allowed = MAY_KNOW.iter().find(|(name, _)| *name == room);
        let (_, allowed) = allowed.unwrap_or_else(|| panic!("{room} is not in the table"));
        for other in knows.iter().filter(|name| name.starts_with("sendaluna")) {
            assert!(allowed.contains(&other.as_str()), "{room} may not know {other}");
        }
    }
}

#[test]
fn core_uses_only_pure_crates() {
    let arrows = arrows();
    for name in &arrows["sendaluna-core"] {
        assert!(CORE_USES.contains(&name.as_str()), "core may not use {name}");
    }
    // chrono without its clock: the feature that reads one is never switched on for core.
    let manifest = std::fs::read_to_string(root().join("Cargo.toml")).expect("there");
    assert!(
        manifest.contains(
            r#"chrono = { version = "0.4", default-features = false, features = ["std", "serde"] }"#
        )
    );
    let core = std::fs::read_to_string(root().join("src-tauri/core/Cargo.toml")).expect("there");
    assert!(core.contains("chrono.workspace = true\n"), "core takes chrono as the workspace gives it");
}

#[test]
fn core_touches_no_clock_disk_network_or_chance() {
    let forbidden = [
        "Utc::now",
        "Local::now",
        "SystemTime",
        "Instant",
        "std::fs",
        "std::net",
        "std::io",
        "std::env",
        "std::process",
        "std::thread",
        "getrandom",
        "rand::",
        "println!",
        "eprintln!",
        "HashMap",
        "HashSet",
    ];
    for path in files("src-tauri/core/src", ".rs") {
        let text = std::fs::read_to_string(&path).expect("there");
        for word in forbidden {
            assert!(!text.contains(word), "{} uses {word}", path.display());
        }
    }
}

#[test]
fn the_private_keys_are_not_in_the_patients_program() {
    let tree = std::process::Command::new(env!("CARGO"))
        .args(["tree", "--offline", "--package", "sendaluna", "--edges", "normal", "--prefix", "none"])
        .current_dir(root())
        .output()
        .expect("cargo tree");
    let tree = String::from_utf8(tree.stdout).expect("text");
    let reached: BTreeSet<&str> = tree.lines().filter_map(|line| line.split(' ').next()).collect();
    for secret in ["sendaluna-authority", "sendaluna-clinic"] {
        assert!(!reached.contains(secret), "the patient's program reaches {secret}");
    }
    assert!(reached.contains("sendaluna-store"), "the tree is there");
}

#[test]
fn no_file_is_longer_than_500_lines() {
    for folder in ["src-tauri", "tests", "demo"] {
        for ending in [".rs", ".py", ".ts", ".svelte", ".css"] {
            for path in files(folder, ending)
                .into_iter()
                .filter(|path| !path.components().any(|c| c.as_os_str() == ".venv"))
            {
                let lines = std::fs::read_to_string(&path).expect("there").lines().count();
                assert!(lines <= 500, "{} has {lines} lines", path.display());
            }
        }
    }
}

#[test]
fn every_movement_file_ships() {
    let listed = std::fs::read_to_string(root().join("src-tauri/core/src/library/files.rs")).expect("there");
    for path in files("src-tauri/core/library", ".toml") {
        let id = path.file_stem().expect("a name").to_string_lossy().into_owned();
        assert!(listed.contains(&format!("\"{id}\"")), "{id} is not in the list");
    }
}

#[test]
fn every_test_file_is_run() {
    let manifest = std::fs::read_to_string(root().join("tests/Cargo.toml")).expect("there");
    for folder in ["house", "torture", "journeys"] {
        for path in files(&format!("tests/{folder}"), ".rs") {
            let name = path.strip_prefix(root().join("tests")).expect("under it").display();
            assert!(manifest.contains(&format!("path = \"{name}\"")), "{name} is in no test");
        }
    }
    let run = std::fs::read_to_string(root().join("tests/run")).expect("there");
    let outside = root().join("tests/outside");
    for path in
        files("tests/outside", ".py").into_iter().filter(|path| path.parent() == Some(outside.as_path()))
    {
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        assert!(run.contains(&name), "tests/outside/{name}.py is not run");
    }
}
