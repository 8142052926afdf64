//! The movements that ship. Each is a data file in `src-tauri/core/library`, immutable under its
//! id: an item carries the digest of the facts it was checked with.
//!
//! The facts of a file are declared by hand: its ranges follow the movement table the library was
//! written from, its moments the segment table of Winter (*Biomechanics and Motor Control of Human
//! Movement*, Table 4.1, after Dempster), its weights on a leg common practice, no source.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::facts::Facts;
use crate::ids::{FamilyId, MovementId};
use crate::plan::Plan;
use crate::plan::doc::{OwnMovement, PlanDoc};

mod files;

/// A movement.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Movement {
    /// Immutable id.
    pub id: MovementId,
    /// The family that a precaution can name whole.
    pub family: FamilyId,
    /// Whether it strengthens; effort is asked for after such items.
    #[serde(default)]
    pub strengthens: bool,
    /// What to have ready.
    #[serde(default)]
    pub props: Vec<Prop>,
    /// The usual easier variant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub easier: Option<MovementId>,
    /// The usual harder variant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub harder: Option<MovementId>,
    /// What it asks of the body.
    pub facts: Facts,
}

/// Things to have ready.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Prop {
    Chair,
    Rail,
    Towel,
    Roll,
    Strap,
    Step,
    Band,
    Cuff,
    Pillow,
    Stick,
    WalkingAid,
}

/// The movements that ship, by id.
#[derive(Debug, Clone)]
pub struct Library {
    movements: BTreeMap<MovementId, Movement>,
}

impl Library {
    /// The shipped library.
    pub fn shipped() -> Self {
        let parse = |(name, text): &(&str, &str)| -> (MovementId, Movement) {
            let movement: Movement = toml::from_str(text)
                .unwrap_or_else(|e| unreachable!("{name} is checked by this module's tests: {e}"));
            (movement.id.clone(), movement)
        };
        Self { movements: files::ALL.iter().map(parse).collect() }
    }

    /// A movement of the library.
    pub fn get(&self, id: &MovementId) -> Option<&Movement> {
        self.movements.get(id)
    }

    /// Every movement, by id.
    pub fn iter(&self) -> impl Iterator<Item = &Movement> {
        self.movements.values()
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
mod tests {
    use super::*;
    use crate::facts::{Limb, Position, Surface};

    #[test]
    fn every_file_parses_and_is_named_after_its_id() {
        for (name, text) in files::ALL {
            let movement: Movement = toml::from_str(text).unwrap_or_else(|e| panic!("{name}: {e}"));
            assert_eq!(movement.id.as_str(), *name);
        }
        assert_eq!(Library::shipped().iter().count(), files::ALL.len(), "an id comes twice");
    }

    #[test]
    fn every_fact_is_about_an_axis_its_joint_has() {
        for movement in Library::shipped().iter() {
            let (id, facts) = (&movement.id, &movement.facts);
            for range in &facts.ranges {
                assert!(range.axis.is_of(range.joint), "{id}: {range:?}");
                assert!(range.from_deg.abs() <= 180.0 && range.to_deg.abs() <= 180.0, "{id}");
            }
            for action in &facts.actions {
                assert!(action.motion.axis().is_of(action.joint), "{id}: {action:?}");
            }
            for moment in &facts.moments {
                assert!(moment.motion.axis().is_of(moment.joint), "{id}: {moment:?}");
            }
        }
    }

    #[test]
    fn easier_and_harder_lead_to_movements_that_ship() {
        let library = Library::shipped();
        for movement in library.iter() {
            for id in movement.easier.iter().chain(&movement.harder) {
                assert!(library.get(id).is_some(), "{} leads to {id}", movement.id);
                assert_ne!(id, &movement.id);
            }
        }
    }

    #[test]
    fn position_surface_and_weight_agree() {
        for movement in Library::shipped().iter() {
            let (id, facts) = (&movement.id, &movement.facts);
            let weight = facts.weight.working_percent + facts.weight.other_percent;
            assert!((0.0..=100.0).contains(&facts.weight.working_percent), "{id}");
            assert!((0.0..=100.0).contains(&facts.weight.other_percent), "{id}");
            let lies_on_side = facts.position == Position::SideLying;
            assert_eq!(
                lies_on_side,
                facts.lies_on.is_some(),
                "{id}: side-lying says which limb lies beneath"
            );
            assert_ne!(facts.lies_on, Some(Limb::Trunk), "{id}");
            match facts.position {
                Position::Standing | Position::BentOver => {
                    assert_eq!(facts.surface, Surface::Ground, "{id}");
                    assert!(weight >= 100.0, "{id}: somebody who stands bears their weight");
                }
                Position::Supine | Position::Prone | Position::SideLying => {
                    assert!(matches!(facts.surface, Surface::Bed | Surface::Floor), "{id}");
                    assert!(weight.abs() < f64::EPSILON, "{id}");
                }
                _ => assert_ne!(facts.surface, Surface::Ground, "{id}"),
            }
        }
    }
}
