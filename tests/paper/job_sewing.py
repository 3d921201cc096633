"""Thread and bobbins of a job, worked out again here from its file and its rows.

Thread   Each of the two threads of a row: first hole to last, the stack once for each stitch, and
         the tails. The stack is the one typed.
Bobbin   The metres typed; else those of its measures (room between core and outside by packing by
         the fibre's density over tex, weighed before typed); else 25. A tenth is kept back unless
         the job says otherwise.
Fills    Side rows, joining rows and rows of panels apart, in the job's order: a new bobbin before a
         row that the last one does not last. A row that no bobbin lasts takes as many as it needs
         and shares none of them.
"""

import math
from fractions import Fraction

from rows import um

THREAD_M, KEPT_BACK_PERCENT, BOBBIN_PACKING, DENSITY = 25, 10, Fraction(1, 2), Fraction(138, 100)
PLACES = {"side": "side_rows", "lap": "lap_rows", "panel": "panel_rows"}


def _entered(job, item, key):
    """A value of materials as an exact number; None where the job does not say it."""
    value = job.get("materials", {}).get(item, {}).get(key)
    return None if value is None else Fraction(value)


def _or(value, otherwise):
    return otherwise if value is None else value


def bobbin_um(job):
    """What may be sewn from one bobbin; whole micrometres on it, whole ones left of them."""
    metres = _entered(job, "bobbin", "thread_m")
    outer, core, width = (_entered(job, "bobbin", key) for key in
                          ("outer_mm", "core_mm", "width_mm"))
    if metres is None and None not in (outer, core, width) and core < outer:
        tex = _or(_entered(job, "thread", "weighed_tex"), Fraction(job["thread_tex"]))
        fibre = (_or(_entered(job, "bobbin", "packing"), BOBBIN_PACKING) *
                 _or(_entered(job, "thread", "density_g_cm3"), DENSITY))
        room = math.pi / 4 * float((outer ** 2 - core ** 2) * width)
        full = max(round(room * float(fibre / tex) * 1_000_000), 1_000)
    else:
        full = int(_or(metres, Fraction(THREAD_M)) * 1_000_000)
    kept = _or(_entered(job, "bobbin", "kept_back_percent"), Fraction(KEPT_BACK_PERCENT))
    return math.floor(full * (100 - kept) / 100)


def _stack_um(job, piece, place):
    kind = "panels" if place == "panel" else "sections"
    entry = next(one for one in job[kind] if one["code"] == piece.code)
    return um((entry if place == "panel" else entry[f"{place}_rows"])["stack_mm"])


def threads_um(job, pieces):
    """Thread of each stitch row, by the place of the rows."""
    threads = {place: [] for place in PLACES}
    for piece in pieces:
        for row in piece.rows:
            if row.kind != "stitch":
                continue
            place = "panel" if piece.kind == "panel" else "lap" if "+" in row.code else "side"
            stitches = len(row.stations) - 1
            threads[place].append(row.length_um() + stitches * _stack_um(job, piece, place) +
                                  um(job["tails_mm"]))
    return threads


def fills(rows_um, usable_um):
    """Bobbins that rows sewn one after the other take."""
    count, left = 0, 0
    for row_um in rows_um:
        row_um = round(row_um)
        if row_um <= left:
            left -= row_um
        elif row_um > usable_um:
            count, left = count - (-row_um // usable_um), -1
        else:
            count, left = count + 1, usable_um - row_um
    return count


def sewing(job, pieces, metres):
    """The totals; `metres` makes a figure of a length."""
    threads, usable = threads_um(job, pieces), bobbin_um(job)
    longest = max(threads["side"] + threads["lap"], default=0) or max(threads["panel"], default=0)
    return {"thread_each_m": metres(sum(sum(rows) for rows in threads.values())),
            "rows_per_bobbin": usable // round(longest) if longest else None,
            "bobbin_fills": {PLACES[place]: fills(rows, usable)
                             for place, rows in threads.items()}}
