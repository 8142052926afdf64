"""The first two minutes, and a plan that comes in as a file."""

from conftest import Open
from steps import SHUT, type_code, typed
from world import Home, World, opens


def mistyped(code: str) -> str:
    """The code with its last character wrong."""
    return code[:-1] + ("2" if code[-1] != "2" else "3")


def test_from_the_first_start_to_the_day(
    open_window: Open, empty: Home, world: World, size: tuple[int, int]
) -> None:
    """Three leaves, a code, a summary, the sides, and the day."""
    window = open_window(empty, size, world.plan)
    window.at("first")
    window.axe()
    window.press_text("Español")
    window.lang = "es"
    window.reads("first-language")
    window.press_text("English")
    window.lang = "en"
    window.press("first-go-on")
    window.reads("first-what-title")
    window.axe()
    window.press("first-go-on")
    window.reads("first-reading")
    window.axe()
    window.press("first-done")

    # The code: what was typed stays where it can be mended.
    window.at("receive-code")
    window.axe()
    right = world.clinic.letter_code
    window.reads("receive-code-missing", n=12)
    for wrong, said in (
        (mistyped(right), "err-code-mistyped"),
        (world.other_clinic.letter_code, "err-code-other-clinic"),
    ):
        type_code(window, wrong)
        window.press("receive-code-go-on")
        window.reads(said)
        window.at("receive-code")
        assert typed(window) == wrong
    window.axe()
    type_code(window, right)
    window.press("receive-code-go-on")

    # The summary; the wrong side is refused, and nothing is taken in.
    window.at("receive-plan")
    for words in ("Odalys", "1954", world.clinic.name, SHUT, "555-0171"):
        window.sees(words)
    window.axe()
    window.press("receive-mine")
    window.reads("receive-side-needed")
    window.press("receive-side-right")
    window.press("receive-mine")
    window.reads("receive-date-needed")
    window.press("receive-date-no")
    window.reads("receive-date-wrong")
    assert not window.offers("receive-mine")
    window.press("receive-date-yes")
    window.press("receive-mine")
    window.at("receive-refused")
    window.reads("err-side-differs")
    window.axe()
    well, problem = window.invoke("day")
    assert (well, problem["code"]) == (False, "no-plan")

    # Once more, with the side on the letter.
    assert window.start_again_with(world.plan) == 0
    window.at("receive-code")
    type_code(window, right.lower())
    window.press("receive-code-go-on")
    window.at("receive-plan")
    window.press("receive-side-left")
    window.press("receive-date-yes")
    window.press("receive-mine")
    window.at("day")
    window.reads("receive-done", revision="1")
    window.sees(SHUT)
    window.axe()
    window.fits()
    window.close()
    assert empty.due("leg-raise")["gate"]["opens"] == opens().isoformat()


def test_later_needs_no_leaf(open_window: Open, empty: Home) -> None:
    """"Later" on the first leaf leads on; without a file one is asked for, and not again."""
    window = open_window(empty)
    window.at("first")
    window.press("first-later")
    window.at("receive")
    window.axe()
    window.close()
    window = open_window(empty)
    window.at("receive")


def test_an_altered_file_changes_nothing(
    open_window: Open, patient: Home, world: World, size: tuple[int, int]
) -> None:
    """A changed file is refused with the number to ring; the plan that was held stays."""
    before = patient.ask("due")
    window = open_window(patient, size, world.altered)
    window.at("receive-refused")
    window.reads("err-file-altered")
    window.reads("do-file-altered")
    window.sees("555-0171")
    window.axe()
    window.press("receive-back-to-today")
    window.at("day")
    window.close()
    assert patient.ask("due") == before


def test_a_newer_revision_and_the_same_again(
    open_window: Open, patient: Home, world: World, size: tuple[int, int]
) -> None:
    """The next revision asks for no code; the same file again changes nothing; the older is refused."""
    window = open_window(patient, size, world.newer)
    window.at("receive-plan")
    window.reads("receive-new-title")
    window.reads("receive-new", revision="2")
    window.axe()
    window.press("receive-take-in")
    window.at("day")
    window.reads("receive-done", revision="2")
    # It tells the window before it looks for a screen of its own.
    assert window.start_again_with(world.newer, DISPLAY=":none") == 0
    window.at("receive-plan")
    window.reads("receive-same-again-title")
    window.axe()
    window.press("receive-back-to-today")
    window.at("day")
    assert window.start_again_with(world.plan) == 0
    window.at("receive-refused")
    window.reads("err-plan-older")
    window.press("receive-back-to-today")
    window.at("day")
