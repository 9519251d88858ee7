"""Gives the site's lettering figures of one width, and puts the font into a style sheet.

    pip install fonttools brotli
    npm pack @fontsource-variable/national-park   (unpack it; its folder `files` is the argument)
    python3 src/lettering/tabular.py files site-template/assets/fonts.css

The font has the feature `tnum`, whose figures are yet as wide as the plain ones: so here each of them is set in the
middle of one width, at every weight, and `font-variant-numeric: tabular-nums` does what it says.
"""

import base64
import io
import re
import sys
from pathlib import Path

from fontTools.ttLib import TTFont

WIDTH = 608
FACE = re.compile(r'(font-family: "Lettering";\s+src: url\("data:font/woff2;base64,)[^"]+')


def tabular(font):
    """The glyphs that `tnum` puts for plain figures, by the plain ones' names."""
    table = font["GSUB"].table
    found = {}
    for record in table.FeatureList.FeatureRecord:
        if record.FeatureTag == "tnum":
            for index in record.Feature.LookupListIndex:
                for sub in table.LookupList.Lookup[index].SubTable:
                    found.update(getattr(sub, "ExtSubTable", sub).mapping)
    return found


def one_width(font):
    for plain, figure in tabular(font).items():
        glyph = font["glyf"][figure]
        (part,) = glyph.components
        assert part.glyphName == plain, (plain, figure)
        width, bearing = font["hmtx"][figure]
        part.x = (WIDTH - width) // 2
        glyph.recalcBounds(font["glyf"])
        font["hmtx"][figure] = (WIDTH, bearing + part.x)
        for variation in font["gvar"].variations[figure]:
            wider = variation.coordinates[2][0]
            variation.coordinates = [(-wider // 2, 0), (0, 0), (0, 0), (0, 0), (0, 0)]
    # Without the table of advances they are read from the glyphs themselves.
    del font["HVAR"]


def main():
    folder, sheet = Path(sys.argv[1]), Path(sys.argv[2])
    font = TTFont(folder / "national-park-latin-wght-normal.woff2", recalcTimestamp=False)
    one_width(font)
    packed = io.BytesIO()
    font.save(packed)
    text = base64.b64encode(packed.getvalue()).decode("ascii")
    sheet.write_text(FACE.sub(lambda face: face.group(1) + text, sheet.read_text("utf-8")), "utf-8")
    print(len(packed.getvalue()), "bytes")


main()
