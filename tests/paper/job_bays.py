"""What follows of each bay, worked out again here from the job file alone.

Curve     Chord and rise: a circle, its turn from the slope at its end. Three stations or more, each
          farther along than the last: a circle through each three of them by its centre; between two
          stations the middle of the arcs of both circles that pass through them.
Creep     Slip distance times turn; cloth moves out where the frame is hollow to the viewer.
Stop      The first place where the slip comes to a half millimetre, either way, in whole
          micrometres not after it. Slip runs from the hinge side, stations from the left: under a
          panel hinged at the right the stretches are walked backwards.
Bulge     Half a sine over the length along the curve, longer by the creep; its length by the
          trapezium rule, which has no error to speak of over a whole period.
Limit     Thickness of leaf, backing or facing by the times it may stay bent (PETG 150), the
          largest of them.

Radius and length along are whole micrometres in all that is worked out from them by ratio.
"""

import math
from fractions import Fraction

from job_hanging import fixings_of, force_of, loads_of
from rows import um
from sleeves import blank_of

SLIP_LIMIT_UM = 500
READING_MM = 1
STAY_BENT_TIMES = {"petg": 150, "polyester_film": 150, "polycarbonate": 180, "acrylic": 330,
                   "rigid_pvc": 150}


def nearest(value):
    """The whole number next to it, halves away from zero."""
    return int(math.copysign(math.floor(abs(value) + 0.5), value))


def _centre(a, b, c):
    """Of the circle through three places; None where they lie in line."""
    (ax, ay), (bx, by), (cx, cy) = a, b, c
    twice = 2 * ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax))
    if abs(twice) < 2e-9 * math.dist(a, b) * math.dist(a, c):
        return None
    b2 = (bx - ax) ** 2 + (by - ay) ** 2
    c2 = (cx - ax) ** 2 + (cy - ay) ** 2
    return (ax + ((cy - ay) * b2 - (by - ay) * c2) / twice,
            ay + ((bx - ax) * c2 - (cx - ax) * b2) / twice)


def _bend(a, b, c):
    """Radius of the circle through three stations, positive where the middle one stands out."""
    centre = _centre(a, b, c)
    if centre is None:
        return None
    over = b[1] - (a[1] + (c[1] - a[1]) * (b[0] - a[0]) / (c[0] - a[0]))
    return math.copysign(math.dist(centre, a), over)


def _over(chord, radius):
    """Length and turn of an arc over a chord."""
    if radius is None:
        return chord, 0.0
    half = min(abs(chord / 2 / radius), 1.0)
    turn = math.copysign(2 * math.atan2(half, math.sqrt(1 - half * half)), radius)
    return radius * turn, turn


class Curve:
    """Stretches of (length, turn), millimetres and radians; `radius` is None where it is flat."""

    def __init__(self, stretches, radius, straight_um, out_by=None):
        self.stretches, self.radius, self.straight_um = stretches, radius, straight_um
        self.out_by = out_by
        self.along = math.fsum(length for length, _ in stretches)
        self.turn = math.fsum(turn for _, turn in stretches)


def _curve_of_rise(bay):
    chord, rise = Fraction(bay["chord_mm"]), Fraction(bay["rise_mm"])
    if rise == 0:
        return Curve([(float(chord), 0.0)], None, um(bay["chord_mm"]))
    radius = float(chord ** 2 / (8 * rise) + rise / 2)
    turn = 4 * math.atan2(float(2 * rise), float(chord))
    return Curve([(radius * turn, turn)], radius, um(bay["chord_mm"]))


def _stations(bay):
    places = [tuple(map(float, place)) for place in bay.get("stations_mm", [])]
    in_order = all(a[0] < b[0] for a, b in zip(places, places[1:]))
    return places if len(places) >= 3 and in_order else None


def _curve_of_stations(places):
    bends = [_bend(*places[i - 1:i + 2]) for i in range(1, len(places) - 1)]
    stretches = []
    for i, (a, b) in enumerate(zip(places, places[1:])):
        near = [bends[max(i - 1, 0)], bends[min(i, len(bends) - 1)]]
        arcs = [_over(math.dist(a, b), bend) for bend in near]
        stretches.append(tuple(sum(pair) / 2 for pair in zip(*arcs)))
    straight_um = nearest(math.dist(places[0], places[-1]) * 1000)
    bent = [(abs(bend), i) for i, bend in enumerate(bends) if bend is not None]
    if not bent:
        return Curve(stretches, None, straight_um, 0)
    radius, at = min(bent, key=lambda pair: pair[0])
    a, b = (places[at + k + 1][0] - places[at + k][0] for k in (0, 1))
    out_by = radius * math.hypot(2 / (a * (a + b)), 2 / (a * b), 2 / (b * (a + b))) * READING_MM
    return Curve(stretches, radius, straight_um, out_by)


def curve_of(bay):
    places = _stations(bay)
    return _curve_of_stations(places) if places else _curve_of_rise(bay)


def _most_slip(curve, apart):
    turn, most = 0.0, 0.0
    for _, one in curve.stretches:
        turn += one
        most = max(most, abs(apart * turn))
    return most


def _stop_mm(curve, apart):
    """Where the slip first comes to its limit; None where it does so at the far end at best."""
    limit, slip, place = SLIP_LIMIT_UM / 1000, 0.0, 0.0
    for length, turn in curve.stretches:
        after = slip + apart * turn
        if abs(after) >= limit:
            place += length * (abs(math.copysign(limit, after) - slip) / abs(after - slip))
            return place if place < curve.along else None
        slip, place = after, place + length
    return None


def _sine_length(height, wave, steps=512):
    slope = 2 * math.pi * height / wave
    return wave / steps * math.fsum(
        math.hypot(1, slope * math.cos(2 * math.pi * i / steps)) for i in range(steps))


def bulge_mm(length, surplus):
    low, high = 0.0, length + surplus
    for _ in range(100):
        middle = (low + high) / 2
        if _sine_length(middle, 2 * length) < 2 * (length + surplus):
            low = middle
        else:
            high = middle
    return low


def held_by(job, bay, pieces):
    """The piece that hangs in a bay, and its entry in the job; None where there is none."""
    if "stands" in bay:
        return None
    for kind in ("sections", "panels"):
        for entry in job.get(kind, []):
            if entry["code"] == bay["holds"]:
                return next(piece for piece in pieces if piece.code == entry["code"]), entry
    return None


def _hinge_at_right(piece, entry):
    if piece.kind != "panel":
        return False
    if "outline" not in entry:
        return entry["hinge_side"] == "right"
    edges = entry["outline"]
    at = [float(edge["from_mm"][0]) for edge in edges]
    hinge = next(i for i, edge in enumerate(edges) if edge["role"] == "hinge_side")
    return at[hinge] + at[(hinge + 1) % len(at)] > min(at) + max(at)


def limit_um(job, piece, entry):
    items = ([("backing", "backing_thickness_mm", "petg"),
              ("facing", "facing_thickness_mm", "polycarbonate")] if piece.kind == "panel" else
             [("leaf", "leaf_mm", "petg")])
    limits = []
    for item, key, first in items:
        entered = job.get("materials", {}).get(item, {})
        times = entered.get("stay_bent_times", STAY_BENT_TIMES[entered.get("sheet", first)])
        if key in entry:
            limits.append(math.ceil(um(entry[key]) * Fraction(times)))
    return max(limits)


def _hanging(job, bay, piece, entry, curve, length, absent):
    """Push, fixings and loads; those of panels written out edge by edge are not looked at."""
    said = {}
    if curve.radius is None:
        said["force"] = absent
    elif not _stations(bay):
        said["force"] = force_of(job, bay, piece, entry, length)
    if "outline" in entry:
        return said
    blanks = sum(nearest(blank.width_um) * blank.count * piece.length_um for blank in
                 (blank_of(entry, sleeve) for sleeve in getattr(piece, "sleeves", ())))
    said["loads"] = loads_of(job, bay, piece, entry, length, blanks)
    rows = fixings_of(job, bay, piece, entry, length, absent)
    if rows is not None:
        said["fixings"] = rows or absent
    return said


def _of_piece(job, bay, pieces, curve, length, absent):
    held = held_by(job, bay, pieces)
    if held is None:
        return {key: absent for key in ("room_mm", "stay_bent_limit_mm", "spare_percent")}
    piece, entry = held
    limit = limit_um(job, piece, entry)
    radius_um = curve.radius and nearest(curve.radius * 1000)
    return {**_hanging(job, bay, piece, entry, curve, length, absent),
            "room_mm": length(nearest(curve.along * 1000) - piece.width_um),
            "stay_bent_limit_mm": length(limit),
            "spare_percent": length((Fraction(radius_um, limit) - 1) * 100_000)
            if radius_um else absent}


def bay_figures(job, bay, pieces, length, absent):
    """One bay; `length` makes a leaf of thousandths, `absent` stands for what must not be there."""
    curve, apart = curve_of(bay), float(job["slip_distance_mm"])
    held = held_by(job, bay, pieces)
    if held and _hinge_at_right(*held):
        curve.stretches = curve.stretches[::-1]
    along_um, creep = nearest(curve.along * 1000), apart * curve.turn
    creep_um = nearest(abs(creep) * 1000)
    is_out = creep_um > 0 and (creep > 0) == (bay["face"] == "hollow")
    stop = _stop_mm(curve, apart)
    return {
        "code": bay["code"],
        "radius_mm": None if curve.radius is None else length(curve.radius * 1000),
        "turn_deg": length(math.degrees(curve.turn) * 1000),
        "along_mm": length(along_um), "extra_mm": length(along_um - curve.straight_um),
        "creep_mm": length(creep_um),
        "creep_way": "none" if creep_um == 0 else "out" if is_out else "in",
        "ease_percent": length(0 if curve.radius is None else apart / curve.radius * 100_000),
        "stop_from_hinge_mm": absent if stop is None else length(math.floor(stop * 1000)),
        "sewn_all_round_bulge_mm":
            length(bulge_mm(curve.along, creep_um / 1000) * 1000) if is_out else absent,
        "slip_most_mm": absent if curve.out_by is None else
            length(_most_slip(curve, apart) * 1000),
        "radius_out_by_percent": absent if curve.out_by is None else
            length(curve.out_by * 100_000),
        **_of_piece(job, bay, pieces, curve, length, absent)}
