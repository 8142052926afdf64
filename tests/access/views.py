"""In which ways every page is looked at."""

import itertools
from dataclasses import dataclass

THEMES = ("light", "dark")
TEXTS = (100, 125, 150, 200)
WIDTHS = {"320": (320, 640), "360": (360, 640), "desktop": (1100, 800)}


@dataclass(frozen=True)
class View:
    """One way to look at a page."""

    theme: str
    text: int
    width: str

    def __str__(self) -> str:
        return f"{self.theme}, {self.text} %, {self.width}"


ALL = tuple(View(*view) for view in itertools.product(THEMES, TEXTS, WIDTHS))


def chosen(page: int, lang: int) -> tuple[View, ...]:
    """Two of all: the one with the least room, and one that makes pairs.

    Over all languages every page meets every text size, both papers and every width; over all pages every
    pair of language, paper, text size and width is met.
    """
    narrow = View(THEMES[(page + lang) % 2], TEXTS[-1], "320")
    text = TEXTS[(page + lang) % len(TEXTS)]
    paired = View(THEMES[(page // 4 + lang // 2) % 2], text, [*WIDTHS][(page // 8 + lang) % len(WIDTHS)])
    return tuple(dict.fromkeys((narrow, paired)))


def unmet(pages: int, langs: int) -> list[tuple[object, object]]:
    """The pairs that the choice leaves out."""
    met: set[tuple[object, object]] = set()
    for page, lang in itertools.product(range(pages), range(langs)):
        for view in chosen(page, lang):
            met |= set(itertools.combinations((f"language {lang}", view.theme, view.text, view.width), 2))
    languages = tuple(f"language {lang}" for lang in range(langs))
    pairs = itertools.combinations((languages, THEMES, TEXTS, tuple(WIDTHS)), 2)
    return [pair for one, other in pairs for pair in itertools.product(one, other) if pair not in met]
