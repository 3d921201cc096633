"""Every row of a job, worked out again here from the job file alone.

The definitions, in the millimetres of a piece (x across from its left edge, y from BOTTOM):

Sleeve   Both long edges are sewn. Each has a staple row and a stitch row, so far in from the edge,
         kept clear of both ends. Its left edge stands at the widths before it less the laps.
Lap      One staple row and one stitch row on its middle line.
Panel    The hinge row runs from corner to corner of the rectangle `panel_in` inside the backing;
         top and bottom begin at the hinge row's ends and go to `panel_in` from the fly side. The
         place they share is the hinge row's. Points and holes stand on the same line.
Even     The fewest equal gaps none of which is wider than asked.
Exact    As many gaps of the asked spacing as fit; the left-over stays at the far end, is split, or
         gets one more point at the far end.

Lengths are whole micrometres; a place within a row is a fraction of them.
"""

import json
from decimal import Decimal
from fractions import Fraction

CROWN_UM = 12_000  # common practice; a job may say otherwise


def um(value):
    """Millimetres as the job writes them, in whole micrometres."""
    return int(Decimal(value) * 1000)


def read_job(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file, parse_float=Decimal)


def run(edge_um, clear_um, spacing_um, exact=False, left_over="end"):
    """Places of the points of one row along its edge, from the datum end."""
    start, usable = clear_um[0], edge_um - clear_um[0] - clear_um[1]
    if usable < 0:
        return []
    if not exact:
        gaps = -(-usable // spacing_um)
        return [start + Fraction(usable * i, gaps) for i in range(gaps + 1)] if gaps else [start]
    gaps, rest = divmod(usable, spacing_um)
    if left_over == "split":
        start += Fraction(rest, 2)
    places = [start + spacing_um * i for i in range(gaps + 1)]
    if left_over == "extra_point" and rest:
        places.append(clear_um[0] + usable)
    return places


class Row:
    """One row: `places` are (x, y) in micrometres; `kind` is staple, stitch or point."""

    def __init__(self, code, kind, places, shared_first=False):
        self.code, self.kind, self.places = code, kind, places
        self.shared_first = shared_first

    def own_places(self):
        """Without a first place that belongs to the hinge row."""
        return self.places[1:] if self.shared_first else self.places

    def ends(self):
        return (self.places[0], self.places[-1])


class Piece:
    """A section or a panel with its rows and the lines that are drawn of it."""

    def __init__(self, code, kind, width_um, length_um):
        self.code, self.kind = code, kind
        self.width_um, self.length_um = width_um, length_um
        self.rows = []
        self.lines = []  # its own edges and its cloth's, as ((x, y), (x, y))

    def file_part(self):
        """The part of a file name that says which piece it is."""
        return f"{self.kind}-{self.code[1:] if self.kind == 'panel' else self.code}"


def _merged(rule, change):
    return {**rule, **(change or {})}


def _upright(code, kind, x, edge_um, rule, spacing_um):
    exact = rule.get("rule", "even") == "exact"
    clear = [um(end) for end in rule["kept_clear_mm"]]
    places = run(edge_um, clear, spacing_um, exact, rule.get("left_over", "end"))
    return Row(code, kind, [(x, y) for y in places])


def _pair(code, x_staple, x_stitch, length_um, pair, clear_gap_um):
    staple, stitch = pair["staple"], pair["stitch"]
    return [
        _upright(code, "staple", x_staple, length_um, staple,
                 um(staple["spacing_mm"]) + clear_gap_um),
        _upright(code, "stitch", x_stitch, length_um, stitch, um(stitch["stitch_mm"])),
    ]


def _sleeve_rows(code, left, right, length_um, pair, clear_gap_um):
    staple_in, stitch_in = (um(pair[row]["in_from_edge_mm"]) for row in ("staple", "stitch"))
    return (_pair(f"{code} left", left + staple_in, left + stitch_in, length_um, pair,
                  clear_gap_um) +
            _pair(f"{code} right", right - staple_in, right - stitch_in, length_um, pair,
                  clear_gap_um))


def section_piece(section, clear_gap_um):
    """A section; sleeves from the viewer's left, rows in the order left, right, then the laps."""
    length, lap = um(section["length_mm"]), um(section["lap_mm"])
    changes, widths = section.get("changes", {}), section["widths_mm"]
    piece = Piece(section["code"], "section", 0, length)
    lefts, left = [], 0
    for index in range(section["count"]):
        code = f"{section['code']}-{index + 1:02d}"
        change = changes.get(code, {})
        width = um(change.get("width_mm", widths[index % len(widths)]))
        rows = change.get("side_rows", {})
        pair = {row: _merged(section["side_rows"][row], rows.get(row))
                for row in ("staple", "stitch")}
        piece.rows += _sleeve_rows(code, left, left + width, length, pair, clear_gap_um)
        piece.lines += [((left, 0), (left, length)), ((left + width, 0), (left + width, length))]
        lefts.append(left)
        piece.width_um = left + width
        left += width - lap
    for index in range(1, section["count"]):
        code = f"{section['code']}-{index:02d}+{index + 1:02d}"
        middle = lefts[index] + Fraction(lap, 2)
        piece.rows += _pair(code, middle, middle, length, section["lap_rows"], clear_gap_um)
    piece.lines += [((0, y), (piece.width_um, y)) for y in (0, length)]
    return piece


# How far cloth stands back on a panel (our choice, drawn as a dotted line): from the edges that
# are sewn, and from the fly side.
CLOTH_UM = 8_000
CLOTH_FLY_UM = 12_000


def _box(left, bottom, right, top):
    corners = [(left, bottom), (right, bottom), (right, top), (left, top)]
    return list(zip(corners, corners[1:] + corners[:1]))


def panel_piece(panel):
    """A rectangular panel: hinge, top and bottom, points and holes on each."""
    width, length = (um(side) for side in panel["backing_mm"])
    inset, at_left = um(panel["panel_in_mm"]), panel["hinge_side"] == "left"
    piece = Piece(panel["code"], "panel", width, length)
    fly = CLOTH_FLY_UM
    piece.lines = _box(0, 0, width, length) + _box(
        CLOTH_UM if at_left else fly, CLOTH_UM, width - (fly if at_left else CLOTH_UM),
        length - CLOTH_UM)
    wanted = panel.get("rows_on", ["hinge_side", "top", "bottom"])
    for kind, key in (("point", "spacing_mm"), ("stitch", "stitch_mm")):
        spacing = um(panel[key])
        up = run(length, (inset, inset), spacing)
        along = run(width, (inset, inset), spacing)
        across = along if at_left else [width - x for x in along]
        hinge_x = inset if at_left else width - inset
        hinged = "hinge_side" in wanted
        if hinged:
            piece.rows.append(Row(f"{piece.code} hinge", kind, [(hinge_x, y) for y in up]))
        for name, y in (("top", length - inset), ("bottom", inset)):
            if name in wanted:
                piece.rows.append(Row(f"{piece.code} {name}", kind, [(x, y) for x in across],
                                      shared_first=hinged and bool(up)))
    return piece


def pieces_of(job):
    """Sections in the job's order, then panels."""
    clear_gap = 0
    if job["spacing_from"] == "clear_gap":
        clear_gap = um(job["crown_mm"]) if "crown_mm" in job else CROWN_UM
    return ([section_piece(section, clear_gap) for section in job.get("sections", [])] +
            [panel_piece(panel) for panel in job.get("panels", [])])


def crown_um(job):
    return um(job["crown_mm"]) if "crown_mm" in job else CROWN_UM
