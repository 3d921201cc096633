"""Faults put into the bytes of good seam cards: each must be caught."""

import re

import faults
import read_mutool
import read_qpdf
from tick_list_faults import code_of, put_changes, texts_of


def _text(texts, pattern):
    return next(text for text in texts if re.search(pattern, text.words))


def _recoded(text, old, new, texts):
    """The codes of a text with one of its signs put for another."""
    at = text.words.index(old)
    return text.codes[:4 * at] + code_of(new, text.font, texts) + text.codes[4 * at + 4:]


def _digit(pattern):
    """One digit of the first text that is so becomes another."""
    def put(texts):
        text = _text(texts, pattern)
        old = re.search(r"\d", text.words[::-1])[0]
        at = len(text.words) - 1 - text.words[::-1].index(old)
        new = "1" if old != "1" else "2"
        codes = text.codes[:4 * at] + code_of(new, text.font, texts) + text.codes[4 * at + 4:]
        return [(text.span, codes)]
    return put


def _gone(pattern):
    def put(texts):
        return [(_text(texts, pattern).span, b"")]
    return put


def _figure_after(label):
    """A digit of the figure drawn after this label."""
    def put(texts):
        at = next(at for at, text in enumerate(texts) if re.fullmatch(label, text.words))
        figure = texts[at + 1]
        old = re.search(r"\d", figure.words)[0]
        new = "4" if old != "4" else "6"
        return [(figure.span, _recoded(figure, old, new, texts))]
    return put


def code_twice(texts):
    """The second card is called as the first."""
    titles = [at for at, text in enumerate(texts) if text.words.startswith("SEAM CARD")]
    return [(texts[titles[1] + 1].span, texts[titles[0] + 1].codes)]


IN_THE_WORDS = {
    "the start changed": _digit(r"^start \d"),
    "the stop changed": _digit(r"^stop \d"),
    "the length changed": _digit(r"^sew \d"),
    "how many stitches changed": _digit(r"^\d+ stitches$"),
    "the stitch changed": _figure_after("stitch"),
    "the needle size changed": _figure_after("needle size"),
    "the thread changed": _figure_after("thread, both"),
    "in from the edge changed": _figure_after("in from .*"),
    "the tail changed": _figure_after("tail at each end"),
    "no reverse gone": _gone("^no reverse$"),
    "FRONT UP gone": _gone("^FRONT UP$"),
    "the caution gone": _gone("^Figures guide"),
    "a code gone": _gone(r"^\S+ (left|hinge)$"),
    "two cards of one code": code_twice,
    "the file's mark changed": _digit("^file "),
    "nothing": lambda texts: [],
}
OF_SECTIONS = {
    "nothing": lambda texts: [],
    "the running total changed": _figure_after("running total.*"),
    "the count of staples changed": _figure_after("staples in"),
}
OF_PANELS = {"DO NOT SEW gone": _gone("DO NOT SEW")}
OF_TRIAL_CARDS = {
    "nothing": lambda texts: [],
    "a needle changed": _digit(r"^160$"),
    "a stitch changed": _digit(r"^\d\.5$"),
    "the sheet left changed": _digit(r"^\d+\.\d %$"),
    "the stack changed": _digit("^Stack as typed"),
    "the radius changed": _digit("^Bend it"),
    "ten stitches changed": _digit("^58$"),
    "the pull changed": _digit("^212$"),
    "the choice gone": _gone("^yes$"),
    "a kind of row gone": _gone("^JOINING ROWS$"),
    "no place for the coupon": _gone("^SEW THE"),
    "an answer about puckers gone": _gone("^crowding"),
    "the caution gone": _gone("^Figures guide"),
    "the file's mark changed": _digit("^file "),
}
OF_MACHINE_CARDS = {
    "nothing": lambda texts: [],
    "the throat changed": _figure_after("throat, right of the needle"),
    "the needle size changed": _figure_after("needle size"),
    "the thread changed": _figure_after("thread tex, top and bottom"),
    "rows a bobbin changed": _figure_after("rows a bobbin"),
    "the bobbins changed": _figure_after("bobbins to wind"),
    "the run of tables changed": _figure_after("free run of tables"),
    "what a bobbin sews changed": _digit("^A bobbin less"),
    "what lies under the arm changed": _digit(r"^141$"),
    "how it lies there gone": _gone("^rolled"),
    "a row of dials gone": _gone("^joining rows, "),
    "the band gone": _gone("STITCHES A MINUTE"),
    "the caution gone": _gone("^Figures guide"),
    "the file's mark changed": _digit("^file "),
}


def _every(pattern, with_):
    def change(qdf, _):
        edited = re.sub(pattern, with_, qdf)
        if edited == qdf:
            raise ValueError("the fault fits nowhere")
        return edited
    return change


IN_THE_BYTES = {
    "figures 12 high": _every(rb"(/F\d+) 13\.5 Tf", rb"\1 12 Tf"),
    "small words 3.5 high": _every(rb"(/F\d+) 4\.6 Tf", rb"\1 3.5 Tf"),
    "all moved 2 to the left": lambda qdf, _: faults.every_page(
        qdf, lambda a, d, e, f: (a, d, e - 2 * 72 / 25.4, f)),
}


def put_words(pdf, fault, file):
    words = [page.texts for page in read_mutool.read(pdf)]
    faults.put(pdf, lambda qdf, _: put_changes(qdf, fault(texts_of(qdf, words))), file)
