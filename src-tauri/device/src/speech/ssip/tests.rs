//! The client against a service of the tests' own.

use std::io::{BufRead, BufReader};
use std::os::unix::net::UnixListener;
use std::sync::mpsc::RecvTimeoutError;
use std::thread::JoinHandle;
use std::time::Instant;

use super::super::dispatcher::{Address, Dispatcher, Session};
use super::super::{Engine, Manner, Percent, Speech};
use super::*;
use crate::App;

const PATIENCE: Duration = Duration::from_secs(10);
/// So long these tests let an answer take before it is missing.
const SHORT: Duration = Duration::from_millis(80);

/// What the service of a test does with a line; `None` hangs up.
type Does = Box<dyn FnMut(&str) -> Option<String> + Send>;

fn app() -> App {
    App { id: "tested".into(), name: "Tested".into(), why_awake: String::new() }
}

/// Answers as a service in good health would, and writes down what it hears.
fn healthy(heard: Sender<String>) -> Does {
    let mut number = 0;
    let mut is_text = false;
    Box::new(move |line| {
        let _ = heard.send(line.to_string());
        if is_text {
            is_text = line != ".";
            if is_text {
                return Some(String::new());
            }
            number += 1;
            return Some(format!(
                "225-{number}\r\n225 OK MESSAGE QUEUED\r\n701-{number}\r\n701-1\r\n701 BEGIN\r\n"
            ));
        }
        Some(match line {
            "GET OUTPUT_MODULE" => "251-good\r\n251 OK\r\n".into(),
            "LIST OUTPUT_MODULES" => "250-other\r\n250-good\r\n250-dummy\r\n250 OK\r\n".into(),
            "LIST SYNTHESIS_VOICES" => "249-Eva\tes\tnone\r\n249-Ada\ten-GB\tnone\r\n249 OK\r\n".into(),
            "SPEAK" => {
                is_text = true;
                "230 OK RECEIVING DATA\r\n".into()
            }
            "CANCEL SELF" => format!("703-{number}\r\n703-1\r\n703 CANCELED\r\n213 OK CANCELED\r\n"),
            line if line.starts_with("SET ") => "200 OK\r\n".into(),
            _ => "500 ERR INVALID COMMAND\r\n".into(),
        })
    })
}

/// Serves one talk over a pair of sockets.
fn served(mut does: Does) -> (UnixStream, JoinHandle<()>) {
    let (ours, theirs) = UnixStream::pair().expect("a pair");
    let thread = std::thread::spawn(move || {
        let mut to = theirs.try_clone().expect("cloned");
        for line in BufReader::new(theirs).lines().map_while(Result::ok) {
            let Some(answer) = does(&line) else { return };
            if to.write_all(answer.as_bytes()).is_err() {
                return;
            }
        }
    });
    (ours, thread)
}

fn hears() -> (Hears, Receiver<Happened>) {
    let (to, happened) = channel();
    let hears = move |what| {
        let _ = to.send(what);
    };
    (Arc::new(hears), happened)
}

fn session(does: Does) -> (Result<Session, NoSpeech>, Receiver<Happened>) {
    let (stream, _) = served(does);
    let (hears, happened) = hears();
    let client = Client::new(stream, Arc::clone(&hears)).expect("a client").answering_within(SHORT);
    (Session::new(client, &app(), hears), happened)
}

fn manner(lang: &str) -> Manner {
    Manner { lang: lang.into(), rate: Percent::new(-20), pitch: Percent::new(10) }
}

fn healthy_session() -> (Session, Receiver<Happened>, Receiver<String>) {
    let (to, heard) = channel();
    let (session, happened) = session(healthy(to));
    (session.expect("a session"), happened, heard)
}

#[test]
fn a_talk_from_end_to_end() {
    let (mut session, happened, heard) = healthy_session();
    session.manner(&manner("en-GB")).expect("a voice");
    session.say(Ticket(5), "Three\r\n.\r\nSTOP ALL").expect("said");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Began(Ticket(5))));
    session.hush().expect("hushed");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Over(Ticket(5))));
    session.say(Ticket(6), ".5").expect("said");
    drop(session);
    let lines: Vec<String> = heard.into_iter().collect();
    let expected = [
        "SET SELF CLIENT_NAME user:tested:session",
        "SET SELF NOTIFICATION ALL ON",
        "SET SELF PRIORITY MESSAGE",
        "GET OUTPUT_MODULE",
        "LIST OUTPUT_MODULES",
        "SET SELF OUTPUT_MODULE good",
        "LIST SYNTHESIS_VOICES",
        "SET SELF OUTPUT_MODULE good",
        "SET SELF LANGUAGE en-GB",
        "SET SELF RATE -20",
        "SET SELF PITCH 10",
        "SPEAK",
        "Three . STOP ALL",
        ".",
        "CANCEL SELF",
        "SPEAK",
        " .5",
        ".",
    ];
    assert_eq!(lines, expected);
}

#[test]
fn nothing_to_say_is_over_at_once() {
    let (mut session, happened, _) = healthy_session();
    session.say(Ticket(1), " \n").expect("nothing");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Over(Ticket(1))));
}

#[test]
fn a_language_that_nobody_speaks_leaves_the_rest_open() {
    let (mut session, happened, _) = healthy_session();
    assert_eq!(session.manner(&manner("ar")), Err(NoSpeech::NoVoice));
    session.manner(&manner("es-MX")).expect("a voice");
    session.say(Ticket(1), "Tres").expect("said");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Began(Ticket(1))));
}

#[test]
fn what_a_service_refuses_has_a_reason() {
    let cases = [
        ("LIST OUTPUT_MODULES", "400 ERR INTERNAL\r\n", NoSpeech::NoModule),
        ("LIST OUTPUT_MODULES", "250-dummy\r\n250 OK\r\n", NoSpeech::NoModule),
        ("LIST OUTPUT_MODULES", "250 OK\r\n", NoSpeech::NoModule),
        ("SET SELF CLIENT_NAME user:tested:session", "513 ERR\r\n", NoSpeech::Refused),
        ("SET SELF NOTIFICATION ALL ON", "500 ERR\r\n", NoSpeech::Refused),
    ];
    for (command, answer, reason) in cases {
        let mut rest = healthy(channel().0);
        let does = move |line: &str| if line == command { Some(answer.to_string()) } else { rest(line) };
        assert_eq!(session(Box::new(does)).0.err(), Some(reason), "{command}: {answer}");
    }
}

#[test]
fn a_text_that_is_refused_is_a_reason_too() {
    let mut rest = healthy(channel().0);
    let does = move |line: &str| if line == "SPEAK" { Some("401 ERR\r\n".into()) } else { rest(line) };
    let (session, _) = session(Box::new(does));
    assert_eq!(session.expect("a session").say(Ticket(1), "3"), Err(NoSpeech::Refused));
}

#[test]
fn a_service_that_dies_is_noticed_whenever_it_dies() {
    for dies_at in ["SET SELF NOTIFICATION ALL ON", "LIST SYNTHESIS_VOICES", "SPEAK", "3", "CANCEL SELF"] {
        let mut rest = healthy(channel().0);
        let (session, happened) =
            session(Box::new(move |line| (line != dies_at).then(|| rest(line)).flatten()));
        let talk = session.and_then(|mut session| {
            session.manner(&manner("en"))?;
            session.say(Ticket(1), "3")?;
            session.hush()
        });
        assert_eq!(talk, Err(NoSpeech::Lost), "{dies_at}");
        let last = happened.iter().last();
        assert_eq!(last, Some(Happened::Lost(NoSpeech::Lost)), "{dies_at}");
    }
}

#[test]
fn garbage_ends_the_talk() {
    let long = format!("200-{}\r\n", "x".repeat(20_000));
    for garbage in ["\r\n", "OK\r\n", "2\u{fc}\r\n", "200*what\r\n", "\0\0\0\0\r\n", &long, "-20 OK\r\n"] {
        let answer = garbage.to_string();
        let began = Instant::now();
        let (session, happened) = session(Box::new(move |_| Some(answer.clone())));
        assert!(matches!(session.err(), Some(NoSpeech::Lost | NoSpeech::Refused)), "{garbage:.20}");
        assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Lost(NoSpeech::Lost)), "{garbage:.20}");
        assert!(began.elapsed() < PATIENCE);
    }
}

#[test]
fn events_of_others_and_events_cut_short_change_nothing() {
    let mut rest = healthy(channel().0);
    let noise = "701-99\r\n701-7\r\n701 BEGIN\r\n702 END\r\n700-x\r\n700-1\r\n700-mark\r\n700 INDEX MARK\r\n";
    let (session, happened) =
        session(Box::new(move |line| rest(line).map(|answer| format!("{noise}{answer}"))));
    let mut session = session.expect("a session");
    session.say(Ticket(3), "3").expect("said");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Began(Ticket(3))));
}

#[test]
fn silence_has_an_end() {
    let (session, happened) = session(Box::new(|_| Some(String::new())));
    assert_eq!(session.err(), Some(NoSpeech::Unanswered));
    // The talk was let go of, so the thread that reads has ended as well.
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Lost(NoSpeech::Lost)));
    assert_eq!(happened.recv_timeout(PATIENCE), Err(RecvTimeoutError::Disconnected));
}

#[test]
fn an_answer_that_comes_too_late_is_not_taken_for_the_next() {
    let (stream, _) = served(Box::new(|line| {
        Some(match line {
            "FIRST" => String::new(),
            _ => "200-late\r\n200 OK\r\n".into(),
        })
    }));
    let (hears, _happened) = hears();
    let mut client = Client::new(stream, hears).expect("a client").answering_within(SHORT);
    assert_eq!(client.ask("FIRST"), Err(NoSpeech::Unanswered));
    assert_eq!(client.ask("SECOND"), Err(NoSpeech::Lost), "the talk has ended");
}

#[test]
fn it_is_reached_over_a_socket() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("speechd.sock");
    let listener = UnixListener::bind(&path).expect("bound");
    std::thread::spawn(move || {
        let (stream, _) = listener.accept().expect("somebody");
        let mut does = healthy(channel().0);
        let mut to = stream.try_clone().expect("cloned");
        for line in BufReader::new(stream).lines().map_while(Result::ok) {
            to.write_all(does(&line).unwrap_or_default().as_bytes()).expect("written");
        }
    });
    let (hears, happened) = hears();
    let mut speech = Dispatcher::new(Address::at(&path), &app()).open(hears).expect("speech");
    speech.manner(&manner("en")).expect("a voice");
    speech.say(Ticket(9), "four").expect("said");
    assert_eq!(happened.recv_timeout(PATIENCE), Ok(Happened::Began(Ticket(9))));
}
