"""Parts shared by the makers of jobs: the keys of a section, a panel and a bay in their order."""

from decimal import Decimal


def pair(in_mm, ends, spacing, stitch, stack, staples, left_over=None, rule="even"):
    """A staple row and a stitch row of one place; `in_mm` is (staple, stitch) or None on a lap."""
    staple = {} if in_mm is None else {"in_from_edge_mm": in_mm[0]}
    staple.update(kept_clear_mm=list(ends), spacing_mm=spacing, rule=rule)
    if left_over is not None:
        staple["left_over"] = left_over
    if staples is not None:
        staple["staples"] = staples
    sewn = {} if in_mm is None else {"in_from_edge_mm": in_mm[1]}
    sewn.update(kept_clear_mm=list(ends), stitch_mm=stitch)
    return {"staple": staple, "stitch": sewn, "stack_mm": stack}


def section(code, length, lap, leaf, widths, count, side_rows, lap_rows, others=()):
    """Sleeves side by side; `lap_rows` is None for a section of one. `others` are members that may
    be left out; a make among them takes the place of two_leaf."""
    made = {"code": code, "make": "two_leaf", "length_mm": length, "lap_mm": lap, "leaf_mm": leaf,
            "widths_mm": list(widths), "count": count, **dict(others), "side_rows": side_rows}
    if lap_rows is not None:
        made["lap_rows"] = lap_rows
    return made


def panel(code, backing, hinge_side, panel_in, spacing, stitch, thickness=1, stack=None):
    """A rectangular panel."""
    return {"code": code, "backing_mm": list(backing), "hinge_side": hinge_side,
            "backing_thickness_mm": thickness, "panel_in_mm": panel_in, "spacing_mm": spacing,
            "stitch_mm": stitch, "stack_mm": stack}


def bay(number, chord, rise, face, holds):
    """One place on the frame."""
    return {"code": f"B{number}", "chord_mm": chord, "rise_mm": rise, "face": face, "holds": holds}


def job(name, bays, sections, panels, spacing_from="centre_to_centre"):
    """A whole job with the demo jobs' needle, thread, tails and slip distance."""
    return {"format": "pouncemark-job", "version": 1, "name": name, "spacing_from": spacing_from,
            "needle_size": 140, "thread_tex": 135, "tails_mm": 300,
            "slip_distance_mm": Decimal("1.5"), "bays": bays, "sections": sections,
            "panels": panels}
