//! Taking a plan in: verify, read a summary, confirm, and one transaction.

use chrono::NaiveDate;
use sendaluna_core::calendar::{Zone, date_in};
use sendaluna_core::facts::OperatedSide;
use sendaluna_core::ids::PrecautionId;
use sendaluna_core::plan::Plan;
use sendaluna_core::precaution::Standing;
use sendaluna_core::record::{Body, By};
use sendaluna_core::steps::in_new_plan;
use sendaluna_exchange::receive::{Received, receive};
use sendaluna_store::StoreError;
use sendaluna_store::tables::{pin::Pin, plans, signers, statements};

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::Bedside;

/// A verified plan that has not been taken in yet.
pub struct Offer {
    received: Received,
    /// The first plan on this device, or the first under a new clinic key: to be confirmed.
    pub first: bool,
    /// What its statements and those held add up to.
    pub standing: Standing,
}

impl Offer {
    /// The plan.
    pub fn plan(&self) -> &Plan {
        &self.received.plan
    }

    /// Which plan it is, to the byte.
    pub fn digest(&self) -> String {
        self.received.plan_part.digest.to_string()
    }

    /// The very plan that is in force already.
    pub fn same_again(&self) -> bool {
        self.received.same_again
    }

    /// The clinic's name, as it signs.
    pub fn clinic(&self) -> &str {
        &self.received.signers.clinic
    }
}

/// What the patient says about a first plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Confirmation {
    /// The operated side of each episode, in the plan's order: asked, not shown.
    pub sides: Vec<OperatedSide>,
    /// Today's date.
    pub today: NaiveDate,
}

/// What came of taking a plan in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TakenIn {
    /// It was in force already.
    pub same_again: bool,
    /// Lifts in it that were ignored.
    pub lifts_ignored: Vec<PrecautionId>,
}

impl Bedside {
    /// Verifies a file. Nothing is changed.
    pub fn offer(&self, bytes: &[u8], code: Option<&str>, now: &Now) -> Result<Offer, BedsideError> {
        let held = self.held()?;
        let today = date_in(self.device(), now.at);
        let received = receive(bytes, code, held.as_ref(), today)?;
        let first = held.as_ref().is_none_or(|held| held.clinic_key != received.clinic_key);
        let mut statements: Vec<_> = held.map_or_else(Vec::new, |held| held.statements);
        for (accepted, _) in &received.statements {
            if !statements.iter().any(|known| known.digest == accepted.digest) {
                statements.push(accepted.clone());
            }
        }
        let standing = Standing::of(&received.signers.judge(statements));
        Ok(Offer { received, first, standing })
    }

    /// Takes an offered plan in, in one transaction. A first plan needs the patient's confirmation.
    pub fn take_in(
        &mut self,
        offer: &Offer,
        confirmation: Option<&Confirmation>,
        now: &Now,
    ) -> Result<TakenIn, BedsideError> {
        if offer.first {
            let said = confirmation.ok_or(BedsideError::SideDiffers)?;
            let sides: Vec<_> = offer.plan().doc().episodes.iter().map(|e| e.side).collect();
            if said.sides != sides {
                return Err(BedsideError::SideDiffers);
            }
            if said.today != date_in(self.device(), now.at) {
                return Err(BedsideError::DateDiffers);
            }
        }
        let received = &offer.received;
        let lifts_ignored = ignored_in(offer);
        let stamp = now.stamp(self.device().offset_s(now.at));
        let head = received.plan.head();
        let event = Body::PlanReceived {
            person: head.person.clone(),
            plan: head.plan.clone(),
            revision: head.revision,
            digest: received.plan_part.digest,
            signers: received.signers.number,
            lifts_ignored: lifts_ignored.clone(),
        };
        let stepped = self.stepped_by(offer, now)?;
        self.store_mut().write(|w| {
            w.pin(&Pin { clinic_key: received.clinic_key, person: head.person.clone() })?;
            w.signers(&signers::Row {
                digest: received.signers_part.digest,
                clinic_key: received.clinic_key,
                number: received.signers.number,
                part: received.signers_part.text.clone(),
            })?;
            for (accepted, part) in &received.statements {
                w.statement(&statements::Row { accepted: accepted.clone(), part: part.text.clone() })?;
            }
            w.plan(&plans::Row {
                digest: received.plan_part.digest,
                plan: received.plan.clone(),
                part: received.plan_part.text.clone(),
            })?;
            if !received.same_again {
                w.append(stamp.clone(), By::Patient, event)?;
                for body in stepped {
                    w.append(stamp.clone(), By::Program, body)?;
                }
            }
            Ok::<_, StoreError>(())
        })?;
        Ok(TakenIn { same_again: received.same_again, lifts_ignored })
    }

    /// Doses that begin at their start, because the new plan has other lists of them.
    fn stepped_by(&self, offer: &Offer, now: &Now) -> Result<Vec<Body>, BedsideError> {
        let Some(known) = self.known_if_any()? else { return Ok(Vec::new()) };
        let day = known.today(now.at).session_day;
        let changes = in_new_plan(&known.plan, offer.plan(), &known.state.history, day);
        Ok(changes.into_iter().map(Body::from).collect())
    }
}

/// The lifts of this very file that have no effect.
fn ignored_in(offer: &Offer) -> Vec<PrecautionId> {
    let statements = offer.received.statements.iter().map(|(accepted, _)| accepted);
    let lifts = statements.filter(|s| !s.may_lift).flat_map(|s| &s.doc.lifts);
    lifts.map(|lift| lift.precaution.clone()).collect()
}
