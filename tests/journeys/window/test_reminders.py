"""Reminders, with a real notification server, from the time that comes to the page that opens."""

import json
import os
import shutil
import signal
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from conftest import Open
from desktop import (
    Desktop,
    processes_with,
    end,
    folder_of,
    front_of,
    in_s,
    internet_sockets,
    now,
    outbox_of,
    put_front,
    utc,
    wakings,
    with_times,
)
from window import PHONE, until
from words import say
from world import Home


@pytest.fixture
def desktop(tmp_path: Path) -> Iterator[Desktop]:
    """A session bus of the test's own; nobody shows notices yet."""
    with Desktop(tmp_path / "desktop") as made:
        yield made


@pytest.fixture
def reminded(patient: Home) -> Home:
    """A patient whose program has written a front."""
    patient.ask("reminders", "on")
    return patient


def test_a_reminder_is_shown_put_off_and_written_down(desktop: Desktop, reminded: Home) -> None:
    """It says little, has its three actions, and what is pressed waits for the record."""
    desktop.start_server()
    program = desktop.remind_in(reminded, 1.5)
    shown = desktop.until_shown(1)
    assert (shown.title, shown.text) == ("Sendaluna", say("reminder-now"))
    assert not internet_sockets(program.pid)
    desktop.press(say("reminder-in-30-minutes"))
    until(lambda: outbox_of(reminded) == ["later"], "a line", lambda: str(outbox_of(reminded)))
    memory = json.loads((folder_of(reminded) / "memory.json").read_text(encoding="utf-8"))
    assert memory["put_off"]["until"] > utc(now())
    # The record takes it in once, and the outbox is gone.
    reminded.ask("reminders", "on")
    assert not outbox_of(reminded)
    assert end(program) == 0, "it ends when it is asked to"


def test_the_next_takes_the_place_of_the_last_and_goes_when_it_is_done(
    desktop: Desktop, reminded: Home
) -> None:
    """Never a pile; and what was done elsewhere is taken back."""
    desktop.start_server()
    desktop.remind_in(reminded, 1, 3)
    first, second = desktop.until_shown(1), desktop.until_shown(2)
    assert first.number == second.number, "in its place"
    assert desktop.displayed() == 1
    put_front(reminded, front_of(reminded) | {"answered_until": utc(in_s(1))})
    desktop.until_displayed(0)


def test_others_do_not_wake_it(desktop: Desktop, reminded: Home) -> None:
    """It sleeps to its deadline, whatever else starts on the device."""
    program = desktop.remind_in(reminded, 1800)
    seen = [-1]

    def sleeps() -> bool:
        seen.append(wakings(program.pid))
        return seen[-1] == seen[-2]

    until(sleeps, "a program that sleeps", lambda: str(seen))
    for _ in range(20):
        subprocess.run(["ls", "/etc"], check=True, stdout=subprocess.DEVNULL)
    assert wakings(program.pid) == seen[-1]


def test_it_takes_its_notice_along(desktop: Desktop, reminded: Home) -> None:
    """Once it has ended, nothing is to be seen that nobody would hear a press on."""
    desktop.start_server()
    program = desktop.remind_in(reminded, 1)
    desktop.until_shown(1)
    assert end(program) == 0
    desktop.until_displayed(0)


def test_not_today_is_asked_about_once(desktop: Desktop, reminded: Home, open_window: Open) -> None:
    """Pressed on the notice, it is in the record, and the program asks why, once."""
    desktop.start_server()
    desktop.remind_in(reminded, 1)
    desktop.until_shown(1)
    desktop.press(say("reminder-not-today"))
    until(lambda: outbox_of(reminded) == ["not-today"], "a line", lambda: str(outbox_of(reminded)))
    window = open_window(reminded, PHONE)
    window.at("day")
    window.reads("not-today-once")
    window.press("not-today-tired")
    window.reads("not-today-thanks")
    window.until(lambda: not window.offers("not-today-tired"), "a question that is gone")


def test_start_opens_the_session_in_the_window(
    desktop: Desktop, reminded: Home, open_window: Open, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Pressed on a real notice, it brings the questions before the session up in the real window."""
    monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", desktop.address)
    desktop.start_server()
    window = open_window(reminded, PHONE)
    window.at("day")
    desktop.remind_in(reminded, 1.5)
    desktop.until_shown(1)
    desktop.press(say("reminder-start"))
    window.at("before")
    desktop.until_displayed(0)


def test_start_opens_a_window_where_there_is_none(desktop: Desktop, reminded: Home) -> None:
    """The program comes up by itself."""
    desktop.start_server()
    desktop.remind_in(reminded, 1)
    desktop.until_shown(1)
    desktop.press(say("reminder-start"))
    words = f"--data {reminded.folder} --begin"
    until(lambda: list(processes_with(words)), "a program", lambda: "none")
    found = lambda: subprocess.run(  # noqa: E731
        ["xdotool", "search", "--onlyvisible", "--name", "^Sendaluna$"],
        env=desktop.env,
        capture_output=True,
        check=False,
    ).stdout.split()
    until(found, "a window", lambda: "none")
    for process in processes_with(words):
        os.kill(process, signal.SIGTERM)
    until(lambda: not list(processes_with(words)), "the end of the program", lambda: "still there")


def test_no_server_at_first_and_one_later(desktop: Desktop, reminded: Home) -> None:
    """It is tried again while the time's window is open."""
    put_front(reminded, with_times(front_of(reminded), in_s(2)))
    program = desktop.remind(reminded)
    memory = folder_of(reminded) / "memory.json"
    until(lambda: memory.exists() and "shown" in memory.read_text(encoding="utf-8"), "its time", lambda: "")
    desktop.start_server()
    desktop.until_shown(1)
    assert program.poll() is None


def test_a_server_that_goes_and_a_bus_that_drops(desktop: Desktop, reminded: Home) -> None:
    """What was to be seen is shown again by whoever comes next."""
    desktop.start_server()
    program = desktop.remind_in(reminded, 1)
    desktop.until_shown(1)
    desktop.stop_server()
    desktop.start_server()
    desktop.until_shown(2)
    desktop.stop_server()
    desktop.drop_bus()
    desktop.start_bus()
    desktop.start_server()
    desktop.until_shown(3)
    assert program.poll() is None


@pytest.mark.parametrize("name", ["torn", "older", "newer", "hostile", "huge"])
def test_a_front_that_cannot_be_used_changes_nothing(desktop: Desktop, reminded: Home, name: str) -> None:
    """Whatever lies there, the times known so far still come, and a good front is taken again."""
    desktop.start_server()
    program = desktop.remind_in(reminded, 1, 6)
    desktop.until_shown(1)
    good = front_of(reminded)
    text = json.dumps(good).encode()
    bad = {
        "torn": text[: len(text) // 2],
        "older": json.dumps(good | {"version": 0}).encode(),
        "newer": json.dumps({"version": 99, "days": "in another form"}).encode(),
        "hostile": json.dumps(good | {"words": good["words"] | {"now": "\x1b[2J\x00"}}).encode(),
        "huge": b" " * 3_000_000,
    }[name]
    put_front(reminded, bad)
    desktop.until_shown(2)
    assert program.poll() is None
    put_front(reminded, with_times(good, in_s(1.5)))
    desktop.until_shown(3)


def test_a_front_that_is_missing_reminds_of_nothing(desktop: Desktop, reminded: Home) -> None:
    """No front at the start, and none again later: the program waits for one."""
    desktop.start_server()
    front = front_of(reminded)
    (folder_of(reminded) / "front.json").unlink()
    program = desktop.remind(reminded)
    until((folder_of(reminded) / "reminders.lock").exists, "a lock", lambda: "none")
    put_front(reminded, with_times(front, in_s(1)))
    desktop.until_shown(1)
    (folder_of(reminded) / "front.json").unlink()
    desktop.until_displayed(0)
    assert program.poll() is None


def test_one_program_a_folder_and_none_where_none_is_wanted(desktop: Desktop, reminded: Home) -> None:
    """A second one ends at once; whoever switches reminders off has no program left."""
    both = [desktop.remind(reminded), desktop.remind(reminded)]
    until(lambda: [p.poll() for p in both].count(0) == 1, "one that ends", lambda: "both, or none")
    reminded.ask("reminders", "off")
    assert [program.wait(20) for program in both] == [0, 0]


def test_the_program_says_the_truth_about_a_notice(desktop: Desktop, reminded: Home) -> None:
    """Nobody there, shown, held back: "send me one now" knows them apart."""

    def sent() -> str:
        command = [str(Path(os.environ.get("SENDALUNA_BIN_DIR", "target/debug")) / "sendaluna")]
        command += ["reminders", "--send-one", "--json", "--data", str(reminded.folder), "--key-in-file"]
        done = subprocess.run(command, env=desktop.env, capture_output=True, text=True, check=True)
        return str(json.loads(done.stdout)["sent"])

    assert sent() == say("remind-now-nobody")
    desktop.start_server()
    assert sent() == say("remind-now-taken", by="dunst")
    assert len(desktop.shown()) == 1
    desktop.control("set-paused", "true")
    assert sent() == say("remind-now-held", by="dunst")


def test_a_record_that_is_shut_shuts_nothing_else_away(
    desktop: Desktop, reminded: Home, open_window: Open
) -> None:
    """Without the record's key, reminders come, and whom to ring and when to stop can be read."""
    contacts = reminded.ask("contacts")
    keys = [path for path in reminded.folder.iterdir() if "key" in path.name]
    assert keys
    for path in keys:
        shutil.move(path, path.with_name(f"away-{path.name}"))
    assert reminded.ask("contacts") == contacts
    desktop.start_server()
    desktop.remind_in(reminded, 1)
    desktop.until_shown(1)
    window = open_window(reminded, PHONE)
    window.at("problem")
    for text in (contacts["phone"], contacts["emergency_phone"], contacts["signs"][0]["text"]):
        window.sees(text)
