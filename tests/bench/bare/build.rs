//! Embeds the one static page.

fn main() {
    tauri_build::build();
}
