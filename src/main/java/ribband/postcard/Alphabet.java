package ribband.postcard;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.KerningSubtable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters of one weight, an em high, on a baseline at 0 with y downward. Java's own fonts need
 * a configured system; this needs none. May be shared.
 */
final class Alphabet {
  private final TrueTypeFont font;
  private final CmapLookup codes;
  private final Optional<KerningSubtable> kerning;
  private final double em;
  private final Map<Integer, Path2D> outlines = new ConcurrentHashMap<>();

  private Alphabet(TrueTypeFont font) throws IOException {
    this.font = font;
    this.codes = font.getUnicodeCmapLookup();
    this.kerning =
        Optional.ofNullable(font.getKerning()).map(table -> table.getHorizontalKerningSubtable());
    this.em = font.getUnitsPerEm();
  }

  static Alphabet read(Weight weight) {
    String name = "lettering-" + weight.name().toLowerCase(Locale.ROOT) + ".ttf";
    try (InputStream in = Objects.requireNonNull(Alphabet.class.getResourceAsStream(name), name)) {
      return new Alphabet(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The glyph of a character; 0 where the font has none. */
  int glyph(int character) {
    return codes.getGlyphId(character);
  }

  /** What every digit takes where they stand under one another: what they take on average. */
  double figureWidth() {
    return "0123456789".chars().mapToDouble(digit -> advance(glyph(digit))).average().orElseThrow();
  }

  double advance(int glyph) {
    try {
      return font.getAdvanceWidth(glyph) / em;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is added between two glyphs, mostly below 0. */
  double kerning(int left, int right) {
    return kerning.map(pairs -> pairs.getKerning(left, right) / em).orElse(0.0);
  }

  Path2D outline(int glyph) {
    return outlines.computeIfAbsent(glyph, this::read);
  }

  /** The font reads its glyphs from one place in turn. */
  private Path2D read(int glyph) {
    AffineTransform upright = AffineTransform.getScaleInstance(1 / em, -1 / em);
    synchronized (font) {
      try {
        return new Path2D.Double(font.getGlyph().getGlyph(glyph).getPath(), upright);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
