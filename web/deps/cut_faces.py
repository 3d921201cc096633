"""Cuts the three faces of screen and paper out of Debian's fonts.

    /usr/bin/python3 web/deps/cut_faces.py OUTPUT_FOLDER

B612 is the main face; its outlines are cubic (CFF) and are turned into TrueType ones, so that one
reader of outlines serves both faces. DejaVu Sans Condensed is the wide face: a run of text with a
sign that the main face lacks is set in it whole. The page opens with the main face, so that one
holds what our own words and the names of western Europe need, and the wide face all the rest.
Nothing depends on the clock: two runs give the same bytes.
"""

import os
import sys

from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont, newTable

# Letters of western Europe, figures, and every sign of our own words.
MAIN_SIGNS = """
20-7E A0-FF 152-153 160-161 178 3C0 2010-2015 2018-201E 2020-2022 2026 2030 2032-2033
2039-203A 20AC 2122 2190-2193 2212 221A 2248 2260 2264-2265 2713
"""
# Letters of the languages a job may be named in, figures, and the signs of the trade's papers.
WIDE_SIGNS = """
20-7E A0-17F 192 1CD-1DC 1E2-1E3 1EA-1EB 1F4-1F5 1FA-21B 22A-233 2BC 2C6-2C7 2D8-2DD 300-304
306-308 30A-30C 323 327-328 331 370-3FF 400-45F 1E00-1FFF 2010-2015 2018-201E 2020-2022 2026 2030
2032-2033 2039-203A 2044 2070-208E 20AC 2116 2122 2126 2150-215E 2190-2199 21A9-21AA 21BA-21BB
2200-2202 2205 220F 2211-2212 2215 221A 221E 2220 222B 2248 2260 2264-2265 2300 2316 25A0-25A1
25AA-25AB 25B2-25B3 25B6-25B7 25BC-25BD 25C0-25C1 25CB 25CF 2605-2606 2610-2612 2702 2713-2714 2717
FFFD
"""
# Our own words and every page need these, so a cut without one of them is refused.
MAIN_NEEDS = "0123456789.,+-±×÷−≈≠≤≥√π²³·–—…›″✓←↑→↓°µ€àÿœ"
WIDE_NEEDS = MAIN_NEEDS + "ŁódźŌsakaἈθῆναιΓΩ⌀∠□■△☐✂½⅛′″"

FACES = (
    ("main-regular.ttf", "/usr/share/fonts/opentype/b612/B612-Regular.otf", MAIN_SIGNS,
     MAIN_NEEDS),
    ("main-bold.ttf", "/usr/share/fonts/opentype/b612/B612-Bold.otf", MAIN_SIGNS, MAIN_NEEDS),
    ("wide.ttf", "/usr/share/fonts/truetype/dejavu/DejaVuSansCondensed.ttf", WIDE_SIGNS,
     WIDE_NEEDS),
)

# Two font units in 2000 to the em: half a tenth of a millimetre on letters 40 mm high.
OUTLINE_ERROR_UNITS = 2


def characters(ranges):
    """The code points of a text of hexadecimal numbers and ranges."""
    wanted = set()
    for word in ranges.split():
        first, _, last = word.partition("-")
        wanted.update(range(int(first, 16), int(last or first, 16) + 1))
    return wanted


def make_truetype(font):
    """Replaces the cubic outlines of an opened CFF font by quadratic ones."""
    outlines = font.getGlyphSet()
    order = font.getGlyphOrder()
    glyf = newTable("glyf")
    glyf.glyphOrder = order
    glyf.glyphs = {}
    for name in order:
        pen = TTGlyphPen(outlines)
        # TrueType outlines run the other way round than CFF ones.
        outlines[name].draw(Cu2QuPen(pen, OUTLINE_ERROR_UNITS, reverse_direction=True))
        glyf.glyphs[name] = pen.glyph()
    font["loca"] = newTable("loca")
    font["glyf"] = glyf
    for name in order:
        width, _ = font["hmtx"][name]
        glyf[name].recalcBounds(glyf)
        font["hmtx"][name] = (width, getattr(glyf[name], "xMin", 0))

    maxp = font["maxp"]
    maxp.tableVersion = 0x00010000
    for field in ("maxTwilightPoints", "maxStorage", "maxFunctionDefs", "maxInstructionDefs",
                  "maxStackElements", "maxSizeOfInstructions", "maxPoints", "maxContours",
                  "maxCompositePoints", "maxCompositeContours", "maxComponentElements",
                  "maxComponentDepth"):
        setattr(maxp, field, 0)
    maxp.maxZones = 1

    post = font["post"]
    post.formatType = 2.0
    post.extraNames = []
    post.mapping = {}

    del font["CFF "]
    font.sfntVersion = "\0\1\0\0"


def cut(source, signs):
    """The opened font, reduced to the signs it has of `signs` and to the tables that are read."""
    font = TTFont(source, recalcTimestamp=False)
    if "CFF " in font:
        make_truetype(font)
    options = Options()
    options.hinting = False
    options.layout_features = []
    options.notdef_outline = True
    options.glyph_names = False
    options.name_IDs = [0, 1, 2]
    options.drop_tables += ["FFTM", "GDEF", "GSUB", "GPOS", "kern", "MATH", "VORG", "DSIG", "gasp"]
    options.recalc_timestamp = False
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=characters(signs))
    subsetter.subset(font)
    return font


def main():
    """Writes the three files; a sentence and status 1 when a sign is missing."""
    folder = sys.argv[1]
    os.makedirs(folder, exist_ok=True)
    for name, source, signs, needs in FACES:
        font = cut(source, signs)
        lacking = [sign for sign in needs if ord(sign) not in font.getBestCmap()]
        if lacking:
            sys.exit(f"cut_faces: {source} lacks {len(lacking)} signs ({' '.join(lacking)}); "
                     "install the packages fonts-b612 and fonts-dejavu-extra of Debian 12.")
        font.save(os.path.join(folder, name), reorderTables=True)


main()
