//! Hands: what the patient presses during a session. At a terminal, single keys; from a script, one
//! command a line.

use std::collections::VecDeque;
use std::io::{BufRead, IsTerminal};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use crossterm::event::{Event, KeyCode, KeyEvent, KeyEventKind, KeyModifiers, poll, read};
use crossterm::terminal::{disable_raw_mode, enable_raw_mode};

/// What can be pressed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Press {
    /// The large target: pause, go on, ready.
    Space,
    /// "I am ready", or the steps are walked. From a script, kept until it is asked for.
    Ready,
    /// Go on at once from a rest.
    Now,
    /// This hurts; a script says how much, what kind and where on the same line.
    Hurts(Vec<String>),
    /// I did fewer; a script says how many.
    Fewer(Option<u16>),
    /// Easier way.
    Easier,
    /// Leave this one.
    Leave,
    /// I feel unwell or dizzy.
    Unwell,
    /// Stop the session.
    Stop,
}

/// Where presses come from.
pub enum Hands {
    /// A terminal in raw mode.
    Keys,
    /// Lines of a script.
    Lines {
        /// The lines.
        lines: Receiver<String>,
        /// Lines that are no command: answers to what is asked later.
        answers: VecDeque<String>,
        /// There are no more.
        ended: bool,
    },
}

impl Hands {
    /// Takes hold of standard input.
    pub fn new() -> Self {
        if std::io::stdin().is_terminal() && enable_raw_mode().is_ok() {
            return Self::Keys;
        }
        let (sender, lines) = channel();
        std::thread::spawn(move || {
            for line in std::io::stdin().lock().lines().map_while(Result::ok) {
                if sender.send(line).is_err() {
                    break;
                }
            }
        });
        Self::Lines { lines, answers: VecDeque::new(), ended: false }
    }

    /// Lets go of the terminal, for a question that is answered with a line.
    pub fn rest(&self) {
        if matches!(self, Self::Keys) {
            let _ = disable_raw_mode();
        }
    }

    /// Takes the terminal again.
    pub fn resume(&self) {
        if matches!(self, Self::Keys) {
            let _ = enable_raw_mode();
        }
    }

    /// At a terminal, where a person presses keys.
    pub fn is_terminal(&self) -> bool {
        matches!(self, Self::Keys)
    }

    /// Nobody can press anything any more.
    pub fn is_gone(&self) -> bool {
        matches!(self, Self::Lines { ended: true, .. })
    }

    /// Waits for a press, up to a time.
    pub fn wait(&mut self, up_to: Duration) -> Option<Press> {
        match self {
            Self::Keys => poll(up_to)
                .ok()
                .filter(|ready| *ready)
                .and_then(|_| read().ok())
                .and_then(|event| pressed(&event)),
            Self::Lines { ended: true, .. } => {
                std::thread::sleep(up_to);
                None
            }
            Self::Lines { lines, answers, ended } => match lines.recv_timeout(up_to) {
                Ok(line) => {
                    let press = commanded(&line);
                    if press.is_none() {
                        answers.push_back(line);
                    }
                    press
                }
                Err(RecvTimeoutError::Timeout) => None,
                Err(RecvTimeoutError::Disconnected) => {
                    *ended = true;
                    None
                }
            },
        }
    }

    /// The next line of a script, as an answer; `None` at a terminal or when there is none.
    pub fn line(&mut self) -> Option<String> {
        match self {
            Self::Keys => None,
            Self::Lines { lines, answers, ended } => {
                let line = answers.pop_front().or_else(|| lines.recv().ok());
                *ended |= line.is_none();
                line
            }
        }
    }
}

impl Drop for Hands {
    fn drop(&mut self) {
        self.rest();
    }
}

fn pressed(event: &Event) -> Option<Press> {
    let Event::Key(KeyEvent { code, modifiers, kind: KeyEventKind::Press, .. }) = event else { return None };
    match code {
        KeyCode::Char('c') if modifiers.contains(KeyModifiers::CONTROL) => Some(Press::Stop),
        KeyCode::Char(' ') | KeyCode::Media(_) => Some(Press::Space),
        KeyCode::Enter => Some(Press::Now),
        KeyCode::Char('h') => Some(Press::Hurts(Vec::new())),
        KeyCode::Char('f') => Some(Press::Fewer(None)),
        KeyCode::Char('e') => Some(Press::Easier),
        KeyCode::Char('l') => Some(Press::Leave),
        KeyCode::Char('u') => Some(Press::Unwell),
        KeyCode::Char('q') => Some(Press::Stop),
        _ => None,
    }
}

fn commanded(line: &str) -> Option<Press> {
    let mut words = line.split_whitespace();
    let first = words.next()?;
    let rest: Vec<String> = words.map(str::to_string).collect();
    match first {
        "pause" | "go" | "space" | "tap" => Some(Press::Space),
        "ready" => Some(Press::Ready),
        "now" => Some(Press::Now),
        "hurts" => Some(Press::Hurts(rest)),
        "fewer" => Some(Press::Fewer(rest.first().and_then(|n| n.parse().ok()))),
        "easier" => Some(Press::Easier),
        "leave" => Some(Press::Leave),
        "unwell" => Some(Press::Unwell),
        "stop" => Some(Press::Stop),
        _ => None,
    }
}
