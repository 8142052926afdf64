"""Every slot of every day of two years, in every zone of the current database, computed again.

Outside: Python's zoneinfo with the IANA database of PyPI tzdata, the system's copy put aside. A time that does
not exist is taken by the offset before the gap, and of one that comes twice the first counts (RFC 5545, section
3.3.5); zoneinfo's fold 0 is just that (PEP 495). Each slot comes exactly once; in quiet hours only if it was
chosen.
"""

import datetime
import json
import subprocess
import zoneinfo
from importlib import metadata

from kit.programs import BIN_DIR
from kit.tally import Tally

# From here on only PyPI's copy.
zoneinfo.reset_tzpath([])


def minutes(text: str) -> int:
    """Minutes after midnight."""
    hours, rest = text.split(":")
    return int(hours) * 60 + int(rest)


def main() -> None:
    tally = Tally()
    done = subprocess.run([BIN_DIR / "zones"], capture_output=True, text=True, check=True)
    lines = iter(done.stdout.splitlines())
    head = json.loads(next(lines))
    version = metadata.version("tzdata")
    print(f"rules: {head['release']} here, tzdata {version} outside")
    first = datetime.date.fromisoformat(head["first"])
    days = [first + datetime.timedelta(days=n) for n in range(head["days"])]
    times = [datetime.time.fromisoformat(text) for text in head["times"]]
    walls = [datetime.datetime.combine(day, time) for day in days for time in times]
    quiet_from, quiet_to = (minutes(text) for text in head["quiet"])

    def is_quiet(at: int, zone: zoneinfo.ZoneInfo) -> bool:
        wall = datetime.datetime.fromtimestamp(at, zone)
        minute = wall.hour * 60 + wall.minute
        return minute >= quiet_from or minute < quiet_to

    zones = slots = differences = 0
    seen = set()
    for line in lines:
        ours = json.loads(line)
        seen.add(ours["zone"])
        try:
            zone = zoneinfo.ZoneInfo(ours["zone"])
        except zoneinfo.ZoneInfoNotFoundError:
            tally.check(f"{ours['zone']} is unknown outside", False)
            continue
        expected = [int(wall.replace(tzinfo=zone).timestamp()) for wall in walls]
        heard = [at for at in expected if not is_quiet(at, zone)]
        wrong = sum(a != b for a, b in zip(ours["chosen"], expected, strict=False))
        wrong += abs(len(ours["chosen"]) - len(expected)) + (ours["unchosen"] != heard)
        tally.check(f"{ours['zone']}: {wrong} of {len(expected)} slots differ", wrong == 0)
        zones, slots, differences = zones + 1, slots + len(expected), differences + wrong
    missing = zoneinfo.available_timezones() - seen - {"Factory", "localtime"}
    tally.check(f"zones that are not known here: {sorted(missing)}", not missing)
    print(f"{slots // max(zones, 1)} slots × {zones} zones = {slots} compared, {differences} differences")
    tally.finish()


if __name__ == "__main__":
    main()
