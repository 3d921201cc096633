"""Faults put into figures that were right: a checker that lets one through is no checker.

Each changes the figures it is given and says whether it found a place for it. Lengths go off by two
micrometres at least: where a half is rounded, one more is allowed.
"""

from decimal import Decimal


def _of_kind(figures, kind):
    return [piece for piece in figures["pieces"] if piece["kind"] == kind]


def _sections(figures):
    return _of_kind(figures, "section")


def _sleeves(figures):
    return _of_kind(figures, "sleeve")


def _add(holders, key, amount):
    """Adds to a member of the middle one of those that have it."""
    having = [holder for holder in holders if holder.get(key) is not None]
    if not having:
        return False
    having[len(having) // 2][key] += Decimal(amount) if "mm" in key or "_m" in key else amount
    return True


def _exchange_codes(holders):
    """The codes of two neighbours exchanged."""
    if len(holders) < 2:
        return False
    a, b = holders[len(holders) // 2 - 1:][:2]
    a["code"], b["code"] = b["code"], a["code"]
    return True


def _forget_neighbour(figures):
    laps = [sleeve for sleeve in _sleeves(figures) if sleeve["right_neighbour"]]
    if laps:
        laps[-1]["right_neighbour"] = None
    return bool(laps)


def _exchange_seams(figures):
    seams = figures["side_seams"]
    seams["separate"], seams["shared"] = seams["shared"], seams["separate"]
    return seams["separate"] != seams["shared"]


def _drop(items):
    if items:
        del items[len(items) // 2]
    return bool(items)


def _off_in_list(figures, key):
    lists = [piece[key] for piece in _sections(figures) if piece[key]]
    if lists:
        lists[-1][-1] += Decimal("0.01")
    return bool(lists)


def _other_checksum(figures):
    figures["job"]["checksum"] = figures["job"]["checksum"][::-1]
    return True


def _turn(bays, degrees):
    if bays:
        bays[-1]["turn_deg"] += Decimal(degrees)
    return bool(bays)


def _other_way(bays):
    moving = [bay for bay in bays if bay["creep_way"] != "none"]
    if moving:
        moving[0]["creep_way"] = "in" if moving[0]["creep_way"] == "out" else "out"
    return bool(moving)


FAULTS = {
    "another checksum": _other_checksum,
    "one hole more": lambda f: _add([f["totals"]], "stitch_holes", 1),
    "one side row fewer": lambda f: _add([f["totals"]], "side_rows", -1),
    "a metre of row too much": lambda f: _add([f["totals"]], "row_m", "1"),
    "a tenth of a metre of thread too much": lambda f: _add([f["totals"]], "thread_each_m", "0.1"),
    "a row more on each bobbin": lambda f: _add([f["totals"]], "rows_per_bobbin", 1),
    "a bobbin of side rows fewer": lambda f: _add([f["totals"]["bobbin_fills"]], "side_rows", -1),
    "a bobbin of joining rows more": lambda f: _add([f["totals"]["bobbin_fills"]], "lap_rows", 1),
    "a bobbin of panel rows more": lambda f: _add([f["totals"]["bobbin_fills"]], "panel_rows", 1),
    "a row with a point more": lambda f: _add(f["rows"], "points", 1),
    "a spacing off by 0.002": lambda f: _add(f["rows"], "spacing_mm", "0.002"),
    "a first point off by 0.002": lambda f: _add(f["rows"], "first_mm", "0.002"),
    "a last point off by 0.002": lambda f: _add(f["rows"], "last_mm", "-0.002"),
    "a left-over off by 0.002": lambda f: _add(f["rows"], "left_over_mm", "0.002"),
    "a page more left out": lambda f: _add([f["totals"]["pages_left_out"]["A4"]], "panels", 1),
    "a row left out": lambda f: _drop(f["rows"]),
    "the codes of two rows exchanged": lambda f: _exchange_codes(f["rows"][::2]),
    "the codes of two sleeves exchanged": lambda f: _exchange_codes(_sleeves(f)),
    "a piece left out": lambda f: _drop(f["pieces"]),
    "a sleeve moved by 0.01": lambda f: _add(_sleeves(f), "left_mm", "0.01"),
    "a blank off by 0.1": lambda f: _add(_sleeves(f), "blank_mm", "0.1"),
    "a blank more": lambda f: _add(_sleeves(f), "blanks", 1),
    "a fold off by 0.1": lambda f: _add(_sleeves(f), "fold_mm", "0.1"),
    "a neighbour forgotten": _forget_neighbour,
    "a middle off by 0.01": lambda f: _off_in_list(f, "row_middles_mm"),
    "a running total off by 0.01": lambda f: _off_in_list(f, "running_totals_mm"),
    "a build-up off by 0.01": lambda f: _add(_sections(f), "likely_mm", "0.01"),
    "a row of shared seams more": lambda f: _add([f["side_seams"]["shared"]], "rows", 1),
    "seams exchanged": _exchange_seams,
    "a radius off by 0.002": lambda f: _add(f["bays"], "radius_mm", "0.002"),
    "a turn off by 0.002 of a degree": lambda f: _turn(f["bays"], "0.002"),
    "a bay 0.01 longer": lambda f: _add(f["bays"], "along_mm", "0.01"),
    "a creep off by 0.002": lambda f: _add(f["bays"], "creep_mm", "0.002"),
    "cloth that creeps the other way": lambda f: _other_way(f["bays"]),
    "a row that stops 0.001 too late": lambda f: _add(f["bays"], "stop_from_hinge_mm", "0.001"),
    "a bulge off by 0.01": lambda f: _add(f["bays"], "sewn_all_round_bulge_mm", "0.01"),
    "a stay-bent limit off by 0.1": lambda f: _add(f["bays"], "stay_bent_limit_mm", "0.1"),
    "more room than there is": lambda f: _add(f["bays"], "room_mm", "0.01"),
    "a slip on the way off by 0.002": lambda f: _add(f["bays"], "slip_most_mm", "0.002"),
    "a bay left out": lambda f: _drop(f["bays"]),
}
