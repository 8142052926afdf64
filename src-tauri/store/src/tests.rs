use super::*;
use rusqlite::Connection;
use sendaluna_core::record::{Body, By, Stamp};
use std::path::Path;
use tempfile::TempDir;

const KEYS: KeyringOrFile = KeyringOrFile { file_only: true };

fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder")
}

fn stamp() -> Stamp {
    Stamp { at: "2026-03-05T10:00:00Z".parse().expect("a moment"), offset_s: 0, boot: "b".into(), mono_ms: 1 }
}

fn add_event(store: &mut Store) -> Result<(), StoreError> {
    let body = Body::SignsAnswered { signs: vec![], gravest: None };
    store.write(|w| w.append(stamp(), By::Patient, body)).map(|_| ())
}

/// The database itself, as somebody with the key could open it.
fn raw(folder: &Path) -> Connection {
    let db = Connection::open(folder.join("record.sqlite")).expect("opens");
    let key = KEYS.existing(folder).expect("the key");
    db.pragma_update(None, "key", key.pragma().as_str()).expect("keyed");
    db
}

#[test]
fn what_is_written_is_there_again_and_nobody_reads_it_without_the_key() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    store.write(|w| w.setting("language", "\"es\"")).expect("writes");
    drop(store);
    let store = Store::open(dir.path(), &KEYS).expect("opens again");
    assert_eq!(store.events().expect("whole").len(), 1);
    assert_eq!(store.setting("language").expect("reads").as_deref(), Some("\"es\""));
    drop(store);
    for file in ["record.sqlite", "record.sqlite-wal"] {
        let bytes = std::fs::read(dir.path().join(file)).unwrap_or_default();
        assert!(!bytes.starts_with(b"SQLite format 3"), "{file} is not encrypted");
        assert!(!bytes.windows(8).any(|run| run == b"language"), "{file} is not encrypted");
    }
}

#[cfg(unix)]
#[test]
fn the_key_file_is_its_owners_alone() {
    use std::os::unix::fs::PermissionsExt;
    let dir = folder();
    drop(Store::open(dir.path(), &KEYS).expect("opens"));
    let mode = std::fs::metadata(dir.path().join("record.key")).expect("there").permissions().mode();
    assert_eq!(mode & 0o777, 0o600);
}

#[test]
fn durability_is_set_for_a_flat_battery() {
    let dir = folder();
    drop(Store::open(dir.path(), &KEYS).expect("opens"));
    let db = raw(dir.path());
    let mode: String = db.pragma_query_value(None, "journal_mode", |row| row.get(0)).expect("asked");
    assert_eq!(mode, "wal");
    let not_strict: i64 = db
        .query_row("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'", [], |row| row.get(0))
        .expect("asked");
    assert_eq!(not_strict, 0);
}

#[test]
fn one_writer_at_a_time_and_a_reader_beside_it() {
    let dir = folder();
    let mut first = Store::open(dir.path(), &KEYS).expect("opens");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::InUse)));
    add_event(&mut first).expect("writes");
    let mut reader = Store::read(dir.path(), &KEYS).expect("reads").expect("there is a record");
    assert_eq!(reader.events().expect("whole").len(), 1);
    assert!(matches!(add_event(&mut reader), Err(StoreError::InUse)));
    add_event(&mut first).expect("still writes");
    drop(first);
    assert!(Store::open(dir.path(), &KEYS).is_ok());
}

#[test]
fn no_record_is_not_an_error_and_none_is_made_by_looking() {
    let dir = folder();
    assert!(Store::read(dir.path(), &KEYS).expect("looks").is_none());
    assert!(std::fs::read_dir(dir.path()).expect("a folder").next().is_none());
}

#[test]
fn a_missing_or_wrong_key_and_a_foreign_file_are_told_apart() {
    let dir = folder();
    drop(Store::open(dir.path(), &KEYS).expect("opens"));
    let key_file = dir.path().join("record.key");
    let kept = std::fs::read(&key_file).expect("there");
    std::fs::remove_file(&key_file).expect("removed");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::KeyMissing)));
    std::fs::write(&key_file, "ab".repeat(32)).expect("written");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::NotReadable)));
    std::fs::write(&key_file, kept).expect("written");
    assert!(Store::open(dir.path(), &KEYS).is_ok(), "nothing was lost");
    std::fs::write(dir.path().join("record.sqlite"), b"%PDF-1.7 and more than a page of nothing")
        .expect("written");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::NotReadable)));
}

#[test]
fn a_record_that_was_emptied_is_not_taken_for_none() {
    let dir = folder();
    drop(Store::open(dir.path(), &KEYS).expect("opens"));
    std::fs::write(dir.path().join("record.sqlite"), b"").expect("written");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::NotReadable)));
    assert!(matches!(Store::read(dir.path(), &KEYS).err(), Some(StoreError::NotReadable)));
}

#[cfg(unix)]
#[test]
fn looking_writes_nothing_where_nothing_can_be_written() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    drop(store);
    let path = dir.path().join("record.sqlite");
    let before = std::fs::read(&path).expect("there");
    let store = open::tests_look_without_writing(dir.path(), &KEYS).expect("looks");
    assert_eq!(store.events().expect("whole").len(), 1);
    assert_eq!(std::fs::read(&path).expect("there"), before);
    let beside = std::fs::read_dir(dir.path()).expect("a folder").count();
    assert_eq!(beside, 3, "the record, its key and its lock");
}

#[test]
fn an_interrupted_first_start_starts_again() {
    let dir = folder();
    drop(KEYS.for_new(dir.path()));
    std::fs::write(dir.path().join("record.sqlite"), b"").expect("written");
    let key = std::fs::read(dir.path().join("record.key")).ok();
    std::fs::create_dir_all(dir.path()).expect("a folder");
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    assert_eq!(std::fs::read(dir.path().join("record.key")).ok(), key, "the key that was made is kept");
}

#[test]
fn a_newer_file_is_refused_and_left_alone() {
    let dir = folder();
    drop(Store::open(dir.path(), &KEYS).expect("opens"));
    raw(dir.path()).pragma_update(None, "user_version", 99).expect("set");
    assert!(matches!(Store::open(dir.path(), &KEYS).err(), Some(StoreError::Newer)));
    assert!(matches!(Store::read(dir.path(), &KEYS).err(), Some(StoreError::Newer)));
    raw(dir.path())
        .pragma_update(None, "user_version", i64::try_from(migrations::ALL.len()).expect("few"))
        .expect("set");
    assert!(Store::open(dir.path(), &KEYS).is_ok());
}

#[test]
fn a_migration_backs_up_first_and_is_all_or_nothing() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    drop(store);
    let good: &[&str] = &["CREATE TABLE extra (a INTEGER) STRICT;"];
    let bad: &[&str] = &["CREATE TABLE more (a INTEGER) STRICT;", "CREATE TABLE more (a INTEGER) STRICT;"];
    let all: Vec<&[&str]> = [migrations::ALL, &[good, bad]].concat();
    assert!(Store::open_with(dir.path(), &KEYS, &all).is_err());
    let db = raw(dir.path());
    let done = migrations::ALL.len() + 1;
    assert_eq!(
        migrations::version(&db).expect("asked"),
        done,
        "the good one stands, the bad one left nothing"
    );
    assert!(db.prepare("SELECT a FROM extra").is_ok());
    assert!(db.prepare("SELECT a FROM more").is_err());
    drop(db);
    assert!(dir.path().join(format!("record.before-{done}.sqlite")).exists());
    let store = Store::open_with(dir.path(), &KEYS, &all[..done]).expect("opens");
    assert_eq!(store.events().expect("whole").len(), 1);
}

#[test]
fn the_log_only_grows_and_a_change_behind_our_back_is_found() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    for _ in 0..3 {
        add_event(&mut store).expect("writes");
    }
    drop(store);
    let db = raw(dir.path());
    assert!(db.execute("UPDATE events SET bytes = x'00' WHERE seq = 2", []).is_err());
    assert!(db.execute("DELETE FROM events WHERE seq = 2", []).is_err());
    db.execute_batch("DROP TRIGGER events_never_go; DELETE FROM events WHERE seq = 2;").expect("by force");
    drop(db);
    let store = Store::open(dir.path(), &KEYS).expect("opens");
    assert!(matches!(store.events(), Err(StoreError::ChainBroken(2))));
}

#[test]
fn a_failed_write_leaves_nothing_behind() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    let failed: Result<(), StoreError> = store.write(|w| {
        w.setting("language", "\"es\"")?;
        w.append(stamp(), By::Patient, Body::SignsAnswered { signs: vec![], gravest: None })?;
        Err(StoreError::Other("stopped".into()))
    });
    assert!(failed.is_err());
    assert_eq!(store.events().expect("whole").len(), 1);
    assert_eq!(store.setting("language").expect("reads"), None);
}

#[test]
fn a_full_disk_is_said_and_loses_nothing() {
    let dir = folder();
    let mut store = Store::open(dir.path(), &KEYS).expect("opens");
    add_event(&mut store).expect("writes");
    let pages = store.page_count().expect("asked");
    store.limit_pages(pages).expect("set");
    let long = format!("\"{}\"", "x".repeat(200_000));
    let full = store.write(|w| w.setting("language", &long));
    assert!(matches!(full, Err(StoreError::DiskFull)), "{full:?}");
    assert_eq!(store.events().expect("whole").len(), 1);
    store.limit_pages(1_000_000).expect("set");
    store.write(|w| w.setting("language", &long)).expect("there is room again");
}

#[test]
fn every_failure_has_a_code_of_its_own() {
    use sendaluna_core::Coded;
    let mut codes: Vec<_> = StoreError::all().iter().map(Coded::code).collect();
    codes.sort_unstable();
    codes.dedup();
    assert_eq!(codes.len(), StoreError::all().len());
}
