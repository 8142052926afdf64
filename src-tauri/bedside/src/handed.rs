//! Files that are handed over: a plan file as it is, or the pictures of a letter that hold one.

use sendaluna_exchange::codes::{CodesFault, join};
use sendaluna_exchange::pictures::{is_picture, texts_in};

use crate::error::BedsideError;

/// What of a letter's pictures was handed over so far.
#[derive(Debug, Default)]
pub struct Handed {
    texts: Vec<String>,
}

impl Handed {
    /// The plan file that these bytes are, or complete. Pictures are kept until the rest has come, in any
    /// order; what is no picture starts anew.
    pub fn take(&mut self, bytes: Vec<u8>) -> Result<Vec<u8>, BedsideError> {
        if !is_picture(&bytes) {
            self.texts.clear();
            return Ok(bytes);
        }
        let found = texts_in(&bytes);
        if found.is_empty() {
            return Err(BedsideError::NoCodes);
        }
        let fresh = found.clone();
        self.texts.extend(found);
        match join(&self.texts) {
            Ok(file) => {
                self.texts.clear();
                Ok(file)
            }
            Err(CodesFault::Missing { have, of }) => Err(BedsideError::CodesMissing { have, of }),
            // The latest picture is of the letter at hand; what came before was of another.
            Err(CodesFault::Mixed) => {
                self.texts = fresh;
                Err(BedsideError::CodesMixed)
            }
            Err(CodesFault::NotOurs) => {
                self.texts.clear();
                Err(BedsideError::NoCodes)
            }
            Err(CodesFault::Damaged) => {
                self.texts.clear();
                Err(BedsideError::CodesDamaged)
            }
        }
    }
}
