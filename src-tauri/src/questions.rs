//! Questions, one line each: from a person at the terminal, or from a script.

use std::io::{BufRead, Write};

use crate::answer::{Desk, Trouble, print};

/// Asks a question and reads a line; `option` names the argument that answers it for a script.
pub fn ask(desk: &Desk, question: &str, option: &'static str) -> Result<String, Trouble> {
    if desk.json {
        let _ = writeln!(std::io::stderr(), "{question}");
    } else {
        print(question);
    }
    let mut line = String::new();
    match std::io::stdin().lock().read_line(&mut line) {
        Ok(n) if n > 0 => Ok(line.trim().to_string()),
        _ => Err(Trouble::NotAnswered(option)),
    }
}

/// Asks until the answer can be read; a script's wrong answer is repeated as a question only while
/// it has more lines.
pub fn ask_for<T>(
    desk: &Desk,
    question: &str,
    option: &'static str,
    read: impl Fn(&str) -> Option<T>,
) -> Result<T, Trouble> {
    loop {
        if let Some(answer) = read(&ask(desk, question, option)?) {
            return Ok(answer);
        }
    }
}

/// Yes or no, in the language's own words or in English.
pub fn is_yes(desk: &Desk, answer: &str) -> Option<bool> {
    let answer = answer.to_lowercase();
    let is = |id: &str| desk.say(id, &[]).split(' ').any(|word| word == answer);
    match answer.as_str() {
        "yes" | "y" => Some(true),
        "no" | "n" => Some(false),
        _ if is("answers-yes") => Some(true),
        _ if is("answers-no") => Some(false),
        _ => None,
    }
}

/// "None", in the language's own words or in English.
pub fn is_none(desk: &Desk, answer: &str) -> bool {
    let answer = answer.to_lowercase();
    answer == "none" || desk.say("answers-neither", &[]).split(' ').any(|word| word == answer)
}

/// A figure from 0 to 10.
pub fn zero_to_ten(answer: &str) -> Option<u8> {
    answer.parse().ok().filter(|level| *level <= 10)
}
