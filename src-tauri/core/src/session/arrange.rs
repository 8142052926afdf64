//! The order of a session: the clinic's, grouped by position where it allows, so that getting up
//! and down is saved.

use crate::calendar::DueItem;
use crate::facts::Position;
use crate::ids::ItemId;
use crate::library::Library;
use crate::plan::Plan;
use crate::session::{Block, Part};

/// Items as a session leads them, and how they follow each other.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Arranged {
    /// The parts.
    pub parts: Vec<Part>,
    /// Their order.
    pub blocks: Vec<Block>,
}

/// Arranges due items. An item whose movement is unknown is left out: its gate is shut anyway.
pub fn arrange(plan: &Plan, library: &Library, due: &[&DueItem]) -> Arranged {
    let mut chosen: Vec<(&DueItem, Part, u16)> = due
        .iter()
        .filter_map(|due| {
            let item = plan.item(&due.item)?;
            let episode = plan.episode(&item.episode)?;
            let position = library.find(plan, &item.movement)?.movement().facts().position;
            let part = Part::new(item.id.clone(), &due.dose, item.side, episode.side, position)?;
            Some((*due, part.with_somebody(item.beside_you), item.order))
        })
        .collect();
    chosen.sort_by_key(|(_, part, order)| (*order, group(part.position)));
    let mut arranged = Arranged::default();
    for (due, part, _) in &chosen {
        if arranged.parts.iter().any(|known| known.item == part.item) {
            continue;
        }
        let round = plan
            .doc()
            .stages
            .iter()
            .filter(|stage| stage.id == due.stage)
            .find_map(|stage| stage.rounds.iter().find(|round| round.items.contains(&part.item)));
        let members: Vec<&Part> = round.map_or_else(Vec::new, |round| members(&chosen, &round.items));
        let first = arranged.parts.len();
        match round {
            Some(round) if members.len() > 1 => {
                let in_rounds = |p: &Part| Part { sets: round.rounds, ..p.clone() };
                arranged.parts.extend(members.into_iter().map(in_rounds));
                arranged.blocks.push(Block::Round {
                    parts: (first..arranged.parts.len()).collect(),
                    rounds: round.rounds,
                    rest_s: round.rest_s,
                });
            }
            Some(round) => {
                arranged.parts.push(Part { sets: round.rounds, rest_s: round.rest_s, ..part.clone() });
                arranged.blocks.push(Block::Whole(first));
            }
            None => {
                arranged.parts.push(part.clone());
                arranged.blocks.push(Block::Whole(first));
            }
        }
    }
    arranged
}

fn members<'a>(chosen: &'a [(&DueItem, Part, u16)], round: &[ItemId]) -> Vec<&'a Part> {
    round
        .iter()
        .filter_map(|id| chosen.iter().find(|(_, part, _)| part.item == *id))
        .map(|(_, p, _)| p)
        .collect()
}

/// Lying first, then sitting, then standing, then down on the knees.
fn group(position: Position) -> u8 {
    match position {
        Position::Supine | Position::HookLying => 0,
        Position::SideLying => 1,
        Position::Prone => 2,
        Position::Seated => 3,
        Position::Standing | Position::BentOver => 4,
        Position::Kneeling | Position::HandsAndKnees => 5,
    }
}
