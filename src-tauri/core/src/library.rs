//! The movements that ship. Each is a data file in `src-tauri/core/library`, immutable under its
//! id: an item carries the digest of the poses it was checked with.
//!
//! A file holds poses; what they ask of the body follows from them, by the body model. The weights on
//! a leg and the doses to start from are common practice, no source.

use std::collections::BTreeMap;
use std::ops::Deref;
use std::sync::{LazyLock, OnceLock};

use serde::{Deserialize, Serialize};

use crate::digest::Digest;
use crate::facts::{Facts, Side};
use crate::ids::MovementId;
use crate::plan::Plan;
use crate::plan::doc::{OwnMovement, PlanDoc};

mod check;
mod course;
mod derive;
mod files;
mod form;

pub use check::{Impossible, Why};
pub use course::{Course, KNEE_DEPTH, Moment, PELVIS_DEPTH};
pub use form::{
    Anchor, Camera, Drives, Effort, Form, JointDrive, LIMB_AXES, LimbAngles, LimbAxis, Place, PoseForm, Prop,
    Segment, Starter, Target, TrunkForm,
};

/// The body model's version: facts that it would work out otherwise are other facts.
const MODEL: &str = "body-1";

/// A movement: what its file says, checked, and the facts that follow from it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "Form", into = "Form")]
pub struct Movement {
    form: Form,
    facts: Facts,
    digest: Digest,
}

impl Movement {
    /// Checks what is written, and works out its facts.
    pub fn new(form: Form) -> Result<Self, Impossible> {
        check::possible(&form)?;
        let (facts, digest) = (derive::facts(&form), digest(&form));
        Ok(Self { form, facts, digest })
    }

    /// What the file says.
    pub fn form(&self) -> &Form {
        &self.form
    }

    /// What it asks of the body.
    pub fn facts(&self) -> &Facts {
        &self.facts
    }

    /// The digest that an item carries: of everything that the facts follow from.
    pub fn digest(&self) -> Digest {
        self.digest
    }

    /// Its course, as one side performs it; `both` if both sides do it together.
    pub fn course(&self, working: Side, both: bool) -> Course<'_> {
        Course::new(&self.form, working, both)
    }
}

/// Of what is done and on what; neither of the words nor of what leads to easier and harder.
fn digest(form: &Form) -> Digest {
    let Form { family, props, place, drive, efforts, poses, .. } = form;
    let mechanics = (MODEL, family, props, place, drive, efforts, poses);
    Digest::of(&serde_json::to_vec(&mechanics).expect("a form is plain data"))
}

impl Deref for Movement {
    type Target = Form;

    fn deref(&self) -> &Form {
        &self.form
    }
}

impl TryFrom<Form> for Movement {
    type Error = Impossible;

    fn try_from(form: Form) -> Result<Self, Impossible> {
        Self::new(form)
    }
}

impl From<Movement> for Form {
    fn from(movement: Movement) -> Self {
        movement.form
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Movement {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Movement".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        Form::json_schema(generator)
    }
}

/// The movements that ship, by id. Each is read when it is first asked for, once for the program.
#[derive(Debug, Clone)]
pub struct Library {
    shelf: &'static BTreeMap<&'static str, Shelved>,
}

/// A movement's file, and the movement once it was read.
#[derive(Debug)]
struct Shelved {
    text: &'static str,
    movement: OnceLock<Movement>,
}

impl Shelved {
    fn movement(&self) -> &Movement {
        self.movement.get_or_init(|| {
            toml::from_str(self.text).unwrap_or_else(|e| unreachable!("checked by this module's tests: {e}"))
        })
    }
}

static SHELF: LazyLock<BTreeMap<&'static str, Shelved>> = LazyLock::new(|| {
    files::ALL.iter().map(|&(id, text)| (id, Shelved { text, movement: OnceLock::new() })).collect()
});

impl Library {
    /// The shipped library.
    pub fn shipped() -> Self {
        Self { shelf: &SHELF }
    }

    /// A movement of the library.
    pub fn get(&self, id: &MovementId) -> Option<&'static Movement> {
        self.shelf.get(id.as_str()).map(Shelved::movement)
    }

    /// Every movement, by id.
    pub fn iter(&self) -> impl Iterator<Item = &'static Movement> {
        self.shelf.values().map(Shelved::movement)
    }

    /// The movement that an item of a plan names: the library's, else the clinic's own.
    pub fn find<'a>(&'a self, plan: &'a Plan, id: &MovementId) -> Option<Found<'a>> {
        self.find_in(plan.doc(), id)
    }

    /// The same, in a document that is not yet a plan.
    pub fn find_in<'a>(&'a self, doc: &'a PlanDoc, id: &MovementId) -> Option<Found<'a>> {
        let own = |own: &'a OwnMovement| (own.movement.id == *id).then_some(Found::Own(own));
        self.get(id).map(Found::Shipped).or_else(|| doc.movements.iter().find_map(own))
    }
}

/// A movement, and where it comes from.
#[derive(Debug, Clone, Copy)]
pub enum Found<'a> {
    /// From the library.
    Shipped(&'a Movement),
    /// The clinic's own, with its words.
    Own(&'a OwnMovement),
}

impl<'a> Found<'a> {
    /// The movement.
    pub fn movement(self) -> &'a Movement {
        match self {
            Self::Shipped(movement) => movement,
            Self::Own(own) => &own.movement,
        }
    }
}

#[cfg(test)]
mod tests;
