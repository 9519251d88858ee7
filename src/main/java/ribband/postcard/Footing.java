package ribband.postcard;

import java.util.List;
import java.util.stream.Stream;

/** The cells along the foot: nights, pieces, money, and where the whole boat stands. */
record Footing(Face face) {
  private static final Hand HAND = Hand.of(Weight.REGULAR, Ink.INK);
  private static final double LARGEST = 34;
  private static final double ROW = 62;

  /**
   * Draws it into the foot of a sheet, in one row, or two where one does not hold it.
   *
   * @return where it begins
   */
  double draw(Draft draft, Box sheet) {
    List<String> month = told(face.nights(), face.pieces(), face.money());
    List<String> boat = told(face.toDate());
    List<String> all = Stream.concat(month.stream(), boat.stream()).toList();
    if (all.isEmpty()) {
      return sheet.bottom();
    }
    double last = sheet.bottom() - ROW;
    if (whole(all, sheet) >= Fit.SMALLEST || month.isEmpty() || boat.isEmpty()) {
      row(draft, sheet, all, last);
      return last;
    }
    row(draft, sheet, boat, last);
    row(draft, sheet, month, last - ROW);
    return last - ROW;
  }

  private static List<String> told(String... cells) {
    return Stream.of(cells).map(PlainWords::of).filter(cell -> !cell.isEmpty()).toList();
  }

  /** The size at which all cells stand whole in one row. */
  private static double whole(List<String> cells, Box sheet) {
    double room = sheet.width() - 2 * SheetPlan.PADDING * cells.size();
    return room / cells.stream().mapToDouble(HAND::width).sum();
  }

  private static void row(Draft draft, Box sheet, List<String> cells, double top) {
    double room = sheet.width() - 2 * SheetPlan.PADDING * cells.size();
    double size = Math.min(LARGEST, whole(cells, sheet));
    double taken = cells.stream().mapToDouble(HAND::width).sum() * size;
    double left = sheet.x();
    draft.draw(Drawn.across(left, sheet.right(), top, Pen.FINE));
    for (String cell : cells) {
      boolean fits = size >= Fit.SMALLEST;
      double own = HAND.width(cell) * size + (room - taken) / cells.size();
      double width = fits ? own : room / cells.size();
      Lines words = new Fit(width, Math.max(size, LARGEST), Fit.SMALLEST, 1).fit(cell, HAND);
      draft.letter(words, left + SheetPlan.PADDING, top + ROW / 2 + 0.35 * words.size());
      left += width + 2 * SheetPlan.PADDING;
      if (left < sheet.right() - 1) {
        draft.draw(Drawn.down(left, top, top + ROW, Pen.RULE));
      }
    }
  }
}
