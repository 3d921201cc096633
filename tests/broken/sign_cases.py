"""Words of the file that are said again in a sentence, with signs that would break it.

A line end would make two lines of one sentence, a control sign would upset a screen, a word
without an end would bury what is said.
"""

from case import marsh, opens, refused
from walk import Raw, job_with, path_words, text_of

SECTION, PANEL = ("sections", 0), ("panels", 0)
SIGNS = {"a line end": "\\n", "a bell": "\\u0007", "a zero": "\\u0000", "an escape": "\\u001b[2J",
         "a delete": "\\u007f", "5,000 letters": "long" * 1_250}


def _places(sign):
    """Where words of the file come back in what is said, each with a sign in them."""
    word = Raw(f'"1-{sign}05"')
    yield SECTION + ("make",), word
    yield SECTION + ("side_seams",), word
    yield SECTION + ("missing",), [word]
    yield SECTION + ("changes",), {word: {}}
    yield SECTION + ("side_rows", "staple", "rule"), word
    yield PANEL + ("rows_on",), [word]
    yield PANEL + ("corners",), word
    yield ("bays", 0, "face"), word


def signs():
    for name, sign in SIGNS.items():
        for path, value in _places(sign):
            yield refused(f"{path_words(path)} with {name}", path_words(path),
                          text_of(job_with(marsh(), path, value)))
        key = Raw(f'"a{sign}b"')
        content = text_of({key: 1, **marsh()}).replace(b"{", f"{{{key}:1,".encode(), 1)
        yield refused(f"a key with {name} twice", "twice", content)
        yield opens(f"a member we do not know with {name}",
                    text_of({"remark": {key: Raw(f'"1-{sign}05"')}, **marsh()}))
