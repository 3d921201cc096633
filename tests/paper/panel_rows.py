"""The rows of a rectangular panel, worked out again from the job file alone.

Hinge    The hinge row runs from corner to corner of the rectangle `panel_in` inside the backing.
Top and  Begin at the hinge row's ends and go to `panel_in` from the fly side. Stations run from the
bottom   hinge side.
Corner   share_hole: the place that two rows share is the hinge row's. stop_short: the hinge row
         keeps it; the other begins at the first whole micrometre of its own line that is at least
         `corner_clear` from the hinge row, and shares nothing. Square to the hinge row, that is
         `corner_clear` along the line. Where the hinge side takes no row nothing changes.
Stop     With rows_stop top and bottom end so far from the hinge side's edge, where that is before
         they would end; with no room before it they are not laid.
Points   Points and holes stand on the same line, even gaps each.
"""

from rows import Piece, Row, run, um

CORNER_CLEAR_MM = 15  # a choice of ours; a panel may say otherwise
ALL_ROWS = ("hinge_side", "top", "bottom")


def _box(left, bottom, right, top):
    corners = [(left, bottom), (right, bottom), (right, top), (left, top)]
    return list(zip(corners, corners[1:] + corners[:1]))


def _along(code, kind, edge_um, clear_um, spacing_um, place_of, shares=False):
    """A row with even gaps; `place_of` turns a station into a place of the piece."""
    stations = run(edge_um, clear_um, spacing_um)
    row = Row(code, kind, [place_of(station) for station in stations], shared_first=shares)
    row.stations, row.asked_um = stations, spacing_um
    return row


def _begins(panel):
    """Where top and bottom begin, and whether they share that place with the hinge row."""
    inset, meets = um(panel["panel_in_mm"]), "hinge_side" in panel.get("rows_on", ALL_ROWS)
    if meets and panel.get("corners", "share_hole") == "stop_short":
        return inset + um(panel.get("corner_clear_mm", CORNER_CLEAR_MM)), False
    return inset, meets


def _stop(panel, width_um):
    """How much is kept clear at the fly side, and where the rows were made to stop, if so."""
    inset, stop = um(panel["panel_in_mm"]), panel.get("rows_stop_mm")
    if stop is None or width_um - um(stop) <= inset:
        return inset, None
    return width_um - um(stop), um(stop)


def _lay_edge(piece, panel, edge):
    """Points and holes of one edge."""
    inset, at_left = um(panel["panel_in_mm"]), panel["hinge_side"] == "left"
    hinge_x = inset if at_left else piece.width_um - inset
    y = inset if edge == "bottom" else piece.length_um - inset
    begins, shares = _begins(panel)
    ends, stops = _stop(panel, piece.width_um)
    if edge != "hinge_side" and stops is not None and stops <= begins:
        return
    for kind, spacing in (("point", um(panel["spacing_mm"])), ("stitch", um(panel["stitch_mm"]))):
        if edge == "hinge_side":
            row = _along(f"{piece.code} hinge", kind, piece.length_um, (inset, inset), spacing,
                         lambda station: (hinge_x, station))
        else:
            row = _along(f"{piece.code} {edge}", kind, piece.width_um, (begins, ends), spacing,
                         lambda station: (station if at_left else piece.width_um - station, y),
                         shares)
            row.stops_um = stops
        piece.lay(row)


def panel_piece(panel):
    """A rectangular panel: hinge, top and bottom, points and holes on each."""
    width, length = (um(side) for side in panel["backing_mm"])
    piece = Piece(panel["code"], "panel", width, length)
    piece.lines = _box(0, 0, width, length)
    for edge in ALL_ROWS:
        if edge in panel.get("rows_on", ALL_ROWS):
            _lay_edge(piece, panel, edge)
    return piece
