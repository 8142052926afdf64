//! A bare process: it waits, and does nothing. What the reminder program is measured beside.

fn main() {
    loop {
        std::thread::park();
    }
}
