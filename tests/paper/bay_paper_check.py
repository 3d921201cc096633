#!/usr/bin/python3
"""Measures drilling strips and panel cards with readers that are not ours.

bay_paper_check.py [--program build/native-release/pouncemark]

Every hole and slot of the drilling strips is worked out again here from the job alone and looked for
at its place, +-0.02 mm, on five papers and for a printer that is out; the outline on each panel card
must have the proportions of its panel. Then faults are put in, and each must be caught.
"""

import argparse
import math
import re
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True

import faults
from job_rows import read_job
from job_text import job_text
from pages import bar_nominals_um, overlap_um, paper_size_um
from programs import NATIVE, ROOT, Tally, need, run
from read_cards import runs_of
from readers import all_readers

TOLERANCE_MM = 0.02
BAR_ROOM_UM = 8_000
SCREW, HOLE_OFF, WARMER, PLANNED, TODAY = 5.0, 1.0, 15.0, 20.0, 12.0
GROWTH = 68e-6 - 5e-6  # PETG against timber along its grain, a degree

FIXED = [("hinge_side", 10, (30, 40), 300, "middle"), ("top", 12.5, (45, 25), 200, "none"),
         ("bottom", 10, (25, 25), 250, "none"), ("fly_side", 14, (60, 30), 350, "none")]


def job_with_fixings(folder):
    """The small job; on its panel a row along every edge, on its section one at the left."""
    job = read_job(ROOT / "demo-jobs" / "marsh-lights.json")

    def row(edge, in_mm, clear, spacing, tight):
        return {"edge": edge, "in_from_edge_mm": in_mm, "kept_clear_mm": list(clear),
                "spacing_mm": spacing, "tight": tight}

    job["bays"][0]["fixings"] = [row("left", 8, (20, 20), 280, "first")]
    job["bays"][1]["fixings"] = [row(*one) for one in FIXED]
    job["materials"] = {"hanging": {"today_c": int(TODAY)}}
    file = folder / "fixed.json"
    file.write_text(job_text(job), encoding="utf-8", newline="\n")
    return file


def stations(length, clear, spacing):
    used = length - sum(clear)
    gaps = math.ceil(used / spacing)
    return [clear[0] + used * i / gaps for i in range(gaps + 1)]


def wanted_holes():
    """(bay, edge) to its holes: station, distance in, slot length (the screw where round), the
    slot's way (along, in), where the screw stands from the middle. The panel is 690 x 1420, hinge
    at the left; the section's left edge is 1400 long."""
    places, tight = {}, None
    for edge, in_mm, clear, spacing, which in FIXED:
        length = 1420 if "side" in edge else 690
        at = stations(length, clear, spacing)
        lie = {"hinge_side": lambda s, d: (d, s), "fly_side": lambda s, d: (690 - d, s),
               "top": lambda s, d: (s, 1420 - d), "bottom": lambda s, d: (s, d)}[edge]
        places["B2", edge.replace("_", " ")] = [(s, in_mm, lie(s, in_mm)) for s in at]
        if which == "middle":
            tight = lie(at[(len(at) - 1) // 2], in_mm)
    axes = {"hinge side": ((0, 1), (1, 0)), "fly side": ((0, 1), (-1, 0)),
            "top": ((1, 0), (0, -1)), "bottom": ((1, 0), (0, 1)), "left": ((0, 1), (1, 0))}
    left = [(s, 8.0, (8.0, s)) for s in stations(1400, (20, 20), 280)]
    places["B1", "left"] = left
    holes = {}
    for (bay, edge), all_places in places.items():
        held = left[0][2] if bay == "B1" else tight
        holes[bay, edge] = [_hole(place, held, axes[edge]) for place in all_places]
    return holes


def _hole(place, held, axes):
    station, in_mm, (x, y) = place
    far = math.hypot(x - held[0], y - held[1])
    if far < 1e-6:
        return station, in_mm, SCREW, None, 0.0
    need = SCREW + 2 * GROWTH * WARMER * far + 2 * HOLE_OFF
    out = ((x - held[0]) / far, (y - held[1]) / far)
    way = tuple(out[0] * axis[0] + out[1] * axis[1] for axis in axes)
    return station, in_mm, math.ceil(need * 2 - 1e-6) / 2, way, GROWTH * (PLANNED - TODAY) * far


class Strip:
    """One length on its page: its box, datum, bay and edge, from the words in it."""

    def __init__(self, line, runs, scale):
        self.left, self.right, self.foot = line
        mine = [r for r in runs if self.left - 0.5 <= r.x * scale[0] < self.right]
        self.words = [r.words for r in mine]
        froms = [r.words for r in mine if r.words.endswith(" from")]
        self.datum = float(froms[0].split()[0]) if froms else 0.0
        self.bay = next((w[4:] for w in self.words if w.startswith("bay ")), None)
        names = ("hinge side", "fly side", "top", "bottom", "left")
        self.edge = next((w for w in self.words if w in names), None)


def _box(shape, scale):
    xs = [x * scale[0] for x, _ in shape.ends]
    ys = [y * scale[1] for _, y in shape.ends]
    return min(xs), min(ys), max(xs), max(ys)


def seen_on(page, runs, scale):
    """(bay, edge) and datum to the holes seen: (station, in, length, width, way), and dots."""
    boxes = [(shape, _box(shape, scale)) for shape in page.shapes]
    # A length is cut off at its foot by a thin line right across it; the longest lines are edges.
    feet = [(b[0], b[2], b[1]) for s, b in boxes
            if s.kind == "stroke" and not s.dash and abs(s.width - 0.2) < 0.01 and
            b[2] - b[0] > 39 and b[3] - b[1] < 0.01]
    edges = [b for s, b in boxes if s.kind == "stroke" and not s.dash and
             abs(s.width - 1) < 0.02 and b[2] - b[0] < 0.01 and b[3] - b[1] > 5]
    strips = [Strip(foot, runs, scale) for foot in feet]
    found = {}
    for strip in strips:
        mine = [b for b in edges if strip.left - 1 < b[0] < strip.right + 1]
        is_left = bool(mine) and mine[0][0] - strip.left < strip.right - mine[0][0]
        side = 1 if is_left else -1
        edge_at = strip.left if is_left else strip.right
        holes, dots = [], []
        for shape, b in boxes:
            middle = ((b[0] + b[2]) / 2, (b[1] + b[3]) / 2)
            if not strip.left < middle[0] < strip.right or not shape.curves:
                continue
            ends = sorted({(round(x * scale[0], 5), round(y * scale[1], 5)) for x, y in shape.ends})
            station = strip.datum + middle[1] - strip.foot
            in_mm = side * (middle[0] - edge_at)
            if shape.kind == "fill" and abs(b[2] - b[0] - 1.2) < 0.02:
                dots.append((station, in_mm))
            if shape.kind != "stroke" or abs(shape.width - 0.3) > 0.02:
                continue
            far = max(((a, c) for a in ends for c in ends), key=lambda two: math.dist(*two))
            size = math.dist(*far)
            way = ((far[1][1] - far[0][1]) / size, side * (far[1][0] - far[0][0]) / size)
            holes.append((station, in_mm, size, way))
        found[strip.bay, strip.edge, strip.datum] = (holes, dots)
    return found


def _is_whole(station, reach, datum, window, length):
    low, high = datum, min(datum + window, length)
    return low + reach < station < high - reach


def objections(pages, runs, paper, bars):
    """What is not so on the strips of a paper."""
    nominal = bar_nominals_um(paper)
    measured = [round(float(b) * 1000) for b in bars.split("x")] if bars else nominal
    scale = [m / n for m, n in zip(measured, nominal)]
    room = paper_size_um(paper)[1] - BAR_ROOM_UM - 20_000
    pitch, window = (room - overlap_um(room)) / 1000, (room * measured[1] // nominal[1]) / 1000
    wrong, found = [], {}
    for page, words in zip(pages, runs, strict=True):
        found.update(seen_on(page, words, scale))
    looked_for = 0
    for (bay, edge), holes in wanted_holes().items():
        length = 1400 if bay == "B1" else 1420 if "side" in edge else 690
        lengths = 1 if length <= window else 1 + math.ceil((length - window) / pitch - 1e-9)
        for number in range(lengths):
            datum = number * pitch
            here = found.pop((bay, edge, datum), None)
            if here is None:
                wrong.append(f"{bay} {edge}: no length from {datum}")
                continue
            for hole in holes:
                if _is_whole(hole[0], hole[2] / 2 + 1, datum, window, length):
                    looked_for += 1
                    wrong += _hole_objections(f"{bay} {edge}", hole, *here)
            extra = [h for h in here[0] if not any(abs(h[0] - w[0]) < 1 for w in holes)]
            wrong += [f"{bay} {edge}: a hole at {h[0]:.2f}" for h in extra]
    wrong += [f"a length {key} too many" for key in found]
    return looked_for, wrong


def _hole_objections(name, hole, seen, dots):
    station, in_mm, size, way, screw = hole
    near = [h for h in seen if math.hypot(h[0] - station, h[1] - in_mm) < 1]
    if len(near) != 1:
        return [f"{name}: {len(near)} holes at {station:.2f}"]
    off = math.hypot(near[0][0] - station, near[0][1] - in_mm)
    wrong = []
    if off > TOLERANCE_MM:
        wrong.append(f"{name}: the hole at {station:.2f} is {off:.3f} off")
    if abs(near[0][2] - size) > TOLERANCE_MM:
        wrong.append(f"{name}: at {station:.2f} it is {near[0][2]:.3f} long, not {size}")
    if way is None:
        return wrong
    if abs(near[0][3][0] * way[1] - near[0][3][1] * way[0]) * size / 2 > TOLERANCE_MM:
        wrong.append(f"{name}: the slot at {station:.2f} lies another way")
    place = (station + way[0] * screw, in_mm + way[1] * screw)
    if not any(math.dist(place, dot) <= TOLERANCE_MM for dot in dots):
        wrong.append(f"{name}: no screw of the day at {place[0]:.2f}")
    return wrong


def printed(program, job_file, guide, paper, bars, folder):
    words = ["print", job_file, "--guide", guide, "--paper", paper, "--out", folder]
    done = run(program, *words, *(["--bars", bars] if bars else []))
    if done.returncode != 0:
        raise ValueError(done.stderr.decode(errors="replace").strip())
    return [folder / name for name in done.stdout.decode().splitlines()]


def check_strips(tally, program, job_file, paper, bars, folder):
    (pdf,) = printed(program, job_file, "drilling-strip", paper, bars, folder / f"{paper}{bars}")
    runs = runs_of(pdf)
    for name, read in all_readers().items():
        looked_for, wrong = objections(read(pdf), runs, paper, bars)
        tally.note(looked_for >= 20 and not wrong,
                   f"drilling strips, {paper} {bars or ''}, {name}: {looked_for} holes; "
                   f"{'; '.join(wrong[:3]) or 'all at their places'}")
    return pdf, runs


def _moved(qdf, _):
    """A corner of the first slot, whose pen is 0.3 wide, moved by half a millimetre either way."""
    start = qdf.index(b"0.3 w\n")
    found = re.compile(rb"([\d.]+) ([\d.]+) m\n").search(qdf, start)
    words = b"%.3f %.3f m\n" % (float(found[1]) + 0.5, float(found[2]) + 0.5)
    return qdf[:found.start()] + words + qdf[found.end():]


FAULTS = {"nothing": lambda qdf, _: qdf, "0.05 % too large": faults.IN_THE_BYTES["0.05 % too large"],
          "mirrored": faults.IN_THE_BYTES["mirrored"], "a slot bent": _moved}


def seed_faults(tally, pdf, runs, paper, folder):
    reader = all_readers()["mutool"]
    file = folder / "faulty.pdf"
    for name, put in FAULTS.items():
        faults.put(pdf, put, file)
        _, wrong = objections(reader(file), runs, paper, "")
        tally.note(bool(wrong) == (name != "nothing"),
                   f'drilling strips: seeded fault "{name}" '
                   f'{"caught: " + wrong[0] if wrong else "passed"}')


def card_objections(page, wide, long):
    """Of each outline, two level lines of pen 0.7 as long as the panel is wide in proportion."""
    levels = [shape for shape in page.shapes if shape.kind == "stroke" and not shape.dash and
              abs(shape.width - 0.7) < 0.01 and len(shape.ends) == 2 and
              abs(shape.ends[0][1] - shape.ends[1][1]) < 0.001 and
              abs(shape.ends[0][0] - shape.ends[1][0]) > 15]
    if len(levels) != 4:
        return [f"{len(levels)} level edges, not 4"]
    wrong = []
    levels.sort(key=lambda shape: shape.ends[0][0])
    for pair in (levels[:2], levels[2:]):
        across = [abs(shape.ends[0][0] - shape.ends[1][0]) for shape in pair]
        up = abs(pair[0].ends[0][1] - pair[1].ends[0][1])
        if abs(across[0] - across[1]) > TOLERANCE_MM or abs(across[0] - up * wide / long) > 0.02:
            wrong.append(f"an outline of {across[0]:.3f} x {up:.3f} for {wide} x {long}")
    return wrong


def check_cards(tally, program, folder):
    job_file = ROOT / "demo-jobs" / "harbour-ledger.json"
    panels = read_job(job_file)["panels"]
    files = printed(program, job_file, "panel-card", "A4", "", folder / "cards")
    tally.note(len(files) == len(panels), f"{len(panels)} panels, {len(files)} files of cards")
    for pdf, panel in zip(files, panels):
        wide, long = map(float, panel["backing_mm"])
        words = {run.words for page in runs_of(pdf) for run in page}
        missing = [w for w in ("FRONT", "FACE DOWN", "HINGE SIDE", "FLY SIDE - DO NOT SEW")
                   if w not in words]
        for name, read in all_readers().items():
            pages = read(pdf)
            wrong = card_objections(pages[0], wide, long) + missing
            caught = card_objections(pages[0], wide * 1.01, long)
            tally.note(len(pages) == 1 and not wrong and caught,
                       f"panel card {panel['code']}, {name}: {'; '.join(wrong) or 'in proportion'}")


def main():
    parser = argparse.ArgumentParser(description="Measures drilling strips and panel cards.")
    parser.add_argument("--program", default=str(NATIVE))
    options = parser.parse_args()
    need(options.program)
    tally = Tally()
    with tempfile.TemporaryDirectory(prefix="bays-") as name:
        folder = Path(name)
        job_file = job_with_fixings(folder)
        for paper, bars in (("A4", ""), ("A3", ""), ("Letter", ""), ("Tabloid", ""),
                            ("300x450", ""), ("A4", "179.3x200.4")):
            pdf, runs = check_strips(tally, options.program, job_file, paper, bars, folder)
            if (paper, bars) == ("A4", ""):
                seed_faults(tally, pdf, runs, paper, folder)
        check_cards(tally, options.program, folder)
    return tally.close()


if __name__ == "__main__":
    sys.exit(main())
