//! The front of the record: what the reminder program reads, and what was pressed there on its way in.

use std::fs::{File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use chrono::{DateTime, Days, Duration, NaiveDate, Utc};
use sendaluna_core::calendar::front::{
    FILE, FOLDER, Front, FrontContacts, FrontDay, FrontDoc, FrontSign, FrontSlot, FrontWords, MOST_BYTES,
    MOST_DAYS, VERSION,
};
use sendaluna_core::calendar::outbox::{self, Drained};
use sendaluna_core::calendar::{Kind, Slot, Zone, reminders};
use sendaluna_core::ids::SignId;
use sendaluna_core::record::{Body, By};
use sendaluna_store::StoreError;
use sendaluna_words::Words;
use sendaluna_zones::IanaZone;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::reminding::Shows;
use crate::view::day::{ContactsView, SignView};

/// The setting that says how far the outbox was drained.
const DRAINED: &str = "outbox";

impl Bedside {
    /// Takes what was pressed on reminders into the record, and writes the front anew. Whoever has changed
    /// something, or opens the record, calls this after it.
    pub fn tend(&mut self, words: &Words, now: &Now) -> Result<(), BedsideError> {
        let folder = self.folder().join(FOLDER);
        make(&folder).map_err(StoreError::from)?;
        self.drain(now)?;
        let Some(known) = self.known_if_any()? else { return Ok(()) };
        let front = self.front(&known, words, now)?;
        replace(&folder, FILE, &front.to_bytes()).map_err(StoreError::from)?;
        Ok(())
    }

    /// What stands in front of a record that cannot be opened; `None` if nothing does.
    pub fn front_of(folder: &Path) -> Option<Front> {
        let mut bytes = Vec::new();
        let most = MOST_BYTES as u64 + 1;
        File::open(folder.join(FOLDER).join(FILE)).ok()?.take(most).read_to_end(&mut bytes).ok()?;
        Front::read(&bytes).ok()
    }

    /// Every whole line of the outbox becomes an event, in one write with how far it was drained; then the
    /// outbox goes. Whoever fails before the write has drained nothing, and after it, everything.
    pub fn drain(&mut self, now: &Now) -> Result<(), BedsideError> {
        let folder = self.folder().join(FOLDER);
        let path = folder.join(outbox::FILE);
        if !path.exists() {
            return Ok(());
        }
        let _lock = lock(&folder.join(outbox::LOCK)).map_err(StoreError::from)?;
        let mut bytes = Vec::new();
        let file = File::open(&path).map_err(StoreError::from)?;
        file.take(outbox::MOST_BYTES as u64).read_to_end(&mut bytes).map_err(StoreError::from)?;
        let drained: Option<Drained> =
            self.store().setting(DRAINED)?.and_then(|json| serde_json::from_str(&json).ok());
        if let Some(waiting) = outbox::waiting(&bytes, drained.as_ref()) {
            let stamp = now.stamp(self.device().offset_s(now.at));
            let then = serde_json::to_string(&waiting.then).unwrap_or_default();
            self.store_mut().write(|w| {
                for line in &waiting.lines {
                    let outbox::Line { at, day, time, answer } = *line;
                    let body = Body::ReminderAnswered { at, day, time, answer };
                    w.append(stamp.clone(), By::Patient, body)?;
                }
                w.setting(DRAINED, &then)
            })?;
        }
        std::fs::remove_file(&path).map_err(StoreError::from)?;
        Ok(())
    }

    fn front(&self, known: &Known, words: &Words, now: &Now) -> Result<Front, BedsideError> {
        let today = known.today(now.at).session_day;
        let through = (today + Days::new(MOST_DAYS as u64 - 1)).min(known.plan.head().last_day);
        let ahead = known.slots_ahead(self, now, through);
        let reminding = &known.settings.reminding;
        let contacts = self.contacts(words)?;
        let doc = FrontDoc {
            version: VERSION,
            made_at: now.at,
            on: reminding.on,
            sound: reminding.sound,
            days: days(known, &ahead, today),
            quiet: known.quiet(),
            heard_on: today,
            answered_until: known.state.active_at.unwrap_or(DateTime::UNIX_EPOCH),
            words: front_words(words, reminding.shows),
            contacts: front_contacts(contacts),
        };
        Front::new(doc).map_err(|fault| StoreError::Other(format!("{fault:?}")).into())
    }
}

/// Days with their times; none today while the clinic is to be rung first, and none on a day that was
/// declined.
fn days(known: &Known, ahead: &[Slot], today: NaiveDate) -> Vec<FrontDay> {
    let is_free = |day: NaiveDate| {
        known.state.not_today.contains_key(&day) || (day == today && known.state.must_ring.is_some())
    };
    let of_one_day = |slots: &[Slot]| FrontDay {
        day: slots[0].day,
        slots: slots.iter().map(|slot| FrontSlot { time: slot.time, chosen: slot.chosen }).collect(),
    };
    ahead
        .chunk_by(|one, next| one.day == next.day)
        .filter(|slots| !is_free(slots[0].day))
        .map(of_one_day)
        .collect()
}

fn front_contacts(contacts: ContactsView) -> FrontContacts {
    let sign = |sign: SignView| FrontSign { sign: sign.sign.to_string(), tier: sign.tier, text: sign.text };
    FrontContacts {
        clinic: contacts.clinic,
        phone: contacts.phone,
        out_of_hours_phone: contacts.out_of_hours_phone,
        emergency_phone: contacts.emergency_phone,
        emergency_advice: contacts.emergency_advice,
        signs: contacts.signs.into_iter().map(sign).collect(),
        cautions: contacts.cautions,
    }
}

/// Whom to ring, and when to stop, as it stands in front of a record that cannot be opened; `None` if
/// nothing does.
pub fn contacts_of(folder: &Path) -> Option<ContactsView> {
    let contacts = Bedside::front_of(folder)?.doc().contacts.clone();
    let sign = |sign: FrontSign| {
        Some(SignView { sign: SignId::new(sign.sign).ok()?, tier: sign.tier, text: sign.text })
    };
    Some(ContactsView {
        clinic: contacts.clinic,
        phone: contacts.phone,
        out_of_hours_phone: contacts.out_of_hours_phone,
        emergency_phone: contacts.emergency_phone,
        emergency_advice: contacts.emergency_advice,
        signs: contacts.signs.into_iter().filter_map(sign).collect(),
        cautions: contacts.cautions,
    })
}

fn front_words(words: &Words, shows: Shows) -> FrontWords {
    let say = |id: &str| words.say(id, &[]);
    let (now, late) = match shows {
        Shows::Little => ("reminder-now", "reminder-late"),
        Shows::Exercises => ("reminder-now-exercises", "reminder-late-exercises"),
    };
    FrontWords {
        lang: words.lang().to_string(),
        title: say("reminder-title"),
        now: say(now),
        late: say(late),
        after_silence: say("reminder-after-silence"),
        start: say("reminder-start"),
        in_30_minutes: say("reminder-in-30-minutes"),
        not_today: say("reminder-not-today"),
    }
}

/// The next reminders of a front, as a system is handed them that shows them by itself: so many at most.
pub fn next_notices(
    front: &Front,
    now: DateTime<Utc>,
    zone: &IanaZone,
    most: usize,
) -> Vec<(DateTime<Utc>, Kind)> {
    let ahead = now + Duration::days(i64::try_from(MOST_DAYS).unwrap_or(i64::MAX) + 2);
    let answered = front.doc().answered_until;
    let next = reminders(front, now, ahead, zone).into_iter().filter(|reminder| reminder.at > answered);
    // Two slots that fall on one instant, where a day was skipped, are one notice.
    let mut next: Vec<_> = next.map(|reminder| (reminder.at, reminder.kind)).collect();
    next.dedup_by_key(|(at, _)| *at);
    next.truncate(most);
    next
}

fn make(folder: &Path) -> io::Result<()> {
    let mut builder = std::fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(folder)
}

fn lock(path: &PathBuf) -> io::Result<File> {
    let file = OpenOptions::new().write(true).create(true).truncate(false).open(path)?;
    file.lock()?;
    Ok(file)
}

/// Writes the whole of a file, or leaves what was there.
fn replace(folder: &Path, name: &str, bytes: &[u8]) -> io::Result<()> {
    let mut file = tempfile::NamedTempFile::new_in(folder)?;
    file.write_all(bytes)?;
    file.as_file().sync_all()?;
    file.persist(folder.join(name)).map_err(|error| error.error)?;
    Ok(())
}
