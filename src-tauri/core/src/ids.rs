//! Identifiers. One generic type, one marker per thing that is named, so that an item's id can
//! never be passed where a precaution's is meant.

use std::fmt;
use std::marker::PhantomData;

use serde::{Deserialize, Serialize};

/// An identifier: 1 to 64 of `a-z`, `0-9`, `-` and `.`, beginning with a letter or digit.
/// Ids are stable across revisions of a plan.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String", bound = "K: Clone")]
pub struct Id<K> {
    text: String,
    kind: PhantomData<K>,
}

/// Why a text is not an [`Id`].
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotAnId(String);

impl fmt::Display for NotAnId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?} is not an id: 1 to 64 of a-z, 0-9, '-' and '.', first a letter or digit", self.0)
    }
}

impl std::error::Error for NotAnId {}

impl<K> Id<K> {
    /// Parses an id.
    pub fn new(text: impl Into<String>) -> Result<Self, NotAnId> {
        let text = text.into();
        let mut bytes = text.bytes();
        let starts = bytes.next().is_some_and(|b| b.is_ascii_lowercase() || b.is_ascii_digit());
        let goes_on = bytes.all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-' || b == b'.');
        if starts && goes_on && text.len() <= 64 {
            Ok(Self { text, kind: PhantomData })
        } else {
            Err(NotAnId(text))
        }
    }

    /// The id as written.
    pub fn as_str(&self) -> &str {
        &self.text
    }
}

impl<K> TryFrom<String> for Id<K> {
    type Error = NotAnId;
    fn try_from(text: String) -> Result<Self, NotAnId> {
        Self::new(text)
    }
}

impl<K> From<Id<K>> for String {
    fn from(id: Id<K>) -> String {
        id.text
    }
}

impl<K> fmt::Display for Id<K> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.text)
    }
}

impl<K> fmt::Debug for Id<K> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?}", self.text)
    }
}

#[cfg(feature = "schema")]
impl<K> schemars::JsonSchema for Id<K> {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Id".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "pattern": "^[a-z0-9][a-z0-9.-]{0,63}$" })
    }
}

/// What an [`Id`] can name.
pub mod kind {
    /// A patient, by a random id that the clinic gives once.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Person {}
    /// A plan through all its revisions.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Plan {}
    /// An operation or injury and what follows from it.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Episode {}
    /// A span of weeks with its items.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Stage {}
    /// One dosed exercise of a plan.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Item {}
    /// Something done or not done, without a figure: ice, stockings, a walk.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Care {}
    /// A warning sign of a plan.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Sign {}
    /// A home test of a plan.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Test {}
    /// A precaution.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Precaution {}
    /// A movement of the library or the clinic's own.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Movement {}
    /// A family of movements that a precaution can name whole.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Family {}
    /// A person who signs.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Signer {}
    /// One session of exercises.
    #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
    pub enum Session {}
}

/// See [`kind::Person`].
pub type PersonId = Id<kind::Person>;
/// See [`kind::Plan`].
pub type PlanId = Id<kind::Plan>;
/// See [`kind::Episode`].
pub type EpisodeId = Id<kind::Episode>;
/// See [`kind::Stage`].
pub type StageId = Id<kind::Stage>;
/// See [`kind::Item`].
pub type ItemId = Id<kind::Item>;
/// See [`kind::Care`].
pub type CareId = Id<kind::Care>;
/// See [`kind::Sign`].
pub type SignId = Id<kind::Sign>;
/// See [`kind::Test`].
pub type TestId = Id<kind::Test>;
/// See [`kind::Precaution`].
pub type PrecautionId = Id<kind::Precaution>;
/// See [`kind::Movement`].
pub type MovementId = Id<kind::Movement>;
/// See [`kind::Family`].
pub type FamilyId = Id<kind::Family>;
/// See [`kind::Signer`].
pub type SignerId = Id<kind::Signer>;
/// See [`kind::Session`].
pub type SessionId = Id<kind::Session>;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_id_is_short_lower_case_and_plain() {
        for good in ["a", "straight-leg-raise", "9", "heel-slide.strap", &"x".repeat(64)] {
            assert!(ItemId::new(good).is_ok(), "{good}");
        }
        for bad in ["", "A", "-a", ".a", "a b", "a/b", "ä", &"x".repeat(65)] {
            assert!(ItemId::new(bad).is_err(), "{bad}");
        }
    }
}
