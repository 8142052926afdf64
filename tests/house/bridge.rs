//! The window's types are those of the views: `ui/generated/bridge.ts` is written from them, and held
//! against them. Written anew with `SENDALUNA_WRITE_DOCS=1`.

use sendaluna_bedside::types::{
    Ending, OperatedSide, PainAnswer, PainKind, Part, Phase, Place, Position, SetBackKind, Side, Tier,
    TimerState,
};
use sendaluna_bedside::view::{
    day, figure, hand_back, home_test, names, past, receive, session, step, window,
};
use sendaluna_bedside::{begin, reminding, settings, view};
use sendaluna_tests::root;
use serde_json::{Value, json};
use ts_rs::{Config, TS};

fn declared<T: TS>(config: &Config) -> String {
    let docs = T::docs().unwrap_or_default();
    let docs = docs.trim_end();
    let line = if docs.is_empty() { "" } else { "\n" };
    format!("{docs}{line}export {}\n", T::decl(config))
}

#[test]
fn the_types_are_current() {
    let config = Config::default();
    let all: &[fn(&Config) -> String] = &[
        declared::<names::Tier>,
        declared::<names::SideName>,
        declared::<names::Weekday>,
        declared::<names::DistressName>,
        declared::<names::PaceName>,
        declared::<names::WhyNotName>,
        declared::<names::BreakWhyName>,
        declared::<names::PositionName>,
        declared::<names::PlaceName>,
        declared::<names::PainKindName>,
        declared::<names::PainAnswerName>,
        declared::<names::EndingName>,
        declared::<names::SetBackName>,
        declared::<names::PhaseName>,
        declared::<names::TimerStateName>,
        declared::<names::WorkingName>,
        declared::<names::PartName>,
        declared::<figure::FigureAsked>,
        declared::<figure::FigureView>,
        declared::<figure::ShapeView>,
        declared::<window::ProblemView>,
        declared::<window::LanguageView>,
        declared::<settings::Theme>,
        declared::<settings::Hearing>,
        declared::<window::SettingsView>,
        declared::<reminding::Shows>,
        declared::<view::reminding::RemindingView>,
        declared::<view::reminding::DayOffView>,
        declared::<view::reminding::WhyNotView>,
        declared::<window::StartView>,
        declared::<window::WrittenView>,
        declared::<receive::OfferView>,
        declared::<receive::SummaryView>,
        declared::<receive::EpisodeView>,
        declared::<receive::NotYetView>,
        declared::<day::DayView>,
        declared::<day::NowView>,
        declared::<day::ItemView>,
        declared::<step::StepView>,
        declared::<day::GateView>,
        declared::<day::ReasonView>,
        declared::<day::CareView>,
        declared::<day::RuleView>,
        declared::<day::ContactsView>,
        declared::<day::SignView>,
        declared::<day::StopView>,
        declared::<day::EpisodeWeeksView>,
        declared::<day::WeekView>,
        declared::<day::OpensView>,
        declared::<home_test::TestView>,
        declared::<home_test::TestBeforeView>,
        declared::<home_test::TestStageView>,
        declared::<home_test::TestTold>,
        declared::<home_test::TestPress>,
        declared::<past::PastView>,
        declared::<past::PastWeekView>,
        declared::<past::PastDayView>,
        declared::<past::PastSessionView>,
        declared::<past::PastMark>,
        declared::<past::LevelPointView>,
        declared::<hand_back::HandBackView>,
        declared::<hand_back::OwnWordsView>,
        declared::<hand_back::HandBackAsked>,
        declared::<step::StepOfferView>,
        declared::<step::MorningView>,
        declared::<session::BeforeView>,
        declared::<begin::Questions>,
        declared::<session::DateView>,
        declared::<session::ComingView>,
        declared::<session::AnsweredView>,
        declared::<session::StageName>,
        declared::<session::WaitsFor>,
        declared::<session::StageView>,
        declared::<session::MotionView>,
        declared::<session::StageItemView>,
        declared::<session::TallySetView>,
        declared::<session::PainSaidView>,
        declared::<session::EndedView>,
        declared::<session::Told>,
        declared::<session::Press>,
    ];
    let all: Vec<String> = all.iter().map(|declared| declared(&config)).collect();
    let current = format!("// Generated from the views of `bedside`; a test says how.\n\n{}", all.join("\n"));
    let path = root().join("ui/generated/bridge.ts");
    if std::env::var_os("SENDALUNA_WRITE_DOCS").is_some() {
        std::fs::write(&path, &current).expect("written");
    }
    let text = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(text == current, "stale: run the tests once with SENDALUNA_WRITE_DOCS=1");
}

/// Names that stand for types of a room below are the names that are sent.
#[test]
fn names_are_those_that_are_sent() {
    let config = Config::default();
    let sent = |name: &str, values: Vec<Value>, declared: String| {
        let values: Vec<String> = values.iter().map(ToString::to_string).collect();
        assert_eq!(declared, format!("type {name} = {};", values.join(" | ")));
    };
    sent(
        "Tier",
        vec![json!(Tier::Emergency), json!(Tier::RingToday), json!(Tier::Note)],
        names::Tier::decl(&config),
    );
    sent(
        "SideName",
        [OperatedSide::Left, OperatedSide::Right, OperatedSide::Both, OperatedSide::Neither]
            .map(|side| json!(side))
            .into(),
        names::SideName::decl(&config),
    );
    sent(
        "PhaseName",
        [Phase::Out, Phase::Hold, Phase::Back, Phase::Pause].map(|phase| json!(phase)).into(),
        names::PhaseName::decl(&config),
    );
    sent(
        "TimerStateName",
        [TimerState::Ready, TimerState::CountIn, TimerState::Running, TimerState::Done, TimerState::Stopped]
            .map(|state| json!(state))
            .into(),
        names::TimerStateName::decl(&config),
    );
    sent("WorkingName", Side::BOTH.map(|side| json!(side)).into(), names::WorkingName::decl(&config));
    sent("PartName", Part::ALL.map(|part| json!(part)).into(), names::PartName::decl(&config));
    sent(
        "PositionName",
        [
            Position::Supine,
            Position::HookLying,
            Position::SideLying,
            Position::Prone,
            Position::Seated,
            Position::Standing,
            Position::BentOver,
            Position::Kneeling,
            Position::HandsAndKnees,
        ]
        .map(|position| json!(position))
        .into(),
        names::PositionName::decl(&config),
    );
    sent(
        "PlaceName",
        [
            Place::Hip,
            Place::Thigh,
            Place::Knee,
            Place::Calf,
            Place::Foot,
            Place::Back,
            Place::Shoulder,
            Place::Elsewhere,
        ]
        .map(|place| json!(place))
        .into(),
        names::PlaceName::decl(&config),
    );
    sent(
        "PainKindName",
        [PainKind::Stretching, PainKind::Sharp].map(|kind| json!(kind)).into(),
        names::PainKindName::decl(&config),
    );
    sent(
        "PainAnswerName",
        [
            PainAnswer::GoOn,
            PainAnswer::Gently,
            PainAnswer::Easier,
            PainAnswer::StopExercise,
            PainAnswer::StopToday,
        ]
        .map(|answer| json!(answer))
        .into(),
        names::PainAnswerName::decl(&config),
    );
    sent(
        "EndingName",
        [Ending::Whole, Ending::Part, Ending::StoppedAsTold].map(|ending| json!(ending)).into(),
        names::EndingName::decl(&config),
    );
    sent(
        "SetBackName",
        [SetBackKind::Fall, SetBackKind::Readmission].map(|what| json!(what)).into(),
        names::SetBackName::decl(&config),
    );
}

/// What the window may call is named in three places, and each names the same.
#[test]
fn the_commands_are_the_same_everywhere() {
    let read = |path: &str| std::fs::read_to_string(root().join(path)).expect("there");
    let between = |text: &str, from: &str, to: &str| {
        let start = text.find(from).unwrap_or_else(|| panic!("{from} is there")) + from.len();
        text[start..].split(to).next().expect("a part").to_string()
    };
    let names = |list: &str| -> Vec<String> {
        let words = list.split(|c: char| !c.is_alphanumeric() && c != '_' && c != '-');
        words.filter(|word| !word.is_empty()).map(str::to_string).collect()
    };
    let built = names(&between(&read("src-tauri/build.rs"), "const COMMANDS: &[&str] = &[", "];"));
    let handled = names(&between(&read("src-tauri/src/window/commands.rs"), "generate_handler![", "]"));
    assert_eq!(built, handled);
    let capability: Value = serde_json::from_str(&read("src-tauri/capabilities/patient.json")).expect("JSON");
    let allowed: Vec<Value> =
        built.iter().map(|name| json!(format!("allow-{}", name.replace('_', "-")))).collect();
    assert_eq!(capability["permissions"], Value::Array(allowed), "and nothing else");
    let host = read("ui/patient/host.ts");
    for name in &built {
        assert!(host.contains(&format!("'{name}'")), "the window never calls {name}");
    }
}
