//! Time-zone rules behind core's [`Zone`]: the bundled copy of the IANA database, which is newer
//! than many systems'. Dates and times elsewhere are chrono's; jiff stays behind this wall.

use chrono::{DateTime, Utc};
use jiff::Timestamp;
use jiff::tz::{TimeZone, TimeZoneDatabase};
use sendaluna_core::calendar::Zone;

/// A zone of the IANA database, or the system's.
#[derive(Debug, Clone)]
pub struct IanaZone(TimeZone);

impl IanaZone {
    /// A zone by its name, such as `Europe/Berlin`; `None` if there is no such zone.
    pub fn named(name: &str) -> Option<Self> {
        TimeZoneDatabase::bundled().get(name).ok().map(Self)
    }

    /// The device's zone: by name from the bundled rules where the system says its name, else by the
    /// system's own rules, else UTC.
    pub fn of_device() -> Self {
        let system = TimeZone::system();
        system.iana_name().and_then(Self::named).unwrap_or(Self(system))
    }

    /// The place on earth where a date comes last, UTC-12: for a clinic whose zone this program does
    /// not know, because judging by it opens nothing early.
    pub fn last_on_earth() -> Self {
        Self(TimeZone::fixed(jiff::tz::offset(-12)))
    }
}

impl Zone for IanaZone {
    fn offset_s(&self, at: DateTime<Utc>) -> i32 {
        Timestamp::from_second(at.timestamp()).map_or(0, |at| self.0.to_offset(at).seconds())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use sendaluna_core::calendar::{Today, date_in};

    fn at(text: &str) -> DateTime<Utc> {
        text.parse().expect("a moment")
    }

    #[test]
    fn the_database_is_as_new_as_the_check_values() {
        // Offsets that changed in the IANA database by release 2026f; release 2025b gives others.
        let offset_h =
            |zone: &str, moment: &str| IanaZone::named(zone).expect("a zone").offset_s(at(moment)) / 3600;
        assert_eq!(offset_h("America/Vancouver", "2026-11-24T15:00:00Z"), -7);
        assert_eq!(offset_h("Africa/Casablanca", "2027-02-07T02:30:00Z"), 0);
        assert_eq!(offset_h("America/Havana", "2026-11-01T04:30:00Z"), -4);
        assert!(IanaZone::named("Mars/Olympus").is_none());
    }

    #[test]
    fn travel_never_opens_a_gate_early() {
        // Kiritimati is UTC+14, New York in summer UTC-4: while it is already 25 May there, it is
        // 24 May here.
        let kiritimati = IanaZone::named("Pacific/Kiritimati").expect("a zone");
        let new_york = IanaZone::named("America/New_York").expect("a zone");
        let day = |d| NaiveDate::from_ymd_opt(2026, 5, d).expect("a date");
        let early = Today::new(at("2026-05-24T20:00:00Z"), &kiritimati, &new_york);
        assert_eq!((early.session_day, early.gate_day), (day(25), day(24)));
        let other_way = Today::new(at("2026-05-24T20:00:00Z"), &new_york, &kiritimati);
        assert_eq!((other_way.session_day, other_way.gate_day), (day(24), day(24)));
        let later = Today::new(at("2026-05-25T04:00:00Z"), &kiritimati, &new_york);
        assert_eq!((later.session_day, later.gate_day), (day(25), day(25)));
        assert_eq!(date_in(&IanaZone::last_on_earth(), at("2026-05-25T11:59:59Z")), day(24));
    }
}
