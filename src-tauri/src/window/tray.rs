//! An icon in the desktop's tray while the window is put away, so that whoever is led by ear alone finds the way
//! back. Where the desktop has no tray, there is none, and nothing is missed: a second start brings the window
//! back too.

use std::panic::AssertUnwindSafe;
use std::sync::atomic::{AtomicBool, Ordering};

use tauri::menu::{Menu, MenuItem};
use tauri::tray::TrayIconBuilder;
use tauri::{AppHandle, Manager, WebviewWindow, WindowEvent};

const ICON: &str = "put-away";
const OPEN: &str = "open";
const CLOSE: &str = "close";

/// The words of the icon's menu.
#[derive(Clone)]
pub struct TrayWords {
    /// Brings the window back.
    pub open: String,
    /// Ends the program.
    pub close: String,
}

/// Has the icon come and go with the window.
pub fn follow(window: &WebviewWindow, words: impl Fn() -> TrayWords + Send + 'static) {
    let (app, seen) = (window.app_handle().clone(), window.clone());
    window.on_window_event(move |event| {
        if let WindowEvent::Resized(_) | WindowEvent::Focused(_) = event {
            let is_away = seen.is_minimized().unwrap_or(false);
            match (is_away, app.tray_by_id(ICON).is_some()) {
                (true, false) => put(&app, &words()),
                (false, true) => drop(app.remove_tray_by_id(ICON)),
                _ => {}
            }
        }
    });
}

/// The library that draws it is looked for when it is first needed, and ends in a panic where there is none.
fn put(app: &AppHandle, words: &TrayWords) {
    static NONE_HERE: AtomicBool = AtomicBool::new(false);
    if NONE_HERE.load(Ordering::Relaxed) {
        return;
    }
    let built = std::panic::catch_unwind(AssertUnwindSafe(|| build(app, words)));
    NONE_HERE.store(built.is_err(), Ordering::Relaxed);
}

fn build(app: &AppHandle, words: &TrayWords) -> tauri::Result<()> {
    let open = MenuItem::with_id(app, OPEN, &words.open, true, None::<&str>)?;
    let close = MenuItem::with_id(app, CLOSE, &words.close, true, None::<&str>)?;
    let mut icon =
        TrayIconBuilder::with_id(ICON).tooltip("Sendaluna").menu(&Menu::with_items(app, &[&open, &close])?);
    if let Some(picture) = app.default_window_icon() {
        icon = icon.icon(picture.clone());
    }
    icon.on_menu_event(|app, event| match event.id().as_ref() {
        OPEN => super::come_forward(app),
        CLOSE => app.exit(0),
        _ => {}
    })
    .build(app)?;
    Ok(())
}
