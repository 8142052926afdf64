//! What the cues of a session add up to on the screen.

use std::collections::BTreeMap;

use sendaluna_core::facts::Position;
use sendaluna_core::ids::ItemId;
use sendaluna_core::library::Prop;
use sendaluna_core::plan::Amount;
use sendaluna_core::plan::doc::{Dose, Item};
use sendaluna_core::session::{Cue, Part, Phase, SetId, SidesAtOnce, State, Turn};
use sendaluna_words::Words;

use crate::guide::Guide;
use crate::home::{Bedside, Known};
use crate::lead::heard::Heard;
use crate::view::figure::FigureAsked;
use crate::view::session::{MotionView, StageItemView, TallySetView};
use sendaluna_say::Speaker;

/// An item's texts, as it is prescribed and in its easier variant.
struct Texts {
    plain: StageItemView,
    easier: Option<StageItemView>,
    is_breaths: bool,
}

/// What is shown.
pub struct Shown {
    texts: BTreeMap<ItemId, Texts>,
    sides: [(SidesAtOnce, String); 5],
    asks_effort: bool,
    /// The set that is on the screen.
    set: Option<SetId>,
    rounds: BTreeMap<(ItemId, SidesAtOnce), Vec<TallySetView>>,
    tally: Vec<TallySetView>,
    count: Option<u16>,
    phase: String,
    phase_left: Option<u16>,
    motion: Option<MotionView>,
    /// Which side does this repetition, where sides take turns.
    turn: Option<SidesAtOnce>,
    /// "of 10, round 2 of 2", while the figure counts what is done.
    of_said: String,
    /// "round 2 of 2", while the figure is one of seconds.
    round_said: String,
    counts: bool,
    said: Vec<String>,
    heard: Vec<Heard>,
    is_fresh: bool,
}

impl Shown {
    /// Of a session that is about to be led, or gone on with.
    pub fn new(
        home: &Bedside,
        known: &Known,
        words: &Words,
        guide: &Guide,
        doses: &BTreeMap<ItemId, Dose>,
    ) -> Self {
        let speaker = Speaker::new(words, Some(&known.plan));
        let texts = |part: &Part| {
            let item = known.plan.item(&part.item)?;
            let dose = speaker.dose(doses.get(&part.item).unwrap_or(&item.dose));
            let plain = item_view(home, known, &speaker, item, &item.movement, part, &dose);
            let easier = item.easier.as_ref();
            let easier =
                easier.map(|easier| item_view(home, known, &speaker, item, &easier.movement, part, &dose));
            let is_breaths = matches!(part.work, Amount::Breaths { .. });
            Some((part.item.clone(), Texts { plain, easier, is_breaths }))
        };
        let all = [
            SidesAtOnce::Left,
            SidesAtOnce::Right,
            SidesAtOnce::Both,
            SidesAtOnce::TurnsFromLeft,
            SidesAtOnce::TurnsFromRight,
        ];
        let asks_effort = guide.items().any(|item| home.asks_effort(&known.plan, item));
        let mut shown = Self {
            texts: guide.parts().iter().filter_map(texts).collect(),
            sides: all.map(|sides| (sides, speaker.sides(sides))),
            asks_effort,
            set: None,
            rounds: BTreeMap::new(),
            tally: Vec::new(),
            count: None,
            phase: String::new(),
            phase_left: None,
            motion: None,
            turn: None,
            of_said: String::new(),
            round_said: String::new(),
            counts: false,
            said: Vec::new(),
            heard: Vec::new(),
            is_fresh: false,
        };
        shown.lay_out(known, guide);
        shown
    }

    /// Every round of every part as still to be done, but for those on disk.
    fn lay_out(&mut self, known: &Known, guide: &Guide) {
        let done = known.state.sessions.iter().find(|session| session.id == *guide.session());
        for part in guide.parts() {
            for &sides in &part.passes {
                let round = |set: u8| {
                    let set = SetId { item: part.item.clone(), set, sides };
                    let done = done.and_then(|session| session.set(&set)).map_or(0, |record| record.done);
                    TallySetView { done, of: part.work.most() }
                };
                self.rounds.insert((part.item.clone(), sides), (1..=part.sets).map(round).collect());
            }
        }
    }

    /// Whether anything was noted since it was hushed.
    pub fn is_fresh(&self) -> bool {
        self.is_fresh
    }

    /// What was said is said.
    pub fn hush(&mut self) {
        self.said.clear();
        self.is_fresh = false;
    }

    /// Says something before all else.
    pub fn say_first(&mut self, said: String) {
        self.heard.insert(0, Heard::sentence(&said));
        self.said.insert(0, said);
    }

    /// Something is heard besides cues.
    pub fn hear(&mut self, heard: Heard) {
        self.heard.push(heard);
    }

    /// What is to be heard since this was last asked.
    pub fn take_heard(&mut self) -> Vec<Heard> {
        std::mem::take(&mut self.heard)
    }

    /// Takes note of cues.
    pub fn take(&mut self, cues: &[Cue], guide: &Guide, speaker: &Speaker<'_>) {
        for cue in cues {
            self.is_fresh = true;
            self.take_one(cue, guide, speaker);
        }
        if let Some((part, turn)) = guide.turn().filter(|_| self.set.is_none()) {
            self.enter(set_id(part, turn), part, speaker);
        }
    }

    fn take_one(&mut self, cue: &Cue, guide: &Guide, speaker: &Speaker<'_>) {
        let words = speaker.words;
        let say = |id: &str| words.say(id, &[]);
        self.phase_left = None;
        if !matches!(
            cue,
            Cue::Phase { .. } | Cue::Tick { .. } | Cue::RepetitionDone { .. } | Cue::GoingOn { .. }
        ) {
            (self.motion, self.turn) = (None, None);
        }
        self.counts = match cue {
            Cue::Phase { .. } | Cue::Minute { .. } | Cue::AwaitSteps { .. } => true,
            Cue::Tick { .. } | Cue::RepetitionDone { .. } | Cue::GoingOn { .. } | Cue::LostTime => {
                self.counts
            }
            _ => false,
        };
        match cue {
            Cue::SetUp { set, .. } | Cue::AwaitReady { set } => {
                self.enter_set(set, guide, speaker);
                (self.count, self.phase) = (None, say("stage-get-ready"));
            }
            Cue::ChangeSide { set, .. } => {
                self.enter_set(set, guide, speaker);
                (self.count, self.phase) = (None, say("stage-change-sides"));
            }
            Cue::CountIn { left } => {
                self.enter_turn(guide, speaker);
                (self.count, self.phase) = (Some(*left), say("stage-count-in"));
            }
            Cue::Phase { phase, seconds, number, sides, .. } => {
                self.motion = Some(MotionView { phase: *phase, seconds: *seconds, number: *number });
                self.turn = Some(*sides);
                self.count = Some(*number);
                self.phase = say(phase_word(*phase, self.is_breaths()));
                self.phase_left = Some(*seconds).filter(|_| *phase == Phase::Hold);
            }
            Cue::Tick { left } if guide.state() == State::Resting => self.count = Some(*left),
            Cue::Tick { left } => self.phase_left = Some(*left),
            Cue::Minute { left, .. } => {
                self.motion = Some(MotionView { phase: Phase::Hold, seconds: 60, number: 0 });
                (self.count, self.phase) = (Some(*left), say("stage-keep-going"));
                self.of_said = words.say("stage-minutes", &[("n", (*left).into())]);
            }
            Cue::RepetitionDone { number, .. } => self.done(*number),
            Cue::AwaitSteps { steps } => {
                self.enter_turn(guide, speaker);
                (self.count, self.phase) = (Some(*steps), say("stage-walk"));
            }
            Cue::SetDone { set, done, .. } => self.set_done(set, *done),
            Cue::Rest { seconds, .. } => (self.count, self.phase) = (Some(*seconds), say("stage-rest")),
            Cue::GoingOn { .. } => {}
            Cue::LostTime => self.phase = say("stage-paused"),
            Cue::End => (self.count, self.phase) = (None, say("stage-done")),
        }
        let stopped = *cue == Cue::End && guide.state() == State::Stopped;
        // A rest counted down would sound like the count-in that follows it.
        let rests = matches!(cue, Cue::Tick { .. }) && guide.state() == State::Resting;
        if !stopped && !rests {
            let spoken = self.spoken(cue, speaker);
            // A second of a hold is too short for a sentence; its numbers say the rest.
            let holds = matches!(cue, Cue::Phase { phase: Phase::Hold, .. });
            let aloud = if holds { Some(self.phase.as_str()) } else { spoken.as_deref() };
            let aloud = aloud.map(str::to_string);
            self.hear_cue(cue, aloud.as_deref(), words);
            self.said.extend(spoken);
        }
    }

    /// What is to be heard of a cue. Whoever lies with closed eyes hears how to get ready as well.
    fn hear_cue(&mut self, cue: &Cue, spoken: Option<&str>, words: &Words) {
        let item = self.set.as_ref().and_then(|set| self.texts.get(&set.item)).map(|texts| &texts.plain);
        let get_ready = item.filter(|_| matches!(cue, Cue::SetUp { .. })).map(|item| {
            let first = [(item.standing, "cue-hand-on-rail"), (item.beside_you, "cue-beside-you")];
            let first: Vec<_> =
                first.iter().filter(|(asks, _)| *asks).map(|(_, id)| words.say(id, &[])).collect();
            (first, item.set_up.clone())
        });
        let (first, set_up) = get_ready.unwrap_or_default();
        let all = first
            .iter()
            .map(|said| Heard::sentence(said))
            .chain([Heard::of(cue, spoken), Heard::sentence(&set_up)]);
        self.heard.extend(all.filter(Heard::is_something));
    }

    fn spoken(&self, cue: &Cue, speaker: &Speaker<'_>) -> Option<String> {
        let words = speaker.words;
        match cue {
            Cue::AwaitReady { .. } if self.needs_somebody() => Some(words.say("stage-say-when-beside", &[])),
            Cue::AwaitReady { .. } => Some(words.say("stage-say-when-ready", &[])),
            Cue::AwaitSteps { steps } => Some(words.say("stage-walk-steps", &[("n", (*steps).into())])),
            Cue::LostTime => Some(words.say("stage-lost-time", &[])),
            Cue::Phase { phase: Phase::Out | Phase::Back, .. } if self.is_breaths() => {
                Some(self.phase.clone())
            }
            cue => {
                let name = self.set.as_ref().and_then(|set| self.texts.get(&set.item));
                speaker.cue(cue, name.map_or("", |texts| &texts.plain.name))
            }
        }
    }

    fn enter_turn(&mut self, guide: &Guide, speaker: &Speaker<'_>) {
        if let Some((part, turn)) = guide.turn() {
            self.enter(set_id(part, turn), part, speaker);
        }
    }

    fn enter_set(&mut self, set: &SetId, guide: &Guide, speaker: &Speaker<'_>) {
        if let Some(part) = guide.parts().iter().find(|part| part.item == set.item) {
            self.enter(set.clone(), part, speaker);
        }
    }

    fn enter(&mut self, set: SetId, part: &Part, speaker: &Speaker<'_>) {
        let most = part.work.most();
        let args = [
            ("of", most.into()),
            ("n", most.into()),
            ("round", set.set.into()),
            ("rounds", part.sets.into()),
        ];
        let id = match (part.work, part.sets) {
            (Amount::Repetitions { .. } | Amount::Breaths { .. }, 1) => "stage-of",
            (Amount::Repetitions { .. } | Amount::Breaths { .. }, _) => "stage-of-round",
            (Amount::Minutes(_), _) => "stage-minutes",
            (Amount::Steps(_), _) => "stage-steps",
        };
        self.of_said = speaker.words.say(id, &args);
        self.round_said = if part.sets > 1 { speaker.words.say("stage-round", &args) } else { String::new() };
        // In the easier way the same set goes on: what was done of it stays.
        if self.set.as_ref() != Some(&set) {
            self.tally = self.rounds.get(&(set.item.clone(), set.sides)).cloned().unwrap_or_default();
        }
        self.set = Some(set);
    }

    /// The repetition of this number is done, on the side that comes last if sides take turns.
    fn done(&mut self, number: u16) {
        let Some(set) = &self.set else { return };
        if let Some(round) = self.tally.get_mut(usize::from(set.set).saturating_sub(1)) {
            round.done = number.min(round.of);
        }
    }

    fn set_done(&mut self, set: &SetId, done: u16) {
        let index = usize::from(set.set).saturating_sub(1);
        let round = self.rounds.get_mut(&(set.item.clone(), set.sides)).and_then(|all| all.get_mut(index));
        if let Some(round) = round {
            round.done = done.min(round.of);
            if self.set.as_ref() == Some(set) {
                self.tally[index].done = round.done;
            }
        }
    }

    /// The last set was corrected.
    pub fn correct(&mut self, last: Option<&(SetId, u16)>) {
        if let Some((set, done)) = last {
            self.set_done(set, *done);
            let shown = self.set.as_ref().filter(|shown| shown.item == set.item && shown.sides == set.sides);
            if let Some(rounds) = shown.and_then(|_| self.rounds.get(&(set.item.clone(), set.sides))) {
                self.tally.clone_from(rounds);
            }
        }
    }

    /// Somebody must be beside the patient for the present item.
    pub fn needs_somebody(&self) -> bool {
        let texts = self.set.as_ref().and_then(|set| self.texts.get(&set.item));
        texts.is_some_and(|texts| texts.plain.beside_you)
    }

    fn is_breaths(&self) -> bool {
        let texts = self.set.as_ref().and_then(|set| self.texts.get(&set.item));
        texts.is_some_and(|texts| texts.is_breaths)
    }

    /// The item on the screen, and what comes after it in a rest.
    pub fn items(&self, guide: &Guide) -> (Option<StageItemView>, Option<StageItemView>) {
        let item = self.set.as_ref().and_then(|set| self.item(guide, &set.item, set.sides));
        let resting = matches!(guide.state(), State::Resting | State::Paused);
        let next = guide.turn().filter(|_| resting);
        let next = next.and_then(|(part, turn)| self.item(guide, &part.item, turn.sides));
        (item, next)
    }

    fn item(&self, guide: &Guide, id: &ItemId, sides: SidesAtOnce) -> Option<StageItemView> {
        let texts = self.texts.get(id)?;
        let view = texts.easier.as_ref().filter(|_| guide.is_easier(id)).unwrap_or(&texts.plain);
        let side = self.sides.iter().find(|(known, _)| *known == sides);
        let turn = self.turn.filter(|_| self.set.as_ref().is_some_and(|set| set.item == *id));
        let figure = FigureAsked {
            easier: texts.easier.is_some() && guide.is_easier(id),
            ..crate::figure::of_sides(&view.figure, turn.unwrap_or(sides))
        };
        let side = side.map_or_else(String::new, |(_, said)| said.clone());
        Some(StageItemView { side, figure, ..view.clone() })
    }

    /// The largest figure.
    pub fn count(&self) -> Option<u16> {
        self.count
    }

    /// The word beside it.
    pub fn phase(&self) -> &str {
        &self.phase
    }

    /// What the figure does.
    pub fn motion(&self) -> Option<MotionView> {
        self.motion
    }

    /// Seconds left of a hold.
    pub fn phase_left(&self) -> Option<u16> {
        self.phase_left
    }

    /// "of 10, round 2 of 2"; only the round, while the figure is one of seconds.
    pub fn of_said(&self) -> &str {
        if self.counts { &self.of_said } else { &self.round_said }
    }

    /// Rounds of the item on the screen.
    pub fn tally(&self) -> &[TallySetView] {
        &self.tally
    }

    /// The same in words.
    pub fn tally_said(&self, words: &Words) -> String {
        let of = |pick: fn(&TallySetView) -> u16| {
            self.tally.iter().map(|round| u32::from(pick(round))).sum::<u32>()
        };
        words.say("stage-tally", &[("done", of(|r| r.done).into()), ("of", of(|r| r.of).into())])
    }

    /// What is said aloud now.
    pub fn said(&self) -> &[String] {
        &self.said
    }

    /// No set of the session has anything done.
    pub fn is_nothing_done(&self) -> bool {
        self.rounds.values().flatten().all(|round| round.done == 0)
    }

    /// How hard it was is asked.
    pub fn asks_effort(&self) -> bool {
        self.asks_effort
    }
}

fn set_id(part: &Part, turn: &Turn) -> SetId {
    SetId { item: part.item.clone(), set: turn.set, sides: turn.sides }
}

fn phase_word(phase: Phase, breaths: bool) -> &'static str {
    match (phase, breaths) {
        (Phase::Out, true) => "stage-breathe-in",
        (Phase::Back, true) => "stage-breathe-out",
        (Phase::Out, false) => "stage-out",
        (Phase::Back, false) => "stage-back",
        (Phase::Hold, _) => "stage-hold",
        (Phase::Pause, _) => "stage-let-go",
    }
}

/// An item's texts. Standing work first says where the hand goes.
fn item_view(
    home: &Bedside,
    known: &Known,
    speaker: &Speaker<'_>,
    item: &Item,
    movement: &sendaluna_core::ids::MovementId,
    part: &Part,
    dose: &str,
) -> StageItemView {
    let (library, plan) = (home.library(), &known.plan);
    let found = library.find(plan, movement);
    let facts = found.map(|found| found.movement().facts());
    let rail = found.is_some_and(|found| found.movement().props.contains(&Prop::Rail));
    let stands = matches!(part.position, Position::Standing | Position::BentOver);
    let unknown = || speaker.words.say("position-unknown", &[]);
    StageItemView {
        item: item.id.clone(),
        name: speaker.name(library, plan, movement),
        side: String::new(),
        position: part.position,
        position_said: facts.map_or_else(unknown, |facts| speaker.position(facts)),
        set_up: speaker.set_up(library, plan, movement),
        how: speaker.how(library, plan, movement),
        feel: speaker.feel(library, plan, movement),
        figure: crate::figure::of_item(plan, item),
        faults: speaker.faults(library, plan, movement),
        dose: dose.to_string(),
        note: item.note.as_ref().map(|note| speaker.text(note)),
        beside_you: item.beside_you,
        standing: stands && rail,
    }
}
