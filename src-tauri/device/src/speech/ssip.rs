//! The speech service's protocol (SSIP, as speech-dispatcher documents it): a command a line, an answer of one
//! or more lines, and events between answers.
//!
//! The crates for it read events and answers from the same place, so that one is taken for the other, and
//! wait for an answer for ever. Here a thread reads and sorts, and every wait has an end.

use std::collections::HashMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::os::unix::net::UnixStream;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{Arc, Mutex};
use std::time::Duration;

use super::{Happened, Hears, NoSpeech};
use crate::locked;
use crate::queue::Ticket;

/// How long an answer may take.
const ANSWER_WITHIN: Duration = Duration::from_millis(1500);
/// How long one that the service has to ask its module for may take: it asks when the module has spoken.
pub(super) const MODULE_ANSWERS_WITHIN: Duration = Duration::from_secs(8);
/// A line longer than this, in bytes, is not of this protocol.
const LONGEST_LINE: u64 = 16 * 1024;
/// An answer of more lines is not one; one well-known engine lists 13,000 voices.
const MOST_LINES: usize = 200_000;

/// An answer.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Answer {
    code: u16,
    lines: Vec<String>,
}

/// One end of a talk.
pub(super) struct Client {
    stream: UnixStream,
    answers: Receiver<Answer>,
    /// Whose number the next "queued" is.
    handed: Arc<Mutex<Option<Ticket>>>,
    answer_within: Duration,
}

impl Client {
    /// Begins to talk. What happens to utterances is told to `hears`, and so is the end of the talk.
    pub(super) fn new(stream: UnixStream, hears: Hears) -> Result<Self, NoSpeech> {
        let reading = stream.try_clone().map_err(|_| NoSpeech::Lost)?;
        stream.set_write_timeout(Some(ANSWER_WITHIN)).map_err(|_| NoSpeech::Lost)?;
        let (to, answers) = channel();
        let handed = Arc::new(Mutex::new(None));
        let reader = Reader {
            from: BufReader::new(reading),
            to,
            hears,
            handed: Arc::clone(&handed),
            tickets: HashMap::new(),
        };
        std::thread::spawn(move || reader.run());
        Ok(Self { stream, answers, handed, answer_within: ANSWER_WITHIN })
    }

    #[cfg(test)]
    pub(super) fn answering_within(mut self, answer_within: Duration) -> Self {
        self.answer_within = answer_within;
        self
    }

    /// Sends a command, which must succeed, and gives the lines of its answer.
    pub(super) fn ask(&mut self, command: &str) -> Result<Vec<String>, NoSpeech> {
        self.ask_within(command, self.answer_within)
    }

    /// The same, with an end of its own to the wait.
    pub(super) fn ask_within(&mut self, command: &str, within: Duration) -> Result<Vec<String>, NoSpeech> {
        self.send(command)?;
        let answer = self.answer(within)?;
        if (200..300).contains(&answer.code) { Ok(answer.lines) } else { Err(NoSpeech::Refused) }
    }

    /// Hands over a text of one line.
    pub(super) fn speak(&mut self, ticket: Ticket, line: &str) -> Result<(), NoSpeech> {
        self.ask("SPEAK")?;
        *locked(&self.handed) = Some(ticket);
        // A dot at the beginning of a line could end the text.
        let dot = if line.starts_with('.') { " " } else { "" };
        self.ask(&format!("{dot}{line}\r\n.")).map(|_| ())
    }

    fn send(&mut self, command: &str) -> Result<(), NoSpeech> {
        self.stream.write_all(format!("{command}\r\n").as_bytes()).map_err(|_| NoSpeech::Lost)
    }

    fn answer(&mut self, within: Duration) -> Result<Answer, NoSpeech> {
        self.answers.recv_timeout(within).map_err(|error| match error {
            RecvTimeoutError::Timeout => {
                // An answer that comes later would be taken for the next command's.
                self.shut();
                NoSpeech::Unanswered
            }
            RecvTimeoutError::Disconnected => NoSpeech::Lost,
        })
    }

    /// Ends the talk, and wakes the reader, which would hold the other end open otherwise.
    fn shut(&self) {
        // It may be shut already.
        let _ = self.stream.shutdown(std::net::Shutdown::Both);
    }
}

impl Drop for Client {
    fn drop(&mut self) {
        self.shut();
    }
}

struct Reader {
    from: BufReader<UnixStream>,
    to: Sender<Answer>,
    hears: Hears,
    handed: Arc<Mutex<Option<Ticket>>>,
    tickets: HashMap<u32, Ticket>,
}

impl Reader {
    fn run(mut self) {
        while let Some(answer) = self.read() {
            match answer.code {
                700..800 => self.event(&answer),
                code => {
                    if code == 225 {
                        self.queued(&answer);
                    }
                    if self.to.send(answer).is_err() {
                        return;
                    }
                }
            }
        }
        (self.hears)(Happened::Lost(NoSpeech::Lost));
    }

    /// The next answer or event; `None` at the end, and for what is neither.
    fn read(&mut self) -> Option<Answer> {
        let mut lines = Vec::new();
        loop {
            let line = self.line()?;
            let code = line.get(..3)?.parse().ok()?;
            let rest = line.get(4..).unwrap_or_default().to_string();
            match line.as_bytes().get(3) {
                Some(b'-') if lines.len() < MOST_LINES => lines.push(rest),
                Some(b' ') | None => return Some(Answer { code, lines }),
                _ => return None,
            }
        }
    }

    fn line(&mut self) -> Option<String> {
        let mut line = Vec::new();
        let read = (&mut self.from).take(LONGEST_LINE).read_until(b'\n', &mut line).ok()?;
        if read == 0 || line.last() != Some(&b'\n') {
            return None;
        }
        Some(String::from_utf8_lossy(&line).trim_end_matches(['\r', '\n']).to_string())
    }

    /// A text has got its number; before anything can have happened to it.
    fn queued(&mut self, answer: &Answer) {
        let handed = locked(&self.handed).take();
        let number = answer.lines.first().and_then(|line| line.parse().ok());
        if let (Some(ticket), Some(number)) = (handed, number) {
            self.tickets.insert(number, ticket);
        }
    }

    fn event(&mut self, answer: &Answer) {
        let Some(number) = answer.lines.first().and_then(|line| line.parse::<u32>().ok()) else { return };
        let happened = match answer.code {
            701 => self.tickets.get(&number).copied().map(Happened::Began),
            702 | 703 => self.tickets.remove(&number).map(Happened::Over),
            _ => None,
        };
        if let Some(happened) = happened {
            (self.hears)(happened);
        }
    }
}

#[cfg(test)]
mod tests;
