"""Seeded valid jobs: the same seed makes the same jobs on every machine.

They reach for what the demo jobs leave out: odd micrometres, hinge at the right, panels with fewer
rows, sleeves that differ from their section, exact rows with each kind of left-over, clear gaps,
sections of one, pieces narrower than a page, names in several alphabets, members we do not know.
"""

import random
from decimal import Decimal

import job_parts
from job_text import mm

NAMES = ["Łódź", "Ōsaka", "Ἀθῆναι", "Reed & Tide", "Salt, <second> hanging", "The \"Low\" Water",
         "Ålesund", "Żółw – 3", "Harbour (east)", "no 7 \\ left"]


class Draw:
    """One stream of chance; one draw a statement, so that the order is plain."""

    def __init__(self, seed):
        self._random = random.Random(seed)

    def whole(self, low, high):
        return low + int(self._random.random() * (high - low + 1))

    def choice(self, items):
        return items[self.whole(0, len(items) - 1)]

    def chance(self, percent):
        return self.whole(1, 100) <= percent

    def length(self, low_mm, high_mm):
        """A length in millimetres: by turns whole, to a half, to a tenth, to a micrometre."""
        step = self.choice([1000, 1000, 500, 100, 1])
        return mm(self.whole(low_mm * 1000 // step, high_mm * 1000 // step) * step)


def _row_pair(draw, staple_in, on_lap):
    rule = "exact" if draw.chance(25) else "even"
    left_over = draw.choice([None, "split", "extra_point"]) if rule == "exact" else None
    ends = (draw.length(15, 40), draw.length(15, 40))
    spacing = draw.length(30, 90)
    stitch = draw.length(4, 9)
    staples = draw.choice(["stay", "as_the_foot_comes", "before_the_row", "after_the_row", None])
    inset = None if on_lap else (staple_in, draw.length(8, 18))
    stack = draw.length(1, 4)
    return job_parts.pair(inset, ends, spacing, stitch, stack, staples, left_over, rule)


def _sleeve_change(draw):
    change = {}
    if draw.chance(50):
        change["width_mm"] = draw.length(60, 150)
    if draw.chance(60) or not change:
        staple = {"kept_clear_mm": [draw.length(20, 60), draw.length(20, 60)]}
        if draw.chance(50):
            staple["spacing_mm"] = draw.length(30, 90)
        change["side_rows"] = {"staple": staple}
        if draw.chance(50):
            change["side_rows"]["stitch"] = {"stitch_mm": draw.length(4, 9)}
    return change


def _section(draw, number):
    code, count = str(number), draw.choice([1, 2, 3, 5, 8, 13])
    length = draw.length(250, 2400)
    lap = draw.length(12, 24)
    widths = [draw.length(60, 150) for _ in range(draw.whole(1, 6))]
    side = _row_pair(draw, draw.length(20, 28), on_lap=False)
    laps = _row_pair(draw, None, on_lap=True) if count > 1 else None
    leaf = draw.choice([Decimal("0.175"), Decimal("0.25"), Decimal("0.5")])
    tolerances = {}
    if draw.chance(30):
        tolerances["width_tolerance_mm"] = draw.length(1, 2)
    if draw.chance(30):
        tolerances["lap_tolerance_mm"] = draw.length(1, 2)
    made = job_parts.section(code, length, lap, leaf, widths, count, side, laps, tolerances)
    changed = sorted({draw.whole(1, count) for _ in range(draw.whole(0, 2))})
    if changed:
        made["changes"] = {f"{code}-{sleeve:02d}": _sleeve_change(draw) for sleeve in changed}
    return made


def _panel(draw, number):
    width = draw.length(150, 1300)
    length = draw.length(200, 2400)
    hinge_side = draw.choice(["left", "right"])
    inset = draw.length(12, 24)
    spacing = draw.length(30, 90)
    made = job_parts.panel(f"P{number}", (width, length), hinge_side, inset, spacing,
                           draw.length(4, 9), draw.length(1, 2), draw.length(2, 5))
    if draw.chance(25):
        made["rows_on"] = draw.choice([["hinge_side"], ["hinge_side", "top"],
                                       ["hinge_side", "bottom"], ["hinge_side", "top", "bottom"]])
    return made


def random_job(seed):
    """One valid job, as an ordered dict ready for job_text; empty lists are left out."""
    draw = Draw(seed)
    sections = [_section(draw, n) for n in range(1, draw.whole(0, 3) + 1)]
    panels = [_panel(draw, n) for n in range(1, draw.whole(0 if sections else 1, 2) + 1)]
    bays = []
    for number, piece in enumerate(sections + panels, start=1):
        chord = draw.length(400, 1900)
        rise = draw.length(0, 190)
        face = draw.choice(["bulging", "hollow"])
        bays.append(job_parts.bay(number, chord, rise, face, piece["code"]))
    name = ", ".join(draw.choice(NAMES) for _ in range(draw.whole(1, 3)))
    spacing_from = "clear_gap" if draw.chance(20) else "centre_to_centre"
    made = job_parts.job(name, bays, sections, panels, spacing_from)
    for key in ("sections", "panels"):
        if not made[key]:
            del made[key]
    if draw.chance(20):
        made["remark"] = {"by": "Ἀθῆναι", "values": [1, Decimal("2.50"), None, True, {}, []]}
    return made
