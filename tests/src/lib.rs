//! What the checks share: an invented clinic in memory, and where things are.

use std::path::PathBuf;

pub mod device;
pub mod programs;
pub mod world;

/// The root of the house.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).parent().expect("tests lie in the house").to_path_buf()
}

/// Every file below a folder whose name ends so.
pub fn files(folder: &str, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![root().join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).expect("a folder").flatten() {
            let path = entry.path();
            let name = entry.file_name().to_string_lossy().into_owned();
            if path.is_dir() && !name.starts_with('.') && name != "node_modules" && name != "target" {
                folders.push(path);
            } else if name.ends_with(ending) {
                found.push(path);
            }
        }
    }
    found.sort();
    found
}
