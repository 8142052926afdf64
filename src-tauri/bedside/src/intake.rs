//! A file on its way in: offered, its code asked for if need be, read, confirmed.

use chrono::NaiveDate;
use sendaluna_core::facts::OperatedSide;
use sendaluna_exchange::refusal::Refusal;
use sendaluna_words::Words;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::Bedside;
use crate::receive::{Confirmation, Offer};
use crate::say::problem;
use crate::view::receive::OfferView;
use crate::view::window::WrittenView;

/// A file on its way in. Nothing of it is kept until it is confirmed.
pub struct Intake {
    bytes: Vec<u8>,
    offer: Option<Offer>,
}

impl Intake {
    /// Of a file's bytes.
    pub fn new(bytes: Vec<u8>) -> Self {
        Self { bytes, offer: None }
    }
}

impl Bedside {
    /// Verifies a file that is on its way in, with the code on the letter if it was typed.
    pub fn examine(&self, intake: &mut Intake, code: Option<&str>, words: &Words, now: &Now) -> OfferView {
        match self.offer(&intake.bytes, code, now) {
            Ok(offer) => {
                let summary = Box::new(self.summary(words, &offer, now));
                intake.offer = Some(offer);
                OfferView::Summary { summary }
            }
            Err(BedsideError::Refused(Refusal::CodeNeeded)) => OfferView::Code { problem: None },
            Err(error) => {
                let known = self.known_if_any().ok().flatten();
                let problem = problem(words, known.as_ref(), &error);
                match error {
                    BedsideError::Refused(Refusal::CodeMistyped | Refusal::CodeOtherClinic) => {
                        OfferView::Code { problem: Some(problem) }
                    }
                    _ => OfferView::Refused { problem },
                }
            }
        }
    }

    /// Takes an examined file in, if it is the one that was read. A first plan needs the side of each
    /// episode and today's date.
    pub fn confirm(
        &mut self,
        intake: &Intake,
        digest: &str,
        sides: Vec<OperatedSide>,
        today: Option<NaiveDate>,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        let read = |offer: &&Offer| offer.digest() == digest;
        let offer = intake.offer.as_ref().filter(read).ok_or(BedsideError::NoFile)?;
        let confirmation = today.map(|today| Confirmation { sides, today });
        let taken = self.take_in(offer, confirmation.as_ref(), now)?;
        let id = if taken.same_again { "receive-same-again" } else { "receive-done" };
        let said = words.say(id, &[("revision", offer.plan().head().revision.into())]);
        Ok(WrittenView { said, against: false })
    }
}
