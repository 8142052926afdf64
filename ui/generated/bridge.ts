// Generated from the views of `bedside`; a test says how.

export type Tier = "emergency" | "ring-today" | "note";

export type SideName = "left" | "right" | "both" | "neither";

export type Weekday = "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday";

export type DistressName = "none" | "some" | "much";

export type PaceName = "prescribed" | "slower" | "slowest" | "by-hand";

export type WhyNotName = "hurts" | "unwell" | "tired" | "no-time" | "away" | "not-said";

export type BreakWhyName = "own" | "clinic" | "hospital";

export type PositionName = "supine" | "hook-lying" | "side-lying" | "prone" | "seated" | "standing" | "bent-over" | "kneeling" | "hands-and-knees";

export type PlaceName = "hip" | "thigh" | "knee" | "calf" | "foot" | "back" | "shoulder" | "elsewhere";

export type PainKindName = "stretching" | "sharp";

export type PainAnswerName = "go-on" | "gently" | "easier" | "stop-exercise" | "stop-today";

export type EndingName = "whole" | "part" | "stopped-as-told";

export type SetBackName = "fall" | "readmission";

export type PhaseName = "out" | "hold" | "back" | "pause";

export type TimerStateName = "ready" | "count-in" | "running" | "done" | "stopped";

export type WorkingName = "left" | "right";

export type PartName = "ground" | "shadow" | "top" | "face" | "line" | "soft" | "carried" | "far" | "far-operated" | "near" | "near-operated" | "arc" | "tick";

/**
 * Which figure. The same question always has the same answer while a plan is in force.
 */
export type FigureAsked = { 
/**
 * Of which item.
 */
item: string, 
/**
 * In its easier variant.
 */
easier: boolean, 
/**
 * Which side works, and is near.
 */
working: WorkingName, 
/**
 * Both sides do the same together.
 */
both: boolean, };

/**
 * A figure: shapes in the order in which they are painted, each with its numbers for every frame of
 * the way out. Lengths are hundredths of stature, y downwards.
 */
export type FigureView = { 
/**
 * Left, top, width and height of everything in every frame.
 */
view: [number, number, number, number], 
/**
 * The shapes, the farthest first.
 */
shapes: Array<ShapeView>, };

/**
 * A shape.
 */
export type ShapeView = { 
/**
 * What it is, which says how it is painted.
 */
part: PartName, 
/**
 * An SVG path with `~` for each number.
 */
form: string, 
/**
 * The numbers: one list if it stays as it is, else one for each frame.
 */
frames: Array<Array<number>>, };

/**
 * What went wrong, in the patient's words.
 */
export type ProblemView = { 
/**
 * A stable code.
 */
code: string, 
/**
 * What happened, and that nothing was lost.
 */
happened: string, 
/**
 * What to do.
 */
to_do: string, 
/**
 * Why something is not allowed yet, with who says so.
 */
reasons: Array<string>, 
/**
 * Whom to ring, if a plan is held.
 */
ring: string | null, };

/**
 * A language that ships.
 */
export type LanguageView = { 
/**
 * Its tag.
 */
lang: string, 
/**
 * Its own name.
 */
name: string, 
/**
 * It is written from right to left.
 */
rtl: boolean, };

/**
 * Light, dark, or as the device.
 */
export type Theme = "system" | "light" | "dark";

/**
 * How a session is to be heard.
 */
export type Hearing = { 
/**
 * Cues are spoken.
 */
speech: boolean, 
/**
 * Cues have tones.
 */
tones: boolean, 
/**
 * How fast it speaks, -100 to 100; 0 is the voice's own.
 */
rate: number, 
/**
 * How high it speaks, -100 to 100; 0 is the voice's own.
 */
pitch: number, };

/**
 * How the patient wants it.
 */
export type SettingsView = { 
/**
 * The language.
 */
language: string, 
/**
 * Text size, in per cent.
 */
text: number, 
/**
 * Light, dark, or as the device.
 */
theme: Theme, 
/**
 * Awake from, in minutes after midnight.
 */
awake_from_min: number, 
/**
 * Awake to, in minutes after midnight.
 */
awake_to_min: number, 
/**
 * Awake from, as people say it.
 */
awake_from: string, 
/**
 * Awake to, as people say it.
 */
awake_to: string, 
/**
 * How a session is to be heard.
 */
hearing: Hearing, 
/**
 * How fast the count goes.
 */
pace: PaceName, };

/**
 * How much a notice says.
 */
export type Shows = "little" | "exercises";

/**
 * How the patient wants to be reminded, said.
 */
export type RemindingView = { 
/**
 * At all.
 */
on: boolean, 
/**
 * Today's times, as people say them; empty if there are none.
 */
today_said: string, 
/**
 * The patient has chosen the times.
 */
own_times: boolean, 
/**
 * The times of a day, in minutes after midnight: those chosen, else those of the week's busiest day.
 */
times_min: Array<number>, 
/**
 * The same, as people say them.
 */
times: Array<string>, 
/**
 * So many times the plan asks for on the week's busiest day.
 */
asks_most: number, 
/**
 * The days of the week.
 */
days_off: Array<DayOffView>, 
/**
 * It is quiet in the hours of sleep, and not at hours of the patient's own.
 */
quiet_asleep: boolean, 
/**
 * Quiet from, in minutes after midnight.
 */
quiet_from_min: number, 
/**
 * Quiet to, in minutes after midnight.
 */
quiet_to_min: number, 
/**
 * Quiet from, as people say it.
 */
quiet_from: string, 
/**
 * Quiet to, as people say it.
 */
quiet_to: string, 
/**
 * A notice comes with a sound.
 */
sound: boolean, 
/**
 * How much a notice says.
 */
shows: Shows, 
/**
 * The break that today lies in, if it does.
 */
break_said: string | null, };

/**
 * A day of the week.
 */
export type DayOffView = { 
/**
 * Which.
 */
day: Weekday, 
/**
 * Its name.
 */
name: string, 
/**
 * It is without a reminder.
 */
off: boolean, };

/**
 * "You said not today. Why was that?" It is asked once.
 */
export type WhyNotView = { 
/**
 * Of which day.
 */
day: string, 
/**
 * The question.
 */
said: string, };

/**
 * What a window needs first.
 */
export type StartView = { 
/**
 * How the patient wants it.
 */
settings: SettingsView, 
/**
 * Languages that ship.
 */
languages: Array<LanguageView>, 
/**
 * A plan is held.
 */
has_plan: boolean, 
/**
 * The first two minutes have not been gone through.
 */
first_time: boolean, 
/**
 * The record cannot be used: this is all that can be shown.
 */
problem: ProblemView | null, 
/**
 * Whom to ring, where the record cannot be used but can be looked at.
 */
contacts: ContactsView | null, 
/**
 * Today, if a plan is held.
 */
day: DayView | null, 
/**
 * How the patient wants to be reminded, if a plan is held.
 */
reminding: RemindingView | null, 
/**
 * Whether reminders start when the device does; `None` if this device cannot. The shell knows.
 */
starts_at_login: boolean | null, };

/**
 * What was written down.
 */
export type WrittenView = { 
/**
 * The sentence.
 */
said: string, 
/**
 * It was done against a gate: ring the clinic.
 */
against: boolean, };

/**
 * Where taking a file in stands.
 */
export type OfferView = { "step": "code", 
/**
 * Why the one that was typed did not fit.
 */
problem: ProblemView | null, } | { "step": "summary", 
/**
 * What it says.
 */
summary: SummaryView, } | { "step": "refused", 
/**
 * Why, and what to do.
 */
problem: ProblemView, };

/**
 * The summary of an offered plan.
 */
export type SummaryView = { 
/**
 * Which plan this is, to the byte: what is confirmed is what was read.
 */
digest: string, 
/**
 * Whose plan.
 */
called: string, 
/**
 * Year of birth.
 */
born: number, 
/**
 * The clinic.
 */
clinic: string, 
/**
 * Which revision.
 */
revision: number, 
/**
 * Operations and injuries, with their days.
 */
episodes: Array<EpisodeView>, 
/**
 * How many exercises.
 */
exercises: number, 
/**
 * Exercises that are not allowed yet, and when they open.
 */
not_yet: Array<NotYetView>, 
/**
 * Lifts that have no effect.
 */
lifts_ignored: Array<string>, 
/**
 * Whom to ring.
 */
contacts: ContactsView, 
/**
 * Today's date, to be confirmed.
 */
today: string, 
/**
 * The same, as people say it.
 */
today_said: string, 
/**
 * The side is to be asked.
 */
first: boolean, 
/**
 * It is in force already.
 */
same_again: boolean, };

/**
 * An operation or injury.
 */
export type EpisodeView = { 
/**
 * What it was.
 */
name: string, 
/**
 * When, as people say it.
 */
day_said: string, };

/**
 * An exercise that is not allowed yet.
 */
export type NotYetView = { 
/**
 * Its name.
 */
name: string, 
/**
 * The day on which it opens, if that is known.
 */
opens: string | null, 
/**
 * The sentence.
 */
said: string, 
/**
 * Its figure, if this version knows the movement.
 */
figure: FigureView | null, };

/**
 * A day.
 */
export type DayView = { 
/**
 * The date on the device.
 */
date: string, 
/**
 * The date, as people say it.
 */
date_said: string, 
/**
 * What the patient likes to be called.
 */
called: string, 
/**
 * Where each episode stands: "Week 7 after: …".
 */
weeks: Array<string>, 
/**
 * The weeks of each episode whose day 0 is known.
 */
line: Array<EpisodeWeeksView>, 
/**
 * Things to know first: the plan's day stands still, a long break, a stop that said to ring.
 */
notices: Array<string>, 
/**
 * Exercises asked for now, allowed and not yet done.
 */
now: NowView, 
/**
 * Items of today, in the plan's order.
 */
due: Array<ItemView>, 
/**
 * Items of the plan that are not allowed yet.
 */
not_yet: Array<ItemView>, 
/**
 * Tests that the clinic asks for, not yet done in their weeks.
 */
tests: Array<TestView>, 
/**
 * Care.
 */
care: Array<CareView>, 
/**
 * Rules of the day.
 */
rules: Array<RuleView>, 
/**
 * Lifts that have no effect.
 */
lifts_ignored: Array<string>, 
/**
 * Whom to ring, and when to stop.
 */
contacts: ContactsView, 
/**
 * A session of today can be gone on with.
 */
can_go_on: boolean, 
/**
 * A session of what is due now can begin, questions apart.
 */
can_begin: boolean, 
/**
 * After so long a break the clinic is rung first; nothing begins until the patient says so.
 */
ring_first: boolean, 
/**
 * A stop that said to ring, until the patient has spoken to the clinic.
 */
stop: StopView | null, 
/**
 * "You said not today. Why was that?"
 */
why_not: WhyNotView | null, };

/**
 * "Now: 6 exercises, 24 minutes".
 */
export type NowView = { 
/**
 * How many exercises.
 */
exercises: number, 
/**
 * How many minutes, rounded up.
 */
minutes: number, 
/**
 * The sentence.
 */
said: string, };

/**
 * An item.
 */
export type ItemView = { 
/**
 * Its id.
 */
item: string, 
/**
 * Its name.
 */
name: string, 
/**
 * Which side.
 */
side: string, 
/**
 * The position it is done in; `None` if this version does not know the movement.
 */
position: PositionName | null, 
/**
 * The position, in words.
 */
position_said: string, 
/**
 * Its figure.
 */
figure: FigureAsked, 
/**
 * How much, in sentences.
 */
dose: string, 
/**
 * Where it stands among its signed doses, if its dose moves.
 */
step: StepView | null, 
/**
 * How many rounds, for who writes it down by hand.
 */
sets: number, 
/**
 * How many repetitions, breaths, minutes or steps in each.
 */
each: number, 
/**
 * Times today.
 */
times: number, 
/**
 * Times done today.
 */
done: number, 
/**
 * How often, and how often done, in words.
 */
times_said: string, 
/**
 * A session of everything due now leads it.
 */
is_due: boolean, 
/**
 * It can be started alone, now.
 */
can_start: boolean, 
/**
 * Somebody must be beside the patient.
 */
beside_you: boolean, 
/**
 * The clinic's note.
 */
note: string | null, 
/**
 * How to get ready.
 */
set_up: string, 
/**
 * How to do it.
 */
how: string, 
/**
 * What one should feel.
 */
feel: string, 
/**
 * What to keep an eye on, and when to stop it.
 */
faults: string, 
/**
 * The patient has stopped it: "my clinic told me to stop this".
 */
tightened: boolean, 
/**
 * Its gate.
 */
gate: GateView, };

/**
 * Where an item stands among its signed doses.
 */
export type StepView = { 
/**
 * The step, counted from 1.
 */
step: number, 
/**
 * How many there are.
 */
of: number, 
/**
 * "Step 2 of 4."
 */
said: string, 
/**
 * One up that the clinic's rule allows now, in words.
 */
up: string | null, 
/**
 * There is a smaller step.
 */
can_down: boolean, };

/**
 * A gate.
 */
export type GateView = { 
/**
 * It may be done.
 */
open: boolean, 
/**
 * The day on which it opens, if that is known.
 */
opens: string | null, 
/**
 * The sentence: "Not yet. Opens …", or that it may be done.
 */
said: string, 
/**
 * Every reason.
 */
reasons: Array<ReasonView>, };

/**
 * A reason.
 */
export type ReasonView = { 
/**
 * The precaution, if it is one.
 */
precaution: string | null, 
/**
 * Who set it.
 */
set_by: string | null, 
/**
 * The first day on which this reason no longer holds.
 */
opens: string | null, 
/**
 * The sentence.
 */
said: string, };

/**
 * A care item.
 */
export type CareView = { 
/**
 * Its id.
 */
care: string, 
/**
 * What it is.
 */
text: string, 
/**
 * Times today.
 */
times: number, 
/**
 * Times done today.
 */
done: number, 
/**
 * Both, in words.
 */
done_said: string, };

/**
 * A rule of the day.
 */
export type RuleView = { 
/**
 * The precaution it is.
 */
precaution: string, 
/**
 * What it says.
 */
text: string, 
/**
 * Who set it.
 */
set_by: string, 
/**
 * The same, as a sentence.
 */
set_by_said: string, 
/**
 * The first day on which it no longer holds.
 */
opens: string | null, 
/**
 * Until when, in words.
 */
until_said: string, };

/**
 * Whom to ring, and when to stop.
 */
export type ContactsView = { 
/**
 * The clinic.
 */
clinic: string, 
/**
 * In working hours.
 */
phone: string, 
/**
 * Out of hours.
 */
out_of_hours_phone: string, 
/**
 * The emergency number.
 */
emergency_phone: string, 
/**
 * What to do in an emergency.
 */
emergency_advice: string, 
/**
 * Warning signs, gravest first.
 */
signs: Array<SignView>, 
/**
 * Cautions, always shown with them.
 */
cautions: Array<string>, };

/**
 * A warning sign.
 */
export type SignView = { 
/**
 * Its id.
 */
sign: string, 
/**
 * What it asks for.
 */
tier: Tier, 
/**
 * In words.
 */
text: string, };

/**
 * A stop that says to ring.
 */
export type StopView = { 
/**
 * How grave it is.
 */
tier: Tier, 
/**
 * The sentence.
 */
said: string, 
/**
 * What to say and do, in the clinic's words; only in an emergency.
 */
advice: string | null, 
/**
 * Nobody at the clinic sees this now.
 */
nobody_sees: string, 
/**
 * The clinic.
 */
clinic: string, 
/**
 * In working hours.
 */
phone: string, 
/**
 * Out of hours.
 */
out_of_hours_phone: string, 
/**
 * The emergency number.
 */
emergency_phone: string, };

/**
 * The weeks of an episode.
 */
export type EpisodeWeeksView = { 
/**
 * What the episode is.
 */
name: string, 
/**
 * Where it stands: "Week 7 after: …".
 */
said: string, 
/**
 * Its weeks, from the first to the plan's last.
 */
weeks: Array<WeekView>, };

/**
 * A week.
 */
export type WeekView = { 
/**
 * Counted from 1.
 */
number: number, 
/**
 * It lies behind.
 */
past: boolean, 
/**
 * It is this week.
 */
now: boolean, 
/**
 * Its stages, in words.
 */
stages: Array<string>, 
/**
 * What opens in it.
 */
gates: Array<OpensView>, 
/**
 * All of it as one sentence, for whoever does not see the line.
 */
said: string, };

/**
 * An exercise that opens in a week.
 */
export type OpensView = { 
/**
 * "Straight leg raise: opens Monday 25 May".
 */
said: string, 
/**
 * Its figure.
 */
figure: FigureAsked, };

/**
 * A test that the day asks for.
 */
export type TestView = { 
/**
 * Its id.
 */
test: string, 
/**
 * Its name.
 */
name: string, 
/**
 * Until which day it is asked for.
 */
until_said: string, 
/**
 * It can be begun now, questions apart.
 */
can_begin: boolean, 
/**
 * Its gate.
 */
gate: GateView, };

/**
 * What is asked and said before a test.
 */
export type TestBeforeView = { 
/**
 * Which test.
 */
test: string, 
/**
 * Its name.
 */
name: string, 
/**
 * The questions, as before a session; nothing is coming but the test.
 */
before: BeforeView, 
/**
 * How to get ready, what to do, and what the helper does.
 */
how: Array<string>, 
/**
 * What to mind.
 */
cautions: Array<string>, };

/**
 * What a test shows now.
 */
export type TestStageView = { 
/**
 * Its name.
 */
name: string, 
/**
 * Where it stands.
 */
state: TimerStateName, 
/**
 * What to do now.
 */
ask: string, 
/**
 * The largest figure: stands, or seconds.
 */
count: number | null, 
/**
 * What it counts, and what else there is to know: "seconds left".
 */
count_said: string, 
/**
 * What the one tap says; `None` where none fits.
 */
tap: string | null, 
/**
 * It can be done again.
 */
can_again: boolean, 
/**
 * The result, in words, once there is one.
 */
result: Array<string>, 
/**
 * How often the patient stood up, if that can be corrected.
 */
stands: number | null, 
/**
 * To how many at most.
 */
most_stands: number, 
/**
 * What is said aloud at this moment.
 */
said: Array<string>, };

/**
 * What a test tells whoever draws it.
 */
export type TestTold = { "told": "stage", 
/**
 * How.
 */
stage: TestStageView, } | { "told": "problem", 
/**
 * Why, and what to do.
 */
problem: ProblemView, } | { "told": "ended", 
/**
 * As sentences.
 */
said: string, 
/**
 * The result is written down.
 */
written: boolean, };

/**
 * What can be pressed in a test.
 */
export type TestPress = { "press": "tap" } | { "press": "stop" } | { "press": "again" } | { "press": "keep", 
/**
 * How often the patient really stood up.
 */
stands: number | null, 
/**
 * The arms helped.
 */
arms_used: boolean, } | { "press": "leave" };

/**
 * What was done, newest week first.
 */
export type PastView = { 
/**
 * Weeks, newest first.
 */
weeks: Array<PastWeekView>, 
/**
 * Pain, oldest first.
 */
pain: Array<LevelPointView>, 
/**
 * Effort, oldest first.
 */
effort: Array<LevelPointView>, 
/**
 * All of it in a sentence.
 */
said: string, };

/**
 * A week of seven days.
 */
export type PastWeekView = { 
/**
 * "Week 3"
 */
title: string, 
/**
 * Its days.
 */
days: Array<PastDayView>, };

/**
 * A day.
 */
export type PastDayView = { 
/**
 * The date, as people say it.
 */
day_said: string, 
/**
 * Its sessions, and what was written down from memory.
 */
sessions: Array<PastSessionView>, 
/**
 * It lies ahead, or before the plan came: no record is missing.
 */
outside: boolean, 
/**
 * The day in a sentence.
 */
said: string, };

/**
 * A session, or what was done from memory.
 */
export type PastSessionView = { 
/**
 * Whole or a part.
 */
mark: PastMark, 
/**
 * From memory.
 */
remembered: boolean, 
/**
 * In words.
 */
said: string, };

/**
 * How much of a session was done.
 */
export type PastMark = "whole" | "part";

/**
 * An answer of 0 to 10, about pain or effort.
 */
export type LevelPointView = { 
/**
 * The date, as people say it.
 */
day_said: string, 
/**
 * When: before, during or after a session, or the next morning.
 */
moment_said: string, 
/**
 * 0 to 10.
 */
level: number, };

/**
 * What the clinic will be able to read.
 */
export type HandBackView = { 
/**
 * "From Thursday 5 March to Monday 9 March."
 */
days_said: string, 
/**
 * The figures, a sentence each.
 */
figures: Array<string>, 
/**
 * Exercise by exercise.
 */
exercises: Array<string>, 
/**
 * What the patient wrote down in words.
 */
words: Array<OwnWordsView>, 
/**
 * "23 entries"
 */
entries_said: string, 
/**
 * The whole record, as the table that leaves.
 */
table: string, };

/**
 * Words that the patient wrote down.
 */
export type OwnWordsView = { 
/**
 * On which day.
 */
day_said: string, 
/**
 * The words.
 */
words: string, };

/**
 * How the patient wants it.
 */
export type HandBackAsked = { 
/**
 * Their own words stay at home.
 */
without_words: boolean, 
/**
 * What they want to ask; empty if nothing.
 */
asks: string, };

/**
 * One up that the patient is asked about.
 */
export type StepOfferView = { 
/**
 * Of which item.
 */
item: string, 
/**
 * "Bridge: your clinic allows one up. …"
 */
said: string, 
/**
 * Its figure.
 */
figure: FigureAsked, };

/**
 * Pain had risen by the next morning.
 */
export type MorningView = { 
/**
 * That it has, and what is smaller today.
 */
said: Array<string>, 
/**
 * Nobody at the clinic sees this now.
 */
nobody_sees: string, };

/**
 * What is asked before a session, and what is coming.
 */
export type BeforeView = { 
/**
 * Today's date must be confirmed first.
 */
confirm_date: DateView | null, 
/**
 * The questions.
 */
questions: Questions, 
/**
 * Next morning's pain is asked too.
 */
morning: boolean, 
/**
 * The warning signs, gravest first.
 */
signs: Array<SignView>, 
/**
 * A session of today can be gone on with.
 */
can_go_on: boolean, 
/**
 * What is coming.
 */
coming: Array<ComingView>, 
/**
 * How long it takes, in minutes, rounded up.
 */
minutes: number, 
/**
 * What to have ready.
 */
have_ready: Array<string>, 
/**
 * Somebody should be beside the patient for a part of it.
 */
beside_you: boolean, };

/**
 * The questions before a session. Few, or people learn to say no.
 */
export type Questions = "signs-and-pain" | "one-tap" | "none";

/**
 * A date.
 */
export type DateView = { 
/**
 * As written.
 */
day: string, 
/**
 * As people say it.
 */
said: string, };

/**
 * An item that is coming.
 */
export type ComingView = { 
/**
 * Its id.
 */
item: string, 
/**
 * Its name.
 */
name: string, 
/**
 * Which side.
 */
side: string, 
/**
 * The position.
 */
position: PositionName, 
/**
 * Its figure.
 */
figure: FigureAsked, 
/**
 * How much.
 */
dose: string, };

/**
 * What the answers before a session come to.
 */
export type AnsweredView = { 
/**
 * No session: ring.
 */
stop: StopView | null, 
/**
 * Noted; the session may begin.
 */
noted: string | null, 
/**
 * Pain had risen by this morning; the session may begin.
 */
morning: MorningView | null, };

/**
 * Where a session stands.
 */
export type StageName = "prepare" | "running" | "resting" | "walking" | "paused" | "asking" | "done" | "stopped";

/**
 * What a session waits for.
 */
export type WaitsFor = "ready" | "steps";

/**
 * What a session shows now.
 */
export type StageView = { 
/**
 * Where it stands.
 */
stage: StageName, 
/**
 * The item it stands in.
 */
item: StageItemView | null, 
/**
 * The largest figure: the repetition or breath; the seconds of a rest, of changing sides or of
 * the count-in; the minutes or steps.
 */
count: number | null, 
/**
 * The word beside it: "Hold", "Rest".
 */
phase: string, 
/**
 * Seconds left of a hold.
 */
phase_left: number | null, 
/**
 * What the figure does.
 */
motion: MotionView | null, 
/**
 * "of 10, round 2 of 2"
 */
of_said: string, 
/**
 * "12 minutes left"
 */
left_said: string, 
/**
 * The rounds of this exercise, on this side.
 */
tally: Array<TallySetView>, 
/**
 * The same in words.
 */
tally_said: string, 
/**
 * What comes after a rest.
 */
next: StageItemView | null, 
/**
 * Time stands still until this is said.
 */
waits_for: WaitsFor | null, 
/**
 * "Ready" fits now.
 */
can_ready: boolean, 
/**
 * "Ready" says that somebody is beside the patient.
 */
asks_somebody: boolean, 
/**
 * What the space bar means now.
 */
main_press: Press | null, 
/**
 * A helper leads: they may say what they see in place of a figure.
 */
helper: boolean, 
/**
 * The count goes by hand, and waits for a step.
 */
can_step: boolean, 
/**
 * How fast the count goes.
 */
pace: PaceName, 
/**
 * Pausing fits now.
 */
can_pause: boolean, 
/**
 * Going on after a pause fits now.
 */
can_go_on: boolean, 
/**
 * Going on at once from a rest fits now.
 */
can_go_on_now: boolean, 
/**
 * "This hurts" fits now.
 */
can_hurts: boolean, 
/**
 * "I did fewer" fits now.
 */
can_fewer: boolean, 
/**
 * Between rounds: how many at most can be said. In a round, it ends the round.
 */
fewer_most: number | null, 
/**
 * There is an easier way, and it is allowed.
 */
can_easier: boolean, 
/**
 * Leaving this one out fits now.
 */
can_leave: boolean, 
/**
 * What is said aloud at this moment.
 */
said: Array<string>, 
/**
 * How hard it was is asked at the end.
 */
asks_effort: boolean, 
/**
 * It was stopped as told; nothing more is asked.
 */
as_told: boolean, };

/**
 * What the figure does, from the moment that this is told.
 */
export type MotionView = { 
/**
 * Which part of a repetition.
 */
phase: PhaseName, 
/**
 * For how long, in seconds.
 */
seconds: number, 
/**
 * Of which repetition.
 */
number: number, };

/**
 * An item, as a session shows it.
 */
export type StageItemView = { 
/**
 * Its id.
 */
item: string, 
/**
 * Its name, or that of its easier variant.
 */
name: string, 
/**
 * Which side works now.
 */
side: string, 
/**
 * The position.
 */
position: PositionName, 
/**
 * The same in words.
 */
position_said: string, 
/**
 * How to get ready.
 */
set_up: string, 
/**
 * How to do it.
 */
how: string, 
/**
 * What one should feel.
 */
feel: string, 
/**
 * What to keep an eye on, and when to stop.
 */
faults: string, 
/**
 * Its figure, as the side that works now does it.
 */
figure: FigureAsked, 
/**
 * How much.
 */
dose: string, 
/**
 * The clinic's note.
 */
note: string | null, 
/**
 * Somebody must be beside the patient.
 */
beside_you: boolean, 
/**
 * It is done standing: hand on the rail, phone down.
 */
standing: boolean, };

/**
 * A round: how much of it is done.
 */
export type TallySetView = { 
/**
 * Done.
 */
done: number, 
/**
 * Of so many.
 */
of: number, };

/**
 * The plan's answer to pain.
 */
export type PainSaidView = { 
/**
 * The answer.
 */
answer: PainAnswerName, 
/**
 * As a sentence.
 */
said: string, 
/**
 * The dose went one down, as a sentence.
 */
stepped: string | null, 
/**
 * Nobody at the clinic sees this now.
 */
nobody_sees: string, };

/**
 * How a session ended.
 */
export type EndedView = { 
/**
 * How.
 */
ending: EndingName, 
/**
 * As a sentence.
 */
said: string, 
/**
 * Nobody at the clinic sees this now, if anything was said.
 */
nobody_sees: string | null, 
/**
 * One up that the patient is asked about now.
 */
offer: StepOfferView | null, };

/**
 * What a session tells whoever draws it.
 */
export type Told = { "told": "stage", 
/**
 * How.
 */
stage: StageView, } | { "told": "problem", 
/**
 * Why, and what to do.
 */
problem: ProblemView, } | { "told": "pain", 
/**
 * The answer.
 */
pain: PainSaidView, } | { "told": "stop", 
/**
 * Whom.
 */
stop: StopView, } | { "told": "ended", 
/**
 * How.
 */
ended: EndedView, };

/**
 * What can be pressed in a session.
 */
export type Press = { "press": "ready" } | { "press": "pause" } | { "press": "go-on" } | { "press": "go-on-now" } | { "press": "step-on" } | { "press": "pace", 
/**
 * Which.
 */
pace: PaceName, } | { "press": "hurts" } | { "press": "hurts-answer", 
/**
 * 0 to 10.
 */
level: number, 
/**
 * What kind.
 */
kind: PainKindName, 
/**
 * Where.
 */
place: PlaceName | null, } | { "press": "distress", 
/**
 * How much distress.
 */
seen: DistressName, } | { "press": "fewer", 
/**
 * How many.
 */
done: number | null, } | { "press": "easier" } | { "press": "leave" } | { "press": "unwell" } | { "press": "stop" } | { "press": "finish", 
/**
 * How hard it was, 0 to 10.
 */
effort: number | null, 
/**
 * Pain now, 0 to 10.
 */
pain: number | null, 
/**
 * A line of free text.
 */
words: string | null, };
