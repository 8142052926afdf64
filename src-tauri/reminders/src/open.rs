//! Opening the window.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// Opens the window of this data folder on the session; one that is open already comes to the front.
pub fn window(data: &Path) {
    let mut command = Command::new(program());
    command.arg("--data").arg(data).arg("--begin");
    command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    // What ends this program does not end the window.
    #[cfg(unix)]
    std::os::unix::process::CommandExt::process_group(&mut command, 0);
    if let Ok(mut window) = command.spawn() {
        // Somebody has to take note of its end.
        std::thread::spawn(move || window.wait());
    }
}

/// The patient's program lies beside this one.
fn program() -> PathBuf {
    let name = format!("sendaluna{}", std::env::consts::EXE_SUFFIX);
    let beside = std::env::current_exe().ok().and_then(|own| Some(own.parent()?.join(&name)));
    beside.filter(|path| path.exists()).unwrap_or_else(|| name.into())
}
