//! The real programs, from the outside.

use std::path::PathBuf;
use std::process::Output;

use serde_json::Value;

use crate::root;

/// A program that was built before; `SENDALUNA_BIN_DIR` says where, else `target/debug`.
pub fn program(name: &str) -> PathBuf {
    let folder =
        std::env::var_os("SENDALUNA_BIN_DIR").map_or_else(|| root().join("target/debug"), PathBuf::from);
    let path = folder.join(name);
    assert!(path.exists(), "{} is not built: run `cargo build`", path.display());
    path
}

/// What a program answered.
pub fn json(out: &Output) -> Value {
    serde_json::from_slice(&out.stdout).unwrap_or_else(|e| panic!("{e}: {out:?}"))
}

/// The code of an error, which must say what happened and what to do.
pub fn error_code(out: &Output) -> String {
    assert!(!out.status.success(), "{out:?}");
    let answer = json(out);
    for part in ["happened", "do"] {
        assert!(answer["error"][part].as_str().is_some_and(|said| said.len() > 10), "{answer}");
    }
    answer["error"]["code"].as_str().expect("a code").to_string()
}
