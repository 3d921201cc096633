"""Every piece of a job with its rows, worked out again here from the job file alone.

What a row is stands in rows, what a sleeve is in sleeves, and where rows stand in section_rows and
panel_rows. Lengths are whole micrometres.
"""

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


def pieces_of(job):
    """Sections in the job's order, then panels."""
    return ([section_piece(section, clear_gap_um(job)) for section in job.get("sections", [])] +
            [panel_piece(panel) for panel in job.get("panels", [])])
