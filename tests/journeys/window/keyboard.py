"""Somebody who has a keyboard and nothing else."""

import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.keys import Keys

from window import Window
from words import say

# No page has so many places to stop at.
MOST_TABS = 80
# A folder dialogue takes so long at most to take a path.
DIALOGUE_S = 20.0


class Keyboard:
    """Goes through the window with keys, and looks at the focus wherever it goes."""

    def __init__(self, window: Window) -> None:
        self.window = window
        self.come()

    def come(self) -> None:
        """Gives the keys to the window, as a window manager would; without them, nothing in it has a ring."""
        self.to_screen("windowfocus", "--sync", self.window.x_windows()[-1])
        self.window.until(lambda: self.window.js("return document.hasFocus()"), "the keys in the window")

    def focus(self) -> dict[str, Any]:
        """What has the focus."""
        found: dict[str, Any] = self.window.page("focus")
        return found

    def on_heading(self) -> None:
        """The page has taken the focus to its beginning, where it is read from."""
        self.window.until(lambda: self.focus()["tag"] in ("h1", "h2"), "the focus on the heading")

    def seek(self, right: Callable[[dict[str, Any]], bool], what: str, back: bool = False) -> None:
        """Tabs on until something right has the focus. Wherever it stops, the ring can be seen."""
        stops = []
        at = self.focus()
        for _ in range(MOST_TABS):
            if right(at):
                return
            self.tab(back)
            at = self.has_ring()
            stops.append(at["name"])
        raise AssertionError(f"never came to {what}; there were {stops}")

    def has_ring(self) -> dict[str, Any]:
        """What has the focus shows it, where it can be seen; gives what it is."""
        at = self.focus()
        if at["tag"] not in ("body", "html"):
            assert at["ring"] == f"solid 3px 3px {at['ink']}", f"{at['name']}: a ring of {at['ring']}"
            assert at["seen"], f"{at['name']} has the focus and cannot be seen"
        return at

    def tab(self, back: bool) -> None:
        """One stop on, or back."""
        keys = ActionChains(self.window.driver)
        if back:
            keys.key_down(Keys.SHIFT).send_keys(Keys.TAB).key_up(Keys.SHIFT).perform()
        else:
            keys.send_keys(Keys.TAB).perform()

    def to(self, name: str, /, back: bool = False, **args: str | int) -> None:
        """Tabs to what says a message."""
        wanted = " ".join(say(name, self.window.lang, **args).split())
        self.to_text(wanted, back)

    def to_text(self, wanted: str, back: bool = False) -> None:
        """Tabs to what says these words, in its first line or as its name."""
        self.window.until(lambda: self.window.page("control", wanted), f"“{wanted}”")
        self.seek(lambda at: at["name"] == wanted or at["name"].startswith(f"{wanted},"), f"“{wanted}”", back)

    def press(self, name: str, /, back: bool = False, **args: str | int) -> None:
        """Tabs to what says a message, and presses it."""
        self.to(name, back, **args)
        self.window.keys(Keys.ENTER)

    def press_text(self, wanted: str, key: str = Keys.ENTER) -> None:
        """Tabs to what says these words, and presses it."""
        self.to_text(wanted)
        self.window.keys(key)

    def choose(self, wanted: str) -> None:
        """Tabs to a question with several answers, and goes to one of them with the arrows."""
        self.seek(lambda at: at["checked"] is not None, f"the question with “{wanted}”")
        for _ in range(MOST_TABS):
            at = self.focus()
            if at["name"] == wanted:
                break
            self.window.keys(Keys.ARROW_DOWN)
            self.has_ring()
        if not self.focus()["checked"]:
            self.window.keys(Keys.SPACE)
        self.window.until(lambda: self.focus()["name"] == wanted and self.focus()["checked"], f"“{wanted}” chosen")

    # The system's own dialogue is none of the page's: keys go to it through the screen.

    def dialogues(self) -> list[str]:
        """The system's dialogues that are to be seen."""
        ours = self.window.x_windows()
        command = ["xdotool", "search", "--onlyvisible", "--class", "sendaluna"]
        done = subprocess.run(command, env=self.window.env, capture_output=True, text=True, check=False)
        return [number for number in done.stdout.split() if number not in ours]

    def dialogue(self) -> None:
        """Waits for a dialogue, and gives it the keys."""
        found = self.window.wait_beside(self.dialogues, "a dialogue")
        self.to_screen("windowfocus", "--sync", found[0])

    def dialogue_gone(self) -> None:
        """Waits until no dialogue is left."""
        self.window.wait_beside(lambda: not self.dialogues(), "the end of a dialogue")

    def to_screen(self, *words: str) -> None:
        """Keys, through the screen."""
        subprocess.run(["xdotool", *words], env=self.window.env, check=True, timeout=DIALOGUE_S)

    def leave_dialogue(self) -> None:
        """Closes a dialogue without a choice, and is back in the window."""
        self.dialogue()
        self.to_screen("key", "Escape")
        self.dialogue_gone()
        self.come()

    def pick_folder(self, folder: Path) -> None:
        """Types a folder into a dialogue: the first slash opens a field for it.

        On a busy machine, what is typed while the field opens is lost: that may be slashes, and nothing else.
        """
        self.dialogue()
        self.to_screen("type", "--delay", "20", "/" * 30 + str(folder))
        self.to_screen("key", "Return")
        self.dialogue_gone()
