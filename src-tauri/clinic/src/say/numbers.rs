//! What an item asks of the body, said in lines.

use sendaluna_core::facts::Side;
use serde::Serialize;

use super::ClinicSpeaker;
use crate::numbers::{ActionView, MomentView, NumbersView, RangeView};

impl ClinicSpeaker<'_> {
    /// The position, then ranges, muscles, moments and weights, a line each.
    pub fn numbers(&self, numbers: &NumbersView) -> String {
        let position = self.named("position", numbers.position);
        let args = [
            ("of", numbers.of.as_str().into()),
            ("movement", numbers.movement.as_str().into()),
            ("family", numbers.family.as_str().into()),
            ("position", position.into()),
        ];
        let mut lines = vec![self.words.say("numbers-of", &args)];
        lines.extend(numbers.ranges.iter().filter(|range| range.is_telling()).map(|range| self.range(range)));
        lines.extend(numbers.actions.iter().map(|action| self.action(action)));
        lines.extend(numbers.moments.iter().map(|moment| self.moment(moment)));
        let [left, right] = numbers.weight_percent;
        if left > 0.0 || right > 0.0 {
            let args = [
                ("left", self.words.decimal(left, 0).into()),
                ("right", self.words.decimal(right, 0).into()),
            ];
            lines.push(self.words.say("numbers-weight", &args));
        }
        let facts = [
            (numbers.seat.is_some(), numbers.seat.map(|seat| self.named("seat", seat))),
            (numbers.bends_spine, Some(self.words.say("numbers-bends-spine", &[]))),
            (numbers.twists_spine, Some(self.words.say("numbers-twists-spine", &[]))),
            (numbers.resistance, Some(self.words.say("numbers-resistance", &[]))),
        ];
        lines.extend(facts.into_iter().filter(|(holds, _)| *holds).filter_map(|(_, said)| said));
        lines.join("\n  ")
    }

    fn range(&self, range: &RangeView) -> String {
        let degrees = |deg: f64| self.words.decimal(deg, usize::from(deg.fract() != 0.0));
        let args = [
            ("side", self.side(range.side).into()),
            ("what", self.joint_motion(range.joint, range.axis.positive()).into()),
            ("from", degrees(range.from_deg).into()),
            ("to", degrees(range.to_deg).into()),
            ("drive", self.named("drive", range.drive).into()),
        ];
        self.words.say("numbers-range", &args)
    }

    fn action(&self, action: &ActionView) -> String {
        let args = [
            ("side", self.side(action.side).into()),
            ("what", self.joint_motion(action.joint, action.motion).into()),
            ("drive", self.named("drive", action.drive).into()),
        ];
        self.words.say("numbers-action", &args)
    }

    fn moment(&self, moment: &MomentView) -> String {
        let args = [
            ("side", self.side(moment.side).into()),
            ("what", self.joint_motion(moment.joint, moment.motion).into()),
            ("moment", self.words.decimal(moment.nm_per_kg, 3).into()),
            ("drive", self.named("drive", moment.drive).into()),
        ];
        self.words.say("numbers-moment", &args)
    }

    fn side(&self, side: Side) -> String {
        self.words.say(if side == Side::Left { "on-the-left" } else { "on-the-right" }, &[])
    }

    /// The message that is named after what documents write.
    fn named(&self, what: &str, of: impl Serialize) -> String {
        let name = serde_json::to_value(of).unwrap_or_default();
        self.words.say(&format!("{what}-{}", name.as_str().unwrap_or_default()), &[])
    }
}
