"""A session in the window, from its questions to its record."""

from selenium.webdriver.common.keys import Keys

from conftest import Open
from steps import (
    PRESS,
    RAISE,
    SLIDE,
    SLIDE_EASIER,
    WALK,
    answer_pain,
    answer_signs,
    asks_ready,
    begin,
    go_on,
    pause,
    press_until,
    ready,
    skip_after,
    tally,
    tally_is,
)
from window import Window
from world import Home

ITEMS = ("slide", "press", "raise", "walk")


def rests(window: Window) -> bool:
    """Whether it rests between two rounds."""
    return window.stage() == "resting" and bool(window.offers("session-go-on-now"))


def counts(window: Window) -> list[tuple[str, ...]]:
    """What the page showed since it is watched: stage, name, count, phase and tally."""
    return [tuple(seen.split("|")) for seen in window.js("return window.seenByTests")]


def test_a_whole_session(open_window: Open, patient: Home) -> None:
    """Every exercise to its end, with effort, pain and a note; its record in the window and the terminal."""
    window = open_window(patient)
    window.at("day")
    window.press("day-begin")
    window.check()
    answer_signs(window)
    window.check()
    answer_pain(window, 1)
    window.reads("before-coming")
    window.reads("before-beside-you")
    for name in (SLIDE, PRESS, RAISE, WALK):
        window.sees(name)
    window.check()
    window.press("before-begin")
    window.at("session")
    window.check()

    ready(window, SLIDE)
    window.until(lambda: window.stage() == "running" and tally(window) == "1 of 4 done.", "a repetition")
    window.check()
    window.until(lambda: window.stage() == "resting", "a rest")
    pause(window)
    window.check()
    go_on(window)
    window.until(lambda: window.title() == PRESS, PRESS)
    window.check()
    ready(window, PRESS)
    window.until(lambda: window.title() == RAISE, RAISE)
    # In position later than asked for: it waits.
    window.until(lambda: window.stage() == "" and asks_ready(window), "the question")
    window.reads("cue-hand-on-rail")
    window.reads("cue-beside-you")
    window.check()
    ready(window, RAISE)
    ready(window, WALK)
    window.check()
    window.press("session-walked")

    window.at("after")
    window.reads("after-effort")
    window.check()
    window.press_text("4")
    window.press("after-go-on")
    window.reads("after-pain")
    window.check()
    window.press_text("1")
    window.press("after-go-on")
    window.reads("after-words")
    window.keys(Keys.TAB + "The towel helps.")
    window.until(lambda: window.offers("after-keep"), "words to keep")
    window.check()
    window.press("after-keep")
    window.at("ended")
    window.reads("ended-whole")
    window.check()
    window.press("ended-back")
    window.at("day")
    window.reads("times-today", times=8, done=1)

    window.press("past-title")
    window.at("past")
    window.reads("past-sessions", n=1)
    window.press_at("main ul button")
    window.reads("past-whole")
    window.press("past-pain-table")
    window.reads("past-pain-before")
    window.check()
    window.close()
    assert {item: patient.due(item)["done"] for item in ITEMS} == dict.fromkeys(ITEMS, 1)


def test_a_pause_loses_and_repeats_nothing(open_window: Open, patient: Home) -> None:
    """By the space bar and by the button, in a round and in a rest."""
    window = open_window(patient)
    begin(window, "slide")
    window.page("watch")
    ready(window, SLIDE)
    tally_is(window, 1, 4)
    window.keys(" ")
    window.until(lambda: window.stage() == "paused", "a pause by the space bar")
    held = counts(window)[-1]
    window.keys(" ")
    window.until(lambda: window.stage() == "running", "the end of the pause")
    window.until(lambda: rests(window), "the rest")
    # The button that said "I am ready" still has the focus of the tap on it.
    window.keys(" ")
    window.until(lambda: window.stage() == "paused", "a pause by the space bar in a rest")
    tally_is(window, 2, 4)
    go_on(window)
    tally_is(window, 3, 4)
    pause(window)
    go_on(window)
    window.at("after")
    seen = counts(window)
    assert held[4] == "1 of 4 done."
    done = [int(row[4].split()[0]) for row in seen if row[4]]
    assert done == sorted(done) and set(done) >= {0, 1, 2, 3}, done
    skip_after(window)
    window.reads("ended-whole")
    window.close()
    assert patient.due("slide")["done"] == 1


def test_fewer_easier_and_left(open_window: Open, patient: Home) -> None:
    """Fewer in a round and after it, the easier way, and an exercise that is left."""
    window = open_window(patient)
    begin(window)
    window.until(lambda: window.title() == SLIDE, SLIDE)
    window.press("session-easier")
    window.until(lambda: window.title() == SLIDE_EASIER, SLIDE_EASIER)
    assert not window.offers("session-easier")

    # In a round: it ends with what was done of it.
    ready(window, SLIDE_EASIER)
    tally_is(window, 1, 4)
    pause(window)
    window.press("session-fewer")
    window.until(lambda: window.stage() == "resting", "the rest")
    tally_is(window, 1, 4)
    # Between rounds: what the last one really had.
    pause(window)
    window.press("session-fewer")
    window.reads("ask-how-many")
    window.check()
    assert not window.page("control", "2")
    window.press("session-not-fewer")
    go_on(window)
    window.until(lambda: window.title() == PRESS, PRESS)
    window.press("session-fewer")
    window.reads("ask-how-many")
    assert window.page("control", "2")
    window.press_text("1")
    window.until(lambda: not window.page("control", "2"), "the end of the question")

    window.press("session-leave")
    ready(window, RAISE)
    window.until(lambda: rests(window), "the rest")
    pause(window)
    window.press("session-fewer")
    window.press_text("1")
    tally_is(window, 1, 4)
    press_until(window, "session-leave", lambda: window.title() == WALK, WALK)
    ready(window, WALK)
    window.press("session-walked")
    skip_after(window)
    window.reads("ended-part")
    window.press("ended-back")
    window.at("day")
    window.press("past-title")
    window.reads("past-sessions", n=1)
    window.press_at("main ul button")
    window.reads("past-part")


def test_a_stopped_session_can_be_gone_on_with_or_begun_anew(open_window: Open, patient: Home) -> None:
    """"Stop for today" asks how it was; later that day one tap is enough."""
    window = open_window(patient)
    begin(window, "press")
    window.press("session-stop")
    skip_after(window)
    window.reads("ended-none")
    window.press("ended-back")
    window.press("day-begin")
    window.at("before")
    window.reads("ask-signs-again")
    window.check()
    window.press("before-something")
    window.reads("ask-signs")
    window.press("before-back")
    window.press("before-nothing")
    window.reads("before-coming")
    window.press("before-back")
    window.at("day")
