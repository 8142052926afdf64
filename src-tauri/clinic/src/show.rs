//! What a signed file says, after everything in it was verified.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::precaution::{End, Standing, Who};
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::receive::Received;
use serde::Serialize;

/// A signed file.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in the documents")]
pub struct FileView {
    pub clinic: String,
    pub clinic_key: String,
    pub letter_code: String,
    pub signers_number: u32,
    pub signers: Vec<SignerView>,
    pub person: String,
    pub called: String,
    pub plan: String,
    pub revision: u32,
    pub issued_at: DateTime<Utc>,
    pub review_by: NaiveDate,
    pub last_day: NaiveDate,
    pub plan_digest: String,
    pub statements: Vec<StatementView>,
    pub precautions: Vec<PrecautionView>,
    pub items: Vec<String>,
    pub lifts_ignored: Vec<String>,
}

/// A signer.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in the documents")]
pub struct SignerView {
    pub id: String,
    pub said: String,
    pub thumbprint: String,
    pub revoked: bool,
}

/// A statement.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in the documents")]
pub struct StatementView {
    pub digest: String,
    pub signer: String,
    pub sets: usize,
    pub lifts: usize,
    pub may_lift: bool,
}

/// A precaution in force.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in the documents")]
pub struct PrecautionView {
    pub id: String,
    pub set_by: String,
    pub opens: Option<NaiveDate>,
    pub until_lifted: bool,
}

fn who(who: &Who) -> String {
    format!("{} ({})", who.name, who.role.pick([]))
}

/// What a verified file says.
pub fn show(received: &Received) -> FileView {
    let accepted: Vec<_> = received.statements.iter().map(|(accepted, _)| accepted.clone()).collect();
    let standing = Standing::of(&accepted);
    let head = received.plan.head();
    FileView {
        clinic: received.signers.clinic.clone(),
        clinic_key: received.clinic_key.to_string(),
        letter_code: LetterCode::of(received.clinic_key).to_string(),
        signers_number: received.signers.number,
        signers: received
            .signers
            .signers
            .iter()
            .map(|signer| SignerView {
                id: signer.id.to_string(),
                said: who(&signer.who()),
                thumbprint: signer.key.thumbprint().to_string(),
                revoked: signer.revoked.is_some(),
            })
            .collect(),
        person: head.person.to_string(),
        called: head.called.clone(),
        plan: head.plan.to_string(),
        revision: head.revision,
        issued_at: received.plan.issued_at(),
        review_by: head.review_by,
        last_day: head.last_day,
        plan_digest: received.plan_part.digest.to_string(),
        statements: accepted
            .iter()
            .map(|s| StatementView {
                digest: s.digest.to_string(),
                signer: who(&s.signer),
                sets: s.doc.precautions.len(),
                lifts: s.doc.lifts.len(),
                may_lift: s.may_lift,
            })
            .collect(),
        precautions: standing
            .in_force
            .iter()
            .map(|p| PrecautionView {
                id: p.precaution.id.to_string(),
                set_by: who(&p.set_by),
                opens: p.opens,
                until_lifted: matches!(p.precaution.ends, End::UntilLifted { .. }),
            })
            .collect(),
        items: received.plan.doc().items.iter().map(|item| item.id.to_string()).collect(),
        lifts_ignored: standing.ignored_lifts.iter().map(|lift| lift.precaution.to_string()).collect(),
    }
}
