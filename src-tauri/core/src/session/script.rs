//! The count script: the compiled course of a session, in absolute offsets. Its length is a closed
//! formula of the doses; waits for the patient's "ready" and for the disk stand apart from it.

use serde::{Deserialize, Serialize};

use crate::facts::{ItemSide, OperatedSide, Position, Side};
use crate::ids::ItemId;
use crate::plan::Amount;
use crate::plan::doc::{Dose, Tempo};

/// Seconds to say what comes and how to get ready: common practice, no source.
pub const SET_UP_S: u16 = 8;
/// Seconds to count in: three, two, one.
pub const COUNT_IN_S: u16 = 3;
/// Seconds to change sides: common practice, no source.
pub const CHANGE_SIDE_S: u16 = 6;

/// Which sides work in a set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SidesAtOnce {
    /// The left.
    Left,
    /// The right.
    Right,
    /// Both together.
    Both,
    /// In turn, beginning with the left; so many repetitions a side.
    TurnsFromLeft,
    /// In turn, beginning with the right; so many repetitions a side.
    TurnsFromRight,
}

impl From<Side> for SidesAtOnce {
    fn from(side: Side) -> Self {
        match side {
            Side::Left => Self::Left,
            Side::Right => Self::Right,
        }
    }
}

impl SidesAtOnce {
    /// How many courses of the tempo make one repetition on each working side.
    fn courses(self) -> u16 {
        if matches!(self, Self::TurnsFromLeft | Self::TurnsFromRight) { 2 } else { 1 }
    }

    /// The side, or sides, of a course of the tempo, counted from 0.
    fn of_course(self, course: u16) -> Self {
        match (self, course % 2) {
            (Self::TurnsFromLeft, 0) | (Self::TurnsFromRight, 1) => Self::Left,
            (Self::TurnsFromLeft | Self::TurnsFromRight, _) => Self::Right,
            _ => self,
        }
    }
}

/// An item as a session leads it.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// The item.
    pub item: ItemId,
    /// Sets a pass.
    pub sets: u8,
    /// One set.
    pub work: Amount,
    /// Rest between sets, in seconds.
    pub rest_s: u16,
    /// The passes: all sets with the first, then all with the next.
    pub passes: Vec<SidesAtOnce>,
    /// The position, for getting ready.
    pub position: Position,
    /// Somebody must be beside the patient: it begins only with their yes.
    pub beside_you: bool,
}

impl Part {
    /// From a dose; `None` only if the dose belongs to no valid plan.
    pub fn new(
        item: ItemId,
        dose: &Dose,
        side: ItemSide,
        operated: OperatedSide,
        position: Position,
    ) -> Option<Self> {
        let working = side.working(operated);
        let passes = match (side, working.as_slice()) {
            (_, [one]) => vec![(*one).into()],
            (ItemSide::Alternating, [Side::Right, ..]) => vec![SidesAtOnce::TurnsFromRight],
            (ItemSide::Alternating, _) => vec![SidesAtOnce::TurnsFromLeft],
            (ItemSide::OneAfterTheOther, sides) => sides.iter().map(|s| (*s).into()).collect(),
            _ => vec![SidesAtOnce::Both],
        };
        let (sets, rest_s) = (dose.sets, dose.rest_s);
        Some(Self { item, sets, work: dose.amount()?, rest_s, passes, position, beside_you: false })
    }

    /// With somebody beside the patient, if the plan says so.
    pub fn with_somebody(self, beside_you: bool) -> Self {
        Self { beside_you, ..self }
    }

    /// How long one set lasts, in ms, after the count-in.
    fn work_ms(&self, sides: SidesAtOnce) -> u64 {
        let course_s = |tempo: Tempo| {
            u64::from(tempo.out_s)
                + u64::from(tempo.hold_s)
                + u64::from(tempo.back_s)
                + u64::from(tempo.pause_s)
        };
        1000 * match self.work {
            Amount::Repetitions { most, tempo, .. } => {
                u64::from(most) * u64::from(sides.courses()) * course_s(tempo)
            }
            Amount::Breaths { breaths, tempo } => u64::from(breaths) * course_s(tempo),
            Amount::Minutes(minutes) => 60 * u64::from(minutes),
            Amount::Steps(_) => 0,
        }
    }
}

/// One set to be led.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    /// Which part.
    pub part: usize,
    /// Which set, counted from 1 in each pass.
    pub set: u8,
    /// Which sides.
    pub sides: SidesAtOnce,
    /// Rest before it, in seconds, if the turn before it is led too.
    pub rest_s: u16,
}

/// How parts follow each other.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Block {
    /// One part, all its sets.
    Whole(usize),
    /// Two or more parts in turn, several times; each contributes one set a round.
    Round {
        /// Which parts, in this order. Each has as many sets as there are rounds.
        parts: Vec<usize>,
        /// How many rounds.
        rounds: u8,
        /// Rest between rounds, in seconds.
        rest_s: u16,
    },
}

/// The turns of parts in their blocks.
pub fn turns(parts: &[Part], blocks: &[Block]) -> Vec<Turn> {
    let whole = |part: usize| {
        let p = &parts[part];
        let passes = p.passes.iter();
        let of_pass = move |&sides: &SidesAtOnce| {
            (1..=p.sets).map(move |set| Turn { part, set, sides, rest_s: if set > 1 { p.rest_s } else { 0 } })
        };
        passes.flat_map(of_pass).collect::<Vec<_>>()
    };
    let mut all = Vec::new();
    for block in blocks {
        match block {
            Block::Whole(part) => all.extend(whole(*part)),
            Block::Round { parts: members, rounds, rest_s } => {
                for set in 1..=*rounds {
                    let first = all.len();
                    for &part in members {
                        let of_pass = |&sides: &SidesAtOnce| Turn { part, set, sides, rest_s: 0 };
                        all.extend(parts[part].passes.iter().map(of_pass));
                    }
                    if set > 1 {
                        all[first].rest_s = *rest_s;
                    }
                }
            }
        }
    }
    all
}

/// The length of a session in ms, as a closed formula of the doses: for each part getting ready, its
/// sets with their count-ins, the rests between them and the changes of side; for a round, as many
/// times one set of each part, and the rests between rounds.
pub fn closed_length_ms(parts: &[Part], blocks: &[Block]) -> u64 {
    let ready_and_changes =
        |p: &Part| u64::from(SET_UP_S) + (p.passes.len() as u64).saturating_sub(1) * u64::from(CHANGE_SIDE_S);
    let one_set_of_each_pass = |p: &Part| -> u64 {
        p.passes.iter().map(|sides| p.work_ms(*sides) + 1000 * u64::from(COUNT_IN_S)).sum()
    };
    let of_block = |block: &Block| match block {
        Block::Whole(part) => {
            let p = &parts[*part];
            let rests = p.passes.len() as u64 * u64::from(p.sets).saturating_sub(1) * u64::from(p.rest_s);
            1000 * (ready_and_changes(p) + rests) + u64::from(p.sets) * one_set_of_each_pass(p)
        }
        Block::Round { parts: members, rounds, rest_s } => {
            let once =
                |&part: &usize| 1000 * ready_and_changes(&parts[part]) + one_set_of_each_pass(&parts[part]);
            let rests = u64::from(*rounds).saturating_sub(1) * u64::from(*rest_s);
            u64::from(*rounds) * members.iter().map(once).sum::<u64>() + 1000 * rests
        }
    };
    blocks.iter().map(of_block).sum()
}

/// A phase of a repetition or breath.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Phase {
    Out,
    Hold,
    Back,
    Pause,
}

/// Which set.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetId {
    /// The item.
    pub item: ItemId,
    /// Which set, counted from 1 in each pass.
    pub set: u8,
    /// Which sides.
    pub sides: SidesAtOnce,
}

/// Something that happens at a moment of a session.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "cue", rename_all = "kebab-case")]
pub enum Cue {
    /// Say what comes and how to get ready.
    SetUp {
        /// Which set.
        set: SetId,
        /// For how long, in seconds.
        seconds: u16,
    },
    /// Wait until the patient is ready. Time stands still.
    AwaitReady {
        /// For which set.
        set: SetId,
    },
    /// Change sides.
    ChangeSide {
        /// To which set.
        set: SetId,
        /// For how long, in seconds.
        seconds: u16,
    },
    /// Three, two, one.
    CountIn {
        /// What is left.
        left: u16,
    },
    /// A phase begins.
    Phase {
        /// Which.
        phase: Phase,
        /// For how long, in seconds.
        seconds: u16,
        /// Which repetition or breath, counted from 1 on each side.
        number: u16,
        /// Of how many.
        of: u16,
        /// Which side does it.
        sides: SidesAtOnce,
    },
    /// A second of a hold or a rest has passed.
    Tick {
        /// Seconds left.
        left: u16,
    },
    /// A minute of a timed set begins.
    Minute {
        /// Minutes left, this one included.
        left: u16,
        /// Of how many.
        of: u16,
    },
    /// A repetition or breath is done.
    RepetitionDone {
        /// Which, counted from 1 on each side.
        number: u16,
        /// Which side did it.
        sides: SidesAtOnce,
    },
    /// Walk your steps, and say when you have. Time stands still.
    AwaitSteps {
        /// How many.
        steps: u16,
    },
    /// A set is done. Time stands still until it is on disk.
    SetDone {
        /// Which set.
        set: SetId,
        /// How many repetitions, breaths, minutes or steps were done.
        done: u16,
        /// How many were asked for; of a range, how many are enough.
        of: u16,
    },
    /// Rest.
    Rest {
        /// For how long, in seconds.
        seconds: u16,
        /// What comes after.
        next: SetId,
    },
    /// Going on after a pause.
    GoingOn {
        /// In so many seconds.
        seconds: u16,
    },
    /// Paused, because the device slept or was too late to count rightly.
    LostTime,
    /// The session is over.
    End,
}

/// A cue and its moment.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TimedCue {
    /// Ms after the start.
    pub at_ms: u64,
    /// What happens.
    pub cue: Cue,
    /// To which turn it belongs.
    pub turn: usize,
}

/// The compiled course of some turns.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Script {
    /// Cues, in order.
    pub cues: Vec<TimedCue>,
    /// The length in ms, waits apart.
    pub length_ms: u64,
}

impl Script {
    /// Compiles turns, beginning with getting ready for the first.
    pub fn compile(parts: &[Part], turns: &[Turn]) -> Self {
        let mut writer = Writer { parts, cues: Vec::new(), at_ms: 0, turn: 0 };
        for (i, turn) in turns.iter().enumerate() {
            writer.turn = i;
            writer.before(i.checked_sub(1).map(|before| &turns[before]), turn);
            writer.work(turn);
        }
        writer.cue(Cue::End);
        Self { length_ms: writer.at_ms, cues: writer.cues }
    }

    /// The script without the first repetitions of its first set, which are done already.
    pub(crate) fn skipping(mut self, courses: u16) -> Self {
        let first_set = |timed: &TimedCue| timed.turn == 0;
        let begins =
            |timed: &TimedCue| matches!(timed.cue, Cue::Phase { phase: Phase::Out, .. } | Cue::Minute { .. });
        let starts: Vec<usize> =
            (0..self.cues.len()).filter(|&i| first_set(&self.cues[i]) && begins(&self.cues[i])).collect();
        let end = self.cues.iter().position(|timed| matches!(timed.cue, Cue::SetDone { .. }));
        let to = starts.get(usize::from(courses)).copied().or(end);
        if let (Some(&from), Some(to)) = (starts.first(), to) {
            let skipped_ms = self.cues[to].at_ms - self.cues[from].at_ms;
            self.cues.drain(from..to);
            self.cues[from..].iter_mut().for_each(|timed| timed.at_ms -= skipped_ms);
            self.length_ms -= skipped_ms;
        }
        self
    }
}

struct Writer<'a> {
    parts: &'a [Part],
    cues: Vec<TimedCue>,
    at_ms: u64,
    turn: usize,
}

impl Writer<'_> {
    fn cue(&mut self, cue: Cue) {
        self.cues.push(TimedCue { at_ms: self.at_ms, cue, turn: self.turn });
    }

    fn pass(&mut self, seconds: u16) {
        self.at_ms += 1000 * u64::from(seconds);
    }

    fn set_id(&self, turn: &Turn) -> SetId {
        SetId { item: self.parts[turn.part].item.clone(), set: turn.set, sides: turn.sides }
    }

    /// What leads up to a set: rest, getting ready or changing sides, and the count-in.
    fn before(&mut self, last: Option<&Turn>, turn: &Turn) {
        let set = self.set_id(turn);
        if last.is_some() && turn.rest_s > 0 {
            self.cue(Cue::Rest { seconds: turn.rest_s, next: set.clone() });
            self.seconds(turn.rest_s);
        }
        let position = self.parts[turn.part].position;
        match last {
            Some(last) if last.part == turn.part && last.sides == turn.sides => {}
            Some(last) if last.part == turn.part => {
                self.cue(Cue::ChangeSide { set: set.clone(), seconds: CHANGE_SIDE_S });
                self.pass(CHANGE_SIDE_S);
                if position == Position::SideLying {
                    // To roll over is a change of position.
                    self.cue(Cue::AwaitReady { set });
                }
            }
            _ => {
                let stays = last.is_some_and(|last| self.parts[last.part].position == position);
                self.cue(Cue::SetUp { set: set.clone(), seconds: SET_UP_S });
                self.pass(SET_UP_S);
                if !stays || self.parts[turn.part].beside_you {
                    self.cue(Cue::AwaitReady { set });
                }
            }
        }
        for left in (1..=COUNT_IN_S).rev() {
            self.cue(Cue::CountIn { left });
            self.pass(1);
        }
    }

    fn work(&mut self, turn: &Turn) {
        let of = match self.parts[turn.part].work {
            Amount::Repetitions { least, most, tempo } => {
                for course in 0..most * turn.sides.courses() {
                    let number = course / turn.sides.courses() + 1;
                    self.course(tempo, number, most, turn.sides.of_course(course));
                }
                least
            }
            Amount::Breaths { breaths, tempo } => {
                (1..=breaths).for_each(|number| self.course(tempo, number, breaths, turn.sides));
                breaths
            }
            Amount::Minutes(minutes) => {
                for left in (1..=minutes).rev() {
                    self.cue(Cue::Minute { left, of: minutes });
                    self.pass(60);
                    let number = minutes - left + 1;
                    self.cue(Cue::RepetitionDone { number, sides: turn.sides });
                }
                minutes
            }
            Amount::Steps(steps) => {
                self.cue(Cue::AwaitSteps { steps });
                steps
            }
        };
        let set = self.set_id(turn);
        self.cue(Cue::SetDone { set, done: of, of });
    }

    fn course(&mut self, tempo: Tempo, number: u16, of: u16, sides: SidesAtOnce) {
        let phases = [
            (Phase::Out, tempo.out_s),
            (Phase::Hold, tempo.hold_s),
            (Phase::Back, tempo.back_s),
            (Phase::Pause, tempo.pause_s),
        ];
        for (phase, seconds) in phases.into_iter().filter(|(_, seconds)| *seconds > 0) {
            self.cue(Cue::Phase { phase, seconds, number, of, sides });
            if phase == Phase::Hold {
                self.seconds(seconds);
            } else {
                self.pass(seconds);
            }
            if phase == Phase::Back {
                self.cue(Cue::RepetitionDone { number, sides });
            }
        }
    }

    /// Lets seconds pass, with a tick after each but the last.
    fn seconds(&mut self, seconds: u16) {
        for left in (0..seconds).rev() {
            self.pass(1);
            if left > 0 {
                self.cue(Cue::Tick { left });
            }
        }
    }
}
