"""Stands where the camera stands on the way through the pages, and holds each page against the rules."""

import json
from collections.abc import Callable
from dataclasses import dataclass

from camera import PAGES, Camera, ask
from driver import Window
from views import WIDTHS, View

# On these the time runs on: only so many looks before what is shown has passed.
FLEETING = {"moving", "resting", "knee-moving", "test-running", "test-ready"}
DRESS = """
    const [theme, text] = arguments;
    document.documentElement.dataset.theme = theme;
    document.documentElement.dataset.text = text;
"""


@dataclass
class Inspector(Camera):
    """Looks at every page in several ways."""

    #: In which ways a page is looked at, by its number.
    views: Callable[[int], tuple[View, ...]] = lambda _: ()
    few: Callable[[int], tuple[View, ...]] = lambda _: ()
    runs: int = 0

    def take(
        self, window: Window, page: str, *, whole: bool = False, scrolled: bool = False, near: str = ""
    ) -> None:
        """Looks at a page, and leaves it as it was."""
        number = PAGES.index(page)
        first = page not in self.taken
        self.taken.add(page)
        if (self.only and page not in self.only) or not first or scrolled:
            return
        size = tuple(window.js("return [innerWidth, innerHeight]"))
        theme, text = window.js("const { theme, text } = document.documentElement.dataset; return [theme, text]")
        for view in (self.few if page in FLEETING else self.views)(number):
            window.resize(WIDTHS[view.width])
            window.js(DRESS, view.theme, str(view.text))
            self.hold(window, page, view, near)
        window.js(DRESS, theme, text)
        window.resize(size)

    def hold(self, window: Window, page: str, view: View, near: str) -> None:
        """Holds one view of a page against the rules."""
        self.runs += 1
        where = f"{page} ({self.look.lang}, {view})"
        for violation in window.axe_now(view.theme):
            self.wrong.append(f"{where}: axe: {json.dumps(violation, ensure_ascii=False)}")
        window.js("scrollTo(0, 0)")
        self.wrong += [f"{where}: {found}" for found in ask(window, "wrong", not near)]
