"""A dose that steps within what was signed."""

from conftest import Open
from steps import PRESS, begin, ready, skip_after
from window import Window
from world import Home, World

# Once, or twice after one whole session.
GRADED = """order = 20

[items.graded]
start = 1
up_after_sessions = 1
up_pain_at_most = 2
down_pain_over = 4
doses = [
    { sets = 1, repetitions = 1, tempo = { out_s = 1, hold_s = 1, back_s = 1, pause_s = 0 } },
    { sets = 1, repetitions = 2, tempo = { out_s = 1, hold_s = 1, back_s = 1, pause_s = 0 } },
]
"""


def stepping(world: World, patient: Home) -> None:
    """A revision in which the thigh squeeze has two steps."""
    patient.ask("receive", world.clinic.plan(3, {"order = 20\n": GRADED}))


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
