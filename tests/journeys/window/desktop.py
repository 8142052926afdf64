"""A desktop of the test's own: a session bus, a notification server (dunst), and the reminder program.

What the server shows is written down by a script of its own, one line a notice, with the number that the
server gave it; so a notice that takes another's place is seen to.
"""

import contextlib
import json
import os
import re
import signal
import subprocess
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from window import environment, running, until
from world import BIN_DIR, ZONE, Home

PROGRAM = BIN_DIR / "sendaluna-reminders"
# So long anything may take before it counts as not happening.
PATIENCE_S = 20.0
# The first time that a front is given.
SOON_S = 3600


@dataclass(frozen=True)
class Shown:
    """A notice that was shown."""

    number: str
    title: str
    text: str


def now() -> datetime:
    """Now, on the patient's wall."""
    return datetime.now(ZoneInfo(ZONE))


class Desktop:
    """A session bus, and a notification server when it is wanted."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        folder.mkdir(parents=True, exist_ok=True)
        self.env = environment(folder / "home")
        self.address = f"unix:path={folder / 'bus'}"
        self.env["DBUS_SESSION_BUS_ADDRESS"] = self.address
        self.bus: subprocess.Popen[bytes] | None = None
        self.server: subprocess.Popen[bytes] | None = None
        self.programs: list[subprocess.Popen[bytes]] = []
        self.log = folder / "shown.jsonl"
        self.picks = folder / "picks"
        self.configure()

    def configure(self) -> None:
        """The server notes what it shows, and picks the action whose words stand in a file."""
        note, pick = self.folder / "note", self.folder / "pick"
        note.write_text(
            "#!/usr/bin/python3\nimport json, os\n"
            f"with open({str(self.log)!r}, 'a', encoding='utf-8') as log:\n"
            "    told = [os.environ[f'DUNST_{name}'] for name in ('ID', 'SUMMARY', 'BODY')]\n"
            "    log.write(json.dumps(told) + '\\n')\n",
            encoding="utf-8",
        )
        pick.write_text(f'#!/bin/sh\ngrep -F -- "$(cat {self.picks})"\n', encoding="utf-8")
        for script in (note, pick):
            script.chmod(0o755)
        # Nothing starts by itself on this bus: whether a server is there is the test's to say.
        (self.folder / "bus.conf").write_text(
            '<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"'
            ' "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">\n'
            f"<busconfig><type>session</type><listen>{self.address}</listen><auth>EXTERNAL</auth>"
            '<policy context="default"><allow send_destination="*" eavesdrop="true"/>'
            '<allow eavesdrop="true"/><allow own="*"/></policy></busconfig>\n',
            encoding="utf-8",
        )
        (self.folder / "dunstrc").write_text(
            f'[global]\ndmenu = {pick}\nidle_threshold = 0\n[all]\nsummary = "*"\nscript = {note}\n',
            encoding="utf-8",
        )

    # Its life.

    def __enter__(self) -> "Desktop":
        self.start_bus()
        return self

    def __exit__(self, *_: object) -> None:
        for program in self.programs:
            end(program)
        self.stop_server()
        self.drop_bus()

    def start_bus(self) -> None:
        """Starts the bus, always at the same address."""
        command = ["dbus-daemon", "--nofork", "--nopidfile", f"--config-file={self.folder / 'bus.conf'}"]
        self.bus = subprocess.Popen(command, env=self.env, stderr=subprocess.DEVNULL)
        until((self.folder / "bus").exists, "a bus", lambda: "none")

    def drop_bus(self) -> None:
        """Takes the bus away."""
        if self.bus:
            end(self.bus)
        self.bus = None
        (self.folder / "bus").unlink(missing_ok=True)

    def start_server(self) -> None:
        """Starts the notification server."""
        command = ["dunst", "-config", str(self.folder / "dunstrc")]
        self.server = subprocess.Popen(command, env=self.env, stderr=subprocess.DEVNULL)
        until(lambda: self.control("is-paused", check=False) in ("true", "false"), "a server", lambda: "none")

    def stop_server(self) -> None:
        """Takes the notification server away."""
        if self.server:
            end(self.server)
        self.server = None

    def remind(self, home: Home) -> subprocess.Popen[bytes]:
        """Starts the reminder program."""
        command = [str(PROGRAM), "--data", str(home.folder)]
        program = subprocess.Popen(command, env=self.env)
        self.programs.append(program)
        return program

    def remind_in(self, home: Home, *seconds: float) -> subprocess.Popen[bytes]:
        """Starts the reminder program, and once it is up gives it times so many seconds from now.

        However long the start takes: the times are still to come when they are read.
        """
        put_front(home, with_times(front_of(home), in_s(SOON_S)))
        program = self.remind(home)
        # One that ends well has found that the window's own reminds already.
        up = lambda: is_waiting(program.pid) if program.poll() is None else program.returncode == 0  # noqa: E731
        until(up, "a program that waits for its time", lambda: str(program.poll()))
        put_front(home, with_times(front_of(home), *(in_s(time) for time in seconds)))
        return program

    # What it shows, and what is pressed.

    def control(self, *args: str, check: bool = True) -> str:
        """Asks the server."""
        done = subprocess.run(
            ["dunstctl", *args], env=self.env, check=check, capture_output=True, text=True, timeout=PATIENCE_S
        )
        return done.stdout.strip()

    def displayed(self) -> int:
        """How many notices are to be seen."""
        return int(self.control("count", "displayed"))

    def shown(self) -> list[Shown]:
        """Every notice so far, a replacement too."""
        if not self.log.exists():
            return []
        return [Shown(*json.loads(line)) for line in self.log.read_text(encoding="utf-8").splitlines()]

    def until_shown(self, count: int) -> Shown:
        """Waits for so many notices, and gives the last."""
        until(lambda: len(self.shown()) >= count, f"{count} notices", lambda: str(self.shown()), PATIENCE_S)
        return self.shown()[count - 1]

    def until_displayed(self, count: int) -> None:
        """Waits until so many are to be seen."""
        until(lambda: self.displayed() == count, f"{count} to be seen", lambda: str(self.shown()), PATIENCE_S)

    def press(self, words: str) -> None:
        """Presses the action with these words on the notice that is to be seen."""
        self.picks.write_text(f"#{words} (", encoding="utf-8")
        self.control("context")


def end(program: "subprocess.Popen[bytes]") -> int:
    """Asks a program to end, and waits for it."""
    with contextlib.suppress(ProcessLookupError):
        program.send_signal(signal.SIGTERM)
    try:
        return program.wait(PATIENCE_S)
    except subprocess.TimeoutExpired:
        program.kill()
        raise


# The front.


def folder_of(home: Home) -> Path:
    """The folder that both programs share."""
    return home.folder / "reminders"


def front_of(home: Home) -> dict[str, Any]:
    """The front, as the patient's program wrote it."""
    front: dict[str, Any] = json.loads((folder_of(home) / "front.json").read_text(encoding="utf-8"))
    return front


def put_front(home: Home, front: dict[str, Any] | bytes) -> None:
    """Writes a front as the patient's program does: the whole of it, in place of the one before."""
    fresh = folder_of(home) / "front.new"
    fresh.write_bytes(front if isinstance(front, bytes) else json.dumps(front).encode())
    os.replace(fresh, folder_of(home) / "front.json")


def with_times(front: dict[str, Any], *times: datetime) -> dict[str, Any]:
    """The front with these times and no others, all of them chosen."""
    days: dict[str, list[dict[str, Any]]] = {}
    for time in sorted(times):
        slot = {"time": time.strftime("%H:%M:%S"), "chosen": True}
        days.setdefault(time.date().isoformat(), []).append(slot)
    return front | {"days": [{"day": day, "slots": slots} for day, slots in days.items()]}


def in_s(seconds: float) -> datetime:
    """A time on the patient's wall, whole seconds from now."""
    return (now() + timedelta(seconds=seconds)).replace(microsecond=0)


def outbox_of(home: Home) -> list[str]:
    """What was pressed and is not in the record yet."""
    outbox = folder_of(home) / "outbox.jsonl"
    lines = outbox.read_text(encoding="utf-8").splitlines()[1:] if outbox.exists() else []
    return [json.loads(line)["answer"] for line in lines]


def is_waiting(pid: int) -> bool:
    """Whether a process has set its alarm (a timerfd; proc(5)) for a time ahead: it has read its front."""
    for descriptor in Path(f"/proc/{pid}/fd").iterdir():
        with contextlib.suppress(OSError):
            if os.readlink(descriptor) == "anon_inode:[timerfd]":
                told = Path(f"/proc/{pid}/fdinfo/{descriptor.name}").read_text(encoding="utf-8")
                left = re.search(r"it_value: \((\d+),", told)
                # Without a time ahead the alarm is set as good as for ever.
                if left and 0 < int(left[1]) <= SOON_S:
                    return True
    return False


def wakings(pid: int) -> int:
    """How often a process has gone to sleep, over all its threads (proc(5)): it was woken as often."""
    threads = Path(f"/proc/{pid}/task").glob("*/status")
    counts = (re.search(r"^voluntary_ctxt_switches:\s+(\d+)", told.read_text(encoding="utf-8"), re.M) for told in threads)
    return sum(int(count[1]) for count in counts if count)


def internet_sockets(pid: int) -> list[str]:
    """The sockets of a process that could speak to another machine."""
    known: set[str] = set()
    for table in ("tcp", "tcp6", "udp", "udp6", "raw", "raw6"):
        rows = Path(f"/proc/{pid}/net/{table}").read_text(encoding="utf-8").splitlines()[1:]
        known |= {f"socket:[{row.split()[9]}]" for row in rows}
    found = []
    for descriptor in Path(f"/proc/{pid}/fd").iterdir():
        with contextlib.suppress(OSError):
            found.append(os.readlink(descriptor))
    return [name for name in found if name in known]


def processes_with(words: str) -> list[int]:
    """Processes whose arguments hold these words."""
    return [process for process, args in running() if words in " ".join(args)]


def utc(time: datetime) -> str:
    """A moment, as a front has it."""
    return time.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
