"""The canonical text of a job file: the one rule every job maker here writes with.

A value stands on one line if its indent, its key, itself and a comma fit within 100 columns; else
one member or item a line, one space of indent per step in. The job itself always takes several
lines. A column is one character, whatever it takes in bytes. One line end closes the file.
"""

import json
import re
from decimal import Decimal

COLUMNS = 100
ESCAPES = {'"': '\\"', "\\": "\\\\", "\n": "\\n", "\t": "\\t"}


def mm(micrometres):
    """Whole micrometres as the shortest decimal of millimetres: 26000 -> 26, 250 -> 0.25."""
    if micrometres % 1000 == 0:
        return micrometres // 1000
    return (Decimal(micrometres) / 1000).normalize()


def _text(words):
    """A text between quotes; only what JSON insists on is escaped."""
    return '"' + re.sub(r'["\\\x00-\x1f\x7f]',
                        lambda m: ESCAPES.get(m[0], f"\\u{ord(m[0]):04x}"), words) + '"'


def one_line(value):
    """A value without a space or a line end; members keep their order."""
    if isinstance(value, dict):
        return "{" + ",".join(f"{one_line(k)}:{one_line(v)}" for k, v in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ",".join(one_line(item) for item in value) + "]"
    if isinstance(value, Decimal):
        return f"{value:f}"
    if isinstance(value, str):
        return _text(value)
    return json.dumps(value)


def _placed(value, indent, lead, may_stay_whole=True):
    whole = one_line(value)
    fits = may_stay_whole and len(lead) + len(whole) + 1 <= COLUMNS
    if fits or not isinstance(value, (dict, list)) or not value:
        return lead + whole
    inner = indent + " "
    if isinstance(value, dict):
        lines = [_placed(v, inner, f"{inner}{one_line(k)}:") for k, v in value.items()]
        opening, closing = "{", "}"
    else:
        lines = [_placed(item, inner, inner) for item in value]
        opening, closing = "[", "]"
    return lead + opening + "\n" + ",\n".join(lines) + "\n" + indent + closing


def job_text(job):
    """The whole file, as `save` writes it."""
    return _placed(job, "", "", may_stay_whole=False) + "\n"
