"""A test from the clinic, with somebody beside the patient."""

import re
from functools import partial
from pathlib import Path

import pytest
from selenium.webdriver.common.keys import Keys

from conftest import Open
from sound import Room
from steps import answer_pain, answer_signs, press_until
from window import PHONE, Window
from words import say
from world import TESTS, Home, World


@pytest.fixture(scope="module")
def tested_plan(world: World) -> Path:
    """A revision that asks for all three tests."""
    return world.clinic.plan(3, {"@HOME_TESTS@": TESTS})


@pytest.fixture
def tested(patient: Home, tested_plan: Path) -> Home:
    """A patient whose plan asks for them."""
    patient.ask("receive", tested_plan, "--yes")
    return patient


def asked_for(home: Home) -> list[str]:
    """The tests that the day asks for."""
    return [test["test"] for test in home.ask("due")["tests"]]


def begin(window: Window, test: str) -> None:
    """Begins a test as the first thing of the day."""
    window.press_at(f"[data-test={test}]")
    answer_signs(window)
    answer_pain(window, 1)
    window.reads("test-ask-helper")
    window.press("test-helper-yes")
    window.at("home-test")


def state(window: Window) -> str:
    """Where the test stands."""
    return str(window.js("return document.querySelector('[data-state]')?.dataset.state ?? ''"))


def count(window: Window) -> int:
    """The large figure."""
    return int(window.js("return document.querySelector('.figures')?.textContent ?? '0'"))


def stood(window: Window, stands: int) -> bool:
    """Whether so many stands are counted."""
    return count(window) >= stands


def test_a_walk_with_somebody_there(open_window: Open, tested: Home) -> None:
    """Nobody there, no test; with somebody it is timed between two taps, and asked for no more."""
    window = open_window(tested)
    window.reads("test-day")
    window.check()
    window.press_at("[data-test=go]")
    answer_signs(window)
    answer_pain(window, 1)
    window.reads("test-unsafe")
    window.check()
    window.press("test-helper-no")
    window.at("day")
    window.reads("test-helper-none")
    refused = {"test": "go", "helper": False, "channel": window.channel()}
    assert window.invoke("begin_test", refused)[1]["code"] == "helper-needed"

    window.press_at("[data-test=go]")
    window.reads("ask-signs-again")
    window.press("before-nothing")
    window.press("test-helper-yes")
    window.at("home-test")
    window.check()
    window.press("test-tap-go")
    window.until(lambda: count(window) >= 2, "two seconds")
    assert window.invoke("did_care", {"care": "ice"})[1]["code"] == "session-under-way"
    window.press("test-tap-seated")
    window.reads("test-right")
    window.check()
    window.press("test-keep")
    window.at("day")
    window.reads("test-written")
    window.close()
    assert asked_for(tested) == ["rise", "stand"]


def test_a_chair_stand_is_counted_and_put_right(open_window: Open, tested: Home, tmp_path: Path) -> None:
    """Thirty seconds by the program's clock; the count can be put right, and the arms told of."""
    window = open_window(tested)
    begin(window, "rise")
    window.check()
    window.keys(Keys.SPACE)
    window.until(lambda: state(window) == "running", "the count-in to end")
    for stands in (1, 2):
        so_often = partial(stood, window, stands)
        press_until(window, "test-tap-stood", so_often, f"{stands} stands")
    window.check()
    window.until(lambda: state(window) == "done", "the end of thirty seconds", 60)
    window.reads("test-half-way")
    window.check()
    window.press("item-more")
    window.press("test-arms")
    window.press("test-keep")
    window.at("day")
    window.reads("test-result-chair-stand", n=3)
    window.reads("test-result-arms")
    assert "average" not in window.text()
    window.close()
    done = tested.ask("hand-back", "--out", tmp_path / "out")["measures"]["tests"]
    assert done[0]["result"] == {"of": "chair-stand", "stands": 3, "arms_used": True}
    assert (done[0]["how"], done[0]["helper"]) == ("remembered", True)


@pytest.mark.alone
def test_a_walk_can_be_done_by_ear(open_window: Open, tested: Home, tmp_path: Path) -> None:
    """What to mind, how to get ready, go, the end and the bare figure are spoken."""
    with Room(tmp_path / "room") as room:
        window = open_window(tested, PHONE, more=room.env)
        begin(window, "go")
        spoken = lambda: [asked.text for asked in room.asked()]  # noqa: E731
        window.until(lambda: say("test-timed-up-and-go-sit") in spoken(), "how to get ready, aloud")
        window.press("test-tap-go")
        window.until(lambda: count(window) >= 1, "a second")
        window.press("test-tap-seated")
        window.until(lambda: len(spoken()) >= 5, "the figure, aloud")
        heard = room.close()
    texts = [asked.text for asked in heard.asked]
    ready = [say("test-unsafe"), say("test-timed-up-and-go-sit"), say("test-go"), say("test-end")]
    assert texts[:4] == ready
    seconds = re.escape(say("test-result-timed-up-and-go", seconds="@")).replace("@", r"[\d.]+")
    assert re.fullmatch(seconds, texts[4]), texts
    assert [tone.tone for tone in heard.tones] == ["out", "done"]


def test_a_stop_leaves_nothing_behind(open_window: Open, tested: Home) -> None:
    """Each stance waits for its tap; a stop, and a page that is loaded anew, write nothing down."""
    window = open_window(tested)
    begin(window, "stand")
    window.press("test-tap-still")
    window.until(lambda: state(window) == "running", "time")
    window.check()
    window.until(lambda: state(window) == "ready", "the second stance", 30)
    window.reads("test-stance-semi-tandem")
    window.press("test-stop")
    window.reads("test-stopped")
    window.check()
    window.press("test-back")
    window.at("day")
    window.reads("test-nothing-written")

    window.press_at("[data-test=stand]")
    window.press("before-nothing")
    window.press("test-helper-yes")
    window.at("home-test")
    window.driver.refresh()
    window.at("day")
    window.press("day-care-done")
    window.reads("care-done-of", done=1, times=3)
    window.close()
    assert asked_for(tested) == ["rise", "go", "stand"]


def test_what_the_clinic_told_to_stop_is_not_tested(open_window: Open, tested: Home) -> None:
    """Walking is stopped, so the test that walks is shut, past the page as well."""
    tested.ask("stop-item", "walk")
    window = open_window(tested)
    window.reads("not-yet-open-ended")
    window.check()
    window.press_at("[data-test=go]")
    window.at("day")
    window.reads("do-not-yet")
    asked = {"test": "go", "helper": True, "channel": window.channel()}
    begin(window, "rise")
    window.press("test-stop")
    window.press("test-back")
    window.at("day")
    assert window.invoke("begin_test", asked)[1]["code"] == "not-yet"
