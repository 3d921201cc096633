#!/usr/bin/python3
"""Prints seam cards, trial cards and the machine card, reads them back with readers that are not
ours and holds every figure on them against the job and `figures`.

cards_check.py [JOB ...] [--random 12] [--seed 1] [--program build/native-release/pouncemark]

Without a JOB: the two smaller demo jobs, one of them also with a trial seam, and on four papers.
Then faults are put into cards that were right, and each must be caught.
"""

import argparse
import json
import sys
import tempfile
from decimal import Decimal
from pathlib import Path

sys.dont_write_bytecode = True

import card_faults
import faults
import job_cards
from job_rows import read_job
from job_text import job_text
from programs import NATIVE, ROOT, Tally, need, run
from random_jobs import random_job
from read_cards import border_is_clean, cards_on, runs_of, words_by_poppler
from wanted_cards import wanted_cards

LEAST_MM = 3.8
CAUTION = "Figures guide; the trial seam and the dry run decide."
CARDS_A_PAGE = {"A4": 2, "Letter": 2, "A3": 4, "148x210": 1}


def squeezed(words):
    return "".join(words.split())


def card_objections(card, wanted, job, figures):
    """What is not so on one card; words that had to be shortened end in "…"."""
    found = []

    def hold(what, said, right):
        is_so = said == right or said.endswith("…") and right.startswith(said[:-1])
        if not is_so:
            found.append(f"{wanted.code}: {what} {said!r}, not {right!r}")

    hold("code", card.code, wanted.code)
    for word in ("start", "stop", "sew"):
        said = card.after(word)
        hold(word, said[0] if len(said) == 1 else repr(said), getattr(wanted, word))
    if len(card.cells) != 6:
        found.append(f"{wanted.code}: {len(card.cells)} large figures")
    for label, (figure, beside) in wanted.cells.items():
        cells = [cell for cell in card.cells if cell.label == label or
                 cell.label.endswith("…") and label.startswith(cell.label[:-1])]
        if len(cells) != 1:
            found.append(f"{wanted.code}: {len(cells)} cells {label!r}")
            continue
        hold(label, cells[0].figure, figure)
        found += [f"{wanted.code}: {label}: no {words!r} but {cells[0].beside}" for words in beside
                  if words not in " ".join(cells[0].beside)]
    is_across = wanted.kind == "panel" and " hinge" not in wanted.code
    ends = ("HINGE SIDE", "FLY SIDE") if is_across else ("BOTTOM", "TOP")
    checksum = figures["job"]["checksum"]
    mark = f"file {checksum[:4]} {checksum[4:8]} {checksum[8:]}"
    found += [f"{wanted.code}: no {words!r}" for words in ("FRONT UP", CAUTION, mark, *ends)
              if not card.says(words)]
    found += staple_objections(card, wanted)
    if wanted.kind == "panel":
        words = f"FLY SIDE - DO NOT SEW: the {wanted.fly_side}"
        if not squeezed(words) in squeezed(card.lines):
            found.append(f"{wanted.code}: no {words!r}")
    if not any(run.words.startswith(job["name"][:8]) for run in card.runs):
        found.append(f"{wanted.code}: not the job's name")
    return found


def staple_objections(card, wanted):
    counts = card.under("staples in")
    right = [f"{wanted.staples:,}"] if wanted.staples else None
    if counts != right:
        return [f"{wanted.code}: staples in {counts}, not {right}"]
    said = card.band.split("STAPLES OUT", 1)[-1].split()
    if "STAPLES OUT" in card.band and said[-1] != f"{wanted.staples:,}":
        return [f"{wanted.code}: the band says {card.band!r}"]
    return []


def objections(pdf, wanted, job, figures):
    """Everything that is not so in one file of cards."""
    pages = runs_of(pdf)
    cards = cards_on(pages)
    found = [] if len(cards) == len(wanted) else [f"{len(cards)} cards, not {len(wanted)}"]
    for card, right in zip(cards, wanted):
        found += card_objections(card, right, job, figures)
        same = [other for other in wanted if other.kind == right.kind]
        if (card.number, card.count) != (same.index(right) + 1, len(same)):
            found.append(f"{right.code}: row {card.number} of {card.count}")
    for code in {right.code for right in wanted if len(right.code) < 20}:
        times = sum(card.code == code for card in cards)
        if times != 1:
            found.append(f"{code}: {times} cards")
    read_by_poppler = squeezed(" ".join(words_by_poppler(pdf)))
    found += [f"{right.code}: poppler does not read it" for right in wanted
              if len(right.code) < 20 and squeezed(right.code) not in read_by_poppler]
    return found + page_objections(pdf, pages)


def page_objections(pdf, pages):
    """Words too small to be read at the bench, and ink where no printer reaches."""
    runs = [run for page in pages for run in page]
    found = [f"{run.words!r} is {run.size:.2f} high" for run in runs if run.size < LEAST_MM - 0.01]
    found += [f"page {number + 1}: ink in the outer 10" for number, clean in
              enumerate(border_is_clean(pdf)) if not clean]
    return found


def bobbin_objections(files, figures):
    """Every bobbin has one last row; a row that no bobbin lasts says so instead."""
    fills = figures["totals"]["bobbin_fills"]
    cards = [card for pdf in files for card in cards_on(runs_of(pdf))]
    found = []
    for kind, row_kind in (("side", "side_rows"), ("joining", "lap_rows"), (None, "panel_rows")):
        lines = [card.lines for card in cards if card.kind == kind]
        if any("unjoined" in line for line in lines):
            continue
        ends = sum("last row." in line or "its only row." in line for line in lines)
        if ends != fills[row_kind]:
            found.append(f"{ends} bobbins end in {row_kind}, not {fills[row_kind]}")
    return found


def printed(program, job_file, paper, folder, guide="seam-card"):
    """The files of cards, in the order they were printed."""
    done = run(program, "print", job_file, "--guide", guide, "--paper", paper, "--out", folder)
    if done.returncode != 0:
        raise ValueError(done.stderr.decode(errors="replace").strip())
    return [folder / name for name in done.stdout.decode().splitlines()]


def check_job(tally, program, job_file, paper, folder):
    """Every card of a job on one paper; gives each file with what it should say."""
    job = read_job(job_file)
    figures = json.loads(run(program, "figures", job_file).stdout, parse_float=Decimal)
    pieces = [cards for cards in wanted_cards(job, figures) if cards]
    files = printed(program, job_file, paper, folder)
    good = []
    found = [] if len(files) == len(pieces) else [f"{len(files)} files, not {len(pieces)}"]
    for pdf, wanted in zip(files, pieces):
        found += objections(pdf, wanted, job, figures)
        pages, right = len(words_by_poppler(pdf)), -(-len(wanted) // CARDS_A_PAGE[paper])
        if pages != right:
            found.append(f"{pdf.name}: {pages} pages, not {right}")
        good.append((pdf, wanted, job, figures))
    found += bobbin_objections(files, figures)
    cards = sum(map(len, pieces))
    tally.note(cards and not found, f"{job_file.name}, {paper}: {cards} cards; "
                                    f"{'; '.join(found[:4]) or 'all as worked out again'}")
    return good


def check_trial(tally, program, folder):
    """Ten stitches measured 58 at a setting of 6: 5.8 on every card."""
    job = read_job(ROOT / "demo-jobs" / "harbour-ledger.json")
    job["trials"] = [{"needle_size": 140, "thread_tex": 135, "stitch_mm": 6, "ten_stitches_mm": 58,
                      "chosen": True, "signed_by": "A. Sewer, 12 Nov"}]
    job["sections"], job["panels"] = job["sections"][1:2], job["panels"][:1]
    job["bays"] = []
    file = folder / "with-a-trial.json"
    file.write_text(job_text(job), encoding="utf-8")
    good = check_job(tally, program, file, "A4", folder)
    words = [words for pdf, *_ in good for words in words_by_poppler(pdf)]
    signed = sum(page.count("H3 trial seam approved: A. Sewer, 12 Nov") for page in words)
    cards = sum(len(wanted) for _, wanted, *_ in good)
    tally.note(signed == cards, f"the trial stands signed on {signed} of {cards} cards")


OF_JOB = {"trial-card": (job_cards.trial_objections, card_faults.OF_TRIAL_CARDS),
          "machine-card": (job_cards.machine_objections, card_faults.OF_MACHINE_CARDS)}


def job_card_objections(guide, pdf, job, figures):
    pages = runs_of(pdf)
    return OF_JOB[guide][0](pages, job, figures) + page_objections(pdf, pages)


def check_job_cards(tally, program, job_file, paper, folder):
    """Trial cards and machine card of a job; gives each file with what it is held against."""
    job = read_job(job_file)
    figures = json.loads(run(program, "figures", job_file).stdout, parse_float=Decimal)
    good = {}
    for guide in OF_JOB:
        files = printed(program, job_file, paper, folder, guide)
        wanted = 1 if job_cards.rows_by_kind(job) else 0
        found = [] if len(files) == wanted else [f"{len(files)} files, not {wanted}"]
        for pdf in files:
            found += job_card_objections(guide, pdf, job, figures)
            good[guide] = (pdf, job, figures)
        tally.note(not found, f"{job_file.name}, {paper}: {guide}; "
                              f"{'; '.join(found[:4]) or 'all as worked out again'}")
    return good


def check_entered(tally, program, folder):
    """A machine that was measured, and trials that were sewn; then faults in its cards."""
    job = read_job(ROOT / "demo-jobs" / "marsh-lights.json")
    job["materials"] = {"machine": {"name": "long arm", "throat_mm": 120, "under_arm_mm": 90,
                                    "foot_lift_mm": 12, "stitches_a_minute": 350},
                        "bobbin": {"thread_m": 30}}
    job["trials"] = [{"needle_size": 140, "thread_tex": 135, "stitch_mm": Decimal("5.5"),
                      "ten_stitches_mm": 58, "marks_mm": Decimal("498.5"), "whitens": False,
                      "cracks": False, "pull_n": 212, "chosen": True, "signed_by": "A. Sewer"},
                     {"of": "side_rows", "needle_size": 120, "thread_tex": 90, "stitch_mm": 4,
                      "ten_stitches_mm": 39, "whitens": True}]
    file = folder / "entered.json"
    file.write_text(job_text(job), encoding="utf-8")
    faulty = folder / "faulty.pdf"
    for guide, (pdf, *right) in check_job_cards(tally, program, file, "A4", folder).items():
        for name, put in OF_JOB[guide][1].items():
            card_faults.put_words(pdf, put, faulty)
            is_caught = bool(job_card_objections(guide, faulty, *right))
            tally.note(is_caught != (name == "nothing"),
                       f'{guide}: seeded fault "{name}" {"caught" if is_caught else "passed"}')


def seed_faults(tally, good, folder):
    """Each fault where it fits: those of every card in the shortest file; "nothing" must pass."""
    file = folder / "faulty.pdf"
    for pdf, wanted, job, figures in good:
        is_panel = wanted[0].kind == "panel"
        words = ({**card_faults.IN_THE_WORDS, **card_faults.OF_PANELS} if is_panel else
                 card_faults.OF_SECTIONS)
        for name, put in words.items():
            card_faults.put_words(pdf, put, file)
            is_caught = bool(objections(file, wanted, job, figures))
            tally.note(is_caught != (name == "nothing"),
                       f'{pdf.name}: seeded fault "{name}" {"caught" if is_caught else "passed"}')
        for name, put in card_faults.IN_THE_BYTES.items() if is_panel else ():
            faults.put(pdf, put, file)
            tally.note(objections(file, wanted, job, figures),
                       f'{pdf.name}: seeded fault "{name}"')
        tally.note(objections(pdf, wanted[1:], job, figures), f"{pdf.name}: a card too many")


def main():
    parser = argparse.ArgumentParser(description="Reads seam cards back.")
    parser.add_argument("jobs", nargs="*")
    parser.add_argument("--random", type=int, default=12)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--program", default=str(NATIVE))
    options = parser.parse_args()
    need(options.program)
    tally = Tally()
    small = ROOT / "demo-jobs" / "marsh-lights.json"
    with tempfile.TemporaryDirectory(prefix="cards-") as name:
        folder = Path(name)
        for job in map(Path, options.jobs or [ROOT / "demo-jobs" / "harbour-ledger.json"]):
            check_job(tally, options.program, job, "A4", folder)
            check_job_cards(tally, options.program, job, "A4", folder)
        for paper in CARDS_A_PAGE:
            good = check_job(tally, options.program, small, paper, folder / paper)
            if paper == "A4":
                seed_faults(tally, good, folder)
        check_trial(tally, options.program, folder)
        check_entered(tally, options.program, folder)
        for paper in ("A4", "Letter"):
            check_job_cards(tally, options.program, small, paper, folder / paper)
        for seed in range(options.seed, options.seed + options.random):
            file = folder / f"random-{seed}.json"
            file.write_text(job_text(random_job(seed)), encoding="utf-8", newline="\n")
            check_job(tally, options.program, file, "A4", folder / f"random-{seed}")
            check_job_cards(tally, options.program, file, "A4", folder / f"random-{seed}")
    return tally.close()


if __name__ == "__main__":
    sys.exit(main())
