package ribband.postcard;

import java.util.List;
import java.util.stream.Stream;

/** The cells along the foot: nights, pieces, money, and where the whole boat stands. */
record Footing(Face face) {
  private static final Hand HAND = Hand.of(Weight.REGULAR, Ink.INK);
  private static final double LARGEST = 34;
  private static final double ROW = 66;

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
    if (size(all, sheet) >= Fit.SMALLEST || month.isEmpty() || boat.isEmpty()) {
      row(draft, sheet, all, sheet.bottom() - ROW);
      return sheet.bottom() - ROW;
    }
    row(draft, sheet, boat, sheet.bottom() - ROW);
    row(draft, sheet, month, sheet.bottom() - 2 * ROW);
    return sheet.bottom() - 2 * ROW;
  }

  private static List<String> told(String... cells) {
    return Stream.of(cells).map(PlainWords::of).filter(cell -> !cell.isEmpty()).toList();
  }

  /** At which all cells stand whole in one row. */
  private static double size(List<String> cells, Box sheet) {
    double ems = cells.stream().mapToDouble(HAND::width).sum();
    return (sheet.width() - 2 * SheetPlan.PADDING * cells.size()) / ems;
  }

  private static void row(Draft draft, Box sheet, List<String> cells, double top) {
    draft.draw(Drawn.line(sheet.x(), top, sheet.right(), top, Pen.PRINT));
    double size = Math.max(Fit.SMALLEST, Math.min(LARGEST, size(cells, sheet)));
    double ems = cells.stream().mapToDouble(HAND::width).sum();
    double inCells = sheet.width() - 2 * SheetPlan.PADDING * cells.size();
    double spare = Math.max(0, inCells - ems * size) / cells.size();
    double share = inCells / cells.size();
    boolean whole = ems * size <= inCells + 1e-6;
    double left = sheet.x();
    for (String cell : cells) {
      double width = whole ? HAND.width(cell) * size + spare : share;
      Fit.Lines words = new Fit(width + 1e-6, size, Fit.SMALLEST, 1).fit(cell, HAND);
      draft.letter(words, HAND, left + SheetPlan.PADDING, top + ROW / 2 - 0.65 * words.size());
      left += width + 2 * SheetPlan.PADDING;
      if (left < sheet.right() - 1) {
        draft.draw(Drawn.line(left, top, left, top + ROW, Pen.RULE));
      }
    }
  }
}
