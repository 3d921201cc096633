"""Which part of a piece each page shows, and which pages are printed at all.

Page (i, j) of a piece shows what lies between (i, j) times the pitch and the paper inside its
borders; the pitch is that less the overlap. Pages are numbered from bottom left, along each row,
then upward. A page is left out if no row and no line drawn of the piece (edge, lap, fold, flange)
crosses it; it keeps its number.
"""

from fractions import Fraction

BORDER_UM = 10_000
OVERLAP_UM = 10_000  # on large paper more: 1 is left when the printer is 2 % short
PAPERS_UM = {"A4": (210_000, 297_000), "A3": (297_000, 420_000),
             "Letter": (215_900, 279_400), "Tabloid": (279_400, 431_800)}
TOUCH_UM = 2  # nearer than this to a window's edge counts neither in nor out


def paper_size_um(paper):
    """Width and length of a paper by its name, or of "900x1200" in millimetres."""
    if paper in PAPERS_UM:
        return PAPERS_UM[paper]
    across, along = paper.split("x")
    return int(Fraction(across) * 1000), int(Fraction(along) * 1000)


def _count(length_um, window_um, pitch_um):
    return 1 if length_um <= window_um else 1 - (-(length_um - window_um) // pitch_um)


def clip(line, window):
    """The part of a straight line within a window (left, bottom, right, top); None outside it."""
    (x0, y0), (x1, y1) = line
    left, bottom, right, top = window
    low, high = Fraction(0), Fraction(1)
    for start, step, least, most in ((x0, x1 - x0, left, right), (y0, y1 - y0, bottom, top)):
        if step == 0:
            if not least <= start <= most:
                return None
            continue
        near, far = sorted((Fraction(least - start) / step, Fraction(most - start) / step))
        low, high = max(low, near), min(high, far)
    if low > high:
        return None
    return ((x0 + low * (x1 - x0), y0 + low * (y1 - y0)),
            (x0 + high * (x1 - x0), y0 + high * (y1 - y0)))


def bar_nominals_um(paper):
    """Page 0's bars, across and along: 200, or the most whole twenties inside the borders."""
    return tuple(min(200_000, (side - 2 * BORDER_UM) // 20_000 * 20_000)
                 for side in paper_size_um(paper))


def overlap_um(inside_um):
    """What two pages share: 10, or 2 % of the printable length and 1 to spare, in whole mm."""
    return max(OVERLAP_UM, -(-(inside_um // 50 + 1000) // 1000) * 1000)


def lines_of(piece):
    """Every line that may cross a page: what is drawn of the piece, and its rows."""
    return piece.lines + [row.ends() for row in piece.rows if row.places]


class PagePlan:
    """The pages of one piece on one paper; a page is named by its datum (across, along) in um.

    `bars` is what page 0's bars measured, (across, along) in um, or None. The sheet is enlarged by
    nominal over measured each way; the pitch stays, so the datum distances do, and the overlap
    takes the correction up. The border is drawn so that it stays 10 on paper.
    """

    def __init__(self, piece, paper, bars=None):
        self.paper_um = paper_size_um(paper)
        nominal = bar_nominals_um(paper)
        self.shrunk = tuple(Fraction(measured, bar) for measured, bar in
                            zip(bars or nominal, nominal))
        inside = tuple(side - 2 * BORDER_UM for side in self.paper_um)
        self.pitch_um = tuple(side - overlap_um(side) for side in inside)
        self.window_um = tuple(int(side * part) for side, part in zip(inside, self.shrunk))
        self.border_mm = tuple(float(BORDER_UM * part) / 1000 for part in self.shrunk)
        self.across, self.along = (
            _count(length, window, pitch) for length, window, pitch in
            zip((piece.width_um, piece.length_um), self.window_um, self.pitch_um))
        self._lines = lines_of(piece)
        self.needed, self.may_be = self._printed()

    def all_datums(self):
        """Every page, printed or left out, in the order of its number."""
        return [(i * self.pitch_um[0], j * self.pitch_um[1])
                for j in range(self.along) for i in range(self.across)]

    def window(self, datum, wider_um=0):
        """Left, bottom, right, top of what a page shows, in the piece."""
        return (datum[0] - wider_um, datum[1] - wider_um,
                datum[0] + self.window_um[0] + wider_um, datum[1] + self.window_um[1] + wider_um)

    def left_out(self, lines):
        """The pages, column and row, whose windows, edges counted, none of the lines crosses."""
        crossed = set()
        for line in lines:
            spans = [[i for i in range(pages) if i * pitch <= max(ends) and
                      i * pitch + window >= min(ends)]
                     for pages, pitch, window, ends in zip((self.across, self.along),
                                                           self.pitch_um, self.window_um,
                                                           zip(*line))]
            is_upright = any(a == b for a, b in zip(*line))
            crossed |= {(i, j) for i in spans[0] for j in spans[1] if is_upright or clip(
                line, self.window((i * self.pitch_um[0], j * self.pitch_um[1])))}
        return {(i, j) for i in range(self.across) for j in range(self.along)} - crossed

    def _printed(self):
        needed, may_be = set(), set()
        for datum in self.all_datums():
            if any(clip(line, self.window(datum, -TOUCH_UM)) for line in self._lines):
                needed.add(datum)
            if any(clip(line, self.window(datum, TOUCH_UM)) for line in self._lines):
                may_be.add(datum)
        return needed, may_be
