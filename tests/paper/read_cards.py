"""Reads printed seam cards: every run of words with its place and size by `mutool trace`, the words
alone by poppler, and the ink in a page's border from poppler's picture of it.

A card is found by its words, not by the order they were drawn in: what stands over a large figure
at its left edge is its label, what stands beside it belongs to it. Places are millimetres from the
upper left corner of the page.
"""

import html
import re
import subprocess
from typing import NamedTuple

from ink import MM_PER_PT
from read_mutool import PART, TAG

FIGURE_MM = 13.5
TITLE = "SEAM CARD"
TITLE_LINE = re.compile(r"SEAM CARD +(?:(side|joining) )?row ([\d,]+) of ([\d,]+)")


class Run(NamedTuple):
    """Words set in one go."""

    words: str
    x: float
    y: float
    size: float
    right: float
    is_white: bool


def _said(words):
    done = subprocess.run(words, capture_output=True, timeout=120)
    if done.returncode != 0 or done.stderr:
        raise ValueError(f"{words[0]}: {done.stderr.decode(errors='replace').strip()}")
    return done.stdout


def runs_of(pdf):
    """The runs of every page."""
    pages, text, span = [], None, []
    for tag in TAG.finditer(_said(["mutool", "trace", str(pdf)]).decode("utf-8")):
        closes, name, parts = tag[1] == "/", tag[2], dict(PART.findall(tag[3]))
        if name == "page" and not closes:
            pages.append([])
            high = float(parts["mediabox"].split()[3])
        elif name == "fill_text":
            text = parts
        elif name == "span" and not closes:
            size, span = float(parts["trm"].split()[0]), []
        elif name == "g":
            span.append((html.unescape(parts.get("unicode", "")), float(parts["x"]),
                         float(parts["y"]), float(parts["adv"])))
        elif name == "span":
            a, _, _, d, e, f = (float(figure) for figure in text["transform"].split())
            words = "".join(sign for sign, *_ in span)
            (_, x, y, _), (_, last, _, wide) = span[0], span[-1]
            # The trace counts y downward from the top of the page.
            down = d * y + f if d < 0 else high - (d * y + f)
            scale = a * MM_PER_PT
            pages[-1].append(Run(words, (a * x + e) * MM_PER_PT, down * MM_PER_PT, size * scale,
                                 (a * (last + wide * size) + e) * MM_PER_PT,
                                 text["color"].startswith("1")))
    return pages


def words_by_poppler(pdf):
    """The words of each page as poppler reads them, blanks made single."""
    pages = _said(["pdftotext", "-raw", str(pdf), "-"]).decode("utf-8").split("\f")[:-1]
    return [" ".join(page.split()) for page in pages]


def border_is_clean(pdf, border_mm=9.8, dots_per_inch=127):
    """For each page, whether poppler's picture of it is white all round. 5 dots are 1 mm; the dot in
    which a line ends may be tinted."""
    picture = _said(["pdftoppm", "-gray", "-r", str(dots_per_inch), str(pdf)])
    clean, at = [], 0
    border = int(border_mm * dots_per_inch / 25.4)
    head = re.compile(rb"P5\s+(\d+)\s+(\d+)\s+255\s")
    while at < len(picture):
        found = head.match(picture, at)
        wide, high = int(found[1]), int(found[2])
        rows = [picture[found.end() + y * wide:found.end() + (y + 1) * wide] for y in range(high)]
        inked = [row for row in rows[:border] + rows[-border:] if row.strip(b"\xff")]
        inked += [row for row in rows if (row[:border] + row[-border:]).strip(b"\xff")]
        clean.append(not inked)
        at = found.end() + wide * high
    return clean


class Cell(NamedTuple):
    """A large figure, its label and the small words beside it."""

    label: str
    figure: str
    beside: list


def _cell(runs, figure):
    labels = [run.words for run in runs
              if abs(run.x - figure.x) < 0.1 and 9 < figure.y - run.y < 15]
    # Cells end where those at their right begin.
    ends = [run.x for run in runs if abs(run.size - FIGURE_MM) < 0.01 and
            run.x > figure.x + 5] + [figure.x + 80]
    beside = [run for run in runs if run.size < 5 and figure.x < run.x < min(ends) - 1 and
              -0.1 < figure.y - run.y < 8 and not run.is_white]
    return Cell(" ".join(labels), figure.words,
                [run.words for run in sorted(beside, key=lambda run: run.y)])


def cells_of(runs):
    """Every large figure with its label and what stands beside it."""
    return [_cell(runs, run) for run in runs if abs(run.size - FIGURE_MM) < 0.01]


class Card:
    """The runs of one card, found by their places."""

    def __init__(self, runs):
        self.runs = runs
        title = next(run for run in runs if run.words.startswith(TITLE))
        self.kind, number, count = TITLE_LINE.fullmatch(title.words).groups()
        self.number, self.count = (int(words.replace(",", "")) for words in (number, count))
        codes = [run.words for run in runs if run.is_white and 0 < run.y - title.y < 20]
        self.code = " ".join(codes)
        bands = [run for run in runs if run.is_white and run.y - title.y > 20]
        self.band = " ".join(run.words for run in bands)
        self.cells = cells_of(runs)
        self.lines = " ".join(run.words for run in
                              sorted((run for run in runs if not run.is_white),
                                     key=lambda run: (round(run.y, 1), run.x)))

    def says(self, words):
        return any(run.words == words for run in self.runs)

    def after(self, word):
        """What follows a word at the beginning of a run: "22" of "start 22"."""
        return [run.words[len(word) + 1:] for run in self.runs if run.words.startswith(word + " ")]

    def under(self, label):
        """What stands in the box under a label, None where there is no such box."""
        found = [run for run in self.runs if run.words == label]
        if not found:
            return None
        return [run.words for run in self.runs
                if 0 < run.x - found[0].x < 25 and 5 < run.y - found[0].y < 13]


def cards_on(pages):
    """All cards, page by page, in the order they lie: from the left, then downward."""
    cards = []
    for runs in pages:
        titles = [run for run in runs if run.words.startswith(TITLE)]
        for title in sorted(titles, key=lambda run: (round(run.y), run.x)):
            left, top = title.x - 5, title.y - 10
            right = min([run.x for run in titles if run.x > title.x + 50] + [10_000]) - 6
            foot = min([run.y for run in titles if run.y > title.y + 50] + [10_000]) - 10
            cards.append(Card([run for run in runs
                               if left <= run.x < right and top <= run.y < foot]))
    return cards
