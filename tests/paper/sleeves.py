"""The sleeves of a section: which are there, where they stand, what they are made of.

Number     A section numbers its sleeves 1 to `count`; widths go by number. A missing number has no
           sleeve and takes no room: its neighbours lap one another, and nothing is renumbered.
Make       two_leaf: both long edges are sewn, and two leaves as wide as the sleeve are cut.
           folded: one sheet folded over the cloth; only `sewn_side` is sewn. Each leaf is flat from
           the sewn edge to where the fold begins, the width less the fold's inside radius and one
           leaf; half a turn at the middle of the sheet joins them.
           round: a tube with a flange; only the flange, at `sewn_side`, is sewn. The flange and a
           leaf on either side of the tube's inside make up the width; the blank is the tube's
           girth at the middle of the sheet and two flanges.
Shared     The joining row of a lap is the side seam of both neighbours: side rows stand only on the
           section's outermost long edges, as far as the make sews them.
"""

import math

from rows import um

SIDES = ("left", "right")


class Sleeve:
    """One sleeve that is there; its left edge from the section's left edge."""

    def __init__(self, code, left_um, width_um):
        self.code, self.left_um, self.width_um = code, left_um, width_um
        self.neighbours = {side: None for side in SIDES}

    def number(self):
        """As a lap row's code shows it: "07" of "2-07"."""
        return self.code.rpartition("-")[2]


def sleeves_of(section):
    """Those that are there, from the viewer's left."""
    missing, changes = section.get("missing", []), section.get("changes", {})
    widths, lap = section["widths_mm"], um(section["lap_mm"])
    sleeves, left = [], 0
    for index in range(section["count"]):
        code = f"{section['code']}-{index + 1:02d}"
        if code in missing:
            continue
        width = um(changes.get(code, {}).get("width_mm", widths[index % len(widths)]))
        sleeves.append(Sleeve(code, left, width))
        left += width - lap
    for left_one, right_one in zip(sleeves, sleeves[1:]):
        left_one.neighbours["right"] = right_one
        right_one.neighbours["left"] = left_one
    return sleeves


def sewn_sides(section, sleeve):
    """The long edges of a sleeve that have side rows, left before right."""
    made = SIDES if section["make"] == "two_leaf" else (section["sewn_side"],)
    is_shared = section.get("side_seams", "separate") == "shared"
    return [side for side in made if not (is_shared and sleeve.neighbours[side])]


class Blank:
    """The sheet to cut for one sleeve: `count` pieces `width_um` wide; `fold_um` is from the
    blank's edge to its fold or flange line, None where there is none. Micrometres, not rounded."""

    def __init__(self, width_um, count, fold_um):
        self.width_um, self.count, self.fold_um = width_um, count, fold_um


def blank_of(section, sleeve):
    leaf = um(section["leaf_mm"])
    if section["make"] == "folded":
        radius = um(section["fold_radius_mm"])
        width = 2 * (sleeve.width_um - radius - leaf) + math.pi * (radius + leaf / 2)
        return Blank(width, 1, width / 2)
    if section["make"] == "round":
        flange = um(section["flange_mm"])
        inside = sleeve.width_um - flange - 2 * leaf
        return Blank(math.pi * (inside + leaf) + 2 * flange, 1, flange)
    return Blank(sleeve.width_um, 2, None)
