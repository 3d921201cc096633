"""Seeded valid jobs: the same seed makes the same jobs on every machine.

They reach for what the demo jobs leave out: odd micrometres, hinge at the right, panels with fewer
rows, sleeves that differ from their section, exact rows with each kind of left-over, clear gaps,
sections of one, pieces narrower than a page, names in several alphabets, members we do not know;
two jobs in three also for folded and round sleeves, flanges too narrow for their rows, shared side
seams, missing sleeves, rows that stop short of the hinge row or of the fly side, gaps in the numbers, bays that hold
what is not there or were measured at stations, the job's own wire and foot, how tight its sheet
may stay bent, a bobbin typed or measured, and trial seams, one of them chosen.
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


def _make(draw):
    """Members of a make; every sleeve of 60 and more can be made so."""
    make = draw.choice(["two_leaf", "folded", "round"])
    if make == "two_leaf":
        return {}
    made = {"make": make, "sewn_side": draw.choice(["left", "right"])}
    if make == "folded":
        made["fold_radius_mm"] = draw.choice([0, Decimal("0.5"), 2, draw.length(0, 50)])
    else:
        made["flange_mm"] = draw.choice([40, draw.length(18, 30), draw.length(1, 58)])
    return made


def _missing(draw, code, count):
    """Codes of some sleeves that are not there, never all, in any order."""
    numbers = [draw.whole(1, count) for _ in range(draw.whole(1, min(4, count - 1)))]
    return [f"{code}-{number:02d}" for number in dict.fromkeys(numbers)]


def _rare_of_section(draw, code, count):
    """Members of a section that a plain one does not have."""
    rare = _make(draw)
    if draw.chance(40):
        rare["side_seams"] = draw.choice(["shared", "shared", "separate"])
    if (count + int(code)) % 3 != 0:
        rare["lies_over"] = "left" if count % 2 else "right"
    if count > 1 and draw.chance(40):
        rare["missing"] = _missing(draw, code, count)
    return rare


def _tolerances(draw):
    tolerances = {}
    if draw.chance(30):
        tolerances["width_tolerance_mm"] = draw.length(1, 2)
    if draw.chance(30):
        tolerances["lap_tolerance_mm"] = draw.length(1, 2)
    return tolerances


def _length_without_rest(draw, staple):
    """A length that exact gaps fill."""
    ends = sum(staple["kept_clear_mm"])
    return mm(int((ends + draw.whole(6, 24) * staple["spacing_mm"]) * 1000))


def _section(draw, number, is_plain):
    code, count = str(number), draw.choice([1, 2, 3, 5, 8, 13])
    length = draw.length(250, 2400)
    lap = draw.length(12, 24)
    widths = [draw.length(60, 150) for _ in range(draw.whole(1, 6))]
    side = _row_pair(draw, draw.length(20, 28), on_lap=False)
    if side["staple"]["rule"] == "exact" and draw.chance(30):
        length = _length_without_rest(draw, side["staple"])
    laps = _row_pair(draw, None, on_lap=True) if count > 1 else None
    leaf = draw.choice([Decimal("0.175"), Decimal("0.25"), Decimal("0.5")])
    others = _tolerances(draw)
    if not is_plain:
        others.update(_rare_of_section(draw, code, count))
    made = job_parts.section(code, length, lap, leaf, widths, count, side, laps, others)
    changed = sorted({draw.whole(1, count) for _ in range(draw.whole(0, 2))})
    if changed:
        made["changes"] = {f"{code}-{sleeve:02d}": _sleeve_change(draw) for sleeve in changed}
    return made


def _panel(draw, number, is_plain):
    width = draw.length(150, 1300)
    length = draw.length(200, 2400)
    hinge_side = draw.choice(["left", "right"])
    inset = draw.length(12, 24)
    spacing = draw.length(30, 90)
    made = job_parts.panel(f"P{number}", (width, length), hinge_side, inset, spacing,
                           draw.length(4, 9), draw.length(1, 2), draw.length(2, 5))
    if draw.chance(25):
        made["rows_on"] = draw.choice([["hinge_side"], ["hinge_side", "top"],
                                       ["hinge_side", "bottom"], ["hinge_side", "top", "bottom"],
                                       ["top", "bottom"]])
    if not is_plain and draw.chance(70):
        made["corners"] = draw.choice(["stop_short", "stop_short", "share_hole"])
        if draw.chance(60):
            made["corner_clear_mm"] = draw.length(1, 70)
    if not is_plain and draw.chance(40):
        made["rows_stop_mm"] = draw.length(5, 1400) if draw.chance(30) else draw.length(90, 400)
    return made


def _numbers(draw, count, is_plain):
    """Numbers of codes; now and then with a gap."""
    gap_at = draw.whole(1, count) if count and not is_plain and draw.chance(15) else count + 1
    return [number + (number > gap_at) for number in range(1, count + 1)]


def _bays(draw, codes, is_plain):
    """A bay for each piece; now and then one holds another's piece, or one that is not there."""
    bays = []
    for number, code in enumerate(codes, start=1):
        chord = draw.length(400, 1900)
        rise = draw.length(0, 190)
        face = draw.choice(["bulging", "hollow"])
        holds = draw.choice([codes[0], "P9"]) if not is_plain and draw.chance(10) else code
        bay = job_parts.bay(number, chord, rise, face, holds)
        if not is_plain and draw.chance(30):
            bay["stations_mm"] = _stations(draw, chord, rise)
        if not is_plain and draw.chance(20):
            bay["taped_along_mm"] = draw.length(390, 2100)
        bays.append(bay)
    return bays


def _stations(draw, chord, rise):
    """Along a chord and over its rise, each off by up to 2; now and then too few, in no order, or
    bent both ways."""
    ends = Decimal(1) if draw.chance(80) else Decimal(-1)
    steps = draw.whole(2, 9) if draw.chance(85) else draw.whole(0, 1)
    places = []
    for step in range(steps + 1):
        share = Decimal(step) / max(steps, 1)
        out = 4 * Decimal(rise) * share * (1 - share) * (1 if share * 2 < 1 else ends)
        places.append([mm(int(Decimal(chord) * share * 1000)),
                       mm(int(out * 1000) + draw.whole(-2000, 2000))])
    if draw.chance(8) and steps > 1:
        places[0], places[1] = places[1], places[0]
    return places


def _wire_and_foot(draw):
    """Thousandths of a millimetre each: least and most."""
    figures = {"crown_mm": (6000, 14000), "half_foot_mm": (3000, 12000),
               "foot_tolerance_mm": (500, 4000), "wire_mm": (200, 1200)}
    return {key: mm(draw.whole(*ends)) for key, ends in figures.items() if draw.chance(40)}


def _bobbin(draw):
    """Materials with a bobbin typed, or measured and the thread weighed."""
    if draw.chance(50):
        return {"bobbin": {"thread_m": draw.length(2, 60),
                           "kept_back_percent": draw.choice([0, 5, Decimal("12.5")])}}
    return {"thread": {"weighed_tex": draw.choice([Decimal("131.5"), 150])},
            "bobbin": {"outer_mm": draw.length(18, 30), "core_mm": draw.length(5, 12),
                       "width_mm": draw.length(6, 14)}}


def _trials(draw, sections, panels):
    """A trial that no one chose, and a chosen one of a stitch that some rows were asked to have."""
    rows = [("side_rows", section["side_rows"]["stitch"]) for section in sections]
    rows += [("lap_rows", section["lap_rows"]["stitch"])
             for section in sections if "lap_rows" in section]
    rows += [("panel_rows", panel) for panel in panels]
    of, holder = draw.choice(rows)
    chosen = {"needle_size": 140, "thread_tex": draw.choice([135, 150]),
              "stitch_mm": holder["stitch_mm"]}
    if draw.chance(60):
        chosen = {"of": of, **chosen}
    if draw.chance(80):
        chosen["ten_stitches_mm"] = draw.length(40, 90)
    chosen["chosen"] = True
    other = {"needle_size": 120, "thread_tex": 135, "stitch_mm": 5, "ten_stitches_mm": 49}
    return [other, chosen]


def _fixing_row(draw, edges, tight):
    row = {"edge": draw.choice(edges), "in_from_edge_mm": draw.length(5, 15),
           "kept_clear_mm": [draw.length(10, 40), draw.length(10, 40)],
           "spacing_mm": draw.length(150, 400), "tight": tight}
    if draw.chance(40):
        row["timber"] = draw.choice(["along_grain", "across_grain"])
    return row


def _hang(draw, made):
    """Facings, and fixings in some bays, drawn from a stream of their own."""
    for panel in made.get("panels", []):
        if draw.chance(40):
            panel["facing_thickness_mm"] = draw.choice([2, Decimal("1.5"), 3])
    if draw.chance(30):
        made.setdefault("materials", {})["panel_cloth"] = {"mass_g_m2": draw.length(100, 900)}
    sections = [section["code"] for section in made.get("sections", [])]
    for bay in made["bays"]:
        if not draw.chance(50):
            continue
        sides = (["left", "right"] if bay["holds"] in sections else ["hinge_side", "fly_side"])
        tights = ["first", "middle", "last", "none"]
        bay["fixings"] = [_fixing_row(draw, sides + ["top", "bottom"], draw.choice(tights))
                          for _ in range(draw.whole(1, 3))]


def random_job(seed):
    """One valid job, as an ordered dict ready for job_text; empty lists are left out."""
    draw = Draw(seed)
    is_plain = draw.chance(34)
    sections = [_section(draw, n, is_plain)
                for n in _numbers(draw, draw.whole(0, 3), is_plain)]
    panels = [_panel(draw, n, is_plain)
              for n in _numbers(draw, draw.whole(0 if sections else 1, 2), is_plain)]
    bays = _bays(draw, [piece["code"] for piece in sections + panels], is_plain)
    name = ", ".join(draw.choice(NAMES) for _ in range(draw.whole(1, 3)))
    spacing_from = "clear_gap" if draw.chance(20) else "centre_to_centre"
    made = job_parts.job(name, bays, sections, panels, spacing_from)
    for key in ("sections", "panels"):
        if not made[key]:
            del made[key]
    if not is_plain:
        made.update(_wire_and_foot(draw))
        if draw.chance(40):
            made["materials"] = _bobbin(draw)
        if draw.chance(25):
            made["materials"] = {draw.choice(["leaf", "backing"]): {
                "stay_bent_times": draw.length(90, 340)}, **made.get("materials", {})}
        if draw.chance(50):
            made["trials"] = _trials(draw, sections, panels)
    if not is_plain:
        _hang(Draw(seed + 1_000_000), made)
    if draw.chance(20):
        made["remark"] = {"by": "Ἀθῆναι", "values": [1, Decimal("2.50"), None, True, {}, []]}
    return made
