"""Holds what a reader saw of one piece against what its job asks for, page by page."""

from collections import defaultdict

from marks import Sighting, page_map
from pages import TOUCH_UM, clip

MATCH_MM = 0.1  # nearest mark within this is the same mark; farther, one is missing, one is extra
KINDS = {"ring": "guide points", "tick": "staple points", "leg": "staple legs",
         "square": "row ends", "stitches": "stitch rows"}
MARK_OF = {"staple": "tick", "point": "ring"}
DASH_MM = 0.001  # a dash and its gap are a stitch, rounded to a micrometre
LEG_CUT_UM = 13_000  # so near a page's edge a staple may be drawn in part only


class Count:
    """Sightings of one kind of mark: what stands in an overlap is expected on both pages."""

    def __init__(self):
        self.expected = self.found = self.extra = self.missing = 0
        self.worst = 0.0
        self.places = set()  # those sighted at least once

    def sighted(self, place, far):
        self.expected += 1
        self.found += 1
        self.worst = max(self.worst, far)
        self.places.add(place)

    def not_sighted(self):
        self.expected += 1
        self.missing += 1

    def agrees(self, tolerance):
        return self.extra == 0 and self.missing == 0 and self.worst <= tolerance

    def words(self):
        return (f"{self.expected} sightings expected, {self.found} found, {self.extra} extra, "
                f"{self.missing} missing, worst {self.worst:.4f} mm")


class Expected:
    """Every mark of a piece by kind, in micrometres, shared places once."""

    def __init__(self, piece, crown_um):
        self.places = {kind: [] for kind in KINDS}
        for row in piece.rows:
            if row.kind != "stitch":
                self.places[MARK_OF[row.kind]] += row.own_places()
            elif row.places:
                # Rows may lie on one another, but a shared corner is the hinge row's alone.
                self.places["square"] += dict.fromkeys(row.ends()[1:] if row.shared_first
                                                       else row.ends())
                if len(row.places) > 1:
                    self.places["stitches"].append(row.places)
            if row.kind == "staple":
                self.places["leg"] += [(x, y + side * crown_um // 2) for x, y in row.places
                                       for side in (-1, 1)]

    def how_many(self, kind):
        """Places of one kind, each counted once."""
        return len({tuple(place) for place in self.places[kind]})


def _inside(place, window):
    return window[0] <= place[0] <= window[2] and window[1] <= place[1] <= window[3]


def _mm(place):
    return float(place[0]) / 1000, float(place[1]) / 1000


def _nearest(place, cells, taken):
    """The nearest mark not yet taken, looked for in the millimetres about a place."""
    best, best_far = None, MATCH_MM
    cx, cy = int(place[0] // 1), int(place[1] // 1)
    for x in (cx - 1, cx, cx + 1):
        for y in (cy - 1, cy, cy + 1):
            for index, mark in cells.get((x, y), ()):
                far = max(abs(mark[0] - place[0]), abs(mark[1] - place[1]))
                if far <= best_far and index not in taken:
                    best, best_far = index, far
    return best, best_far


def match(count, must, may, found):
    """Pairs places that must (or may) be there with marks found; adds to `count`."""
    cells, taken = defaultdict(list), set()
    for index, mark in enumerate(found):
        cells[int(mark[0] // 1), int(mark[1] // 1)].append((index, mark))
    for place, is_needed in [(p, True) for p in must] + [(p, False) for p in may]:
        index, far = _nearest(_mm(place), cells, taken)
        if index is not None:
            taken.add(index)
            count.sighted(place, far)
        elif is_needed:
            count.not_sighted()
    count.extra += len(found) - len(taken)


def _split(places, plan, page_datum, may_be_cut_um):
    """Places a page must show, and places that it may: within a few micrometres of its edge the
    last figure decides, unless the place is a whole number of them."""
    inner = plan.window(page_datum, -may_be_cut_um)
    outer = plan.window(page_datum, may_be_cut_um)
    exact = plan.window(page_datum)

    def is_certain(place):
        if _inside(place, inner):
            return True
        is_whole = all(at == int(at) for at in place)
        return may_be_cut_um == TOUCH_UM and is_whole and _inside(place, exact)

    near = [place for place in places if _inside(place, outer)]
    must = [place for place in near if is_certain(place)]
    return must, [place for place in near if not is_certain(place)]


def _apart(a, b):
    return max(abs(p - q) for pair in zip(a, b) for p, q in zip(*pair))


class Seen:
    """A stroke of stitches on a page, as far as its window shows it."""

    def __init__(self, stroke, plan, page_datum):
        self.stroke = stroke
        ends = [tuple(round(at * 1000, 4) for at in end) for end in stroke[:2]]
        part = clip(ends, plan.window(page_datum)) or clip(ends, plan.window(page_datum, TOUCH_UM))
        self.part = sorted(_mm(end) for end in part) if part and part[0] != part[1] else None

    def off_the_holes(self, row):
        """How far the stroke begins from the nearest hole of the row; far, if its dashes are not
        as long as the row's stitches."""
        gap = sum(abs(float(b - a)) for a, b in zip(row[0], row[1])) / 1000
        along = sum(abs(at - float(first) / 1000) for at, first in zip(self.stroke.start, row[0]))
        if abs(gap - self.stroke.stitch) > DASH_MM:
            return MATCH_MM
        return abs(along - round(along / gap) * gap)


def match_rows(count, rows, found, plan, page_datum):
    """Holds the stitch strokes of a page against the rows, as far as its window shows both."""
    seen = [Seen(stroke, plan, page_datum) for stroke in found]
    seen = [stroke for stroke in seen if stroke.part]
    for row in rows:
        ends = (row[0], row[-1])
        part = clip(ends, plan.window(page_datum))
        if not part or part[0] == part[1]:
            continue
        wanted = sorted(_mm(end) for end in part)
        best = min(seen, default=None, key=lambda stroke: _apart(stroke.part, wanted))
        far = max(_apart(best.part, wanted), best.off_the_holes(row)) if best else MATCH_MM
        if far < MATCH_MM:
            seen.remove(best)
            count.sighted(ends, far)
        elif clip(ends, plan.window(page_datum, -TOUCH_UM)):
            count.not_sighted()
    count.extra += len(seen)


def page_faults(plan, shown):
    """Sentences about pages that are missing, too many or out of order."""
    faults = [f"page at {d} twice" for d in sorted(set(shown)) if shown.count(d) > 1]
    faults += [f"page at {d} is missing" for d in sorted(plan.needed - set(shown))]
    faults += [f"page at {d} shows nothing" for d in sorted(set(shown) - plan.may_be)]
    if shown != [d for d in plan.all_datums() if d in set(shown)]:
        faults.append("the pages do not follow one another from bottom left")
    return faults


def map_faults(plan, pages):
    """Sentences about page maps that do not strike through just the pages that are left out."""
    wanted = plan.across, plan.along, {
        (datum[0] // plan.pitch_um[0], datum[1] // plan.pitch_um[1])
        for datum in set(plan.all_datums()) - plan.may_be}
    return [f"the map of page {index + 1} shows {found}, not {wanted}"
            for index, found in enumerate(page_map(page) for page in pages) if found != wanted]


def compare(expected, plan, pages):
    """Counts by kind of mark, and sentences about the pages themselves."""
    counts = {kind: Count() for kind in KINDS}
    sightings = [Sighting(page, plan) for page in pages]
    for seen in sightings:
        for kind in ("ring", "tick", "leg", "square"):
            near = LEG_CUT_UM if kind == "leg" else TOUCH_UM
            must, may = _split(expected.places[kind], plan, seen.datum, near)
            match(counts[kind], must, may, seen.marks[kind])
        match_rows(counts["stitches"], expected.places["stitches"], seen.marks["stitches"], plan,
                   seen.datum)
    return counts, (page_faults(plan, [seen.datum for seen in sightings]) +
                    map_faults(plan, pages))
