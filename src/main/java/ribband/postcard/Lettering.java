package ribband.postcard;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.Bidi;

/**
 * One line of words as outlines, an em high, from the left at 0, on a baseline at 0 with y
 * downward.
 *
 * @param outline lies between 0 and the width, and within a line's height
 * @param width in ems
 */
record Lettering(Path2D outline, double width) {
  /** How far letters of other fonts may reach above the baseline, in ems; ours stay within. */
  private static final double ABOVE = 1.22;

  private static final double BELOW = 0.27;

  static Lettering of(String text, Hand hand) {
    Line line = new Line(hand);
    if (Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      bothWays(text, line);
    } else {
      line.forward(text);
    }
    return line.done();
  }

  /** Runs in the order in which they are seen; what reads from the right is shaped as a whole. */
  private static void bothWays(String text, Line line) {
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    Integer[] seen = new Integer[runs];
    for (int i = 0; i < runs; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      seen[i] = i;
    }
    Bidi.reorderVisually(levels, 0, seen, 0, runs);
    for (int run : seen) {
      String words = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
      if (bidi.getRunLevel(run) % 2 != 0) {
        line.strange(words, Direction.LEFTWARD);
      } else {
        line.forward(words);
      }
    }
  }

  /** A line while it is lettered. */
  private static final class Line {
    private final Hand hand;
    private final Alphabet alphabet;
    private final Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
    private double x;
    private double baseLeft;
    private double baseWidth;
    private int last = -1;

    Line(Hand hand) {
      this.hand = hand;
      this.alphabet = hand.weight().alphabet();
    }

    void forward(String text) {
      int[] characters = text.codePoints().toArray();
      for (int i = 0; i < characters.length; ) {
        int end = i;
        while (end < characters.length && glyph(characters[end]) == 0) {
          end++;
        }
        if (end > i) {
          strange(new String(characters, i, end - i), Direction.RIGHTWARD);
          i = end;
        } else {
          own(characters[i++]);
        }
      }
    }

    private int glyph(int character) {
      return alphabet.glyph(character);
    }

    private void own(int character) {
      int glyph = glyph(character);
      if (PlainWords.isMark(character)) {
        overLast(alphabet.outline(glyph));
        return;
      }
      double advance = alphabet.advance(glyph);
      boolean figure = hand.figures().isFigure(character);
      x += last < 0 || figure ? 0 : alphabet.kerning(last, glyph);
      baseLeft = x;
      baseWidth = figure ? alphabet.figureWidth() : advance;
      append(alphabet.outline(glyph), x + (baseWidth - advance) / 2);
      x += baseWidth;
      last = figure ? -1 : glyph;
    }

    /** A mark over the middle of its letter: FontBox reads no table of anchors. */
    private void overLast(Path2D mark) {
      append(mark, baseLeft + baseWidth / 2 - mark.getBounds2D().getCenterX());
    }

    private void append(Path2D shape, double at) {
      outline.append(shape.getPathIterator(AffineTransform.getTranslateInstance(at, 0)), false);
    }

    void strange(String text, Direction direction) {
      Lettering borrowed = SpareLetters.ofThisMachine().letter(text, hand.weight(), direction);
      baseLeft = x;
      baseWidth = borrowed.width();
      append(borrowed.outline(), x);
      x += baseWidth;
      last = -1;
    }

    Lettering done() {
      return new Lettering(outline, x).inPlace();
    }
  }

  /** From the beginning to the first ink, in ems. */
  double leftBearing() {
    return outline.getBounds2D().getMinX();
  }

  /** In ems; below 0 where all is under the baseline. */
  double reachAbove() {
    return -outline.getBounds2D().getMinY();
  }

  /** In ems; below 0 where all is over the baseline. */
  double reachBelow() {
    return outline.getBounds2D().getMaxY();
  }

  /** The same, no ink before its beginning, past its end, or out of a line's height. */
  Lettering inPlace() {
    Rectangle2D inked = outline.getBounds2D();
    if (inked.isEmpty()) {
      return this;
    }
    double reach = Math.max(inked.getMaxY() / BELOW, -inked.getMinY() / ABOVE);
    double shrink = reach > 1 ? 1 / reach : 1;
    double left = Math.max(0, -inked.getMinX() * shrink);
    AffineTransform place = AffineTransform.getTranslateInstance(left, 0);
    place.scale(shrink, shrink);
    double right = left + inked.getMaxX() * shrink;
    return new Lettering(new Path2D.Double(outline, place), Math.max(left + width * shrink, right));
  }
}
