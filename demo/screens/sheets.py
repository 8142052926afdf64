"""Contact sheets of every page of the window, and the README's pictures. Fails if a page is not right."""

import argparse
import itertools
import shutil
import subprocess
import tempfile
import time
from pathlib import Path

from camera import PAGES, SIZES, Camera, Look
from driver import DEMO, LANGUAGES, OUT, PLANS
from later import sign_quick
from tour import Tour

SHEETS = OUT / "sheets"
PICTURES = DEMO / "pictures"
LOOKS = [Look(*look) for look in itertools.product(("light", "dark"), LANGUAGES, (100, 200))]
# How wide a page is on a sheet, and how many stand beside and under each other.
THUMBS = {"phone": (280, "5x2"), "desktop": (500, "3x3")}
# So much of a long page stands on a sheet in one piece.
PIECES = {"phone": (1280, "6x1"), "desktop": (1600, "3x1")}
# What the README shows: a size, a paper, and the pages in it.
README = (
    ("phone", "light", ("day", "moving", "not-yet", "hurts-level", "stop-ring-today")),
    ("phone", "dark", ("moving",)),
    ("desktop", "light", ("day",)),
)
README_COLOURS = "32"
EDGE = "#857661"


def magick(*words: str | Path) -> None:
    """Runs one of ImageMagick's programs."""
    subprocess.run(list(map(str, words)), check=True)


def pass_through(look: Look, sizes: list[str], folder: Path, only: set[str]) -> list[str]:
    """Goes through every page in one look; gives what is wrong."""
    began = time.monotonic()
    camera = Camera(look, sizes, folder, only)
    # Short, for the sockets in it.
    with tempfile.TemporaryDirectory(prefix="sheets-") as place:
        tour = Tour(camera, PLANS, Path(place))
        tour.go()
    print(f"{look.name('+'.join(sizes))}: {len(camera.taken)} pages in {time.monotonic() - began:.0f} s", flush=True)
    return tour.failed + camera.wrong


def lay_out(folder: Path) -> None:
    """The sheets of a folder: the pages as they are seen, then the long ones whole, in pieces."""
    size = folder.name.split("-", maxsplit=1)[0]
    width, tile = THUMBS[size]
    height, tile_whole = PIECES[size]
    for old in folder.parent.glob(f"{folder.name}-*.png"):
        old.unlink()
    pictures = sorted(folder.glob("*.png"))
    seen = [picture for picture in pictures if not picture.stem.endswith("-whole")]
    montage(seen, folder.parent / f"{folder.name}-%02d.png", tile, width)
    with tempfile.TemporaryDirectory(prefix="pieces-") as place:
        for picture in pictures:
            if picture not in seen:
                pieces = Path(place) / f"{picture.stem}-%02d.png"
                magick("convert", picture, "-crop", f"x{height}", "+repage", pieces)
        montage(sorted(Path(place).glob("*.png")), folder.parent / f"{folder.name}-whole-%02d.png", tile_whole, width)


def montage(pictures: list[Path], out: Path, tile: str, width: int) -> None:
    """One sheet or several, each picture with its name."""
    if not pictures:
        return
    labelled = itertools.chain.from_iterable(("-label", picture.stem, picture) for picture in pictures)
    magick(
        "montage", *labelled, "-tile", tile, "-geometry", f"{width}x+6+6", "-gravity", "north",
        "-background", "#bbbbbb", "-pointsize", "15", out,
    )  # fmt: skip


def sheets(only: str, hand: str) -> list[str]:
    """Every look whose name is asked for; of several hands, each takes its share."""
    wrong = []
    number, _, hands = hand.partition("/")
    for look in LOOKS[int(number) :: int(hands)]:
        sizes = [size for size in SIZES if only in look.name(size)]
        if not sizes:
            continue
        for size in sizes:
            shutil.rmtree(SHEETS / look.name(size), ignore_errors=True)
        wrong += pass_through(look, sizes, SHEETS, set())
        for size in sizes:
            if (SHEETS / look.name(size)).is_dir():
                lay_out(SHEETS / look.name(size))
    return wrong


def readme() -> list[str]:
    """The README's pictures, in a thin frame and few colours."""
    wrong = []
    PICTURES.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(prefix="readme-") as place:
        for theme in ("light", "dark"):
            wanted = [(size, pages) for size, paper, pages in README if paper == theme]
            look = Look(theme, "en", 100)
            only = set(itertools.chain.from_iterable(pages for _, pages in wanted))
            wrong += pass_through(look, [size for size, _ in wanted], Path(place), only)
            for size, pages in wanted:
                for page in pages:
                    taken = Path(place) / look.name(size) / f"{PAGES.index(page) + 1:02}-{page}.png"
                    suffix = "" if (size, theme) == ("phone", "light") else f"-{size if theme == 'light' else theme}"
                    frame(taken, PICTURES / f"{page}{suffix}.png")
    return wrong


def frame(taken: Path, out: Path) -> None:
    """One picture as the README shows it."""
    magick(
        "convert", taken, "-strip", "-bordercolor", EDGE, "-border", "1", "+dither",
        "-colors", README_COLOURS, "-define", "png:compression-level=9", f"PNG8:{out}",
    )  # fmt: skip
    print(f"{out.relative_to(DEMO.parent)}: {out.stat().st_size // 1024} KiB")


def main() -> None:
    """Makes what is asked for, and says what is wrong."""
    parser = argparse.ArgumentParser(description="Contact sheets of every page of the window.", prog="demo/sheets")
    parser.add_argument("--only", default="", metavar="PART", help="only what has this in its name")
    parser.add_argument("--readme", action="store_true", help="the README's pictures instead")
    parser.add_argument("--prepare", action="store_true", help="what all hands need, and nothing else")
    parser.add_argument("--hand", default="0/1", metavar="N/M", help="of M hands that share the work, number N")
    args = parser.parse_args()
    SHEETS.mkdir(parents=True, exist_ok=True)
    if args.prepare:
        for old in SHEETS.glob("failed-*.png"):
            old.unlink()
        sign_quick()
        return
    wrong = readme() if args.readme else sheets(args.only, args.hand)
    for line in wrong:
        print(line)
    raise SystemExit(1 if wrong else 0)


if __name__ == "__main__":
    main()
