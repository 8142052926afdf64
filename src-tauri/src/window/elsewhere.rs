//! A window that is open already is told of this start before anything is drawn.
//!
//! The plugin that keeps one instance tells it too, but only once the window library is up, and ends the
//! process while that library's threads still start: now and then the second start ended in a crash.

use std::time::Duration;

use zbus::blocking::connection::Builder;

/// What the bus says of a name that nobody has.
const NOBODY: &str = "org.freedesktop.DBus.Error.ServiceUnknown";
/// How long the other may take to hear it.
const HEARD_WITHIN: Duration = Duration::from_secs(5);

/// Tells the window of the same instance what this program was started with; false if there is none.
pub fn is_told(identifier: &str) -> zbus::Result<bool> {
    let bus = Builder::session().and_then(|bus| bus.method_timeout(HEARD_WITHIN).build());
    // Without a bus there is no way to another window.
    let Ok(bus) = bus else { return Ok(false) };
    // As the plugin names itself on the bus.
    let name = format!("{identifier}.SingleInstance");
    let path = format!("/{}", name.replace('.', "/").replace('-', "_"));
    let args: Vec<String> = std::env::args_os().map(|arg| arg.to_string_lossy().into_owned()).collect();
    let here = std::env::current_dir().unwrap_or_default().to_string_lossy().into_owned();
    let interface = Some("org.SingleInstance.DBus");
    match bus.call_method(Some(name), path, interface, "ExecuteCallback", &(args, here)) {
        Ok(_) => Ok(true),
        Err(zbus::Error::MethodError(error, ..)) if error == NOBODY => Ok(false),
        // It is there, and silent: asked once more, it would have the file twice.
        Err(error) => Err(error),
    }
}
