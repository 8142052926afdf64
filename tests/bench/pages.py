"""How long the report's two pages take in programs that are not ours.

Outside: PyPI weasyprint, from HTML, tagged as PDF/UA-1 asks; PyPI reportlab's platypus, which tags nothing.
Both set the same blocks, in one process, from the measures that the report's own benchmark leaves behind.
What the plan and the patient say is not among them: sentences like the demo's stand for it. As with ours,
the measures are in memory and the fonts are loaded; the blocks are made anew each time.
Prints the median of five runs, after one that is not counted.
"""

import json
import re
import statistics
import sys
import time
from datetime import date
from html import escape
from io import BytesIO
from itertools import accumulate, pairwise
from pathlib import Path
from typing import Any
from urllib.parse import quote

import reportlab
import weasyprint
from reportlab import platypus
from reportlab.graphics import shapes
from reportlab.lib.colors import HexColor
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics, ttfonts
from weasyprint.text.fonts import FontConfiguration

ROOT = Path(__file__).resolve().parents[2]
OUT = ROOT / "target" / "bench"
FONT = str(ROOT / "src-tauri" / "paper" / "fonts" / "AtkinsonHyperlegibleNext_{}.ttf")
RUNS, WEEKS, FLAGS = 5, 14, 5
INK, EDGE, RANGE, PAPER = "#241C14", "#857661", "#86827E", "#FFFFFF"
DAYS = ("days_due", "whole", "part", "stopped_as_told", "no_record")
HOW = ("counted", "not_confirmed", "remembered", "beyond", "as_needed")
PAIN = ("before", "during", "after", "next_morning", "effort")
WEEK_HEAD = "Week,Due,Whole,Part,Stopped as told,No record,Sets done,,Counted,Not confirmed,Remembered,Beyond"
ITEM_HEAD = "Exercise,Sets done,Counted,Not confirmed,Remembered,Beyond,As needed,Also"
PAIN_HEAD = "Week,At rest before,During,After,Next morning,Effort"
OWN_WORDS = ["My hip aches more since Sunday. I carried the shopping."] * 8
MESSAGES = (ROOT / "locales" / "en" / "report.ftl").read_text(encoding="utf-8")
DEFINITIONS = re.findall(r"^report-(?:page-def-\w+|caution) = (.+)$", MESSAGES, re.MULTILINE)
# Tag, size, leading, space above and below in points, and the face.
LOOK = {
    "title": ("h1", 15.75, 19, 0, 3, "700Bold"),
    "heading": ("h2", 10.8, 13, 8, 4, "700Bold"),
    "cell": ("h2", 9, 11, 3, 1, "700Bold"),
    "head": ("th", 7.9, 9, 0, 0, "700Bold"),
    "entry": ("td", 9, 9.5, 0, 0, "400Regular"),
    "body": ("p", 9, 11, 0, 1, "400Regular"),
    "small": ("p", 8.1, 9.5, 2, 1, "400Regular"),
}

Json = dict[str, Any]
# Width, height, what it shows, and paths: points from the foot up, ink, width of the stroke, filling.
Picture = tuple[float, float, str, list[tuple[list[tuple[float, float]], str, float, str | None]]]
# A look and its words, or "picture", "table", "cells" or "rule" and what they hold.
Block = tuple[str, Any]


def day(iso: str) -> str:
    return f"{date.fromisoformat(iso):%A %-d %B %Y}"


def sets(number: float) -> str:
    return f"{number:.{int(abs(number - round(number)) > 0.05)}f}" if number > 0 else "–"


def share(dose: Json) -> float:
    return sum(dose[how] for how in HOW[:3]) / dose["prescribed"] if dose["prescribed"] else 1.0


def part(dose: Json) -> str:
    of, done = dose["prescribed"], share(dose)
    return f"{sets(done * of)} of {of} ({100 * done:.0f} %)" if of else "–"


def levels(of: Json | None) -> str:
    between = f" ({of['least']}–{of['most']})" if of and of["least"] != of["most"] else ""
    return f"{of['median']:g}{between}" if of else "–"


def bar(dose: Json) -> Picture:
    """Counted is filled, not confirmed is grey, remembered is hollow."""
    ends = pairwise([0, *accumulate(48 * dose[how] / (dose["prescribed"] or 1) for how in HOW[:3])])
    boxes = [((0, 48), PAPER), *zip(ends, (INK, EDGE, PAPER), strict=True)]
    return 48, 7, part(dose), [([(a, 0), (b, 0), (b, 7), (a, 7), (a, 0)], INK, 0.4, fill) for (a, b), fill in boxes]


def chart(weeks: list[Json]) -> Picture:
    """A dot is the week's median at rest, the bar its range; a cross is the median during a session."""
    paths: list[Any] = [([(0, y), (520, y)], EDGE, 0.5, None) for y in range(5, 86, 16)]
    step, rest = 520 / len(weeks), []
    for x, week in ((step * (n + 0.5), week) for n, week in enumerate(weeks)):
        if at := week["before"]:
            y = 5 + 8 * at["median"]
            rest.append((x, y))
            paths.append(([(x, 5 + 8 * at["least"]), (x, 5 + 8 * at["most"])], RANGE, 1, None))
            paths.append(([(x - 2, y), (x, y + 2), (x + 2, y), (x, y - 2)], INK, 0.1, INK))
        if at := week["during"]:
            y = 5 + 8 * at["median"]
            paths += [([(x - 2, y - 2 * up), (x + 2, y + 2 * up)], INK, 0.9, None) for up in (1, -1)]
    said = "; ".join(f"week {week['week']}: {levels(week['before'])}" for week in weeks)
    return 520, 90, f"Pain at rest by week, 0 to 10: {said}", [*paths, (rest, INK, 1.1, None)]


def cells(held: dict[str, list[str]]) -> Block:
    return "cells", [[("cell", title), *(("body", one) for one in said)] for title, said in held.items()]


def strip(measures: Json) -> Block:
    """Eight short cells."""
    flags: dict[str, list[str]] = {"ring-today": [], "talk-about": [], "the-file": []}
    for flag in measures["flags"]:
        said = " ".join(str(value) for value in reversed(flag["rule"].values())).replace("-", " ")
        flags[flag["group"]].append(f"– {day(flag['day'])}: {said}")
    weeks, change = measures["feeling"]["weeks"][::-1], measures["feeling"]["change"] or 0
    rest, morning = (levels(next((w[at] for w in weeks if w[at]), None)) for at in ("before", "next_morning"))
    worst = min(measures["items"], key=lambda item: share(item["all"]))
    held = {
        "Ring today": flags["ring-today"][-FLAGS:],
        "The patient asks": ["May I drive again? And may I kneel in the garden?"],
        "Last seven days": [f"{date.fromisoformat(one['day']):%a} {one['mark']}" for one in measures["days"][-7:]],
        "Pain": [f"At rest, last week with answers: {rest}", f"Next morning: {morning}", f"Changed by {change:g}."],
        "Least done": [f"{worst['item']}: {part(worst['all'])}."],
        "Talk about": flags["talk-about"][-FLAGS:],
        "Not yet": ["5 exercises are held back.", f"Next to open: Straight leg lift, {day(measures['through'])}."],
        "Weight bearing": ["Put as much weight on your left leg as is comfortable."],
    }
    held["Last seven days"] = [", ".join(held["Last seven days"])]
    return cells(held)


def week_rows(measures: Json) -> list[list[str | Picture]]:
    """The last weeks after one row for those before, and the whole; without breaks too if there were any."""
    before, own = measures["weeks"][:-WEEKS], measures["weeks"][-WEEKS:]
    rows = [(str(week["week"]), week["all"]) for week in own]
    if before:
        total: Json = {key: sum(week["all"][key] for week in before) for key in DAYS}
        total["dose"] = {key: sum(week["all"]["dose"][key] for week in before) for key in own[0]["all"]["dose"]}
        rows.insert(0, (f"{before[0]['week']}–{before[-1]['week']}", total))
    rows.append(("Whole span", measures["overall"]))
    if any(one["in_break"] for one in measures["days"]):
        rows.append(("Without own breaks", measures["without_breaks"]))
    doses = [([title, *(str(of[key]) for key in DAYS)], of["dose"]) for title, of in rows]
    return [[*days, part(dose), bar(dose), *(sets(dose[how]) for how in HOW[:4])] for days, dose in doses]


def item_row(item: Json) -> list[str]:
    also = [f"Left out: {left['reason']} ({left['times']})." for left in item["left"]]
    also += [f"Done on {item['against_gate']} days while not allowed."] if item["against_gate"] else []
    ways = [sets(item["all"][how]) for how in HOW]
    return [item["item"].replace("-", " ").capitalize(), part(item["all"]), *ways, " ".join(also) or "–"]


def report(measures: Json) -> list[Block]:
    """What both set. A table is its columns in mm, which of them begin at the start, its head, its rows."""
    feeling, span = measures["feeling"], f"{day(measures['from'])} to {day(measures['through'])}"
    answered = [week for week in feeling["weeks"] if any(week[at] for at in PAIN)][-WEEKS:]
    pain = [[str(week["week"]), *(levels(week[at]) for at in PAIN)] for week in answered]
    items = [item_row(item) for item in measures["items"]]
    return [
        ("title", "Report of Anselmo"),
        ("body", f"{span}. Made on {day(measures['through'])}. Plan version 2."),
        ("rule", ""),
        strip(measures),
        ("rule", ""),
        ("heading", "Week by week"),
        ("table", ([19, 9, 12, 9, 14, 13, 29, 18, 15, 17, 20, 9], (0, 6, 7), WEEK_HEAD, week_rows(measures))),
        ("small", "Bars: counted is filled, not confirmed is grey, remembered is hollow."),
        ("heading", "Exercise by exercise"),
        ("table", ([46, 30, 15, 17, 20, 14, 14, 28], (0, 1, 7), ITEM_HEAD, items)),
        ("heading", "Pain and effort"),
        ("picture", chart(feeling["weeks"])),
        ("small", "A dot is the week’s median at rest, the bar its range. A cross is the median during a session."),
        ("table", ([34, 30, 30, 30, 30, 30], (0,), PAIN_HEAD, pain)),
        ("body", f"Points a week: {feeling['trend']}"),
        cells({"In the patient’s words": OWN_WORDS, "What was checked": ["Not checked yet."]}),
        ("heading", "What the figures mean"),
        *(("small", definition) for definition in DEFINITIONS),
    ]


def html(block: Block) -> str:
    """A block for weasyprint."""
    kind, held = block
    if kind == "picture":
        wide, high, alt, paths = held
        drawn = [
            f'<path d="M{"L".join(f"{x:.1f} {high - y:.1f}" for x, y in points)}" stroke="{ink}" '
            f'stroke-width="{stroke}" fill="{fill or "none"}"/>'
            for points, ink, stroke, fill in paths
        ]
        svg = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} {high}">{"".join(drawn)}</svg>'
        return f'<img alt="{alt}" style="width: {wide}pt" src="data:image/svg+xml,{quote(svg)}">'
    if kind == "cells":
        return f'<div class="cells"><div>{"</div><div>".join("".join(map(html, cell)) for cell in held)}</div></div>'
    if kind == "table":
        columns, starts, head, rows = held
        said = [[("head", key) for key in head.split(",")]]
        said += [[("entry", html(("picture", one)) if isinstance(one, tuple) else escape(one)) for one in row] for row in rows]
