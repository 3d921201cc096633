"""Every piece of a job with its rows, worked out again here from the job file alone.

What a row is stands in rows, what a sleeve is in sleeves, and where rows stand in section_rows and
panel_rows. Lengths are whole micrometres.

Trial    Rows asked to have the stitch that the chosen trial seam of their kind was set to are sewn
         with the one it measured: a tenth of ten stitches, to the micrometre.
"""

import copy
import json
from decimal import Decimal

from panel_rows import panel_piece
from rows import Piece, Row, run, um  # noqa: F401  (for those that look here)
from section_rows import section_piece

CROWN_UM = 12_000  # common practice; a job may say otherwise


def read_job(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file, parse_float=Decimal)


def crown_um(job):
    return um(job["crown_mm"]) if "crown_mm" in job else CROWN_UM


def clear_gap_um(job):
    """What a spacing between crowns adds to one from centre to centre."""
    return crown_um(job) if job["spacing_from"] == "clear_gap" else 0


def _put_measured(job, kind, holders):
    """The measured stitch in each holder of one that the chosen trial of this kind was set to."""
    chosen = [trial for trial in job.get("trials", [])
              if trial.get("chosen") and trial.get("of", kind) == kind]
    if not chosen or "ten_stitches_mm" not in chosen[0]:
        return
    measured_um = (um(chosen[0]["ten_stitches_mm"]) + 5) // 10
    for holder in holders:
        if holder.get("stitch_mm") == chosen[0]["stitch_mm"]:
            holder["stitch_mm"] = Decimal(measured_um) / 1000


def as_sewn(job):
    """The job with the stitches that are really sewn."""
    if not job.get("trials"):
        return job
    sewn = copy.deepcopy(job)
    for section in sewn.get("sections", []):
        changed = [change.get("side_rows", {}).get("stitch", {})
                   for change in section.get("changes", {}).values()]
        _put_measured(job, "side_rows", [section["side_rows"]["stitch"], *changed])
        if "lap_rows" in section:
            _put_measured(job, "lap_rows", [section["lap_rows"]["stitch"]])
    _put_measured(job, "panel_rows", sewn.get("panels", []))
    return sewn


def pieces_of(job):
    """Sections in the job's order, then panels, as they are sewn."""
    sewn = as_sewn(job)
    return ([section_piece(section, clear_gap_um(job)) for section in sewn.get("sections", [])] +
            [panel_piece(panel) for panel in sewn.get("panels", [])])
