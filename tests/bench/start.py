"""How long it takes from a cold start to a day that can be used, against a bare window.

Both programs show their window once its first page is there. What is measured is the time from the
start of the process until text can be seen on the screen. Both begin without any cache of their own,
in a home folder that is new. Prints both medians, and the ratio.
"""

import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from Xlib import X, display
from Xlib.xobject import drawable

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "journeys" / "window"))

from window import DESKTOP, Window, environment  # noqa: E402
from world import BIN_DIR, Home, World  # noqa: E402

RUNS = 15
# A window that is smaller than this belongs to the toolkit.
LEAST = 300
# A window without text has its ground, and perhaps a button's and an edge's colour.
COLOURS = 8
GIVE_UP_S = 30.0


def patient(folder: Path) -> Home:
    """A patient with a plan, and with the first two minutes behind them."""
    home = Home(folder / "data")
    home.receive(World.new(folder / "world"))
    window = Window(home, folder / "once", DESKTOP)
    try:
        window.at("first")
        window.press("first-later")
        window.at("day")
    finally:
        window.close()
    return home


def has_text(window: drawable.Window) -> bool:
    """Whether there is text at the top of a window: smooth letters bring many colours."""
    picture = window.get_image(0, 0, 600, 150, X.ZPixmap, 0xFFFFFFFF)
    pixels = memoryview(picture.data).cast("I")
    return len(set(pixels)) >= COLOURS


def seen(screen: display.Display, command: list[str], home: Path) -> float:
    """Seconds from the start of a program until its text can be seen."""
    home.mkdir(parents=True)
    root = screen.screen().root
    root.change_attributes(event_mask=X.SubstructureNotifyMask)
    screen.sync()
    while screen.pending_events():
        screen.next_event()
    began = time.monotonic()
    process = subprocess.Popen(
        command, env=environment(home), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    shown = None
    try:
        while time.monotonic() - began < GIVE_UP_S:
            if shown is None:
                event = screen.next_event()
                if event.type == X.MapNotify and event.window.get_geometry().width >= LEAST:
                    shown = event.window
            elif has_text(shown):
                return time.monotonic() - began
        raise TimeoutError(f"{command[0]} showed no text")
    finally:
        process.kill()
        process.wait()


def main() -> None:
    """Measures in turn, so that whatever slows the machine slows both."""
    screen = display.Display()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        data = patient(folder)
        ours = [str(BIN_DIR / "sendaluna"), "--data", str(data.folder), "--key-in-file"]
        bare = [str(BIN_DIR / "sendaluna-bare")]
        times: dict[str, list[float]] = {"ours": [], "bare": []}
        for number in range(RUNS + 1):
            for which, command in (("bare", bare), ("ours", ours)):
                took = seen(screen, command, folder / f"home-{which}-{number}")
                # The first of each brings the programs themselves into the system's memory.
                if number > 0:
                    times[which].append(took)
        median = {which: statistics.median(took) for which, took in times.items()}
        print(f"bare window, static text: {median['bare'] * 1000:.0f} ms (median of {RUNS})")
        print(f"the day, ready to be used: {median['ours'] * 1000:.0f} ms (median of {RUNS})")
        print(f"ratio: {median['ours'] / median['bare']:.2f}")


if __name__ == "__main__":
    main()
