"""What is written down, and saved, without the timer."""

import subprocess
from datetime import timedelta
from pathlib import Path

from conftest import Open
from desktop import now
from keyboard import Keyboard
from steps import SLIDE
from window import Window
from words import say
from world import Home


def unfold(window: Window, name: str) -> None:
    """Opens the form for what was done without the program."""
    window.press(name)
    window.reads("item-from-memory")


def test_done_without_the_program(open_window: Open, patient: Home) -> None:
    """Today and yesterday, from memory; care as well."""
    window = open_window(patient)
    window.press_at("[data-item=slide]")
    window.at("item")
    window.check()
    unfold(window, "item-did")
    window.check()
    window.press("item-more")
    window.press("item-write")
    window.at("day")
    window.reads("times-today", times=8, done=1)
    window.press_at("[data-item=slide]")
    unfold(window, "item-did")
    window.press("item-yesterday")
    window.press("item-write")
    window.at("day")
    window.reads("times-today", times=8, done=1)
    window.press("day-care-done")
    window.reads("care-done-of", done=1, times=3)
    window.check()
    window.press("past-title")
    window.reads("past-sessions", n=0)
    window.press_at("main ul button")
    window.reads("past-remembered", n=1)
    window.check()
    window.close()
    assert patient.due("slide")["done"] == 1
    assert patient.ask("due")["care"][0]["done"] == 1


def test_done_though_it_was_shut(open_window: Open, patient: Home) -> None:
    """It is written down all the same, and says to ring."""
    window = open_window(patient)
    window.press_at("[data-item=leg-raise]")
    window.at("not-yet")
    unfold(window, "not-yet-did")
    window.check()
    window.press("item-write")
    window.at("day")
    window.reads("did-against-gate")
    window.close()
    assert patient.due("leg-raise")["done"] == 1
    assert not patient.due("leg-raise")["gate"]["open"]


def test_my_clinic_told_me_to_stop_this(open_window: Open, patient: Home) -> None:
    """It is offered no more, not even past the page, until that is taken back."""
    window = open_window(patient)
    window.press_at("[data-item=press]")
    window.press("item-told-to-stop")
    window.reads("item-stop-sure")
    window.check()
    window.press("item-stop-no")
    window.press("item-told-to-stop")
    window.press("item-stop-yes")
    window.at("day")
    window.reads("tighten-done")
    assert window.invoke("before", {"only": "press", "goesOn": False})[1]["code"] == "not-yet"
    assert patient.due("press")["tightened"]
    window.press_at("[data-item=press]")
    window.at("item")
    assert not window.offers("item-begin")
    window.check()
    window.press("item-take-up")
    window.press("item-take-up-yes")
    window.at("day")
    window.reads("tighten-ended")
    window.press_at("[data-item=press]")
    window.until(lambda: window.offers("item-begin"), "the way to begin")


def test_what_goes_back_to_the_clinic(open_window: Open, patient: Home) -> None:
    """It is opened in full before anything is saved, and by the keyboard's user too."""
    patient.ask("did", "slide", "--sets", "1", "--each", "10")
    window = open_window(patient)
    window.press("hand-title")
    window.at("hand-back")
    window.reads("hand-intro")
    window.reads("hand-no-words")
    window.sees("Heel slide: 1 of")
    window.check()
    window.press_at("summary")
    window.sees("done-by-hand,slide")
    window.check()
    window.press("day-back")
    window.at("day")


def test_today_is_saved_for_somebody_who_helps(open_window: Open, patient: Home, tmp_path: Path) -> None:
    """One page, in a folder of one's choice; it says where it is."""
    folder = tmp_path / "desk"
    folder.mkdir()
    window = open_window(patient)
    keyboard = Keyboard(window)
    keyboard.press("day-print")
    keyboard.pick_folder(folder)
    page = folder / "sendaluna-today.pdf"
    window.until(page.exists, "the page")
    window.sees(str(page))
    done = subprocess.run(["pdftotext", page, "-"], capture_output=True, text=True, check=True)
    assert SLIDE in done.stdout and say("today-hurts") in done.stdout


def to_reminders(window: Window) -> None:
    """From the day to the page of reminders."""
    window.press_at("[data-to=settings]")
    window.at("settings")
    window.press_at("main li:nth-child(4) button")
    window.at("reminders")


def test_a_break_is_ended_before_its_last_day(open_window: Open, patient: Home) -> None:
    """It stands on the page of reminders while it lasts; one press, and it does not hold any more."""
    today = now().date()
    patient.ask("break", "--from", str(today), "--through", str(today + timedelta(days=9)))
    window = open_window(patient)
    window.at("day")
    to_reminders(window)
    window.check()
    window.press("remind-break-end")
    window.at("day")
    window.reads("break-ended")
    to_reminders(window)
    assert not window.offers("remind-break-end")
