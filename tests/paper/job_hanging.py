"""Push, fixings and loads of each bay, worked out again here from the job file alone.

Push      A sheet across two supports a chord apart, pushed in the middle, carried at right angles
          to the chord. Its curvature grows with the way from the support, so with S the sine of
          the slope there the push is 16 S D w / c^2 and rise / chord is
          S/2 times the integral over u from 0 to 1 of (1 - u^2) / sqrt(1 - S^2 (1 - u^2)^2),
          by tanh-sinh quadrature; S by halving. Locked: E' y^2 through the pack less that about
          its middle.
Fixings   Evenly spaced, the way from the tight one straight, growth of sheet less timber.
Loads     Areas of rectangles; a continuous beam by its stiffness matrix, solved step by step.
          Panels written out edge by edge are left to the tests of the engine.
"""

import math
from fractions import Fraction

from rows import um

SHEETS = {"petg": (1270, 2100, 68), "polyester_film": (1390, 4500, 17),
          "polycarbonate": (1200, 2350, 72), "acrylic": (1190, 3000, 80),
          "rigid_pvc": (1400, 3000, 60)}  # kg/m3, MPa, millionths a degree
POISSON, GRAVITY, PERSON_N = 0.38, 9.80665, 70
SCREW_UM, OFF_UM, DEGREES, TIMBER = 5000, 1000, 15, 5
PANEL_CLOTH_UM, FLY_CLOTH_UM, HEM_UM = 8000, 12000, 20000
TAKEN_IN = [(math.tanh(math.pi / 2 * math.sinh(t)),
             math.pi / 2 * math.cosh(t) / math.cosh(math.pi / 2 * math.sinh(t)) ** 2)
            for t in (k / 16 for k in range(-56, 57))]


def nearest(value):
    return int(math.copysign(math.floor(abs(value) + 0.5), value))


def _rise_over_chord(sine, rest):
    """`rest` is 1 less the sine, so that nothing is lost near 1."""
    total = 0.0
    for x, weight in TAKEN_IN:
        u = (1 + x) / 2
        w = 1 - u * u
        total += weight / 2 * w / math.sqrt((rest + sine * u * u) * (1 + sine * w))
    return sine / 2 * total / 16


def push_factor(steep):
    """P c^2 / (D w) of a rise so many times the chord."""
    low, high = -60.0, 60.0
    for _ in range(120):
        middle = (low + high) / 2
        sine, rest = 1 / (1 + math.exp(-middle)), 1 / (1 + math.exp(middle))
        if _rise_over_chord(sine, rest) < steep:
            low = middle
        else:
            high = middle
    return 16 / (1 + math.exp(-low))


def _sheet(job, item, first="petg"):
    entered = job.get("materials", {}).get(item, {})
    density, modulus, growth = SHEETS[entered.get("sheet", first)]
    return density / 1000, modulus, growth


def sheets_of(job, piece, entry):
    """(item, count, thickness in um, density, modulus, growth), from the back."""
    if piece.kind == "section":
        return [("leaf", 2, um(entry["leaf_mm"]), *_sheet(job, "leaf"))]
    found = [("backing", 1, um(entry["backing_thickness_mm"]), *_sheet(job, "backing"))]
    if "facing_thickness_mm" in entry:
        found.append(("facing", 1, um(entry["facing_thickness_mm"]),
                      *_sheet(job, "facing", "polycarbonate")))
    return found


def _stiffness(thick_um, modulus):
    return modulus * (thick_um / 1000) ** 3 / (12 * (1 - POISSON ** 2))


def _locked(sheets):
    below = moment = stretch = cubed = 0.0
    for _, count, thick_um, _, modulus, _ in sheets:
        for _ in range(count):
            above = below + thick_um / 1000
            stiff = modulus / (1 - POISSON ** 2)
            stretch += stiff * (above - below)
            moment += stiff * (above ** 2 - below ** 2) / 2
            cubed += stiff * (above ** 3 - below ** 3) / 3
            below = above
    return cubed - moment ** 2 / stretch


def force_of(job, bay, piece, entry, length):
    """Of a bay with a rise, not by stations."""
    chord, rise = float(bay["chord_mm"]), float(bay["rise_mm"])
    unit = piece.length_um / 1000 / chord ** 2
    factor, sheets = push_factor(rise / chord), sheets_of(job, piece, entry)
    is_exact = Fraction(bay["rise_mm"]) * 20 > Fraction(bay["chord_mm"])

    def both(stiffness):
        return {"small_n": length(unit * stiffness * 48 * rise / chord * 1000),
                "exact_n": length(unit * stiffness * factor * 1000)}

    slipping = sum(count * _stiffness(thick, modulus)
                   for _, count, thick, _, modulus, _ in sheets)
    shown = unit * slipping * (factor if is_exact else 48 * rise / chord)
    return {"push_is_exact": is_exact, "push_n": length(shown * 1000),
            "people": math.ceil(nearest(shown * 1000) / 1000 / PERSON_N),
            "slipping": both(slipping), "locked": both(_locked(sheets)),
            "plies": [{"item": item, "count": count, "thickness_mm": length(thick),
                       **both(count * _stiffness(thick, modulus))}
                      for item, count, thick, _, modulus, _ in sheets]}


def _places(row, piece, hinge):
    """Stations, and places on a rectangle."""
    edge = row["edge"]
    across = "left" if hinge == "right" else "right"
    side = {"hinge_side": hinge, "fly_side": across}.get(edge, edge)
    is_upright = side in ("left", "right")
    whole = piece.length_um if is_upright else piece.width_um
    start, end = (um(clear) for clear in row["kept_clear_mm"])
    if start + end > whole:
        return []
    gaps = math.ceil(Fraction(whole - start - end, um(row["spacing_mm"])))
    inset, found = um(row["in_from_edge_mm"]), []
    for i in range(gaps + 1):
        station = start + (nearest(Fraction((whole - start - end) * i, gaps)) if gaps else 0)
        if is_upright:
            place = (inset if side == "left" else piece.width_um - inset, station)
        else:
            across = station if hinge == "left" else piece.width_um - station
            place = (across, inset if side == "bottom" else piece.length_um - inset)
        found.append((station, place))
    return found


def fixings_of(job, bay, piece, entry, length, absent):
    """None where an edge is not there or a row cannot be laid."""
    edges = (("left", "right", "top", "bottom") if piece.kind == "section" else
             ("hinge_side", "fly_side", "top", "bottom"))
    hinge = entry.get("hinge_side", "left") if piece.kind == "panel" else "left"
    rows = bay.get("fixings", [])
    laid = [_places(row, piece, hinge) for row in rows]
    if not all(laid) or not all(row["edge"] in edges for row in rows):
        return None
    at = [{"first": 0, "middle": (len(places) - 1) // 2, "last": len(places) - 1}.get(
        row.get("tight", "middle")) for row, places in zip(rows, laid)]
    held = [places[tight][1] if tight is not None else None for tight, places in zip(at, laid)]
    first = next((place for place in held if place), None)
    growth = max(sheet[5] for sheet in sheets_of(job, piece, entry)) - TIMBER
    said = []
    for row, places, tight, own in zip(rows, laid, at, held):
        fixings = []
        for i, (station, place) in enumerate(places):
            one = {"station_mm": length(station), "x_mm": length(place[0]),
                   "y_mm": length(place[1])}
            if i == tight or first is None:
                fixings.append({**one, "move_mm": absent} if i == tight else one)
                continue
            far = nearest(math.dist(place, own or first))
            move = nearest(Fraction(far * growth * DEGREES, 1_000_000))
            damp = (nearest(Fraction(far * 369 * 4000, 10 ** 8))
                    if row.get("timber") == "across_grain" else 0)
            slot = SCREW_UM + 2 * (move + damp) + 2 * OFF_UM
            fixings.append({**one, "from_tight_mm": length(far), "move_mm": length(move),
                            "slot_mm": length(slot),
                            "slot_shown_mm": length(math.ceil(Fraction(slot, 500)) * 500)})
        said.append({"tight": None if tight is None else tight + 1, "fixings": fixings})
    return said


def _cleared(matrix, right):
    """Gauss with the largest pivot."""
    n = len(right)
    for i in range(n):
        best = max(range(i, n), key=lambda k: abs(matrix[k][i]))
        matrix[i], matrix[best] = matrix[best], matrix[i]
        right[i], right[best] = right[best], right[i]
        for k in range(i + 1, n):
            part = matrix[k][i] / matrix[i][i]
            right[k] -= part * right[i]
            for j in range(i, n):
                matrix[k][j] -= part * matrix[i][j]
    for i in reversed(range(n)):
        right[i] = (right[i] - sum(matrix[i][j] * right[j] for j in range(i + 1, n))) / matrix[i][i]
    return right


def shares_of(count):
    """Parts of an even load on a beam over `count` supports: slopes there by stiffness."""
    if count == 1:
        return [1.0]
    matrix = [[0.0] * count for _ in range(count)]
    right = [0.0] * count
    for i in range(count - 1):  # each span 1 long with 1 on it, stiffness 1
        for a, b in ((i, i + 1), (i + 1, i)):
            matrix[a][a] += 4
            matrix[a][b] += 2
        right[i] -= 1 / 12
        right[i + 1] += 1 / 12
    slopes = _cleared(matrix, right)
    parts = [0.0] * count
    for i in range(count - 1):
        twist = 6 * (slopes[i] + slopes[i + 1])
        parts[i] += 0.5 + twist
        parts[i + 1] += 0.5 - twist
    return [part / (count - 1) for part in parts]


def loads_of(job, bay, piece, entry, length, blanks_um2):
    """`blanks_um2` is the area of all blanks of a section."""
    area = blanks_um2 if piece.kind == "section" else piece.width_um * piece.length_um
    known, sewn = {}, 0
    for item, _, thick, density, _, _ in sheets_of(job, piece, entry):
        known[item] = nearest(thick * density * area / 1e9)
        sewn += known[item] if item != "facing" else 0
    grams = job.get("materials", {}).get("panel_cloth", {}).get("mass_g_m2")
    if piece.kind == "panel" and grams is not None:
        place = entry.get("cloth", {})
        inset, fly, hem = (um(place[key]) if key in place else assumed for key, assumed in (
            ("in_from_edge_mm", PANEL_CLOTH_UM), ("in_from_fly_side_mm", FLY_CLOTH_UM),
            ("hem_mm", HEM_UM)))
        wide, high = piece.width_um - inset - fly, piece.length_um - 2 * inset
        cloth = 2 * wide * high - (wide - 2 * hem) * (high - 2 * hem)
        known["panel_cloth"] = nearest(cloth * float(grams) / 1e9)
        sewn += known["panel_cloth"]
    mass = sum(known.values())
    weight, sewn_mn = (nearest(mg * GRAVITY / 1000) for mg in (mass, sewn))
    said = {"mass_g": length(mass), "sewn_g": length(sewn), "weight_n": length(weight),
            "corner_n": length(nearest(Fraction(sewn_mn, 4))),
            "corner_least_n": length(nearest(Fraction(sewn_mn, 5))),
            "corner_most_n": length(nearest(Fraction(sewn_mn, 3))),
            "parts_g": {item: length(mg) for item, mg in known.items()}}
    stitches = max((len(row.places) - 1 for row in piece.rows
                    if row.kind == "stitch" and row.code.endswith(" top")), default=0)
    if stitches:
        said["stitches"] = stitches
        said["per_stitch_n"] = length(nearest(Fraction(sewn_mn, stitches)))
    tops = [row for row in bay.get("fixings", []) if row["edge"] == "top"]
    if tops:
        count = len(_places(tops[0], piece, entry.get("hinge_side", "left")))
        said["fixings_n"] = [length(weight * share) for share in shares_of(count)]
    return said
