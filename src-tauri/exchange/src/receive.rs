//! May this plan be taken in, given what is held? Everything is verified before anything is handed
//! out, and nothing held is changed here.

use std::collections::BTreeMap;

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::{PersonId, PlanId, PrecautionId};
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::{DayZero, Episode, PlanDoc};
use sendaluna_core::precaution::{Accepted, Precaution, StatementDoc, problems};

use crate::file::PlanFile;
use crate::jws::{PartKind, Unverified};
use crate::letter::LetterCode;
use crate::refusal::Refusal;
use crate::signers::{Right, Signer, SignersDoc};

/// What a device holds.
#[derive(Debug, Clone, PartialEq)]
pub struct Held {
    /// Thumbprint of the clinic key that was pinned.
    pub clinic_key: Digest,
    /// The person.
    pub person: PersonId,
    /// The highest signers list.
    pub signers_number: u32,
    /// Digest of that list's part.
    pub signers_digest: Digest,
    /// Every plan ever accepted, in order; the last is in force.
    pub plans: Vec<HeldPlan>,
    /// Every statement ever accepted.
    pub statements: Vec<Accepted>,
}

/// A plan that was accepted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HeldPlan {
    /// Which plan.
    pub plan: PlanId,
    /// Which revision.
    pub revision: u32,
    /// Digest of its part.
    pub digest: Digest,
    /// When it was signed.
    pub issued_at: DateTime<Utc>,
}

/// A part as it came, with its digest.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// SHA-256 of the text.
    pub digest: Digest,
    /// The compact JWS.
    pub text: String,
}

impl Part {
    /// A part of this text.
    pub fn new(text: String) -> Self {
        Self { digest: Digest::of(text.as_bytes()), text }
    }
}

/// A plan that may be taken in.
#[derive(Debug, Clone, PartialEq)]
pub struct Received {
    /// Thumbprint of the clinic key.
    pub clinic_key: Digest,
    /// The signers list.
    pub signers: SignersDoc,
    /// Its part.
    pub signers_part: Part,
    /// Statements, with what their signers may.
    pub statements: Vec<(Accepted, Part)>,
    /// The plan.
    pub plan: Plan,
    /// Its part.
    pub plan_part: Part,
    /// The very plan that is in force already.
    pub same_again: bool,
}

/// Verifies a file against what is held. `today` is the device's date, for keys that are not valid
/// yet. A code is needed for the first file, and to follow a clinic to a new key.
pub fn receive(
    bytes: &[u8],
    code: Option<&str>,
    held: Option<&Held>,
    today: NaiveDate,
) -> Result<Received, Refusal> {
    let file = PlanFile::read(bytes)?;
    let code = code.map(LetterCode::parse).transpose()?;
    let signers = SignersDoc::read(&file.signers)?;
    let signers_part = Part::new(file.signers);
    let clinic_key = check_clinic(&signers, &signers_part, code, held)?;
    let statements = read_statements(file.precautions, &signers, today)?;
    let (doc, plan_part) = read_plan(file.plan, &signers, today)?;
    check_person(&doc, &statements, held)?;
    check_rests_on(&doc, &signers, &statements)?;
    check_precautions(&statements, held)?;
    check_episodes(&doc, &statements)?;
    let plan = Plan::new(doc).map_err(|problems| {
        Refusal::Invalid(problems.first().map_or_else(String::new, |problem| problem.place.clone()))
    })?;
    let same_again = check_revision(&plan, plan_part.digest, held)?;
    Ok(Received { clinic_key, signers, signers_part, statements, plan, plan_part, same_again })
}

fn check_clinic(
    signers: &SignersDoc,
    part: &Part,
    code: Option<LetterCode>,
    held: Option<&Held>,
) -> Result<Digest, Refusal> {
    let clinic_key = signers.clinic_key.thumbprint();
    match (held, code) {
        (None, None) => return Err(Refusal::CodeNeeded),
        (Some(held), None) if held.clinic_key != clinic_key => return Err(Refusal::ClinicOther),
        (_, Some(code)) if LetterCode::of(clinic_key) != code => return Err(Refusal::CodeOtherClinic),
        _ => {}
    }
    let same_clinic = held.filter(|held| held.clinic_key == clinic_key);
    match same_clinic {
        Some(held) if signers.number < held.signers_number => Err(Refusal::SignersOlder),
        Some(held) if signers.number == held.signers_number && part.digest != held.signers_digest => {
            Err(Refusal::SignersChanged)
        }
        _ => Ok(clinic_key),
    }
}

fn signer_of<'a>(part: &Unverified, signers: &'a SignersDoc) -> Result<&'a Signer, Refusal> {
    signers.signer(part.key())
}

fn read_statements(
    parts: Vec<String>,
    signers: &SignersDoc,
    today: NaiveDate,
) -> Result<Vec<(Accepted, Part)>, Refusal> {
    parts.into_iter().map(|text| read_statement(text, signers, today)).collect()
}

/// Reads one statement. Setting needs its right; a lift without its right is accepted and ignored,
/// so that patient and report can say so.
pub fn read_statement(
    text: String,
    signers: &SignersDoc,
    today: NaiveDate,
) -> Result<(Accepted, Part), Refusal> {
    let unverified = Unverified::parse(PartKind::Precautions, &text)?;
    let signer = signer_of(&unverified, signers)?;
    let doc: StatementDoc = unverified.verify(&signer.key)?;
    signer.check(doc.issued_at, today)?;
    if doc.sets() && !signer.may(Right::SetPrecautions) {
        return Err(Refusal::SignerWithoutRight(signer.name.clone()));
    }
    if let Some(problem) = problems(&doc).first() {
        return Err(Refusal::Invalid(problem.place.clone()));
    }
    let part = Part::new(text);
    let accepted = Accepted {
        digest: part.digest,
        key: unverified.key(),
        signer: signer.who(),
        may_set: signer.may(Right::SetPrecautions),
        may_lift: signer.may(Right::LiftPrecautions),
        doc,
    };
    Ok((accepted, part))
}

fn read_plan(text: String, signers: &SignersDoc, today: NaiveDate) -> Result<(PlanDoc, Part), Refusal> {
    let unverified = Unverified::parse(PartKind::Plan, &text)?;
    let signer = signer_of(&unverified, signers)?;
    let doc: PlanDoc = unverified.verify(&signer.key)?;
    if !signer.may(Right::WritePlans) {
        return Err(Refusal::SignerWithoutRight(signer.name.clone()));
    }
    let issued_at = doc.head.issued_at.ok_or_else(|| Refusal::Invalid("head.issued_at".into()))?;
    signer.check(issued_at, today)?;
    Ok((doc, Part::new(text)))
}

fn check_person(doc: &PlanDoc, statements: &[(Accepted, Part)], held: Option<&Held>) -> Result<(), Refusal> {
    let person = &doc.head.person;
    let others = statements.iter().any(|(statement, _)| statement.doc.person != *person);
    if others || held.is_some_and(|held| held.person != *person) {
        return Err(Refusal::PersonOther);
    }
    Ok(())
}

/// The plan names every statement in the file, in order, and no other; at least one is by someone
/// who may set precautions and has looked; the signers list is not older than the plan asks for.
fn check_rests_on(
    doc: &PlanDoc,
    signers: &SignersDoc,
    statements: &[(Accepted, Part)],
) -> Result<(), Refusal> {
    let carried: Vec<Digest> = statements.iter().map(|(_, part)| part.digest).collect();
    if doc.statements.iter().any(|digest| !carried.contains(digest)) {
        return Err(Refusal::StatementMissing);
    }
    if carried != doc.statements {
        return Err(Refusal::StatementExtra);
    }
    if !statements.iter().any(|(statement, _)| statement.has_looked()) {
        return Err(Refusal::NoStatement);
    }
    if doc.head.least_signers.is_some_and(|least| signers.number < least) {
        return Err(Refusal::SignersOlder);
    }
    Ok(())
}

/// Changed content needs a new id: within the file, and against everything ever accepted.
fn check_precautions(statements: &[(Accepted, Part)], held: Option<&Held>) -> Result<(), Refusal> {
    let held = held.into_iter().flat_map(|held| &held.statements);
    let all = held.chain(statements.iter().map(|(statement, _)| statement));
    let mut known: BTreeMap<&PrecautionId, &Precaution> = BTreeMap::new();
    for precaution in all.filter(|s| s.may_set).flat_map(|s| &s.doc.precautions) {
        if *known.entry(&precaution.id).or_insert(precaution) != precaution {
            return Err(Refusal::PrecautionChanged(precaution.id.to_string()));
        }
    }
    Ok(())
}

/// Whoever signs must mean the same operation: same side, and the same day where both know it.
fn check_episodes(doc: &PlanDoc, statements: &[(Accepted, Part)]) -> Result<(), Refusal> {
    let differs = |ours: &Episode, other: &Episode| {
        let days_differ = matches!(
            (ours.day_zero, other.day_zero),
            (DayZero::Known { date: a }, DayZero::Known { date: b }) if a != b
        );
        ours.id == other.id && (ours.side != other.side || days_differ)
    };
    let mut theirs = statements.iter().flat_map(|(statement, _)| &statement.doc.episodes);
    if theirs.any(|other| doc.episodes.iter().any(|ours| differs(ours, other))) {
        return Err(Refusal::EpisodeDiffers);
    }
    Ok(())
}

/// Never back: not within a plan's revisions, and not from a newer plan to an older one. The very
/// plan that is in force, again, is a success.
fn check_revision(plan: &Plan, digest: Digest, held: Option<&Held>) -> Result<bool, Refusal> {
    let Some(in_force) = held.and_then(|held| held.plans.last()) else { return Ok(false) };
    if in_force.digest == digest {
        return Ok(true);
    }
    let (id, revision) = (&plan.head().plan, plan.head().revision);
    let known = held.into_iter().flat_map(|held| &held.plans).filter(|h| h.plan == *id);
    match known.max_by_key(|h| h.revision) {
        Some(h) if revision < h.revision => return Err(Refusal::PlanOlder),
        Some(h) if revision == h.revision && digest != h.digest => return Err(Refusal::PlanChanged),
        _ => {}
    }
    if in_force.plan != *id && plan.issued_at() <= in_force.issued_at {
        return Err(Refusal::PlanOlder);
    }
    Ok(false)
}
