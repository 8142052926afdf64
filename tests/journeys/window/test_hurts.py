"""This hurts: the plan's rule answers, and is carried out."""

from conftest import Open
from steps import PRESS, RAISE, SLIDE, SLIDE_EASIER, begin, hurts, press_until, ready, skip_after, tally_is
from window import DESKTOP, Window
from words import say
from world import Home


def moving(window: Window) -> None:
    """Waits until it moves."""
    window.until(lambda: window.stage() == "running", "movement")


def answered(window: Window, name: str, on: str = "session-go-on") -> None:
    """Reads the plan's answer, and goes on."""
    window.reads(name)
    press_until(window, on, lambda: not reads(window, name), "the end of the answer")


def reads(window: Window, name: str) -> bool:
    """Whether the plan's answer stands on the page."""
    return say(name) in window.title()


def test_every_answer(open_window: Open, patient: Home) -> None:
    """From going on to stopping for today, in one session."""
    window = open_window(patient, DESKTOP)
    begin(window, pain=1)
    ready(window, SLIDE)
    moving(window)

    # Mild: it goes on. The pages on the way are held against the rules for access.
    window.press("session-hurts")
    window.at("hurts")
    window.check()
    # The second tap answers nothing on the page that the first one opened.
    window.press_twice("2")
    window.reads("hurts-kind")
    window.check()
    window.reads("hurts-kind")
    window.press("hurts-stretching")
    window.reads("hurts-where")
    window.check()
    window.press("session-back")
    window.reads("hurts-kind")
    window.press("hurts-stretching")
    window.press("hurts-cannot-say")
    window.reads("hurts-go-on")
    window.reads("caution-nobody-sees-if-worried")
    window.check()
    answered(window, "hurts-go-on")
    moving(window)
    tally_is(window, 1, 4)

    hurts(window, 4)
    answered(window, "hurts-gently")
    moving(window)
    hurts(window, 5)
    answered(window, "hurts-easier")
    ready(window, SLIDE_EASIER)
    moving(window)

    # There is no easier way than the easier one: this exercise is left.
    hurts(window, 5)
    window.reads("caution-nobody-sees")
    answered(window, "hurts-stop-exercise", "session-go-on-without")
    ready(window, PRESS)
    moving(window)
    hurts(window, 1, "hurts-sharp")
    answered(window, "hurts-stop-exercise", "session-go-on-without")
    ready(window, RAISE)
    moving(window)
    hurts(window, 8)

    window.at("stop")
    window.sees("555-0171")
    window.reads("caution-nobody-sees")
    window.check()
    window.close()
    day = patient.ask("due")
    assert day["stop"]["tier"] == "ring-today"
    assert not day["can_go_on"]

    window = open_window(patient)
    window.at("stop")
    window.press("stop-spoke")
    window.press("stop-spoke-yes")
    window.at("day")
    window.reads("spoke-done")
    # What hurt rests today, even so.
    window.reads("times-rests-today")
    window.press("past-title")
    window.reads("past-sessions", n=1)


def test_no_pain_at_all_goes_on(open_window: Open, patient: Home) -> None:
    """A nought has no kind and no place."""
    window = open_window(patient)
    begin(window, "press")
    ready(window, PRESS)
    moving(window)
    window.press("session-hurts")
    window.at("hurts")
    window.press_text("0")
    answered(window, "hurts-go-on")
    skip_after(window)
    window.reads("ended-whole")


def test_unwell_in_a_session(open_window: Open, patient: Home) -> None:
    """It stops at once, says whom to ring, and stays so."""
    window = open_window(patient)
    begin(window)
    ready(window, SLIDE)
    tally_is(window, 1, 4)
    window.press("session-pause")
    window.press("session-unwell")
    window.at("stop")
    window.sees("555-0171")
    window.close()
    assert patient.ask("due")["stop"]["tier"] == "ring-today"
    window = open_window(patient)
    window.at("stop")


def test_unwell_while_asked_where_it_hurts(open_window: Open, patient: Home) -> None:
    """Nobody who feels unwell has to answer first."""
    window = open_window(patient)
    begin(window)
    ready(window, SLIDE)
    moving(window)
    window.press("session-hurts")
    window.at("hurts")
    window.press("session-unwell")
    window.at("stop")
