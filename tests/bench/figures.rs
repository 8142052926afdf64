//! How long a figure takes, and the facts of the whole library: median and worst of many.
#![expect(clippy::print_stdout, reason = "a bench prints its figures")]

use std::hint::black_box;
use std::time::{Duration, Instant};

use sendaluna_core::facts::{OperatedSide, Side};
use sendaluna_core::library::{Library, Movement};
use sendaluna_figure::svg::{LIGHT, still};
use sendaluna_figure::{Showing, draw, draw_at};

const ROUNDS: usize = 20;

fn timed(work: impl FnOnce()) -> Duration {
    let start = Instant::now();
    work();
    start.elapsed()
}

fn say(what: &str, mut times: Vec<Duration>, wanted: &str) {
    times.sort();
    let micros = |time: Duration| time.as_secs_f64() * 1e6;
    let (median, worst) = (times[times.len() / 2], times[times.len() - 1]);
    println!(
        "{what}: median {:.0} µs, worst {:.0} µs of {} ({wanted})",
        micros(median),
        micros(worst),
        times.len()
    );
}

fn main() {
    let library = Library::shipped();
    let all: Vec<&Movement> = library.iter().collect();
    let showing = Showing { working: Side::Right, both: false, operated: OperatedSide::Right, limit: None };
    let each = |work: &dyn Fn(&Movement)| -> Vec<Duration> {
        (0..ROUNDS).flat_map(|_| all.iter().map(|movement| timed(|| work(movement)))).collect()
    };
    say(
        "one pose to SVG",
        each(&|movement| {
            black_box(still(&draw_at(movement, &showing, &[1.0]), 1.0, &LIGHT));
        }),
        "wanted: under 200",
    );
    say(
        "all frames of a figure",
        each(&|movement| {
            black_box(draw(movement, &showing));
        }),
        "no figure wanted",
    );
    let forms: Vec<_> = all.iter().map(|movement| movement.form().clone()).collect();
    let facts = (0..ROUNDS)
        .map(|_| {
            timed(|| {
                for form in &forms {
                    black_box(Movement::new(form.clone()).map(|movement| movement.digest()).is_ok());
                }
            })
        })
        .collect();
    say(&format!("check and facts of all {} movements", forms.len()), facts, "wanted: under 50,000");
}
