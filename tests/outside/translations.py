"""Every language is whole.

Outside: PyPI fluent.syntax (the Fluent syntax 1.0 parser of the format's authors) and PyPI
compare-locales (their completeness check). compare-locales ends well even with messages missing, so
its summary is what counts; that it would tell is tried on a copy with a message taken out.

English is the source. Every other language has the same files with the same messages in the same
order, and each message the same variables; nothing is unreadable, empty, or there twice.
"""

import json
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from kit.programs import ROOT
from kit.tally import Tally

SOURCE = "en"
# What may not be counted in a summary of compare-locales.
FAULTS = ("missing", "missingInFiles", "obsolete", "errors", "warnings", "report")


class Variables(Visitor):
    """Collects the variables of a message, its attributes included."""

    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: ast.VariableReference) -> None:
        self.names.add(node.id.name)


class Patterns(Visitor):
    """Collects every pattern of a message: its text, its attributes', and each variant's."""

    def __init__(self) -> None:
        self.found: list[ast.Pattern] = []

    def visit_Pattern(self, node: ast.Pattern) -> None:
        self.found.append(node)
        self.generic_visit(node)


Message = ast.Message | ast.Term


def parse(file: Path) -> list[ast.EntryType]:
    """The entries of a file."""
    return FluentParser().parse(file.read_text(encoding="utf-8")).body


def messages(entries: list[ast.EntryType]) -> list[Message]:
    """The messages and terms among entries."""
    return [entry for entry in entries if isinstance(entry, Message)]


def name_of(message: Message) -> str:
    """Its id; a term's with its dash."""
    return f"-{message.id.name}" if isinstance(message, ast.Term) else message.id.name


def variables(message: Message) -> set[str]:
    """The variables that a message is given."""
    collected = Variables()
    collected.visit(message)
    return collected.names


def is_empty(pattern: ast.Pattern) -> bool:
    """Whether a pattern says nothing: no variable, no term, no letter."""
    for element in pattern.elements:
        if isinstance(element, ast.TextElement) and element.value.strip():
            return False
        if isinstance(element, ast.Placeable):
            inner = element.expression
            if not isinstance(inner, ast.StringLiteral) or inner.parse()["value"].strip():
                return False
    return True


def empty(message: Message) -> bool:
    """Whether a message, one of its attributes or variants says nothing."""
    collected = Patterns()
    collected.visit(message)
    return message.value is None or any(is_empty(pattern) for pattern in collected.found)


def names(folder: Path) -> list[str]:
    """The files of a language."""
    return sorted(file.relative_to(folder).as_posix() for file in folder.rglob("*") if file.is_file())


def well_formed(tally: Tally, folder: Path) -> None:
    """One language in itself."""
    found: list[str] = []
    for name in names(folder):
        entries = parse(folder / name)
        junk = [entry.content for entry in entries if isinstance(entry, ast.Junk)]
        tally.same(f"{folder.name}/{name}: all readable", junk, [])
        for message in messages(entries):
            found.append(name_of(message))
            tally.check(f"{folder.name}/{name}: {found[-1]} says something", not empty(message))
    twice = sorted({name for name in found if found.count(name) > 1})
    tally.same(f"{folder.name}: no message twice", twice, [])


def same_as_source(tally: Tally, source: Path, folder: Path) -> None:
    """One language beside the source."""
    tally.same(f"{folder.name}: files", names(folder), names(source))
    for name in names(source):
        theirs = messages(parse(folder / name)) if (folder / name).is_file() else []
        ours = messages(parse(source / name))
        tally.same(f"{folder.name}/{name}: messages in order", [*map(name_of, theirs)], [*map(name_of, ours)])
        by_name = {name_of(message): message for message in theirs}
        for message in ours:
            other = by_name.get(name_of(message))
            seen = (variables(other), attributes(other)) if other else None
            wanted = (variables(message), attributes(message))
            tally.same(f"{folder.name}/{name}: {name_of(message)}: variables", seen, wanted)


def attributes(message: Message) -> list[str]:
    """The names of a message's attributes."""
    return [attribute.id.name for attribute in message.attributes]


def compare_locales(locales: Path, languages: list[str]) -> dict[str, dict[str, int]]:
    """The summary of compare-locales, by language."""
    with tempfile.TemporaryDirectory() as temp:
        config = Path(temp) / "l10n.toml"
        config.write_text(
            f"""basepath = {json.dumps(str(locales))}
locales = {json.dumps(languages)}
[[paths]]
  reference = "{SOURCE}/**"
  l10n = "{{l10n_base}}/{{locale}}/**"
""",
            encoding="utf-8",
        )
        program = Path(sys.executable).with_name("compare-locales")
        command: list[str | Path] = [program, "--json", "-", config, locales]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
    answer: list[dict[str, Any]] = json.loads(done.stdout or "[{}]")
    summary: dict[str, dict[str, int]] = answer[0].get("summary", {})
    return summary


def faults(summary: dict[str, int]) -> dict[str, int]:
    """What is not right in a summary."""
    return {name: summary[name] for name in FAULTS if summary.get(name)}


def spoilt(text: str) -> Iterator[tuple[str, str, str]]:
    """A file spoilt in one way each: what was done, which fault must be counted, the text."""
    lines = text.splitlines(keepends=True)
    at = next(i for i, line in enumerate(lines) if " = " in line and not line.startswith((" ", "#")))
    yield "a message taken out", "missing", "".join(lines[:at] + lines[at + 1 :])
    yield "a message of its own", "obsolete", f"{text}\nnot-in-the-source = x\n"
    yield "a line that cannot be read", "errors", f"{text}\n= x\n"


def counted(tally: Tally, locales: Path, languages: list[str]) -> None:
    """compare-locales finds nothing, and would find something."""
    summaries = compare_locales(locales, languages)
    english = sum(len(messages(parse(locales / SOURCE / name))) for name in names(locales / SOURCE))
    for language in languages:
        summary = summaries.get(language, {"report": 1})
        tally.same(f"{language}: compare-locales", faults(summary), {})
        compared = sum(summary.get(kind, 0) for kind in ("changed", "unchanged", "keys"))
        tally.same(f"{language}: compare-locales saw every message", compared, english)
    with tempfile.TemporaryDirectory() as temp:
        copy = Path(temp) / "locales"
        shutil.copytree(locales, copy)
        file = copy / languages[0] / names(copy / languages[0])[0]
        for what, fault, text in spoilt(file.read_text(encoding="utf-8")):
            file.write_text(text, encoding="utf-8")
            summary = compare_locales(copy, languages[:1]).get(languages[0], {})
            tally.check(f"compare-locales tells of {what}", summary.get(fault, 0) == 1, summary)


def main() -> None:
    tally = Tally()
    locales = ROOT / "locales"
    languages = sorted(
        folder.name for folder in locales.iterdir() if folder.is_dir() and folder.name != SOURCE
    )
    tally.check("there is a language beside the source", bool(languages))
    for language in [SOURCE, *languages]:
        well_formed(tally, locales / language)
    for language in languages:
        same_as_source(tally, locales / SOURCE, locales / language)
    counted(tally, locales, languages)
    tally.finish()


if __name__ == "__main__":
    main()
