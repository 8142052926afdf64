//! The window: it draws what the use cases say, and nothing more.

mod commands;
mod desk;
#[cfg(target_os = "linux")]
mod elsewhere;
mod files;
mod tray;

use std::hash::{DefaultHasher, Hash, Hasher};
use std::panic::AssertUnwindSafe;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;
use std::time::Duration;

use sendaluna_bedside::types::{KeyringOrFile, Words};
use tauri::webview::{NewWindowResponse, PageLoadEvent};
use tauri::{
    App, AppHandle, DragDropEvent, Manager, RunEvent, WebviewUrl, WebviewWindowBuilder, WindowEvent,
};

use crate::window::desk::Desk;
use crate::window::tray::TrayWords;

/// The name of the one window.
const MAIN: &str = "main";
/// A page that has not drawn itself by then is shown as it is.
const PATIENCE: Duration = Duration::from_secs(3);

/// What the window is opened on.
pub struct Wishes {
    /// The data folder.
    pub folder: PathBuf,
    /// Where the record's key is.
    pub keys: KeyringOrFile,
    /// The language that was asked for, or the system's.
    pub language: String,
    /// A file to take in.
    pub file: Option<PathBuf>,
    /// Open on the questions before a session.
    pub begin: bool,
}

/// Opens the window, and stays until it is closed.
pub fn open(wishes: Wishes) -> ExitCode {
    let words = Words::new([wishes.language.as_str()]);
    if !has_screen() {
        return cannot_open(&words, &words.say("window-no-screen", &[]));
    }
    let instance = instance(&wishes.folder);
    #[cfg(target_os = "linux")]
    match elsewhere::is_told(&instance) {
        Ok(true) => return ExitCode::SUCCESS,
        Ok(false) => {}
        Err(error) => return cannot_open(&words, &error.to_string()),
    }
    // The system's window library ends in a panic where there is no screen behind the setting.
    match std::panic::catch_unwind(AssertUnwindSafe(|| build(wishes, instance))) {
        Ok(Ok(app)) => {
            app.run(|app, event| {
                if let RunEvent::Exit = event {
                    app.state::<Arc<Desk>>().close();
                }
            });
            ExitCode::SUCCESS
        }
        Ok(Err(error)) => {
            let code = cannot_open(&words, &error.to_string());
            rfd::MessageDialog::new()
                .set_level(rfd::MessageLevel::Error)
                .set_title("Sendaluna")
                .set_description(why_not(&words, &error.to_string()))
                .show();
            code
        }
        Err(_) => cannot_open(&words, &words.say("window-no-screen", &[])),
    }
}

fn cannot_open(words: &Words, what: &str) -> ExitCode {
    crate::answer::complain(&why_not(words, what));
    ExitCode::from(3)
}

fn why_not(words: &Words, what: &str) -> String {
    let happened = words.say("err-no-window", &[("what", what.into())]);
    format!("{happened}\n{}", words.say("do-no-window", &[]))
}

/// Whether there is anything to draw on. Only X and Wayland can tell; the others always have it.
fn has_screen() -> bool {
    let is_set = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    !cfg!(target_os = "linux") || is_set("DISPLAY") || is_set("WAYLAND_DISPLAY")
}

/// One instance for each data folder, not one for all.
fn instance(folder: &Path) -> String {
    format!("org.sendaluna.home.{}", tag(folder))
}

fn build(wishes: Wishes, instance: String) -> tauri::Result<App> {
    let mut context = tauri::generate_context!();
    context.config_mut().identifier = instance;
    let desk = Arc::new(Desk::new(wishes));
    let handed_over = Arc::clone(&desk);
    let builder = tauri::Builder::default();
    // A phone's own notices; a desktop's are the reminder program's.
    #[cfg(mobile)]
    let builder = builder.plugin(tauri_plugin_notification::init());
    builder
        .plugin(tauri_plugin_single_instance::init(move |app, args, from| {
            let (file, begin) = crate::args::handed_over(&args);
            if let Some(file) = file {
                handed_over.files.offer([PathBuf::from(from).join(file)]);
            }
            if begin {
                handed_over.files.offer_to_begin();
            }
            come_forward(app);
        }))
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_opener::init())
        .manage(Arc::clone(&desk))
        .invoke_handler(commands::all())
        .setup(move |app| {
            desk.open_aside();
            make_window(app.handle(), &desk)?;
            Ok(())
        })
        .build(context)
}

/// A name for a folder that fits into the name of an instance.
pub fn tag(folder: &Path) -> String {
    let whole = std::path::absolute(folder).unwrap_or_else(|_| folder.to_path_buf());
    let mut hasher = DefaultHasher::new();
    whole.hash(&mut hasher);
    format!("d{:016x}", hasher.finish())
}

/// The window stays hidden until its first page is drawn, so that nothing flashes.
fn make_window(app: &AppHandle, desk: &Arc<Desk>) -> tauri::Result<()> {
    let shown = app.clone();
    let window = WebviewWindowBuilder::new(app, MAIN, WebviewUrl::App("index.html".into()))
        .title("Sendaluna")
        .inner_size(1040.0, 780.0)
        .min_inner_size(320.0, 480.0)
        .visible(false)
        // Whatever the web view keeps, it keeps in the data folder.
        .data_directory(desk.folder().join("window"))
        .on_navigation(|to| to.scheme() == "tauri" || to.host_str() == Some("tauri.localhost"))
        .on_new_window(|_, _| NewWindowResponse::Deny)
        .on_page_load(move |_, payload| {
            if payload.event() == PageLoadEvent::Finished {
                show_in_any_case(shown.clone());
            }
        })
        .build()?;
    let speaks = Arc::clone(desk);
    tray::follow(&window, move || {
        let say = |id: &str| speaks.with_words(|words| words.say(id, &[]));
        TrayWords { open: say("tray-open"), close: say("tray-close") }
    });
    let dropped = Arc::clone(desk);
    window.on_window_event(move |event| {
        if let WindowEvent::DragDrop(DragDropEvent::Drop { paths, .. }) = event {
            dropped.files.offer(paths.iter().cloned());
        }
    });
    Ok(())
}

fn show_in_any_case(app: AppHandle) {
    std::thread::spawn(move || {
        std::thread::sleep(PATIENCE);
        if let Some(window) = app.get_webview_window(MAIN) {
            let _ = window.show();
        }
    });
}

/// Brings the window to the front; it may be hidden behind others.
fn come_forward(app: &AppHandle) {
    if let Some(window) = app.get_webview_window(MAIN) {
        let _ = window.unminimize();
        let _ = window.show();
        let _ = window.set_focus();
    }
}
