//! What may be asked on the command line.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand, ValueEnum};

use crate::schema::Source;

/// Writes, checks and signs exercise plans. The plan is the clinic's; the program only holds it
/// against what the clinic itself has said.
#[derive(Parser)]
#[command(name = "sendaluna-clinic", version)]
pub(super) struct Cli {
    /// Language of the answers: en, es. The system's if not given.
    #[arg(long, global = true)]
    pub(super) lang: Option<String>,
    /// Answer in JSON.
    #[arg(long, global = true)]
    pub(super) json: bool,
    #[command(subcommand)]
    pub(super) command: Command,
}

#[derive(Subcommand)]
pub(super) enum Command {
    /// Keys: the clinic's, a signer's, or the one that opens reports.
    #[command(subcommand)]
    Key(KeyCommand),
    /// Persons.
    #[command(subcommand)]
    Person(PersonCommand),
    /// The list of who may sign what.
    #[command(subcommand)]
    Signers(SignersCommand),
    /// Prints the letter code of a clinic key, for the appointment letter.
    LetterCode {
        /// A signed signers list.
        #[arg(long, conflicts_with = "public", required_unless_present = "public")]
        signers: Option<PathBuf>,
        /// The public file of the clinic key.
        #[arg(long)]
        public: Option<PathBuf>,
    },
    /// Precaution statements.
    #[command(subcommand)]
    Precautions(PrecautionsCommand),
    /// Plans.
    #[command(subcommand)]
    Plan(PlanCommand),
    /// Patients' reports.
    #[command(subcommand)]
    Report(ReportCommand),
    /// Prints a plan file as a sheet for the fridge: a tagged PDF.
    Sheet(PaperArgs),
    /// Prints the letter with the letter code, and the plan in QR codes that do not hold it: a tagged PDF.
    Letter(PaperArgs),
    /// The movements that ship, with what they ask of the body.
    Library(LibraryArgs),
    /// Prints the JSON Schema of a source, or its field table.
    Schema {
        /// Which source.
        source: Option<Source>,
        /// A Markdown table in place of the schema; without a source, the table of bounds.
        #[arg(long)]
        table: bool,
    },
}

#[derive(Subcommand)]
pub(super) enum KeyCommand {
    /// Makes a key, sealed with a passphrase, and its public file beside it (`.pub`).
    New {
        /// What it is for.
        #[arg(long = "for", value_enum, default_value_t = KeyUse::Signing)]
        purpose: KeyUse,
        /// Where to write it.
        #[arg(long)]
        out: PathBuf,
        #[command(flatten)]
        passphrase: Passphrase,
    },
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum KeyUse {
    Signing,
    Reports,
}

#[derive(Subcommand)]
pub(super) enum PersonCommand {
    /// Prints a new random person id, to be given once.
    New,
}

#[derive(Subcommand)]
pub(super) enum SignersCommand {
    /// Signs a signers list with the clinic key.
    Sign {
        /// The source, in TOML.
        source: PathBuf,
        #[command(flatten)]
        key: Key,
        /// Where to write the signed part.
        #[arg(long)]
        out: PathBuf,
    },
}

#[derive(Subcommand)]
pub(super) enum PrecautionsCommand {
    /// Signs a precaution statement.
    Sign {
        /// The source, in TOML.
        source: PathBuf,
        /// The signed signers list.
        #[arg(long)]
        signers: PathBuf,
        #[command(flatten)]
        key: Key,
        /// Where to write the signed part.
        #[arg(long)]
        out: PathBuf,
    },
}

#[derive(Subcommand)]
pub(super) enum PlanCommand {
    /// Holds every item against every precaution, for every day of the plan.
    Check {
        /// The source, in TOML.
        source: PathBuf,
        #[command(flatten)]
        ground: GroundArgs,
        /// Print what each item asks of the body too: the numbers that were held against the
        /// precautions.
        #[arg(long)]
        numbers: bool,
    },
    /// Checks a plan and signs it into a file for the patient.
    Sign {
        /// The source, in TOML.
        source: PathBuf,
        #[command(flatten)]
        ground: GroundArgs,
        #[command(flatten)]
        key: Key,
        /// Where to write the plan file.
        #[arg(long)]
        out: PathBuf,
    },
    /// Verifies a plan file and shows what it says.
    Show {
        /// The plan file.
        file: PathBuf,
    },
}

#[derive(Subcommand)]
pub(super) enum ReportCommand {
    /// Opens a sealed report, verifies it, works out every figure again, and says what matters.
    Open {
        /// The sealed file.
        file: PathBuf,
        #[command(flatten)]
        key: Key,
        /// The clinic's signed signers list: says whether the plans in it are this clinic's.
        #[arg(long)]
        signers: Option<PathBuf>,
        /// Earlier reports of the same person: says whether this one goes on from them.
        #[arg(long, num_args = 1..)]
        before: Vec<PathBuf>,
        /// Write the report as a tagged PDF, in your language.
        #[arg(long)]
        pdf: Option<PathBuf>,
        /// Write the record as a table: CSV (RFC 4180).
        #[arg(long)]
        csv: Option<PathBuf>,
        /// Write the report as an FHIR R4 document, in JSON.
        #[arg(long)]
        fhir: Option<PathBuf>,
        /// Language of PDF and FHIR: that of the answers if not given.
        #[arg(long = "in", value_parser = clap::builder::PossibleValuesParser::new(sendaluna_words::LANGUAGES))]
        language: Option<String>,
    },
}

#[derive(Args)]
#[command(args_conflicts_with_subcommands = true)]
pub(super) struct LibraryArgs {
    /// Only these movements.
    pub(super) movements: Vec<String>,
    #[command(subcommand)]
    pub(super) command: Option<LibraryCommand>,
}

#[derive(Subcommand)]
pub(super) enum LibraryCommand {
    /// Draws movements: one as its stills, several as a contact sheet.
    Picture {
        /// Which movements, by id; all if none is named.
        movements: Vec<String>,
        /// A movement of the clinic's own, in TOML, in place of the library's.
        #[arg(long, conflicts_with = "movements")]
        own: Option<PathBuf>,
        /// Where to write the picture, as SVG.
        #[arg(long)]
        out: PathBuf,
    },
}

#[derive(Args)]
pub(super) struct PaperArgs {
    /// The plan file.
    pub(super) file: PathBuf,
    #[command(flatten)]
    pub(super) print: Print,
    /// Where to write the PDF.
    #[arg(long)]
    pub(super) out: PathBuf,
}

#[derive(Args)]
pub(super) struct Print {
    /// In large print, of 17 pt.
    #[arg(long)]
    pub(super) large: bool,
    /// Language of the page: en, es. The patient's if not given.
    #[arg(long = "in", value_parser = clap::builder::PossibleValuesParser::new(sendaluna_words::LANGUAGES))]
    pub(super) language: Option<String>,
}

#[derive(Args)]
pub(super) struct GroundArgs {
    /// The signed signers list.
    #[arg(long)]
    pub(super) signers: PathBuf,
    /// Signed precaution statements.
    #[arg(long, num_args = 1.., required = true)]
    pub(super) precautions: Vec<PathBuf>,
    /// The plan file that this one supersedes.
    #[arg(long)]
    pub(super) previous: Option<PathBuf>,
}

#[derive(Args)]
pub(super) struct Key {
    /// The sealed key that signs.
    #[arg(long)]
    pub(super) key: PathBuf,
    #[command(flatten)]
    pub(super) passphrase: Passphrase,
}

#[derive(Args)]
pub(super) struct Passphrase {
    /// A file whose first line is the passphrase; else `SENDALUNA_PASSPHRASE`, else it is asked for.
    #[arg(long)]
    pub(super) passphrase_file: Option<PathBuf>,
}
