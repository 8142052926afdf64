"""Takes the pictures, and looks at each page for what is wrong."""

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from selenium.webdriver.common.actions.action_builder import ActionBuilder

import picture
from driver import DESKTOP, PHONE, Window

SCRIPTS = Path(__file__).resolve().parent / "page.js"
SIZES = {"phone": PHONE, "desktop": DESKTOP}
# No picture is taller than the screen it is taken on.
TALLEST_PX = 6000
# What is scrolled, is scrolled by so much of the window.
SCROLLED = 0.8
# One name for each page, in the order of the sheets.
PAGES = (
    "first-language", "first-what", "first-reading",
    "receive", "code", "code-mistyped", "refused", "plan", "plan-scrolled", "plan-side-missing",
    "day", "day-scrolled", "weeks", "item", "item-by-hand", "not-yet", "not-yet-open-ended",
    "contacts", "contacts-fall", "settings", "settings-unfolded",
    "signs", "signs-chosen", "pain", "coming",
    "ready", "moving", "paused", "resting", "fewer",
    "hurts-level", "hurts-kind", "hurts-place", "answer",
    "effort", "after-pain", "words", "ended", "day-after", "one-tap", "past", "past-week", "hand-back",
    "stop-ring-today", "stop-spoken", "stop-emergency",
    "knee-plan", "knee-day", "knee-weeks", "knee-item", "knee-not-yet", "knee-waiting", "knee-moving",
    "problem",
    "test-day", "test-before", "test-ready", "test-running", "test-counted", "test-timed", "test-stopped",
    "step-offer", "step-item", "step-down",
    "settings-voice", "reminders", "reminders-on", "reminders-times", "reminders-days", "reminders-quiet",
    "reminders-shows", "reminders-break",
)  # fmt: skip


@dataclass(frozen=True)
class Look:
    """How the window is wanted."""

    theme: str
    lang: str
    text: int

    def name(self, size: str) -> str:
        """What this look is called in one size."""
        return f"{size}-{self.theme}-{self.lang}-{self.text}"


@dataclass
class Camera:
    """Takes every page in the sizes that are wanted."""

    look: Look
    sizes: list[str]
    folder: Path
    #: Only these pages, if any are named.
    only: set[str] = field(default_factory=set)
    wrong: list[str] = field(default_factory=list)
    taken: set[str] = field(default_factory=set)

    def enter(self, window: Window) -> None:
        """A window was opened."""

    def take(
        self, window: Window, page: str, *, whole: bool = False, scrolled: bool = False, near: str = ""
    ) -> None:
        """Takes a page: from its top, scrolled, or near what a selector finds; whole in a taller window besides."""
        number = PAGES.index(page) + 1
        self.taken.add(page)
        if self.only and page not in self.only:
            return
        for size in self.sizes:
            folder = self.folder / self.look.name(size)
            folder.mkdir(parents=True, exist_ok=True)
            window.resize(SIZES[size])
            window.js("scrollTo(0, innerHeight * arguments[0])", SCROLLED if scrolled else 0)
            if near:
                window.js("document.querySelector(arguments[0])?.scrollIntoView({ block: 'center' })", near)
            # Where one is taken to, the main action may be elsewhere.
            self.one(window, folder / f"{number:02}-{page}.png", size, seeks_main=not near)
            width, height = SIZES[size]
            tall = min(TALLEST_PX, int(ask(window, "height"))) if whole else height
            if tall > height:
                window.resize((width, tall))
                self.one(window, folder / f"{number:02}-{page}-whole.png", size, seeks_main=False)
                window.resize((width, height))
        if len(self.sizes) > 1:
            window.resize(SIZES[self.sizes[0]])

    def has_all(self) -> bool:
        """Whether every page that was named is taken."""
        return bool(self.only) and self.only <= self.taken

    def one(self, window: Window, file: Path, size: str, *, seeks_main: bool) -> None:
        """One picture, and what is wrong in it."""
        settle(window)
        picture.take(file, *window.js("return [innerWidth, innerHeight]"))
        for found in ask(window, "wrong", seeks_main):
            self.wrong.append(f"{self.look.name(size)}/{file.stem}: {found}")


def ask(window: Window, call: str, *args: Any) -> Any:
    """Calls one of the sheets' helpers in the page."""
    source = SCRIPTS.read_text(encoding="utf-8")
    return window.js(f"{source}\nreturn sheets.{call}(...arguments)", *args)


def settle(window: Window) -> None:
    """Takes the pointer out of the way, and waits until the page has its letters."""
    pointer = ActionBuilder(window.driver)
    # A click does not count as a move: without the second place, nothing would seem to have changed.
    for place in ((2, 2), (1, 1)):
        pointer.pointer_action.move_to_location(*place)
    pointer.perform()
    window.driver.execute_async_script("document.fonts.ready.then(() => setTimeout(arguments[0], 50))")
