"""A dose that steps within what was signed."""

import subprocess
from pathlib import Path

from conftest import Open
from steps import PRESS, answer_pain, answer_signs, begin, ready, skip_after
from window import Window
from world import BIN_DIR, ENV, GRADED, ORDER, Home, World


def stepping(world: World, patient: Home) -> None:
    """A revision in which the thigh squeeze has two steps."""
    patient.ask("receive", world.clinic.plan(3, {ORDER: GRADED}))


def trained(window: Window) -> None:
    """A whole session of the thigh squeeze, up to its end."""
    begin(window, "press")
    ready(window, PRESS)
    skip_after(window)
    window.at("ended")
    window.reads("steps-ask")


def test_one_up_is_asked_after_a_session_and_one_down_is_on_the_page(
    open_window: Open, patient: Home, world: World, size: tuple[int, int]
) -> None:
    """Up with a yes, down at any time, and the page says where it stands."""
    stepping(world, patient)
    window = open_window(patient, size)
    trained(window)
    window.check()
    window.press("steps-yes")
    window.at("day")
    window.press_at("[data-item=press]")
    window.at("item")
    window.reads("steps-at", step=2, steps=2)
    window.press("steps-down")
    window.reads("steps-down-sure")
    window.check()
    window.press("steps-down-yes")
    window.at("day")
    window.close()
    assert patient.due("press")["step"]["step"] == 1


def test_not_now_leaves_it_and_the_yes_is_on_the_page(
    open_window: Open, patient: Home, world: World
) -> None:
    """Whoever changes their mind finds the yes where the exercise is."""
    stepping(world, patient)
    window = open_window(patient)
    trained(window)
    window.press("steps-not-now")
    window.at("day")
    window.press_at("[data-item=press]")
    window.at("item")
    window.reads("steps-at", step=1, steps=2)
    window.check()
    window.press("steps-yes")
    window.at("day")
    window.close()
    assert patient.due("press")["step"]["step"] == 2


def yesterday(home: Home, plan: Path, code: str, item: str) -> None:
    """The plan was taken in a day ago, and this exercise led."""
    command = [str(BIN_DIR / "yesterday"), str(home.folder), str(plan), code, item]
    done = subprocess.run(command, env=ENV, capture_output=True, text=True, check=False)
    assert done.returncode == 0, f"{done.stdout}{done.stderr}"


def test_a_bad_morning_is_asked_about_once_and_makes_the_day_smaller(
    open_window: Open, empty: Home, world: World, size: tuple[int, int]
) -> None:
    """The day after a session, before the next: how it was on waking, and then how it is now."""
    plan = world.clinic.plan(3, {ORDER: GRADED.replace("start = 1", "start = 2")})
    yesterday(empty, plan, world.clinic.letter_code, "press")
    window = open_window(empty, size)
    window.at("first")
    window.press("first-later")
    window.press_at("[data-item=press]")
    window.press("item-begin")
    answer_signs(window)
    window.reads("before-morning")
    window.check()
    window.press_text("5")
    window.press("before-pain-go-on")
    answer_pain(window, 1)
    window.reads("morning-rose")
    window.reads("caution-nobody-sees")
    window.check()
    window.press("before-begin")
    ready(window, PRESS)
    skip_after(window)
    window.at("ended")
    # Never up on the day that it went down.
    assert not window.offers("steps-yes")
    window.press("ended-back")
    window.at("day")
    window.close()
    assert empty.due("press")["step"] == {
        "step": 1,
        "of": 2,
        "said": "Step 1 of 2.",
        "up": None,
        "can_down": False,
    }
