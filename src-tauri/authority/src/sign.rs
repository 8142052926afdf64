//! Signed parts from what is to be said. Documents are written by the one writer: JSON in field
//! order, without white space.

use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::StatementDoc;
use sendaluna_exchange::jws::{PartKind, compact, signing_input};
use sendaluna_exchange::signers::SignersDoc;
use serde::Serialize;

use crate::keys::SecretKey;

/// Signs a signers list, with the clinic key.
pub fn signers(doc: &SignersDoc, clinic_key: &SecretKey) -> String {
    part(PartKind::Signers, doc, clinic_key)
}

/// Signs a precaution statement.
pub fn statement(doc: &StatementDoc, key: &SecretKey) -> String {
    part(PartKind::Precautions, doc, key)
}

/// Signs a plan.
pub fn plan(doc: &PlanDoc, key: &SecretKey) -> String {
    part(PartKind::Plan, doc, key)
}

fn part(kind: PartKind, doc: &impl Serialize, key: &SecretKey) -> String {
    let payload = serde_json::to_vec(doc).expect("a document is plain data");
    let input = signing_input(kind, key.public().thumbprint(), &payload);
    compact(&input, &key.sign(input.as_bytes()))
}
