"""Every bad file we know how to make, each with what must be said about it."""

import copy
import json

import member_cases
import sign_cases
from case import MARSH, Case, marsh, refused
from walk import Raw, every_value, job_with, path_words, text_of, without

LENGTH = ("sections", 0, "length_mm")
SPACING = ("sections", 0, "side_rows", "staple", "spacing_mm")
COUNT = ("sections", 0, "count")

# Members a job may leave out; everything else is needed.
MAY_BE_LEFT_OUT = {"needle_size", "thread_tex", "tails_mm", "slip_distance_mm", "bays", "sections",
                   "panels", "staples"}


def odd_numbers():
    """Figures as they might be typed into the file; the first column is the text itself."""
    table = [
        (LENGTH, "-1400", "length_mm"), (LENGTH, "0", "length_mm"), (LENGTH, "-0", "length_mm"),
        (LENGTH, "NaN", "line"), (LENGTH, "nan", "line"), (LENGTH, "Infinity", "line"),
        (LENGTH, "-Infinity", "line"), (LENGTH, "1e308", "length_mm"), (LENGTH, "1e400", "line"),
        (LENGTH, "-1e400", "line"), (LENGTH, "1e-400", "length_mm"), (LENGTH, "1e9", "length_mm"),
        (LENGTH, "100000.001", "length_mm"), (LENGTH, "1400.0001", "length_mm"),
        (LENGTH, "9223372036854775808", "length_mm"), (LENGTH, "18446744073709551616", "length_mm"),
        (LENGTH, "9" * 300, "length_mm"), (LENGTH, "9" * 10_000, "line"),
        (LENGTH, "1,400", "line"), (LENGTH, "01400", "line"), (LENGTH, "+1400", "line"),
        (LENGTH, "0x578", "line"), (LENGTH, "1400.", "line"), (LENGTH, ".5", "line"),
        (LENGTH, "1400mm", "line"), (LENGTH, "'1400'", "line"), (LENGTH, "", "line"),
        (SPACING, "-48", "spacing_mm"), (SPACING, "0", "spacing_mm"),
        (SPACING, "1e-9", "spacing_mm"), (COUNT, "1000000000", "count"),
        (COUNT, "2147483648", "count"), (COUNT, "4294967305", "count"), (COUNT, "0", "count"),
        (COUNT, "-9", "count"), (COUNT, "9.5", "count"),
        (("sections", 0, "lap_mm"), "60", "lap_mm"), (("sections", 0, "lap_mm"), "-18", "lap_mm"),
        (("sections", 0, "widths_mm", 3), "-90", "widths_mm"),
        (("sections", 0, "widths_mm", 0), "0", "widths_mm"),
        (("bays", 0, "chord_mm"), "0", "bays[0].chord_mm"),
        (("bays", 1, "rise_mm"), "-93", "bays[1].rise_mm"),
        (("panels", 0, "backing_mm", 1), "1e300", "panels[0].backing_mm"),
        (("panels", 0, "stitch_mm"), "0", "panels[0].stitch_mm"),
        (("version",), "0", "version"), (("version",), "-1", "version"),
        (("version",), "1.5", "version"), (("version",), "1e99", "version"),
    ]
    for path, figure, fragment in table:
        shown = figure if len(figure) < 30 else f"{len(figure)} digits"
        yield refused(f"{path_words(path)} is {shown or 'left empty'}", fragment,
                      text_of(job_with(marsh(), path, Raw(figure))))


def _named(path):
    """The place a fault at `path` is reported at: a figure in a list by its list."""
    if path == ("format",):
        return "not a Pouncemark job"
    while isinstance(path[-1], int) and path[0] not in ("bays", "sections", "panels"):
        path = path[:-1]
    if isinstance(path[-1], int) and len(path) > 2:
        path = path[:-1]
    return path_words(path)


def wrong_types():
    """Every value of the small job once as each type that it is not."""
    for path, value in every_value(marsh()):
        others = {"a text": "12", "a number": 12, "a list": [], "an object": {}, "null": None,
                  "true": True}
        del others[{str: "a text", int: "a number", float: "a number", list: "a list",
                    dict: "an object"}[type(value)]]
        for kind, other in others.items():
            yield refused(f"{path_words(path)} is {kind}", _named(path),
                          text_of(job_with(marsh(), path, other)))


def missing_members():
    """Every member of every object left out."""
    for path, _ in every_value(marsh()):
        if isinstance(path[-1], int):
            continue
        content = text_of(without(marsh(), path))
        if path[-1] in MAY_BE_LEFT_OUT:
            yield Case(f"{path_words(path)} left out", "opens", '"totals"', content)
        else:
            yield refused(f"{path_words(path)} left out", _named(path), content)


def twice():
    """A key twice in each object; a code twice among bays, sections and panels."""
    for path, value in [((), marsh())] + list(every_value(marsh())):
        if isinstance(value, dict):
            key = next(iter(value))
            twofold = dict(value)
            twofold[Raw(json.dumps(key))] = twofold[key]
            job = job_with(marsh(), path, twofold) if path else twofold
            yield refused(f"{path_words(path) or 'the job'} has {key} twice", f'"{key}" twice',
                          text_of(job))
    for kind, code in (("bays", "B1"), ("sections", "1"), ("panels", "P1")):
        job = marsh()
        job[kind].append(copy.deepcopy(job[kind][0]))
        yield refused(f"two {kind} of one code", f"the code {code} twice", text_of(job))
    yield refused("a panel with the section's code", "the code 1 twice",
                  text_of(job_with(marsh(), ("panels", 0, "code"), "1")))


def wrong_words():
    table = [(("spacing_from",), "edge_to_edge"), (("bays", 0, "face"), "flat"),
             (("sections", 0, "make"), "three_leaf"),
             (("sections", 0, "side_rows", "staple", "rule"), "about"),
             (("sections", 0, "side_rows", "staple", "staples"), "some"),
             (("panels", 0, "hinge_side"), "top")]
    for path, word in table:
        yield refused(f"{path_words(path)} is {word}", path_words(path),
                      text_of(job_with(marsh(), path, word)))
    for path in (("name",), ("sections", 0, "code"), ("panels", 0, "code"), ("bays", 0, "holds")):
        for word, kind in (("", "empty"), ("long" * 1_000, "4,000 letters")):
            yield refused(f"{path_words(path)} is {kind}", path_words(path),
                          text_of(job_with(marsh(), path, word)))
    pair = ("sections", 0, "side_rows", "stitch", "kept_clear_mm")
    for figures in ([], [25], [25, 25, 25]):
        yield refused(f"kept clear with {len(figures)} figures", path_words(pair),
                      text_of(job_with(marsh(), pair, figures)))
    yield refused("a section without widths", "widths_mm",
                  text_of(job_with(marsh(), ("sections", 0, "widths_mm"), [])))
    yield refused("a change to a sleeve that is not there", "1-10",
                  text_of(job_with(marsh(), ("sections", 0, "changes"), {"1-10": {}})))


def damaged_bytes():
    """The file itself cut, zeroed or in the wrong dress."""
    whole = MARSH.read_bytes()
    for place in range(1, 41):
        cut = place * (len(whole) - 2) // 40
        yield refused(f"cut after {cut} bytes of {len(whole)}", "line ", whole[:cut])
    middle = whole.index(b"Marsh") + 2
    yield refused("a zero byte in a name", "zero byte", whole[:middle] + b"\0" + whole[middle:])
    yield refused("a zero byte between members", "zero byte",
                  whole.replace(b',\n "version"', b',\0\n "version"'))
    yield refused("zero bytes after the end", "zero byte", whole + b"\0" * 512)
    yield refused("the second half zeroed", "zero byte",
                  whole[:len(whole) // 2] + b"\0" * (len(whole) // 2))
    yield refused("nothing but zero bytes", "line 1", b"\0" * 1024)
    yield refused("two jobs in one file", "line ", whole + whole)
    yield refused("UTF-16", "line 1", whole.decode().encode("utf-16"))
    yield refused("a broken sign in a name", "line ", whole.replace(b"Marsh", b"M\xe1rsh"))
    yield refused("half a sign pair in a name", "line ", whole.replace(b"Marsh", b"\\ud83d"))
    yield refused("a line end in a name", "line ", whole.replace(b"Marsh", b"Mar\nsh"))
    yield refused("a remark after two strokes", "line ", whole.replace(b"{", b"{ // a remark", 1))
    yield refused("a comma too many", "line ", whole.replace(b'\n}\n', b',\n}\n'))


def foreign_files():
    png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\1\0\0\0\1\x08\0\0\0\0:~\x9bU\0\0\0\nIDATx"
    yield refused("an empty file", "empty", b"")
    yield refused("blanks only", "empty", b" \n\n\t \n")
    yield refused("a sentence", "line 1", b"Forty staples to the sleeve.\n")
    yield refused("a web page", "line 1", b"<!DOCTYPE html><html><body>job</body></html>")
    yield refused("a picture renamed .json", "line 1", png)
    yield refused("a PDF renamed .json", "line 1", b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n<<>>\n")
    for text in ("[]", "{}", "null", "true", "42", '"pouncemark-job"', '{"version":1}',
                 '{"format":"another-job","version":1}', '{"format":["pouncemark-job"]}',
                 '{"type":"FeatureCollection","features":[]}'):
        yield refused(f"foreign JSON {text}", "not a Pouncemark job", text.encode())


def too_much():
    """Small and large files that would fill the memory of a careless reader."""
    whole = MARSH.read_text(encoding="utf-8")
    for deep in (65, 10_000, 1_000_000):
        for opening, closing in (("[", "]"), ('{"a":', "}")):
            inside = opening * deep + "1" + closing * deep
            yield refused(f"{deep} deep in {opening}", "64 deep",
                          whole.replace("{", '{"remark":' + inside + ",", 1).encode())
    yield refused("a million brackets never closed", "64 deep", b"[" * 1_000_000)
    yield refused("40 MB", "bytes", lambda file: _pad(file, whole, 40_000_000, " "))
    yield refused("15 MB of empty lists", "values",
                  lambda file: _pad(file, '{"format":"pouncemark-job","version":1,"remark":[',
                                    15_000_000, "[],"))
    yield refused("a name of 15 MB", "name", lambda file: _long_name(file, whole))
    yield refused("300,000 widths", "widths_mm",
                  text_of(job_with(marsh(), ("sections", 0, "widths_mm"), [60] * 300_000)))
    many = marsh()
    many["sections"] = [dict(many["sections"][0], code=str(code)) for code in range(1_001)]
    yield refused("1,001 sections", "sections", text_of(many))
    many["sections"] = [dict(many["sections"][0], code=str(code), count=1_000)
                        for code in range(1_000)]
    yield refused("a million sleeves", "sleeves", text_of(many))


def _pad(file, text, size, filling):
    with open(file, "w", encoding="utf-8") as out:
        out.write(text)
        block = filling * (1_000_000 // len(filling))
        for _ in range((size - len(text)) // len(block)):
            out.write(block)


def _long_name(file, text):
    before, after = text.split("Marsh Lights")
    with open(file, "w", encoding="utf-8") as out:
        out.write(before)
        for _ in range(15):
            out.write("long" * 250_000)
        out.write(after)


def newer_versions():
    newer = job_with(marsh(), ("version",), 2)
    newer["sails"] = [{"code": "S1"}]
    yield Case("version 2 with all we need", "look_only", "version 2", text_of(newer))
    for path in (("sections", 0, "length_mm"), ("name",), ("panels", 0, "hinge_side")):
        yield refused(f"version 2 without {path_words(path)}", "version 2",
                      text_of(without(newer, path)))


def not_files(folder):
    """Paths with no file to read behind them."""
    yield refused("no such file", "not-there.json", folder / "not-there.json")
    yield refused("a folder", folder.name, folder)


def neighbours():
    """What stands right beside the bad files and must open."""
    whole = MARSH.read_text(encoding="utf-8")
    job = marsh()
    yield Case("the small job itself", "opens", '"Marsh Lights"', whole.encode())
    yield Case("on one line", "opens", '"Marsh Lights"', json.dumps(job).encode())
    yield Case("wide indents and CR LF", "opens", '"Marsh Lights"',
               json.dumps(job, indent=8).replace("\n", "\r\n").encode())
    yield Case("members we do not know", "opens", '"Marsh Lights"',
               text_of({"remark": {"a": [1, 2.50, None]}, **job}))
    yield Case("64 deep", "opens", '"Marsh Lights"',
               whole.replace("{", '{"remark":' + "[" * 63 + "]" * 63 + ",", 1).encode())
    yield Case("a name in three alphabets", "opens", "Łódź, Ōsaka, Ἀθῆναι",
               text_of(job_with(job, ("name",), "Łódź, Ōsaka, Ἀθῆναι")))
    yield Case("one sleeve without laps", "opens", '"lap_rows": 0',
               text_of(without(job_with(job, COUNT, 1), ("sections", 0, "lap_rows"))))
    for name, path, value in (
            ("kept clear ends that meet", ("sections", 0, "side_rows", "staple", "kept_clear_mm"),
             [700, 701]),
            ("a panel all margin", ("panels", 0, "panel_in_mm"), 400),
            ("a spacing of a micrometre", SPACING, 0.001)):
        yield Case(f"{name}: a finding", "opens", '"severity": "stop"',
                   text_of(job_with(job, path, value)))


def all_cases(folder):
    makers = (neighbours(), odd_numbers(), wrong_types(), missing_members(), twice(), wrong_words(),
              damaged_bytes(), foreign_files(), too_much(), newer_versions(), not_files(folder),
              sign_cases.signs(), *member_cases.makers())
    for maker in makers:
        yield from maker
