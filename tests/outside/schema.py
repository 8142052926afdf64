"""The JSON Schemas of the sources, read by an outside validator.

Outside: PyPI jsonschema, draft 2020-12 (JSON Schema Core and Validation, June 2022), with Python's
own TOML reader (TOML 1.0).

1. The three schemas are schemas, and every source of the demo keeps its own.
2. A source that was changed for the worse does not: an unknown field in every table, a needed field
   left out of every table, another word in every choice, a number just outside its bounds. The
   bounds come from the table that the clinic's program prints, not from the schema.
3. Schema and program agree: what breaks the schema, the program refuses too.

Of fields that are written alike, the first of each source is changed.
"""

import copy
import datetime
import json
import tempfile
import tomllib
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

from jsonschema import Draft202012Validator, FormatChecker

from kit.programs import clinic, clinic_does, demo_sources, fill, sign_demo
from kit.tally import Tally

KINDS = ("plan", "signers", "precautions")
# Names of fields whose bound has another name in the table of bounds.
ALIASES = {
    "week": ("from_week", "through_week", "every_weeks", "not_before_end_of_week"),
    "deg": ("most_deg", "over_deg"),
    "nm_per_kg": ("most_nm_per_kg",),
    "after_days": ("ring_after_days",),
    "sessions": ("up_after_sessions",),
    "effort": ("up_effort_at_most",),
    "repetitions": ("least", "most"),
    "pain": (
        "rest_stop_today_at",
        "slow_at",
        "easier_at",
        "stop_exercise_at",
        "stop_today_at",
        "rise_stop_exercise",
        "next_morning_rise",
        "up_pain_at_most",
        "down_pain_over",
    ),
}
# Fields that hold one word of a closed list.
CHOICES = {"kind", "side", "joint", "motion", "term", "not", "care", "tier", "only", "rights", "rule"}
IDS = {"id", "person", "episode", "movement", "item", "family"}
DATES = {"date", "day", "last_day", "review_by", "from", "not_before"}
# Fields of a source's top level that cannot be left out.
NEEDED = {"person", "number", "clinic", "signers", "format", "head", "stages", "items", "pain"}
NEEDED |= {"warning_signs", "return_dose"}

Place = tuple[str | int, ...]


def kind_of(source: Path) -> str:
    """What a demo source is a source of, by its name."""
    return "precautions" if source.stem == "lift" else source.stem.partition("-")[0]


def read(source: Path) -> Any:
    """A source as JSON; TOML's dates become text, as the program takes them."""
    return dates_as_text(tomllib.loads(source.read_text(encoding="utf-8")))


def dates_as_text(value: Any) -> Any:
    if isinstance(value, datetime.date | datetime.time):
        return value.isoformat()
    if isinstance(value, dict):
        return {name: dates_as_text(member) for name, member in value.items()}
    return [dates_as_text(member) for member in value] if isinstance(value, list) else value


def bounds() -> dict[str, tuple[float, float]]:
    """Least and most of every field with bounds, from the program's table."""
    rows = clinic_does("schema", "--table").text.strip().splitlines()[2:]
    cells = [[cell.strip(" `") for cell in row.strip("|").split("|")] for row in rows]
    table = {name: (float(least), float(most)) for name, _, least, most, _ in cells}
    aliases = {field: table[name] for name, fields in ALIASES.items() for field in fields}
    return table | aliases


def places(value: Any, place: Place = ()) -> Iterator[tuple[Place, Any]]:
    """Every value in a source with its place."""
    yield place, value
    if isinstance(value, dict):
        for name, member in value.items():
            yield from places(member, (*place, name))
    elif isinstance(value, list):
        for i, member in enumerate(value):
            yield from places(member, (*place, i))


def with_value(source: Any, place: Place, value: Any) -> Any:
    """The source with another value in one place."""
    if not place:
        return value
    changed = copy.deepcopy(source)
    at = changed
    for step in place[:-1]:
        at = at[step]
    at[place[-1]] = value
    return changed


def spoilt(source: Any, table: dict[str, tuple[float, float]]) -> Iterator[tuple[str, Any]]:
    """The source changed for the worse, in one place each time."""
    seen = set()
    for place, value in places(source):
        steps = tuple(step for step in place if isinstance(step, str))
        name = steps[-1] if steps else ""
        alike = (steps, tuple(value) if isinstance(value, dict) else type(value), kind_at(source, place))
        if alike in seen:
            continue
        seen.add(alike)
        for change, worse in changes(name, value, table):
            yield f"{change} {'.'.join(map(str, place)) or 'the top'}", with_value(source, place, worse)
    for name in sorted(NEEDED & source.keys()):
        others = {field: member for field, member in source.items() if field != name}
        yield f"no {name}", others


def kind_at(source: Any, place: Place) -> str:
    """The kind of the table that holds a field, if it says one."""
    at, kind = source, ""
    for step in place:
        kind = str(at.get("kind", "")) if isinstance(at, dict) else kind
        at = at[step]
    return kind


def changes(name: str, value: Any, table: dict[str, tuple[float, float]]) -> Iterator[tuple[str, Any]]:
    """What a field may not be."""
    if isinstance(value, dict):
        yield "an unknown field in", {**value, "unknown_field": 1}
        if "kind" in value:
            yield "no kind in", {field: member for field, member in value.items() if field != "kind"}
    elif isinstance(value, bool):
        yield "a text for", "yes"
    elif isinstance(value, int | float):
        yield "a text for", str(value)
        if name in table:
            least, most = table[name]
            step = 1 if isinstance(value, int) else 0.01
            yield "too little for", type(value)(least - step)
            yield "too much for", type(value)(most + step)
    elif isinstance(value, str):
        yield "a number for", 7
        if name in CHOICES:
            yield "an unknown word for", "nonsense"
        elif name in IDS:
            yield "a capital letter in", value.upper()
        elif name in DATES:
            yield "no such day for", "2026-02-30"


def sources_keep_their_schema(tally: Tally, folder: Path) -> None:
    """Every demo source, as it is and changed for the worse."""
    table = bounds()
    for kind in KINDS:
        schema = clinic_does("schema", kind).json
        Draft202012Validator.check_schema(schema)
        tally.same(f"{kind}: draft 2020-12", schema.get("$schema"), Draft202012Validator.META_SCHEMA["$id"])
        validator = Draft202012Validator(schema, format_checker=FormatChecker(["date"]))
        for source in (source for source in demo_sources() if kind_of(source) == kind):
            filled = folder / "filled.toml"
            fill(source, filled, 45)
            value = read(filled)
            name = f"{source.parent.name}/{source.name}"
            tally.same(f"{name} keeps its schema", [e.message for e in validator.iter_errors(value)], [])
            for change, worse in spoilt(value, table):
                tally.check(f"{name} with {change} breaks its schema", not validator.is_valid(worse), "valid")


def toml(value: Any) -> str:
    """A value in TOML; JSON's texts and numbers are TOML's too."""
    if isinstance(value, dict):
        return "{" + ", ".join(f"{json.dumps(name)} = {toml(member)}" for name, member in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(map(toml, value)) + "]"
    return json.dumps(value, ensure_ascii=False)


def program_agrees(tally: Tally, folder: Path) -> None:
    """The program refuses what breaks the schema, and takes what was written again unchanged."""
    sign_demo("hip", folder, 45)
    ground = ("--signers", "signers.jws", "--precautions", "precautions.jws")
    table = bounds()

    def taken(kind: str, number: int, source: Any) -> bool:
        changed = folder / f"{kind}-{number}.toml"
        lines = [f"{json.dumps(name)} = {toml(member)}\n" for name, member in source.items()]
        changed.write_text("".join(lines), encoding="utf-8")
        command: tuple[str | Path, ...] = {
            "plan": ("plan", "check", changed, *ground),
            "precautions": ("precautions", "sign", changed, *ground[:2], "--key", "surgeon.key"),
            "signers": ("signers", "sign", changed, "--key", "clinic.key"),
        }[kind]
        out = () if kind == "plan" else ("--out", f"{kind}-{number}.jws")
        return clinic(*command, *out, folder=folder).exit_code == 0

    for kind in KINDS:
        source = read(folder / f"{kind}.toml")
        tally.check(f"{kind} is taken", taken(kind, 0, source))
        names, worse = zip(*spoilt(source, table), strict=True)
        with ThreadPoolExecutor() as pool:
            answers = list(pool.map(taken, [kind] * len(worse), range(1, len(worse) + 1), worse))
        for name, answer in zip(names, answers, strict=True):
            tally.check(f"{kind} with {name} is refused by the program", not answer, "taken")


def main() -> None:
    tally = Tally()
    with tempfile.TemporaryDirectory() as temp:
        sources_keep_their_schema(tally, Path(temp))
        program_agrees(tally, Path(temp))
    tally.finish()


if __name__ == "__main__":
    main()
