"""One row of a piece, a piece, and where the points of a row stand along its edge.

Even     The fewest equal gaps none of which is wider than asked.
Exact    As many gaps of the asked spacing as fit; the left-over stays at the far end, is split, or
         gets one more point at the far end.

Lengths are whole micrometres; a place within a row is a fraction of them.
"""

from decimal import Decimal
from fractions import Fraction
from functools import lru_cache


def um(value):
    """Millimetres as the job writes them, in whole micrometres."""
    return int(Decimal(value) * 1000)


def run(edge_um, clear_um, spacing_um, exact=False, left_over="end"):
    """Places of the points of one row along its edge, from the datum end."""
    return _run(edge_um, tuple(clear_um), spacing_um, exact, left_over)


@lru_cache(maxsize=1000)
def _run(edge_um, clear_um, spacing_um, exact, left_over):
    """Most rows of a job are alike, and nobody changes what this gives."""
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
    """One row: `places` are (x, y) in micrometres; `kind` is staple, stitch or point.

    `stations` are the same points along the edge, from its datum end. `asked_um` is the spacing
    asked for, centre to centre. `left_over_um` is what exact gaps do not fill; None of even gaps.
    `stops_um` is how far from the hinge side a row was made to stop; None where it was not.
    """

    def __init__(self, code, kind, places, shared_first=False):
        self.code, self.kind, self.places = code, kind, places
        self.shared_first = shared_first
        self.stations, self.asked_um, self.left_over_um = [], 0, None
        self.stops_um = None

    def own_places(self):
        """Without a first place that belongs to the hinge row."""
        return self.places[1:] if self.shared_first else self.places

    def ends(self):
        return (self.places[0], self.places[-1])

    def length_um(self):
        """From the first point to the last."""
        return self.stations[-1] - self.stations[0]

    def spacing_um(self):
        """The even gap, or the exact one; none of a single point."""
        gaps = len(self.stations) - 1
        if gaps < 1:
            return 0
        return self.length_um() / Fraction(gaps) if self.left_over_um is None else self.asked_um


class Piece:
    """A section or a panel with the rows that can be laid and the lines that are drawn of it."""

    def __init__(self, code, kind, width_um, length_um):
        self.code, self.kind = code, kind
        self.width_um, self.length_um = width_um, length_um
        self.rows = []
        self.lines = []  # its own edges, laps and folds, as ((x, y), (x, y))
        self.sleeves = []  # of a section, from the viewer's left
        self.not_laid = []  # codes of rows asked for that have no room

    def file_part(self):
        """The part of a file name that says which piece it is."""
        return f"{self.kind}-{self.code[1:] if self.kind == 'panel' else self.code}"

    def lay(self, row):
        """Keeps a row that has points, or the code of one that has none."""
        if row.places:
            self.rows.append(row)
        else:
            self.not_laid.append(row.code)
