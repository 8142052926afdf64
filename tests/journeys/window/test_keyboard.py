"""From the first start to what the clinic gets, without a pointer; in English and from right to left."""

from pathlib import Path

import pytest
from selenium.webdriver.common.keys import Keys

from conftest import Open
from keyboard import Keyboard
from steps import asks_ready, is_under_way, tally, typed
from window import Window
from words import LANGUAGES, say
from world import Home, World

# Makes stronger, so that the effort is asked for.
STRONGER = "raise"
NOTE = "The rail helps."


def test_without_a_pointer(open_window: Open, empty: Home, world: World, tmp_path: Path) -> None:
    """A plan that comes in, a session with a pause and a pain in it, and the way back to the clinic."""
    from_start_to_hand_back(open_window(empty, file=world.plan), world, tmp_path / "usb", "en")


@pytest.mark.skipif("ar" not in LANGUAGES, reason="no language that is written from right to left")
def test_without_a_pointer_from_right_to_left(
    open_window: Open, empty: Home, world: World, tmp_path: Path
) -> None:
    """The same in Arabic."""
    window = open_window(empty, file=world.plan)
    from_start_to_hand_back(window, world, tmp_path / "usb", "ar")
    assert window.js("return document.documentElement.dir") == "rtl"


def from_start_to_hand_back(window: Window, world: World, folder: Path, lang: str) -> None:
    """The whole way."""
    keyboard = Keyboard(window)
    first(window, keyboard, lang)
    receive(window, keyboard, world.clinic.letter_code)
    to_the_session(window, keyboard)
    session(window, keyboard)
    after(window, keyboard)
    hand_back(window, keyboard, folder)


def first(window: Window, keyboard: Keyboard, lang: str) -> None:
    """The language with the arrows, and three leaves."""
    window.at("first")
    keyboard.on_heading()
    keyboard.choose(say("language-name", lang))
    window.lang = lang
    window.reads("first-language")
    keyboard.press("first-go-on")
    window.reads("first-what-title")
    keyboard.on_heading()
    keyboard.press("first-go-on")
    window.reads("first-reading")
    keyboard.on_heading()
    keyboard.press("first-done")


def receive(window: Window, keyboard: Keyboard, code: str) -> None:
    """The code goes on from blank to blank by itself; the sides with the space bar."""
    window.at("receive-code")
    keyboard.on_heading()
    blank = say("receive-code-first", window.lang)
    keyboard.seek(lambda at: at["name"] == blank, blank)
    for part in code.split("-"):
        window.keys(part)
    window.until(lambda: typed(window) == code, f"the code {code} in the blanks")
    window.keys(Keys.ENTER)
    window.at("receive-plan")
    keyboard.on_heading()
    keyboard.choose(say("receive-side-left", window.lang))
    window.keys(Keys.TAB)
    keyboard.choose(say("receive-date-yes", window.lang))
    keyboard.press("receive-mine")
    window.at("day")
    keyboard.on_heading()


def to_the_session(window: Window, keyboard: Keyboard) -> None:
    """One exercise, its page, and the questions before it."""
    keyboard.seek(lambda at: at["data"].get("item") == STRONGER, STRONGER)
    window.keys(Keys.ENTER)
    window.at("item")
    keyboard.on_heading()
    # Back and forth: the way back has the focus that the way there had.
    keyboard.to("item-begin")
    keyboard.to("day-back", back=True)
    keyboard.press("item-begin")
    window.at("before")
    keyboard.on_heading()
    keyboard.press("before-nothing")
    window.reads("before-pain")
    keyboard.on_heading()
    keyboard.press_text("1")
    keyboard.press("before-pain-go-on")
    window.reads("before-coming")
    keyboard.on_heading()
    keyboard.press("before-begin")
    window.at("session")


def session(window: Window, keyboard: Keyboard) -> None:
    """Ready, a pause by the space bar, pain and what the plan says to it, and on to the end."""
    window.until(lambda: asks_ready(window), "the question")
    keyboard.on_heading()
    keyboard.press("session-beside-start")
    window.until(lambda: is_under_way(window), "an exercise under way")
    # The one large button keeps the focus, whatever it is for.
    window.until(lambda: keyboard.focus()["name"] == say("session-pause", window.lang), "the focus on the pause")
    window.until(lambda: "1" in tally(window).split()[:2], "the first repetition")
    window.keys(Keys.SPACE)
    window.until(lambda: window.stage() == "paused", "a pause by the space bar")
    window.keys(Keys.SPACE)
    window.until(lambda: window.stage() != "paused", "the end of the pause")
    window.keys(Keys.SPACE)
    window.until(lambda: window.stage() == "paused", "a second pause")
    keyboard.press("session-hurts")
    window.at("hurts")
    keyboard.on_heading()
    keyboard.press_text("3")
    window.reads("hurts-kind")
    keyboard.on_heading()
    keyboard.press("hurts-stretching")
    window.reads("hurts-where")
    keyboard.on_heading()
    keyboard.press("hurts-knee")
    keyboard.press("hurts-go-on-with")
    window.reads("caution-nobody-sees-if-worried")
    keyboard.on_heading()
    keyboard.press("session-go-on")
    window.at("after", 60)


def after(window: Window, keyboard: Keyboard) -> None:
    """Effort, pain, and a line of one's own."""
    window.reads("after-effort")
    keyboard.on_heading()
    keyboard.press_text("4")
    keyboard.press("after-go-on")
    window.reads("after-pain")
    keyboard.on_heading()
    keyboard.press_text("1")
    keyboard.press("after-go-on")
    window.reads("after-words")
    keyboard.on_heading()
    keyboard.seek(lambda at: at["tag"] == "input", "the line")
    window.keys(NOTE)
    keyboard.press("after-keep")
    window.at("ended")
    keyboard.on_heading()
    keyboard.press("ended-back")
    window.at("day")


def hand_back(window: Window, keyboard: Keyboard, folder: Path) -> None:
    """What the clinic gets, own words too, into a folder; who thinks better of it keeps everything."""
    folder.mkdir()
    keyboard.press("hand-title")
    window.at("hand-back")
    keyboard.on_heading()
    window.sees(NOTE)
    keyboard.seek(lambda at: at["checked"] is False, "the choice to send one's own words")
    window.keys(Keys.SPACE)
    keyboard.press("hand-save")
    keyboard.leave_dialogue()
    window.until(lambda: keyboard.focus()["tag"] == "button", "the focus where it was")
    assert not any(folder.iterdir())
    window.keys(Keys.ENTER)
    keyboard.pick_folder(folder)
    window.until(lambda: any(folder.iterdir()), "what the clinic gets")
    window.sees(str(folder))
