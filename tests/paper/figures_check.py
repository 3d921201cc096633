#!/usr/bin/python3
"""Holds every figure of the batch program against the job, worked out again in Python.

figures_check.py [JOB ...] [--random 60] [--seed 1] [--program build/native-release/pouncemark]

Without a JOB: the three demo jobs. Random jobs come on top. Then faults are put into figures that
were right, and each must be caught wherever it can be put.
"""

import argparse
import copy
import json
import sys
import tempfile
from collections import Counter
from decimal import Decimal
from pathlib import Path

sys.dont_write_bytecode = True

import job_findings
import job_parts
import slanted_panels
from figure_faults import FAULTS
from job_figures import ABSENT, Length, figures_of
from job_rows import pieces_of, read_job
from job_text import job_text
from programs import NATIVE, ROOT, Tally, need, run
from random_jobs import Draw, random_job

DEMO_JOBS = ("marsh-lights", "harbour-ledger", "orchard-year")


def differences(wanted, said, where="", seen=None):
    """Sentences about all that is not as wanted; `seen` counts leaves by their outer member.
    Members that are said beside those wanted are none of our business."""
    if isinstance(wanted, dict):
        if not isinstance(said, dict):
            return [f"{where} is not an object"]
        return [fault for key, value in wanted.items() for fault in
                differences(value, said.get(key, ABSENT), f"{where}.{key}".lstrip("."), seen)]
    if isinstance(wanted, list):
        if not isinstance(said, list) or len(said) != len(wanted):
            count = len(said) if isinstance(said, list) else "no list"
            return [f"{where}: {count}, not {len(wanted)} of them"]
        return [fault for place, pair in enumerate(zip(wanted, said)) for fault in
                differences(*pair, f"{where}[{place}]", seen)]
    if seen is not None:
        seen[where.split(".")[0].split("[")[0]] += 1
    return [] if _agrees(wanted, said) else [f"{where}: {_shown(said)}, not {_shown(wanted)}"]


def _agrees(wanted, said):
    if isinstance(wanted, Length):
        is_number = isinstance(said, (int, Decimal)) and not isinstance(said, bool)
        return is_number and wanted.allows(said)
    return type(said) is type(wanted) and said == wanted


def _shown(leaf):
    return "nothing" if leaf is ABSENT else str(leaf)


def said_of(tally, program, file):
    """The figures of a job; none if the program did not open it."""
    done = run(program, "figures", file)
    if tally.note(done.returncode == 0 and not done.stderr,
                  f"{file.name}: opens; {done.stderr.decode(errors='replace').strip()}"):
        return json.loads(done.stdout, parse_float=Decimal)
    return None


def check_job(tally, file, said, seen):
    """Everything of one job; gives back what was wanted, None if it was not so."""
    job = read_job(file)
    pieces = pieces_of(job)
    wanted = figures_of(job, pieces, said["totals"]["pages"])
    found = differences(wanted, said, seen=seen)
    found += job_findings.objections(job, pieces, said["findings"])
    tally.note(not found, f"{file.name}: {len(said['rows'])} rows; "
                          f"{'; '.join(found[:4]) or 'all as worked out again'}")
    return None if found else wanted


def check_harbour_ledger(tally, said):
    """source: 92 sleeves in six sections, 86 laps, 377 holes in each row of 2256; 2 rows a sleeve
    or 2 a section: 184 + 86 and 12 + 86 rows; 172 rows of 377 holes fewer."""
    separate, shared = (said["side_seams"][way] for way in ("separate", "shared"))
    fewer = separate["stitch_holes"] - shared["stitch_holes"]
    tally.note((separate["rows"], shared["rows"], fewer) == (270, 98, 64_844),
               f"Harbour Ledger: {separate['rows']} rows or {shared['rows']}, {fewer} holes fewer")


def seed_faults(tally, good):
    """Puts each fault into each of the good figures; none may pass, each must fit somewhere."""
    for name, put in FAULTS.items():
        caught = passed = 0
        for wanted, said in good:
            figures = copy.deepcopy(said)
            if put(figures):
                found = differences(wanted, figures)
                caught, passed = caught + bool(found), passed + (not found)
        tally.note(caught and not passed,
                   f'seeded fault "{name}" caught {caught} times, missed {passed}')


def check_slanted(tally, program, seeds, folder):
    """Panels whose edges are not square: where their rows begin and end. A start moved by
    two micrometres must be caught."""
    looked, caught = 0, 0
    for seed in seeds:
        draw = Draw(seed)
        panels = [slanted_panels.slanted_panel(draw, f"P{number}") for number in (1, 2)]
        file = folder / f"slanted-{seed}.json"
        file.write_text(job_text(job_parts.job("Slanted", [], [], panels)), encoding="utf-8")
        said = said_of(tally, program, file)
        for panel in panels if said else ():
            rows = [row for row in said["rows"] if row["code"].startswith(panel["code"])]
            found = slanted_panels.objections(panel, rows)
            tally.note(not found, f"{file.name}, {panel['code']}: {len(rows)} rows; "
                                  f"{'; '.join(found[:2]) or 'begin and end as they should'}")
            looked += 1
            rows[-1]["first_mm"] += Decimal("0.002")
            caught += bool(slanted_panels.objections(panel, rows))
    tally.note(looked and caught == looked,
               f"a row begun 0.002 late: caught on {caught} of {looked} slanted panels")


def jobs(options, folder):
    """The files of the jobs to look at."""
    yield from map(Path, options.jobs or
                   [ROOT / "demo-jobs" / f"{name}.json" for name in DEMO_JOBS])
    for seed in range(options.seed, options.seed + options.random):
        file = folder / f"random-{seed}.json"
        file.write_text(job_text(random_job(seed)), encoding="utf-8", newline="\n")
        yield file


def main():
    parser = argparse.ArgumentParser(description="Works every figure out again.")
    parser.add_argument("jobs", nargs="*")
    parser.add_argument("--random", type=int, default=60)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--program", default=str(NATIVE))
    options = parser.parse_args()
    need(options.program)
    tally, seen, good = Tally(), Counter(), []
    with tempfile.TemporaryDirectory(prefix="figures-") as folder:
        for file in jobs(options, Path(folder)):
            said = said_of(tally, options.program, file)
            wanted = said and check_job(tally, file, said, seen)
            if wanted and said["job"]["name"] == "Harbour Ledger":
                check_harbour_ledger(tally, said)
            # Orchard Year is large and has nothing that Harbour Ledger has not.
            if wanted and len(said["rows"]) < 2_000:
                good.append((wanted, said))
        seeds = range(options.seed, options.seed + options.random)
        check_slanted(tally, options.program, seeds, Path(folder))
    seed_faults(tally, good)
    print("compared: " + ", ".join(f"{count:,} {kind}" for kind, count in seen.items()))
    return tally.close()


if __name__ == "__main__":
    sys.exit(main())
