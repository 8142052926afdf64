"""Goes through every page of the window in every language, and holds it against axe and against loss.

    check.py            in pairs
    check.py --all      in every paper, text size and width
    check.py --lang ar  one language, and no other
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
from camera import PAGES, Look  # noqa: E402
from driver import LANGUAGES, PLANS  # noqa: E402
from inspector import Inspector  # noqa: E402
from later import sign_quick  # noqa: E402
from tour import Tour  # noqa: E402
from views import ALL, chosen, unmet  # noqa: E402

# So many windows at a time: most of the way through is waiting for a count.
WINDOWS = 8
# The parts of the way that one window's process goes, the longest first.
WAYS = (("home_tests",), ("exercise", "effort"), ("other_knee", "steps"), ("arrive", "look_around", "stop", "held"))


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
        print(json.dumps(walk(args.lang, args.way, args.all, only)))
        return
    began = time.monotonic()
    sign_quick()
    langs = [args.lang] if args.lang else LANGUAGES
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
        wrong += [f"{lang}: never reached: {page}" for page in sorted((only or set(PAGES)) - reached)]
    if not args.all and not args.lang and not args.only:
        wrong += [f"no page in {one} and {other}" for one, other in unmet(len(PAGES), len(LANGUAGES))]
    for line in wrong:
        print(line)
    screens = len({page for _, answer in answers for page in answer["screens"]})
    runs = sum(answer["runs"] for _, answer in answers)
    print(
        f"axe: {screens} screens × {len(langs)} languages × papers, text sizes and widths = {runs} runs, "
        f"{len(wrong)} violations ({time.monotonic() - began:.0f} s)"
    )
    print(f"{runs - min(runs, len(wrong))} passed, {len(wrong)} failed")
    raise SystemExit(1 if wrong or not runs else 0)


if __name__ == "__main__":
    main()
