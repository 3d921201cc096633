"""What `figures` must say of a job, worked out again here from the job file alone.

Every leaf is one of: a text, a truth, None (null), a count (an int), a Length, or ABSENT, a
member that must not be there. Findings are not worked out again, but for the rows that
cannot be laid.

Lengths     are in micrometres and not rounded: the figure is the whole micrometre next to it, and
            either of two where it lies in the middle between them.
Build-up    Of n sleeves that are there: at worst n width tolerances and n - 1 lap tolerances; it
            could end up at the root of their summed squares.
Comparison  Side and lap rows of all sections, first with every side seam separate, then with every
            one shared, all else as the job has it.
"""

import math
from fractions import Fraction

from as_saved import checksum
from job_bays import bay_figures
from job_rows import as_sewn, clear_gap_um
from job_sewing import sewing
from pages import PagePlan, lines_of
from rows import Piece, um
from section_rows import lap_middles_um, section_piece
from sleeves import blank_of

WIDTH_TOLERANCE_UM = 1_000  # common practice; a section may say otherwise
LAP_TOLERANCE_UM = 500  # likewise
ABSENT = object()


class Length:
    """Micrometres, to be said in millimetres with three decimals, or, of long runs, in metres."""

    def __init__(self, exact_um, unit_um=1):
        self.exact_um, self.unit_um = Fraction(exact_um), unit_um

    def allows(self, said):
        """The whole unit nearest to the length; `said` is in millimetres or metres."""
        units = Fraction(said) * 1000
        return units.denominator == 1 and abs(units * self.unit_um - self.exact_um) <= (
            Fraction(self.unit_um, 2) + Fraction(1, 1_000_000))

    def __repr__(self):
        return f"{float(self.exact_um / self.unit_um) / 1000:.4f}"


def metres(exact_um):
    return Length(exact_um, unit_um=1000)


def place_of(piece, row):
    """side, lap or panel."""
    return "panel" if piece.kind == "panel" else "lap" if "+" in row.code else "side"


def _counts(pieces):
    """Counts and the length of the stitch rows; a shared hole is the hinge row's alone."""
    counts = dict.fromkeys(("side_staples", "lap_staples", "side_rows", "lap_rows", "panel_rows",
                            "stitch_holes", "panel_points"), 0)
    row_um = 0
    for piece in pieces:
        for row in piece.rows:
            place, points = place_of(piece, row), len(row.own_places())
            if row.kind == "stitch":
                counts[f"{place}_rows"] += 1
                counts["stitch_holes"] += points
                row_um += row.length_um()
            else:
                counts["panel_points" if row.kind == "point" else f"{place}_staples"] += points
    return {**counts, "row_m": metres(row_um)}


def _pages(pieces, paper, count_of):
    """Pages of the full-face guides by kind of piece, as `count_of` counts those of one."""
    counts = {"sections": 0, "panels": 0}
    for piece in pieces:
        bare = Piece(piece.code, piece.kind, piece.width_um, piece.length_um)
        counts[f"{piece.kind}s"] += count_of(piece, PagePlan(bare, paper))
    return counts


def _page_figures(pieces, papers):
    """All pages of the grids, and those of them that nothing crosses."""
    return {"pages": {paper: _pages(pieces, paper, lambda _, plan: len(plan.all_datums()))
                      for paper in papers},
            "pages_left_out": {paper: _pages(pieces, paper, lambda piece, plan: len(
                plan.left_out(lines_of(piece)))) for paper in papers}}


def _sleeve(section, sleeve):
    blank = blank_of(section, sleeve)
    codes = {f"{side}_neighbour": other.code if other else None
             for side, other in sleeve.neighbours.items()}
    return {"code": sleeve.code, "kind": "sleeve", "left_mm": Length(sleeve.left_um),
            "width_mm": Length(sleeve.width_um), "length_mm": Length(um(section["length_mm"])),
            "blank_mm": Length(blank.width_um), "blanks": blank.count, **codes,
            "fold_mm": ABSENT if blank.fold_um is None else Length(blank.fold_um)}


def _tolerance_um(section, what, assumed_um):
    key = f"{what}_tolerance_mm"
    return um(section[key]) if key in section else assumed_um


def _section(section, piece):
    """What a section has beside its size."""
    sleeves = piece.sleeves
    width_off = _tolerance_um(section, "width", WIDTH_TOLERANCE_UM)
    lap_off = _tolerance_um(section, "lap", LAP_TOLERANCE_UM)
    n, laps = len(sleeves), len(sleeves) - 1
    return {"row_middles_mm": [Length(x) for x in lap_middles_um(section, sleeves)],
            "running_totals_mm": [Length(one.left_um + one.width_um) for one in sleeves],
            "likely_mm": Length(math.sqrt(n * width_off ** 2 + laps * lap_off ** 2)),
            "worst_mm": Length(n * width_off + laps * lap_off)}


def _pieces(job, pieces):
    """Each section followed by its sleeves, then the panels."""
    said, sections = [], {section["code"]: section for section in job.get("sections", [])}
    for piece in pieces:
        entry = {"code": piece.code, "kind": piece.kind, "width_mm": Length(piece.width_um),
                 "length_mm": Length(piece.length_um)}
        if piece.kind == "section":
            entry.update(_section(sections[piece.code], piece))
        said.append(entry)
        said += [_sleeve(sections[piece.code], one) for one in piece.sleeves]
    return said


def _left_over(row):
    """Of exact rows; where nothing is left over, none need be said."""
    if row.left_over_um == 0:
        return {}
    return {"left_over_mm": ABSENT if row.left_over_um is None else Length(row.left_over_um)}


def _row(row):
    return {"code": row.code, "kind": row.kind, "points": len(row.stations),
            "gaps": len(row.stations) - 1, "spacing_mm": Length(row.spacing_um()),
            "first_mm": Length(row.stations[0]), "last_mm": Length(row.stations[-1]),
            **_left_over(row),
            "shares_first_point": True if row.shared_first else ABSENT,
            "stops_from_hinge_mm": ABSENT if row.stops_um is None else Length(row.stops_um)}


def side_seams(job):
    """Both ways of the side seams."""
    ways = {}
    for way in ("separate", "shared"):
        pieces = [section_piece({**section, "side_seams": way}, clear_gap_um(job))
                  for section in as_sewn(job).get("sections", [])]
        counts = _counts(pieces)
        ways[way] = {"rows": counts["side_rows"] + counts["lap_rows"],
                     "stitch_holes": counts["stitch_holes"], "row_m": counts["row_m"]}
    return ways


def figures_of(job, pieces, papers=("A4",)):
    """All that is worked out again here; `pieces` are those of the job, `papers` those whose pages
    are counted."""
    return {"job": {"name": job["name"], "checksum": checksum(job)},
            "totals": {**_counts(pieces), **sewing(job, pieces, metres),
                       **_page_figures(pieces, papers)},
            "pieces": _pieces(job, pieces),
            "rows": [_row(row) for piece in pieces for row in piece.rows],
            "bays": [bay_figures(job, bay, pieces, Length, ABSENT)
                     for bay in job.get("bays", [])],
            "side_seams": side_seams(job)}
