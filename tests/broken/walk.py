"""Walks a job's tree, changes one place of it, and writes it with texts no JSON writer would."""

import copy
import json


class Raw(str):
    """Goes into the file as it stands: a figure that is none, a key that is there already."""


def every_value(node, path=()):
    """Each value below a node with the path of keys and places that leads to it."""
    steps = node.items() if isinstance(node, dict) else enumerate(node)
    for step, value in steps:
        yield path + (step,), value
        if isinstance(value, (dict, list)):
            yield from every_value(value, path + (step,))


def at(node, path):
    for step in path:
        node = node[step]
    return node


def job_with(job, path, value):
    """A copy of the job with one value exchanged or added."""
    job = copy.deepcopy(job)
    at(job, path[:-1])[path[-1]] = value
    return job


def without(job, path):
    job = copy.deepcopy(job)
    del at(job, path[:-1])[path[-1]]
    return job


def path_words(path):
    """sections[0].side_rows.staple, as the program names places."""
    words = ""
    for step in path:
        words += f"[{step}]" if isinstance(step, int) else f".{step}" if words else step
    return words


def _written(node):
    if isinstance(node, Raw):
        return str(node)
    if isinstance(node, dict):
        members = (f"{_written(k) if isinstance(k, Raw) else json.dumps(k)}:{_written(v)}"
                   for k, v in node.items())
        return "{" + ",\n".join(members) + "}"
    if isinstance(node, list):
        return "[" + ",".join(_written(item) for item in node) + "]"
    return json.dumps(node, ensure_ascii=False)


def text_of(job):
    """The job as bytes, a member a line."""
    return (_written(job) + "\n").encode("utf-8")
