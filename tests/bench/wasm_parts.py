#!/usr/bin/python3
"""Names the largest parts of a WebAssembly program linked with its function names.

wasm_parts.py FILE [MOST]    prints what part, bytes of code, functions; the data last
"""

import re
import subprocess
import sys
from collections import Counter
from pathlib import Path


def number(data, at):
    """An unsigned LEB128 number and the place after it."""
    value = shift = 0
    while True:
        byte = data[at]
        at += 1
        value |= (byte & 127) << shift
        shift += 7
        if byte < 128:
            return value, at


def sections(data):
    """Every section: its id, its beginning and its end."""
    at = 8
    while at < len(data):
        kind = data[at]
        size, at = number(data, at + 1)
        yield kind, at, at + size
        at += size


def imported_functions(data, at):
    """How many functions come from outside; they are numbered first."""
    count, at = number(data, at)
    functions = 0
    for _ in range(count):
        for _ in range(2):
            size, at = number(data, at)
            at += size
        kind = data[at]
        at += 1
        if kind == 0:
            functions += 1
            _, at = number(data, at)
        elif kind == 3:
            at += 2
        else:
            at += kind == 1
            limits, at = number(data, at)
            for _ in range(1 + limits % 2):
                _, at = number(data, at)
    return functions


def body_sizes(data, at):
    """Bytes of every function's code, in order."""
    count, at = number(data, at)
    sizes = []
    for _ in range(count):
        size, at = number(data, at)
        sizes.append(size)
        at += size
    return sizes


def function_names(data, at, end):
    """Function number to name, from the section of names."""
    size, at = number(data, at)
    if data[at:at + size] != b"name":
        return {}
    at += size
    names = {}
    while at < end:
        kind = data[at]
        size, at = number(data, at + 1)
        after = at + size
        if kind == 1:
            count, at = number(data, at)
            for _ in range(count):
                index, at = number(data, at)
                size, at = number(data, at)
                names[index] = data[at:at + size].decode()
                at += size
        at = after
    return names


def part_of(name):
    """The part a function belongs to, by its readable name."""
    ours = re.search(r"pouncemark::(web|solve|sheets|job|writers|drawing|output|layout|checks|piece)"
                     r"::", name)
    if name.startswith(("void std::", "std::", "bool std::")) and ours:
        return "templates of the C++ library, ours inside"
    if "pouncemark" in name:
        return ours.group(1) if ours else "base and geometry"
    if re.match(r"(std::|void std::|operator new)", name):
        return "C++ library"
    if "nlohmann" in name:
        return "nlohmann"
    if re.search(r"\bIm|stbtt|stbrp", name):
        return "Dear ImGui"
    return "C library, zlib and the rest"


def main():
    """Prints the table."""
    data = Path(sys.argv[1]).read_bytes()
    most = int(sys.argv[2]) if len(sys.argv) > 2 else 12
    first, sizes, names, data_bytes = 0, [], {}, 0
    for kind, at, end in sections(data):
        if kind == 2:
            first = imported_functions(data, at)
        elif kind == 10:
            sizes = body_sizes(data, at)
        elif kind == 11:
            data_bytes = end - at
        elif kind == 0:
            names.update(function_names(data, at, end))
    raw = [names.get(first + index, "?") for index in range(len(sizes))]
    readable = subprocess.run(["c++filt"], input="\n".join(raw), text=True, capture_output=True,
                              check=True).stdout.split("\n")
    code, functions = Counter(), Counter()
    for size, name in zip(sizes, readable):
        part = part_of(name)
        code[part] += size
        functions[part] += 1
    for part, size in code.most_common(most):
        print(f"{part:44} {size:>12,} {functions[part]:>8,}")
    print(f"{'data: words, tables, shaders':44} {data_bytes:>12,}")


main()
