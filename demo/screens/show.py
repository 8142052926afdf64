"""The main job in the real window, where nobody can look: taken in, held back, done. Leaves pictures.

    show.py PLAN-FOLDER DATA-FOLDER PICTURE-FOLDER
"""

import sys
import tempfile
from pathlib import Path

import picture
from driver import PHONE, Home, Plan, Window, end_reminders, opened
from steps import answer_pain, answer_signs, asks_ready, ready, skip_after, tally, type_code

# In the hip's plan: one that waits for the surgeon, and a short one that is due.
SHUT = "straight-leg-raise"
SHORT = "ankle-pump"
# From "I am ready" to the end of the short one.
WHOLE_S = 80.0


class Show:
    """Goes on step by step, says each, and leaves a picture of it."""

    def __init__(self, window: Window, folder: Path) -> None:
        self.window = window
        self.folder = folder
        self.number = 0

    def tell(self, name: str, said: str) -> None:
        """One step: what is seen, and where its picture is."""
        self.number += 1
        file = self.folder / f"{self.number:02}-{name}.png"
        picture.take(file, *PHONE)
        print(f"  demo/out/{file.parent.name}/{file.name}  {said}", flush=True)

    def receive(self, plan: Plan) -> None:
        """The plan comes in with the code on the letter."""
        window = self.window
        window.at("first")
        self.tell("first", "The first two minutes: the language in its own name.")
        window.press("first-later")
        window.at("receive")
        window.start_again_with(plan.file)
        window.at("receive-code")
        type_code(window, plan.letter_code)
        self.tell("code", "The plan file was opened. The code is on the letter from the clinic.")
        window.press("receive-code-go-on")
        window.at("receive-plan")
        self.tell("plan", "The signatures fit: whose plan it is, and what is not yet allowed.")
        window.press(f"receive-side-{plan.side}")
        window.press("receive-date-yes")
        self.tell("side", "The side and the date are confirmed.")
        window.press("receive-mine")
        window.at("day")
        window.js("scrollTo(0, 0)")
        self.tell("day", "This is my plan: the day.")

    def held_back(self) -> None:
        """What is not allowed yet has no way to begin."""
        window = self.window
        window.press_at(f"[data-item={SHUT}]")
        window.at("not-yet")
        assert not window.offers("item-begin")
        self.tell("not-yet", "Not yet: until when, why, and who says so. There is no way to begin it.")
        window.press("not-yet-back")

    def exercise(self) -> None:
        """One exercise, led in real time to its end."""
        window = self.window
        window.press_at(f"[data-item={SHORT}]")
        window.at("item")
        window.press("item-begin")
        window.at("before")
        self.tell("signs", "Before a session: the warning signs of this plan.")
        answer_signs(window)
        answer_pain(window, 1)
        window.press("before-begin")
        window.at("session")
        window.until(lambda: asks_ready(window), "the question")
        self.tell("ready", "Get ready, in your own time.")
        ready(window, window.title())
        window.until(lambda: tally(window).startswith("3 "), "the third time", WHOLE_S)
        self.tell("moving", "It counts, in real time.")
        window.at("after", WHOLE_S)
        skip_after(window)
        self.tell("ended", "Done, and written down.")
        window.press("ended-back")
        window.at("day")


def main() -> None:
    """All of it."""
    plan, data, pictures = map(Path, sys.argv[1:])
    pictures.mkdir(parents=True, exist_ok=True)
    # Short, for the session's sockets.
    with tempfile.TemporaryDirectory(prefix="show-") as place:
        window = opened(Home(data), Path(place) / "h", PHONE)
        try:
            show = Show(window, pictures)
            show.receive(Plan(plan, "left"))
            show.held_back()
            show.exercise()
        except BaseException:
            window.kill()
            raise
        else:
            window.close()
        finally:
            end_reminders(data)


if __name__ == "__main__":
    main()
