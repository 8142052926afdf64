//! What can be wrong with a statement's content.

use crate::bounds;
use crate::facts::{Joint, Motion};
use crate::plan::check::{check_text, unique};
use crate::precaution::{End, Precaution, Rule, StatementDoc};
use crate::problem::{Problem, Problems};

/// Every problem of a statement, each with its place.
pub fn problems(doc: &StatementDoc) -> Vec<Problem> {
    let mut p = Problems::default();
    unique(&mut p, "episodes", &doc.episodes, |e| &e.id);
    unique(&mut p, "precautions", &doc.precautions, |c| &c.id);
    unique(&mut p, "lifts", &doc.lifts, |l| &l.precaution);
    let says_something = !doc.precautions.is_empty()
        || !doc.lifts.is_empty()
        || !doc.movements_seen.is_empty()
        || doc.releases_set_backs_until.is_some();
    if doc.none && !doc.precautions.is_empty() {
        p.add("none", "none-and-some", vec![]);
    }
    if !doc.none && !says_something {
        p.add("precautions", "missing", vec![]);
    }
    p.each("precautions", &doc.precautions, |p, precaution| {
        let episode = doc.episodes.iter().find(|e| e.id == precaution.episode);
        if episode.is_none() {
            p.add("episode", "unknown-id", vec![("id", precaution.episode.to_string())]);
        }
        let zero = episode.and_then(|episode| episode.day_zero.date());
        if let (End::Through { day, .. }, Some(zero)) = (precaution.ends, zero)
            && day < zero
        {
            p.add("ends.day", "dates-reversed", vec![]);
        }
        check_text(p, "why", &precaution.why, &[]);
        let week = match precaution.ends {
            End::Through { week, .. } | End::UntilLifted { week, .. } => week,
            End::DayZeroUnknown { week } => Some(week),
        };
        p.bound_opt("ends.week", &bounds::WEEK, week);
        p.within("rule", |p| check_rule(p, precaution));
    });
    p.into_found()
}

fn check_rule(p: &mut Problems, precaution: &Precaution) {
    let joint_has = |p: &mut Problems, joint: Joint, motion: Motion| {
        if !motion.axis().is_of(joint) {
            p.add_joint_motion("motion", joint, motion);
        }
    };
    match &precaution.rule {
        Rule::Range { joint, motion, most_deg, .. } => {
            joint_has(p, *joint, *motion);
            p.bound("most_deg", &bounds::DEG, *most_deg);
        }
        Rule::Together { ranges } => {
            if ranges.len() < 2 {
                p.add("ranges", "no-conditions", vec![]);
            }
            p.each("ranges", ranges, |p, range| {
                joint_has(p, range.joint, range.motion);
                p.bound("over_deg", &bounds::DEG, range.over_deg);
            });
        }
        Rule::Action { joint, motion, .. } => joint_has(p, *joint, *motion),
        Rule::Moment { joint, motion, most_nm_per_kg } => {
            joint_has(p, *joint, *motion);
            p.bound("most_nm_per_kg", &bounds::MOMENT, *most_nm_per_kg);
        }
        Rule::WeightBearing { most_kg, most_percent, .. } => {
            if most_kg.is_some() == most_percent.is_some() {
                p.add("most_kg", "one-most", vec![]);
            }
            p.bound_opt("most_kg", &bounds::WEIGHT_KG, *most_kg);
            p.bound_opt("most_percent", &bounds::WEIGHT_PERCENT, *most_percent);
        }
        Rule::Brace { brace } => check_text(p, "brace", brace, &[]),
        Rule::Spine { no_bending, no_twisting, lift_most_kg } => {
            if !no_bending && !no_twisting && lift_most_kg.is_none() {
                p.add("no_bending", "no-conditions", vec![]);
            }
            p.bound_opt("lift_most_kg", &bounds::LIFT_KG, *lift_most_kg);
        }
        Rule::Movement { .. } | Rule::Position { .. } | Rule::Resistance {} | Rule::Daily { .. } => {}
    }
}
