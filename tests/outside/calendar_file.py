"""The plan's times as a calendar file (RFC 5545), read by others.

Outside: PyPI icalendar (parses it), recurring_ical_events (expands it), dateutil.rrule (expands the rules a
second way), zoneinfo with PyPI tzdata (what the times are). What none of them checks is asserted here: CRLF,
lines of at most 75 octets, UID and DTSTAMP, UNTIL in UTC, an alarm in each event, a zone for each name, titles
without a word of health.
"""

import datetime
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import zoneinfo
from pathlib import Path
from typing import Any

import icalendar
import recurring_ical_events
from dateutil import rrule

from kit import programs
from kit.tally import Tally

zoneinfo.reset_tzpath([])

# Weeks before clocks change in Europe, America and Australia, so that the plan goes over that.
DATE = "2026-02-20"
CHANGES = ("Europe/Berlin", "America/New_York", "Australia/Lord_Howe")
ZONES = [
    "Europe/Berlin",
    "America/New_York",
    "Australia/Lord_Howe",
    "Africa/Casablanca",
    "Asia/Kolkata",
    "Pacific/Apia",
    "UTC",
]
# A word that a title must not hold, in any language that ships.
HEALTH = re.compile(r"exerci|ejercici|übung|تمرين|تمارين|hip|knee|pain|clinic", re.IGNORECASE)


class Patient:
    """A patient with the hip plan of the demo, somewhere on earth, on a day of our choice."""

    def __init__(self, folder: Path, made: Path, code: str, zone: str) -> None:
        self.data = folder / zone.replace("/", "-")
        self.zone = zone
        self.env = programs.ENV | {"TZ": zone}
        self.ask("receive", made, "--code", code, "--side", "left", "--yes")

    def ask(self, *args: str | Path) -> dict[str, Any]:
        """Runs a command of the patient's program."""
        command = [programs.BIN_DIR / "sendaluna", *args, "--json", "--data", self.data, "--key-in-file"]
        done = subprocess.run(command, env=self.env, capture_output=True, text=True, check=False)
        if done.returncode != 0:
            raise SystemExit(f"sendaluna {args}: {done.stdout}{done.stderr}")
        answer: dict[str, Any] = json.loads(done.stdout)
        return answer

    def calendar(self, out: Path) -> str:
        """The file, as it lies there."""
        self.ask("calendar", "--out", out)
        return out.read_bytes().decode()

    def slots(self) -> list[datetime.datetime]:
        """The plan's times ahead as reminders have them, as instants."""
        front = json.loads((self.data / "reminders" / "front.json").read_text(encoding="utf-8"))
        zone = zoneinfo.ZoneInfo(self.zone)
        walls = [
            datetime.datetime.fromisoformat(f"{day['day']}T{slot['time']}").replace(tzinfo=zone)
            for day in front["days"]
            for slot in day["slots"]
        ]
        return sorted(wall.astimezone(datetime.UTC) for wall in walls)


def check_form(tally: Tally, name: str, text: str) -> None:
    """What RFC 5545 asks of the text."""
    tally.check(f"{name}: lines end with CRLF", text.endswith("\r\n") and "\n" not in text.replace("\r\n", ""))
    octets = max(len(line.encode()) for line in text.split("\r\n"))
    tally.check(f"{name}: a line has {octets} octets", octets <= 75)
    for event in re.findall(r"BEGIN:VEVENT\r\n.*?END:VEVENT", text.replace("\r\n ", ""), re.DOTALL):
        for wanted in ("UID:", "DTSTAMP:", "SEQUENCE:", "SUMMARY:", "DTSTART"):
            tally.check(f"{name}: {wanted} once in an event", event.count(f"\r\n{wanted}") == 1)
        cancelled = "STATUS:CANCELLED" in event
        tally.check(f"{name}: an alarm in each event", cancelled or "BEGIN:VALARM" in event)
        until = re.search(r"UNTIL=([^;\r]+)", event)
        tally.check(f"{name}: UNTIL in UTC", until is None or re.fullmatch(r"\d{8}T\d{6}Z", until[1]) is not None)
        tally.check(f"{name}: a title says too much: {event}", not HEALTH.search(event))


def by_rules(calendar: icalendar.Calendar, zone: str) -> list[datetime.datetime]:
    """Every start, by dateutil's reading of the rules."""
    found = []
    for event in calendar.walk("VEVENT"):
        if event.get("STATUS") == "CANCELLED":
            continue
        start = event.decoded("DTSTART")
        wall = start.astimezone(zoneinfo.ZoneInfo(zone)).replace(tzinfo=None)
        if "RRULE" not in event:
            found.append(start)
            continue
        rule = event["RRULE"].to_ical().decode()
        # dateutil wants a floating end with a floating start: the end as it stands on the wall.
        until = event["RRULE"]["UNTIL"][0].astimezone(zoneinfo.ZoneInfo(zone)).replace(tzinfo=None)
        rule = re.sub(r"UNTIL=[^;]+", f"UNTIL={until:%Y%m%dT%H%M%S}", rule)
        starts = rrule.rrulestr(rule, dtstart=wall)
        found += [at.replace(tzinfo=zoneinfo.ZoneInfo(zone)) for at in starts]
    return sorted(at.astimezone(datetime.UTC) for at in found)


def by_expansion(calendar: icalendar.Calendar) -> list[datetime.datetime]:
    """Every start, by recurring_ical_events."""
    events = recurring_ical_events.of(calendar).between("20260101", "20280101")
    live = [event for event in events if event.get("STATUS") != "CANCELLED"]
    return sorted(event["DTSTART"].dt.astimezone(datetime.UTC) for event in live)


def check_zone(tally: Tally, patient: Patient, folder: Path) -> None:
    """One zone: form, times, a second file, a moved time, a time that is gone."""
    name = patient.zone
    text = patient.calendar(folder / "first.ics")
    check_form(tally, name, text)
    calendar = icalendar.Calendar.from_ical(text)
    slots = patient.slots()
    tally.check(f"{name}: only {len(slots)} slots", len(slots) > 100)
    tally.check(f"{name}: recurring_ical_events gives other times", by_expansion(calendar) == slots)
    tally.check(f"{name}: dateutil gives other times", by_rules(calendar, name) == slots)
    zones = {str(zone["TZID"]) for zone in calendar.walk("VTIMEZONE")}
    tally.check(f"{name}: zones {zones}", zones == {name})
    check_offsets(tally, calendar, name, slots)

    again = icalendar.Calendar.from_ical(patient.calendar(folder / "second.ics"))
    names = lambda read: {str(event["UID"]) for event in read.walk("VEVENT")}  # noqa: E731
    tally.check(f"{name}: a second file has other events", names(again) == names(calendar))
    sequence = {int(event["SEQUENCE"]) for event in again.walk("VEVENT")}
    tally.check(f"{name}: sequence {sequence}", sequence == {1})

    patient.ask("reminders", "--times", "10:15")
    fewer = icalendar.Calendar.from_ical(patient.calendar(folder / "third.ics"))
    check_form(tally, name, (folder / "third.ics").read_bytes().decode())
    tally.check(f"{name}: other times after a change", by_expansion(fewer) == patient.slots())
    gone = {str(e["UID"]) for e in fewer.walk("VEVENT") if e.get("STATUS") == "CANCELLED"}
    live = names(fewer) - gone
    tally.check(f"{name}: a moved time has another name", live <= names(calendar))
    tally.check(f"{name}: what is gone is not cancelled", gone == names(calendar) - live)


def check_offsets(
    tally: Tally, calendar: icalendar.Calendar, name: str, slots: list[datetime.datetime]
) -> None:
    """The zone as it is written out gives the offsets that the zone has."""
    zone = zoneinfo.ZoneInfo(name)
    changes = []
    for part in calendar.walk("VTIMEZONE")[0].subcomponents:
        start = part.decoded("DTSTART").replace(tzinfo=None)
        before, after = part.decoded("TZOFFSETFROM"), part.decoded("TZOFFSETTO")
        changes.append(((start - before).replace(tzinfo=datetime.UTC), after))
    changes.sort()
    tally.check(f"{name}: the plan goes over a change of clocks", len(changes) > 1 or name not in CHANGES)
    wrong = 0
    for slot in slots:
        written = [after for at, after in changes if at <= slot]
        wrong += not written or written[-1] != slot.astimezone(zone).utcoffset()
    tally.check(f"{name}: {wrong} offsets differ from the zone's", wrong == 0)


def main() -> None:
    if DATE not in os.environ.get("FAKETIME", ""):
        # The clock that must count on is left alone.
        env = os.environ | {"FAKETIME_DONT_FAKE_MONOTONIC": "1", "TZ": "UTC"}
        os.execvpe("faketime", ["faketime", "-f", f"@{DATE} 09:00:00", sys.executable, *sys.argv], env)
    tally = Tally()
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        source = folder / "hip"
        source.mkdir()
        plan = programs.sign_demo("hip", source, days_ago=20)
        code = programs.clinic_does("letter-code", "--signers", "signers.jws", "--json", folder=source)
        for zone in ZONES:
            patient = Patient(folder, plan, code.json["letter_code"], zone)
            check_zone(tally, patient, folder)
            shutil.rmtree(patient.data)
    tally.finish()


if __name__ == "__main__":
    main()
