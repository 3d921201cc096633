"""Reads a PDF through `mutool trace`: what MuPDF would draw, with texts sign by sign."""

import html
import re
import subprocess

from ink import MM_PER_PT, Page, Pen, times

TAG = re.compile(r"<(/?)([a-zA-Z_]+)([^>]*?)/?>")
PART = re.compile(r'([a-z_A-Z0-9]+)="([^"]*)"')
DRAWN = ("stroke_path", "fill_path")


class Trace:
    """Follows the trace, element by element."""

    def __init__(self):
        self.pages, self.pen, self.path, self.line = [], None, None, None

    def element(self, closes, name, parts):
        if name == "page" and not closes:
            box = [float(figure) * MM_PER_PT for figure in parts["mediabox"].split()]
            self.pages.append(Page((box[2] - box[0], box[3] - box[1])))
        elif name in DRAWN:
            self._path(closes, name, parts)
        elif name == "span":
            self._span(closes)
        elif name == "g" and self.line is not None:
            self.line.append(html.unescape(parts.get("unicode", "")))
        elif self.pen is not None:
            self._point(name, parts)

    def _path(self, closes, name, parts):
        if not closes:
            self.pen, self.path = Pen(), parts
            return
        page = self.pages[-1]
        matrix = [float(figure) for figure in self.path["transform"].split()]
        # The trace counts y downward from the top of the page.
        to_mm = times(matrix, (MM_PER_PT, 0, 0, -MM_PER_PT, 0, page.box[1]))
        page.shapes += self.pen.shapes(
            name.split("_")[0], to_mm, float(self.path.get("linewidth", 0)),
            [float(part) for part in self.path.get("dash", "").split()])
        self.pen = None

    def _span(self, closes):
        if not closes:
            self.line = []
        else:
            self.pages[-1].texts.append("".join(self.line))
            self.line = None

    def _point(self, name, parts):
        if name == "closepath":
            self.pen.close()
        elif name == "rectto":
            left, bottom, right, top = (float(parts[key]) for key in ("x0", "y0", "x1", "y1"))
            self.pen.box(left, bottom, right - left, top - bottom)
        elif name == "moveto":
            self.pen.move((float(parts["x"]), float(parts["y"])))
        elif name == "lineto":
            self.pen.line((float(parts["x"]), float(parts["y"])))
        elif name.startswith("curveto"):
            last = "3" if "x3" in parts else "2"
            self.pen.curve((float(parts["x" + last]), float(parts["y" + last])))


def read(pdf):
    done = subprocess.run(["mutool", "trace", str(pdf)], capture_output=True, timeout=300)
    if done.returncode != 0 or done.stderr:
        raise ValueError(f"mutool: {done.stderr.decode(errors='replace').strip()}")
    trace = Trace()
    for tag in TAG.finditer(done.stdout.decode("utf-8")):
        trace.element(tag[1] == "/", tag[2], dict(PART.findall(tag[3])))
    return trace.pages
