"""Panels of four straight edges that are not square to one another, and where their rows begin.

Line      A row's line is its edge moved inward by `panel_in`; station 0 is where the datum end of
          the edge came to stand: BOTTOM for the hinge side, the hinge side for top and bottom.
Corner    Where two lines meet. A row runs from corner to corner, whole micrometres.
Short     With corners stop_short, top and bottom begin at the first whole micrometre of their line
          that is at least `corner_clear` from the hinge row, from its first hole to its last. That
          place has the clearance and the one a micrometre before it has not: no formula is needed.
"""

import math
from decimal import Decimal

from job_text import mm
from panel_rows import CORNER_CLEAR_MM

OFF_MM = 0.001  # corners are stated to the micrometre
HAIR_MM = 1e-6  # two places nearer than this are one place


def slanted_panel(draw, code):
    """Four edges within a box, each corner up to a fifth of the box inside it."""
    width, length = draw.whole(300, 900), draw.whole(300, 1500)

    def corner(x, y):
        return [mm(x * width * 1000 + (1 - 2 * x) * draw.whole(0, width * 200)),
                mm(y * length * 1000 + (1 - 2 * y) * draw.whole(0, length * 200))]

    corners = [corner(0, 1), corner(0, 0), corner(1, 0), corner(1, 1)]
    roles = draw.choice([("hinge_side", "bottom", "fly_side", "top"),
                         ("fly_side", "bottom", "hinge_side", "top")])
    panel = {"code": code,
             "outline": [{"role": role, "from_mm": at} for role, at in zip(roles, corners)],
             "backing_thickness_mm": 1, "panel_in_mm": draw.length(10, 24),
             "spacing_mm": draw.length(30, 90), "stitch_mm": draw.length(4, 9),
             "stack_mm": Decimal("3.9")}
    if draw.chance(80):
        panel["corners"] = "stop_short"
        panel["corner_clear_mm"] = draw.length(1, 60)
    return panel


class Line:
    """A row's line: its place at station 0, its direction, and what it meets."""

    def __init__(self, start, end, datum_at_end, in_mm):
        along = (end[0] - start[0], end[1] - start[1])
        size = math.hypot(*along)
        along = (along[0] / size, along[1] / size)
        inward = (-along[1] * in_mm, along[0] * in_mm)
        datum = end if datum_at_end else start
        self.zero = (datum[0] + inward[0], datum[1] + inward[1])
        self.along = (-along[0], -along[1]) if datum_at_end else along

    def at(self, station):
        return (self.zero[0] + station * self.along[0], self.zero[1] + station * self.along[1])

    def meets(self, other):
        """The station at which it meets the other line."""
        turn = self.along[0] * other.along[1] - self.along[1] * other.along[0]
        gap = (other.zero[0] - self.zero[0], other.zero[1] - self.zero[1])
        return (gap[0] * other.along[1] - gap[1] * other.along[0]) / turn


def _lines(panel):
    """The line of each edge by its role. Edges run anticlockwise, so with the hinge side at the
    left it comes down and its datum, BOTTOM, is its end; the others turn about likewise."""
    edges = panel["outline"]
    starts = [tuple(float(at) for at in edge["from_mm"]) for edge in edges]
    at_left = edges[0]["role"] == "hinge_side"
    is_reversed = {"hinge_side": at_left, "top": at_left, "bottom": not at_left,
                   "fly_side": False}
    return {edge["role"]: Line(start, end, is_reversed[edge["role"]], float(panel["panel_in_mm"]))
            for edge, start, end in zip(edges, starts, starts[1:] + starts[:1])}


def _far(place, first, last):
    """Distance from a place to a straight row."""
    along = (last[0] - first[0], last[1] - first[1])
    gap = (place[0] - first[0], place[1] - first[1])
    part = (gap[0] * along[0] + gap[1] * along[1]) / (along[0] ** 2 + along[1] ** 2)
    part = min(max(part, 0.0), 1.0)
    return math.hypot(gap[0] - part * along[0], gap[1] - part * along[1])


def _begins_wrong(panel, row, line, lines, hinge):
    """What is wrong with where top or bottom begins."""
    first, corner = float(row["first_mm"]), line.meets(lines["hinge_side"])
    if panel.get("corners") != "stop_short":
        return abs(first - corner) > OFF_MM or not row.get("shares_first_point")
    clear = float(panel.get("corner_clear_mm", CORNER_CLEAR_MM))
    ends = [lines["hinge_side"].at(float(hinge[key])) for key in ("first_mm", "last_mm")]
    has, had = (_far(line.at(station), *ends) for station in (first, first - OFF_MM))
    return (has < clear - HAIR_MM or had >= clear + HAIR_MM or first <= corner or
            "shares_first_point" in row)


def objections(panel, rows):
    """What is wrong with the rows of a slanted panel, in words; `rows` are its figures."""
    lines, wrong = _lines(panel), []
    by_code = {(row["code"], row["kind"]): row for row in rows}
    for kind, asked in (("point", "spacing_mm"), ("stitch", "stitch_mm")):
        hinge = by_code.get((f"{panel['code']} hinge", kind))
        for role, last_at in (("hinge_side", "top"), ("top", "fly_side"), ("bottom", "fly_side")):
            row = by_code.get((f"{panel['code']} {role.split('_')[0]}", kind))
            if not row or not hinge:
                wrong.append(f"{panel['code']} {role} has no {kind} row")
                continue
            line = lines[role]
            ends_well = abs(float(row["last_mm"]) - line.meets(lines[last_at])) <= OFF_MM
            if role == "hinge_side":
                begins_well = abs(float(row["first_mm"]) - line.meets(lines["bottom"])) <= OFF_MM
            else:
                begins_well = not _begins_wrong(panel, row, line, lines, hinge)
            gaps = math.ceil((row["last_mm"] - row["first_mm"]) / panel[asked])
            if not (begins_well and ends_well and row["gaps"] == gaps):
                wrong.append(f"{row['code']} {kind}: {row['first_mm']} to {row['last_mm']}, "
                             f"{row['gaps']} gaps; begins well: {begins_well}, ends well: "
                             f"{ends_well}, {gaps} gaps wanted")
    return wrong
