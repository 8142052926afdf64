//! A plan file as texts for several small QR codes, on paper. Never the letter code: a code beside the
//! file that it is to vouch for would vouch for nothing.
//!
//! Each text is `SENDALUNA1:ID:N:M:DATA`, in the alphanumeric characters of QR (ISO/IEC 18004): `ID` the
//! first 80 bits of the file's SHA-256 in 20 hexadecimal digits, `N` which of `M`, `DATA` a piece of the
//! packed file in Base45 (RFC 9285). Packed is: the parts' segments, each with its length in four bytes,
//! little-endian, out of base64url, under Brotli (RFC 7932).

use std::io::{Read, Write};

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use sendaluna_core::digest::Digest;

use crate::file::{PlanFile, SIZE_LIMIT};
use crate::refusal::Refusal;

const HEAD: &str = "SENDALUNA1";
/// Bytes of a piece. With its head it fits 970 characters: QR version 20, error correction M
/// (ISO/IEC 18004:2015, table 7), which a telephone reads from a hand-held page.
const PIECE: usize = 610;
/// Pieces at most: what two pages hold.
const MOST: usize = 24;
/// Bits of the digest that tell one file from another.
const ID_BYTES: usize = 10;
const BASE45: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// Why codes cannot be put together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CodesFault {
    /// A text is none of ours.
    NotOurs,
    /// They are of several files.
    Mixed,
    /// Some are missing: so many are there, of so many.
    Missing {
        /// How many are there.
        have: usize,
        /// How many there must be.
        of: usize,
    },
    /// What comes out is not the file that went in.
    Damaged,
}

/// The texts of a file; `None` if it takes more codes than a letter holds.
pub fn split(file: &[u8]) -> Result<Option<Vec<String>>, Refusal> {
    let packed = pack(&PlanFile::read(file)?).ok_or(Refusal::Altered)?;
    // All about as large, so that all are about as easy to read.
    let each = packed.len().div_ceil(packed.len().div_ceil(PIECE).max(1)).max(1);
    let pieces: Vec<&[u8]> = packed.chunks(each).collect();
    let id = id(file);
    let text =
        |(n, piece): (usize, &&[u8])| format!("{HEAD}:{id}:{}:{}:{}", n + 1, pieces.len(), to_base45(piece));
    Ok((pieces.len() <= MOST).then(|| pieces.iter().enumerate().map(text).collect()))
}

/// The file of these texts, in any order, each as often as it likes.
pub fn join(texts: &[String]) -> Result<Vec<u8>, CodesFault> {
    let mut pieces: Vec<Piece> = texts.iter().map(|text| Piece::read(text)).collect::<Result<_, _>>()?;
    let first = pieces.first().ok_or(CodesFault::NotOurs)?;
    let (id, of) = (first.id.clone(), first.of);
    if pieces.iter().any(|piece| piece.id != id || piece.of != of) {
        return Err(CodesFault::Mixed);
    }
    pieces.sort_by_key(|piece| piece.n);
    pieces.dedup_by_key(|piece| piece.n);
    if pieces.len() != of {
        return Err(CodesFault::Missing { have: pieces.len(), of });
    }
    let packed: Vec<u8> = pieces.into_iter().flat_map(|piece| piece.bytes).collect();
    let bytes = unpack(&packed).ok_or(CodesFault::Damaged)?;
    if self::id(&bytes) == id { Ok(bytes) } else { Err(CodesFault::Damaged) }
}

struct Piece {
    id: String,
    n: usize,
    of: usize,
    bytes: Vec<u8>,
}

impl Piece {
    fn read(text: &str) -> Result<Self, CodesFault> {
        let mut fields = text.splitn(5, ':');
        let mut next = || fields.next().ok_or(CodesFault::NotOurs);
        if next()? != HEAD {
            return Err(CodesFault::NotOurs);
        }
        let id = next()?.to_string();
        let number = |text: &str| text.parse::<usize>().map_err(|_| CodesFault::NotOurs);
        let (n, of) = (number(next()?)?, number(next()?)?);
        if !(1..=MOST).contains(&of) || !(1..=of).contains(&n) {
            return Err(CodesFault::NotOurs);
        }
        let bytes = from_base45(next()?).ok_or(CodesFault::Damaged)?;
        Ok(Self { id, n, of, bytes })
    }
}

fn id(file: &[u8]) -> String {
    let number =
        Digest::of(file).bytes()[..ID_BYTES].iter().fold(0u128, |n, byte| n << 8 | u128::from(*byte));
    format!("{number:020X}")
}

fn pack(file: &PlanFile) -> Option<Vec<u8>> {
    let mut plain = Vec::new();
    let parts = [&file.signers].into_iter().chain(&file.precautions).chain([&file.plan]);
    for part in parts {
        let segments: Vec<&str> = part.split('.').collect();
        if segments.len() != 3 {
            return None;
        }
        for segment in segments {
            let bytes = URL_SAFE_NO_PAD.decode(segment).ok()?;
            plain.extend(u32::try_from(bytes.len()).ok()?.to_le_bytes());
            plain.extend(bytes);
        }
    }
    let mut packed = Vec::new();
    let mut writer = brotli::CompressorWriter::new(&mut packed, 4096, 11, 22);
    writer.write_all(&plain).ok()?;
    drop(writer);
    Some(packed)
}

fn unpack(packed: &[u8]) -> Option<Vec<u8>> {
    let limit = u64::try_from(SIZE_LIMIT).ok()?;
    let mut plain = Vec::new();
    brotli::Decompressor::new(packed, 4096).take(limit).read_to_end(&mut plain).ok()?;
    let mut rest = plain.as_slice();
    let mut segments = Vec::new();
    while !rest.is_empty() {
        let (length, after) = rest.split_at_checked(4)?;
        let length = usize::try_from(u32::from_le_bytes(length.try_into().ok()?)).ok()?;
        let (bytes, after) = after.split_at_checked(length)?;
        segments.push(URL_SAFE_NO_PAD.encode(bytes));
        rest = after;
    }
    let (threes, over) = segments.as_chunks::<3>();
    let mut parts: Vec<String> = threes.iter().map(|three| three.join(".")).collect();
    let last = parts.pop()?;
    if parts.is_empty() || !over.is_empty() {
        return None;
    }
    let signers = parts.remove(0);
    Some(PlanFile::new(signers, parts, last).to_bytes())
}

fn to_base45(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 3 / 2 + 2);
    for pair in bytes.chunks(2) {
        let (mut value, digits) = match pair {
            [high, low] => (u32::from(*high) * 256 + u32::from(*low), 3),
            _ => (u32::from(pair[0]), 2),
        };
        for _ in 0..digits {
            text.push(char::from(BASE45[(value % 45) as usize]));
            value /= 45;
        }
    }
    text
}

fn from_base45(text: &str) -> Option<Vec<u8>> {
    let digit = |c: u8| BASE45.iter().position(|known| *known == c).and_then(|at| u32::try_from(at).ok());
    let digits: Vec<u32> = text.bytes().map(digit).collect::<Option<_>>()?;
    let mut bytes = Vec::with_capacity(digits.len());
    for group in digits.chunks(3) {
        let value = group.iter().rev().fold(0, |value, digit| value * 45 + digit);
        match group.len() {
            3 => bytes.extend(u16::try_from(value).ok()?.to_be_bytes()),
            2 => bytes.push(u8::try_from(value).ok()?),
            _ => return None,
        }
    }
    Some(bytes)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    /// The examples of RFC 9285, sections 4.3 and 4.4.
    #[test]
    fn base45_is_that_of_the_rfc() {
        for (plain, encoded) in
            [("AB", "BB8"), ("Hello!!", "%69 VD92EX0"), ("base-45", "UJCLQE7W581"), ("ietf!", "QED8WEX0")]
        {
            assert_eq!(to_base45(plain.as_bytes()), encoded);
            assert_eq!(from_base45(encoded).as_deref(), Some(plain.as_bytes()));
        }
        for wrong in ["GGW", ":::", "A", "BB8a", "::"] {
            assert_eq!(from_base45(wrong), None, "{wrong}");
        }
    }

    fn file(payload: &[u8]) -> Vec<u8> {
        let part = |bytes: &[u8]| {
            let segment = |bytes: &[u8]| URL_SAFE_NO_PAD.encode(bytes);
            format!("{}.{}.{}", segment(b"{}"), segment(bytes), segment(&[7; 64]))
        };
        PlanFile::new(part(b"signers"), vec![part(b"one"), part(b"two")], part(payload)).to_bytes()
    }

    /// Bytes that do not pack smaller.
    fn noise(length: usize) -> Vec<u8> {
        (0..length).map(|n| Digest::of(&n.to_le_bytes()).bytes()[0]).collect()
    }

    #[test]
    fn what_is_split_is_joined_again_in_any_order() {
        let file = file(&noise(3000));
        let mut texts = split(&file).expect("a file").expect("few codes");
        assert!(texts.len() > 4 && texts.iter().all(|text| text.len() <= 970), "{}", texts.len());
        texts.reverse();
        texts.push(texts[0].clone());
        assert_eq!(join(&texts), Ok(file));
    }

    #[test]
    fn what_is_missing_mixed_or_damaged_is_said() {
        let (one, other) = (file(&noise(3000)), file(&noise(3001)));
        let split = |file: &[u8]| split(file).expect("a file").expect("few codes");
        let texts = split(&one);
        let of = texts.len();
        assert_eq!(join(&texts[1..]), Err(CodesFault::Missing { have: of - 1, of }));
        assert_eq!(join(&[&texts[1..], &split(&other)[..1]].concat()), Err(CodesFault::Mixed));
        assert_eq!(join(&[]), Err(CodesFault::NotOurs));
        assert_eq!(join(&["https://example.org".to_string()]), Err(CodesFault::NotOurs));
        let mut damaged = texts.clone();
        damaged[2] = damaged[2].replace("AB", "BA").replace("01", "10").replace('X', "Y");
        assert_eq!(join(&damaged), Err(CodesFault::Damaged));
    }

    #[test]
    fn a_plan_too_large_for_a_letter_has_no_codes() {
        assert_eq!(split(&file(&noise(MOST * PIECE + 1000))), Ok(None));
    }

    proptest! {
        #[test]
        fn no_text_makes_it_fall(texts in proptest::collection::vec("SENDALUNA1:[A-Z0-9]{4}:[0-9]{1,3}:[0-9]{1,3}:[0-9A-Z $%*+./:-]{0,40}", 0..4)) {
            let _ = join(&texts);
        }

        #[test]
        fn base45_comes_back(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            prop_assert_eq!(from_base45(&to_base45(&bytes)), Some(bytes));
        }
    }
}
