"""Knows our marks by their shape alone, and puts what the pages show together into one piece.

staple point   a straight stroke 6.00 long and 0.25 wide: the tick, square to the row; its middle is
               the point. Filled leg dots of 1.80 stand half a crown before and after it.
guide point    a ring of 3.00, stroked; its middle is the point
row end        an open square of 2.00; its middle is the first or last hole
stitch row     a dashed straight stroke 0.50 wide; it begins at a hole, and so does each dash
page 0         bars: filled boxes, one across, one along
"""

import re
from collections import namedtuple

from ink import lengthened

NEAR = 0.03  # a size may be this much off and still be the mark
SIZES = {"ring": 3.0, "tick": 6.0, "square": 2.0, "leg": 1.8}
WIDTHS = {"tick": 0.25, "stitches": 0.5}
MAP_PEN, MAP_STEEP = 0.2, 1.4
BAR_THICK = (2.0, 15.0)  # a bar is neither a line nor a field
BAR_LEAST = 60.0


def _extent(ends):
    xs, ys = [x for x, _ in ends], [y for _, y in ends]
    return max(xs) - min(xs), max(ys) - min(ys)


def middle(ends):
    """The middle of what the corners span."""
    xs, ys = [x for x, _ in ends], [y for _, y in ends]
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def _is(size, wanted, near=NEAR):
    return abs(size - wanted) <= near


def _is_round(shape, across):
    width, length = _extent(shape.ends)
    return shape.curves >= 4 and _is(width, across) and _is(length, across)


def _is_straight(shape):
    return shape.kind == "stroke" and len(shape.ends) == 2 and not shape.curves


def what(shape):
    """The kind of mark a shape is; None for anything else on the page."""
    if _is_straight(shape):
        width, length = _extent(shape.ends)
        if shape.dash:
            return "stitches" if _is(shape.width, WIDTHS["stitches"]) else None
        if _is(shape.width, WIDTHS["tick"]) and _is(max(width, length), SIZES["tick"]):
            return "tick" if min(width, length) <= NEAR else None
        return None
    if shape.kind == "stroke" and _is_round(shape, SIZES["ring"]):
        return "ring"
    if shape.kind == "fill" and _is_round(shape, SIZES["leg"]):
        return "leg"
    if shape.kind == "stroke" and not shape.curves and shape.closed:
        width, length = _extent(shape.ends)
        if _is(width, SIZES["square"]) and _is(length, SIZES["square"]):
            return "square"
    return None


def bars(page):
    """Lengths of the solid bars of page 0: (across, along); a missing one is 0."""
    across = along = 0.0
    for shape in page.shapes:
        is_box = not shape.curves and len(shape.ends) in (4, 5)
        if shape.kind != "fill" or not is_box:
            continue
        width, length = _extent(shape.ends)
        thick, long = sorted((width, length))
        if BAR_THICK[0] <= thick <= BAR_THICK[1] and long >= BAR_LEAST:
            across, along = (max(across, width), along) if width == long else (
                across, max(along, length))
    return across, along


def datum(page):
    """The datum distances of a page in whole micrometres, read from its words."""
    words = " ".join(page.texts)
    said = [re.findall(rf"datum {way} (\d+(?:\.\d+)?)", words) for way in ("across", "along")]
    if len(said[0]) != 1 or len(said[1]) != 1:
        raise ValueError(f"a page says its datum across {len(said[0])} times and along "
                         f"{len(said[1])} times, not once: do other words lie on it?")
    return tuple(round(float(figure[0]) * 1000) for figure in said)


def _is_thin(shape):
    return (shape.kind == "stroke" and not shape.curves and not shape.dash and
            _is(shape.width, MAP_PEN))


def is_map_cell(shape):
    width, height = _extent(shape.ends)
    return (_is_thin(shape) and len(set(shape.ends)) == 4 and width > NEAR and
            _is(height / width, MAP_STEEP, 0.1))


def page_map(page):
    """Columns, rows and the struck places (column, row) of the page map: equal open boxes of a thin
    pen, 1.4 times as high as wide, some with a line from corner to corner."""
    boxes = [shape for shape in page.shapes if is_map_cell(shape)]
    if not boxes:
        return 0, 0, set()
    size = _extent(boxes[0].ends)
    columns, rows = ([], [])
    for ways, which in ((columns, 0), (rows, 1)):
        for middles in sorted(middle(box.ends)[which] for box in boxes):
            if not ways or middles - ways[-1] > size[which] / 2:
                ways.append(middles)

    def at(ends):
        return tuple(min(range(len(ways)), key=lambda i: abs(ways[i] - middle(ends)[which]))
                     for ways, which in ((columns, 0), (rows, 1)))

    struck = {at(shape.ends) for shape in page.shapes if _is_thin(shape) and _is_straight(shape) and
              all(_is(side, cell, 0.05) for side, cell in zip(_extent(shape.ends), size))}
    return len(columns), len(rows), struck


def as_printed(shape, shrunk):
    """A shape as it comes out of a printer whose bars came out `shrunk` each way."""
    if shrunk == (1, 1):
        return shape
    across, along = (float(part) for part in shrunk)
    ends = [(x * across, y * along) for x, y in shape.ends]
    way = lengthened(shape.ends, ends)
    return shape._replace(ends=ends, width=shape.width * (across * along) ** 0.5,
                          dash=tuple(part * way for part in shape.dash))


# A stroke of stitches as drawn: where it begins and ends, and one dash with its gap.
Stitches = namedtuple("Stitches", "start end stitch")


class Sighting:
    """What one page shows, in the millimetres of the piece, as `plan` lays its pages.

    A corrected sheet is first brought back to what the printer will make of it.
    """

    def __init__(self, page, plan):
        self.datum = datum(page)
        self.marks = {"ring": [], "tick": [], "leg": [], "square": [], "stitches": []}
        shift = [at / 1000 - border for at, border in zip(self.datum, plan.border_mm)]
        for shape in page.shapes:
            shape = as_printed(shape, plan.shrunk)
            kind = what(shape)
            if kind is None:
                continue
            ends = [(x + shift[0], y + shift[1]) for x, y in shape.ends]
            if kind == "stitches":
                self.marks[kind].append(Stitches(ends[0], ends[1], sum(shape.dash)))
            else:
                self.marks[kind].append(middle(ends))
