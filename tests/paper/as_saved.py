"""A job as saving writes it: its members in their order, those left out that say what is assumed
anyhow, unknown members last. The checksum among the figures is made from that text."""

import hashlib

from job_text import job_text

JOB = ("format", "version", "name", "spacing_from", "needle_size", "thread_tex", "tails_mm",
       "slip_distance_mm", "crown_mm", "wire_mm", "half_foot_mm", "foot_tolerance_mm",
       "materials", "trials", "bays", "sections", "panels")
SECTION = ("code", "make", "fold_radius_mm", "flange_mm", "sewn_side", "length_mm", "lap_mm",
           "leaf_mm", "widths_mm", "count", "lies_over", "missing", "side_seams",
           "width_tolerance_mm", "lap_tolerance_mm", "side_rows", "lap_rows", "changes")
PANEL = ("code", "backing_mm", "hinge_side", "outline", "backing_thickness_mm",
         "facing_thickness_mm", "panel_in_mm", "spacing_mm", "stitch_mm", "stack_mm", "rows_on",
         "corners", "corner_clear_mm", "rows_stop_mm")
MATERIALS = ("leaf", "backing", "facing", "sleeve_cloth", "panel_cloth", "interlining", "film",
             "adhesive", "thread", "needle", "staple", "machine", "bobbin", "fixing", "hanging")
ASSUMED = {"side_seams": "separate", "corners": "share_hole", "missing": []}


def _in_order(entry, order):
    known = {key: entry[key] for key in order if key in entry}
    return {key: value for key, value in {**known, **entry}.items()
            if not (key in order and key in ASSUMED and value == ASSUMED[key])}


def as_saved(job):
    saved = _in_order(job, JOB)
    for kind, order in (("sections", SECTION), ("panels", PANEL)):
        if kind in saved:
            saved[kind] = [_in_order(entry, order) for entry in saved[kind]]
    if "materials" in saved:
        saved["materials"] = _in_order(saved["materials"], MATERIALS)
    return saved


def checksum(job):
    """The first twelve signs of SHA-256 over the job as saved."""
    return hashlib.sha256(job_text(as_saved(job)).encode("utf-8")).hexdigest()[:12]
