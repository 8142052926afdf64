//! An exercise, as every page shows it: its figure, what must be at hand, its strokes.

use chrono::NaiveDate;
use sendaluna_core::ids::MovementId;
use sendaluna_core::library::{Library, Prop};
use sendaluna_core::plan::doc::{Dose, Item};
use sendaluna_core::plan::{Amount, Plan};
use sendaluna_core::precaution::Standing;
use sendaluna_say::Speaker;

use crate::picture::{Drawn, Picture, Pictures};

/// What a page shows exercises from.
pub(crate) struct OnPaper<'a> {
    pub plan: &'a Plan,
    pub standing: &'a Standing,
    pub library: &'a Library,
    pub day: NaiveDate,
    pub speaker: &'a Speaker<'a>,
}

impl OnPaper<'_> {
    fn say(&self, id: &str) -> String {
        self.speaker.words.say(id, &[])
    }

    /// The start and the end of a movement that an item does.
    pub(crate) fn pictures(
        &self,
        item: &Item,
        movement: &MovementId,
        pictures: &mut Pictures,
    ) -> Vec<Picture> {
        let Some(found) = self.library.find(self.plan, movement) else { return Vec::new() };
        let name = self.speaker.name(self.library, self.plan, movement);
        let alt = |id: &str| self.speaker.words.say(id, &[("name", name.as_str().into())]);
        let said = [
            (alt("sheet-figure-start"), self.say("sheet-start")),
            (alt("sheet-figure-end"), self.say("sheet-end")),
            (alt("sheet-figure-still"), String::new()),
        ];
        let drawn = Drawn { plan: self.plan, standing: self.standing, day: self.day };
        pictures.of_item(&drawn, item, found.movement(), &said)
    }

    /// Things to have ready.
    pub(crate) fn things(&self, item: &Item) -> Option<String> {
        let found = self.library.find(self.plan, &item.movement)?;
        let props = found.movement().form().props.iter().filter(|prop| **prop != Prop::Helper);
        let things: Vec<String> = props.map(|prop| self.speaker.prop(*prop)).collect();
        let things = (!things.is_empty()).then(|| self.speaker.words.list(&things))?;
        Some(self.speaker.words.say("sheet-have-ready", &[("things", things.into())]))
    }

    /// Somebody must be beside the patient.
    pub(crate) fn beside(&self, item: &Item) -> Option<String> {
        item.beside_you.then(|| self.say("sheet-beside"))
    }

    /// A brace or a sling stays on.
    pub(crate) fn brace(&self, item: &Item) -> Option<String> {
        item.with_brace.then(|| self.say("sheet-brace"))
    }
}

/// Strokes in a set, and sets; none for what is not counted in repetitions.
pub(crate) fn tally(dose: &Dose) -> Option<(u16, u8)> {
    match dose.amount() {
        Some(Amount::Repetitions { most, .. }) => Some((most, dose.sets)),
        _ => None,
    }
}
