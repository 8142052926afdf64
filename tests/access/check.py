"""Goes through every page of the window in every language, and holds it against axe and against loss.

    check.py            in pairs
    check.py --all      in every paper, text size and width
    check.py --lang ar  one language, and no other

Reads every page in a language that nobody speaks, too: what is English there was left in code.
"""

import argparse
import concurrent.futures
import json
import subprocess
import sys
import tempfile
import time
from functools import partial
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "demo" / "screens"))

import driver  # noqa: E402
import later  # noqa: E402
import pseudo  # noqa: E402
import words  # noqa: E402
import world  # noqa: E402
from camera import PAGES, Look  # noqa: E402
from driver import LANGUAGES, PLANS  # noqa: E402
from finder import Finder, in_terminal  # noqa: E402
from inspector import Inspector  # noqa: E402
from tour import Tour  # noqa: E402
from views import ALL, chosen, unmet  # noqa: E402

# Nobody speaks it; it stands in the place of English.
PSEUDO = "pseudo"
UNREAD = {"problem"}
# So many windows at a time: most of the way through is waiting for a count.
WINDOWS = 8
# The parts of the way that one window's process goes, the longest first.
WAYS = (
    ("home_tests", "reminded"),
    ("exercise", "effort"),
    ("other_knee", "steps"),
    ("arrive", "look_around", "stop", "held"),
)


def walk(lang: str, way: int, every: bool, only: set[str]) -> dict[str, Any]:
    """Every page of one way in one language."""
    pairs = partial(chosen, lang=LANGUAGES.index(lang))
    shots = ROOT / "target" / "access"
    shots.mkdir(parents=True, exist_ok=True)
    inspector = Inspector(
        Look("light", lang, 100), ["phone"], shots, only, views=(lambda _: ALL) if every else pairs, few=pairs
    )
    driver.steady_hand()
    with tempfile.TemporaryDirectory(prefix="access-") as place:
        tour = Tour(inspector, PLANS, Path(place))
        tour.go(WAYS[way])
    return {"screens": sorted(inspector.taken), "runs": inspector.runs, "wrong": tour.failed + inspector.wrong}


def read(way: int) -> dict[str, Any]:
    """Every page of one way in a language that nobody speaks."""
    # Its page cannot be written anew: the record it would be said from is held by somebody else.
    parts = tuple(part for part in WAYS[way] if part != "held")
    with tempfile.TemporaryDirectory(prefix="pseudo-") as place:
        language = Path(place) / "said"
        language.mkdir()
        text = pseudo.made()
        (language / "all.ftl").write_text(text, encoding="utf-8")
        words.PLACES[PSEUDO] = language
        driver.steady_hand({"SENDALUNA_ENGLISH": str(language / "all.ftl")})
        shots = ROOT / "target" / "access"
        finder = Finder(Look("light", PSEUDO, 100), ["phone"], shots, body=pseudo.parsed(text))
        tour = Tour(finder, PLANS, Path(place))
        tour.go(parts)
        wrong = tour.failed + finder.wrong
        if "steps" in parts:
            env = world.ENV | {"SENDALUNA_ENGLISH": str(language / "all.ftl")}
            home = later.received(PLANS[0], Path(place) / "terminal")
            wrong += in_terminal(home, world.BIN_DIR / "sendaluna", env)
    return {"screens": sorted(finder.taken), "runs": finder.runs, "wrong": wrong}


def walk_apart(lang: str, way: int, every: bool, only: str) -> dict[str, Any]:
    """The same in a process of its own."""
    command = [sys.executable, __file__, "--lang", lang, "--only", only, "--way", str(way)]
    done = subprocess.run(
        [*command, *(["--all"] if every else [])], stdout=subprocess.PIPE, text=True, check=False
    )
    answer: dict[str, Any] = json.loads(done.stdout or "{}")
    return answer or {"screens": [], "runs": 0, "wrong": [f"{lang}, {WAYS[way]}: ended with {done.returncode}"]}


def main() -> None:
    """Looks, and says what was found."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--lang", default="")
    parser.add_argument("--only", default="", help="some pages, parted by commas")
    parser.add_argument("--way", type=int, help=argparse.SUPPRESS)
    args = parser.parse_args()
    only = set(filter(None, args.only.split(",")))
    if args.way is not None:
        print(json.dumps(read(args.way) if args.lang == PSEUDO else walk(args.lang, args.way, args.all, only)))
        return
    began = time.monotonic()
    later.sign_quick()
    langs = [args.lang] if args.lang else [*LANGUAGES, *([] if only else [PSEUDO])]
    with concurrent.futures.ThreadPoolExecutor(WINDOWS) as pool:
        jobs = [
            (lang, pool.submit(walk_apart, lang, way, args.all, args.only))
            for way in range(len(WAYS))
            for lang in langs
        ]
        answers = [(lang, job.result()) for lang, job in jobs]
    wrong = [line for _, answer in answers for line in answer["wrong"]]
    for lang in langs:
        reached = {page for of, answer in answers if of == lang for page in answer["screens"]}
        wanted = (only or set(PAGES)) - (UNREAD if lang == PSEUDO else set())
        wrong += [f"{lang}: never reached: {page}" for page in sorted(wanted - reached)]
    if not args.all and not args.lang and not args.only:
        wrong += [f"no page in {one} and {other}" for one, other in unmet(len(PAGES), len(LANGUAGES))]
    for line in wrong:
        print(line)
    screens = len({page for _, answer in answers for page in answer["screens"]})
    runs = sum(answer["runs"] for lang, answer in answers if lang != PSEUDO)
    pages = sum(answer["runs"] for lang, answer in answers if lang == PSEUDO)
    english = [line for lang, answer in answers if lang == PSEUDO for line in answer["wrong"]]
    spoken = [lang for lang in langs if lang != PSEUDO]
    print(
        f"axe: {screens} screens × {len(spoken)} languages × papers, text sizes and widths = {runs} runs, "
        f"{len(wrong) - len(english)} violations ({time.monotonic() - began:.0f} s)"
    )
    if pages:
        print(f"pseudo-language: {pages} pages and the terminal read, {len(english)} with English")
    looks = runs + pages
    print(f"{looks - min(looks, len(wrong))} passed, {len(wrong)} failed")
    raise SystemExit(1 if wrong or not looks else 0)


if __name__ == "__main__":
    main()
