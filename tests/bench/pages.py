"""How long the report's two pages take in programs that are not ours.

Outside: PyPI weasyprint, from HTML, tagged as PDF/UA-1 asks; PyPI reportlab's platypus, which tags nothing.
Both set the same blocks, in one process, from the measures that the report's own benchmark leaves behind.
What the plan and the patient say is not among them: sentences like the demo's stand for it. As with ours,
the measures are in memory, the fonts loaded, and all else is made anew. The first run is not counted.
"""

import json
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
from reportlab.lib import colors, styles
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics, ttfonts

ROOT = Path(__file__).resolve().parents[2]
RUNS, WEEKS, FLAGS = 5, 14, 5
INK, EDGE, PAPER = "#241C14", "#857661", "#FFFFFF"
DAYS = ("days_due", "whole", "part", "stopped_as_told", "no_record")
HOW = ("counted", "not_confirmed", "remembered", "beyond", "as_needed")
PAIN = ("before", "during", "after", "next_morning", "effort")
WEEK_HEAD = "Week,Due,Whole,Part,Stopped\nas told,No\nrecord,Sets done,,Counted,Not\nconfirmed,Remembered,Beyond"
ITEM_HEAD = "Exercise,Sets done,Counted,Not\nconfirmed,Remembered,Beyond,As\nneeded,Also"
PAIN_HEAD = "Week,At rest before,During,After,Next morning,Effort"
SAID = (ROOT / "locales" / "en" / "report.ftl").read_text(encoding="utf-8")
DEFINITIONS = [of.split(" = ")[1] for of in SAID.splitlines() if of.startswith(("report-page-def-", "report-caution"))]
# The look of both: tag; size, leading, space above and below in points; face.
LOOK = {
    "title": ("h1", 15.75, 19, 0, 3, "Bold"),
    "heading": ("h2", 10.8, 13, 7, 3, "Bold"),
    "body": ("p", 9, 11, 0, 1, "Regular"),
    "small": ("p", 8.1, 9.5, 1, 2, "Regular"),
}
CSS = f"""
@page {{ size: A4; margin: 12mm 13mm 16mm; @bottom-right {{ content: "Page " counter(page); font: 9pt Regular }} }}
.cells {{ display: grid; grid-template-columns: 1fr 1fr; border: solid {INK}; border-width: 1.6pt 0 }}
table {{ border-collapse: collapse; table-layout: fixed; width: 100% }} td {{ border-top: 0.6pt solid {EDGE} }}
th, td {{ font: 9pt/9pt Regular; padding: 1.3pt 2.7pt; vertical-align: top; text-align: left }}
body {{ margin: 0; color: {INK} }} th {{ font: 7.9pt/9pt Bold }} .mid {{ text-align: center }}
"""
ALL, HEAD, BODY = ((0, 0), (-1, -1)), ((0, 0), (-1, 0)), ((0, 1), (-1, -1))
STRIP = [("VALIGN", *ALL, "TOP"), ("LINEABOVE", *HEAD, 1.6, INK), ("LINEBELOW", (0, -1), (-1, -1), 1.6, INK)]
TABLE = [("FONT", *HEAD, "Bold", 7.9, 9), ("FONT", *BODY, "Regular", 9, 9), ("LINEABOVE", *BODY, 0.6, EDGE)]
TABLE += [(f"{side}PADDING", *ALL, at) for side, at in (("LEFT", 2.7), ("RIGHT", 2.7), ("TOP", 0.4), ("BOTTOM", 2.2))]
# Frames have six points of room inside.
MARGINS = {f"{side}Margin": at * mm - 6 for side, at in (("left", 13), ("right", 13), ("top", 12), ("bottom", 16))}
STYLES: dict[str, styles.ParagraphStyle] = {}
for kind, (_, size, lead, above, below, face) in LOOK.items():
    CSS += f".{kind} {{ font: {size}pt/{lead}pt {face}; margin: {above}pt 0 {below}pt }}"
    room = {"fontSize": size, "leading": lead, "spaceBefore": above, "spaceAfter": below}
    STYLES[kind] = styles.ParagraphStyle(kind, fontName=face, textColor=INK, **room)
for face, weight in (("Regular", 400), ("Bold", 700)):
    font = ROOT / "src-tauri" / "paper" / "fonts" / f"AtkinsonHyperlegibleNext_{weight}{face}.ttf"
    CSS += f'@font-face {{ font-family: {face}; src: url("{font.as_uri()}") }}'
    pdfmetrics.registerFont(ttfonts.TTFont(face, font))
FACES = weasyprint.text.fonts.FontConfiguration()
SHEET = weasyprint.CSS(string=CSS, font_config=FACES)

Json = dict[str, Any]
# A look and its words, or "picture", "cells" or "table" and what they hold.
Block = tuple[str, Any]


def day(iso: str) -> str:
    return f"{date.fromisoformat(iso):%A %-d %B %Y}"


def sets(number: float) -> str:
    return f"{round(number, 1):g}" if number > 0 else "–"


def part(dose: Json) -> str:
    of, done = dose["prescribed"], sum(dose[how] for how in HOW[:3])
    return f"{sets(done)} of {of} ({100 * done / of:.0f} %)" if of else "–"


def levels(of: Json | None) -> str:
    return f"{of['median']:g}" + f" ({of['least']}–{of['most']})" * (of["least"] < of["most"]) if of else "–"


def bar(dose: Json) -> Block:
    """Counted is filled, not confirmed is grey, remembered is hollow."""
    ends = pairwise(accumulate((47 * dose[how] / (dose["prescribed"] or 1) for how in HOW[:3]), initial=0.5))
    boxes = zip([(0.5, 47.5), *ends], (PAPER, INK, EDGE, PAPER), strict=True)
    paths = [([(a, 0.5), (b, 0.5), (b, 6.5), (a, 6.5)], INK, 0.4, fill) for (a, b), fill in boxes]
    return "picture", (48, 7, part(dose), paths)


def chart(weeks: list[Json]) -> Block:
    """A dot is the week's median at rest, the bar its range; a cross is the median during a session."""
    at = [(520 * (n + 0.5) / len(weeks), week) for n, week in enumerate(weeks)]
    rest = [(x, of) for x, week in at if (of := week["before"])]
    paths: list[Any] = [([(0, y), (520, y)], EDGE, 0.5, None) for y in range(0, 11, 2)]
    paths += [([(x, of["least"]), (x, of["most"])], EDGE, 1, None) for x, of in rest]
    paths += [([(x, of["median"]) for x, of in rest], INK, 1.1, None)]
    dot, cross = ((-2, 0), (0, 0.25), (2, 0), (0, -0.25)), ((-2, -0.25), (2, 0.25), (0, 0), (-2, 0.25), (2, -0.25))
    for key, corners, fill in (("before", dot, INK), ("during", cross, None)):
        middles = [(x, week[key]["median"]) for x, week in at if week[key]]
        paths += [([(x + right, y + up) for right, up in corners], INK, 0.9, fill) for x, y in middles]
    said = "; ".join(f"week {week['week']}: {levels(week['before'])}" for week in weeks)
    paths = [([(x, 5 + 8 * y) for x, y in points], *look) for points, *look in paths]
    return "picture", (520, 90, f"Pain at rest by week, 0 to 10: {said}", paths)


def week_rows(measures: Json) -> list[list[Any]]:
    """The last weeks after one row for those before, and the whole."""
    before, own = measures["weeks"][:-WEEKS], measures["weeks"][-WEEKS:]
    rows = [(str(week["week"]), week["all"]) for week in own] + [("Whole span", measures["overall"])]
    if before:
        total: Json = {key: sum(week["all"][key] for week in before) for key in DAYS}
        total["dose"] = {key: sum(week["all"]["dose"][key] for week in before) for key in own[0]["all"]["dose"]}
        rows.insert(0, (f"{before[0]['week']}–{before[-1]['week']}", total))
    doses = [([title, *(str(of[key]) for key in DAYS)], of["dose"]) for title, of in rows]
    said = ([*days, part(dose), bar(dose), *(sets(dose[how]) for how in HOW[:4])] for days, dose in doses)
    return [WEEK_HEAD.split(","), *said]


def report(measures: Json) -> list[Block]:
    """What both set. A table is its columns in mm, those that begin at the start, and rows below their head."""
    weeks, change, through = measures["feeling"]["weeks"], measures["feeling"]["change"], day(measures["through"])
    flags = [(a["group"], f"{day(a['day'])}: {' '.join(map(str, a['rule'].values()))}") for a in measures["flags"]]
    rest, morning = (levels(next((w[at] for w in weeks[::-1] if w[at]), None)) for at in ("before", "next_morning"))
    least = max(measures["items"], key=lambda item: item["all"]["prescribed"] - item["all"]["counted"])
    strip = {
        "Ring today": [flag for group, flag in flags if group == "ring-today"][-FLAGS:],
        "The patient asks": ["May I drive again? And may I kneel in the garden?"],
        "Last seven days": [", ".join(f"{day(of['day'])[:3]} {of['mark']}" for of in measures["days"][-7:])],
        "Pain": [f"At rest, last answers: {rest}", f"Next morning: {morning}", f"Change: {change}"],
        "Least done": [f"{least['item']}: {part(least['all'])}."],
        "Talk about": [flag for group, flag in flags if group == "talk-about"][-FLAGS:],
        "Not yet": ["5 exercises are held back.", f"Next to open: Straight leg lift, {through}."],
        "Weight bearing": ["Put as much weight on your left leg as is comfortable."],
    }
    pain = [[str(week["week"]), *(levels(week[at]) for at in PAIN)] for week in weeks if any(week[at] for at in PAIN)]
    items = []
    for item, dose in ((item, item["all"]) for item in measures["items"]):
        left = ", ".join(f"{of['reason']} ({of['times']})" for of in item["left"])
        also = ("body", f"Left out: {left}.") if left else "–"
        items.append([item["item"], part(dose), *(sets(dose[how]) for how in HOW), also])
    return [
        ("title", "Report of Anselmo"),
        ("body", f"{day(measures['from'])} to {through}. Made on {through}. Plan version 2."),
        ("cells", [[("heading", title), *(("body", one) for one in said)] for title, said in strip.items()]),
        ("heading", "Week by week"),
        ("table", ([20, 8, 11, 8, 13, 12, 33, 19, 14, 16, 20, 10], (0, 6, 7), week_rows(measures))),
        ("small", "Bars: counted is filled, not confirmed is grey, remembered is hollow."),
        ("heading", "Exercise by exercise"),
        ("table", ([46, 30, 15, 17, 20, 14, 14, 28], (0, 1, 7), [ITEM_HEAD.split(","), *items])),
        ("heading", "Pain and effort"),
        chart(weeks),
        ("small", "A dot is the week’s median at rest, 0 to 10, the bar its range, a cross the median in a session."),
        ("table", ([34, 30, 30, 30, 30, 30], (0,), [PAIN_HEAD.split(","), *pain[-WEEKS:]])),
        ("heading", "What the figures mean"),
        *(("small", definition) for definition in DEFINITIONS),
    ]


def html(block: Block) -> str:
    kind, held = block
    if kind == "picture":
        wide, high, alt, paths = held
        svg = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} {high}">'
        for points, ink, stroke, fill in paths:
            line = "L".join(f"{x:.1f} {high - y:.1f}" for x, y in points) + "Z" * bool(fill)
            svg += f'<path d="M{line}" stroke="{ink}" stroke-width="{stroke}" fill="{fill or "none"}"/>'
        return f'<img alt="{alt}" style="width: {wide}pt" src="data:image/svg+xml,{quote(svg + "</svg>")}">'
    if kind == "cells":
        return '<div class="cells">' + "".join(f"<div>{''.join(map(html, cell))}</div>" for cell in held) + "</div>"
    if kind == "table":
        columns, starts, rows = held
        said = "".join(f'<col style="width: {wide}mm">' for wide in columns) + "<thead>"
        for n, row in enumerate(rows):
            said, tag = said + ("<tbody><tr>" if n == 1 else "<tr>"), "td" if n else "th scope=col"
            cells = enumerate(escape(of) if isinstance(of, str) else html(of) for of in row)
            said += "".join(f"<{tag} class={'start' if at in starts else 'mid'}>{of}" for at, of in cells)
        return f"<table>{said}</table>"
    return f'<{LOOK[kind][0]} class="{kind}">{escape(held)}</{LOOK[kind][0]}>'


def flow(block: Block) -> platypus.Flowable:
    kind, held = block
    if kind == "picture":
        drawing = shapes.Drawing(*held[:2])
        for points, ink, stroke, fill in held[3]:
            flat, moves = [of for point in points for of in point], [0] + [1] * (len(points) - 1) + [3] * bool(fill)
            ink, fill = colors.toColor(ink), colors.toColorOrNone(fill)
            drawing.add(shapes.Path(flat, moves, strokeColor=ink, strokeWidth=stroke, fillColor=fill))
        return drawing
    if kind == "cells":
        flows = [[flow(one) for one in cell] for cell in held]
        return platypus.Table([*zip(flows[::2], flows[1::2], strict=True)], style=STRIP)
    if kind == "table":
        columns, starts, rows = held
        sides = [("ALIGN", (n, 0), (n, -1), "LEFT" if n in starts else "CENTER") for n in range(len(columns))]
        rows = [[of if isinstance(of, str) else flow(of) for of in row] for row in rows]
        return platypus.Table(rows, [of * mm for of in columns], style=[*TABLE, *sides, STRIP[0]], repeatRows=1)
    return platypus.Paragraph(escape(held), STYLES[kind])


def by_weasyprint(measures: Json) -> tuple[bytes, int]:
    body = "".join(map(html, report(measures)))
    page = weasyprint.HTML(string=f'<html lang="en"><title>Report of Anselmo</title><body>{body}</body></html>')
    document = page.render(FACES, stylesheets=[SHEET], pdf_variant="pdf/ua-1")
    return document.write_pdf(pdf_variant="pdf/ua-1"), len(document.pages)


def by_reportlab(measures: Json) -> tuple[bytes, int]:
    def foot(canvas: Any, document: Any) -> None:
        canvas.setFont("Regular", 9)
        canvas.drawRightString(197 * mm, 8 * mm, f"Page {document.page}")

    file = BytesIO()
    document = platypus.SimpleDocTemplate(file, title="Report of Anselmo", lang="en", **MARGINS)
    document.build([flow(block) for block in report(measures)], foot, foot)
    return file.getvalue(), document.page


def main() -> None:
    """Makes each so often, and leaves its last beside the measures."""
    file = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "target" / "bench" / "measures.json"
    if not file.is_file():
        print("There are no measures yet: run `tests/bench/run report`.", file=sys.stderr)
        sys.exit(2)
    measures = json.loads(file.read_text(encoding="utf-8"))
    for module, make in ((weasyprint, by_weasyprint), (reportlab, by_reportlab)):
        took = []
        for _ in range(RUNS + 1):
            began = time.perf_counter()
            pdf, pages = make(measures)
            took.append(1000 * (time.perf_counter() - began))
        print(f"{module.__name__} {module.__version__}: {sorted(took[1:])[RUNS // 2]:.0f} ms a report, {pages} pages")
        file.with_name(f"{module.__name__}.pdf").write_bytes(pdf)


if __name__ == "__main__":
    main()
