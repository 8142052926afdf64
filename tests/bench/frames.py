"""How evenly the figure moves: the intervals between its pictures, in the real window, in a session.

Prints the median as pictures a second, the 95th percentile of the intervals, and how many of the
pictures put the limb elsewhere than the one before.
"""

import statistics
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "journeys" / "window"))

from steps import SLIDE, begin, ready  # noqa: E402
from window import PHONE, Window  # noqa: E402
from world import Home, World  # noqa: E402

SECONDS = 20
WATCH = """
    const seen = (window.framesSeen = { at: [], moved: 0 });
    let was = '';
    requestAnimationFrame(function watch(now) {
        const limb = document.querySelector('[data-figure] path.near-operated');
        const path = limb?.getAttribute('d') ?? '';
        if (path !== was) { seen.at.push(now); if (was) seen.moved += 1; was = path; }
        else seen.at.push(NaN);
        requestAnimationFrame(watch);
    });
"""


def watched(window: Window) -> list[float]:
    """The intervals between pictures on which the limb moved, in ms."""
    at = window.js("return window.framesSeen.at")
    pairs = zip(at, at[1:], strict=False)
    return [later - before for before, later in pairs if before is not None and later is not None]


def main() -> None:
    """Leads the first exercise of the demo's patient and looks on."""
    with tempfile.TemporaryDirectory() as folder:
        home = Home(Path(folder) / "data")
        home.receive(World.new(Path(folder) / "world"))
        window = Window(home, Path(folder) / "home", PHONE)
        try:
            window.at("first")
            window.press("first-later")
            window.at("day")
            begin(window)
            window.js(WATCH)
            ready(window, SLIDE)
            window.until(lambda: len(watched(window)) > SECONDS * 20, "the figure moves", SECONDS * 6)
            intervals = sorted(watched(window))
        finally:
            window.close()
    median = statistics.median(intervals)
    late = intervals[int(len(intervals) * 0.95)]
    print(f"{len(intervals)} intervals: median {1000 / median:.0f} pictures a second (wanted: 60); ")
    print(f"95th percentile {late:.1f} ms")


if __name__ == "__main__":
    main()
