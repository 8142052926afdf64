"""Who wants less movement sees a movement as two stills."""

from conftest import Open
from steps import SLIDE, begin, ready, tally_is
from window import Window, prefer
from world import Home


def poses(window: Window) -> list[str]:
    """Every drawing of the figure, as its limbs lie now."""
    script = (
        "return [...document.querySelectorAll('[data-figure] svg.drawing')].map((drawing) =>"
        " [...drawing.querySelectorAll(':scope > path')].map((path) => path.getAttribute('d')).join())"
    )
    found: list[str] = window.js(script)
    return found


def test_the_figure_stands_in_two_poses(open_window: Open, patient: Home) -> None:
    """Through a repetition, nothing moves; the count, the phase and the tally still do."""
    prefer(patient.folder.parent / "home", "gtk-enable-animations=0")
    window = open_window(patient)
    assert window.js("return matchMedia('(prefers-reduced-motion: reduce)').matches")
    begin(window, "slide")
    ready(window, SLIDE)
    window.until(lambda: window.stage() == "running", "movement")
    before = poses(window)
    assert len(before) == 2 and before[0] != before[1], before
    tally_is(window, 1, 4)
    assert poses(window) == before
    moving = window.js("return document.getAnimations().length")
    assert not moving, f"{moving} animations"


def test_the_figure_moves_for_who_likes_it(open_window: Open, patient: Home) -> None:
    """One drawing, which is elsewhere a moment later: the stills are a choice."""
    window = open_window(patient)
    begin(window, "slide")
    ready(window, SLIDE)
    window.until(lambda: window.stage() == "running", "movement")
    before = poses(window)
    assert len(before) == 1, before
    window.until(lambda: poses(window) != before, "another pose")
