//! The desktop's speech service (speech-dispatcher), through its socket.

use std::ffi::OsString;
use std::io::ErrorKind;
use std::os::unix::net::UnixStream;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use super::ssip::{Client, MODULE_ANSWERS_WITHIN};
use super::voices::best_tag;
use super::{Engine, Happened, Hears, Manner, NoSpeech, Speech, plain};
use crate::App;
use crate::queue::Ticket;

/// How long the service may take to start.
const START_WITHIN: Duration = Duration::from_secs(3);
/// How often it is looked for meanwhile.
const LOOK_EVERY: Duration = Duration::from_millis(50);
/// Plays a recorded excuse in English whatever it is given: not something that speaks.
const EXCUSE: &str = "dummy";

/// Where the service listens.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Address {
    socket: Option<PathBuf>,
    starts: Option<OsString>,
}

impl Address {
    /// As the environment says: `SPEECHD_ADDRESS`, else the usual place. A network address is nobody's.
    pub fn of_environment() -> Self {
        let of = |name: &str| std::env::var_os(name).filter(|value| !value.is_empty());
        let given = of("SPEECHD_ADDRESS").map(|value| value.to_string_lossy().into_owned());
        let usual = || {
            let cache = || of("XDG_CACHE_HOME").map(PathBuf::from);
            let home = || of("HOME").map(|home| PathBuf::from(home).join(".cache"));
            let folder = of("XDG_RUNTIME_DIR").map(PathBuf::from).or_else(cache).or_else(home)?;
            Some(folder.join("speech-dispatcher").join("speechd.sock"))
        };
        Self { socket: socket(given.as_deref(), usual), starts: Some("speech-dispatcher".into()) }
    }

    /// A socket, at which nothing is started if nobody listens.
    pub fn at(socket: impl Into<PathBuf>) -> Self {
        Self { socket: Some(socket.into()), starts: None }
    }

    fn connect(&self) -> Result<UnixStream, NoSpeech> {
        let socket = self.socket.as_deref().ok_or(NoSpeech::NoService)?;
        match (UnixStream::connect(socket), &self.starts) {
            (Ok(stream), _) => Ok(stream),
            (Err(error), Some(program)) if is_nobody_there(error.kind()) => start(program, socket),
            (Err(_), _) => Err(NoSpeech::NoService),
        }
    }
}

fn is_nobody_there(kind: ErrorKind) -> bool {
    matches!(kind, ErrorKind::NotFound | ErrorKind::ConnectionRefused)
}

fn socket(given: Option<&str>, usual: impl FnOnce() -> Option<PathBuf>) -> Option<PathBuf> {
    match given.map(|given| given.split_once(':').unwrap_or((given, ""))) {
        None | Some(("unix_socket", "")) => usual(),
        Some(("unix_socket", path)) => Some(path.into()),
        Some(_) => None,
    }
}

/// Starts the service once, and waits until it listens.
fn start(program: &OsString, socket: &Path) -> Result<UnixStream, NoSpeech> {
    let mut command = Command::new(program);
    command.args(["--spawn", "--communication-method", "unix_socket", "--socket-path"]).arg(socket);
    command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    let mut child = command.spawn().map_err(|_| NoSpeech::NoService)?;
    let until = Instant::now() + START_WITHIN;
    while Instant::now() < until {
        if let Ok(stream) = UnixStream::connect(socket) {
            // What was started lives on by itself; only its first process is waited for.
            std::thread::spawn(move || child.wait());
            return Ok(stream);
        }
        if child.try_wait().is_ok_and(|ended| ended.is_some_and(|status| !status.success())) {
            break;
        }
        std::thread::sleep(LOOK_EVERY);
    }
    std::thread::spawn(move || child.wait());
    Err(NoSpeech::NoService)
}

/// The way to the service.
#[derive(Debug, Clone)]
pub struct Dispatcher {
    address: Address,
    app: App,
}

impl Dispatcher {
    /// At an address.
    pub fn new(address: Address, app: &App) -> Self {
        Self { address, app: app.clone() }
    }
}

impl Engine for Dispatcher {
    fn open(&self, hears: Hears) -> Result<Box<dyn Speech>, NoSpeech> {
        let client = Client::new(self.address.connect()?, hears.clone())?;
        Ok(Box::new(Session::new(client, &self.app, hears)?))
    }
}

/// A talk with the service.
pub(super) struct Session {
    client: Client,
    hears: Hears,
    /// The modules that speak, and what each of them was found to speak.
    modules: Vec<Module>,
    spoken: Option<(String, String)>,
}

struct Module {
    name: String,
    /// Language tags of its voices.
    voices: Option<Vec<String>>,
}

impl Session {
    pub(super) fn new(mut client: Client, app: &App, hears: Hears) -> Result<Self, NoSpeech> {
        let id: String = app.id.chars().filter(char::is_ascii_alphanumeric).collect();
        client.ask(&format!("SET SELF CLIENT_NAME user:{id}:session"))?;
        client.ask("SET SELF NOTIFICATION ALL ON")?;
        // Spoken before a reader of the screen goes on, and never cut off by one.
        client.ask("SET SELF PRIORITY MESSAGE")?;
        let first = match client.ask("GET OUTPUT_MODULE") {
            Err(NoSpeech::Refused) => Vec::new(),
            answered => answered?,
        };
        let all = client.ask("LIST OUTPUT_MODULES").map_err(|reason| match reason {
            NoSpeech::Refused => NoSpeech::NoModule,
            reason => reason,
        })?;
        let mut names: Vec<String> = first.into_iter().filter(|name| all.contains(name)).collect();
        names.extend(all.iter().filter(|name| !names.contains(name)).cloned().collect::<Vec<_>>());
        names.retain(|name| name != EXCUSE);
        if names.is_empty() {
            return Err(NoSpeech::NoModule);
        }
        let modules = names.into_iter().map(|name| Module { name, voices: None }).collect();
        Ok(Self { client, hears, modules, spoken: None })
    }

    /// The first module that speaks a language, and the tag of its nearest voice.
    fn find(&mut self, lang: &str) -> Result<(String, String), NoSpeech> {
        for module in &mut self.modules {
            let voices = match &module.voices {
                Some(voices) => voices,
                None => module.voices.insert(voices_of(&mut self.client, &module.name)?),
            };
            if let Some(tag) = best_tag(voices.iter().map(String::as_str), lang) {
                // The module picks a voice for the language as it was asked for, if it can: it knows best.
                return Ok((module.name.clone(), if lang.contains('-') { tag } else { lang.to_string() }));
            }
        }
        Err(NoSpeech::NoVoice)
    }
}

/// What a module speaks; a module that refuses to say has nothing to say.
fn voices_of(client: &mut Client, module: &str) -> Result<Vec<String>, NoSpeech> {
    let asked = client.ask(&format!("SET SELF OUTPUT_MODULE {module}"));
    let listed = asked.and_then(|_| client.ask_within("LIST SYNTHESIS_VOICES", MODULE_ANSWERS_WITHIN));
    match listed {
        Ok(lines) => Ok(lines.iter().filter_map(|line| voice(line)).collect()),
        Err(NoSpeech::Refused) => Ok(Vec::new()),
        Err(error) => Err(error),
    }
}

/// The language in a line of the list: name, language and variant. A variant is the same voice disguised.
fn voice(line: &str) -> Option<String> {
    let mut parts = line.split('\t').skip(1);
    let (lang, variant) = (parts.next()?, parts.next().unwrap_or("none"));
    (variant == "none").then(|| lang.to_string())
}

impl Speech for Session {
    fn manner(&mut self, manner: &Manner) -> Result<(), NoSpeech> {
        let lang: String = manner.lang.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '-').collect();
        let (module, tag) = self.find(&lang)?;
        if self.spoken.as_ref() != Some(&(module.clone(), tag.clone())) {
            self.client.ask(&format!("SET SELF OUTPUT_MODULE {module}"))?;
            self.client.ask(&format!("SET SELF LANGUAGE {tag}"))?;
            self.spoken = Some((module, tag));
        }
        self.client.ask(&format!("SET SELF RATE {}", manner.rate.get()))?;
        self.client.ask(&format!("SET SELF PITCH {}", manner.pitch.get()))?;
        Ok(())
    }

    fn say(&mut self, ticket: Ticket, text: &str) -> Result<(), NoSpeech> {
        let line = plain(text);
        if line.is_empty() {
            (self.hears)(Happened::Over(ticket));
            return Ok(());
        }
        self.client.speak(ticket, &line)
    }

    fn hush(&mut self) -> Result<(), NoSpeech> {
        self.client.ask("CANCEL SELF").map(|_| ())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_address_is_the_environments_if_it_gives_one() {
        let usual = || Some(PathBuf::from("/run/usual"));
        assert_eq!(socket(None, usual), usual());
        assert_eq!(socket(Some("unix_socket"), usual), usual());
        assert_eq!(socket(Some("unix_socket:/run/own"), usual), Some("/run/own".into()));
        assert_eq!(socket(Some("inet_socket:localhost:6560"), usual), None);
    }

    #[test]
    fn without_a_service_there_is_a_reason() {
        let folder = tempfile::tempdir().expect("a folder");
        let nowhere = folder.path().join("speechd.sock");
        assert_eq!(Address::at(&nowhere).connect().err(), Some(NoSpeech::NoService));
        let none = Address { socket: Some(nowhere.clone()), starts: Some("no-such-program".into()) };
        assert_eq!(none.connect().err(), Some(NoSpeech::NoService));
        // One that starts, and fails at once.
        let fails = Address { socket: Some(nowhere), starts: Some("false".into()) };
        assert_eq!(fails.connect().err(), Some(NoSpeech::NoService));
        assert_eq!(Address { socket: None, starts: None }.connect().err(), Some(NoSpeech::NoService));
    }

    #[test]
    fn disguised_voices_are_passed_over() {
        assert_eq!(voice("Spanish (Spain)\tes\tnone").as_deref(), Some("es"));
        assert_eq!(voice("Spanish (Spain)+Adam\tes\tAdam"), None);
        assert_eq!(voice("nonsense"), None);
    }
}
