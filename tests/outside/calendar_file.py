"""The plan's times as a calendar file (RFC 5545), read by others.

Outside: PyPI icalendar (parses it), recurring_ical_events (expands it), dateutil.rrule (expands the rules a
second way), zoneinfo with PyPI tzdata (what the times are). What none of them checks is asserted here: CRLF,
lines of at most 75 octets, UID and DTSTAMP, UNTIL in UTC, an alarm in each event, a zone for each name, titles
without a word of health.
"""

import datetime
import json
import re
import subprocess
import tempfile
import zoneinfo
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import icalendar
import recurring_ical_events
from dateutil import rrule

from kit import programs
from kit.tally import Tally

zoneinfo.reset_tzpath([])

# Where clocks change while the plan of `calendar.rs` lasts.
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
LANGUAGES = ("es", "de", "ar")
# A word that a title must not hold, in any language that ships.
HEALTH = re.compile(r"exerci|ejercici|übung|تمرين|تمارين|hip|knee|pain|clinic", re.IGNORECASE)


@dataclass(frozen=True)
class Made:
    """Three files made one after the other, and what reminders are told: the third has one time a day."""

    zone: str
    first: str
    second: str
    third: str
    front: dict[str, Any]
    front_after: dict[str, Any]

    def slots(self) -> list[datetime.datetime]:
        """The instants of reminders."""
        return instants(self.front, self.zone)

    def slots_after(self) -> list[datetime.datetime]:
        """The instants of reminders with the chosen time."""
        return instants(self.front_after, self.zone)


def instants(front: dict[str, Any], name: str) -> list[datetime.datetime]:
    """When its slots are."""
    zone = zoneinfo.ZoneInfo(name)
    walls = [
        datetime.datetime.fromisoformat(f"{day['day']}T{slot['time']}").replace(tzinfo=zone)
        for day in front["days"]
        for slot in day["slots"]
    ]
    return sorted(wall.astimezone(datetime.UTC) for wall in walls)


class Patient:
    """A patient with the hip plan of the demo, somewhere on earth, today."""

    def __init__(self, folder: Path, made: Path, code: str, zone: str) -> None:
        self.data = folder / zone.replace("/", "-")
        self.zone = zone
        self.env = programs.ENV | {"TZ": zone}
        self.ask("receive", made, "--code", code, "--side", "left", "--yes")

    def ask(self, *args: str | Path) -> dict[str, Any]:
        """Runs a command of the patient's program."""
        command = [programs.BIN_DIR / "sendaluna", *args, "--json", "--data", self.data, "--key-in-file"]
        done = subprocess.run(
            command,
            env=self.env,
            capture_output=True,
            text=True,
            check=False,
            timeout=programs.ANSWERS_WITHIN_S,
        )
        if done.returncode != 0:
            raise SystemExit(f"sendaluna {args}: {done.stdout}{done.stderr}")
        answer: dict[str, Any] = json.loads(done.stdout)
        return answer

    def calendar(self, lang: str = "en") -> str:
        """The file, as it lies there."""
        out = self.data / "times.ics"
        self.ask("calendar", "--out", out, "--lang", lang)
        return out.read_bytes().decode()

    def front(self) -> dict[str, Any]:
        """What the reminder program is told."""
        front: dict[str, Any] = json.loads((self.data / "reminders" / "front.json").read_text(encoding="utf-8"))
        return front

    def made(self) -> Made:
        """What is made of the plan, and then with one chosen time of day."""
        first, front = self.calendar(), self.front()
        second = self.calendar()
        self.ask("reminders", "--times", "10:15")
        return Made(self.zone, first, second, self.calendar(), front, self.front())


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


def by_expansion(calendar: icalendar.Calendar, slots: list[datetime.datetime]) -> list[datetime.datetime]:
    """Every start, by recurring_ical_events, from long before the slots to long after."""
    margin = datetime.timedelta(days=200)
    events = recurring_ical_events.of(calendar).between(slots[0] - margin, slots[-1] + margin)
    live = [event for event in events if event.get("STATUS") != "CANCELLED"]
    return sorted(event["DTSTART"].dt.astimezone(datetime.UTC) for event in live)


def check_made(tally: Tally, name: str, made: Made) -> None:
    """One zone: form, times, a second file, a moved time, a time that is gone."""
    check_form(tally, name, made.first)
    calendar = icalendar.Calendar.from_ical(made.first)
    slots = made.slots()
    tally.check(f"{name}: only {len(slots)} slots", len(slots) > 100)
    tally.check(f"{name}: recurring_ical_events gives other times", by_expansion(calendar, slots) == slots)
    tally.check(f"{name}: dateutil gives other times", by_rules(calendar, made.zone) == slots)
    zones = {str(zone["TZID"]) for zone in calendar.walk("VTIMEZONE")}
    tally.check(f"{name}: zones {zones}", zones == {made.zone})
    check_offsets(tally, calendar, name, made)

    again = icalendar.Calendar.from_ical(made.second)
    tally.check(f"{name}: a second file has other events", uids(again) == uids(calendar))
    sequence = {int(event["SEQUENCE"]) for event in again.walk("VEVENT")}
    tally.check(f"{name}: sequence {sequence}", sequence == {1})

    check_form(tally, name, made.third)
    fewer = icalendar.Calendar.from_ical(made.third)
    tally.check(f"{name}: other times after a change", by_expansion(fewer, slots) == made.slots_after())
    gone = {str(e["UID"]) for e in fewer.walk("VEVENT") if e.get("STATUS") == "CANCELLED"}
    live = uids(fewer) - gone
    tally.check(f"{name}: a moved time has another name", live <= uids(calendar))
    tally.check(f"{name}: what is gone is not cancelled", gone == uids(calendar) - live)


def uids(calendar: icalendar.Calendar) -> set[str]:
    """The names of its events."""
    return {str(event["UID"]) for event in calendar.walk("VEVENT")}


def check_offsets(tally: Tally, calendar: icalendar.Calendar, name: str, made: Made) -> None:
    """The zone as it is written out gives the offsets that the zone has."""
    zone = zoneinfo.ZoneInfo(made.zone)
    changes = []
    for part in calendar.walk("VTIMEZONE")[0].subcomponents:
        start = part.decoded("DTSTART").replace(tzinfo=None)
        before, after = part.decoded("TZOFFSETFROM"), part.decoded("TZOFFSETTO")
        changes.append(((start - before).replace(tzinfo=datetime.UTC), after))
    changes.sort()
    offsets = {slot.astimezone(zone).utcoffset() for slot in made.slots()}
    tally.check(f"{name}: a change of clocks is not written out", len(changes) >= len(offsets))
    wrong = 0
    for slot in made.slots():
        written = [after for at, after in changes if at <= slot]
        wrong += not written or written[-1] != slot.astimezone(zone).utcoffset()
    tally.check(f"{name}: {wrong} offsets differ from the zone's", wrong == 0)


def check_clock_changes(tally: Tally) -> None:
    """A plan of our choice, over a change of clocks, with time as an argument."""
    command = [programs.BIN_DIR / "calendar", *ZONES]
    done = subprocess.run(command, env=programs.ENV, capture_output=True, text=True, check=True)
    for line in done.stdout.splitlines():
        made = Made(**json.loads(line))
        check_made(tally, f"{made.zone}, spring", made)
        offsets = {slot.astimezone(zoneinfo.ZoneInfo(made.zone)).utcoffset() for slot in made.slots()}
        tally.check(f"{made.zone}: the plan goes over a change", len(offsets) > 1 or made.zone not in CHANGES)


def check_programs(tally: Tally) -> None:
    """The demo's plan in the patient's program, today, and its titles in every language."""
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        source = folder / "hip"
        source.mkdir()
        plan = programs.sign_demo("hip", source, days_ago=20)
        code = programs.clinic_does("letter-code", "--signers", "signers.jws", "--json", folder=source)
        for zone in ZONES:
            patient = Patient(folder, plan, code.json["letter_code"], zone)
            check_made(tally, f"{zone}, today", patient.made())
        for lang in LANGUAGES:
            check_form(tally, lang, patient.calendar(lang))


def main() -> None:
    tally = Tally()
    check_clock_changes(tally)
    check_programs(tally)
    tally.finish()


if __name__ == "__main__":
    main()
