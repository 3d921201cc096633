"""The trial cards and the machine card of a job, held against the job file and `figures`.

Sheet left   (stitch - blade) / stitch, to a tenth of a percent; under 65 % is struck through.
Needles      The job's and its neighbours among whole tens of the sizes that are made.
Radius       The least of the bays of `figures` that hold a piece with such rows.
Under arm    Sleeves joined one by one from the left: the smaller side of each joining row; the roll
             2 sqrt(R^2 + side x stack / pi), R the stay-bent limit of a leaf (PETG 150 times).
Run          Twice the longest row's piece and 800.
"""

import math
from decimal import ROUND_HALF_UP, Decimal

from job_rows import pieces_of
from job_sewing import bobbin_um, threads_um
from read_cards import cells_of
from wanted_cards import half, plain, short

SIZES = [60, 70, 80, 90, 100, 110, 120, 130, 140, 160, 180, 200, 230, 250]
KINDS = {"side": ("side_rows", "SIDE ROWS", "side rows"),
         "lap": ("lap_rows", "JOINING ROWS", "joining rows"),
         "panel": ("panel_rows", "PANEL ROWS", "panel rows")}
COLUMNS_MM = (20, 18, 20, 22, 21, 20, 15, 17, 18, 19)
CAUTION = "Figures guide; the trial seam and the dry run decide."


def _kind(piece, row):
    return "panel" if piece.kind == "panel" else "lap" if "+" in row.code else "side"


def rows_by_kind(job):
    """For each kind that is sewn: every stitch row with its piece and the entry of the job."""
    entries = [*job.get("sections", []), *job.get("panels", [])]
    found = {}
    for piece, entry in zip(pieces_of(job), entries, strict=True):
        for row in piece.rows:
            if row.kind == "stitch" and row.places:
                found.setdefault(_kind(piece, row), []).append((piece, entry, row))
    return {kind: found[kind] for kind in KINDS if kind in found}


def _asked(job, entry, kind, row):
    """The stitch a row is asked to have, whatever a trial made of it."""
    if kind == "panel":
        return Decimal(entry["stitch_mm"])
    if kind == "lap":
        return Decimal(entry["lap_rows"]["stitch"]["stitch_mm"])
    change = entry.get("changes", {}).get(row.code.rsplit(" ", 1)[0], {})
    stitch = {**entry["side_rows"]["stitch"], **change.get("side_rows", {}).get("stitch", {})}
    return Decimal(stitch["stitch_mm"])


def _stack(entry, kind):
    """None where it is worked out from the plies."""
    holder = entry if kind == "panel" else entry[KINDS[kind][0]]
    return None if "stack_from" in holder else Decimal(holder["stack_mm"])


def _needles(size):
    sizes = sorted({*SIZES, size})
    first = min(max(sizes.index(size) - 1, 0), len(sizes) - 3)
    return sizes[first:first + 3]


def _left(needle, stitch):
    left = max(Decimal(0), (stitch - Decimal(needle) / 100) / stitch)
    return plain((left * 100).quantize(Decimal("0.1"), ROUND_HALF_UP)) + " %"


def _results(trial):
    answers = {True: "yes", False: "no", None: ""}
    number = [short(trial[key], 2) if key in trial else ""
              for key in ("ten_stitches_mm", "marks_mm", "pull_n")]
    return [*number[:2], answers[trial.get("whitens")], answers[trial.get("cracks")], number[2],
            "yes" if trial.get("chosen") else ""]


def wanted_trials(job, kind, stitch):
    """The lines of the table; trials beyond the nine stand in the order of the job."""
    step = min(Decimal(1), Decimal(int(stitch * 1000) // 2) / 1000)
    lines = [[str(needle), short(each, 2), _left(needle, each)] + [""] * 6
             for needle in _needles(job["needle_size"])
             for each in (stitch - step, stitch, stitch + step)]
    others, taken = [], set()
    for trial in job.get("trials", []):
        if trial.get("of", KINDS[kind][0]) != KINDS[kind][0]:
            continue
        head = [str(trial["needle_size"]), short(trial["stitch_mm"], 2)]
        free = [at for at, line in enumerate(lines) if line[:2] == head and at not in taken]
        if free and trial["thread_tex"] == job["thread_tex"]:
            taken.add(free[0])
            lines[free[0]][3:] = _results(trial)
        else:
            left = _left(trial["needle_size"], Decimal(trial["stitch_mm"]))
            others.append([*head, left, *_results(trial)])
    others.sort(key=lambda line: line[-1] != "yes")
    return lines + others[:4]


def table_of(runs):
    """The lines of the table as they stand, column by column; without the one that is only
    written in."""
    heads = [run for run in runs if run.words in ("needle", "CHOSEN")]
    if len(heads) != 2:
        return []
    left = min(run.x for run in runs)
    wide = max(run.right for run in runs if run.words.startswith("file ")) - left
    ends = [left + wide * sum(COLUMNS_MM[:i + 1]) / sum(COLUMNS_MM) for i in range(10)]
    foot = min((run.y for run in runs if run.words.startswith("White on black")), default=0)
    lines = {}
    for run in runs:
        if heads[0].y + 1 < run.y < foot - 1:
            middle = (run.x + run.right) / 2
            column = next(i for i, end in enumerate(ends) if middle < end)
            lines.setdefault(round(run.y, 1), [""] * 10)[column] = run.words
    return [line[:5] + line[6:] for _, line in sorted(lines.items())]


def _says_objections(runs, sentences):
    said = {run.words for run in runs}
    together = " ".join(run.words for run in runs)
    return [f"no {words!r}" for words in sentences if words not in said and words not in together]


def _mark(figures):
    checksum = figures["job"]["checksum"]
    return f"file {checksum[:4]} {checksum[4:8]} {checksum[8:]}"


def _bend(figures, bays, codes):
    """The sentence of the radius; None where no bay is curved or more than one is the tightest."""
    radii = {bay["code"]: Decimal(bay["radius_mm"]) for bay, entry in zip(figures["bays"], bays)
             if bay["radius_mm"] is not None and entry.get("holds") in codes and
             "stands" not in entry}
    if not radii:
        return None
    tightest = min(radii, key=radii.get)
    return f"Bend it 5 times round a radius of {half(radii[tightest])}, as in bay {tightest}"


def trial_card_objections(runs, job, figures, kind, rows):
    """What is not so on the card of one kind of row."""
    title = KINDS[kind][1]
    stacks = [_stack(entry, kind) for _, entry, _ in rows]
    found = _says_objections(runs, [
        title, job["name"][:8], "COUPON 300 × 50", "same batch, same roll", CAUTION, _mark(figures),
        "SEW THE CHOSEN COUPON ON HERE", "thread tension", "crowding", "feed",
        "sewn and measured: initials"])
    if None not in stacks:
        found += _says_objections(runs, [f"Stack as typed {short(max(stacks), 2)}"])
        thickest = stacks.index(max(stacks))
        wanted = wanted_trials(job, kind, _asked(job, rows[thickest][1], kind, rows[thickest][2]))
        said = table_of(runs)
        found += [f"line {at + 1}: {mine} not {right}" for at, (mine, right) in
                  enumerate(zip(said, wanted)) if mine != right]
        if len(said) != len(wanted):
            found.append(f"{len(said)} lines, not {len(wanted)}")
        dark = [run.words for run in runs if run.is_white and run.size < 5 and "CARD" not in run.words]
        if dark != wanted[[line[:2] for line in wanted].index(
                [str(job["needle_size"]), short(_asked(job, rows[thickest][1], kind,
                                                       rows[thickest][2]), 2)])][:3]:
            found.append(f"white on black: {dark}")
    bend = _bend(figures, job.get("bays", []), {piece.code for piece, *_ in rows})
    if bend:
        found += _says_objections(runs, [bend])
    return [f"{title}: {words}" for words in found]


def trial_objections(pages, job, figures):
    """What is not so on a file of trial cards, a page each."""
    kinds = rows_by_kind(job)
    found = [] if len(pages) == len(kinds) else [f"{len(pages)} pages, not {len(kinds)}"]
    for runs, (kind, rows) in zip(pages, kinds.items()):
        found += trial_card_objections(runs, job, figures, kind, rows)
    return found


def _material(job, item, key):
    return job.get("materials", {}).get(item, {}).get(key)


def joins_mm(section, figures):
    """The smaller side of each joining row, from the widths of `figures`."""
    lap = Decimal(section["lap_mm"])
    codes = [entry for entry in figures["pieces"] if entry["kind"] == "sleeve" and
             entry["code"].rsplit("-", 1)[0] == section["code"]]
    run, sides = Decimal(codes[0]["width_mm"]), []
    for sleeve in codes[1:]:
        at = run - lap / 2
        run += Decimal(sleeve["width_mm"]) - lap
        sides.append(min(at, run - at))
    return sides


def how_it_goes(job, side, stack, leaf):
    throat, high = (_material(job, "machine", key) for key in ("throat_mm", "under_arm_mm"))
    if throat is None:
        return "arm not measured"
    if side <= throat:
        return "fits flat"
    radius = float(leaf) * float(_material(job, "leaf", "stay_bent_times") or 150)
    roll = 2 * math.sqrt(radius ** 2 + float(side * stack) / math.pi)
    if roll > throat or high is not None and roll > high:
        return "does not fit"
    if high is None:
        return "height not measured"
    return f"rolled {half(Decimal(math.ceil(round(roll * 2, 3))) / 2)} across"


def _metres(length_um):
    """Rounded to millimetres first, then to a hundredth of a metre."""
    millimetres = (Decimal(round(length_um)) / 1000).quantize(Decimal(1), ROUND_HALF_UP)
    return short(millimetres / 1000, 2)


def _cell_objections(runs, job, figures, kinds):
    totals, cells = figures["totals"], {cell.label: cell for cell in cells_of(runs)}
    fills = totals["bobbin_fills"]
    longest = max(piece.width_um if kind == "panel" and row.places[0][1] == row.places[-1][1]
                  else piece.length_um
                  for kind, rows in kinds.items() for piece, _, row in rows)
    figure = {"needle size": str(job["needle_size"]),
              "thread tex, top and bottom": str(job["thread_tex"]),
              "rows a bobbin": f"{totals['rows_per_bobbin']:,}",
              "bobbins to wind": f"{sum(fills.values()):,}",
              "free run of tables": half(2 * Decimal(longest) / 1000 + 800)}
    for label, key in (("throat, right of the needle", "throat_mm"),
                       ("height under the arm", "under_arm_mm"), ("foot lifts", "foot_lift_mm")):
        value = _material(job, "machine", key)
        figure[label] = "?" if value is None else short(value, 1)
    speed = _material(job, "machine", "stitches_a_minute")
    figure["stitches a minute"] = "400" if speed is None else short(speed, 0)
    found = [f"{label}: {cells[label].figure if label in cells else None}, not {right}"
             for label, right in figure.items()
             if label not in cells or cells[label].figure != right]
    beside = " ".join(cells["bobbins to wind"].beside) if "bobbins to wind" in cells else ""
    found += [f"bobbins: no {words!r} in {beside!r}" for key, word in
              (("side_rows", "side"), ("lap_rows", "joining"), ("panel_rows", "panel"))
              for words in [f"{fills[key]:,} {word}"] if fills[key] and words not in beside]
    return found + ([] if len(cells) == 9 else [f"{len(cells)} large figures"])


def _arm_objections(runs, job, figures):
    """Each section's line: how wide the widest is, and how it goes under the arm."""
    found = []
    for section in job.get("sections", []):
        sides = joins_mm(section, figures)
        name = [run for run in runs if run.words == f"section {section['code']}"]
        if not sides or not name:
            continue
        line = [run.words for run in runs if abs(run.y - name[0].y) < 0.1]
        stack = _stack(section, "side")
        right = [half(max(sides))]
        if stack is not None:
            right.append(how_it_goes(job, max(sides), stack, section["leaf_mm"]))
        found += [f"section {section['code']}: no {words!r} in {line}" for words in right
                  if words not in line]
    return found


def machine_objections(pages, job, figures):
    """What is not so on a machine card."""
    if len(pages) != 1:
        return [f"{len(pages)} pages, not 1"]
    runs, kinds = pages[0], rows_by_kind(job)
    found = _cell_objections(runs, job, figures, kinds) + _arm_objections(runs, job, figures)
    threads = threads_um(job, pieces_of(job)) if not any(
        _stack(entry, kind) is None for kind, rows in kinds.items() for _, entry, _ in rows) else {}
    longest = max([*threads.get("side", []), *threads.get("lap", [])], default=0) or max(
        threads.get("panel", []), default=0)
    sentences = [CAUTION, _mark(figures), job["name"][:8], "tension top", "tension bobbin",
                 "foot pressure", *(f"{KINDS[kind][2]}, stitch" for kind in kinds)]
    if longest:
        sentences.append(f"kept back sews {_metres(bobbin_um(job))} m; the longest row takes "
                         f"{_metres(longest)} m.")
    does_not_fit = any(run.words == "does not fit" for run in runs)
    sentences.append("DOES NOT GO UNDER THE ARM" if does_not_fit else "STITCHES A MINUTE: ")
    return found + _says_objections(runs, sentences)
