//! What is in a data folder.

use std::path::{Path, PathBuf};

use chrono::{DateTime, Duration, NaiveDate, NaiveDateTime, NaiveTime, Utc};
use sendaluna_core::calendar::{Today, Waking, Zone, next_day_of};
use sendaluna_core::gate::{GateDay, Gates};
use sendaluna_core::ids::ItemId;
use sendaluna_core::library::Library;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Item;
use sendaluna_core::precaution::{Accepted, Standing};
use sendaluna_core::record::{Body, By, Event, State};
use sendaluna_exchange::receive::{Held, HeldPlan};
use sendaluna_exchange::signers::SignersDoc;
use sendaluna_store::{KeyPort, Store};
use sendaluna_zones::IanaZone;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::settings::Settings;

/// A patient's program on one data folder.
pub struct Bedside {
    folder: PathBuf,
    store: Store,
    library: Library,
    device: IanaZone,
}

impl Bedside {
    /// Opens a data folder for use; makes it if there is none.
    pub fn open(folder: &Path, keys: &dyn KeyPort, device: IanaZone) -> Result<Self, BedsideError> {
        let store = Store::open(folder, keys)?;
        Ok(Self { folder: folder.to_path_buf(), store, library: Library::shipped(), device })
    }

    /// Opens a data folder only to look, beside a program that may be using it.
    pub fn look(folder: &Path, keys: &dyn KeyPort, device: IanaZone) -> Result<Self, BedsideError> {
        let store = Store::read(folder, keys)?.ok_or(BedsideError::NoPlan)?;
        Ok(Self { folder: folder.to_path_buf(), store, library: Library::shipped(), device })
    }

    /// The movements that ship.
    pub fn library(&self) -> &Library {
        &self.library
    }

    /// Everything that is known now.
    pub fn known(&self) -> Result<Known, BedsideError> {
        self.known_if_any()?.ok_or(BedsideError::NoPlan)
    }

    pub(crate) fn known_if_any(&self) -> Result<Option<Known>, BedsideError> {
        self.known_of(&self.store.events()?)
    }

    /// The same, where the record was read already.
    pub(crate) fn known_of(&self, events: &[Event]) -> Result<Option<Known>, BedsideError> {
        let plans = self.store.plans()?;
        let Some(row) = plans.last() else { return Ok(None) };
        let statements = self.judged()?;
        Ok(Some(Known {
            plan: row.plan.clone(),
            standing: Standing::of(&statements),
            state: State::of(events),
            settings: Settings::read(&self.store)?,
            clinic_zone: clinic_zone(&row.plan),
            device: self.device.clone(),
        }))
    }

    /// Every statement ever accepted, as the highest signers list judges it.
    fn judged(&self) -> Result<Vec<Accepted>, BedsideError> {
        let statements = self.store.statements()?.into_iter().map(|row| row.accepted);
        Ok(match self.store.signers()? {
            Some(row) => SignersDoc::read(&row.part)?.judge(statements),
            None => statements.collect(),
        })
    }

    /// What the verification of a file is held against.
    pub(crate) fn held(&self) -> Result<Option<Held>, BedsideError> {
        let (Some(pin), Some(signers)) = (self.store.pin()?, self.store.signers()?) else { return Ok(None) };
        let held = |row: sendaluna_store::tables::plans::Row| HeldPlan {
            plan: row.plan.head().plan.clone(),
            revision: row.plan.head().revision,
            digest: row.digest,
            issued_at: row.plan.issued_at(),
        };
        Ok(Some(Held {
            clinic_key: pin.clinic_key,
            person: pin.person,
            signers_number: signers.number,
            signers_digest: signers.digest,
            plans: self.store.plans()?.into_iter().map(held).collect(),
            statements: self.store.statements()?.into_iter().map(|row| row.accepted).collect(),
        }))
    }

    /// Refuses every write from now on, or stops refusing.
    #[cfg(feature = "faults")]
    pub fn refuse_writes(&self, refuse: bool) -> Result<(), BedsideError> {
        Ok(self.store.refuse_writes(refuse)?)
    }

    pub(crate) fn store(&self) -> &Store {
        &self.store
    }

    pub(crate) fn store_mut(&mut self) -> &mut Store {
        &mut self.store
    }

    pub(crate) fn folder(&self) -> &Path {
        &self.folder
    }

    pub(crate) fn device(&self) -> &IanaZone {
        &self.device
    }

    /// Records one event.
    pub(crate) fn record(&mut self, now: &Now, by: By, body: Body) -> Result<(), BedsideError> {
        self.record_all(now, by, vec![body])
    }

    /// Records events that belong together: all of them or none.
    pub(crate) fn record_all(&mut self, now: &Now, by: By, bodies: Vec<Body>) -> Result<(), BedsideError> {
        self.record_each(now, bodies.into_iter().map(|body| (by, body)).collect())
    }

    /// Records events that belong together, each by somebody: all of them or none.
    pub(crate) fn record_each(&mut self, now: &Now, bodies: Vec<(By, Body)>) -> Result<(), BedsideError> {
        let stamp = now.stamp(self.device.offset_s(now.at));
        self.store.write(|w| {
            for (by, body) in bodies {
                w.append(stamp.clone(), by, body)?;
            }
            Ok(())
        })
    }
}

/// Everything that is known at a moment.
pub struct Known {
    /// The plan in force.
    pub plan: Plan,
    /// The precautions in force.
    pub standing: Standing,
    /// What the record adds up to.
    pub state: State,
    /// How the patient wants it.
    pub settings: Settings,
    clinic_zone: IanaZone,
    device: IanaZone,
}

impl Known {
    /// The days of an instant.
    pub fn today(&self, at: DateTime<Utc>) -> Today {
        Today::new(at, &self.device, &self.clinic_zone)
    }

    /// The day by which gates are judged at an instant.
    pub fn gate_day(&self, at: DateTime<Utc>) -> GateDay {
        let set_back = self.state.set_back_since(self.standing.set_backs_released_until);
        GateDay::held(self.today(at).gate_day, self.plan.head().review_by, set_back)
    }

    /// What the clock on the device's wall says at an instant.
    pub fn wall(&self, at: DateTime<Utc>) -> NaiveDateTime {
        at.naive_utc() + Duration::seconds(self.device.offset_s(at).into())
    }

    /// The time of day on the device.
    pub fn local_time(&self, at: DateTime<Utc>) -> NaiveTime {
        self.wall(at).time()
    }

    /// The next day on which a stage asks for an item, from tomorrow on.
    pub fn next_day_of(&self, id: &ItemId, now: &Now) -> Option<NaiveDate> {
        next_day_of(&self.plan, id, self.today(now.at).session_day)
    }

    /// The gates.
    pub fn gates<'a>(&'a self, library: &'a Library) -> Gates<'a> {
        Gates { plan: &self.plan, library, standing: &self.standing, tightened: &self.state.tightened }
    }

    /// When the patient is awake.
    pub fn waking(&self) -> Waking {
        self.settings.waking
    }

    /// An item of the plan.
    pub fn item(&self, id: &ItemId) -> Result<&Item, BedsideError> {
        self.plan.item(id).ok_or_else(|| BedsideError::NoSuchItem(id.to_string()))
    }
}

/// The clinic's zone; where this program does not know it, the one whose dates come last.
pub(crate) fn clinic_zone(plan: &Plan) -> IanaZone {
    IanaZone::named(&plan.head().zone).unwrap_or_else(IanaZone::last_on_earth)
}
