"""The way through every page of the window, one patient's first weeks in one go."""

import contextlib
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

from selenium.common.exceptions import WebDriverException
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys

import later
import picture
from camera import SIZES, Camera
from driver import BIN_DIR, Home, Plan, Window, alter, end_reminders, opened, prefer_dark
from steps import answer_pain, answer_signs, asks_ready, begin, pause, press_until, ready, tally, typed
from words import say

TEXTS = {100: "settings-text-normal", 200: "settings-text-largest"}
# In the hip's plan: sitting, of one side, in two rounds.
LED = "long-arc-quad"
# Another one that makes stronger, in two rounds.
STRONGER = "calf-raise"
# What is seen, in this order.
PARTS = (
    "arrive", "look_around", "exercise", "effort", "stop", "other_knee", "held", "home_tests", "steps", "reminded",
)  # fmt: skip
OF_HIP = ("look_around", "exercise", "effort", "stop", "held")
LATER = {"home_tests": later.home_tests, "steps": later.steps, "reminded": later.reminded}
# What a page that does not come, or a driver that has lost it, raises.
BROKEN = (AssertionError, WebDriverException)
# Signs of both plans.
CALF, BREATH = "calf", "breath-or-chest"


def type_code(window: Window, code: str) -> None:
    """Types the code of a letter. With large letters a blank has to be brought out from behind the fold first."""

    def stands() -> bool:
        for number, part in enumerate(code.split("-"), 1):
            selector = f".blanks input:nth-child({number})"
            window.press_at(selector)
            blank = window.driver.find_element(By.CSS_SELECTOR, selector)
            blank.send_keys(Keys.CONTROL, "a")
            blank.send_keys(Keys.NULL, part)
        # On a busy machine a key is at times lost on its way.
        return typed(window) == code

    window.until(stands, f"the code {code} in the blanks")


def done(window: Window) -> int:
    """How many times the tally has."""
    first = re.search(r"\d+", tally(window))
    return int(first[0]) if first else 0


class Tour:
    """Goes through the window's pages, and has each taken."""

    def __init__(self, camera: Camera, plans: tuple[Plan, Plan, Plan], folder: Path) -> None:
        self.camera = camera
        self.hip, self.knee, self.quick = plans
        self.folder = folder
        self.failed: list[str] = []
        self.at_home = Home(folder / "at-home")
        self.homes = 0

    def go(self, parts: tuple[str, ...] = PARTS) -> None:
        """Every part that is wanted; one that fails does not keep the others from being seen."""
        if "arrive" not in parts and set(parts) & set(OF_HIP):
            self.settle()
        for name in parts:
            if self.camera.has_all():
                return
            try:
                if name in LATER:
                    LATER[name](self)
                else:
                    getattr(self, name)()
            except BROKEN as error:
                self.failed.append(f"{self.camera.look.name('…')}: {name}: {error}")

    def settle(self) -> None:
        """Nobody looks at how the plan came in."""
        self.at_home = later.received(self.hip, self.at_home.folder)
        with self.window(self.at_home) as window:
            self.choose(window)
            window.press("first-later")
            window.at("day")

    # What the parts share.

    @contextlib.contextmanager
    def window(self, data: Home, *, as_device: bool = False) -> Iterator[Window]:
        """A window that is closed in the end; if need be, on a device that is set as the look wants it."""
        self.homes += 1
        home = self.folder / f"h{self.homes}"
        look = self.camera.look
        if as_device and look.theme == "dark":
            prefer_dark(home)
        device = look.lang if as_device else "en"
        made = opened(data, home, SIZES[self.camera.sizes[0]], look.lang, device)
        try:
            self.camera.enter(made)
            yield made
        except BROKEN:
            name = f"failed-{self.homes}-{self.camera.look.name('at')}.png"
            picture.take(self.camera.folder / name, *SIZES["desktop"])
            made.kill()
            raise
        else:
            made.close()
        finally:
            end_reminders(data.folder)

    @contextlib.contextmanager
    def patient(self, name: str) -> Iterator[Window]:
        """A window on a copy of the patient's data, on the day."""
        data = Home(self.folder / name)
        data.copy_of(self.at_home)
        with self.window(data) as window:
            window.at("day")
            yield window

    def take(
        self, window: Window, page: str, *, whole: bool = False, scrolled: bool = False, near: str = ""
    ) -> None:
        """Takes a page."""
        self.camera.take(window, page, whole=whole, scrolled=scrolled, near=near)

    def choose(self, window: Window) -> None:
        """Sets language, text and paper on the leaves of the first two minutes, and goes back to the first."""
        look = self.camera.look
        window.at("first")
        window.press_text(say("language-name", look.lang))
        window.reads("first-language")
        window.press("first-go-on")
        window.press("first-go-on")
        window.press(f"settings-theme-{look.theme}")
        window.press(TEXTS[look.text])
        shown = lambda: window.js("return {...document.documentElement.dataset}")  # noqa: E731
        wanted = {"text": str(look.text), "theme": look.theme}
        window.until(lambda: shown() == wanted, f"{wanted}")
        window.press("first-back")
        window.reads("first-what-title")
        window.press("first-back")
        window.reads("first-language")

    # The parts.

    def arrive(self) -> None:
        """The first two minutes, and the plan that comes in."""
        altered = alter(self.hip.file, self.folder / "altered.sendaluna")
        with self.window(self.at_home) as window:
            self.choose(window)
            self.take(window, "first-language")
            window.press("first-go-on")
            window.reads("first-what-title")
            self.take(window, "first-what")
            window.press("first-go-on")
            window.reads("first-reading")
            self.take(window, "first-reading", whole=True)
            window.press("first-done")
            window.at("receive")
            self.take(window, "receive")
            window.start_again_with(altered)
            window.at("receive-code")
            self.take(window, "code")
            right = self.hip.letter_code
            type_code(window, right[:-1] + ("2" if right[-1] != "2" else "3"))
            window.press("receive-code-go-on")
            window.reads("err-code-mistyped")
            self.take(window, "code-mistyped")
            type_code(window, right)
            window.press("receive-code-go-on")
            window.at("receive-refused")
            self.take(window, "refused")
            window.start_again_with(self.hip.file)
            window.at("receive-code")
            type_code(window, right)
            window.press("receive-code-go-on")
            window.at("receive-plan")
            self.take(window, "plan", whole=True)
            self.take(window, "plan-scrolled", scrolled=True)
            window.press("receive-mine")
            window.reads("receive-side-needed")
            self.take(window, "plan-side-missing", near=".missing")
            window.press(f"receive-side-{self.hip.side}")
            window.press("receive-date-yes")
            window.press("receive-mine")
            window.at("day")

    def look_around(self) -> None:
        """Everything that leads away from the day."""
        with self.patient("around") as window:
            self.take(window, "day", whole=True)
            self.take(window, "day-scrolled", scrolled=True)
            window.press_at("[data-to=weeks]")
            window.at("weeks")
            self.take(window, "weeks", near="main li.now", whole=True)
            window.press("day-back")
            window.at("day")
            window.press_at(f"[data-item={LED}]")
            window.at("item")
            self.take(window, "item", whole=True)
            window.press("item-did")
            window.reads("item-rounds")
            self.take(window, "item-by-hand", near=".by-hand")
            window.press("day-back")
            self.beside(window, "[data-item=straight-leg-raise]", "not-yet", "not-yet-back", whole=True)
            self.beside(
                window, "[data-item=kneeling-weight-shift]", "not-yet", "not-yet-back", page="not-yet-open-ended"
            )
            window.press("contacts-title")
            window.at("contacts")
            self.take(window, "contacts", whole=True)
            window.press("contacts-fell")
            window.reads("contacts-fell-means")
            self.take(window, "contacts-fall", near=".means")
            window.press("contacts-not-so")
            window.press("contacts-back")
            window.press_at("[data-to=settings]")
            window.at("settings")
            self.take(window, "settings", whole=True)
            window.press_at("main li:nth-child(3) button")
            window.reads("settings-theme-light")
            self.take(window, "settings-unfolded", whole=True)

    def beside(
        self, window: Window, selector: str, screen: str, back: str, *, page: str = "", whole: bool = False
    ) -> None:
        """A page that is one tap from the day."""
        window.at("day")
        window.press_at(selector)
        window.at(screen)
        self.take(window, page or screen, whole=whole)
        window.press(back)
        window.at("day")

    def exercise(self) -> None:
        """A session: its questions, its stages, pain, what is asked after it, and what stays of it."""
        with self.patient("session") as window:
            window.press("day-begin")
            window.at("before")
            window.reads("ask-signs")
            self.take(window, "signs", whole=True)
            window.press_text(self.sign(window, "muscle-ache"))
            window.until(lambda: window.offers("before-go-on-with"), "a sign that is chosen")
            self.take(window, "signs-chosen", near="label:has(input:checked)")
            window.press("before-go-on-with")
            window.reads("before-pain")
            window.press_text("2")
            self.take(window, "pain")
            window.press("before-pain-go-on")
            window.reads("before-coming")
            self.take(window, "coming", whole=True)
            window.press("before-begin")
            window.at("session")
            self.stages(window)
            self.pain(window)
            press_until(window, "session-stop", lambda: window.screen() == "after", "the end")
            self.after(window)

    def stages(self, window: Window) -> None:
        """Ready, moving, paused, resting, fewer."""
        led = self.name(window, LED)

        def come() -> bool:
            if window.title() == led:
                return True
            if window.offers("session-leave"):
                window.press("session-leave")
            return window.title() == led

        window.until(come, led, 90)
        window.until(lambda: asks_ready(window), "the question")
        self.take(window, "ready", whole=True)
        ready(window, led)
        window.until(lambda: self.counts(window, 1), "a repetition", 40)
        self.take(window, "moving")
        pause(window)
        self.take(window, "paused")
        press_until(window, "session-fewer", lambda: window.stage() == "resting", "the rest")
        self.take(window, "resting")
        window.press("session-fewer")
        window.reads("ask-how-many")
        self.take(window, "fewer")
        window.press("session-not-fewer")

    @staticmethod
    def counts(window: Window, least: int) -> bool:
        """Whether it moves, and at least so many times are done."""
        return window.stage() == "running" and done(window) >= least

    def pain(self, window: Window) -> None:
        """This hurts: how much, what kind, where; and what the plan says to that."""
        window.press("session-hurts")
        window.at("hurts")
        self.take(window, "hurts-level")
        window.press_text("5")
        window.reads("hurts-kind")
        self.take(window, "hurts-kind")
        window.press("hurts-stretching")
        window.reads("hurts-where")
        window.press("hurts-knee")
        self.take(window, "hurts-place", whole=True)
        window.press("hurts-go-on-with")
        window.at("session")
        window.until(lambda: window.offers("session-go-on-without"), "the plan's answer")
        self.take(window, "answer")
        window.press("session-go-on-without")

    def after(self, window: Window) -> None:
        """What is asked after a session, and its record."""
        window.reads("after-pain")
        self.take(window, "after-pain")
        window.press_text("1")
        window.press("after-go-on")
        window.reads("after-words")
        self.take(window, "words")
        window.press("after-skip")
        window.at("ended")
        self.take(window, "ended")
        window.press("ended-back")
        window.at("day")
        self.take(window, "day-after", whole=True)
        window.press_at("[data-do=begin]")
        window.reads("ask-signs-again")
        self.take(window, "one-tap", whole=True)
        window.press("before-back")
        window.at("day")
        window.press_at("[data-to=past]")
        window.at("past")
        self.take(window, "past", whole=True)
        window.press_at("main ul button")
        self.take(window, "past-week", near="main ul button")
        window.press_at("[data-to=day]")
        window.at("day")
        window.press_at("[data-to=hand-back]")
        window.at("hand-back")
        self.take(window, "hand-back", whole=True)

    def effort(self) -> None:
        """How hard it was: asked after a whole session of what makes stronger."""
        with self.patient("effort") as window:
            begin(window, STRONGER)
            while window.screen() != "after":
                self.one_round(window)
            window.reads("after-effort")
            window.press_text("4")
            self.take(window, "effort")

    def one_round(self, window: Window) -> None:
        """One time of a round, and no more."""
        before = done(window)
        ready(window, window.title())
        window.until(lambda: self.counts(window, before + 1), "a repetition", 40)
        pause(window)
        ended = lambda: window.stage() == "resting" or window.screen() == "after"  # noqa: E731
        press_until(window, "session-fewer", ended, "the end of the round")
        press_until(window, "session-go-on-now", lambda: window.stage() != "resting", "the end of the rest")

    def stop(self) -> None:
        """Signs that stop the day."""
        with self.patient("stop") as window:
            window.press("day-begin")
            answer_signs(window, self.sign(window, CALF))
            window.at("stop")
            self.take(window, "stop-ring-today", whole=True)
            window.press("stop-spoke")
            window.reads("stop-spoke-sure")
            self.take(window, "stop-spoken", near=".spoke")
            window.press("stop-spoke-yes")
            window.at("day")
            window.press("day-begin")
            answer_signs(window, self.sign(window, BREATH))
            window.at("stop")
            self.take(window, "stop-emergency", whole=True)

    def other_knee(self) -> None:
        """The other patient."""
        data = Home(self.folder / "knee")
        with self.window(data) as window:
            self.choose(window)
            window.press("first-later")
            window.at("receive")
            window.start_again_with(self.knee.file)
            window.at("receive-code")
            type_code(window, self.knee.letter_code)
            window.press("receive-code-go-on")
            window.at("receive-plan")
            self.take(window, "knee-plan", whole=True)
            window.press(f"receive-side-{self.knee.side}")
            window.press("receive-date-yes")
            window.press("receive-mine")
            window.at("day")
            self.take(window, "knee-day", whole=True)
            self.beside(window, "[data-to=weeks]", "weeks", "day-back", page="knee-weeks", whole=True)
            self.beside(window, "[data-item=mini-squat]", "not-yet", "not-yet-back", page="knee-not-yet")
            self.beside(window, "[data-item=heel-slide]", "item", "day-back", page="knee-item")
            window.press("day-begin")
            answer_signs(window)
            answer_pain(window, 1)
            window.press("before-begin")
            window.at("session")
            # In position later than asked for: it waits.
            waits = lambda: window.stage() == "" and asks_ready(window)  # noqa: E731
            window.until(waits, "the wait", 60)
            self.take(window, "knee-waiting", whole=True)
            ready(window, window.title())
            window.until(lambda: self.counts(window, 1), "a repetition", 40)
            self.take(window, "knee-moving")

    def held(self) -> None:
        """The record is held by another program. How it is wanted cannot be read then: the device's way it is."""
        if self.camera.look.text != 100:
            return
        data = Home(self.folder / "held")
        data.copy_of(self.at_home)
        command = [BIN_DIR / "sendaluna", "--data", data.folder, "--key-in-file", "session"]
        with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as other:
            # With its first words it has the record.
            assert other.stdout and other.stdout.readline()
            with self.window(data, as_device=True) as window:
                window.at("problem")
                self.take(window, "problem")
                other.kill()

    # What is said in the plan.

    @staticmethod
    def view(window: Window) -> dict[str, list[dict[str, str]]]:
        """The day as the window has it."""
        well, day = window.invoke("day")
        assert well, day
        return dict(day)

    def name(self, window: Window, item: str) -> str:
        """How an item is called."""
        return next(view["name"] for view in self.view(window)["due"] if view["item"] == item)

    def sign(self, window: Window, sign: str) -> str:
        """How the plan says a sign."""
        signs = self.view(window)["contacts"]["signs"]  # type: ignore[call-overload]
        return next(str(view["text"]) for view in signs if view["sign"] == sign)

