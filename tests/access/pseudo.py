"""A language that nobody speaks, made from English: accents, longer by two fifths, in brackets.

What a page shows without them was not said by a message. What a variable brings in stays as it is.
"""

import json
import subprocess
from pathlib import Path

from fluent.syntax import FluentParser, FluentSerializer, ast

ROOT = Path(__file__).resolve().parents[2]
ENGLISH = ROOT / "locales" / "en"
LONGER = 0.4
# How the language is called, and how it is written: not words, but facts of the real one.
FACTS = ("language-",)
LETTERS = str.maketrans(
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz",
    "ÅƁÇÐÉƑĜĤÎĴĶĻṀÑÖÞǪŔŠŢÛṼŴẊÝŽåƀçðéƒĝĥîĵķļɱñöþǫŕšţûṽŵẋýž",
)
PARSED = """
    import { FluentResource } from '@fluent/bundle';
    let text = '';
    for await (const part of process.stdin) text += part;
    console.log(JSON.stringify(new FluentResource(text).body));
"""


def accented(text: str) -> str:
    """The same letters, none of them plain."""
    return text.translate(LETTERS)


def lengthened(pattern: ast.Pattern) -> None:
    """Accents in every text, and two fifths more at the end."""
    length = 0
    for element in pattern.elements:
        if isinstance(element, ast.TextElement):
            length += len(element.value.strip())
            element.value = accented(element.value)
        elif isinstance(element.expression, ast.SelectExpression):
            for variant in element.expression.variants:
                lengthened(variant.value)
    more = "·" * round(length * LONGER)
    if more:
        pattern.elements.append(ast.TextElement(" " + " ".join(more[at : at + 6] for at in range(0, len(more), 6))))


def made() -> str:
    """The whole language, as one file."""
    found = []
    for file in sorted(ENGLISH.glob("*.ftl")):
        resource = FluentParser().parse(file.read_text(encoding="utf-8"))
        for entry in resource.body:
            is_words = isinstance(entry, ast.Message) and not entry.id.name.startswith(FACTS)
            if is_words and isinstance(entry, ast.Message) and entry.value is not None:
                lengthened(entry.value)
                # A bracket at the start of a line would begin a variant: it is written as a literal.
                bracket = [ast.Placeable(ast.StringLiteral(sign)) for sign in "[]"]
                entry.value.elements = [bracket[0], *entry.value.elements, bracket[1]]
        found.append(FluentSerializer().serialize(resource))
    return "\n".join(found)


def parsed(text: str) -> list[object]:
    """As the page has its messages."""
    command = ["node", "--input-type=module", "--eval", PARSED]
    done = subprocess.run(command, cwd=ROOT / "ui", input=text, capture_output=True, text=True, check=True)
    body: list[object] = json.loads(done.stdout)
    return body
