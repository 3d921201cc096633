"""What each seam card of a job must say, from the job file and the program's `figures`.

Lengths on a card are whole or a half, halves rounded away from zero; a stitch and a stack have at
most two decimals.
"""

from decimal import ROUND_HALF_UP, Decimal
from math import isqrt
from typing import NamedTuple

from job_rows import pieces_of

WIDTH_OFF_UM, LAP_OFF_UM = 1_000, 500  # common practice; a section may say otherwise


def plain(value):
    """A number without idle zeros."""
    words = format(value, "f")
    return words.rstrip("0").rstrip(".") if "." in words else words


def half(value_mm):
    return plain((Decimal(value_mm) * 2).quantize(Decimal(1), ROUND_HALF_UP) / 2)


def short(value_mm, places):
    return plain(Decimal(value_mm).quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP))


class WantedCard(NamedTuple):
    """One card: its code, the kind of its row, and everything that hangs on it."""

    code: str
    kind: str  # side, lap or panel
    start: str
    stop: str
    sew: str
    cells: dict  # label to (figure, words beside it that must be there)
    staples: int
    fly_side: str


def likely_mm(section, sleeves):
    """Root of the summed squares, in millimetres."""
    off = [Decimal(section.get(key, Decimal(um) / 1000)) for key, um in
           (("width_tolerance_mm", WIDTH_OFF_UM), ("lap_tolerance_mm", LAP_OFF_UM))]
    square = sleeves * off[0] ** 2 + (sleeves - 1) * off[1] ** 2
    return Decimal(isqrt(int(square * 10 ** 12))) / 10 ** 6


def _pair(section, row):
    """Side or lap rows as the job asks for them, with what differs on this sleeve."""
    if "+" in row["code"]:
        return section["lap_rows"]
    pair = section["side_rows"]
    change = section.get("changes", {}).get(row["code"].rsplit(" ", 1)[0], {})
    change = change.get("side_rows", {})
    return {**pair, **{key: {**pair[key], **change.get(key, {})} for key in ("staple", "stitch")}}


def _trial(job, of):
    return next((trial for trial in job.get("trials", []) if trial.get("chosen") and
                 trial.get("of", of) == of), {})


def _stitch(job, asked, of, gaps):
    """The stitch as it is sewn, and what must stand beside it."""
    trial = _trial(job, of)
    count = f"{gaps:,} stitch" + ("es" if gaps != 1 else "")
    if trial.get("stitch_mm") == asked and "ten_stitches_mm" in trial:
        sewn = Decimal(trial["ten_stitches_mm"]) / 10
        if sewn != asked:
            return short(sewn, 2), [count, f"set at {short(asked, 2)}"]
    return short(asked, 2), [count]


def _common(job, stitch):
    tails = Decimal(job["tails_mm"])
    return {"stitch": stitch, "needle size": (str(job["needle_size"]), []),
            "thread, both": (f"tex {job['thread_tex']}", []),
            "tail at each end": (half(tails * 2 / 5), ["no reverse"])}


def _section_card(job, section, sleeves, totals, row, staples):
    pair = _pair(section, row)
    is_lap = "+" in row["code"]
    of = "lap_rows" if is_lap else "side_rows"
    cells = _common(job, _stitch(job, pair["stitch"]["stitch_mm"], of, row["gaps"]))
    if is_lap:
        at = sleeves.index(row["code"].split("+")[0])
        names = sleeves[at:at + 2]
        if section.get("lies_over") == "left":
            names.reverse()
        code = " over ".join(names)
        cells["in from each edge"] = (short(Decimal(section["lap_mm"]) / 2, 1),
                                      [f"lap {short(section['lap_mm'], 1)}"])
        cells[f"running total, {sleeves[0]} to {sleeves[at]}"] = (
            half(totals[at]), [f"likely ±{half(likely_mm(section, at + 1))}"])
    else:
        code = row["code"]
        cells["in from the edge"] = (short(pair["stitch"]["in_from_edge_mm"], 1),
                                     [f"{code.rsplit(' ', 1)[1]} edge"])
        if "stack_from" not in pair:
            cells["stack"] = (short(pair["stack_mm"], 2), ["mm, typed"])
    return code, "lap" if is_lap else "side", cells, staples, ""


def _panel_card(job, panel, row):
    edge = row["code"][len(panel["code"]) + 1:].split(" ")[0]
    side = "hinge side" if edge == "hinge" else f"{edge} edge"
    cells = _common(job, _stitch(job, panel["stitch_mm"], "panel_rows", row["gaps"]))
    cells[f"in from the {side}"] = (short(panel["panel_in_mm"], 1), [])
    if "stack_from" not in panel:
        cells["stack"] = (short(panel["stack_mm"], 2), ["mm, typed"])
    fly = "" if "outline" in panel else "left" if panel["hinge_side"] == "right" else "right"
    return row["code"], "panel", cells, 0, fly


def _hinge_is_right(panel):
    if "outline" not in panel:
        return panel["hinge_side"] == "right"
    starts = [edge["from_mm"][0] for edge in panel["outline"]]
    at = [edge["role"] for edge in panel["outline"]].index("hinge_side")
    return starts[at] + starts[(at + 1) % len(starts)] > min(starts) + max(starts)


def begins_at_far_end(entry, code, sleeves, totals):
    """A row begins at the end that brings the smaller side of the work right of the needle: FRONT
    UP, the work fed away from the sewer, who then has the piece's left at the right hand when the
    row begins at BOTTOM."""
    if "+" in code:
        at = sleeves.index(code.split("+")[0])
        middle = Decimal(totals[at]) - Decimal(entry["lap_mm"]) / 2
        return Decimal(totals[at + 1]) - middle <= middle
    if "backing_thickness_mm" not in entry:
        return code.endswith(" right")
    edge = code[len(entry["code"]) + 1:].split(" ")[0]
    return (edge == "bottom") != _hinge_is_right(entry)


def wanted_cards(job, figures):
    """For each piece, its cards in the order of the rows."""
    rows = iter(figures["rows"])
    heads = [entry for entry in figures["pieces"] if entry["kind"] != "sleeve"]
    entries = [*job.get("sections", []), *job.get("panels", [])]
    wanted = []
    for piece, head, entry in zip(pieces_of(job), heads, entries, strict=True):
        laid = [next(rows) for row in piece.rows if row.places]
        at = figures["pieces"].index(head)
        sleeves = []
        for follower in figures["pieces"][at + 1:]:
            if follower["kind"] != "sleeve":
                break
            sleeves.append(follower["code"])
        cards = []
        for before, row in zip([None, *laid], laid):
            if row["kind"] != "stitch":
                continue
            is_held = before and before["kind"] == "staple" and before["code"] == row["code"]
            said = (_section_card(job, entry, sleeves, head["running_totals_mm"], row,
                                  before["points"] if is_held else 0)
                    if head["kind"] == "section" else _panel_card(job, entry, row))
            first, last = Decimal(row["first_mm"]), Decimal(row["last_mm"])
            ends = [half(first), half(last)]
            if begins_at_far_end(entry, row["code"], sleeves, head.get("running_totals_mm")):
                ends.reverse()
            cards.append(WantedCard(said[0], said[1], *ends, half(last - first), *said[2:]))
        wanted.append(cards)
    return wanted
