//! What the commands work with: one record, one clock, one set of words.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, RwLock};

use sendaluna_bedside::front::contacts_of;
use sendaluna_bedside::guide::Guide;
use sendaluna_bedside::handed::Handed;
use sendaluna_bedside::home::Known;
use sendaluna_bedside::home_test::{Begun, TestLead};
use sendaluna_bedside::intake::Intake;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::say::{self, problem};
use sendaluna_bedside::settings::Theme;
use sendaluna_bedside::types::{Coded, IanaZone, KeyringOrFile, Words};
use sendaluna_bedside::view::home_test::{TestPress, TestTold};
use sendaluna_bedside::view::window::{ProblemView, StartView, WrittenView};
use sendaluna_bedside::{Bedside, BedsideError, Clock, Now};

use crate::answer::Trouble;
use crate::clock::DeviceClock;
use crate::hand_back;
use crate::hearing::Ears;
use crate::leader::{Leader, Order, Sink};
use crate::receive::read;
use crate::reminders;
use crate::window::Wishes;
use crate::window::files::Files;

/// Who holds the record.
enum Hold {
    /// Nobody yet.
    Nobody,
    /// This desk.
    Desk(Box<Bedside>),
    /// The session under way.
    Session(Leader),
    /// The home test under way.
    Test(Leader<TestLead>),
    /// It could not be opened.
    Failed(BedsideError),
}

/// What the commands work with.
pub struct Desk {
    clock: Arc<DeviceClock>,
    folder: PathBuf,
    keys: KeyringOrFile,
    language: String,
    words: RwLock<Words>,
    hold: Mutex<Hold>,
    /// What the window needs first, made ready while the window is being made.
    first: Mutex<Option<StartView>>,
    intake: Mutex<Option<Intake>>,
    handed: Mutex<Handed>,
    /// Files that wait to be looked at.
    pub files: Files,
}

impl Desk {
    /// With nothing opened yet.
    pub fn new(wishes: Wishes) -> Self {
        let files = Files::default();
        files.offer(wishes.file);
        if wishes.begin {
            files.offer_to_begin();
        }
        Self {
            clock: Arc::new(DeviceClock::new()),
            folder: wishes.folder,
            keys: wishes.keys,
            words: RwLock::new(Words::new([wishes.language.as_str()])),
            language: wishes.language,
            hold: Mutex::new(Hold::Nobody),
            first: Mutex::new(None),
            intake: Mutex::new(None),
            handed: Mutex::new(Handed::default()),
            files,
        }
    }

    /// The data folder.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Opens the record while the window is being made.
    pub fn open_aside(self: &Arc<Self>) {
        let desk = Arc::clone(self);
        // The lock is taken before the thread starts its work, so that the first command waits for it.
        let (taken, is_taken) = std::sync::mpsc::channel();
        std::thread::spawn(move || {
            let mut hold = locked(&desk.hold);
            let _ = taken.send(());
            *hold = desk.opened();
            if let Hold::Desk(home) = &mut *hold {
                // What was pressed on reminders is part of the first page.
                let _ = home.drain(&desk.clock.now());
                let view = desk.with_words(|words| home.start_view(words, &desk.clock.now()));
                *locked(&desk.first) = view.ok().map(|view| desk.with_login(view));
            }
            desk.tend(&mut hold);
        });
        let _ = is_taken.recv();
    }

    /// What was made ready for the window's first question; `None` from then on.
    pub fn first(&self) -> Option<StartView> {
        // Whoever asks waits until the record is open.
        drop(locked(&self.hold));
        locked(&self.first).take()
    }

    /// Whether the patient wants dark paper, on a device that is dark or not.
    pub fn is_dark(&self, by_device: bool) -> bool {
        let theme = self.look(|home, _, _| Ok(home.settings()?.theme));
        match theme.unwrap_or_default() {
            Theme::System => by_device,
            Theme::Light => false,
            Theme::Dark => true,
        }
    }

    /// Opens the record again, if it could not be opened.
    pub fn open_again(&self) {
        let mut hold = locked(&self.hold);
        if matches!(*hold, Hold::Failed(_) | Hold::Nobody) {
            *hold = self.opened();
        }
    }

    fn opened(&self) -> Hold {
        match Bedside::open(&self.folder, &self.keys, IanaZone::of_device()) {
            Ok(home) => {
                self.speak(&home);
                Hold::Desk(Box::new(home))
            }
            Err(error) => Hold::Failed(error),
        }
    }

    /// Speaks as the record says from now on.
    pub fn speak_as_set(&self) {
        if let Hold::Desk(home) = &*locked(&self.hold) {
            self.speak(home);
        }
    }

    fn speak(&self, home: &Bedside) {
        let words = home.words(&self.language);
        *self.words.write().unwrap_or_else(PoisonError::into_inner) = words;
    }

    /// Lets go of everything in good order.
    pub fn close(&self) {
        let hold = std::mem::replace(&mut *locked(&self.hold), Hold::Nobody);
        match hold {
            Hold::Session(leader) => drop(leader.end()),
            Hold::Test(leader) => drop(leader.end()),
            _ => {}
        }
    }

    /// One use case that only looks. While a session is led, it looks beside it, and keeps no press
    /// waiting.
    pub fn look<T>(
        &self,
        use_case: impl FnOnce(&Bedside, &Words, &Now) -> Result<T, BedsideError>,
    ) -> Result<T, ProblemView> {
        let mut hold = locked(&self.hold);
        self.settle(&mut hold);
        let words = self.words.read().unwrap_or_else(PoisonError::into_inner);
        let now = self.clock.now();
        match &*hold {
            Hold::Desk(home) => {
                return use_case(home, &words, &now).map_err(|error| explain(&words, Some(home), &error));
            }
            Hold::Failed(error) => return Err(explain(&words, None, error)),
            Hold::Nobody => return Err(explain(&words, None, &BedsideError::NoPlan)),
            Hold::Session(_) | Hold::Test(_) => drop(hold),
        }
        Bedside::look(&self.folder, &self.keys, IanaZone::of_device())
            .and_then(|home| use_case(&home, &words, &now))
            .map_err(|error| explain(&words, None, &error))
    }

    /// One use case that writes. Not while a session is led.
    pub fn write<T>(
        &self,
        use_case: impl FnOnce(&mut Bedside, &Words, &Now) -> Result<T, BedsideError>,
    ) -> Result<T, ProblemView> {
        let mut hold = locked(&self.hold);
        self.settle(&mut hold);
        let words = self.words.read().unwrap_or_else(PoisonError::into_inner);
        let now = self.clock.now();
        match &mut *hold {
            Hold::Desk(home) => {
                let done = use_case(home, &words, &now).map_err(|error| explain(&words, Some(home), &error));
                // What stands in the way of reminders stands in the way of nothing else.
                let _ = home.tend(&words, &now);
                done
            }
            Hold::Session(_) | Hold::Test(_) => Err(explain(&words, None, &BedsideError::SessionUnderWay)),
            Hold::Failed(error) => Err(explain(&words, None, error)),
            Hold::Nobody => Err(explain(&words, None, &BedsideError::NoPlan)),
        }
    }

    /// One use case about the file that is on its way in.
    pub fn intake<T>(
        &self,
        use_case: impl FnOnce(&mut Bedside, &mut Intake, &Words, &Now) -> Result<T, BedsideError>,
    ) -> Result<T, ProblemView> {
        let mut intake = locked(&self.intake);
        self.write(|home, words, now| {
            let intake = intake.as_mut().ok_or(BedsideError::NoFile)?;
            use_case(home, intake, words, now)
        })
    }

    /// Puts a file on its way in, and examines it; whatever was on its way is forgotten.
    pub fn put_in<T>(
        &self,
        path: &Path,
        examine: impl FnOnce(&mut Bedside, &mut Intake, &Words, &Now) -> Result<T, BedsideError>,
    ) -> Result<T, ProblemView> {
        let bytes = read(path).map_err(|trouble| self.of_trouble(&trouble))?;
        let bytes = locked(&self.handed).take(bytes);
        let bytes = bytes.map_err(|error| self.with_words(|words| problem(words, None, &error)))?;
        let mut intake = locked(&self.intake);
        let intake = intake.insert(Intake::new(bytes));
        self.write(|home, words, now| examine(home, intake, words, now))
    }

    /// Makes what goes back to the clinic, and writes it to a folder that the patient has chosen.
    pub fn hand_back(&self, folder: &Path, wishes: &hand_back::Wishes) -> Result<WrittenView, ProblemView> {
        let made = self.write(|home, words, now| home.hand_back(wishes, words, now))?;
        hand_back::write_to(folder, &made).map_err(|(path, error)| self.not_written(&path, &error))?;
        let said = self.with_words(|words| hand_back::said(words, folder));
        Ok(WrittenView { said, against: false })
    }

    /// Writes the plan's times for a calendar to a folder that the patient has chosen.
    pub fn save_calendar(&self, folder: &Path) -> Result<WrittenView, ProblemView> {
        let text = self.write(Bedside::calendar_file)?;
        let Some(text) = text else {
            let said = self.with_words(|words| words.say("calendar-nothing", &[]));
            return Ok(WrittenView { said, against: false });
        };
        self.save(&folder.join("sendaluna.ics"), text.as_bytes(), "calendar-saved")
    }

    /// Writes today on one page to a folder that the patient has chosen.
    pub fn save_today(&self, folder: &Path) -> Result<WrittenView, ProblemView> {
        let pdf = self.look(Bedside::today_page)?;
        self.save(&folder.join("sendaluna-today.pdf"), &pdf, "today-written")
    }

    fn save(&self, path: &Path, bytes: &[u8], saved: &str) -> Result<WrittenView, ProblemView> {
        std::fs::write(path, bytes).map_err(|error| self.not_written(path, &error))?;
        let args = [("path", path.display().to_string().into())];
        let said = self.with_words(|words| words.say(saved, &args));
        Ok(WrittenView { said, against: false })
    }

    /// A file that could not be written, said.
    pub fn not_written(&self, path: &Path, error: &std::io::Error) -> ProblemView {
        self.of_trouble(&Trouble::FileNotWritten {
            path: path.display().to_string(),
            what: error.to_string(),
        })
    }

    fn of_trouble(&self, trouble: &Trouble) -> ProblemView {
        let (happened, to_do) = self.with_words(|words| say::coded(words, trouble));
        ProblemView { code: trouble.code().to_string(), happened, to_do, reasons: Vec::new(), ring: None }
    }

    /// Nothing is on its way in any more.
    pub fn forget_file(&self) {
        *locked(&self.intake) = None;
    }

    /// Begins a session that a use case prepares.
    pub fn lead(
        &self,
        to: Sink,
        prepare: impl FnOnce(&mut Bedside, &Now) -> Result<Guide, BedsideError>,
    ) -> Result<(), ProblemView> {
        self.hand_over(prepare, |home, known, guide, words| {
            let ears = Ears::of(known.settings.hearing, &words);
            let lead = Lead::new(home, known, guide, words, &*self.clock);
            Hold::Session(Leader::start(lead, Arc::clone(&self.clock), to, ears))
        })
    }

    /// Begins a home test that a use case prepares.
    pub fn lead_test(
        &self,
        to: Sink<TestTold>,
        prepare: impl FnOnce(&mut Bedside, &Now) -> Result<Begun, BedsideError>,
    ) -> Result<(), ProblemView> {
        self.hand_over(prepare, |home, known, begun, words| {
            let ears = Ears::of(known.settings.hearing, &words);
            let lead = TestLead::new(home, known, begun, words, &*self.clock);
            Hold::Test(Leader::start(lead, Arc::clone(&self.clock), to, ears))
        })
    }

    /// Hands the record over to what a use case prepares.
    fn hand_over<P>(
        &self,
        prepare: impl FnOnce(&mut Bedside, &Now) -> Result<P, BedsideError>,
        lead: impl FnOnce(Bedside, Known, P, Words) -> Hold,
    ) -> Result<(), ProblemView> {
        let mut hold = locked(&self.hold);
        self.settle(&mut hold);
        let words = self.words.read().unwrap_or_else(PoisonError::into_inner);
        let home = match &mut *hold {
            Hold::Desk(home) => home,
            Hold::Session(_) | Hold::Test(_) => {
                return Err(explain(&words, None, &BedsideError::SessionUnderWay));
            }
            Hold::Failed(error) => return Err(explain(&words, None, error)),
            Hold::Nobody => return Err(explain(&words, None, &BedsideError::NoPlan)),
        };
        let ready = prepare(home, &self.clock.now()).and_then(|ready| Ok((ready, home.known()?)));
        let (ready, known) = match ready {
            Ok(ready) => ready,
            Err(error) => return Err(explain(&words, Some(home), &error)),
        };
        let Hold::Desk(mut home) = std::mem::replace(&mut *hold, Hold::Nobody) else { return Ok(()) };
        let _ = home.tend(&words, &self.clock.now());
        *hold = lead(*home, known, ready, Words::new([words.lang()]));
        Ok(())
    }

    /// A press in the home test under way; `false` if there is none.
    pub fn press_test(&self, press: TestPress) -> bool {
        let mut hold = locked(&self.hold);
        self.settle(&mut hold);
        matches!(&*hold, Hold::Test(leader) if leader.order(Order::Press(press)))
    }

    /// Lets go of a home test whose page is gone: nobody has watched, so there is no result.
    pub fn let_go_of_test(&self) {
        let mut hold = locked(&self.hold);
        if let Hold::Test(_) = &*hold {
            let Hold::Test(leader) = std::mem::replace(&mut *hold, Hold::Nobody) else { return };
            *hold = self.back(leader.end());
        }
    }

    /// Passes an order on to the session under way; `false` if there is none.
    pub fn order(&self, order: Order) -> bool {
        let mut hold = locked(&self.hold);
        self.settle(&mut hold);
        matches!(&*hold, Hold::Session(leader) if leader.order(order))
    }

    /// What can be shown of a record that cannot be used, in its own language if it can be read.
    pub fn of_problem(&self, problem: ProblemView) -> StartView {
        let beside = Bedside::look(&self.folder, &self.keys, IanaZone::of_device()).ok();
        if let Some(home) = &beside {
            self.speak(home);
        }
        self.with_words(|words| {
            // A record that is shut does not shut away whom to ring.
            let inside = beside.and_then(|home| home.contacts(words).ok());
            let contacts = inside.or_else(|| contacts_of(&self.folder));
            StartView::of_problem(words, problem, contacts)
        })
    }

    /// Has reminders follow the record.
    fn tend(&self, hold: &mut Hold) {
        if let Hold::Desk(home) = hold {
            self.with_words(|words| {
                let _ = home.tend(words, &self.clock.now());
            });
        }
    }

    /// Hands the next reminders to a phone's system.
    #[cfg(mobile)]
    pub fn plan_notices(&self, app: &tauri::AppHandle) {
        if let Some(front) = Bedside::front_of(&self.folder) {
            let _ = crate::phone::plan(
                &crate::phone::OfSystem(app),
                &front,
                self.clock.now().at,
                &IanaZone::of_device(),
            );
        }
    }

    /// With what only this shell knows.
    pub fn with_login(&self, view: StartView) -> StartView {
        let starts_at_login = reminders::at_login(&self.folder).and_then(|login| login.is_set());
        StartView { starts_at_login, ..view }
    }

    /// The words, in another place.
    pub fn with_words<T>(&self, f: impl FnOnce(&Words) -> T) -> T {
        f(&self.words.read().unwrap_or_else(PoisonError::into_inner))
    }

    /// Takes the record back from what is over.
    fn settle(&self, hold: &mut Hold) {
        let is_over = match hold {
            Hold::Session(leader) => leader.is_over(),
            Hold::Test(leader) => leader.is_over(),
            _ => false,
        };
        if is_over {
            *hold = match std::mem::replace(hold, Hold::Nobody) {
                Hold::Session(leader) => self.back(leader.end()),
                Hold::Test(leader) => self.back(leader.end()),
                other => other,
            };
            self.tend(hold);
        }
    }

    /// The record, taken back; opened anew where its thread has failed.
    fn back(&self, home: Option<Bedside>) -> Hold {
        home.map_or_else(|| self.opened(), |home| Hold::Desk(Box::new(home)))
    }
}

fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn explain(words: &Words, home: Option<&Bedside>, error: &BedsideError) -> ProblemView {
    let known = home.and_then(|home| home.known().ok());
    problem(words, known.as_ref(), error)
}
