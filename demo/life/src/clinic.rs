//! The clinic of the story: makes its keys, and signs on the days of the story.

use std::path::{Path, PathBuf};

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_authority::{ReportKey, SecretKey};
use sendaluna_clinic::sign::{Ground, sign_signers, sign_statement};
use sendaluna_clinic::source::{StatementSource, read, read_plan};
use sendaluna_core::library::Library;
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::signers::SignersDoc;

use crate::Trouble;

/// An instant of a day, counted from day 0, in the clinic's part of the world.
pub fn at(day_zero: NaiveDate, day: i64, hour: u32, minute: u32) -> DateTime<Utc> {
    let date = day_zero + chrono::Duration::days(day);
    date.and_hms_opt(hour, minute, 0).unwrap_or_default().and_utc()
}

/// The clinic, with its keys.
pub struct Clinic {
    folder: PathBuf,
    day_zero: NaiveDate,
    surgeon: SecretKey,
    therapist: SecretKey,
    signers: String,
}

impl Clinic {
    /// Makes the keys, and signs the signers list before the operation.
    pub fn open(folder: &Path, day_zero: NaiveDate) -> Result<Self, Trouble> {
        let passphrase = std::env::var("SENDALUNA_PASSPHRASE")?;
        let key = |name: &str| -> Result<SecretKey, Trouble> {
            let key = SecretKey::generate()?;
            std::fs::write(folder.join(format!("{name}.key.pub")), key.public().to_string())?;
            Ok(key)
        };
        let (clinic, surgeon, therapist) = (key("clinic")?, key("surgeon")?, key("therapist")?);
        let reports = ReportKey::generate();
        std::fs::write(folder.join("reports.key"), reports.seal(&passphrase)?)?;
        std::fs::write(folder.join("reports.key.pub"), reports.recipient())?;
        let path = folder.join("signers.toml");
        let signers = sign_signers(&read(&path)?, &path, &clinic, at(day_zero, -1, 9, 0))?;
        std::fs::write(folder.join("signers.jws"), &signers)?;
        Ok(Self { folder: folder.to_path_buf(), day_zero, surgeon, therapist, signers })
    }

    /// The code on the letter.
    pub fn letter_code(&self) -> Result<String, Trouble> {
        let key = SignersDoc::read(&self.signers)?.clinic_key;
        Ok(LetterCode::of(key.thumbprint()).to_string())
    }

    /// A statement of the surgeon's.
    pub fn surgeon_states(&self, name: &str, day: i64) -> Result<String, Trouble> {
        self.state(name, &self.surgeon, day)
    }

    /// A statement of the therapist's.
    pub fn therapist_states(&self, name: &str, day: i64) -> Result<String, Trouble> {
        self.state(name, &self.therapist, day)
    }

    fn state(&self, name: &str, key: &SecretKey, day: i64) -> Result<String, Trouble> {
        let source: StatementSource = read(&self.folder.join(format!("{name}.toml")))?;
        let signers = SignersDoc::read(&self.signers)?;
        Ok(sign_statement(&source, &signers, key, at(self.day_zero, day, 10, 0))?.part)
    }

    /// A plan file of the therapist's, over these statements and the file before.
    pub fn plan(
        &self,
        name: &str,
        statements: Vec<String>,
        previous: Option<Vec<u8>>,
        day: i64,
    ) -> Result<Vec<u8>, Trouble> {
        let now = at(self.day_zero, day, 11, 0);
        let ground = Ground::read(self.signers.clone(), statements, previous, now)?;
        let doc = read_plan(&self.folder.join(format!("{name}.toml")))?;
        let signed = ground.sign(doc, &Library::shipped(), &self.therapist, now);
        let (file, _) = signed?;
        std::fs::write(self.folder.join(format!("{name}.sendaluna")), &file)?;
        Ok(file)
    }
}
