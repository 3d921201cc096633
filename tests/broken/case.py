"""What a case is, and the small job that most of them spoil.

Three outcomes. `refused`: exit 3, one sentence on stderr that holds the fragment, nothing else.
`look_only`: exit 0, one sentence, and the figures. `opens`: exit 0, no sentence, and the fragment
among the figures: the valid neighbours, and faults of the work that are findings, not of the file.
"""

import json
from collections import namedtuple
from pathlib import Path

Case = namedtuple("Case", "name outcome fragment content")
MARSH = Path(__file__).resolve().parents[2] / "demo-jobs" / "marsh-lights.json"


def marsh():
    return json.loads(MARSH.read_text(encoding="utf-8"))


def refused(name, fragment, content):
    return Case(name, "refused", fragment, content)


def opens(name, content, fragment='"totals"'):
    return Case(name, "opens", fragment, content)
