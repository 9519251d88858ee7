"""Makes the three static fonts that postcards are lettered with, from the variable font of the site.

    pip install fonttools brotli
    npm pack @fontsource-variable/national-park   (unpack it; its folder `files` is the argument)
    python3 src/lettering/letter.py files src/main/resources/ribband/postcard

FontBox reads no GPOS: so pairs of letters go into a table `kern`.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.merge import Merger
from fontTools.pens.filterPen import DecomposingFilterPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont, newTable
from fontTools.ttLib.tables._k_e_r_n import KernTable_format_0
from fontTools.varLib.instancer import instantiateVariableFont

WEIGHTS = {"light": 300, "regular": 420, "bold": 640}
PARTS = ["latin", "latin-ext", "vietnamese"]
MOST_PAIRS = 6000
SMALLEST_PAIR = 6
LIGHTEST = 200
LIGHTER_BELOW = 400


def pairs(font):
    """Kerning by pair of glyphs, of all that GPOS says."""
    found = {}
    if "GPOS" not in font:
        return found
    table = font["GPOS"].table
    for lookup in table.LookupList.Lookup:
        for sub in lookup.SubTable:
            sub = getattr(sub, "ExtSubTable", sub)
            if sub.LookupType != 2:
                continue
            of_lookup = {}
            if sub.Format == 1:
                for first, pair_set in zip(sub.Coverage.glyphs, sub.PairSet):
                    for record in pair_set.PairValueRecord:
                        of_lookup[first, record.SecondGlyph] = advance(record.Value1)
            else:
                firsts, seconds = sub.ClassDef1.classDefs, sub.ClassDef2.classDefs
                for first in sub.Coverage.glyphs:
                    row = sub.Class1Record[firsts.get(first, 0)].Class2Record
                    for second in font.getGlyphOrder():
                        of_lookup[first, second] = advance(row[seconds.get(second, 0)].Value1)
            for pair, value in of_lookup.items():
                found.setdefault(pair, value)
    return found


def advance(value):
    return getattr(value, "XAdvance", 0) or 0 if value else 0


def lighter_fractions(font, lighter):
    """A fraction's figures are small, so they are drawn with a lighter hand than the large ones beside them."""
    glyphs = lighter.getGlyphSet()
    for code in (0xBC, 0xBD, 0xBE):
        name = font.getBestCmap()[code]
        pen = TTGlyphPen(None)
        glyphs[name].draw(DecomposingFilterPen(pen, glyphs))
        font["glyf"][name] = pen.glyph()
        font["hmtx"][name] = lighter["hmtx"][name]


def static(folder, part, weight):
    font = TTFont(folder / f"national-park-{part}-wght-normal.woff2")
    font.flavor = None
    return instantiateVariableFont(font, {"wght": weight})


def made(folder, name, weight, work):
    files, kept = [], {}
    for part in PARTS:
        font = static(folder, part, weight)
        if part == "latin":
            kept = {
                pair: value for pair, value in pairs(font).items() if abs(value) >= SMALLEST_PAIR
            }
            codes = {glyph: code for code, glyph in font.getBestCmap().items()}
            kept = {
                (codes[a], codes[b]): v for (a, b), v in kept.items() if a in codes and b in codes
            }
            if weight < LIGHTER_BELOW:
                lighter_fractions(font, static(folder, part, LIGHTEST))
        for table in ("GPOS", "GSUB", "GDEF", "STAT", "gasp", "prep", "HVAR", "MVAR", "avar"):
            if table in font:
                del font[table]
        files.append(work / f"{name}-{part}.ttf")
        font.save(files[-1])
    font = Merger().merge([str(file) for file in files])
    options = subset.Options(
        hinting=False, notdef_outline=False, glyph_names=False, name_IDs=[0, 1, 2, 4, 5, 6, 13, 14]
    )
    subsetter = subset.Subsetter(options)
    subsetter.populate(unicodes=[c for c in font.getBestCmap() if c not in (0x200B, 0xFEFF)])
    subsetter.subset(font)
    lettered(font, name)
    kerned(font, kept)
    font["head"].created = font["head"].modified = 0
    font.recalcTimestamp = False
    return font


def lettered(font, name):
    style = name.capitalize()
    for record in list(font["name"].names):
        if record.nameID in (1, 4, 6):
            text = {1: "Lettering", 4: f"Lettering {style}", 6: f"Lettering-{style}"}[record.nameID]
            record.string = text
        if record.nameID == 2:
            record.string = style


def kerned(font, by_code):
    names = font.getBestCmap()
    letters = {(names[a], names[b]): v for (a, b), v in by_code.items() if a in names and b in names}
    strongest = sorted(letters, key=lambda pair: (-abs(letters[pair]), pair))[:MOST_PAIRS]
    sub = KernTable_format_0()
    sub.coverage, sub.version, sub.tupleIndex, sub.apple = 1, 0, None, False
    sub.kernTable = {pair: letters[pair] for pair in strongest}
    font["kern"] = newTable("kern")
    font["kern"].version, font["kern"].kernTables = 0, [sub]


def main():
    folder, out = Path(sys.argv[1]), Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    work = Path(sys.argv[3]) if len(sys.argv) > 3 else out
    for name, weight in WEIGHTS.items():
        font = made(folder, name, weight, work)
        target = out / f"lettering-{name}.ttf"
        font.save(target)
        print(target, target.stat().st_size, "bytes,", len(font.getBestCmap()), "characters,",
              len(font["kern"].kernTables[0].kernTable), "pairs")


main()
