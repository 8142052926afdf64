//! From sources to signed parts and files.

use std::path::Path;

use chrono::{DateTime, SubsecRound, Utc};
use sendaluna_authority::{SecretKey, sign};
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::PrecautionId;
use sendaluna_core::library::Library;
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::{Accepted, problems};
use sendaluna_core::problem::Problem;
use sendaluna_exchange::file::PlanFile;
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::receive::{Received, read_statement, receive};
use sendaluna_exchange::refusal::Refusal;
use sendaluna_exchange::signers::{Right, Signer, SignersDoc};

use crate::check::{CheckReport, check, unknown_family};
use crate::error::ClinicError;
use crate::source::{SignersSource, StatementSource};

/// A moment as documents carry it: whole seconds.
pub fn moment(at: DateTime<Utc>) -> DateTime<Utc> {
    at.trunc_subsecs(0)
}

/// Signs a signers list with the clinic key.
pub fn sign_signers(
    source: &SignersSource,
    beside: &Path,
    key: &SecretKey,
    now: DateTime<Utc>,
) -> Result<String, ClinicError> {
    let doc = source.to_doc(beside, key.public(), moment(now))?;
    let problems = doc.problems();
    if !problems.is_empty() {
        return Err(ClinicError::Problems(problems));
    }
    Ok(sign::signers(&doc, key))
}

/// A signed statement, and the lifts in it that will have no effect.
pub struct SignedStatement {
    /// The part.
    pub part: String,
    /// Who signed, as patients read it.
    pub signer: String,
    /// Lifts without the right to lift.
    pub lifts_without_right: usize,
    /// Families that no movement of the library has: only right if the clinic's own movement has it.
    pub unknown_families: Vec<String>,
}

/// Signs a precaution statement. Setting without the right is refused here already; a lift without
/// the right is signed, and will be ignored and shown as such wherever it arrives.
pub fn sign_statement(
    source: &StatementSource,
    signers: &SignersDoc,
    key: &SecretKey,
    now: DateTime<Utc>,
) -> Result<SignedStatement, ClinicError> {
    let doc = source.to_doc(moment(now))?;
    let problems = problems(&doc);
    if !problems.is_empty() {
        return Err(ClinicError::Problems(problems));
    }
    let signer = signer(signers, key)?;
    signer.check(doc.issued_at, now.date_naive())?;
    if doc.sets() && !signer.may(Right::SetPrecautions) {
        return Err(ClinicError::NoRight(signer.name.clone()));
    }
    let lifts_without_right = if signer.may(Right::LiftPrecautions) { 0 } else { doc.lifts.len() };
    let library = Library::shipped();
    let unknown = |precaution| unknown_family(precaution, library.iter()).map(|said| said[0].1.clone());
    let unknown_families = doc.precautions.iter().filter_map(unknown).collect();
    Ok(SignedStatement {
        unknown_families,
        part: sign::statement(&doc, key),
        signer: signer.name.clone(),
        lifts_without_right,
    })
}

/// What a plan is checked and signed with.
pub struct Ground {
    /// The signers list.
    pub signers: SignersDoc,
    /// Its part.
    pub signers_part: String,
    /// Statements that the plan is to rest on: those of the file before are carried on, so that a new
    /// device knows what the old one knew.
    pub statements: Vec<(Accepted, String)>,
    /// Precautions of the file before whose signer the list no longer trusts, and that nobody has
    /// stated again: a new device would not know them.
    pub not_carried: Vec<PrecautionId>,
    /// The file that the plan supersedes.
    pub previous: Option<Received>,
}

impl Ground {
    /// Reads and verifies the parts.
    pub fn read(
        signers_part: String,
        statements: Vec<String>,
        previous: Option<Vec<u8>>,
        now: DateTime<Utc>,
    ) -> Result<Self, ClinicError> {
        let signers = SignersDoc::read(&signers_part)?;
        let today = now.date_naive();
        let read = |text: String| {
            read_statement(text, &signers, today).map(|(accepted, part)| (accepted, part.text))
        };
        let statements = statements.into_iter().map(read).collect::<Result<Vec<_>, _>>()?;
        let previous = previous.map(|bytes| open(&bytes, now)).transpose()?;
        let mut all: Vec<(Accepted, String)> = Vec::new();
        let mut not_carried = Vec::new();
        for (accepted, part) in previous.iter().flat_map(|previous| &previous.statements) {
            match read(part.text.clone()) {
                Ok(statement) => all.push(statement),
                Err(_) => not_carried.extend(accepted.doc.precautions.iter().map(|p| p.id.clone())),
            }
        }
        for statement in statements {
            if !all.iter().any(|(known, _)| known.digest == statement.0.digest) {
                all.push(statement);
            }
        }
        not_carried.retain(|id| !all.iter().any(|(s, _)| s.doc.precautions.iter().any(|p| p.id == *id)));
        Ok(Self { signers, signers_part, statements: all, not_carried, previous })
    }

    /// Checks a plan.
    pub fn check(&self, doc: &PlanDoc, library: &Library) -> CheckReport {
        let statements: Vec<_> = self.statements.iter().map(|(accepted, _)| accepted.clone()).collect();
        let mut report = check(doc, library, &statements);
        report.problems.extend(self.not_carried.iter().map(|id| Problem {
            code: "not-restated",
            place: "precautions".into(),
            args: vec![("id", id.to_string())],
        }));
        report
    }

    /// Fills, checks and signs a plan. The finished file is received as a patient's program would
    /// before it is handed out.
    pub fn sign(
        &self,
        doc: PlanDoc,
        library: &Library,
        key: &SecretKey,
        now: DateTime<Utc>,
    ) -> Result<(Vec<u8>, CheckReport), ClinicError> {
        let report = self.check(&doc, library);
        if !report.problems.is_empty() {
            return Err(ClinicError::Problems(report.problems));
        }
        if !report.is_clean() {
            return Err(ClinicError::Contradictions(Box::new(report)));
        }
        let signer = signer(&self.signers, key)?;
        if !signer.may(Right::WritePlans) {
            return Err(ClinicError::NoRight(signer.name.clone()));
        }
        let doc = self.fill(doc, library, moment(now))?;
        let statements = self.statements.iter().map(|(_, part)| part.clone()).collect();
        let file = PlanFile::new(self.signers_part.clone(), statements, sign::plan(&doc, key)).to_bytes();
        open(&file, now)?;
        Ok((file, report))
    }

    fn fill(&self, mut doc: PlanDoc, library: &Library, now: DateTime<Utc>) -> Result<PlanDoc, ClinicError> {
        let previous = self.previous.as_ref().filter(|p| p.plan.head().plan == doc.head.plan);
        if previous.is_some_and(|p| doc.head.revision <= p.plan.head().revision) {
            return Err(ClinicError::RevisionNotNewer);
        }
        let facts = |doc: &PlanDoc, id| library.find_in(doc, id).map(|found| found.movement().digest());
        let digests: Vec<_> = doc
            .items
            .iter()
            .map(|item| {
                let easier = item.easier.as_ref().and_then(|easier| facts(&doc, &easier.movement));
                (facts(&doc, &item.movement), easier)
            })
            .collect();
        for (item, (own, of_easier)) in doc.items.iter_mut().zip(digests) {
            item.facts = own;
            if let Some(easier) = &mut item.easier {
                easier.facts = of_easier;
            }
        }
        doc.statements = self.statements.iter().map(|(accepted, _)| accepted.digest).collect();
        doc.head.issued_at = Some(now);
        doc.head.least_signers = Some(self.signers.number);
        doc.head.supersedes = previous.map(|p| p.plan_part.digest);
        doc.reply_secret = match &self.previous {
            Some(previous) => Some(previous.plan.reply_secret()),
            None => Some(random_secret()?),
        };
        Ok(doc)
    }
}

/// Opens a signed file as a patient's program would for the first time.
pub fn open(bytes: &[u8], now: DateTime<Utc>) -> Result<Received, Refusal> {
    let file = PlanFile::read(bytes)?;
    let signers = SignersDoc::read(&file.signers)?;
    let code = LetterCode::of(signers.clinic_key.thumbprint()).to_string();
    receive(bytes, Some(&code), None, now.date_naive())
}

/// The signer whose key this is.
pub fn signer<'a>(signers: &'a SignersDoc, key: &SecretKey) -> Result<&'a Signer, ClinicError> {
    signers.signer(key.public().thumbprint()).map_err(|_| ClinicError::NotASigner)
}

fn random_secret() -> Result<Digest, ClinicError> {
    let mut bytes = [0u8; 32];
    getrandom::fill(&mut bytes).map_err(|_| sendaluna_authority::KeyError::NoRandomness)?;
    Ok(Digest::of(&bytes))
}

/// A random id for a person, given once: 80 bits in lower-case base32.
pub fn new_person() -> Result<String, ClinicError> {
    let mut bytes = [0u8; 16];
    getrandom::fill(&mut bytes).map_err(|_| sendaluna_authority::KeyError::NoRandomness)?;
    let symbol = |byte: &u8| char::from(b"0123456789abcdefghjkmnpqrstvwxyz"[usize::from(byte & 31)]);
    Ok(format!("p-{}", bytes.iter().map(symbol).collect::<String>()))
}
