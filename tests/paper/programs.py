"""Runs the batch program, native or under node, and counts what passed."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
NATIVE = ROOT / "build" / "native-release" / "pouncemark"
WEB = ROOT / "build" / "web-release" / "pouncemark.js"


def command(program):
    """The words that start a build of the program. Node's own fetch hides the file from the
    loader of this compiler, so it is switched off."""
    if str(program).endswith(".js"):
        return ["node", "--no-experimental-fetch", str(program)]
    return [str(program)]


def run(program, *words, timeout=600):
    """Exit code, standard output and sentences of one run, as bytes."""
    return subprocess.run([*command(program), *map(str, words)], capture_output=True,
                          timeout=timeout)


class Tally:
    """Says each result and counts it; the closing line is for whoever reads only that."""

    def __init__(self, is_quiet=False):
        self.passed = self.failed = 0
        self.is_quiet = is_quiet

    def note(self, holds, words):
        if holds:
            self.passed += 1
        else:
            self.failed += 1
        if not holds or not self.is_quiet:
            print(f"{'passed' if holds else 'FAILED'}  {words}", flush=True)
        return holds

    def close(self):
        print(f"{self.passed} passed, {self.failed} failed")
        return 1 if self.failed or not self.passed else 0


def need(program):
    if not Path(program).exists():
        print(f"{program} is not built", file=sys.stderr)
        sys.exit(2)
