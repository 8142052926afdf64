//! A window with static text and nothing else.

use tauri::{WebviewUrl, WebviewWindowBuilder};

fn main() -> tauri::Result<()> {
    tauri::Builder::default()
        .setup(|app| {
            WebviewWindowBuilder::new(app, "main", WebviewUrl::App("index.html".into()))
                .title("Bare")
                .inner_size(1040.0, 780.0)
                .build()?;
            Ok(())
        })
        .run(tauri::generate_context!())
}
