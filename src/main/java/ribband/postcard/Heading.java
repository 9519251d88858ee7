package ribband.postcard;

/** The title block along the top: the boat, what she is, and the month under the red tab. */
record Heading(Face face) {
  private static final Hand BOAT = Hand.of(Weight.BOLD, Ink.INK);
  private static final Hand WHAT = Hand.of(Weight.REGULAR, Ink.INK_2);
  private static final Hand PERIOD = Hand.of(Weight.BOLD, Ink.INK);
  private static final double HEIGHT = 88;
  private static final double LARGEST_BOAT = 50;
  private static final double LARGEST_PERIOD = 42;
  private static final double LARGEST_WHAT = 32;
  private static final double MOST_PERIOD = 400;

  /** Of the room for the boat and what she is. */
  private static final double MOST_BOAT = 0.55;

  private static final double DOUBLE_RULE = 5;
  private static final double TAB = 2;
  private static final double CELL = HEIGHT - DOUBLE_RULE;
  private static final double CELL_MARGIN = 3;

  /**
   * Draws it into the top of a sheet.
   *
   * @return where it ends
   */
  double draw(Draft draft, Box sheet) {
    double bottom = sheet.y() + HEIGHT;
    draft.draw(Drawn.across(sheet.x(), sheet.right(), bottom - DOUBLE_RULE, Pen.FINE));
    draft.draw(Drawn.across(sheet.x(), sheet.right(), bottom, Pen.FINE));

    Lines period = fit(face.period(), PERIOD, MOST_PERIOD, LARGEST_PERIOD);
    double periodLeft = sheet.right() - SheetPlan.PADDING - period.width();
    double cell = periodLeft - SheetPlan.PADDING;
    letter(draft, sheet, period, periodLeft);
    divide(draft, sheet, cell);
    draft.draw(Drawn.across(cell, sheet.right(), bottom - TAB, Pen.TAB));
    name(draft, sheet, cell);
    return bottom;
  }

  /** What she is stands where her name leaves room for it. */
  private void name(Draft draft, Box sheet, double right) {
    double pad = SheetPlan.PADDING;
    double left = sheet.x() + pad;
    double room = right - pad - left;
    Lines boat = fit(face.boat(), BOAT, room * MOST_BOAT, LARGEST_BOAT);
    if (face.what().isBlank() || boat.said() == Said.SHORTENED) {
      letter(draft, sheet, fit(face.boat(), BOAT, room, LARGEST_BOAT), left);
      return;
    }
    double next = left + boat.width() + pad;
    letter(draft, sheet, boat, left);
    divide(draft, sheet, next);
    letter(draft, sheet, fit(face.what(), WHAT, right - 2 * pad - next, LARGEST_WHAT), next + pad);
  }

  /** In one line, or two small ones where their letters are not too high for it. */
  private static Lines fit(String words, Hand hand, double width, double largest) {
    Lines one = new Fit(width, largest, Fit.SMALLEST, 1).fit(words, hand);
    Lines two = new Fit(width, Fit.SMALLEST, Fit.SMALLEST, 2).fit(words, hand);
    return one.said() == Said.WHOLE || two.inkHeight() > CELL - 2 * CELL_MARGIN ? one : two;
  }

  /** Capitals, which are 0.7 em high, stand in the middle of the cell, if all ink stays in it. */
  private static void letter(Draft draft, Box sheet, Lines lines, double left) {
    double ems = 0.35 - (lines.lines().size() - 1) * lines.leading() / 2;
    double middle = sheet.y() + CELL / 2 + ems * lines.size();
    double highest = sheet.y() + CELL_MARGIN + lines.reachAbove();
    draft.letter(lines, left, Math.max(middle, highest));
  }

  private static void divide(Draft draft, Box sheet, double x) {
    draft.draw(Drawn.down(x, sheet.y(), sheet.y() + CELL, Pen.RULE));
  }
}
