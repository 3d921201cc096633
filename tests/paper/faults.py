"""Faults put into a good PDF on purpose: a checker that lets one through is no checker.

Most are made in the bytes of the file itself, unpacked by qpdf, edited, and put in order again by
fix-qdf, so that every reader meets them. One exchanges two pages' words after reading.
"""

import re
import subprocess

import marks
import read_qpdf
from ink import Page

FIGURE = re.compile(rb"[-+]?(?:\d+\.?\d*|\.\d+)")
FIRST_MATRIX = re.compile(rb"(" + FIGURE.pattern + rb") 0 0 (" + FIGURE.pattern + rb") (" +
                          FIGURE.pattern + rb") (" + FIGURE.pattern + rb") cm\b")


def every_page(qdf, change):
    """Changes the first matrix of each page; `change` gets and returns its four figures."""
    for spans in reversed(read_qpdf.content_spans(qdf)):
        start, end = spans[0]
        found = FIRST_MATRIX.search(qdf, start, end)
        if not found:
            raise ValueError("a page has no matrix to change")
        figures = change(*[float(figure) for figure in found.groups()])
        words = "{:.9f} 0 0 {:.9f} {:.9f} {:.9f} cm".format(*figures)
        qdf = qdf[:found.start()] + words.encode() + qdf[found.end():]
    return qdf


def enlarged(qdf, factor):
    return every_page(qdf, lambda a, d, e, f: (a * factor, d * factor, e * factor, f * factor))


def mirrored(qdf):
    width = read_qpdf.boxes(qdf)[0][2]
    return every_page(qdf, lambda a, d, e, f: (-a, d, width - e, f))


def _a_point(qdf, shrunk):
    """The middle one of the points drawn on the fullest page: its shape as it stands there."""
    pages = [[shape for shape in page.shapes
              if marks.what(marks.as_printed(shape, shrunk)) in ("tick", "ring")]
             for page in read_qpdf.read_unpacked(qdf)]
    fullest = max(pages, key=len)
    return fullest[len(fullest) // 2]


def _shifted(drawn, matrix, across, along):
    """The bytes of a path moved by millimetres on paper."""
    turn = matrix[0] * matrix[3] - matrix[1] * matrix[2]
    step = ((across * matrix[3] - along * matrix[2]) / turn,
            (along * matrix[0] - across * matrix[1]) / turn)
    words, which = [], 0
    for word in drawn.split():
        if FIGURE.fullmatch(word):
            words.append(f"{float(word) + step[which % 2]:.6f}".encode())
            which += 1
        else:
            words.append(word)
            which = 0
    return b" ".join(words)


def one_gone(qdf, shrunk):
    start, end = _a_point(qdf, shrunk).span
    return qdf[:start] + b" " * (end - start) + qdf[end:]


def one_moved(qdf, shrunk, across=0.3, along=0.4):
    """Half a millimetre, aslant."""
    point = _a_point(qdf, shrunk)
    start, end = point.span
    moved = _shifted(qdf[start:end], point.matrix, across, along)
    return qdf[:start] + moved + qdf[end:]


def one_extra(qdf, shrunk):
    point = _a_point(qdf, shrunk)
    start, end = point.span
    added = _shifted(qdf[start:end], point.matrix, 4.0, 7.0)
    return qdf[:end] + b"\n" + added + b"\n" + qdf[end:]


def untouched(qdf, _):
    return qdf


# Each gets the unpacked bytes and what the sheet was corrected for, each way.
IN_THE_BYTES = {
    "0.05 % too large": lambda qdf, _: enlarged(qdf, 1.0005),
    "0.05 % too small": lambda qdf, _: enlarged(qdf, 0.9995),
    "mirrored": lambda qdf, _: mirrored(qdf),
    "one point gone": one_gone,
    "one point too many": one_extra,
    "one point moved by 0.5": one_moved,
    "inches for millimetres": lambda qdf, _: enlarged(qdf, 1 / 25.4),
}


def put(pdf, fault, file, shrunk=(1, 1)):
    """Writes `pdf` with a fault in its bytes."""
    edited = fault(read_qpdf.unpacked(pdf), shrunk)
    done = subprocess.run(["fix-qdf"], input=edited, capture_output=True, timeout=120)
    if done.returncode != 0:
        raise ValueError(f"fix-qdf: {done.stderr.decode(errors='replace').strip()}")
    file.write_bytes(done.stdout)


def one_left_out(pages, plan):
    """A page that shows something is not printed: the one nearest to the middle that is crossed by
    more than a hair; None where there is none."""
    crossed = [at for at, page in enumerate(pages)
               if marks.Sighting(page, plan).datum in plan.needed]
    if not crossed:
        return None
    del pages[min(crossed, key=lambda at: abs(at - len(pages) // 2))]
    return pages


def one_for_nothing(pages, plan):
    """A page that nothing crosses is printed: a blank sheet with its own datum; None where no page
    is left out."""
    idle = [datum for datum in plan.all_datums() if datum not in plan.may_be]
    if not idle:
        return None
    blank = Page(pages[0].box)
    blank.texts = [f"datum across {idle[0][0] / 1000:g}", f"datum along {idle[0][1] / 1000:g}"]
    before = sum(datum in plan.may_be for datum in
                 plan.all_datums()[:plan.all_datums().index(idle[0])])
    return pages[:before] + [blank] + pages[before:]


def one_struck_too_many(pages, plan):
    """On one page's map a page that is printed is struck through."""
    page = pages[len(pages) // 2]
    cell = next(shape for shape in page.shapes if marks.is_map_cell(shape))
    corners = sorted(set(cell.ends))
    page.shapes.append(cell._replace(ends=[corners[0], corners[-1]], closed=False))
    return pages


AMONG_THE_PAGES = {
    "a page with marks left out": one_left_out,
    "a page without marks printed": one_for_nothing,
    "a printed page struck through on a map": one_struck_too_many,
}


def exchange_two(pages):
    """The words of two neighbouring pages exchanged, as if their sheets were mixed up."""
    at = len(pages) // 2
    pages[at].texts, pages[at - 1].texts = pages[at - 1].texts, pages[at].texts
    return pages
