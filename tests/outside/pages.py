"""Printed pages: tagged as PDF/UA-1 asks, whole, and read again by programs that are not ours.

Outside: PyPI page-validation and pdfua, two validators of PDF/UA-1 (ISO 14289-1); Debian's qpdf for the
file and poppler for its text and its pictures; PyPI zxing-cpp for the QR codes (ISO/IEC 18004), base45
(RFC 9285) and brotli (RFC 7932) for what is in them. The sheet is held against everything that the
patient's program says of the same plan.
"""

import hashlib
import json
import re
import subprocess
import tempfile
from base64 import urlsafe_b64encode
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import base45
import brotli
import page
import zxingcpp
from PIL import Image

from kit.programs import BIN_DIR, ROOT, clinic, clinic_does, receive, run, sign_demo
from kit.tally import Tally

# What the window shows that is of today alone, or has no place on paper.
NOT_PRINTED = {"line", "date_said", "said", "times_said", "until_said", "done_said", "set_by_said", "weeks", "care"}
SIDES = {"hip": "left", "knee": "right"}


def validate(tally: Tally, name: str, file: Path) -> None:
    """Both validators agree, and the file is whole."""
    found = page.validate_pdf(file, profile="ua1")
    failures = [(one.rule_id, one.message) for one in found.failures]
    tally.check(f"{name}: page-validation", found.is_compliant and found.rules.total > 100, failures)
    checked = subprocess.run(["pdfua", "check", file], env=venv(), capture_output=True, text=True, check=False)
    tally.check(f"{name}: pdfua", checked.returncode == 0 and "PASS" in checked.stdout, checked.stdout)
    whole = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    tally.same(f"{name}: qpdf", whole.returncode, 0)


def venv() -> dict[str, str]:
    """Programs that PyPI brought."""
    return {"PATH": f"{ROOT / 'tests' / '.venv' / 'bin'}:/usr/bin:/bin"}


def spoilt(tally: Tally, good: Path, folder: Path) -> None:
    """A validator that passes anything would be no check: without its structure, a page is found."""
    bad = folder / "spoilt.pdf"
    loose = subprocess.check_output(["qpdf", "--qdf", "--object-streams=disable", good, "-"])
    bad.write_bytes(re.sub(rb"/StructTreeRoot \d+ 0 R", lambda m: b" " * len(m[0]), loose))
    tally.check("without its structure", not page.validate_pdf(bad, profile="ua1").is_compliant)
    checked = subprocess.run(["pdfua", "check", bad], env=venv(), capture_output=True, check=False)
    tally.check("without its structure, by pdfua", checked.returncode != 0)


def text(file: Path) -> str:
    """The text without white space, in the order in which it was set."""
    raw = subprocess.check_output(["pdftotext", "-raw", file, "-"], text=True, stderr=subprocess.DEVNULL)
    return squeezed(raw)


def squeezed(said: str) -> str:
    """Without white space, and without hyphens that a line ended with."""
    return re.sub(r"\s+", "", said)


def said_by(view: Any, name: str = "") -> Iterator[str]:
    """Every sentence of a view that belongs on paper."""
    if isinstance(view, dict):
        for key, value in view.items():
            yield from () if key in NOT_PRINTED else said_by(value, key)
    elif isinstance(view, list):
        for value in view:
            yield from said_by(value, name)
    elif isinstance(view, str) and " " in view:
        yield view


def check_sheet(tally: Tally, name: str, sheet: Path, patient: tuple[str | Path, ...]) -> None:
    """Everything that the patient's program says of the plan stands on the sheet."""
    printed = text(sheet)
    day = run("sendaluna", "due", "--json", *patient).json
    gates = run("sendaluna", "gates", "--json", *patient).json
    contacts = run("sendaluna", "contacts", "--json", *patient).json
    views = [gates["items"], gates["rules"], gates["lifts_ignored"], contacts, [one["text"] for one in day["care"]]]
    for said in sorted(set(said_by(views))):
        tally.check(f"{name}: on the sheet", squeezed(said) in printed, said)
    for number in (contacts["phone"], contacts["out_of_hours_phone"], contacts["emergency_phone"]):
        tally.check(f"{name}: number on the sheet", number in printed, number)
    for item in gates["items"]:
        for reason in item["gate"]["reasons"]:
            tally.check(f"{name}: who says so", squeezed(reason["said"]) in printed, reason["said"])


def check_today(tally: Tally, name: str, lang: str, folder: Path) -> None:
    """One page that both validators pass; what is due, what is not yet, and whom to ring stand on it."""
    patient = ("--lang", lang, "--data", folder / "home", "--key-in-file")
    page_of_day = folder / f"today-{lang}.pdf"
    run("sendaluna", "today", "--out", page_of_day, *patient)
    validate(tally, f"{name} today-{lang}", page_of_day)
    info = subprocess.check_output(["pdfinfo", page_of_day], text=True)
    tally.same(f"{name} today-{lang}: one page", re.search(r"^Pages: +(\d+)$", info, re.MULTILINE)[1], "1")
    sizes = {float(size) for size in re.findall(r'<fontspec[^>]* size="([\d.]+)"', as_xml(page_of_day))}
    tally.check(f"{name} today-{lang}: nothing under 9 pt", bool(sizes) and min(sizes) >= 9, sizes)
    printed = text(page_of_day)
    day = run("sendaluna", "due", "--json", *patient).json
    contacts = day["contacts"]
    numbers = [contacts[one] for one in ("phone", "out_of_hours_phone", "emergency_phone")]
    said = [day["date_said"][1:], *numbers]
    # What a stage has, but not on this day, stays off the page.
    due = [item for item in day["due"] if item["times"] > 0 or item["can_start"]]
    said += [item["name"] for item in [*due, *day["not_yet"]]]
    said += [sign["text"] for sign in contacts["signs"] if sign["tier"] != "note"]
    if lang != "ar":
        said += [item["side"] for item in due]
    else:
        # Right to left, poppler gives words in the order in which they stand: figures are enough.
        said = numbers
    for one in said:
        tally.check(f"{name} today-{lang}: on the page", squeezed(one) in printed, one)


def as_xml(file: Path) -> str:
    """Every size of print, by poppler, without its pictures."""
    command = ["pdftohtml", "-xml", "-i", "-zoom", "1", "-stdout", file]
    return subprocess.check_output(command, text=True, stderr=subprocess.DEVNULL)


def check_letter(tally: Tally, letter: Path, plan: Path, code: str, folder: Path) -> None:
    """The codes on paper, photographed as it were, hold the plan file and never the letter code."""
    subprocess.run(["pdftoppm", "-r", "120", "-png", letter, folder / "letter"], check=True, stderr=subprocess.DEVNULL)
    found = [
        one.text for png in sorted(folder.glob("letter-*.png")) for one in zxingcpp.read_barcodes(Image.open(png))
    ]
    heads = [re.fullmatch(r"SENDALUNA1:([0-9A-F]{20}):(\d+):(\d+):(.*)", one, re.DOTALL) for one in found]
    tally.check("every code is ours", bool(heads) and all(heads), found[:1])
    pieces = {int(head[2]): head[4] for head in heads if head}
    tally.same("every code is read", sorted(pieces), list(range(1, int(heads[0][3]) + 1)) if heads[0] else [])
    plain = brotli.decompress(b"".join(base45.b45decode(pieces[n]) for n in sorted(pieces)))
    parts = [".".join(three) for three in zip(*[iter(segments(plain))] * 3, strict=True)]
    whole = {"sendaluna": 1, "signers": parts[0], "precautions": parts[1:-1], "plan": parts[-1]}
    again = json.dumps(whole, separators=(",", ":")).encode()
    tally.same("the plan file, to the byte", again, plan.read_bytes())
    tally.same("its digest", {head[1] for head in heads if head}, {hashlib.sha256(again).hexdigest()[:20].upper()})
    photos = []
    for png in sorted(folder.glob("letter-*.png")):
        photo = png.with_suffix(".jpg")
        tilted = Image.open(png).convert("RGB").rotate(2, expand=True, fillcolor=(230, 228, 220))
        tilted.save(photo, quality=80)
        photos.append(photo)
    given = ("--code", code, "--side", SIDES[letter.parent.name], "--yes", "--json", "--key-in-file")
    taken = run("sendaluna", "receive", *photos, *given, "--data", folder / "from-photos")
    tally.check("tilted photos of the letter are taken in", taken.json.get("received") is True, taken.text)
    bare = code.replace("-", "")
    tally.check("the letter code stands on the letter", squeezed(code.replace("-", " ")) in text(letter), code)
    held = plain + "".join(found).encode()
    tally.check("and in no code", bare.encode() not in held and code.encode() not in held)


def segments(plain: bytes) -> Iterator[str]:
    """The segments of every part, each with its length before it."""
    while plain:
        length = int.from_bytes(plain[:4], "little")
        yield urlsafe_b64encode(plain[4 : 4 + length]).rstrip(b"=").decode()
        plain = plain[4 + length :]


def check_demo(tally: Tally, name: str, days_ago: int, side: str, folder: Path) -> None:
    """One demo's plan, printed in every way, and its patient's report."""
    plan = sign_demo(name, folder, days_ago)
    code = clinic("letter-code", "--signers", "signers.jws", folder=folder).text.strip()
    receive(plan, folder / "home", code, side)
    for lang in ("en", "es"):
        patient = ("--lang", lang, "--data", folder / "home", "--key-in-file")
        for what, size in (("sheet", ()), ("sheet", ("--large",)), ("letter", ())):
            file = folder / f"{what}-{lang}{''.join(size)}.pdf"
            clinic_does(what, plan, "--in", lang, *size, "--out", file, folder=folder)
            validate(tally, f"{name} {file.stem}", file)
        check_sheet(tally, f"{name} {lang}", folder / f"sheet-{lang}.pdf", patient)
        run("sendaluna", "did", "long-arc-quad", "--sets", "1", "--each", "10", *patient)
        run("sendaluna", "hand-back", "--out", folder / lang, "--ask", "Why? <b>&", *patient)
        validate(tally, f"{name} report-{lang}", folder / lang / "report.pdf")
        tally.check(f"{name}: the question", "Why?<b>&" in text(folder / lang / "report.pdf"))
    for lang in ("en", "es", "ar"):
        check_today(tally, name, lang, folder)
    check_again(tally, name, folder)
    home = folder / "home.pdf"
    run("sendaluna", "sheet", "--out", home, "--lang", "en", "--data", folder / "home", "--key-in-file")
    at_home, stands = re.subn(r"–Todayyouareatstep\d+of\d+\.", "", text(home))
    tally.same(f"{name}: the same sheet at home", at_home, text(folder / "sheet-en.pdf"))
    tally.check(f"{name}: and where doses stand", stands > 0, at_home[:80])
    check_letter(tally, folder / "letter-en.pdf", plan, code, folder)


def check_again(tally: Tally, name: str, folder: Path) -> None:
    """From the sealed file alone the clinic prints the very pages of the patient, but for what it checked."""
    again = folder / "again.pdf"
    given = ("--key", "reports.key", "--signers", "signers.jws", "--pdf", again, "--in", "en")
    clinic_does("report", "open", folder / "en" / "report.sealed", *given, folder=folder)
    validate(tally, f"{name} again", again)
    home, there = (
        re.sub(r"Whatwaschecked.*?Whatthefiguresmean", "", text(file))
        for file in (folder / "en" / "report.pdf", again)
    )
    tally.same(f"{name}: every figure of the patient's pages, from the sealed file", there, home)
    tally.check(f"{name}: it says that it was checked", "everyfigurehold" in text(again))


def main() -> None:
    """Prints what both demos print, and a page set right to left."""
    tally = Tally()
    with tempfile.TemporaryDirectory() as place:
        for name, days_ago in (("hip", 45), ("knee", 17)):
            folder = Path(place) / name
            folder.mkdir()
            check_demo(tally, name, days_ago, SIDES[name], folder)
        spoilt(tally, Path(place) / "hip" / "letter-en.pdf", Path(place))
        mirrored = Path(place) / "right-to-left.pdf"
        texts = ROOT / "tests" / "outside" / "right-to-left" / "letter.ftl"
        subprocess.run([BIN_DIR / "letter", "ar", texts, mirrored], check=True)
        validate(tally, "right to left", mirrored)
    tally.finish()


if __name__ == "__main__":
    main()
