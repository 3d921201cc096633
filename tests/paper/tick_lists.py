"""Reads printed tick lists with poppler and mutool, and holds every figure against the job.

A list is read as words in the order they were drawn: `pdftotext -raw`, and the texts of `mutool
trace`. Distances, counts, gaps and sums are worked out again here from the job alone. The engine
rounds a length once to whole micrometres and then to half a millimetre; where the first lies
exactly between two either will do.
"""

import re
import subprocess
from fractions import Fraction

import read_mutool
from job_rows import um

BODY = "Not a structural or fire calculation. "
FIGURE = r"−?\d+\.\d"
LENGTH = r"−?\d+(?:\.\d+)?"
CELL = rf"(?:{FIGURE}|not laid)"
MEASURED = r"measured (from BOTTOM|from the hinge side, along the row)"
CONTINUED = re.compile(
    r"List \d+, continued |(?:Side rows|Joining rows|Rows), continued "
    r"row (?:staples|points) stitches list ")
HEADS = re.compile(
    r"(?P<sides>Side rows Their lines, from the section's left edge row staples stitches list )|"
    r"(?P<laps>Joining rows Their lines, from the section's left edge row staples stitches list )|"
    r"(?P<panel>Rows They stand in from the edge by row points stitches list )|"
    r"(?P<insets>Side rows, in from their sleeve's edge )|"
    r"(?P<serves>List \d+ serves )|(?P<list>List \d+ )|"
    r"(?P<stitches>Stitch rows The machine sews these; the trial seam decides the stitch\. A "
    r"stitch 0\.1 longer than said is 10 out after 100 stitches\. )")
ENTRY = re.compile(rf"(\S.*?) ({CELL}) ({CELL}) (\d+|–) ")
INSET = re.compile(rf"(staples|stitches) ({FIGURE}): (.*?) (?=staples |stitches |$)")
TITLE = re.compile(
    rf"(?P<names>.*?) ?(?:(?P<rows>\d[\d,]*) rows: the same list\. )?"
    rf"(?P<count>\d[\d,]*) (?:staples?|points?)(?P<corner> and the corner)?"
    rf"(?:, (?P<gap>\d+\.\d\d) centre to centre)?(?:, the last gap (?P<last>\d+\.\d\d))?, "
    rf"{MEASURED} (?P<rest>.*)")
CORNER = re.compile(rf"({FIGURE}) corner, the hinge row's ")
NUMBERED = re.compile(rf"(\d[\d,]*) ({FIGURE}) ")
SUM = re.compile(
    rf"sum check: (?:the one figure is (?P<one>{FIGURE}) $|(?P<first>{LENGTH})"
    rf"(?: \+ (?P<times>\d[\d,]*) × (?P<gap>{LENGTH}))?(?: \+ (?P<more>{LENGTH}))? = "
    rf"(?P<last>{LENGTH}) (?P<between>.*)the (?P<count>\d[\d,]*) figures add up to "
    rf"(?P<sum>{FIGURE}) $)")
STITCHES = re.compile(
    rf"(?P<names>.*?) (?:(?P<rows>\d[\d,]*) rows, each: )?(?:first hole (?P<first>{FIGURE})"
    rf"(?P<corner> \(the hinge row's corner\))?, last hole (?P<last>{FIGURE}), (?P<count>\d[\d,]*) "
    rf"stitch(?:es)? of (?P<gap>\d+\.\d\d)|one hole at (?P<one>{FIGURE})"
    rf"(?: \(the hinge row's corner\))?), {MEASURED} ")
TICK_BOX_MM = 4.0


def words_by_poppler(pdf):
    done = subprocess.run(["pdftotext", "-raw", str(pdf), "-"], capture_output=True, timeout=120)
    if done.returncode != 0 or done.stderr:
        raise ValueError(f"pdftotext: {done.stderr.decode(errors='replace').strip()}")
    return [" ".join(page.split()) for page in done.stdout.decode("utf-8").split("\f")[:-1]]


def words_by_mutool(pdf):
    return [" ".join(" ".join(page.texts).split()) for page in read_mutool.read(pdf)]


READERS = {"poppler": words_by_poppler, "mutool": words_by_mutool}


def tick_boxes(pdf):
    """How many open squares of a tick box's size the pages hold."""
    boxes = 0
    for page in read_mutool.read(pdf):
        for shape in page.shapes:
            xs, ys = zip(*shape.ends)
            sides = (max(xs) - min(xs), max(ys) - min(ys))
            boxes += (shape.kind == "stroke" and shape.closed and not shape.curves and
                      all(abs(side - TICK_BOX_MM) < 0.01 for side in sides))
    return boxes


def number(words):
    return Fraction(words.replace("−", "-").replace(",", ""))


def _rounded(value, step):
    """To a multiple of step, halves away from zero."""
    steps = (abs(value) + Fraction(step, 2)) // step * step
    return steps if value >= 0 else -steps


def whole_um(value):
    """The micrometres a length may have been stored as."""
    value = Fraction(value)
    low = value.numerator // value.denominator
    return {low, low + 1} if value - low == Fraction(1, 2) else {int(_rounded(value, 1))}


def printed(value, step_um=500):
    """What a length in micrometres may be printed as, in millimetres."""
    return {Fraction(_rounded(um_, step_um), 1000) for um_ in whole_um(value)}


class Wanted:
    """The rows of a piece as its tick list must tell them."""

    def __init__(self, piece, job):
        self.piece = piece
        self.laid = [row for row in piece.rows if row.places]
        self.points = [row for row in self.laid if row.kind != "stitch"]
        self.stitches = [row for row in self.laid if row.kind == "stitch"]
        self.entry = next(entry for kind in ("sections", "panels") for entry in job.get(kind, [])
                          if entry["code"] == piece.code)
        self.hinge_at_right = self.entry.get("hinge_side") == "right"

    def datum(self, row):
        is_across = self.piece.kind == "panel" and not row.code.endswith(" hinge")
        return "from the hinge side, along the row" if is_across else "from BOTTOM"

    def along(self, row):
        """Distances of a row's places from its datum."""
        if self.datum(row) == "from BOTTOM":
            return [y for _, y in row.places]
        return [self.piece.width_um - x if self.hinge_at_right else x for x, _ in row.places]

    def line(self, row):
        """Across the section from its left edge; of a panel in from the row's own edge."""
        return um(self.entry["panel_in_mm"]) if self.piece.kind == "panel" else row.places[0][0]

    def inset(self, row):
        """How far a side row stands in from its sleeve's edge."""
        which = "stitch" if row.kind == "stitch" else "staple"
        change = self.entry.get("changes", {}).get(row.code.split(" ")[0], {})
        changed = change.get("side_rows", {}).get(which, {})
        return um(changed.get("in_from_edge_mm",
                              self.entry["side_rows"][which]["in_from_edge_mm"]))


def named(names, rows):
    """The rows that a list's name says it serves: "1-01 left to 1-04 right, 1-06 left"."""
    codes, found = [row.code for row in rows], []
    for part in names.split(", "):
        ends = part.split(" to ")
        if any(end not in codes for end in ends):
            raise ValueError(f"\"{part}\" names no row")
        found += rows[codes.index(ends[0]):codes.index(ends[-1]) + 1]
    return found


class TickList:
    """One tick list as read: `wrong` gathers what does not agree with the job, in words."""

    def __init__(self, pages, wanted):
        self.wanted, self.wrong = wanted, []
        self.figures = self.boxes = 0
        self.list_of = {}  # code -> number of its list
        self.codes_in_tables, self.listed, self.sewn = [], [], []
        self._pages(pages)
        body = CONTINUED.sub("", "".join(page.split(BODY, 1)[-1] + " " for page in pages))
        heads = list(HEADS.finditer(body))
        serves, tables = "", []
        for head, after in zip(heads, heads[1:] + [None]):
            words = body[head.end():after.start() if after else len(body)]
            kind = head.lastgroup
            if kind == "serves":
                serves = words
            elif kind == "list":
                self._guarded(self._list, head[0].split()[1],
                              serves + words.removeprefix("Its rows are named before it. "))
                serves = ""
            elif kind == "stitches":
                self._guarded(self._stitch_rows, words)
            elif kind == "insets":
                self._guarded(self._insets, words)
            else:
                tables.append((kind, words))
        for kind, words in tables:  # they name the lists, so the lists come first
            self._guarded(self._table, kind, words)
        self._none_missing()

    def _guarded(self, read, *words):
        try:
            read(*words)
        except (ValueError, AttributeError, IndexError) as reason:
            self.wrong.append(f"not to be read: {reason}: {' '.join(words)[:80]}")

    def _want(self, holds, words):
        if not holds:
            self.wrong.append(words)

    def _pages(self, pages):
        for index, page in enumerate(pages, start=1):
            for words in (f"page {index} of {len(pages)}, ", "FRONT", "tick list, ", BODY.strip(),
                          "Figures guide; the trial seam and the dry run decide."):
                self._want(words in page, f"page {index} does not say \"{words}\"")

    def _insets(self, words):
        seen = []
        for part in INSET.finditer(words):
            of_kind = self.wanted.stitches if part[1] == "stitches" else self.wanted.points
            for row in named(part[3], [row for row in of_kind if "+" not in row.code]):
                seen.append(row)
                self._want(number(part[2]) in printed(self.wanted.inset(row)),
                           f"{row.code} stands {part[2]} in")
        self._want(INSET.sub("", words).strip() == "", f"between insets: {words}")
        sides = [row for row in self.wanted.laid if "+" not in row.code]
        self._want(len(seen) == len(set(map(id, seen))) == len(sides), "insets of side rows")

    def _table(self, kind, words):
        self._want(ENTRY.sub("", words) == "", f"{kind}: {ENTRY.sub('', words)[:60]}")
        codes = {row.code.replace(" ", ""): row.code for row in self.wanted.piece.rows}
        for code, *cells, listed in ENTRY.findall(words):
            # A code too long for its column is broken into lines, read as words.
            code = codes.get(code.replace(" ", ""), code)
            self.codes_in_tables.append(code)
            self._want(("+" in code) == (kind == "laps"), f"{code} in the table of {kind}")
            self._want(listed == self.list_of.get(code, "–"), f"{code} in list {listed}")
            for cell, rows in zip(cells, (self.wanted.points, self.wanted.stitches)):
                row = next((row for row in rows if row.code == code), None)
                self.boxes += cell != "not laid"
                if row is None or cell == "not laid":
                    self._want(row is None and cell == "not laid", f"{code}: {cell}")
                else:
                    self._want(number(cell) in printed(self.wanted.line(row)),
                               f"{code} lies at {cell}")

    def _list(self, which, words):
        title = TITLE.fullmatch(words)
        rows = named(title["names"].strip(), self.wanted.points)
        self._want(len(rows) == number(title["rows"] or "1"), f"list {which}: {len(rows)} rows")
        for row in rows:
            self.listed.append(row)
            self.list_of[row.code] = which
        rest, figures = title["rest"] + " ", []
        rest = " ".join(rest.split()) + " "
        corner = CORNER.match(rest)
        self._want(bool(corner) == bool(title["corner"]), f"list {which}: the corner")
        if corner:
            figures.append(number(corner[1]))
            rest = rest[corner.end():]
        entries, added = rest.split("sum check: ", 1)
        self._want(NUMBERED.sub("", entries) == "", f"list {which}: {NUMBERED.sub('', entries)}")
        pairs = NUMBERED.findall(entries)
        self._want([number(pair[0]) for pair in pairs] == list(range(1, len(pairs) + 1)) and
                   len(pairs) == number(title["count"]), f"list {which}: {len(pairs)} numbers")
        figures += [number(pair[1]) for pair in pairs]
        self.figures += len(figures)
        self.boxes += len(figures)
        for row in rows:
            self._row(which, row, figures, title)
        self._sum(which, SUM.fullmatch("sum check: " + added), figures, rows[0])

    def _row(self, which, row, figures, title):
        """Every figure of a list against every row it says it serves."""
        places = self.wanted.along(row)
        self._want(bool(title["corner"]) == row.shared_first, f"{row.code}: shared corner")
        self._want(title.group(7) == self.wanted.datum(row), f"{row.code}: {title.group(7)}")
        self._want(len(figures) == len(places),
                   f"list {which}, {row.code}: {len(figures)} figures, not {len(places)}")
        for at, (figure, place) in enumerate(zip(figures, places), start=1):
            self._want(figure in printed(place),
                       f"list {which}, {row.code}: figure {at} is {float(figure)}, not "
                       f"{float(place) / 1000:.4f}")
        gaps = [b - a for a, b in zip(places, places[1:])]
        if title["gap"]:
            self._want(number(title["gap"]) in printed(gaps[0], 10), f"{row.code}: {title['gap']}")
        if title["last"]:
            self._want(number(title["last"]) in printed(gaps[-1], 10), f"{row.code}: last gap")
        says_last = bool(title["last"]) or len(set(gaps)) == len(gaps) == 1
        self._want(len(set(gaps)) <= 1 or says_last, f"{row.code}: its last gap is not said")

    def _sum(self, which, said, figures, row):
        if said["one"]:
            self._want([number(said["one"])] == figures, f"list {which}: the one figure")
            return
        self._want(number(said["sum"]) == sum(figures),
                   f"list {which}: {said['sum']} is not {float(sum(figures))}")
        self._want(number(said["count"]) == len(figures), f"list {which}: {said['count']} figures")
        product = number(said["times"] or "0") * number(said["gap"] or "0")
        total = number(said["first"]) + product + number(said["more"] or "0")
        self._want(total == number(said["last"]), f"list {which}: {said[0]}")
        places = self.wanted.along(row)
        for end, place in (("first", places[0]), ("last", places[-1])):
            self._want(number(said[end]) * 1000 in whole_um(place), f"list {which}: the {end}")
        times = int(number(said["times"] or "0")) + (1 if said["more"] else 0)
        parts = re.match(rf"({LENGTH}) in ([\d,]+) gaps of \d+\.\d\d ", said["between"])
        if parts:
            self._want(parts[1] == said["more"], f"list {which}: {parts[0]}")
            times = int(number(parts[2]))
        self._want(times == len(figures) - 1, f"list {which}: {times} gaps")

    def _stitch_rows(self, words):
        self._want(STITCHES.sub("", words) == "", f"stitch rows: {STITCHES.sub('', words)[:60]}")
        for group in STITCHES.finditer(words):
            rows = named(group["names"], self.wanted.stitches)
            self._want(len(rows) == number(group["rows"] or "1"), f"{group['names']}: rows")
            for row in rows:
                self.sewn.append(row)
                places = self.wanted.along(row)
                first, last = group["first"] or group["one"], group["last"] or group["one"]
                agrees = (number(first) in printed(places[0]) and
                          number(last) in printed(places[-1]) and
                          number(group["count"] or "0") == len(places) - 1 and
                          group[group.re.groups] == self.wanted.datum(row))
                if len(places) > 1:
                    agrees = (agrees and bool(group["corner"]) == row.shared_first and
                              number(group["gap"]) in printed(places[1] - places[0], 10))
                self._want(agrees, f"{row.code}: {group[0]}")

    def _none_missing(self):
        for said, rows, what in ((self.listed, self.wanted.points, "list"),
                                 (self.sewn, self.wanted.stitches, "stitch row")):
            for row in rows:
                times = sum(row is other for other in said)
                self._want(times == 1, f"{row.code} stands under {times} of a {what}")
        asked = self.wanted.laid if self.wanted.piece.kind == "panel" else self.wanted.piece.rows
        missing = {row.code for row in asked} - set(self.codes_in_tables)
        self._want(not missing, f"in no table: {', '.join(sorted(missing))}")
        self._want(len(set(self.codes_in_tables)) == len(self.codes_in_tables), "a code twice")
