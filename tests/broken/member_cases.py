"""Members that a job may leave out: every bad value we know, each with a good one beside it.

A table's row is (member, texts that are refused, texts that open), the texts as they stand in the
file. What is wrong with a member is said with its name; what is no JSON at all, with its line.
"""

from case import marsh, opens, refused
from walk import Raw, job_with, path_words, text_of, without

SECTION, PANEL = ("sections", 0), ("panels", 0)
NOT_JSON = ("NaN", "nan", "Infinity", "-Infinity", "1e400", "'2'", "0x2", "2.", ".5", "1,5", "02",
            "+2", "")
NO_LENGTH = ("-0.001", "-2", "1e308", "1e9", "1e300", "9" * 300, "0.0005", "1e-400", '"2"', '"NaN"',
             '""', "null", "true", "[]", "[2]", "{}", *NOT_JSON)
NO_WORD = ('""', '"up"', '" left"', "7", "-1", "null", "true", "[]", '["left"]', "{}", "left",
           '"' + "long" * 1_000 + '"')
NO_LIST = ('"1-05"', '""', "5", "null", "true", "{}", '{"1-05":true}', "1-05")
NO_CODES = ('[""]', "[5]", "[null]", '[["1-05"]]', '[{"code":"1-05"}]', '["1-10"]', '["1-00"]',
            '["1-5"]', '["1-005"]', '["2-05"]', '["05"]', '["1-05 "]', '["1-05","1-10"]',
            '["1-05","1-05"]', '["1-01","1-05","1-01"]', '["' + "long" * 100_000 + '"]')
EVERY_SLEEVE = [f"1-{number:02d}" for number in range(1, 10)]


def _section(**members):
    """The small job with members put into its section; those that are None taken out."""
    job = marsh()
    section = {**job["sections"][0], **members}
    job["sections"][0] = {key: value for key, value in section.items() if value is not None}
    return job


def folded(**members):
    return _section(**{"make": "folded", "fold_radius_mm": 0.5, "sewn_side": "left", **members})


def tube(**members):
    """A round sleeve whose flange holds its rows."""
    return _section(**{"make": "round", "flange_mm": 40, "sewn_side": "right", **members})


def _shown(text):
    return text if 0 < len(text) < 40 else f"{len(text)} signs"


def _both(job, path, bad, good):
    """A case for each text put at a path."""
    for text in bad:
        fragment = "line" if text in NOT_JSON + ("left", "1-05") else path_words(path)
        yield refused(f"{path_words(path)} is {_shown(text)}", fragment,
                      text_of(job_with(job, path, Raw(text))))
    for text in good:
        yield opens(f"{path_words(path)} is {_shown(text)}",
                    text_of(job_with(job, path, Raw(text))))


def words():
    table = [
        (folded(), SECTION + ("sewn_side",), ('"top"', '"Left"', '"both"'), ('"left"', '"right"')),
        (tube(), SECTION + ("sewn_side",), ('"flange"',), ('"left"', '"right"')),
        (marsh(), SECTION + ("side_seams",), ('"both"', '"Shared"'), ('"separate"', '"shared"')),
        (marsh(), PANEL + ("corners",), ('"round"', '"share"'), ('"share_hole"', '"stop_short"')),
        # With all that any make needs.
        (folded(flange_mm=20), SECTION + ("make",), ('"pleated"', '"three_leaf"', '"Folded"'),
         ('"two_leaf"', '"folded"', '"round"')),
    ]
    for job, path, bad, good in table:
        yield from _both(job, path, NO_WORD + bad, good)


def lengths():
    short = job_with(marsh(), PANEL + ("corners",), "stop_short")
    table = [
        (folded(), SECTION + ("fold_radius_mm",), ("50.001", "60"), ("0", "0.001", "50")),
        (tube(), SECTION + ("flange_mm",), ("0", "60", "61", "59.5"), ("0.001", "59.499", "20")),
        (short, PANEL + ("corner_clear_mm",), (), ("0.001", "15", "27.183", "642")),
        (marsh(), PANEL + ("rows_stop_mm",), ("0", "100000.001"), ("0.001", "302.5", "100000")),
        (marsh(), ("wire_mm",), ("0",), ("0.001", "0.5", "1.2")),
    ]
    for job, path, bad, good in table:
        yield from _both(job, path, NO_LENGTH + bad, good)


def needed_of_a_make():
    """Members that one make needs and another does not."""
    for name, job, members in (("folded", folded(), ("fold_radius_mm", "sewn_side")),
                               ("round", tube(), ("flange_mm", "sewn_side"))):
        for member in members:
            yield refused(f"{name} without {member}", member,
                          text_of(without(job, SECTION + (member,))))
    yield opens("two leaves without any of them", text_of(_section()))


def sleeves_too_narrow():
    """The narrowest sleeve decides, whether the section or a change makes it so."""
    narrow = {"1-05": {"width_mm": 40}}
    table = [
        ("a fold as wide as the sleeve", "fold_radius_mm",
         folded(widths_mm=[40], fold_radius_mm=39.75),
         folded(widths_mm=[40], fold_radius_mm=39.749)),
        ("a fold as wide as one sleeve", "fold_radius_mm",
         folded(changes=narrow, fold_radius_mm=39.75),
         folded(changes=narrow, fold_radius_mm=39.749)),
        ("a flange as wide as the sleeve", "flange_mm",
         tube(widths_mm=[40], flange_mm=40), tube(widths_mm=[40], flange_mm=39.499)),
        ("a flange as wide as one sleeve", "flange_mm",
         tube(changes=narrow, flange_mm=39.5), tube(changes=narrow, flange_mm=39.499)),
        ("leaves that fill the tube", "flange_mm",
         tube(leaf_mm=10), tube(leaf_mm=9.999)),
    ]
    for name, fragment, bad, good in table:
        yield refused(name, fragment, text_of(bad))
        yield opens(f"not quite {name}", text_of(good))


def missing():
    path = SECTION + ("missing",)
    yield from _both(marsh(), path, NO_LIST + NO_CODES,
                     ("[]", '["1-05"]', '["1-09","1-01"]', '["1-01","1-02","1-03"]'))
    many = [f"1-{number:02d}" for number in range(1, 10_001)]
    for name, codes in (("every sleeve missing", EVERY_SLEEVE), ("10,000 missing", many),
                        ("one sleeve missing 10,000 times", ["1-05"] * 10_000)):
        yield refused(name, path_words(path), text_of(job_with(marsh(), path, codes)))
    yield opens("all but one missing", text_of(job_with(marsh(), path, EVERY_SLEEVE[1:])))
    yield opens("a change to a missing sleeve",
                text_of(_section(missing=["1-05"], changes={"1-05": {"width_mm": 99}})))
    thousand = [f"1-{number:02d}" for number in range(1, 1_000)]
    yield opens("999 of 1,000 missing", text_of(_section(missing=thousand, count=1_000)),
                '"code_missing"')
    one = _section(count=1, lap_rows=None)
    yield refused("the only sleeve missing", path_words(path),
                  text_of(job_with(one, path, ["1-01"])))


def findings():
    """Faults of the work, not of the file."""
    stop = '"severity": "stop"'
    short = job_with(marsh(), PANEL + ("corners",), "stop_short")
    yield opens("a flange that does not hold its rows", text_of(tube(flange_mm=20)), stop)
    yield opens("laps of round sleeves", text_of(tube()), stop)
    yield opens("corners too clear for a row",
                text_of(job_with(short, PANEL + ("corner_clear_mm",), 680)), stop)
    yield opens("rows that stop where they begin",
                text_of(job_with(marsh(), PANEL + ("rows_stop_mm",), 16)), stop)
    yield opens("rows that stop beyond the panel",
                text_of(job_with(marsh(), PANEL + ("rows_stop_mm",), 700)), '"rows_stop_beyond"')
    yield opens("a bay that holds a code not in the job",
                text_of(job_with(marsh(), ("bays", 0, "holds"), "7")), '"code_missing"')
    yield opens("a piece held by two bays",
                text_of(job_with(marsh(), ("bays", 0, "holds"), "P1")), '"code_used_twice"')


def materials():
    """Materials that cannot be, each refused with the range that can, and what is beside it."""
    table = [
        ("leaf", "density_g_cm3", ("0", "-1.27", "25.001"), ("0.001", "1.27", "25"),
         "0.001 to 25; usual are 0.8 to 2.3 (plastics handbooks"),
        ("leaf", "poisson", ("0.5", "0.75", "-0.1"), ("0", "0.38", "0.499"),
         "0 to 0.499; usual are 0.3 to 0.45 (supplier sheets"),
        ("leaf", "modulus_mpa", ("0", "-2100"), ("0.001", "2100"), "0.001 to"),
        ("backing", "density_g_cm3", ("0",), ("1.27",), "0.001 to 25"),
        ("backing", "poisson", ("0.5",), ("0.499",), "0 to 0.499"),
        ("sleeve_cloth", "thickness_mm", ("0", "20.001"), ("0.001", "20"), "0.001 to 20"),
        ("panel_cloth", "thickness_mm", ("25",), ("0.9",), "0.001 to 20"),
        ("film", "thickness_mm", ("0", "1.001"), ("0.06", "1"), "0.001 to 1"),
        ("thread", "density_g_cm3", ("0",), ("1.38",), "0.001 to 25"),
        # A packing over 1 is a thread thinner than its solid fibre.
        ("thread", "packing", ("0", "1.001", "1.67"), ("0.6", "1"), "0.001 to 1"),
        ("thread", "weighed_tex", ("0", "2000.001"), ("135", "2000"), "1 to 2000"),
        ("bobbin", "kept_back_percent", ("-1", "90.001", "100"), ("0", "90"), "0 to 90"),
        ("bobbin", "thread_m", ("0", "-25"), ("0.1", "25"), "0.1 to"),
    ]
    for item, key, bad, good, needed in table:
        for text in bad:
            job = {**marsh(), "materials": {item: {key: Raw(text)}}}
            yield refused(f"{item} {key} is {text}", needed, text_of(job))
        for text in good:
            job = {**marsh(), "materials": {item: {key: Raw(text)}}}
            yield opens(f"{item} {key} is {text}", text_of(job))
    for size in ("0", "19", "401", "900", "-140"):
        yield refused(f"needle {size}", "20 to 400", text_of({**marsh(), "needle_size": Raw(size)}))
    for size in ('"135x17"', '"140"', "140.5"):
        yield refused(f"needle {size}", "20 to 400" if size == "140.5" else "names a needle system",
                      text_of({**marsh(), "needle_size": Raw(size)}))
    for size in ("20", "140", "400"):
        yield opens(f"needle {size}", text_of({**marsh(), "needle_size": Raw(size)}))
    odd = {**marsh(), "materials": {"leaf": {"density_g_cm3": 3}}}
    yield opens("sheet as dense as glass", text_of(odd), "0.8 to 2.3 g/cm³ is usual")
    thick = job_with(marsh(), ("panels", 0, "backing_thickness_mm"), 25)
    yield opens("a backing of 25", text_of(thick), "0.1 to 20 is usual")


def newer():
    job = job_with(marsh(), ("version",), 2)
    yield refused("version 2 with a make we do not know", "version 2",
                  text_of(job_with(job, SECTION + ("make",), "pleated")))


def measured_bays():
    """What was measured of a bay beside its chord and rise."""
    bay = ("bays", 0)
    yield from _both(marsh(), bay + ("taped_along_mm",), NO_LENGTH + ("0", "100000.001"),
                     ("0.001", "699.2", "100000"))
    bad = ('"200"', '""', "5", "null", "true", "{}", "[]", "[200,12]", '[[0,0],"200"]', "[[0]]",
           "[[0,0],[200,12,3]]", "[[0,0],[]]", '[[0,"0"]]', "[[0,null]]", "[[[0,0]]]",
           "[[0,0.0005]]", "[[1e9,0]]", "[[0,-100000.001]]", "[" + "[0,0]," * 1_000 + "[0,0]]")
    # Few, in any order or one upon another: findings of the work, not faults of the file.
    good = ("[[0,0]]", "[[0,0],[200,12]]", "[[0,-3.5],[200,70],[400,93.25],[665,0]]",
            "[[400,93],[200,70],[0,0]]", "[[0,0],[0,0],[0,0]]", "[[-200,0],[0,50],[200,0]]",
            "[" + ",".join(f"[{x},0]" for x in range(1_000)) + "]")
    yield from _both(marsh(), bay + ("stations_mm",), bad, good)
    for name, members, finding in (
            ("one station", {"stations_mm": [[0, 0]]}, "stations_amiss"),
            ("stations out of order", {"stations_mm": [[0, 0], [400, 93], [200, 70]]},
             "stations_amiss"),
            ("a tape 3.8 off", {"taped_along_mm": 703}, "tape_differs"),
            ("a rise over half the chord", {"rise_mm": 333}, "bay_deep"),
            ("a radius under the thickness", {"chord_mm": 0.4, "rise_mm": 0.1}, "bay_too_tight"),
            ("a bay shorter than its piece", {"chord_mm": 600}, "bay_short")):
        job = marsh()
        job["bays"][0].update(members)
        yield opens(name, text_of(job), f'"{finding}"')


def makers():
    return (words(), lengths(), measured_bays(), needed_of_a_make(), sleeves_too_narrow(),
            missing(), findings(), materials(), newer())
