"""The same paper by reportlab, typst or headless Chromium: one process, one tool, timed inside.

    python others.py TOOL CONTENT PHOTOS OUT TIMES
"""

import html
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from contents import pieces

FONTS = Path(__file__).resolve().parents[3] / "core" / "fonts"


def by_reportlab(content, photos, out):
    from reportlab.lib.pagesizes import A4
    from reportlab.lib.styles import getSampleStyleSheet
    from reportlab.lib.units import mm
    from reportlab.platypus import Image, Paragraph, SimpleDocTemplate, Table
    styles = getSampleStyleSheet()
    story, row = [], []
    for kind, *what in pieces(content):
        if kind == "photo":
            row.append([Image(str(photos / what[0]), 53 * mm, 40 * mm), Paragraph(html.escape(what[1]), styles["Normal"])])
            if len(row) == 3:
                story.append(Table([row]))
                row = []
        elif kind == "table":
            width = 176 * mm / len(what[0][0])
            cells = [[Paragraph(html.escape(cell), styles["Normal"]) for cell in one] for one in what[0]]
            story.append(Table(cells, colWidths=[width] * len(cells[0]), repeatRows=1))
        else:
            story.append(Paragraph(html.escape(what[0]), styles["Title" if kind == "title" else "Heading2"]))
    if row:
        story.append(Table([row]))
    SimpleDocTemplate(str(out), pagesize=A4).build(story)


def by_typst(content, photos, out):
    import typst
    quoted = lambda text: json.dumps(text, ensure_ascii=False)
    lines = ['#set text(font: "DejaVu Sans", size: 7pt)', '#set page(paper: "a4", margin: 18mm)']
    row = []
    for kind, *what in pieces(content):
        if kind == "photo":
            row.append(f'figure(image({quoted("photos/" + what[0])}, width: 53mm), caption: {quoted(what[1])})')
        elif kind == "table":
            cells = ", ".join(quoted(cell) for one in what[0] for cell in one)
            lines.append(f"#table(columns: {len(what[0][0])}, {cells})")
        else:
            lines.append(f'#heading(level: {1 if kind == "title" else 2}, {quoted(what[0])})')
    lines.append(f"#grid(columns: 3, gutter: 8mm, {', '.join(row)})")
    source = photos.parent / "paper.typ"
    source.write_text("\n".join(lines))
    typst.compile(str(source), output=str(out), root=str(photos.parent), font_paths=[str(FONTS)])


def by_chromium(content, photos, out):
    body = []
    for kind, *what in pieces(content):
        if kind == "photo":
            body.append(f'<figure><img src="photos/{what[0]}"><figcaption>{html.escape(what[1])}</figcaption></figure>')
        elif kind == "table":
            rows = "".join("<tr>" + "".join(f"<td>{html.escape(cell)}</td>" for cell in one) + "</tr>" for one in what[0])
            body.append(f"<table>{rows}</table>")
        else:
            body.append(f'<{"h1" if kind == "title" else "h2"}>{html.escape(what[0])}</{"h1" if kind == "title" else "h2"}>')
    style = "body{font:7pt DejaVu Sans}figure{display:inline-block;width:53mm;margin:0 4mm 4mm 0}img{width:53mm}"
    page = photos.parent / "paper.html"
    page.write_text(f"<!doctype html><meta charset=utf-8><style>{style}</style>{''.join(body)}")
    with tempfile.TemporaryDirectory() as profile:
        subprocess.run(["chromium", "--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={profile}",
                        "--no-pdf-header-footer", f"--print-to-pdf={out}", page.as_uri()],
                       check=True, stderr=subprocess.DEVNULL, stdout=subprocess.DEVNULL)


TOOLS = {"reportlab": by_reportlab, "typst": by_typst, "chromium": by_chromium}


def main(tool, content, photos, out, times):
    if tool == "chromium" and not shutil.which("chromium"):
        raise ImportError("chromium is not installed")
    content, photos, out, times = json.loads(Path(content).read_text()), Path(photos), Path(out), int(times)
    TOOLS[tool](content, photos, out)
    begun, spent = time.perf_counter(), processor()
    for _ in range(times):
        TOOLS[tool](content, photos, out)
    ms = (time.perf_counter() - begun) * 1000 / times
    cpu_ms = (processor() - spent) * 1000 / times
    print(json.dumps({"ms": ms, "cpu_ms": cpu_ms, "bytes": os.path.getsize(out)}))


def processor():
    """Seconds of processor time of this process and of the children that have ended."""
    used = os.times()
    return used.user + used.system + used.children_user + used.children_system


if __name__ == "__main__":
    main(*sys.argv[1:])
