"""Reads a PDF through poppler: `pdftocairo -svg`, `pdftotext -bbox`, `pdfinfo -box`.

Without -noshrink and -nocenter pdftocairo fits the page to a whole-point A4 and everything comes
out 0.12 % small: that is poppler's doing, not the file's.
"""

import html
import re
import subprocess

from ink import MM_PER_PT, Page, Pen, times

PATH = re.compile(r"<path ([^>]*?)/>")
PART = re.compile(r'([a-z-]+)="([^"]*)"')
STEP = re.compile(r"([MLCHVZ])([^MLCHVZ]*)")
WORD = re.compile(r"<word [^>]*>([^<]*)</word>")


def _said(words):
    done = subprocess.run(words, capture_output=True, timeout=300)
    if done.returncode != 0 or done.stderr:
        raise ValueError(f"{words[0]}: {done.stderr.decode(errors='replace').strip()}")
    return done.stdout.decode("utf-8")


def _follow(pen, data):
    for step, figures in STEP.findall(data):
        at = [float(figure) for figure in figures.split()]
        if step == "M":
            pen.move((at[0], at[1]))
        elif step == "L":
            pen.line((at[0], at[1]))
        elif step == "C":
            pen.curve((at[4], at[5]))
        elif step == "Z":
            pen.close()
        else:
            raise ValueError(f"a path step {step} is not expected")


def _style(parts):
    style = dict(part.split(":", 1) for part in parts.get("style", "").split(";") if ":" in part)
    style = {key.strip(): words.strip() for key, words in style.items()}
    for key in ("fill", "stroke", "stroke-width", "stroke-dasharray"):
        if key in parts:
            style[key] = parts[key]
    return style


def _path_shapes(parts, up):
    matrix = (1, 0, 0, 1, 0, 0)
    if "transform" in parts:
        matrix = [float(figure) for figure in re.findall(r"[-+.0-9e]+", parts["transform"][7:-1])]
    style, pen = _style(parts), Pen()
    _follow(pen, parts["d"])
    to_mm = times(matrix, up)
    if style.get("stroke", "none") != "none":
        dash = style.get("stroke-dasharray", "none")
        dash = [] if dash == "none" else [float(part) for part in re.split(r"[,\s]+", dash)]
        yield from pen.shapes("stroke", to_mm, float(style.get("stroke-width", 1)), dash)
    if style.get("fill", "none") != "none":
        yield from pen.shapes("fill", to_mm)


def read_page(pdf, number):
    """One page's shapes, and its box as the picture states it."""
    svg = _said(["pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", str(number), "-l",
                 str(number), str(pdf), "-"])
    width, length = (float(side) * MM_PER_PT for side in
                     re.search(r'<svg [^>]*?width="([\d.]+)pt" height="([\d.]+)pt"', svg).groups())
    page = Page((width, length))
    svg = re.sub(r"<defs>.*?</defs>", "", svg, flags=re.S)
    up = (MM_PER_PT, 0, 0, -MM_PER_PT, 0, length)
    for path in PATH.finditer(svg):
        page.shapes += _path_shapes(dict(PART.findall(path[1])), up)
    return page


def texts(pdf):
    """The words of every page, in reading order, joined by spaces."""
    pages = _said(["pdftotext", "-bbox", str(pdf), "-"]).split("<page ")[1:]
    return [" ".join(html.unescape(word) for word in WORD.findall(page)) for page in pages]


def boxes_mm(pdf):
    """The media box of every page by pdfinfo, which prints two decimals of a point."""
    said = _said(["pdfinfo", "-box", "-f", "1", "-l", "100000", str(pdf)])
    found = re.findall(r"Page +\d+ MediaBox: +(\S+) +(\S+) +(\S+) +(\S+)", said)
    return [((float(box[2]) - float(box[0])) * MM_PER_PT,
             (float(box[3]) - float(box[1])) * MM_PER_PT) for box in found]


def read(pdf):
    pages = [read_page(pdf, number) for number in range(1, len(boxes_mm(pdf)) + 1)]
    for page, words in zip(pages, texts(pdf), strict=True):
        page.texts = [words]
    return pages
