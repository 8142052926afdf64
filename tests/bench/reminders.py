"""What the reminder program costs while nothing is to be done.

Its resident memory beside a bare Rust process and beside the program with its window; how often the system woke
it in a minute (strace); and its sockets. A notification server is there, and a front with times ahead.
"""

import re
import subprocess
import sys
import tempfile
import time
from datetime import timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "journeys" / "window"))

from desktop import Desktop, front_of, internet_sockets, now, put_front, with_times  # noqa: E402
from window import PHONE, Window  # noqa: E402
from world import BIN_DIR, Home, World  # noqa: E402

WATCHED_S = 60
# So long a start takes at most.
SETTLES_S = 3
# What timeout(1) ends with when it had to.
TIMED_OUT = 124


def resident_mb(pid: int) -> float:
    """Resident memory in MB (10^6 bytes)."""
    status = Path(f"/proc/{pid}/status").read_text(encoding="utf-8")
    found = re.search(r"VmRSS:\s+(\d+) kB", status)
    assert found
    return int(found[1]) * 1024 / 1e6


def main() -> None:
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        home = Home(folder / "data")
        home.receive(World.new(folder / "world"))
        home.ask("reminders", "on")
        with Desktop(folder / "desktop") as desktop:
            desktop.start_server()
            ahead = [now() + timedelta(hours=hours) for hours in (1, 2, 3)]
            put_front(home, with_times(front_of(home), *ahead))
            program = desktop.remind(home)
            bare = subprocess.Popen([BIN_DIR / "idle"])
            window = Window(home, folder / "home", PHONE)
            time.sleep(SETTLES_S)
            print(f"reminders {resident_mb(program.pid):6.1f} MB resident")
            print(f"bare      {resident_mb(bare.pid):6.1f} MB resident")
            shell = window.processes()[0]
            print(f"window    {resident_mb(shell):6.1f} MB resident, without the web view's own processes")
            window.close()
            print(f"internet sockets: {len(internet_sockets(program.pid))}")
            print(f"system calls in {WATCHED_S} s of idling, those that waited apart: {calls(program.pid, folder / 'calls')}")
            bare.kill()


def calls(pid: int, out: Path) -> int:
    """How many system calls it made in a minute, over all its threads."""
    command = ["timeout", str(WATCHED_S), "strace", "-f", "-q", "-o", str(out), "-p", str(pid)]
    done = subprocess.run(command, check=False, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    assert done.returncode == TIMED_OUT, f"strace ended by itself: {done.returncode}"
    lines = out.read_text(encoding="utf-8").splitlines()
    # A call that was waiting when it was watched first, and is when it is watched last, wakes nobody.
    return sum("unfinished" not in line and "detached" not in line for line in lines)


if __name__ == "__main__":
    main()
