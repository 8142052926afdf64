//! What the window may ask for. Each is one call into a use case, and names no path, no time and no
//! phone number.
#![expect(clippy::needless_pass_by_value, reason = "a command's arguments come as the host hands them over")]

use std::path::Path;
use std::sync::Arc;

use chrono::NaiveDate;
use sendaluna_bedside::Bedside;
use sendaluna_bedside::before::PainBefore;
use sendaluna_bedside::hand::{Break, WhichDay};
use sendaluna_bedside::ring::Whom;
use sendaluna_bedside::settings::Change;
use sendaluna_bedside::step::Way;
use sendaluna_bedside::types::{
    BreakWhy, By, CareId, ItemId, NotTodayWhy, OperatedSide, SetBackKind, SignId, TestId, Words,
};
use sendaluna_bedside::view::day::DayView;
use sendaluna_bedside::view::figure::{FigureAsked, FigureView};
use sendaluna_bedside::view::hand_back::{HandBackAsked, HandBackView};
use sendaluna_bedside::view::home_test::{TestBeforeView, TestPress, TestTold};
use sendaluna_bedside::view::past::PastView;
use sendaluna_bedside::view::receive::OfferView;
use sendaluna_bedside::view::session::{AnsweredView, BeforeView, Press, Told};
use sendaluna_bedside::view::window::{ProblemView, StartView, WrittenView};
use tauri::ipc::{Channel, Invoke};
use tauri::webview::Color;
use tauri::{AppHandle, Manager, State, WebviewWindow, Wry};
use tauri_plugin_dialog::DialogExt;
use tauri_plugin_opener::OpenerExt;

use crate::leader::{Order, Sink};
use crate::reminders;
use crate::window::desk::Desk;

/// The paper, as `ui/shared/tokens.css` has it.
const PAPER: Color = Color(0xFC, 0xF8, 0xEF, 0xFF);
const PAPER_DARK: Color = Color(0x26, 0x1F, 0x18, 0xFF);

type Answer<T> = Result<T, ProblemView>;
type OurDesk<'a> = State<'a, Arc<Desk>>;

/// Every command.
pub fn all() -> impl Fn(Invoke<Wry>) -> bool + Send + Sync + 'static {
    tauri::generate_handler![
        start,
        retry,
        reveal,
        change,
        pick_file,
        next_file,
        watch_files,
        take_begin,
        try_code,
        take_in,
        day,
        past,
        figure,
        to_hand_back,
        hand_back,
        before,
        confirm_date,
        answer_before,
        begin,
        attach,
        press,
        before_test,
        begin_test,
        press_test,
        spoke,
        did,
        did_care,
        stop_item,
        step,
        set_back,
        send_one,
        try_voice,
        start_at_login,
        save_calendar,
        save_today,
        declare_break,
        end_break,
        not_today_because,
        ring,
    ]
}

/// What the window needs first. Never fails: what is wrong is in it.
#[tauri::command(async)]
fn start(desk: OurDesk<'_>) -> StartView {
    desk.let_go_of_test();
    if let Some(first) = desk.first() {
        return first;
    }
    match desk.look(Bedside::start_view) {
        Ok(view) => desk.with_login(view),
        Err(problem) => desk.of_problem(problem),
    }
}

/// Tries again to open a record that could not be opened.
#[tauri::command(async)]
fn retry(desk: OurDesk<'_>) -> StartView {
    desk.open_again();
    start(desk)
}

/// The first page is being drawn: the window may be seen, on paper of its own colour.
#[tauri::command]
fn reveal(window: WebviewWindow, desk: OurDesk<'_>) {
    let by_device = window.theme().is_ok_and(|theme| theme == tauri::Theme::Dark);
    let _ = window.set_background_color(Some(if desk.is_dark(by_device) { PAPER_DARK } else { PAPER }));
    let _ = window.show();
    // Whoever wants no reminders has none started; they end by themselves where they run already.
    if desk.look(|home, _, _| Ok(home.settings()?.reminding.on)).unwrap_or(false) {
        reminders::start(desk.folder());
    }
    #[cfg(mobile)]
    desk.plan_notices(window.app_handle());
}

/// Changes settings.
#[tauri::command(async)]
fn change(desk: OurDesk<'_>, change: Change) -> Answer<StartView> {
    desk.write(|home, _, _| home.change_settings(&change))?;
    desk.speak_as_set();
    Ok(start(desk))
}

/// Lets the patient pick a file in the system's own dialogue, and offers it; `None` if none was picked.
/// The dialogue waits on a thread of its own, so that nothing else waits for it.
#[tauri::command]
async fn pick_file(window: WebviewWindow) -> Answer<Option<OfferView>> {
    let app = window.app_handle().clone();
    let picking = tauri::async_runtime::spawn_blocking(move || {
        let desk = app.state::<Arc<Desk>>();
        let say = |id: &str| desk.with_words(|words| words.say(id, &[]));
        let dialogue = app.dialog().file().set_parent(&window).set_title(say("window-pick-title"));
        let kinds = ["sendaluna", "png", "jpg", "jpeg"];
        let picked = dialogue.add_filter(say("window-pick-kind"), &kinds).blocking_pick_files();
        let picked = picked.unwrap_or_default().into_iter();
        desk.files.offer(picked.filter_map(|file| file.into_path().ok()));
        next_file(desk)
    });
    picking.await.unwrap_or(Ok(None))
}

/// Offers the next file that was handed over.
#[tauri::command(async)]
fn next_file(desk: OurDesk<'_>) -> Answer<Option<OfferView>> {
    while let Some(path) = desk.files.next() {
        let offered =
            desk.put_in(&path, |home, intake, words, now| Ok(home.examine(intake, None, words, now)));
        match offered {
            // Of a letter's pictures one comes after the other.
            Err(problem) if desk.files.wait() && problem.code == "codes-missing" => {}
            offered => return offered.map(Some),
        }
    }
    Ok(None)
}

/// Whether "start" was pressed on a reminder.
#[tauri::command(async)]
fn take_begin(desk: OurDesk<'_>) -> bool {
    desk.files.take_begin()
}

/// Tells the window whenever files wait, or "start" was pressed on a reminder.
#[tauri::command]
fn watch_files(desk: OurDesk<'_>, channel: Channel<bool>) {
    desk.files.watch(channel);
}

/// The code on the letter.
#[tauri::command(async)]
fn try_code(desk: OurDesk<'_>, code: String) -> Answer<OfferView> {
    desk.intake(|home, intake, words, now| Ok(home.examine(intake, Some(&code), words, now)))
}

/// "This is my plan."
#[tauri::command(async)]
fn take_in(
    desk: OurDesk<'_>,
    digest: String,
    sides: Vec<OperatedSide>,
    today: Option<NaiveDate>,
) -> Answer<WrittenView> {
    let written =
        desk.intake(|home, intake, words, now| home.confirm(intake, &digest, sides, today, words, now))?;
    desk.forget_file();
    desk.speak_as_set();
    Ok(written)
}

/// Today.
#[tauri::command(async)]
fn day(desk: OurDesk<'_>) -> Answer<DayView> {
    desk.look(Bedside::day)
}

/// What was done.
#[tauri::command(async)]
fn past(desk: OurDesk<'_>) -> Answer<PastView> {
    desk.look(Bedside::past)
}

/// The figure of an item; `None` if this version does not know its movement.
#[tauri::command(async)]
fn figure(desk: OurDesk<'_>, asked: FigureAsked) -> Answer<Option<FigureView>> {
    desk.look(|home, _, now| home.figure(&asked, now))
}

/// What goes back to the clinic, opened in full.
#[tauri::command(async)]
fn to_hand_back(desk: OurDesk<'_>) -> Answer<HandBackView> {
    desk.look(Bedside::to_hand_back)
}

/// Lets the patient choose a folder in the system's own dialogue, and writes there what goes back to the
/// clinic; `None` if none was chosen.
#[tauri::command]
async fn hand_back(window: WebviewWindow, asked: HandBackAsked) -> Answer<Option<WrittenView>> {
    let app = window.app_handle().clone();
    let choosing = tauri::async_runtime::spawn_blocking(move || {
        let desk = app.state::<Arc<Desk>>();
        let title = desk.with_words(|words| words.say("hand-back-choose", &[]));
        let chosen = app.dialog().file().set_parent(&window).set_title(title).blocking_pick_folder();
        let Some(folder) = chosen.and_then(|folder| folder.into_path().ok()) else { return Ok(None) };
        desk.hand_back(&folder, &asked.into()).map(Some)
    });
    choosing.await.unwrap_or(Ok(None))
}

/// What is asked before a session, and what is coming.
#[tauri::command(async)]
fn before(desk: OurDesk<'_>, only: Option<ItemId>, goes_on: bool) -> Answer<BeforeView> {
    desk.look(|home, words, now| home.before_view(only.as_ref(), goes_on, words, now))
}

/// "Yes, that is today's date."
#[tauri::command(async)]
fn confirm_date(desk: OurDesk<'_>, day: NaiveDate) -> Answer<()> {
    desk.write(|home, _, now| home.confirm_date(day, now))
}

/// The answers before a session, or a warning sign at any time.
#[tauri::command(async)]
fn answer_before(
    desk: OurDesk<'_>,
    signs: Vec<SignId>,
    pain: PainBefore,
    helper: bool,
) -> Answer<AnsweredView> {
    desk.write(|home, words, now| home.answer_before(&signs, pain, by(helper), words, now))
}

/// Begins a session, or goes on with today's.
#[tauri::command(async)]
fn begin(
    desk: OurDesk<'_>,
    only: Option<ItemId>,
    goes_on: bool,
    helper: bool,
    channel: Channel<Told>,
) -> Answer<()> {
    desk.lead(sink(channel), |home, now| {
        if goes_on { home.go_on(by(helper), now) } else { home.begin(only.as_ref(), by(helper), now) }
    })
}

/// A page that was loaded anew looks on again; `false` if no session is under way.
#[tauri::command(async)]
fn attach(desk: OurDesk<'_>, channel: Channel<Told>) -> bool {
    desk.order(Order::Attach(sink(channel)))
}

/// A press in a session. What comes of it comes over the session's channel.
#[tauri::command(async)]
fn press(desk: OurDesk<'_>, press: Press) -> bool {
    desk.order(Order::Press(press))
}

/// What is asked and said before a home test.
#[tauri::command(async)]
fn before_test(desk: OurDesk<'_>, test: TestId) -> Answer<TestBeforeView> {
    desk.look(|home, words, now| home.before_test(&test, words, now))
}

/// Begins a home test; only with somebody beside the patient.
#[tauri::command(async)]
fn begin_test(desk: OurDesk<'_>, test: TestId, helper: bool, channel: Channel<TestTold>) -> Answer<()> {
    desk.lead_test(sink(channel), |home, now| home.begin_test(&test, helper, By::Patient, now))
}

/// A press in a home test. What comes of it comes over the test's channel; `false` if none is under way.
#[tauri::command(async)]
fn press_test(desk: OurDesk<'_>, press: TestPress) -> bool {
    desk.press_test(press)
}

/// "I have spoken to the clinic."
#[tauri::command(async)]
fn spoke(desk: OurDesk<'_>) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.spoke_view(By::Patient, words, now))
}

/// An exercise done without the program.
#[tauri::command(async)]
fn did(desk: OurDesk<'_>, item: ItemId, sets: u8, each: u16, yesterday: bool) -> Answer<WrittenView> {
    let day = if yesterday { WhichDay::Yesterday } else { WhichDay::Today };
    desk.write(|home, words, now| Ok(home.did(&item, day, sets, each, By::Patient, now)?.view(words)))
}

/// Care done today.
#[tauri::command(async)]
fn did_care(desk: OurDesk<'_>, care: CareId) -> Answer<WrittenView> {
    desk.write(|home, words, now| Ok(home.did_care(&care, WhichDay::Today, By::Patient, now)?.view(words)))
}

/// "My clinic told me to stop this", or that taken back.
#[tauri::command(async)]
fn stop_item(desk: OurDesk<'_>, item: ItemId, undo: bool) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.stop_item(&item, undo, By::Patient, words, now))
}

/// One up that the clinic's rule allows, one down, or "not now".
#[tauri::command(async)]
fn step(desk: OurDesk<'_>, item: ItemId, way: Way, helper: bool) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.step(&item, way, by(helper), words, now))
}

/// A fall, or a stay in hospital.
#[tauri::command(async)]
fn set_back(desk: OurDesk<'_>, what: SetBackKind) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.set_back_view(what, By::Patient, words, now))
}

/// Shows one reminder now, and says what came of it.
#[tauri::command(async)]
fn send_one(desk: OurDesk<'_>) -> WrittenView {
    let said = desk.with_words(|words| reminders::send_one(desk.folder(), words));
    WrittenView { said, against: false }
}

/// Lets the patient hear a sample as set; says why it cannot be heard, if it cannot.
#[tauri::command(async)]
fn try_voice(desk: OurDesk<'_>) -> Answer<WrittenView> {
    let hearing = desk.look(|home, _, _| Ok(home.settings()?.hearing))?;
    let words = desk.with_words(|words| Words::new([words.lang()]));
    Ok(WrittenView { said: crate::hearing::try_out(hearing, &words), against: false })
}

/// Has reminders start when the device does, or no more.
#[tauri::command(async)]
fn start_at_login(desk: OurDesk<'_>, starts: bool) -> Answer<StartView> {
    if let Some(login) = reminders::at_login(desk.folder()) {
        login.set(starts).map_err(|error| desk.not_written(&login.folder, &error))?;
    }
    Ok(start(desk))
}

/// Lets the patient choose a folder, and writes the plan's times there for a calendar; `None` if none was
/// chosen.
#[tauri::command]
async fn save_calendar(window: WebviewWindow) -> Answer<Option<WrittenView>> {
    save_to(window, "calendar-choose", Desk::save_calendar).await
}

/// Lets the patient choose a folder, and writes today there on one page; `None` if none was chosen.
#[tauri::command]
async fn save_today(window: WebviewWindow) -> Answer<Option<WrittenView>> {
    save_to(window, "today-choose", Desk::save_today).await
}

/// Asks for a folder in the system's own dialogue, and has something written there.
async fn save_to(
    window: WebviewWindow,
    title: &'static str,
    save: fn(&Desk, &Path) -> Answer<WrittenView>,
) -> Answer<Option<WrittenView>> {
    let app = window.app_handle().clone();
    let choosing = tauri::async_runtime::spawn_blocking(move || {
        let desk = app.state::<Arc<Desk>>();
        let title = desk.with_words(|words| words.say(title, &[]));
        let chosen = app.dialog().file().set_parent(&window).set_title(title).blocking_pick_folder();
        let Some(folder) = chosen.and_then(|folder| folder.into_path().ok()) else { return Ok(None) };
        save(&desk, &folder).map(Some)
    });
    choosing.await.unwrap_or(Ok(None))
}

/// A break from exercising.
#[tauri::command(async)]
fn declare_break(
    desk: OurDesk<'_>,
    from: NaiveDate,
    through: NaiveDate,
    why: BreakWhy,
    words: String,
) -> Answer<WrittenView> {
    let rest = Break { from, through, why, words: Some(words) };
    desk.write(|home, words, now| home.break_view(rest, By::Patient, words, now))
}

/// Exercising again, before the last day of a break.
#[tauri::command(async)]
fn end_break(desk: OurDesk<'_>) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.end_break_view(By::Patient, words, now))
}

/// Why not, on a day on which "not today" was said.
#[tauri::command(async)]
fn not_today_because(desk: OurDesk<'_>, day: NaiveDate, why: NotTodayWhy) -> Answer<WrittenView> {
    desk.write(|home, words, now| home.not_today_because(day, why, By::Patient, words, now))
}

/// Rings a number of the plan's, where the device can.
#[tauri::command(async)]
fn ring(app: AppHandle, desk: OurDesk<'_>, whom: Whom) -> Answer<()> {
    let number = desk.look(|home, _, _| home.dial(whom))?;
    // Where nothing can ring, the number is on the screen in large type.
    let _ = app.opener().open_url(number, None::<&str>);
    Ok(())
}

/// A page that is gone misses nothing: what matters is on disk, and it asks again when it is back.
fn sink<T: serde::Serialize + Send + 'static>(channel: Channel<T>) -> Sink<T> {
    Box::new(move |told, _| {
        let _ = channel.send(told);
    })
}

fn by(helper: bool) -> By {
    if helper { By::Helper } else { By::Patient }
}
