"""Reads a PDF as qpdf unpacks it: the content's own figures, without rounding.

A short interpreter of the path operators: q Q cm w d m l c v y h re and what paints. Texts come
from another reader. A picture or a form inside a page is an error here: none is ever written.
"""

import re
import subprocess

from ink import MM_PER_PT, Page, Pen, times

TOKEN = re.compile(
    rb"\((?:\\.|[^\\()])*\)|<<|>>|<[0-9A-Fa-f\s]*>|[\[\]]|/[^\s/<>\[\]()]*|"
    rb"[-+]?(?:\d+\.?\d*|\.\d+)|[A-Za-z'\"][A-Za-z0-9*'\"]*")
TO_MM = (MM_PER_PT, 0, 0, MM_PER_PT, 0, 0)


def unpacked(pdf):
    """The bytes of `qpdf --qdf`; a complaint of qpdf's is an error."""
    done = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", str(pdf), "-"],
                          capture_output=True, timeout=120)
    if done.returncode != 0 or done.stderr:
        raise ValueError(f"qpdf: {done.stderr.decode(errors='replace').strip()}")
    return done.stdout


def is_clean(pdf):
    """True if qpdf finds nothing at all to complain of."""
    done = subprocess.run(["qpdf", "--check", str(pdf)], capture_output=True, timeout=120)
    return done.returncode == 0 and not done.stderr and b"No syntax" in done.stdout


def content_spans(qdf):
    """Where the content of each page stands in the unpacked bytes, page after page."""
    spans = []
    for head in re.finditer(rb"\n%% Contents for page (\d+)\n", qdf):
        start = qdf.index(b"stream\n", head.end()) + len(b"stream\n")
        length = qdf.index(b"\nendstream", start)
        number = int(head[1])
        if number == len(spans) + 1:
            spans.append([])
        spans[number - 1].append((start, length))
    return spans


def boxes(qdf):
    """The media box of each page, in points."""
    found = []
    for head in re.finditer(rb"\n%% Page \d+\n", qdf):
        page = qdf[head.end():qdf.index(b"endobj", head.end())]
        box = re.search(rb"/MediaBox \[([^\]]*)\]", page)
        if not box:
            raise ValueError("a page has no box of its own")
        found.append([float(figure) for figure in box[1].split()])
    return found


class Interpreter:
    """Draws one page's content. `base` is where the content stands in the unpacked bytes."""

    def __init__(self, page):
        self.page, self.pen = page, Pen()
        self.matrix, self.width, self.dash = TO_MM, 1.0, ()
        self.kept = []

    def draw(self, qdf, start, end):
        operands, first = [], None
        for token in TOKEN.finditer(qdf, start, end):
            word = token[0]
            if first is None:
                first = token.start()
            if word[:1].isalpha() or word in (b"'", b'"'):
                self._operator(word, operands, (first, token.end()))
                operands, first = [], None
            else:
                operands.append(word)

    def _operator(self, word, operands, span):
        if word in (b"m", b"l", b"c", b"v", b"y", b"h", b"re"):
            self._path(word, [float(operand) for operand in operands], span)
        elif word in (b"S", b"s", b"f", b"F", b"f*", b"B", b"B*", b"b", b"b*", b"n"):
            self._paint(word)
        elif word == b"q":
            self.kept.append((self.matrix, self.width, self.dash))
        elif word == b"Q":
            self.matrix, self.width, self.dash = self.kept.pop()
        elif word == b"cm":
            self.matrix = times([float(operand) for operand in operands], self.matrix)
        elif word == b"w":
            self.width = float(operands[0])
        elif word == b"d":
            self.dash = tuple(float(part) for part in operands[1:-2])
        elif word in (b"Do", b"BI", b"gs", b"sh"):
            raise ValueError(f"{word.decode()}: a page holds only lines, fills and texts")

    def _path(self, word, figures, span):
        if word == b"m":
            self.pen.move(figures, span)
        elif word == b"l":
            self.pen.line(figures, span)
        elif word == b"h":
            self.pen.close(span)
        elif word == b"re":
            self.pen.box(*figures, span)
        else:
            self.pen.curve(figures[-2:], span)

    def _paint(self, word):
        if word in (b"s", b"b", b"b*"):
            self.pen.close((0, 0))
        if word in (b"f", b"F", b"f*", b"B", b"B*", b"b", b"b*"):
            self.page.shapes += self.pen.shapes("fill", self.matrix)
        if word in (b"S", b"s", b"B", b"B*", b"b", b"b*"):
            self.page.shapes += self.pen.shapes("stroke", self.matrix, self.width, self.dash)
        self.pen = Pen()


def read_unpacked(qdf):
    """The pages of unpacked bytes."""
    pages = []
    for box, spans in zip(boxes(qdf), content_spans(qdf), strict=True):
        page = Page(((box[2] - box[0]) * MM_PER_PT, (box[3] - box[1]) * MM_PER_PT))
        interpreter = Interpreter(page)
        for start, end in spans:
            interpreter.draw(qdf, start, end)
        pages.append(page)
    return pages


def read(pdf):
    return read_unpacked(unpacked(pdf))
