"""Hidden, killed, started twice: what was done stays done."""

from conftest import Open
from steps import SLIDE, begin, ready, skip_after, tally, tally_is
from window import DESKTOP
from world import Home, World


def test_it_goes_on_while_the_window_is_hidden(open_window: Open, patient: Home) -> None:
    """Cues go by and rounds are written while nobody can see the page; then it shows the present."""
    window = open_window(patient)
    begin(window, "slide")
    ready(window, SLIDE)
    window.until(lambda: window.stage() == "running", "movement")
    window.x_hide(True)
    # Nothing is asked of the page meanwhile: the record alone tells.
    window.wait_beside(lambda: patient.due("slide")["done"] == 1, "the first round on disk")
    window.x_hide(False)
    window.until(lambda: tally(window) in ("2 of 4 done.", "3 of 4 done."), "the present", 1)
    window.x_hide(True)
    window.wait_beside(lambda: window.screen() == "after", "the end of the session")
    window.x_hide(False)
    skip_after(window)
    window.reads("ended-whole")


def test_it_ends_when_its_window_is_closed_by_hand(open_window: Open, patient: Home) -> None:
    """A session under way is no reason to stay; what was done of it is kept."""
    window = open_window(patient)
    begin(window, "slide")
    ready(window, SLIDE)
    tally_is(window, 1, 4)
    window.close_by_hand()
    window.wait_beside(lambda: not window.processes(), "the end of the program")
    assert patient.ask("due")["can_go_on"]


def test_a_flat_battery_costs_the_round_under_way(open_window: Open, patient: Home) -> None:
    """After a kill, today's session goes on from the last finished round."""
    window = open_window(patient)
    begin(window, "slide")
    ready(window, SLIDE)
    tally_is(window, 3, 4)
    window.kill()
    assert patient.ask("due")["can_go_on"]

    window = open_window(patient, DESKTOP)
    window.at("day")
    window.reads("day-can-go-on")
    window.check()
    window.press("day-go-on")
    window.reads("ask-signs-again")
    window.press("before-nothing")
    window.reads("before-going-on")
    window.check()
    window.press("before-begin")
    window.at("session")
    window.page("watch")
    ready(window, SLIDE)
    window.until(lambda: tally(window) == "3 of 4 done.", "the third repetition, once more")
    skip_after(window)
    window.reads("ended-whole")
    dones = [row.split("|")[4] for row in window.js("return window.seenByTests")]
    assert "0 of 4 done." not in dones and "1 of 4 done." not in dones, dones
    window.press("ended-back")
    window.at("day")
    assert not window.offers("day-go-on")
    window.close()
    assert patient.due("slide")["done"] == 1


def test_a_second_start_hands_its_file_over(open_window: Open, patient: Home, world: World) -> None:
    """One window lives; a session is not interrupted, and the file waits for its end."""
    window = open_window(patient)
    begin(window, "press")
    there = window.x_windows()
    assert window.start_again_with(world.newer) == 0
    assert len(window.processes()) == 1 and window.x_windows() == there
    assert window.screen() == "session"
    window.press("session-stop")
    skip_after(window)
    window.press("ended-back")
    window.at("receive-plan")
    window.reads("receive-new", revision="2")
    window.press("receive-take-in")
    window.at("day")
    assert len(window.processes()) == 1 and window.x_windows() == there
