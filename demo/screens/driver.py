"""The driver of the real window, as the journeys use it, and the demo's plans."""

import sys
from dataclasses import dataclass
from pathlib import Path

DEMO = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(DEMO.parent / "tests" / "journeys" / "window"))

import window as driven  # noqa: E402
from window import DESKTOP, PHONE, Window, end_reminders, prefer, prefer_dark  # noqa: E402
from world import BIN_DIR, ROOT, Home, alter  # noqa: E402

__all__ = [
    "BIN_DIR",
    "DEMO",
    "DESKTOP",
    "LANGUAGES",
    "OUT",
    "PHONE",
    "PLANS",
    "QUICK",
    "Home",
    "Plan",
    "Window",
    "alter",
    "end_reminders",
    "opened",
    "prefer_dark",
]

OUT = DEMO / "out"
LOCALES = {"en": "en_US.UTF-8", "es": "es_ES.UTF-8", "de": "de_DE.UTF-8", "ar": "ar_EG.UTF-8"}
# Every language that there is, the source first.
LANGUAGES = sorted((folder.name for folder in (ROOT / "locales").iterdir()), key=lambda lang: (lang != "en", lang))


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


QUICK = Plan(OUT / "plans" / "quick", "left")
PLANS = (Plan(OUT / "plans" / "hip", "left"), Plan(OUT / "plans" / "knee", "right"), QUICK)


def steady_hand(more: dict[str, str] | None = None) -> None:
    """Nobody taps twice by mistake on this desktop, so that taps need not wait for each other."""
    driven.HAND_S = 0.0
    environment = driven.environment

    def steady(home: Path) -> dict[str, str]:
        prefer(home, "gtk-double-click-time=1")
        return environment(home) | (more or {})

    driven.environment = steady


def opened(data: Home, home: Path, size: tuple[int, int], lang: str = "en", device: str = "en") -> Window:
    """A window in this language, on a device that may speak another one."""
    home.mkdir(parents=True, exist_ok=True)
    made = Window(data, home, size, more={"LANG": LOCALES[device]})
    made.lang = lang
    return made
