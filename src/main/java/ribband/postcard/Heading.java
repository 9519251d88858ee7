package ribband.postcard;

/** The title block along the top: the boat, what she is, and the month under the red tab. */
record Heading(Face face) {
  private static final Hand BOAT = Hand.of(Weight.BOLD, Ink.INK);
  private static final Hand WHAT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand PERIOD = Hand.of(Weight.BOLD, Ink.INK);
  private static final double HEIGHT = 92;
  private static final double LARGEST = 50;
  private static final double LARGEST_PERIOD = 42;
  private static final double LARGEST_WHAT = 32;
  private static final double MOST_PERIOD = 400;
  private static final double MOST_BOAT = 0.5;

  /** Less says nothing of her. */
  private static final double LEAST_WHAT = 240;

  private static final double DOUBLE_RULE = 5;

  /**
   * Draws it into the top of a sheet.
   *
   * @return where it ends
   */
  double draw(Draft draft, Box sheet) {
    double pad = SheetPlan.PADDING;
    double bottom = sheet.y() + HEIGHT;
    draft.draw(Drawn.line(sheet.x(), bottom, sheet.right(), bottom, Pen.PRINT));
    draft.draw(
        Drawn.line(
            sheet.x(), bottom - DOUBLE_RULE, sheet.right(), bottom - DOUBLE_RULE, Pen.PRINT));

    Fit.Lines period = fit(face.period(), PERIOD, MOST_PERIOD, LARGEST_PERIOD);
    double periodWidth = width(period, PERIOD);
    double periodLeft = sheet.right() - pad - periodWidth;
    cell(draft, sheet, period, PERIOD, periodLeft);
    divide(draft, sheet, periodLeft - pad);
    draft.draw(Drawn.line(periodLeft - pad, bottom - 2, sheet.right(), bottom - 2, Pen.TAB));

    double left = sheet.x() + pad;
    double room = periodLeft - 2 * pad - left;
    boolean told = !face.what().isBlank();
    Fit.Lines boat = fit(face.boat(), BOAT, told ? room * MOST_BOAT : room, LARGEST);
    double whatLeft = left + width(boat, BOAT) + 2 * pad;
    double whatRoom = periodLeft - 2 * pad - whatLeft;
    if (told && whatRoom >= LEAST_WHAT) {
      divide(draft, sheet, whatLeft - pad);
      cell(draft, sheet, fit(face.what(), WHAT, whatRoom, LARGEST_WHAT), WHAT, whatLeft);
    } else {
      boat = fit(face.boat(), BOAT, room, LARGEST);
    }
    cell(draft, sheet, boat, BOAT, left);
    return bottom;
  }

  private static Fit.Lines fit(String words, Hand hand, double width, double largest) {
    Fit.Lines one = new Fit(width, largest, Fit.SMALLEST, 1).fit(words, hand);
    boolean whole = one.lines().equals(java.util.List.of(PlainWords.of(words)));
    return whole ? one : new Fit(width, Fit.SMALLEST, Fit.SMALLEST, 2).fit(words, hand);
  }

  private static double width(Fit.Lines lines, Hand hand) {
    return lines.lines().stream().mapToDouble(hand::width).max().orElse(0) * lines.size();
  }

  private static void cell(Draft draft, Box sheet, Fit.Lines lines, Hand hand, double left) {
    double height = HEIGHT - DOUBLE_RULE;
    double size = lines.size();
    // Capitals, which are 0.7 em high, stand in the middle.
    double first = lines.lines().size() == 1 ? height / 2 + 0.35 * size : height / 2 - 0.22 * size;
    draft.letter(lines, hand, left, sheet.y() + first - Lettering.ABOVE * size);
  }

  private static void divide(Draft draft, Box sheet, double x) {
    draft.draw(Drawn.line(x, sheet.y(), x, sheet.y() + HEIGHT - DOUBLE_RULE, Pen.RULE));
  }
}
