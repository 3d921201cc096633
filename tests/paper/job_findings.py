"""Which findings a job must have and which it must not, as far as its file alone decides.

row_not_laid     A row that is asked for has no room.
short_last_gap   An exact row was given one more point, and its last gap is shorter than asked.
Codes            A sleeve is missing, a number between those of the sections or of the panels is
                 not there, a bay holds a code that no piece has, or two bays hold one piece.
"""

CODES = ("code_missing", "code_used_twice")


def _has_short_gap(row):
    """The step before the last point of an exact row."""
    return row.left_over_um is not None and len(row.stations) > 1 and (
        row.stations[-1] - row.stations[-2] < row.asked_um)


def _has_number_gap(codes):
    numbers = [int(code.lstrip("P")) for code in codes]
    return bool(numbers) and max(numbers) - min(numbers) + 1 > len(numbers)


def _codes_amiss(job):
    sections, panels = job.get("sections", []), job.get("panels", [])
    codes = [piece["code"] for piece in sections + panels]
    held = [bay["holds"] for bay in job.get("bays", []) if "stands" not in bay]
    is_a_number_free = any(_has_number_gap([piece["code"] for piece in kind])
                           for kind in (sections, panels))
    return (is_a_number_free or any(section.get("missing") for section in sections) or
            len(set(held)) < len(held) or not set(held) <= set(codes))


def findings_of(job, pieces):
    """For each group of finding codes whether the job has one."""
    return {("row_not_laid",): any(piece.not_laid for piece in pieces),
            ("short_last_gap",): any(_has_short_gap(row) for piece in pieces
                                     for row in piece.rows),
            CODES: _codes_amiss(job)}


def objections(job, pieces, said):
    """What is wrong with the findings said, in words."""
    codes = {finding["code"] for finding in said}
    return [f"{' or '.join(group)} is {'not ' * wanted}said"
            for group, wanted in findings_of(job, pieces).items()
            if wanted != bool(codes & set(group))]
