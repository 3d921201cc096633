"""What a reader saw on a page: shapes in true paper millimetres, y upward, and texts."""

from collections import namedtuple

MM_PER_PT = 25.4 / 72

# One run of pen or one filled shape. `kind` is stroke or fill; `ends` its corners; `curves` how
# many of its sides are curved; `width` and `dash` in millimetres; `span` where it stands in the
# bytes read (only the qpdf reader knows); `matrix` what took it from there to paper millimetres.
Shape = namedtuple("Shape", "kind ends curves closed width dash span matrix")


class Page:
    """One page: its box in millimetres, its shapes and its texts (lines of words)."""

    def __init__(self, box):
        self.box, self.shapes, self.texts = box, [], []


def times(a, b):
    """The matrix that does `a` first, then `b`; six figures as PDF writes them."""
    return (a[0] * b[0] + a[1] * b[2], a[0] * b[1] + a[1] * b[3],
            a[2] * b[0] + a[3] * b[2], a[2] * b[1] + a[3] * b[3],
            a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5])


def placed(matrix, point):
    x, y = point
    return (matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5])


def enlargement(matrix):
    """How much a width grows, as the root of the area's growth."""
    return abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]) ** 0.5


def lengthened(before, after):
    """How many times as long a straight run is after a change; 1 if it returns to its start."""
    old, new = (((ends[-1][0] - ends[0][0]) ** 2 + (ends[-1][1] - ends[0][1]) ** 2) ** 0.5
                for ends in (before, after))
    return new / old if old else 1.0


class Pen:
    """Gathers the shapes of one path while it is read, in the reader's own units."""

    def __init__(self):
        self.runs = []  # [ends, curves, closed, first byte, last byte]

    def move(self, point, span=None):
        self.runs.append([[point], 0, False, span, span])

    def line(self, point, span=None):
        self._to(point, 0, span)

    def curve(self, point, span=None):
        self._to(point, 1, span)

    def _to(self, point, curves, span):
        if not self.runs:
            raise ValueError("a line begins nowhere")
        run = self.runs[-1]
        if run[2]:  # after closing, the pen stands at the first end again
            self.move(run[0][0], span)
            run = self.runs[-1]
        run[0].append(point)
        run[1] += curves
        run[4] = span

    def close(self, span=None):
        if self.runs:
            self.runs[-1][2] = True
            self.runs[-1][4] = span

    def box(self, x, y, width, length, span=None):
        self.move((x, y), span)
        for corner in ((x + width, y), (x + width, y + length), (x, y + length)):
            self.line(corner, span)
        self.close(span)

    def shapes(self, kind, matrix, width=0.0, dash=()):
        """The path as shapes on paper; `matrix` ends in millimetres, y upward."""
        grown = enlargement(matrix)
        for ends, curves, closed, first, last in self.runs:
            if len(ends) == 1:
                continue  # a move that drew nothing
            on_paper = [placed(matrix, end) for end in ends]
            longer = lengthened(ends, on_paper)
            yield Shape(kind, on_paper, curves, closed, width * grown,
                        tuple(part * longer for part in dash),
                        (first[0], last[1]) if first and last else None, matrix)
