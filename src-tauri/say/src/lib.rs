//! How a plan is said: names, doses, days, gates and who says so, as sentences from Fluent messages, for
//! screens, terminals, voices and paper alike.

use chrono::NaiveDate;
use sendaluna_core::Coded;
use sendaluna_core::calendar::EpisodeDay;
use sendaluna_core::facts::{Facts, ItemSide, Limb, Position};
use sendaluna_core::gate::{Cause, DayRule, NotYet, Reason};
use sendaluna_core::ids::{MovementId, SignId};
use sendaluna_core::library::{Found, Library, Prop};
use sendaluna_core::plan::doc::{DayZero, Item, Tier, WarningSign};
use sendaluna_core::plan::{Plan, UNWELL};
use sendaluna_core::precaution::{End, IgnoredLift, Standing, Who};
use sendaluna_core::session::{Cue, Phase, SidesAtOnce};
use sendaluna_core::text::{Lang, Text};
use sendaluna_words::{Value, Words};

mod dose;
pub mod report;

/// A warning sign, in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SaidSign {
    /// Its id.
    pub sign: SignId,
    /// What it asks for.
    pub tier: Tier,
    /// In words.
    pub text: String,
}

/// Speaks one language about one plan.
pub struct Speaker<'a> {
    /// The words.
    pub words: &'a Words,
    langs: Vec<Lang>,
}

impl<'a> Speaker<'a> {
    /// Falls back, for the clinic's own texts, from the chosen language to the plan's first.
    pub fn new(words: &'a Words, plan: Option<&Plan>) -> Self {
        let chosen = Lang::new(words.lang()).ok();
        let of_plan = plan.into_iter().flat_map(|plan| plan.head().languages.iter().cloned());
        Self { words, langs: chosen.into_iter().chain(of_plan).collect() }
    }

    /// A text of the clinic's.
    pub fn text(&self, text: &Text) -> String {
        text.pick(&self.langs).to_string()
    }

    /// Somebody who signs: "Dr A. Example (surgeon)".
    pub fn who(&self, who: &Who) -> String {
        format!("{} ({})", who.name, self.text(&who.role))
    }

    /// An item's name.
    pub fn name(&self, library: &Library, plan: &Plan, movement: &MovementId) -> String {
        self.of_movement(library, plan, movement, "name")
    }

    /// Where an episode stands: "Week 7 after: …".
    pub fn week_of(&self, plan: &Plan, day: &EpisodeDay) -> String {
        let name = plan.episode(&day.episode).map(|episode| self.text(&episode.name)).unwrap_or_default();
        match day.week {
            Some(week) => self.words.say("day-week", &[("week", week.into()), ("name", name.into())]),
            None => self.words.say("day-week-unknown", &[("name", name.into())]),
        }
    }

    /// How to get ready for a movement.
    pub fn set_up(&self, library: &Library, plan: &Plan, movement: &MovementId) -> String {
        self.of_movement(library, plan, movement, "set-up")
    }

    /// How to do a movement.
    pub fn how(&self, library: &Library, plan: &Plan, movement: &MovementId) -> String {
        self.of_movement(library, plan, movement, "how")
    }

    /// What to keep an eye on.
    pub fn faults(&self, library: &Library, plan: &Plan, movement: &MovementId) -> String {
        self.of_movement(library, plan, movement, "faults")
    }

    /// What one should feel in a movement; empty if a clinic's own does not say.
    pub fn feel(&self, library: &Library, plan: &Plan, movement: &MovementId) -> String {
        self.of_movement(library, plan, movement, "feel")
    }

    fn of_movement(&self, library: &Library, plan: &Plan, movement: &MovementId, what: &str) -> String {
        match (library.find(plan, movement), what) {
            (Some(Found::Own(own)), "name") => self.text(&own.name),
            (Some(Found::Own(own)), "set-up") => self.text(&own.set_up),
            (Some(Found::Own(own)), "how") => self.text(&own.how),
            (Some(Found::Own(own)), "feel") => {
                own.feel.as_ref().map_or_else(String::new, |feel| self.text(feel))
            }
            (Some(Found::Own(own)), _) => self.text(&own.faults),
            (Some(Found::Shipped(_)), _) => self.words.say(&format!("movement-{movement}-{what}"), &[]),
            (None, _) => movement.to_string(),
        }
    }

    /// A position, in words; lying on the side, also where the side is that does the movement.
    pub fn position(&self, facts: &Facts) -> String {
        let id = match facts.position {
            Position::Supine => "position-supine",
            Position::HookLying => "position-hook-lying",
            Position::SideLying if facts.lies_on == Some(Limb::Working) => "position-side-lying-under",
            Position::SideLying => "position-side-lying",
            Position::Prone => "position-prone",
            Position::Seated => "position-seated",
            Position::Standing => "position-standing",
            Position::BentOver => "position-bent-over",
            Position::Kneeling => "position-kneeling",
            Position::HandsAndKnees => "position-hands-and-knees",
        };
        self.words.say(id, &[])
    }

    /// A thing to have ready.
    pub fn prop(&self, prop: Prop) -> String {
        let id = match prop {
            Prop::Chair => "prop-chair",
            Prop::Rail => "prop-rail",
            Prop::Towel => "prop-towel",
            Prop::Roll => "prop-roll",
            Prop::Strap => "prop-strap",
            Prop::Step => "prop-step",
            Prop::Band | Prop::TiedBand => "prop-band",
            Prop::Cuff => "prop-cuff",
            Prop::Pillow => "prop-pillow",
            Prop::Stick => "prop-stick",
            Prop::WalkingAid => "prop-walking-aid",
            Prop::Table => "prop-table",
            Prop::Wall => "prop-wall",
            Prop::Helper => "prop-helper",
        };
        self.words.say(id, &[])
    }

    /// Which side does an item.
    pub fn side(&self, plan: &Plan, item: &Item) -> String {
        let operated = plan.episode(&item.episode).map(|episode| episode.side);
        let working = operated.map_or_else(Vec::new, |operated| item.side.working(operated));
        match (item.side, working.as_slice()) {
            (_, [one]) => self.sides((*one).into()),
            (ItemSide::OneAfterTheOther, _) => self.words.say("side-one-after-the-other", &[]),
            (ItemSide::Alternating, _) => self.words.say("side-in-turn", &[]),
            _ => self.words.say("side-both", &[]),
        }
    }

    /// Every warning sign, the gravest first; [`UNWELL`] is always among them.
    pub fn signs(&self, plan: &Plan) -> Vec<SaidSign> {
        let of_plan = plan.doc().warning_signs.iter();
        let said = |s: &WarningSign| SaidSign { sign: s.id.clone(), tier: s.tier, text: self.text(&s.text) };
        let mut signs: Vec<SaidSign> = of_plan.map(said).collect();
        let unwell = SignId::new(UNWELL).ok().filter(|id| signs.iter().all(|sign| sign.sign != *id));
        signs.extend(unwell.map(|sign| {
            let text = self.words.say("sign-unwell", &[]);
            SaidSign { sign, tier: Tier::RingToday, text }
        }));
        for sign in signs.iter_mut().filter(|sign| sign.sign.as_str() == UNWELL) {
            sign.tier = sign.tier.min(Tier::RingToday);
        }
        signs.sort_by_key(|sign| sign.tier);
        signs
    }

    /// Until when a rule of the day holds.
    pub fn rule_ends(&self, rule: &DayRule) -> String {
        match (rule.opens, rule.precaution.ends) {
            (Some(opens), _) => self.until(opens),
            (None, End::UntilLifted { not_before: Some(day), .. }) => {
                let day = self.words.day_and_year(day);
                self.words.say("reason-until-lifted-not-before", &[("day", day.into())])
            }
            (None, _) => self.words.say("reason-until-lifted", &[]),
        }
    }

    /// Day 0 of an episode.
    pub fn day_zero(&self, day: DayZero) -> String {
        match day {
            DayZero::Known { date } => self.words.day_and_year(date),
            DayZero::Estimated { date } => {
                self.words.say("day-zero-estimated", &[("day", self.words.day_and_year(date).into())])
            }
            DayZero::NotYetKnown {} => self.words.say("day-zero-unknown", &[]),
        }
    }

    /// Which sides work.
    pub fn sides(&self, sides: SidesAtOnce) -> String {
        let id = match sides {
            SidesAtOnce::Left => "side-left",
            SidesAtOnce::Right => "side-right",
            SidesAtOnce::Both => "side-both",
            SidesAtOnce::TurnsFromLeft | SidesAtOnce::TurnsFromRight => "side-in-turn",
        };
        self.words.say(id, &[])
    }

    /// When what is not allowed yet opens: "Not yet. Opens Monday 25 May, 12 weeks after the operation."
    pub fn opens(&self, not_yet: &NotYet) -> String {
        let Some(day) = not_yet.opens else { return self.words.say("not-yet-open-ended", &[]) };
        let week = not_yet.reasons.iter().find_map(|reason| week_of_reason(reason, day));
        let day = self.words.day_and_year(day);
        match week {
            Some(weeks) => {
                self.words.say("not-yet-opens-after-weeks", &[("day", day.into()), ("weeks", weeks.into())])
            }
            None => self.words.say("not-yet-opens", &[("day", day.into())]),
        }
    }

    /// A reason, with who says so.
    pub fn reason(&self, reason: &Reason) -> String {
        match &reason.cause {
            Cause::Precaution { precaution, set_by, .. } => {
                let why = self.text(&precaution.why);
                let args = [("who", self.who(set_by).into()), ("why", why.into())];
                let said = self.words.say("reason-precaution", &args);
                match (reason.opens, precaution.ends) {
                    (None, End::UntilLifted { not_before: Some(day), .. }) => {
                        let day = self.words.day_and_year(day);
                        format!(
                            "{said} {}",
                            self.words.say("reason-until-lifted-not-before", &[("day", day.into())])
                        )
                    }
                    (None, End::UntilLifted { .. }) => {
                        format!("{said} {}", self.words.say("reason-until-lifted", &[]))
                    }
                    (None, End::DayZeroUnknown { .. }) => {
                        format!("{said} {}", self.words.say("reason-day-zero-unknown", &[]))
                    }
                    (Some(day), _) => format!("{said} {}", self.until(day)),
                    _ => said,
                }
            }
            Cause::Tightened { since } => {
                self.words.say("reason-tightened", &[("day", self.words.day(*since).into())])
            }
            cause => self.words.say(&format!("reason-{}", cause.code()), &[]),
        }
    }

    /// Through the day before something opens.
    fn until(&self, opens: NaiveDate) -> String {
        let last = opens.pred_opt().unwrap_or(opens);
        self.words.say("reason-through", &[("day", self.words.day_and_year(last).into())])
    }

    /// A lift that has no effect, and why.
    pub fn ignored_lift(&self, standing: &Standing, ignored: &IgnoredLift) -> String {
        let precaution = standing.in_force.iter().find(|p| p.precaution.id == ignored.precaution);
        let why = precaution.map_or_else(|| ignored.precaution.to_string(), |p| self.text(&p.precaution.why));
        let set_by = ignored.set_by.as_ref().map_or_else(|| "none".to_string(), |who| self.who(who));
        self.words.say(
            "lift-ignored",
            &[("why", why.into()), ("by", self.who(&ignored.by).into()), ("who", set_by.into())],
        )
    }

    /// What a cue says aloud or shows in words; `None` for what only a figure or a tone shows.
    pub fn cue(&self, cue: &Cue, name: &str) -> Option<String> {
        let say = |id: &str, args: &[(&str, Value<'_>)]| Some(self.words.say(id, args));
        match cue {
            Cue::SetUp { set, .. } => {
                say("cue-set-up", &[("name", name.into()), ("side", self.sides(set.sides).into())])
            }
            Cue::AwaitReady { .. } => say("cue-ready", &[]),
            Cue::ChangeSide { set, .. } => say("cue-change-side", &[("side", self.sides(set.sides).into())]),
            Cue::Phase { phase, number, seconds, .. } => match phase {
                Phase::Out => say("cue-out", &[("n", (*number).into())]),
                Phase::Hold => say("cue-hold", &[("n", (*seconds).into())]),
                Phase::Back => say("cue-back", &[]),
                Phase::Pause => None,
            },
            Cue::CountIn { left } | Cue::Tick { left } => say("cue-number", &[("n", (*left).into())]),
            Cue::Minute { left, .. } => say("cue-minutes-left", &[("n", (*left).into())]),
            Cue::RepetitionDone { .. } => None,
            Cue::AwaitSteps { steps } => say("cue-steps", &[("n", (*steps).into())]),
            Cue::SetDone { done, .. } => say("cue-set-done", &[("n", (*done).into())]),
            Cue::Rest { seconds, .. } => say("cue-rest", &[("n", (*seconds).into())]),
            Cue::GoingOn { .. } => say("cue-going-on", &[]),
            Cue::LostTime => say("cue-lost-time", &[]),
            Cue::End => say("cue-end", &[]),
        }
    }
}

/// The week after which a reason opens on this day by its own end, not by a lift.
fn week_of_reason(reason: &Reason, opens: NaiveDate) -> Option<u16> {
    let Cause::Precaution { precaution, .. } = &reason.cause else { return None };
    match precaution.ends {
        End::Through { day, week } if day.succ_opt() == Some(opens) => week,
        End::UntilLifted { not_before, week } if not_before == Some(opens) => week,
        _ => None,
    }
}

/// What happened, and what to do next, for anything that carries a code.
pub fn error(words: &Words, error: &dyn Coded) -> (String, String) {
    let args = error.args();
    let args: Vec<(&str, Value<'_>)> =
        args.iter().map(|(name, value)| (*name, value.as_str().into())).collect();
    let code = error.code();
    (words.say(&format!("err-{code}"), &args), words.say(&format!("do-{code}"), &args))
}
