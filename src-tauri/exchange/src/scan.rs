//! A look over JSON before it is read: how deep, any member twice, any integer that not every
//! reader keeps exactly.

use std::cell::Cell;
use std::collections::BTreeSet;
use std::fmt;

use serde::de::{DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};

/// How deep a document may be nested.
pub const DEPTH_LIMIT: u8 = 16;

/// The greatest integer that every JSON reader keeps exactly (RFC 8259 §6).
const GREATEST_SAFE: u64 = (1 << 53) - 1;

/// What a look over JSON can find.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Found {
    /// It is not JSON.
    NotJson,
    /// Nested deeper than [`DEPTH_LIMIT`].
    TooDeep,
    /// A member comes twice.
    Duplicate,
    /// An integer beyond 2^53 - 1.
    Unsafe,
}

/// Looks over JSON.
pub fn scan(bytes: &[u8]) -> Result<(), Found> {
    let found = Cell::new(Found::NotJson);
    let mut reader = serde_json::Deserializer::from_slice(bytes);
    Look { found: &found, depth: 0 }.deserialize(&mut reader).map_err(|_| found.get())?;
    reader.end().map_err(|_| Found::NotJson)
}

#[derive(Clone, Copy)]
struct Look<'a> {
    found: &'a Cell<Found>,
    depth: u8,
}

impl Look<'_> {
    fn stop<E: serde::de::Error>(self, found: Found) -> E {
        self.found.set(found);
        E::custom("stopped")
    }

    fn deeper<E: serde::de::Error>(self) -> Result<Self, E> {
        if self.depth >= DEPTH_LIMIT {
            return Err(self.stop(Found::TooDeep));
        }
        Ok(Self { depth: self.depth + 1, ..self })
    }
}

impl<'de> DeserializeSeed<'de> for Look<'_> {
    type Value = ();
    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Look<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }
    fn visit_bool<E>(self, _: bool) -> Result<(), E> {
        Ok(())
    }
    fn visit_i64<E: serde::de::Error>(self, n: i64) -> Result<(), E> {
        if n.unsigned_abs() > GREATEST_SAFE { Err(self.stop(Found::Unsafe)) } else { Ok(()) }
    }
    fn visit_u64<E: serde::de::Error>(self, n: u64) -> Result<(), E> {
        if n > GREATEST_SAFE { Err(self.stop(Found::Unsafe)) } else { Ok(()) }
    }
    fn visit_f64<E>(self, _: f64) -> Result<(), E> {
        Ok(())
    }
    fn visit_str<E>(self, _: &str) -> Result<(), E> {
        Ok(())
    }
    fn visit_unit<E>(self) -> Result<(), E> {
        Ok(())
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<(), A::Error> {
        let inner = self.deeper()?;
        while seq.next_element_seed(inner)?.is_some() {}
        Ok(())
    }
    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        let inner = self.deeper()?;
        let mut names = BTreeSet::new();
        while let Some(name) = map.next_key::<String>()? {
            if !names.insert(name) {
                return Err(self.stop(Found::Duplicate));
            }
            map.next_value_seed(inner)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_what_it_looks_for() {
        assert_eq!(scan(br#"{"a":[1,-2.5,null,true,"x"],"b":{"a":1}}"#), Ok(()));
        assert_eq!(scan(br#"{"a":1,"b":[{"c":1,"c":1}]}"#), Err(Found::Duplicate));
        assert_eq!(scan(br#"{"a":1,"\u0061":1}"#), Err(Found::Duplicate));
        assert_eq!(scan(b"9007199254740991"), Ok(()));
        assert_eq!(scan(b"9007199254740992"), Err(Found::Unsafe));
        assert_eq!(scan(b"-9007199254740992"), Err(Found::Unsafe));
        assert_eq!(scan(b"{\"a\":1} x"), Err(Found::NotJson));
        assert_eq!(scan(b"{\"a\":"), Err(Found::NotJson));
        assert_eq!(scan(b"\xff"), Err(Found::NotJson));
    }

    #[test]
    fn depth_is_limited_without_exhausting_the_stack() {
        let nested = |n: usize| [b"[".repeat(n), b"]".repeat(n)].concat();
        assert_eq!(scan(&nested(DEPTH_LIMIT.into())), Ok(()));
        assert_eq!(scan(&nested(usize::from(DEPTH_LIMIT) + 1)), Err(Found::TooDeep));
        assert_eq!(scan(&b"[".repeat(1_000_000)), Err(Found::TooDeep));
    }
}
