//! The movements that ship: what they ask of the body, and how they look.

use std::path::Path;

use sendaluna_core::facts::{BodySize, ItemSide, Manner, OperatedSide, Performed, Side};
use sendaluna_core::ids::MovementId;
use sendaluna_core::library::{Library, Movement};
use sendaluna_figure::sheet::sheet;
use sendaluna_figure::svg::{LIGHT, stills};
use sendaluna_figure::{Drawing, Showing, draw_at};
use sendaluna_words::Words;
use serde_json::json;

use super::args::{LibraryArgs, LibraryCommand};
use super::{Answer, write, written};
use crate::error::ClinicError;
use crate::numbers::of_performed;
use crate::say::ClinicSpeaker;
use crate::source::read;

/// Columns of a contact sheet.
const COLUMNS: usize = 6;

/// Lists movements, or draws them.
pub(super) fn answer(
    words: &Words,
    speaker: &ClinicSpeaker<'_>,
    args: &LibraryArgs,
) -> Result<Answer, ClinicError> {
    match &args.command {
        None => Ok(list(speaker, &chosen(&args.movements)?)),
        Some(LibraryCommand::Picture { movements, own, out }) => {
            let svg = match own {
                Some(own) => stills(&drawing(&read::<Movement>(own)?), &LIGHT),
                None => picture(words, &chosen(movements)?),
            };
            write(out, svg.as_bytes())?;
            Ok(written(words, Path::new(out), json!({ "written": out })))
        }
    }
}

fn chosen(ids: &[String]) -> Result<Vec<&'static Movement>, ClinicError> {
    let library = Library::shipped();
    if ids.is_empty() {
        return Ok(library.iter().collect());
    }
    let find = |id: &String| {
        let found = MovementId::new(id).ok().and_then(|id| library.get(&id));
        found.ok_or_else(|| ClinicError::UnknownMovement(id.clone()))
    };
    ids.iter().map(find).collect()
}

/// As the left side does it, being the operated one; the right side's numbers are the other's.
fn list(speaker: &ClinicSpeaker<'_>, movements: &[&Movement]) -> Answer {
    let numbers: Vec<_> = movements
        .iter()
        .map(|movement| {
            let manner = Manner {
                side: ItemSide::Operated,
                operated: OperatedSide::Left,
                load: None,
                with_brace: false,
                size: BodySize::default(),
            };
            let form = movement.form();
            let numbers = of_performed(movement.id.as_str(), &Performed::new(movement, &manner));
            let json = json!({
                "id": movement.id,
                "family": movement.family,
                "props": form.props,
                "targets": form.targets,
                "easier": form.easier,
                "harder": form.harder,
                "starter": form.starter,
                "digest": movement.digest(),
                "numbers": numbers,
            });
            (speaker.numbers(&numbers), json)
        })
        .collect();
    let (said, json): (Vec<_>, Vec<_>) = numbers.into_iter().unzip();
    Answer { text: said.join("\n"), json: json!(json), ok: true }
}

fn drawing(movement: &Movement) -> Drawing {
    let showing = Showing { working: Side::Right, both: false, operated: OperatedSide::Right, limit: None };
    draw_at(movement, &showing, &[0.0, 1.0])
}

fn picture(words: &Words, movements: &[&Movement]) -> String {
    if let [only] = movements {
        return stills(&drawing(only), &LIGHT);
    }
    let name = |movement: &Movement| words.say(&format!("movement-{}-name", movement.id), &[]);
    let entries: Vec<_> = movements.iter().map(|movement| (name(movement), drawing(movement))).collect();
    sheet(&entries, COLUMNS)
}
