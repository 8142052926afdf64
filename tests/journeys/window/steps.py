"""What several journeys do in the same way."""

from collections.abc import Callable

from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys

from window import Window

SLIDE = "Heel slide"
SLIDE_EASIER = "Heel slide with a strap"
PRESS = "Thigh squeeze"
RAISE = "Up on your toes"
WALK = "Walk"
SHUT = "Straight leg lift"
BREATH = "New or worse trouble breathing."
CALF = "New or worse swelling of one calf."
ACHE = "New or worse ache in the muscles the day after."


def type_code(window: Window, code: str) -> None:
    """Types the code of a letter over whatever stands in the blanks."""
    blanks = window.driver.find_elements(By.CSS_SELECTOR, ".blanks input")
    for blank, part in zip(blanks, code.split("-"), strict=True):
        blank.click()
        blank.send_keys(Keys.CONTROL, "a")
        blank.send_keys(Keys.NULL, part)
    window.until(lambda: typed(window) == code.upper(), f"the code {code} in the blanks")


def typed(window: Window) -> str:
    """What stands in the blanks of the letter."""
    script = "return [...document.querySelectorAll('.blanks input')].map((blank) => blank.value).join('-')"
    return str(window.js(script))


def answer_signs(window: Window, *signs: str) -> None:
    """Answers the first question before a session."""
    window.at("before")
    window.reads("ask-signs")
    for sign in signs:
        window.press_text(sign)
    window.press("before-go-on-with" if signs else "before-nothing")


def answer_pain(window: Window, pain: int) -> None:
    """Answers the second question before a session."""
    window.reads("before-pain")
    window.press_text(str(pain))
    window.press("before-pain-go-on")


def begin(window: Window, item: str | None = None, pain: int = 1) -> None:
    """Begins the first session of the day, of everything or of one item, with nothing to report."""
    if item is None:
        window.press("day-begin")
    else:
        window.press_at(f"[data-item={item}]")
        window.at("item")
        window.press("item-begin")
    answer_signs(window)
    answer_pain(window, pain)
    window.reads("before-coming")
    window.press("before-begin")
    window.at("session")


def press_until(window: Window, name: str, done: Callable[[], bool], what: str) -> None:
    """Presses until it has worked: a quick second press is taken for a shaking hand, and ignored."""

    def worked() -> bool:
        if done():
            return True
        if window.offers(name):
            window.press(name)
        return done()

    window.until(worked, what)


def ready(window: Window, name: str) -> None:
    """Is ready for an exercise, as soon as it comes."""
    window.until(lambda: window.title() == name, name)
    window.until(lambda: is_under_way(window) or asks_ready(window), "the question")
    beside = window.offers("session-beside-start")
    button = "session-beside-start" if beside else "session-ready"
    press_until(window, button, lambda: is_under_way(window), f"{name} under way")


def asks_ready(window: Window) -> bool:
    """Whether it asks to begin: alone, or with somebody beside the patient."""
    return window.offers("session-ready") or window.offers("session-beside-start")


def is_under_way(window: Window) -> bool:
    """Whether it is counted, or steps are walked."""
    return window.stage() == "running" or window.offers("session-walked")


def pause(window: Window) -> None:
    """Pauses with the button."""
    press_until(window, "session-pause", lambda: window.stage() == "paused", "a pause")


def go_on(window: Window) -> None:
    """Goes on with the button."""
    press_until(window, "session-go-on", lambda: window.stage() != "paused", "the end of the pause")


def tally(window: Window) -> str:
    """The tally in words."""
    script = "return document.querySelector('.tally [role=img]')?.getAttribute('aria-label') ?? ''"
    return str(window.js(script))


def tally_is(window: Window, done: int, of: int) -> None:
    """Waits for a tally."""
    wanted = f"{done} of {of} done."
    window.until(lambda: tally(window) == wanted, f"a tally of {wanted}")


def hurts(window: Window, level: int, kind: str = "hurts-stretching", place: str = "hurts-knee") -> None:
    """Says that it hurts: how much, what kind and where."""
    window.press("session-hurts")
    window.at("hurts")
    window.press_text(str(level))
    window.press(kind)
    window.press(place)
    window.press("hurts-go-on-with")


def skip_after(window: Window) -> None:
    """Answers nothing after a session."""
    window.at("after")
    window.until(lambda: skipped(window), "the end of the session")


def skipped(window: Window) -> bool:
    """Skips what is asked; says whether the session has ended."""
    if window.screen() == "ended":
        return True
    if window.offers("after-skip"):
        window.press("after-skip")
    return False
