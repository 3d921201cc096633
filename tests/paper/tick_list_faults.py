"""Faults put into the bytes of a good tick list: each must be caught by every reader.

Texts are found by their number: the n-th text drawn on a page is the n-th that mutool reads there.
"""

import re

import faults
import read_mutool
import read_qpdf

SHOWN = re.compile(rb"/(F\d+) \S+ Tf|<([0-9a-fA-F]*)>\s*Tj")
FIGURE = re.compile(r"\d+\.[05]")


class Shown:
    """One text on a page: what it says, its signs' codes, its font and where its codes stand."""

    def __init__(self, words, codes, font, span):
        self.words, self.codes, self.font, self.span = words, codes, font, span


def texts_of(qdf, words):
    """Every text of every page in the order it is drawn; `words` are what mutool read of each."""
    shown = []
    for page, spans in zip(words, read_qpdf.content_spans(qdf), strict=True):
        font, drawn = None, []
        for start, end in spans:
            for found in SHOWN.finditer(qdf, start, end):
                if found[1]:
                    font = found[1]
                else:
                    drawn.append((found[2], font, found.span(2)))
        shown += [Shown(text, *parts) for text, parts in zip(page, drawn, strict=True)]
    return shown


def put_changes(qdf, changes):
    """Writes new codes over old ones, last place first."""
    for (start, end), codes in sorted(changes, reverse=True):
        qdf = qdf[:start] + codes + qdf[end:]
    return qdf


def code_of(sign, font, texts):
    for text in texts:
        at = text.words.find(sign)
        if text.font == font and at >= 0 and len(text.codes) == 4 * len(text.words):
            return text.codes[4 * at:4 * at + 4]
    raise ValueError(f"no {sign} in {font}")


def _half_off(text, texts):
    """The codes of a text whose last sign, 0 or 5, is the other of the two."""
    other = "0" if text.words[-1] == "5" else "5"
    return text.codes[:-4] + code_of(other, text.font, texts)


def _figures(texts):
    """Texts that are figures of a list: each follows its number."""
    return [at for at in range(1, len(texts))
            if FIGURE.fullmatch(texts[at].words) and texts[at - 1].words.isdecimal()]


def _a_figure(texts):
    figures = _figures(texts)
    return figures[len(figures) // 2]


def figure_changed(texts):
    text = texts[_a_figure(texts)]
    return [(text.span, _half_off(text, texts))]


def figure_gone(texts):
    return [(texts[_a_figure(texts)].span, b"")]


def line_gone(texts):
    at = _a_figure(texts)
    return [(texts[at].span, b""), (texts[at - 1].span, b"")]


def figures_exchanged(texts):
    one, other = (texts[at] for at in (_figures(texts)[0], _figures(texts)[-1]))
    return [(one.span, other.codes), (other.span, one.codes)]


def figure_twice(texts):
    """One figure stands where its neighbour should."""
    figures = _figures(texts)
    return [(texts[figures[1]].span, texts[figures[0]].codes)]


def sum_wrong(texts):
    text = next(text for text in texts if re.search(r"add up to \d+\.[05]$", text.words))
    return [(text.span, _half_off(text, texts))]


def line_of_a_row_changed(texts):
    """The first figure of the first table: two figures stand side by side there."""
    text = next(text for text, after in zip(texts, texts[1:])
                if FIGURE.fullmatch(text.words) and FIGURE.fullmatch(after.words))
    return [(text.span, _half_off(text, texts))]


IN_THE_BYTES = {
    "a figure half a millimetre off": figure_changed,
    "a figure gone": figure_gone,
    "a figure gone with its number": line_gone,
    "two figures exchanged": figures_exchanged,
    "a figure twice": figure_twice,
    "the sum half a millimetre off": sum_wrong,
    "the line of a row half a millimetre off": line_of_a_row_changed,
    "nothing": lambda texts: [],
}


def put(pdf, fault, file):
    """Writes `pdf` with a fault in its bytes."""
    words = [page.texts for page in read_mutool.read(pdf)]
    faults.put(pdf, lambda qdf, _: put_changes(qdf, fault(texts_of(qdf, words))), file)
