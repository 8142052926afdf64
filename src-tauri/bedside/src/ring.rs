//! Ringing a number of the plan's.

use serde::Deserialize;

use crate::error::BedsideError;
use crate::home::Bedside;

/// Whom to ring.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Whom {
    /// The clinic, in working hours.
    Clinic,
    /// The clinic, out of hours.
    Night,
    /// The emergency number.
    Emergency,
}

impl Bedside {
    /// A number of the plan's as an address to ring (RFC 3966).
    pub fn dial(&self, whom: Whom) -> Result<String, BedsideError> {
        let known = self.known()?;
        let clinic = &known.plan.doc().clinic;
        Ok(address(match whom {
            Whom::Clinic => &clinic.phone,
            Whom::Night => &clinic.out_of_hours_phone,
            Whom::Emergency => &clinic.emergency_phone,
        }))
    }
}

/// The digits that are dialled: what stands after a word is an extension, and a nought in brackets
/// after a country's code is not dialled from abroad.
fn address(number: &str) -> String {
    let from_abroad = number.trim_start().starts_with('+');
    let dialled = if from_abroad { number.replace("(0)", "") } else { number.to_string() };
    let dialled = dialled.split(|c: char| c.is_alphabetic() || matches!(c, ',' | ';' | '/' | '#')).next();
    let digits: String = dialled.unwrap_or_default().chars().filter(char::is_ascii_digit).collect();
    format!("tel:{}{digits}", if from_abroad { "+" } else { "" })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_dialled_as_people_mean_them() {
        for (written, dialled) in [
            ("112", "tel:112"),
            ("555-0100", "tel:5550100"),
            ("+353 1 555 0100", "tel:+35315550100"),
            ("+44 (0)20 5550 0100", "tel:+442055500100"),
            ("(01) 555 0100", "tel:015550100"),
            ("555-0100 ext. 4", "tel:5550100"),
            ("555-0100 / 555-0101", "tel:5550100"),
        ] {
            assert_eq!(address(written), dialled);
        }
    }
}
