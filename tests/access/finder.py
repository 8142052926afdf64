"""Looks for English where nobody speaks it."""

import itertools
import re
import subprocess
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache, partial
from pathlib import Path
from typing import Any

from camera import Camera
from driver import DEMO, Home, Window
from pseudo import ROOT

# What comes from elsewhere: every text of the plans and of their signers, the calendar, the names of
# languages, and the one sign that every plan has, which the terminal takes by its id.
SOURCES = (*DEMO.glob("hip/*.toml"), *DEMO.glob("knee/*.toml"), *(ROOT / "tests/journeys/window/world").glob("*.toml"))
CALENDAR = """
    Monday Tuesday Wednesday Thursday Friday Saturday Sunday Mon Tue Wed Thu Fri Sat Sun
    January February March April May June July August September October November December
"""
NAMES = "English,Español,Deutsch,Larkfield Hip Clinic,[unwell]"
WORD = re.compile(r"[A-Za-z]{2,}")
# What the sources leave open: a date or a number, or whole parts.
HOLE = re.compile(r"@[A-Z0-9_]+@")
PART = re.compile(rf"^{HOLE.pattern}$", re.MULTILINE)
CODE = re.compile(r"\b(?=[A-Z0-9]*\d)[A-Z0-9]{4}\b|\b[A-Z]{4}\b")
STAND_IN = """
    const [body] = arguments;
    const get = Map.prototype.get;
    // The page's own messages lie in a map by language. The next who asks for English gets the other instead.
    Map.prototype.get = function (key) {
        const found = get.call(this, key);
        if (key === 'en' && found?.addResource) {
            Map.prototype.get = get;
            found.addResource({ body }, { allowOverrides: true });
        }
        return found;
    };
"""
PIECES = """
    const shown = (element) => element.checkVisibility({ visibilityProperty: true });
    const found = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
        const { parentElement, data } = walker.currentNode;
        if (parentElement && shown(parentElement) && parentElement.tagName !== 'STYLE') found.push(data);
    }
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder], [alt]')) {
        if (!shown(element)) continue;
        for (const name of ['aria-label', 'title', 'placeholder', 'alt']) found.push(element.getAttribute(name) ?? '');
    }
    return found;
"""


def texts(value: object) -> Iterator[str]:
    """Every text in a document, however deep."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        yield from itertools.chain.from_iterable(map(texts, value.values()))
    elif isinstance(value, list):
        yield from itertools.chain.from_iterable(map(texts, value))


@cache
def known() -> re.Pattern[str]:
    """What may stand there though nobody says it; the longest first, for some are part of others."""
    documents = (HOLE.sub("1", PART.sub("", file.read_text(encoding="utf-8"))) for file in SOURCES)
    found = set(itertools.chain.from_iterable(texts(tomllib.loads(document)) for document in documents))
    found |= {*CALENDAR.split(), *NAMES.split(",")}
    return re.compile("|".join(re.escape(text) for text in sorted(filter(WORD.search, found), key=len, reverse=True)))


def speaks(window: Window, lang: str) -> bool:
    """Whether the page is in a language."""
    return bool(window.js("return document.documentElement.lang") == lang)


def unsaid(text: str) -> list[str]:
    """The English in a text, but for what comes from elsewhere."""
    return WORD.findall(CODE.sub(" ", known().sub(" ", " ".join(text.split()))))


@dataclass
class Finder(Camera):
    """Reads every page."""

    body: list[Any] = field(default_factory=list)
    runs: int = 0

    def enter(self, window: Window) -> None:
        """Puts the made-up language in the place of English, and has the page written anew."""
        window.js(STAND_IN, self.body)
        if window.screen() == "first":
            # Another language, and back.
            for lang, number in (("es", 2), ("en", 1)):
                window.press_at(f"label:nth-child({number})")
                window.until(partial(speaks, window, lang), lang)
        elif window.screen() == "day":
            window.press_at("[data-to=settings]")
            window.at("settings")
            window.press_at(".back")
            window.at("day")

    def take(
        self, window: Window, page: str, *, whole: bool = False, scrolled: bool = False, near: str = ""
    ) -> None:
        """Reads a page."""
        if page in self.taken:
            return
        self.taken.add(page)
        self.runs += 1
        for piece in window.js(PIECES):
            if english := unsaid(piece):
                self.wrong.append(f"{page}: nobody said {english} in “{' '.join(piece.split())[:120]}”")


def in_terminal(home: Home, program: Path, env: dict[str, str]) -> list[str]:
    """What the terminal says that nobody said, line by line."""
    # What was left in code would be found.
    wrong = [] if unsaid("Leave this one") else ["English is not told from the rest"]
    for command in ("due", "gates", "contacts", "settings"):
        asked = [program, "--data", home.folder, "--key-in-file", "--lang", "en", command]
        done = subprocess.run(asked, env=env, capture_output=True, text=True, check=True)
        for line in done.stdout.splitlines():
            if english := unsaid(line):
                wrong.append(f"terminal, {command}: nobody said {english} in “{line.strip()[:120]}”")
    return wrong
