//! The clinic's command line. Exit codes: 0 done; 1 the answer is no (problems, contradictions, a
//! refusal); 2 the call was wrong; 3 it could not be answered (a file, a key, a passphrase).

use std::io::{IsTerminal, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use chrono::Utc;
use clap::Parser;
use sendaluna_authority::{ReportKey, SecretKey};
use sendaluna_core::library::Library;
use sendaluna_exchange::key::PublicKey;
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::signers::SignersDoc;
use sendaluna_words::Words;
use serde_json::{Value, json};
use zeroize::Zeroizing;

mod args;
mod library;
mod paper;
mod report;

use args::{
    Cli, Command, GroundArgs, Key, KeyCommand, KeyUse, Passphrase, PersonCommand, PlanCommand,
    PrecautionsCommand, SignersCommand,
};

use crate::error::ClinicError;
use crate::numbers::numbers;
use crate::say::{CheckView, ClinicSpeaker};
use crate::schema::{Source, bounds_table, schema, table};
use crate::show::{FileView, show};
use crate::sign::{Ground, new_person, open, sign_signers, sign_statement};
use crate::source::{SignersSource, StatementSource, read, read_plan, read_text};

/// What a command answers: for people, and as JSON.
struct Answer {
    text: String,
    json: Value,
    ok: bool,
}

/// Runs the command line.
pub fn run() -> ExitCode {
    let cli = match Cli::try_parse() {
        Ok(cli) => cli,
        Err(error) => return usage(&error),
    };
    let system = system_language();
    let words = Words::new(cli.lang.as_deref().into_iter().chain([system.as_str()]));
    let speaker = ClinicSpeaker::new(&words);
    match answer(&cli, &words, &speaker) {
        Ok(answer) => {
            print(&if cli.json { pretty(&answer.json) } else { answer.text });
            if answer.ok { ExitCode::SUCCESS } else { ExitCode::from(1) }
        }
        Err(error) => {
            report(&cli, &words, &speaker, &error);
            ExitCode::from(error.exit_code())
        }
    }
}

/// A call that was wrong, or a question about how to call: in JSON too, if that was asked for.
fn usage(error: &clap::Error) -> ExitCode {
    if error.use_stderr() && std::env::args().any(|arg| arg == "--json") {
        let words = Words::new([system_language().as_str()]);
        let (happened, to_do) = (error.to_string(), words.say("do-usage", &[]));
        let answer = json!({ "error": { "code": "usage", "happened": happened.trim(), "do": to_do } });
        print(&serde_json::to_string_pretty(&answer).unwrap_or_default());
    } else {
        let _ = error.print();
    }
    ExitCode::from(u8::from(error.use_stderr()) * 2)
}

fn system_language() -> String {
    std::env::var("LC_ALL").or_else(|_| std::env::var("LANG")).unwrap_or_default()
}

fn answer(cli: &Cli, words: &Words, speaker: &ClinicSpeaker<'_>) -> Result<Answer, ClinicError> {
    let now = Utc::now();
    match &cli.command {
        Command::Key(KeyCommand::New { purpose, out, passphrase }) => {
            key_new(words, *purpose, out, passphrase)
        }
        Command::Person(PersonCommand::New) => {
            let id = new_person()?;
            Ok(Answer { json: json!({ "person": id }), text: id, ok: true })
        }
        Command::Signers(SignersCommand::Sign { source, key, out }) => {
            let part = sign_signers(&read::<SignersSource>(source)?, source, &open_key(words, key)?, now)?;
            let number = SignersDoc::read(&part)?.number;
            write(out, part.as_bytes())?;
            Ok(written(words, out, json!({ "written": out, "number": number })))
        }
        Command::LetterCode { signers, public } => letter_code(signers.as_deref(), public.as_deref()),
        Command::Precautions(PrecautionsCommand::Sign { source, signers, key, out }) => {
            let list = read_signers(signers)?;
            let signed =
                sign_statement(&read::<StatementSource>(source)?, &list, &open_key(words, key)?, now)?;
            write(out, signed.part.as_bytes())?;
            let said = json!({
                "written": out,
                "lifts_without_right": signed.lifts_without_right,
                "unknown_families": signed.unknown_families,
            });
            let mut answer = written(words, out, said);
            for family in &signed.unknown_families {
                let id = [("id", family.as_str().into())];
                answer.text = format!("{}\n{}", answer.text, words.say("clinic-unknown-family", &id));
            }
            if signed.lifts_without_right > 0 {
                let who = [("who", signed.signer.as_str().into())];
                answer.text = format!(
                    "{}
{}",
                    answer.text,
                    words.say("clinic-lift-without-right", &who)
                );
            }
            Ok(answer)
        }
        Command::Plan(PlanCommand::Check { source, ground, numbers: with_numbers }) => {
            let doc = read_plan(source)?;
            let report = read_ground(ground, now)?.check(&doc, &Library::shipped());
            let mut answer = check_answer(words, &speaker.check(&report));
            if *with_numbers {
                let view = numbers(&doc, &Library::shipped());
                let said: Vec<String> = view.iter().map(|item| speaker.numbers(item)).collect();
                answer.text = format!("{}\n{}", said.join("\n"), answer.text);
                answer.json["numbers"] = json!(view);
            }
            Ok(answer)
        }
        Command::Report(command) => report::answer(words, speaker, command, now),
        Command::Sheet(args) => paper::sheet(words, args, now),
        Command::Letter(args) => paper::letter(words, args, now),
        Command::Library(args) => library::answer(words, speaker, args),
        Command::Plan(PlanCommand::Sign { source, ground, key, out }) => {
            let doc = read_plan(source)?;
            let ground = read_ground(ground, now)?;
            let (file, report) = ground.sign(doc, &Library::shipped(), &open_key(words, key)?, now)?;
            write(out, &file)?;
            let check = speaker.check(&report);
            let mut answer = check_answer(words, &check);
            answer.json = json!({ "written": out, "bytes": file.len(), "check": check });
            answer.text = format!("{}\n{}", answer.text, written(words, out, Value::Null).text);
            Ok(answer)
        }
        Command::Plan(PlanCommand::Show { file }) => {
            let view = show(&open(&read_bytes(file)?, now)?);
            Ok(Answer { text: show_text(words, &view), json: json!(view), ok: true })
        }
        Command::Schema { source, table: as_table } => {
            let text = match (source, as_table) {
                (Some(source), true) => table(*source),
                (Some(source), false) => pretty(&schema(*source)),
                (None, true) => bounds_table(),
                (None, false) => pretty(&schema(Source::Plan)),
            };
            Ok(Answer { json: source.map_or(Value::Null, schema), text, ok: true })
        }
    }
}

fn key_new(
    words: &Words,
    purpose: KeyUse,
    out: &Path,
    passphrase: &Passphrase,
) -> Result<Answer, ClinicError> {
    let passphrase = read_passphrase(words, passphrase, true)?;
    let (sealed, public) = match purpose {
        KeyUse::Signing => {
            let key = SecretKey::generate()?;
            (key.seal(&passphrase)?, key.public().to_string())
        }
        KeyUse::Reports => {
            let key = ReportKey::generate();
            (key.seal(&passphrase)?, key.recipient())
        }
    };
    write_private(out, sealed.as_bytes())?;
    let beside = PathBuf::from(format!("{}.pub", out.display()));
    write(&beside, format!("{public}\n").as_bytes())?;
    let thumbprint = PublicKey::parse(&public).ok().map(|key| key.thumbprint().to_string());
    let said = json!({ "written": out, "public": public, "public_file": beside, "thumbprint": thumbprint });
    let mut answer = written(words, out, said);
    answer.text = format!("{}\n{public}", answer.text);
    Ok(answer)
}

fn letter_code(signers: Option<&Path>, public: Option<&Path>) -> Result<Answer, ClinicError> {
    let key = match (signers, public) {
        (Some(signers), _) => read_signers(signers)?.clinic_key,
        (None, Some(public)) => {
            let text = read_text(public)?;
            PublicKey::parse(text.trim()).map_err(|_| sendaluna_authority::KeyError::NotAKeyFile)?
        }
        (None, None) => return Err(sendaluna_authority::KeyError::NotAKeyFile.into()),
    };
    let code = LetterCode::of(key.thumbprint()).to_string();
    Ok(Answer { json: json!({ "letter_code": code }), text: code, ok: true })
}

fn read_signers(path: &Path) -> Result<SignersDoc, ClinicError> {
    Ok(SignersDoc::read(read_text(path)?.trim_end())?)
}

fn read_ground(args: &GroundArgs, now: chrono::DateTime<Utc>) -> Result<Ground, ClinicError> {
    let part = |path: &PathBuf| read_text(path).map(|text| text.trim_end().to_string());
    let previous = args.previous.as_deref().map(read_bytes).transpose()?;
    let statements = args.precautions.iter().map(part).collect::<Result<_, _>>()?;
    Ground::read(part(&args.signers)?, statements, previous, now)
}

fn open_key(words: &Words, key: &Key) -> Result<SecretKey, ClinicError> {
    let sealed = read_text(&key.key)?;
    Ok(SecretKey::open(&sealed, &read_passphrase(words, &key.passphrase, false)?)?)
}

/// The passphrase: from its file, from the environment, or from the terminal; a new one twice.
fn read_passphrase(words: &Words, from: &Passphrase, new: bool) -> Result<Zeroizing<String>, ClinicError> {
    if let Some(path) = &from.passphrase_file {
        let text = Zeroizing::new(read_text(path)?);
        return Ok(Zeroizing::new(text.lines().next().unwrap_or_default().to_string()));
    }
    if let Ok(text) = std::env::var("SENDALUNA_PASSPHRASE") {
        return Ok(Zeroizing::new(text));
    }
    if !std::io::stdin().is_terminal() {
        return Err(ClinicError::NoPassphrase);
    }
    let ask = |id: &str| {
        rpassword::prompt_password(format!("{} ", words.say(id, &[])))
            .map(Zeroizing::new)
            .map_err(|_| ClinicError::NoPassphrase)
    };
    loop {
        let first = ask("clinic-passphrase")?;
        if !new || *first == *ask("clinic-passphrase-again")? {
            return Ok(first);
        }
    }
}

fn check_answer(words: &Words, view: &CheckView) -> Answer {
    let mut lines: Vec<String> = Vec::new();
    lines.extend(view.problems.iter().map(|problem| format!("{}: {}", problem.place, problem.said)));
    lines.extend(view.contradictions.iter().map(|contradiction| contradiction.said.clone()));
    lines.extend(view.near.iter().map(|near| near.said.clone()));
    lines.extend(view.lifts_ignored.iter().cloned());
    lines.push(match (view.problems.len(), view.contradictions.len()) {
        (0, 0) => words.say("clinic-check-clean", &[]),
        (0, n) => words.say("clinic-check-contradictions", &[("n", n.into())]),
        (n, _) => words.say("clinic-check-problems", &[("n", n.into())]),
    });
    Answer { text: lines.join("\n"), json: json!(view), ok: view.ok }
}

fn show_text(words: &Words, view: &FileView) -> String {
    let mut lines = vec![
        words.say(
            "show-plan",
            &[
                ("plan", view.plan.as_str().into()),
                ("revision", view.revision.into()),
                ("called", view.called.as_str().into()),
                ("clinic", view.clinic.as_str().into()),
            ],
        ),
        words.say(
            "show-days",
            &[
                ("review", words.day_and_year(view.review_by).into()),
                ("last", words.day_and_year(view.last_day).into()),
            ],
        ),
        words.say("show-letter-code", &[("code", view.letter_code.as_str().into())]),
        words.say("show-signers", &[("number", view.signers_number.into())]),
    ];
    lines.extend(view.signers.iter().map(|signer| format!("  {}", signer.said)));
    lines.push(words.say("show-precautions", &[("n", view.precautions.len().into())]));
    lines.extend(view.precautions.iter().map(|p| {
        let until = match p.opens {
            Some(day) => words.say("show-opens", &[("day", words.day_and_year(day).into())]),
            None => words.say("show-until-lifted", &[]),
        };
        format!("  {}: {until} ({})", p.id, p.set_by)
    }));
    lines.push(words.say("show-items", &[("n", view.items.len().into())]));
    lines.extend(view.items.iter().map(|item| format!("  {item}")));
    lines.join("\n")
}

fn written(words: &Words, out: &Path, json: Value) -> Answer {
    let path = out.display().to_string();
    Answer { text: words.say("clinic-written", &[("path", path.into())]), json, ok: true }
}

fn report(cli: &Cli, words: &Words, speaker: &ClinicSpeaker<'_>, error: &ClinicError) {
    use sendaluna_core::Coded;
    let (happened, to_do) = speaker.error(error);
    let (details, check) = match error {
        ClinicError::Problems(problems) => {
            let said: Vec<_> = problems.iter().map(|problem| speaker.problem(problem)).collect();
            (said.iter().map(|p| format!("{}: {}", p.place, p.said)).collect(), json!({ "problems": said }))
        }
        ClinicError::Contradictions(found) => {
            let view = speaker.check(found);
            (vec![check_answer(words, &view).text], json!(view))
        }
        _ => (Vec::<String>::new(), Value::Null),
    };
    if cli.json {
        let error = json!({ "code": error.code(), "happened": happened, "do": to_do });
        print(&pretty(&json!({ "error": error, "check": check })));
    } else {
        let mut lines = details;
        lines.extend([happened, to_do]);
        let _ = writeln!(std::io::stderr(), "{}", lines.join("\n"));
    }
}

fn read_bytes(path: &Path) -> Result<Vec<u8>, ClinicError> {
    std::fs::read(path).map_err(|e| file_error(path, &e))
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), ClinicError> {
    std::fs::write(path, bytes).map_err(|e| file_error(path, &e))
}

/// Writes a file that only its owner reads, and never over another.
fn write_private(path: &Path, bytes: &[u8]) -> Result<(), ClinicError> {
    let mut options = std::fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let written =
        options.open(path).and_then(|mut file| file.write_all(bytes).and_then(|()| file.sync_all()));
    written.map_err(|e| file_error(path, &e))
}

fn file_error(path: &Path, error: &std::io::Error) -> ClinicError {
    ClinicError::File { path: path.display().to_string(), what: error.to_string() }
}

fn pretty(value: &Value) -> String {
    serde_json::to_string_pretty(value).unwrap_or_default()
}

fn print(text: &str) {
    let _ = writeln!(std::io::stdout(), "{text}");
}
