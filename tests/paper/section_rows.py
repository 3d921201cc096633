"""The rows of a section, worked out again from the job file alone.

The definitions, in the millimetres of a piece (x across from its left edge, y from BOTTOM):

Side     A staple row and a stitch row on each long edge that is sewn (see sleeves), so far in from
         the edge, kept clear of both ends. A row farther in than the sleeve is wide cannot be laid,
         nor can one farther in than the flange of a round sleeve.
Lap      One staple row and one stitch row on its middle line; none on round sleeves, where they
         would run through the tube. Its code names the two sleeves that lap: `2-14+16` where
         2-15 is missing.
Order    Sleeve by sleeve from the viewer's left: left staple, left stitch, right staple, right
         stitch; then lap by lap staple, stitch.
"""

from fractions import Fraction

from rows import Piece, Row, run, um
from sleeves import sewn_sides, sleeves_of

BESIDE_FOLD_UM = 1_200  # our own choice: so far inside the folded edge its second line is drawn


def _merged(rule, change):
    return {**rule, **(change or {})}


def _upright(code, kind, x, edge_um, rule, spacing_um):
    """A row from BOTTOM to TOP; without points if there is no line for it (x is None)."""
    is_exact, clear = rule.get("rule", "even") == "exact", [um(e) for e in rule["kept_clear_mm"]]
    stations = [] if x is None else run(edge_um, clear, spacing_um, is_exact,
                                        rule.get("left_over", "end"))
    row = Row(code, kind, [(x, y) for y in stations])
    row.stations, row.asked_um = stations, spacing_um
    if is_exact:
        row.left_over_um = (edge_um - sum(clear)) % spacing_um
    return row


def _lay_pair(piece, code, xs, pair, clear_gap_um):
    """The staple row and the stitch row of one place; `xs` says where each stands."""
    staple, stitch = pair["staple"], pair["stitch"]
    piece.lay(_upright(code, "staple", xs["staple"], piece.length_um, staple,
                       um(staple["spacing_mm"]) + clear_gap_um))
    piece.lay(_upright(code, "stitch", xs["stitch"], piece.length_um, stitch,
                       um(stitch["stitch_mm"])))


def _side_x(section, sleeve, side, in_um):
    """Where a row stands that is so far in from an edge; None where it would not be held."""
    held = um(section["flange_mm"]) if section["make"] == "round" else sleeve.width_um
    if in_um > min(held, sleeve.width_um):
        return None
    right = sleeve.left_um + sleeve.width_um
    return sleeve.left_um + in_um if side == "left" else right - in_um


def _lay_sleeve(piece, section, sleeve, clear_gap_um):
    changed = section.get("changes", {}).get(sleeve.code, {}).get("side_rows", {})
    pair = {row: _merged(section["side_rows"][row], changed.get(row))
            for row in ("staple", "stitch")}
    for side in sewn_sides(section, sleeve):
        xs = {row: _side_x(section, sleeve, side, um(pair[row]["in_from_edge_mm"]))
              for row in pair}
        _lay_pair(piece, f"{sleeve.code} {side}", xs, pair, clear_gap_um)


def lap_middles_um(section, sleeves):
    """The middle line of each lap."""
    return [sleeve.left_um + Fraction(um(section["lap_mm"]), 2) for sleeve in sleeves[1:]]


def made_lines_um(section, sleeves):
    """Where a sleeve of one sheet is bent: a line 1.2 inside its fold, or where its flange begins."""
    if section["make"] == "two_leaf":
        return []
    is_folded = section["make"] == "folded"
    inward = BESIDE_FOLD_UM if is_folded else um(section["flange_mm"])
    # A fold lies opposite the sewn side, a flange at it.
    from_left = (section["sewn_side"] == "left") != is_folded
    return [sleeve.left_um + (inward if from_left else sleeve.width_um - inward)
            for sleeve in sleeves]


def section_piece(section, clear_gap_um):
    """A section with the sleeves that are there, its rows and the edges that are drawn."""
    sleeves, length = sleeves_of(section), um(section["length_mm"])
    width = sleeves[-1].left_um + sleeves[-1].width_um
    piece = Piece(section["code"], "section", width, length)
    piece.sleeves = sleeves
    for sleeve in sleeves:
        _lay_sleeve(piece, section, sleeve, clear_gap_um)
        piece.lines += [((x, 0), (x, length))
                        for x in (sleeve.left_um, sleeve.left_um + sleeve.width_um)]
    for left, right, middle in zip(sleeves, sleeves[1:], lap_middles_um(section, sleeves)):
        x = None if section["make"] == "round" else middle
        _lay_pair(piece, f"{left.code}+{right.number()}", {"staple": x, "stitch": x},
                  section["lap_rows"], clear_gap_um)
    piece.lines += [((0, y), (piece.width_um, y)) for y in (0, length)]
    piece.lines += [((x, 0), (x, length)) for x in made_lines_um(section, sleeves)]
    return piece
