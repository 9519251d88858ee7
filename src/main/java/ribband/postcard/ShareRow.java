package ribband.postcard;

import java.util.Objects;
import java.util.Optional;

/**
 * A phase's name in one line beside its hours, or in several of the whole width with the hours at
 * the end of the last one, above its batten.
 *
 * @param title one line or more
 * @param hours in one line
 * @param width in units
 */
record ShareRow(Share share, Lines title, Lines hours, double width) {
  private static final double PITCH = 46;
  private static final double SIZE = 30;
  private static final double BATTEN = 2.5;
  private static final double BASELINE = 15;
  private static final double GAP = 24;

  /** As many as eighty of the widest letters need. */
  private static final int MOST_LINES = 6;

  private static final Hand TITLE = Hand.of(Weight.REGULAR, Ink.INK);
  private static final Hand HOURS = new Hand(Weight.BOLD, Figures.TABULAR, Ink.INK);

  ShareRow {
    Objects.requireNonNull(share);
    Objects.requireNonNull(title);
    Objects.requireNonNull(hours);
  }

  /** A row as high as its name needs. */
  static ShareRow of(Share share, double width) {
    Lines hours = hours(share, width);
    ShareRow beside = beside(share, hours, width, 1);
    if (beside.title.said() == Said.WHOLE) {
      return beside;
    }
    ShareRow wide = new ShareRow(share, title(share, width, MOST_LINES), hours, width);
    ShareRow narrow = beside(share, hours, width, MOST_LINES);
    return wide.height() < narrow.height() ? wide : narrow;
  }

  /** A row of one line, with as much of its name as fits beside the hours. */
  static ShareRow inOneLine(Share share, double width) {
    return beside(share, hours(share, width), width, 1);
  }

  /** A row no higher than this, with as much of its name as it has room for; empty for a line. */
  static Optional<ShareRow> cut(Share share, double width, double height) {
    Lines hours = hours(share, width);
    for (int lines = MOST_LINES; lines >= 1; lines--) {
      ShareRow row = beside(share, hours, width, lines);
      if (row.height() <= height) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  private static Lines hours(Share share, double width) {
    return new Fit(width / 2, SIZE, Fit.SMALLEST, 1).fit(share.hours(), HOURS);
  }

  private static ShareRow beside(Share share, Lines hours, double width, int mostLines) {
    double room = width - hours.width() - GAP;
    return new ShareRow(share, title(share, room, mostLines), hours, width);
  }

  private static Lines title(Share share, double width, int mostLines) {
    double largest = mostLines == 1 ? SIZE : Fit.SMALLEST;
    return new Fit(width, largest, Fit.SMALLEST, mostLines).fit(share.title(), TITLE);
  }

  /** From the batten above to its own, in units. */
  double height() {
    return PITCH + aboveLast() + (hoursStandBeside() ? 0 : leading());
  }

  private boolean hoursStandBeside() {
    return title.lastWidth() + GAP + hours.width() <= width;
  }

  private double aboveLast() {
    return Math.max(0, title.lines().size() - 1) * leading();
  }

  private double leading() {
    return title.leading() * title.size();
  }

  /**
   * Draws it.
   *
   * @param bottom of the batten, in units
   * @param part of the width that the batten is long
   */
  void draw(Draft draft, double x, double bottom, double part, Pen pen) {
    double baseline = bottom - BASELINE;
    double last = hoursStandBeside() ? baseline : baseline - leading();
    draft.letter(hours, x + width - hours.width(), baseline);
    draft.letter(title, x, last - aboveLast());
    double y = bottom - BATTEN;
    draft.draw(Drawn.across(x, x + width, y, Pen.RULE));
    draft.draw(Drawn.across(x, x + width * part, y, pen));
  }
}
