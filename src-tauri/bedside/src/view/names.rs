//! Names as they travel to a window, for its types alone; a test holds them against what is sent.
#![expect(missing_docs, reason = "the names say it")]

use ts_rs::TS;

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum Tier {
    Emergency,
    RingToday,
    Note,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum Weekday {
    Monday,
    Tuesday,
    Wednesday,
    Thursday,
    Friday,
    Saturday,
    Sunday,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum DistressName {
    None,
    Some,
    Much,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PaceName {
    Prescribed,
    Slower,
    Slowest,
    ByHand,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum WhyNotName {
    Hurts,
    Unwell,
    Tired,
    NoTime,
    Away,
    NotSaid,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum BreakWhyName {
    Own,
    Clinic,
    Hospital,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum SideName {
    Left,
    Right,
    Both,
    Neither,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PositionName {
    Supine,
    HookLying,
    SideLying,
    Prone,
    Seated,
    Standing,
    BentOver,
    Kneeling,
    HandsAndKnees,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PlaceName {
    Hip,
    Thigh,
    Knee,
    Calf,
    Foot,
    Back,
    Shoulder,
    Elsewhere,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PainKindName {
    Stretching,
    Sharp,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PainAnswerName {
    GoOn,
    Gently,
    Easier,
    StopExercise,
    StopToday,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum EndingName {
    Whole,
    Part,
    StoppedAsTold,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum SetBackName {
    Fall,
    Readmission,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PhaseName {
    Out,
    Hold,
    Back,
    Pause,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum TimerStateName {
    Ready,
    CountIn,
    Running,
    Done,
    Stopped,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum WorkingName {
    Left,
    Right,
}

#[derive(TS)]
#[ts(rename_all = "kebab-case")]
pub enum PartName {
    Ground,
    Shadow,
    Top,
    Face,
    Line,
    Soft,
    Carried,
    Far,
    FarOperated,
    Near,
    NearOperated,
    Arc,
    Tick,
}
