//! The letter code: 12 characters on the appointment letter that tell this clinic's key from any
//! other. It is typed, never scanned.
//!
//! Eleven characters are the first 55 bits of Argon2id (RFC 9106) over the clinic key's thumbprint;
//! the twelfth is a check that finds every single mistyped character and every swap of two.

use std::fmt;

use argon2::{Algorithm, Argon2, Params, Version};
use sendaluna_core::digest::Digest;

use crate::refusal::Refusal;

/// Crockford's base32.
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const SALT: &[u8] = b"sendaluna-letter-1";
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;
const LANES: u32 = 1;
const LENGTH: usize = 12;

/// A letter code that is right in itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LetterCode([u8; LENGTH]);

impl LetterCode {
    /// The code of a clinic key. Takes 64 MiB and a moment, on purpose.
    pub fn of(clinic_key: Digest) -> Self {
        let params = Params::new(MEMORY_KIB, PASSES, LANES, Some(32)).expect("within Argon2's bounds");
        let mut hash = [0u8; 32];
        Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
            .hash_password_into(clinic_key.to_string().as_bytes(), SALT, &mut hash)
            .expect("lengths are within Argon2's bounds");
        let bits = u64::from_be_bytes(hash[..8].try_into().expect("eight bytes")) >> (64 - 55);
        let mut symbols = [0u8; LENGTH];
        for (i, symbol) in symbols[..LENGTH - 1].iter_mut().enumerate() {
            *symbol = u8::try_from((bits >> (5 * (LENGTH - 2 - i))) & 31).expect("five bits");
        }
        symbols[LENGTH - 1] = check_symbol(&symbols[..LENGTH - 1]);
        Self(symbols)
    }

    /// Reads what was typed. Case, spaces and hyphens do not matter; O is 0, I and L are 1.
    pub fn parse(typed: &str) -> Result<Self, Refusal> {
        let symbol = |c: char| match c.to_ascii_uppercase() {
            'O' => Some(0),
            'I' | 'L' => Some(1),
            c => ALPHABET.iter().position(|a| char::from(*a) == c).and_then(|i| u8::try_from(i).ok()),
        };
        let kept = typed.chars().filter(|c| !c.is_whitespace() && !matches!(c, '-' | '–' | '—' | '\u{2011}'));
        let symbols: Option<Vec<u8>> = kept.map(symbol).collect();
        let symbols: [u8; LENGTH] = symbols.and_then(|s| s.try_into().ok()).ok_or(Refusal::CodeMistyped)?;
        if check_symbol(&symbols[..LENGTH - 1]) == symbols[LENGTH - 1] {
            Ok(Self(symbols))
        } else {
            Err(Refusal::CodeMistyped)
        }
    }
}

impl fmt::Display for LetterCode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, symbol) in self.0.iter().enumerate() {
            if i > 0 && i % 4 == 0 {
                f.write_str("-")?;
            }
            write!(f, "{}", char::from(ALPHABET[usize::from(*symbol)]))?;
        }
        Ok(())
    }
}

/// The symbols as a polynomial over GF(32), evaluated at a primitive element: each place has its own
/// weight, so one wrong symbol or two swapped ones always show.
fn check_symbol(symbols: &[u8]) -> u8 {
    symbols.iter().fold(0, |sum, symbol| times_x(sum ^ symbol))
}

/// Times x in GF(2)[x] / (x^5 + x^2 + 1).
fn times_x(a: u8) -> u8 {
    let doubled = a << 1;
    if doubled & 0b10_0000 == 0 { doubled } else { doubled ^ 0b10_0101 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn any_code() -> impl Strategy<Value = LetterCode> {
        proptest::array::uniform11(0u8..32).prop_map(|symbols| {
            let mut code = [0; LENGTH];
            code[..LENGTH - 1].copy_from_slice(&symbols);
            code[LENGTH - 1] = check_symbol(&symbols);
            LetterCode(code)
        })
    }

    #[test]
    fn the_code_of_a_known_key() {
        // Thumbprint of RFC 8037 A.3. The code was computed with PyPI argon2-cffi 25.1 from the
        // description above; `tests/outside` does so again.
        let key = Digest::parse("kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k").expect("RFC 8037 A.3");
        assert_eq!(LetterCode::of(key).to_string(), "M451-3Z0Y-WZPB");
    }

    proptest! {
        #[test]
        fn typed_carelessly_it_is_still_read(code in any_code()) {
            let written = code.to_string();
            prop_assert_eq!(LetterCode::parse(&written), Ok(code));
            let careless = written.to_lowercase().replace('0', "o").replace('1', "l").replace('-', " ");
            prop_assert_eq!(LetterCode::parse(&careless), Ok(code));
        }

        #[test]
        fn one_wrong_character_is_always_found(code in any_code(), place in 0usize..12, by in 1u8..32) {
            let mut wrong = code;
            wrong.0[place] ^= by;
            prop_assert_eq!(LetterCode::parse(&wrong.to_string()), Err(Refusal::CodeMistyped));
        }

        #[test]
        fn two_swapped_characters_are_always_found(code in any_code(), a in 0usize..12, b in 0usize..12) {
            let mut swapped = code;
            swapped.0.swap(a, b);
            let read = LetterCode::parse(&swapped.to_string());
            prop_assert_eq!(read, if swapped == code { Ok(code) } else { Err(Refusal::CodeMistyped) });
        }
    }

    #[test]
    fn what_is_no_code_is_mistyped() {
        for typed in ["", "ABCD-EFGH", "ABCD-EFGH-JKMNP", "UUUU-UUUU-UUUU", "ABCD-EFGH-JKM!"] {
            assert_eq!(LetterCode::parse(typed), Err(Refusal::CodeMistyped), "{typed}");
        }
    }
}
