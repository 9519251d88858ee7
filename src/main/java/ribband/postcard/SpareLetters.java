package ribband.postcard;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Letters that our alphabets lack, as the fonts of this machine have them; a thin hollow box for
 * each that they lack too, or where there are none. May be shared.
 */
final class SpareLetters {
  /** Java's fonts are shaped for a size; this large, rounding is not seen. */
  private static final int SIZE = 200;

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final double BOX_WIDTH = 0.56;
  private static final double BOX_HEIGHT = 0.7;
  private static final double BOX_LINE = 0.035;
  private static final double BOX_MARGIN = 0.07;

  private final IntFunction<Font> fonts;

  /**
   * @param fonts a font by its style, as {@link Font#Font(String, int, int)} has it; may throw
   *     whatever a machine without fonts makes Java throw
   */
  SpareLetters(IntFunction<Font> fonts) {
    this.fonts = fonts;
  }

  static SpareLetters ofThisMachine() {
    return new SpareLetters(style -> new Font(Font.SANS_SERIF, style, SIZE));
  }

  Lettering letter(String text, Weight weight, Direction direction) {
    return shaped(text, weight, direction).map(Lettering::inPlace).orElseGet(() -> boxes(text));
  }

  /** Without fonts Java fails in many ways, of which several are errors. */
  private Optional<Lettering> shaped(String text, Weight weight, Direction direction) {
    try {
      Font font = fonts.apply(weight == Weight.BOLD ? Font.BOLD : Font.PLAIN);
      if (font.canDisplayUpTo(text) >= 0) {
        return Optional.empty();
      }
      GlyphVector glyphs =
          font.layoutGlyphVector(EXACT, text.toCharArray(), 0, text.length(), flags(direction));
      AffineTransform toEm = AffineTransform.getScaleInstance(1.0 / SIZE, 1.0 / SIZE);
      return Optional.of(
          new Lettering(
              new Path2D.Double(glyphs.getOutline(), toEm),
              glyphs.getLogicalBounds().getWidth() / SIZE));
    } catch (RuntimeException | LinkageError | InternalError | java.awt.AWTError e) {
      return Optional.empty();
    }
  }

  private static int flags(Direction direction) {
    return switch (direction) {
      case RIGHTWARD -> Font.LAYOUT_LEFT_TO_RIGHT;
      case LEFTWARD -> Font.LAYOUT_RIGHT_TO_LEFT;
    };
  }

  private static Lettering boxes(String text) {
    Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double x = 0;
    for (int character : text.codePoints().toArray()) {
      if (Character.isSpaceChar(character)) {
        x += BOX_WIDTH / 2;
      } else if (!PlainWords.isMark(character)) {
        box(outline, x + BOX_MARGIN);
        x += BOX_WIDTH + 2 * BOX_MARGIN;
      }
    }
    return new Lettering(outline, x);
  }

  /** The inner edge runs the other way round, which leaves it empty. */
  private static void box(Path2D outline, double left) {
    double right = left + BOX_WIDTH;
    outline.moveTo(left, 0);
    outline.lineTo(right, 0);
    outline.lineTo(right, -BOX_HEIGHT);
    outline.lineTo(left, -BOX_HEIGHT);
    outline.closePath();
    outline.moveTo(left + BOX_LINE, -BOX_LINE);
    outline.lineTo(left + BOX_LINE, BOX_LINE - BOX_HEIGHT);
    outline.lineTo(right - BOX_LINE, BOX_LINE - BOX_HEIGHT);
    outline.lineTo(right - BOX_LINE, -BOX_LINE);
    outline.closePath();
  }
}
