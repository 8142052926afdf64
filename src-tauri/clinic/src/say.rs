//! How problems and contradictions are said, for people and as JSON.

use chrono::NaiveDate;
use sendaluna_core::Coded;
use sendaluna_core::facts::{Joint, Motion, Side};
use sendaluna_core::gate::{Cause, Contradiction, Measured, NearLimit, Quantity, Reason};
use sendaluna_core::ids::MovementId;
use sendaluna_core::precaution::{End, IgnoredLift, Precaution, Who};
use sendaluna_core::problem::Problem;
use sendaluna_core::text::Lang;
use sendaluna_words::{Value, Words};
use serde::Serialize;

use crate::check::CheckReport;
use crate::error::ClinicError;

mod numbers;
mod report;

pub use report::ReportView;

/// The check, as a program reads it and as people do.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CheckView {
    /// Nothing stands against signing.
    pub ok: bool,
    /// Problems of the document.
    pub problems: Vec<ProblemView>,
    /// Contradictions.
    pub contradictions: Vec<ContradictionView>,
    /// Close to a limit.
    pub near: Vec<NearView>,
    /// Lifts that will have no effect.
    pub lifts_ignored: Vec<String>,
}

/// A problem.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ProblemView {
    /// The stable code.
    pub code: &'static str,
    /// Where.
    pub place: String,
    /// The sentence.
    pub said: String,
}

/// A contradiction.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `Contradiction`")]
pub struct ContradictionView {
    pub stage: String,
    pub item: String,
    pub movement: String,
    pub from: Option<NaiveDate>,
    pub through: Option<NaiveDate>,
    pub precaution: Option<String>,
    pub set_by: Option<String>,
    pub opens: Option<NaiveDate>,
    pub would_pass: Vec<String>,
    pub said: String,
}

/// Close to a limit.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "as in `NearLimit`")]
pub struct NearView {
    pub item: String,
    pub movement: String,
    pub precaution: String,
    pub said: String,
}

/// Speaks to the clinic.
pub struct ClinicSpeaker<'a> {
    words: &'a Words,
    lang: Vec<Lang>,
}

impl<'a> ClinicSpeaker<'a> {
    /// In these words.
    pub fn new(words: &'a Words) -> Self {
        Self { words, lang: Lang::new(words.lang()).into_iter().collect() }
    }

    fn who(&self, who: &Who) -> String {
        format!("{} ({})", who.name, who.role.pick(&self.lang))
    }

    /// What happened, and what to do next.
    pub fn error(&self, error: &ClinicError) -> (String, String) {
        let args = error.args();
        let args: Vec<(&str, Value<'_>)> =
            args.iter().map(|(name, value)| (*name, value.as_str().into())).collect();
        let code = error.code();
        (self.words.say(&format!("err-{code}"), &args), self.words.say(&format!("do-{code}"), &args))
    }

    /// The check.
    pub fn check(&self, report: &CheckReport) -> CheckView {
        CheckView {
            ok: report.is_clean(),
            problems: report.problems.iter().map(|problem| self.problem(problem)).collect(),
            contradictions: report.walk.contradictions.iter().map(|c| self.contradiction(c)).collect(),
            near: report.walk.near.iter().map(|near| self.near(near)).collect(),
            lifts_ignored: report.ignored_lifts.iter().map(|lift| self.ignored(lift)).collect(),
        }
    }

    /// A problem.
    pub fn problem(&self, problem: &Problem) -> ProblemView {
        let value = |name: &str, value: &str| match name {
            "joint" => self.words.say(&format!("joint-{value}"), &[]),
            "motion" => self.words.say(&format!("motion-{value}"), &[]),
            "unit" => self.unit(value),
            _ => value.to_string(),
        };
        let args: Vec<(&str, Value<'_>)> =
            problem.args.iter().map(|(name, said)| (*name, value(name, said).into())).collect();
        let said = self.words.say(&format!("problem-{}", problem.code), &args);
        ProblemView { code: problem.code, place: problem.place.clone(), said }
    }

    /// A unit of the table of bounds, to stand behind a figure; empty where the bounds say enough.
    fn unit(&self, unit: &str) -> String {
        let id = match unit {
            "weeks" => "unit-weeks",
            "days" => "unit-days",
            "characters" => "unit-characters",
            "% of body weight" => "unit-body-weight",
            "" | "year" | "0-10" => return String::new(),
            symbol => return format!(" {symbol}"),
        };
        format!(" {}", self.words.say(id, &[]))
    }

    fn contradiction(&self, c: &Contradiction) -> ContradictionView {
        let (precaution, set_by) = match &c.reason.cause {
            Cause::Precaution { precaution, set_by, .. } => {
                (Some(precaution.id.to_string()), Some(self.who(set_by)))
            }
            _ => (None, None),
        };
        let mut reason = self.reason(&c.reason);
        if !c.would_pass.is_empty() {
            let ids: Vec<&str> = c.would_pass.iter().map(MovementId::as_str).collect();
            let said = self.words.say("contradiction-would-pass", &[("movements", ids.join(", ").into())]);
            reason = format!("{reason} {said}");
        }
        let day = |day: Option<NaiveDate>| day.map_or_else(String::new, |day| self.words.day_and_year(day));
        let args: Vec<(&str, Value<'_>)> = vec![
            ("item", c.item.as_str().into()),
            ("movement", c.movement.as_str().into()),
            ("stage", c.stage.as_str().into()),
            ("from", day(c.from).into()),
            ("through", day(c.through).into()),
            ("reason", reason.into()),
        ];
        let id = if c.from.is_some() { "contradiction" } else { "contradiction-undated" };
        ContradictionView {
            stage: c.stage.to_string(),
            item: c.item.to_string(),
            movement: c.movement.to_string(),
            from: c.from,
            through: c.through,
            precaution,
            set_by,
            opens: c.reason.opens,
            would_pass: c.would_pass.iter().map(ToString::to_string).collect(),
            said: self.words.say(id, &args),
        }
    }

    fn reason(&self, reason: &Reason) -> String {
        match &reason.cause {
            Cause::Precaution { precaution, set_by, measured } => {
                let why = precaution.why.pick(&self.lang).to_string();
                let args: Vec<(&str, Value<'_>)> = vec![
                    ("precaution", precaution.id.as_str().into()),
                    ("who", self.who(set_by).into()),
                    ("why", why.into()),
                ];
                let said = self.words.say("contradiction-precaution", &args);
                match self.measured(*measured, precaution) {
                    Some(measured) => format!("{said} {measured}"),
                    None => said,
                }
            }
            cause => self.words.say(&format!("reason-{}", cause.code()), &[]),
        }
    }

    fn near(&self, near: &NearLimit) -> NearView {
        let measured = self.measured(near.measured, &near.precaution).unwrap_or_default();
        let args: Vec<(&str, Value<'_>)> = vec![
            ("item", near.item.as_str().into()),
            ("movement", near.movement.as_str().into()),
            ("precaution", near.precaution.id.as_str().into()),
            ("measured", measured.into()),
        ];
        NearView {
            item: near.item.to_string(),
            movement: near.movement.to_string(),
            precaution: near.precaution.id.to_string(),
            said: self.words.say("near-limit", &args),
        }
    }

    /// A lift that will have no effect.
    pub fn ignored(&self, lift: &IgnoredLift) -> String {
        let who = lift.set_by.as_ref().map_or_else(|| "none".to_string(), |who| self.who(who));
        let args: Vec<(&str, Value<'_>)> = vec![
            ("id", lift.precaution.as_str().into()),
            ("by", self.who(&lift.by).into()),
            ("who", who.into()),
        ];
        self.words.say("clinic-lift-no-effect", &args)
    }

    /// "On the left, hip flexion reaches 96°; allowed: 90° through week 6."
    fn measured(&self, measured: Measured, precaution: &Precaution) -> Option<String> {
        let Measured::Over { quantity, side, reaches, allowed } = measured else { return None };
        let tenths = |n: i64| self.words.decimal(units(n, 10.0), usize::from(n % 10 != 0));
        let (what, reaches, allowed) = match quantity {
            Quantity::AngleTenths(joint, motion) => (
                self.joint_motion(joint, motion),
                format!("{}°", tenths(reaches)),
                format!("{}°", tenths(allowed)),
            ),
            Quantity::MomentThousandths(joint, motion) => {
                let moment = |n: i64| format!("{} N·m/kg", self.words.decimal(units(n, 1000.0), 3));
                let what = self.joint_motion(joint, motion);
                (
                    self.words.say("measured-moment", &[("what", what.into())]),
                    moment(reaches),
                    moment(allowed),
                )
            }
            Quantity::WeightPercentTenths => (
                self.words.say("measured-weight", &[]),
                format!("{} %", tenths(reaches)),
                format!("{} %", tenths(allowed)),
            ),
            Quantity::WeightKgTenths => (
                self.words.say("measured-weight", &[]),
                format!("{} kg", tenths(reaches)),
                format!("{} kg", tenths(allowed)),
            ),
        };
        let side = self.words.say(if side == Side::Left { "on-the-left" } else { "on-the-right" }, &[]);
        Some(self.words.say(
            "measured",
            &[
                ("what", what.into()),
                ("side", side.into()),
                ("reaches", reaches.into()),
                ("allowed", allowed.into()),
                ("until", self.until(&precaution.ends).into()),
            ],
        ))
    }

    fn until(&self, ends: &End) -> String {
        let week = |week: u16| self.words.say("until-week", &[("n", week.into())]);
        match ends {
            End::Through { week: Some(n), .. } | End::DayZeroUnknown { week: n } => week(*n),
            End::Through { day, week: None } => {
                self.words.say("until-day", &[("day", self.words.day_and_year(*day).into())])
            }
            End::UntilLifted { .. } => self.words.say("until-lifted", &[]),
        }
    }

    fn joint_motion(&self, joint: Joint, motion: Motion) -> String {
        let joint = self.words.say(&format!("joint-{}", joint.name()), &[]);
        let motion = self.words.say(&format!("motion-{}", motion.name()), &[]);
        self.words.say("joint-motion", &[("joint", joint.into()), ("motion", motion.into())])
    }
}

#[expect(clippy::cast_precision_loss, reason = "bounds keep values far below 2^53")]
fn units(n: i64, per_unit: f64) -> f64 {
    n as f64 / per_unit
}
