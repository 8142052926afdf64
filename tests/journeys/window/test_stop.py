"""Warning signs of every tier, and a stop that stays until the clinic was spoken to."""

import pytest
from selenium.webdriver.common.keys import Keys

from conftest import Open
from steps import ACHE, BREATH, CALF, answer_pain, answer_signs
from window import Window
from words import say
from world import Home

TIERS = {"emergency": BREATH, "ring-today": CALF}


def cannot_begin(window: Window) -> str:
    """The code with which the host refuses to begin."""
    args = {"only": None, "goesOn": False, "helper": False, "channel": window.channel()}
    well, problem = window.invoke("begin", args)
    assert not well
    return str(problem["code"])


def shows(window: Window, tier: str) -> None:
    """The page of a stop, with whom to ring."""
    window.at("stop")
    window.reads("stop-until-spoken")
    window.sees("555-0171")
    if tier == "emergency":
        window.reads("caution-nobody-sees-emergency", number="112")
        window.reads("stop-emergency", emergency="112")
        window.sees("Say that you have a new left hip")
    else:
        window.reads("caution-nobody-sees")
        numbers = {"clinic": "Larkfield Hip Clinic", "phone": "555-0171", "night": "555-0172"}
        window.reads("stop-ring-today", **numbers)


@pytest.mark.parametrize("tier", list(TIERS))
def test_a_sign_stops(open_window: Open, patient: Home, size: tuple[int, int], tier: str) -> None:
    """No session; ring. After a restart it is still so, until one has spoken to the clinic."""
    window = open_window(patient, size)
    window.press("day-begin")
    answer_signs(window, TIERS[tier])
    shows(window, tier)
    window.check()
    window.keys(Keys.ESCAPE + Keys.BACKSPACE)
    window.js("history.back()")
    assert window.screen() == "stop"
    assert cannot_begin(window).startswith("must-ring")
    window.close()
    assert patient.ask("due")["stop"]["tier"] == tier

    window = open_window(patient, size)
    shows(window, tier)
    assert cannot_begin(window).startswith("must-ring")
    window.press("stop-spoke")
    window.reads("stop-spoke-sure")
    window.check()
    window.press("stop-spoke-no")
    window.press("stop-spoke")
    window.press("stop-spoke-yes")
    window.at("day")
    window.reads("spoke-done")
    window.press("day-begin")
    window.at("before")
    window.close()
    assert patient.ask("due")["stop"] is None


def test_a_sign_that_is_only_noted(open_window: Open, patient: Home) -> None:
    """It is said, and the session may begin."""
    window = open_window(patient)
    window.press("day-begin")
    answer_signs(window, ACHE)
    answer_pain(window, 0)
    window.reads("signs-noted")
    window.check()
    window.press("before-begin")
    window.at("session")


def test_pain_at_rest_can_stop_the_day(open_window: Open, patient: Home) -> None:
    """As much as the plan says is too much to begin with."""
    window = open_window(patient)
    window.press("day-begin")
    answer_signs(window)
    answer_pain(window, 7)
    shows(window, "ring-today")


def test_unwell_is_one_tap_from_the_day(open_window: Open, patient: Home) -> None:
    """From the page with the numbers to ring, and from the question about pain."""
    window = open_window(patient)
    window.press("contacts-title")
    window.at("contacts")
    for words in (BREATH, CALF, ACHE, "555-0171", "555-0172", "112"):
        window.sees(words)
    window.check()
    window.press("contacts-unwell")
    shows(window, "ring-today")
    window.press("stop-spoke")
    window.press("stop-spoke-yes")
    window.at("day")
    window.press("day-begin")
    answer_signs(window, say("sign-unwell"))
    shows(window, "ring-today")


def test_a_fall_is_written_down(open_window: Open, patient: Home) -> None:
    """After a question, and it says what follows."""
    window = open_window(patient)
    window.press("contacts-title")
    window.press("contacts-fell")
    window.reads("contacts-fell-means")
    window.check()
    window.press("contacts-not-so")
    window.press("contacts-fell")
    window.press("contacts-write-fell")
    shows(window, "ring-today")
    window.close()
    assert patient.ask("due")["stop"]["tier"] == "ring-today"
    assert any(say("reason-set-back") in str(view) for view in patient.ask("gates")["items"])
