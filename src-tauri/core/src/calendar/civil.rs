//! What instant is a time on the wall?

use chrono::{DateTime, NaiveDateTime, Utc};

/// The rules of a time zone, known elsewhere.
pub trait Zone {
    /// Seconds east of UTC at an instant.
    fn offset_s(&self, at: DateTime<Utc>) -> i32;

    /// What a time on the wall is.
    fn civil(&self, local: NaiveDateTime) -> Civil;
}

/// A time on the wall of a zone, as the instants it may mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Civil {
    /// It comes once.
    Once(DateTime<Utc>),
    /// It does not exist: clocks are put forward over it.
    Skipped {
        /// Taken by the offset before the gap.
        by_offset_before: DateTime<Utc>,
        /// Taken by the offset after the gap.
        by_offset_after: DateTime<Utc>,
    },
    /// It comes twice: clocks are put back over it.
    Twice {
        /// The first.
        first: DateTime<Utc>,
        /// The second.
        second: DateTime<Utc>,
    },
}

impl Civil {
    /// The one instant it is taken for. A time that does not exist is taken by the offset before the
    /// gap; of a time that comes twice, the first counts (RFC 5545, section 3.3.5).
    pub fn by_rfc_5545(self) -> DateTime<Utc> {
        match self {
            Self::Once(at) | Self::Skipped { by_offset_before: at, .. } | Self::Twice { first: at, .. } => at,
        }
    }
}
