//! One exercise, whole.

use sendaluna_core::gate::Gate;
use sendaluna_core::plan::doc::Item;
use sendaluna_words::Value;
use serde::Serialize;

use super::Page;
use crate::item::tally;
use crate::picture::{Picture, Pictures};

/// An exercise.
#[derive(Debug, Serialize)]
pub(super) struct Exercise {
    pub n: usize,
    pub name: String,
    /// Side and position.
    #[serde(rename = "where")]
    pub where_: String,
    pub pictures: Vec<Picture>,
    pub dose: String,
    pub when: String,
    pub tempo: String,
    /// Strokes in a set, and sets; none for what is not counted in repetitions.
    pub tally: Option<(u16, u8)>,
    pub not_yet: Option<String>,
    pub reasons: Vec<String>,
    /// What must be so: someone beside you, a brace, things at hand.
    pub needs: Vec<String>,
    /// Label and text.
    pub words: Vec<(String, String)>,
    pub graded_title: Option<String>,
    pub graded: Vec<String>,
    pub easier: Option<Easier>,
}

/// The easier variant.
#[derive(Debug, Serialize)]
pub(super) struct Easier {
    /// "Easier way of 4: …"; with its number where the sheet has it anyway.
    pub label: String,
    pub not_yet: Option<String>,
    pub pictures: Vec<Picture>,
    pub words: Vec<(String, String)>,
}

impl Page<'_> {
    pub(super) fn exercises(&self, pictures: &mut Pictures) -> Vec<Exercise> {
        self.ordered().into_iter().map(|item| self.exercise(item, pictures)).collect()
    }

    fn exercise(&self, item: &Item, pictures: &mut Pictures) -> Exercise {
        let (plan, speaker, library) = (self.printed.plan, &self.speaker, self.printed.library);
        let found = library.find(plan, &item.movement);
        let position = found.map(|found| speaker.position(found.movement().facts()));
        let side = speaker.side(plan, item);
        let (not_yet, reasons) = match self.gate(item, &item.dose) {
            Gate::Open => (None, Vec::new()),
            Gate::NotYet(not_yet) => (
                Some(speaker.opens(&not_yet)),
                not_yet.reasons.iter().map(|reason| speaker.reason(reason)).collect(),
            ),
        };
        let dose = &self.dose(item);
        Exercise {
            n: self.number(&item.id),
            name: speaker.name(library, plan, &item.movement),
            where_: [Some(side), position]
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(&self.say("list-comma")),
            pictures: self.on_paper().pictures(item, &item.movement, pictures),
            dose: speaker.dose(dose),
            when: [Some(speaker.when(&item.when)), self.is_otherwise(item)]
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(" "),
            tempo: speaker.tempo(dose),
            tally: tally(dose),
            not_yet,
            reasons,
            needs: self.needs(item),
            words: self.words(item),
            graded_title: (item.graded.is_some() || item.ramp.is_some()).then(|| self.say("sheet-graded")),
            graded: self.graded(item),
            easier: self.easier(item, pictures),
        }
    }

    /// A dose that moves, step by step, and where it stands if that is known.
    fn graded(&self, item: &Item) -> Vec<String> {
        let mut said = match (&item.graded, &item.ramp) {
            (Some(graded), _) => self.speaker.graded(graded),
            (None, Some(ramp)) => vec![self.speaker.ramp(ramp)],
            (None, None) => return Vec::new(),
        };
        let stand = self.stand(item).filter(|_| self.printed.history.is_some());
        said.extend(stand.map(|stand| {
            let at = stand.step_of();
            let args = [("step", at.step.into()), ("steps", at.of.into())];
            self.speaker.words.say("sheet-graded-now", &args)
        }));
        said
    }

    fn needs(&self, item: &Item) -> Vec<String> {
        let on_paper = self.on_paper();
        [on_paper.things(item), on_paper.beside(item), on_paper.brace(item)].into_iter().flatten().collect()
    }

    /// Some stage asks for it otherwise.
    fn is_otherwise(&self, item: &Item) -> Option<String> {
        let mut entries = self.printed.plan.doc().stages.iter().flat_map(|stage| &stage.items);
        let differs = entries.any(|e| e.item == item.id && (e.dose.is_some() || e.when.is_some()));
        let title = self.say("sheet-what-to-do");
        differs.then(|| self.speaker.words.say("sheet-dose-elsewhere", &[("title", title.into())]))
    }

    fn words(&self, item: &Item) -> Vec<(String, String)> {
        let mut words = self.movement(&item.movement);
        let note = item.note.as_ref().map(|note| (self.say("sheet-note"), self.speaker.text(note)));
        words.extend(note);
        words
    }

    fn movement(&self, movement: &sendaluna_core::ids::MovementId) -> Vec<(String, String)> {
        let (plan, speaker, library) = (self.printed.plan, &self.speaker, self.printed.library);
        [
            ("sheet-set-up", speaker.set_up(library, plan, movement)),
            ("sheet-how", speaker.how(library, plan, movement)),
            ("sheet-feel", speaker.feel(library, plan, movement)),
            ("sheet-watch", speaker.faults(library, plan, movement)),
        ]
        .into_iter()
        .filter(|(_, text)| !text.is_empty())
        .map(|(label, text)| (self.say(label), text))
        .collect()
    }

    fn easier(&self, item: &Item, pictures: &mut Pictures) -> Option<Easier> {
        let easier = item.easier.as_ref()?;
        let gate = self.gates().easier(item, &item.dose, &self.gate_day())?;
        let (plan, speaker, library) = (self.printed.plan, &self.speaker, self.printed.library);
        let not_yet = match gate {
            Gate::Open => None,
            Gate::NotYet(not_yet) => Some(speaker.opens(&not_yet)),
        };
        let name = speaker.name(library, plan, &easier.movement);
        let of: (&str, Value<'_>) = ("of", self.number(&item.id).into());
        let itself = self.ordered().into_iter().find(|other| other.movement == easier.movement);
        if let Some(itself) = itself {
            let args = [of, ("name", name.into()), ("n", self.number(&itself.id).into())];
            let label = speaker.words.say("sheet-easier-see", &args);
            return Some(Easier { label, not_yet, pictures: Vec::new(), words: Vec::new() });
        }
        Some(Easier {
            label: speaker.words.say("sheet-easier", &[of, ("name", name.into())]),
            not_yet,
            pictures: self.on_paper().pictures(item, &easier.movement, pictures),
            words: self.movement(&easier.movement),
        })
    }
}
