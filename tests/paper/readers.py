"""The readers, none of them ours: each takes a PDF and returns its pages.

qpdf holds no texts as words, so its pages and ghostscript's borrow mutool's, line by line as they
were drawn. poppler reads its own by their places, as an eye does: words printed over one another
fail there and only there.
"""

import shutil
import subprocess

import read_mutool
import read_poppler
import read_qpdf

GHOSTSCRIPT = ["gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=pdfwrite", "-dCompressPages=false",
               "-dAutoRotatePages=/None", "-r25400"]


def _with_words(pages, pdf):
    for page, drawn in zip(pages, read_mutool.read(pdf), strict=True):
        page.texts = drawn.texts
    return pages


def by_qpdf(pdf):
    return _with_words(read_qpdf.read(pdf), pdf)


def by_ghostscript(pdf):
    """What ghostscript redraws, a micrometre a step, read back as qpdf unpacks it."""
    again = pdf.with_suffix(".redrawn.pdf")
    done = subprocess.run([*GHOSTSCRIPT, f"-sOutputFile={again}", str(pdf)], capture_output=True,
                          timeout=600)
    if done.returncode != 0:
        raise ValueError(f"gs: {done.stderr.decode(errors='replace').strip()}")
    return _with_words(read_qpdf.read(again), pdf)


def all_readers():
    readers = {"qpdf": by_qpdf, "mutool": read_mutool.read, "poppler": read_poppler.read}
    if shutil.which("gs"):
        readers["ghostscript"] = by_ghostscript
    return readers
