"""What comes later in a plan: doses that step, and the tests that the clinic asks for at home."""

import shutil
from pathlib import Path
from typing import TYPE_CHECKING

from driver import QUICK, Home, Plan, Window
from selenium.webdriver.common.keys import Keys
from steps import answer_pain, answer_signs, asks_ready, press_until, ready, skip_after
from world import GRADED, ORDER, TESTS, Clinic

if TYPE_CHECKING:
    from tour import Tour

# The exercise that steps.
STEPPED = "press"


def sign_quick() -> None:
    """Signs a plan of doses of a few seconds, one of them in steps, with every test."""
    folder = QUICK.folder
    shutil.rmtree(folder, ignore_errors=True)
    clinic = Clinic.new(folder / "clinic", "Larkfield Hip Clinic")
    shutil.copy(clinic.plan(1, {ORDER: GRADED, "@HOME_TESTS@": TESTS}), QUICK.file)
    (folder / "letter-code.txt").write_text(clinic.letter_code, encoding="utf-8")


def received(plan: Plan, folder: Path) -> Home:
    """A patient who has taken this plan in."""
    home = Home(folder)
    home.ask("receive", plan.file, "--code", plan.letter_code, "--side", plan.side, "--yes")
    return home


def home_tests(tour: "Tour") -> None:
    """A test that is counted, one that is timed, and one that is stopped."""
    with tour.window(received(tour.quick, tour.folder / "tests")) as window:
        tour.choose(window)
        window.press("first-later")
        window.at("day")
        tour.take(window, "test-day", near="[data-test]")
        window.press_at("[data-test=rise]")
        answer_signs(window)
        answer_pain(window, 1)
        window.reads("test-ask-helper")
        tour.take(window, "test-before", whole=True)
        window.press("test-helper-yes")
        window.at("home-test")
        tour.take(window, "test-ready")
        window.keys(Keys.SPACE)
        window.until(lambda: state(window) == "running", "the count-in to end")
        press_until(window, "test-tap-stood", lambda: count(window) >= 1, "a stand")
        tour.take(window, "test-running")
        window.until(lambda: state(window) == "done", "the end of thirty seconds", 60)
        tour.take(window, "test-counted", whole=True)
        window.press("test-keep")
        another(window, "go")
        press_until(window, "test-tap-go", lambda: state(window) == "running", "the way")
        window.until(lambda: count(window) >= 1, "a second")
        window.press("test-tap-seated")
        window.reads("test-right")
        tour.take(window, "test-timed")
        window.press("test-keep")
        another(window, "stand")
        window.press("test-stop")
        window.reads("test-stopped")
        tour.take(window, "test-stopped")


def another(window: Window, test: str) -> None:
    """Begins another test of the same day."""
    window.at("day")
    window.press_at(f"[data-test={test}]")
    window.reads("ask-signs-again")
    window.press("before-nothing")
    window.press("test-helper-yes")
    window.at("home-test")


def state(window: Window) -> str:
    """Where the test stands."""
    return str(window.js("return document.querySelector('[data-state]')?.dataset.state ?? ''"))


def count(window: Window) -> int:
    """The large figure."""
    return int(window.js("return document.querySelector('.figures')?.textContent || '0'"))


def reminded(tour: "Tour") -> None:
    """The voice, and reminders: off, on, and what can be chosen of them."""
    with tour.window(received(tour.quick, tour.folder / "reminded")) as window:
        tour.choose(window)
        window.press("first-later")
        window.at("day")
        window.press_at("[data-to=settings]")
        window.at("settings")
        unfold(window, 5)
        tour.take(window, "settings-voice", near="main li:nth-child(5)", whole=True)
        window.press_at("main li:nth-child(4) button")
        window.at("reminders")
        if window.offers("remind-switch-off"):
            window.press("remind-switch-off")
        window.until(lambda: window.offers("remind-switch-on"), "reminders that are off")
        tour.take(window, "reminders", whole=True)
        window.press("remind-switch-on")
        window.until(lambda: window.offers("remind-switch-off"), "reminders that are on")
        tour.take(window, "reminders-on", whole=True)
        for number, page in ((1, "times"), (2, "days"), (3, "quiet"), (5, "shows")):
            unfold(window, number)
            tour.take(window, f"reminders-{page}", near=f"main li:nth-child({number})", whole=True)
        window.press("remind-break")
        tour.take(window, "reminders-break", near="main li:last-child", whole=True)


def unfold(window: Window, row: int) -> None:
    """Opens what a sentence of the settings stands for."""
    button = f"main li:nth-child({row}) button"
    window.press_at(button)
    opened = f"return document.querySelector('{button}')?.ariaExpanded === 'true'"
    window.until(lambda: window.js(opened), f"row {row} unfolded")


def steps(tour: "Tour") -> None:
    """A dose that may go one up after a whole session, and one down at any time."""
    with tour.window(received(tour.quick, tour.folder / "steps")) as window:
        tour.choose(window)
        window.press("first-later")
        window.at("day")
        window.press_at(f"[data-item={STEPPED}]")
        window.press("item-begin")
        answer_signs(window)
        answer_pain(window, 1)
        window.press("before-begin")
        window.at("session")
        window.until(lambda: asks_ready(window), "the question")
        ready(window, window.title())
        skip_after(window)
        window.at("ended")
        window.reads("steps-ask")
        tour.take(window, "step-offer", whole=True)
        window.press("steps-yes")
        window.at("day")
        window.press_at(f"[data-item={STEPPED}]")
        window.reads("steps-at", step=2, steps=2)
        tour.take(window, "step-item", near=".steps")
        window.press("steps-down")
        window.reads("steps-down-sure")
        tour.take(window, "step-down", near=".sure")
