//! Starting the reminder program at log-in, if the patient wants: by the desktop's autostart folder, the
//! Run key of Windows, or a launch agent of macOS.

use std::io;
#[cfg(unix)]
use std::path::Path;
use std::path::PathBuf;

/// The name of the entry: one for each data folder but the platform's own.
const NAME: &str = "sendaluna-reminders";

/// What starts at log-in.
pub struct AtLogin {
    /// The reminder program.
    pub program: PathBuf,
    /// The data folder.
    pub folder: PathBuf,
    /// Sets entries of several data folders apart; empty for the platform's own.
    pub tag: String,
}

impl AtLogin {
    /// Whether it starts at log-in; `None` if this device has no way for it.
    pub fn is_set(&self) -> Option<bool> {
        place::is_set(self)
    }

    /// Has it start at log-in, or no more.
    pub fn set(&self, starts: bool) -> io::Result<()> {
        if starts { place::put(self) } else { place::take(self) }
    }

    fn name(&self) -> String {
        if self.tag.is_empty() { NAME.to_string() } else { format!("{NAME}-{}", self.tag) }
    }
}

/// Taken away; what was not there is away already.
#[cfg(any(unix, windows))]
fn or_gone(taken: io::Result<()>) -> io::Result<()> {
    match taken {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Writes an entry, in a folder that is made if there is none.
#[cfg(unix)]
fn write(file: &Path, text: &str) -> io::Result<()> {
    if let Some(folder) = file.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(file, text)
}

/// The XDG autostart folder (Desktop Application Autostart Specification 0.5).
#[cfg(all(unix, not(target_os = "macos")))]
mod place {
    use super::{AtLogin, Path, PathBuf, io, or_gone, write};

    pub fn is_set(entry: &AtLogin) -> Option<bool> {
        Some(file(entry)?.exists())
    }

    pub fn put(entry: &AtLogin) -> io::Result<()> {
        let file = file(entry).ok_or(io::ErrorKind::NotFound)?;
        write(&file, &text(entry)?)
    }

    pub fn take(entry: &AtLogin) -> io::Result<()> {
        let file = file(entry).ok_or(io::ErrorKind::NotFound)?;
        or_gone(std::fs::remove_file(file))
    }

    fn file(entry: &AtLogin) -> Option<PathBuf> {
        let config = directories::BaseDirs::new()?.config_dir().join("autostart");
        Some(config.join(format!("{}.desktop", entry.name())))
    }

    pub(super) fn text(entry: &AtLogin) -> io::Result<String> {
        let (program, folder) = (quoted(&entry.program)?, quoted(&entry.folder)?);
        Ok(format!(
            "[Desktop Entry]\nType=Application\nName=Sendaluna\nExec={program} --data {folder}\n\
             Icon=sendaluna\nNoDisplay=true\nTerminal=false\nX-GNOME-Autostart-enabled=true\n"
        ))
    }

    /// An argument in an Exec line (Desktop Entry Specification 1.5, "The Exec key"): quoted, its special
    /// characters escaped, a percent sign doubled; and then escaped once more as a string.
    fn quoted(path: &Path) -> io::Result<String> {
        let path = path.to_str().filter(|path| !path.contains(['\n', '\r']));
        let path = path.ok_or_else(|| io::Error::from(io::ErrorKind::InvalidFilename))?;
        let mut argument = String::from('"');
        for c in path.chars() {
            match c {
                '"' | '`' | '$' | '\\' => argument.extend(['\\', c]),
                '%' => argument.push_str("%%"),
                c => argument.push(c),
            }
        }
        argument.push('"');
        Ok(argument.replace('\\', "\\\\"))
    }
}

/// The Run key of the registry.
#[cfg(windows)]
mod place {
    use super::{AtLogin, io, or_gone};
    use winreg::RegKey;
    use winreg::enums::{HKEY_CURRENT_USER, KEY_READ, KEY_WRITE};

    const RUN: &str = r"Software\Microsoft\Windows\CurrentVersion\Run";

    pub fn is_set(entry: &AtLogin) -> Option<bool> {
        let run = RegKey::predef(HKEY_CURRENT_USER).open_subkey_with_flags(RUN, KEY_READ).ok()?;
        Some(run.get_value::<String, _>(entry.name()).is_ok())
    }

    pub fn put(entry: &AtLogin) -> io::Result<()> {
        let run = RegKey::predef(HKEY_CURRENT_USER).open_subkey_with_flags(RUN, KEY_WRITE)?;
        let line = format!("\"{}\" --data \"{}\"", entry.program.display(), entry.folder.display());
        run.set_value(entry.name(), &line)
    }

    pub fn take(entry: &AtLogin) -> io::Result<()> {
        let run = RegKey::predef(HKEY_CURRENT_USER).open_subkey_with_flags(RUN, KEY_WRITE)?;
        or_gone(run.delete_value(entry.name()))
    }
}

/// A launch agent.
#[cfg(target_os = "macos")]
mod place {
    use super::{AtLogin, PathBuf, io, or_gone, write};

    pub fn is_set(entry: &AtLogin) -> Option<bool> {
        Some(file(entry)?.exists())
    }

    pub fn put(entry: &AtLogin) -> io::Result<()> {
        let file = file(entry).ok_or(io::ErrorKind::NotFound)?;
        let text = |plain: &str| plain.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
        let (label, program) = (label(entry), text(&entry.program.display().to_string()));
        let folder = text(&entry.folder.display().to_string());
        let agent = format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<plist version=\"1.0\"><dict>\n\
             <key>Label</key><string>{label}</string>\n\
             <key>ProgramArguments</key><array><string>{program}</string><string>--data</string>\
             <string>{folder}</string></array>\n<key>RunAtLoad</key><true/>\n</dict></plist>\n"
        );
        write(&file, &agent)
    }

    pub fn take(entry: &AtLogin) -> io::Result<()> {
        let file = file(entry).ok_or(io::ErrorKind::NotFound)?;
        or_gone(std::fs::remove_file(file))
    }

    fn label(entry: &AtLogin) -> String {
        format!("org.sendaluna.{}", entry.name())
    }

    fn file(entry: &AtLogin) -> Option<PathBuf> {
        let home = directories::BaseDirs::new()?.home_dir().to_path_buf();
        Some(home.join("Library/LaunchAgents").join(format!("{}.plist", label(entry))))
    }
}

/// A device that starts programs by itself, or lets none start.
#[cfg(not(any(unix, windows)))]
mod place {
    use super::{AtLogin, io};

    pub fn is_set(_: &AtLogin) -> Option<bool> {
        None
    }

    pub fn put(_: &AtLogin) -> io::Result<()> {
        Err(io::ErrorKind::Unsupported.into())
    }

    pub fn take(_: &AtLogin) -> io::Result<()> {
        Err(io::ErrorKind::Unsupported.into())
    }
}

#[cfg(all(test, unix, not(target_os = "macos")))]
mod tests {
    use super::*;

    #[test]
    fn a_path_is_quoted_whatever_it_holds() {
        let entry = AtLogin {
            program: "/opt/My programs/sendaluna-reminders".into(),
            folder: r#"/home/a/50% "mine" $HOME `x` \y"#.into(),
            tag: String::new(),
        };
        let text = place::text(&entry).expect("can be written");
        let exec = text.lines().find_map(|line| line.strip_prefix("Exec=")).expect("an Exec line");
        // Worked out by hand from the Desktop Entry Specification: quote, escape, double the percent sign;
        // then every backslash once more, because it stands in a string.
        assert_eq!(
            exec,
            r#""/opt/My programs/sendaluna-reminders" --data "/home/a/50%% \\"mine\\" \\$HOME \\`x\\` \\\\y""#
        );
        let torn = AtLogin { folder: "/home/a\nExec=evil".into(), ..entry };
        assert!(place::text(&torn).is_err());
    }
}
