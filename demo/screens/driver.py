"""The driver of the real window, as the journeys use it, and the demo's plans."""

import sys
from dataclasses import dataclass
from pathlib import Path

DEMO = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(DEMO.parent / "tests" / "journeys" / "window"))

import window as driven  # noqa: E402
from window import DESKTOP, PHONE, Window, prefer_dark  # noqa: E402
from world import BIN_DIR, Home, alter  # noqa: E402

__all__ = [
    "BIN_DIR",
    "DEMO",
    "DESKTOP",
    "OUT",
    "PHONE",
    "Home",
    "Plan",
    "Window",
    "alter",
    "opened",
    "prefer_dark",
]

OUT = DEMO / "out"
LOCALES = {"en": "en_US.UTF-8", "es": "es_ES.UTF-8"}
plain_environment = driven.environment


@dataclass(frozen=True)
class Plan:
    """A plan that was signed for the demo."""

    folder: Path
    side: str

    @property
    def file(self) -> Path:
        """What the clinic hands over."""
        return self.folder / "plan.sendaluna"

    @property
    def letter_code(self) -> str:
        """What stands on the letter."""
        return (self.folder / "letter-code.txt").read_text(encoding="utf-8").strip()


def opened(data: Home, home: Path, size: tuple[int, int], lang: str = "en", device: str = "en") -> Window:
    """A window in this language, on a device that may speak another one."""
    driven.environment = lambda place: plain_environment(place) | {"LANG": LOCALES[device]}
    home.mkdir(parents=True, exist_ok=True)
    made = Window(data, home, size)
    made.lang = lang
    return made
