package ribband.postcard;

import java.util.List;
import java.util.stream.Stream;

/** The cells along the foot: nights, pieces and money. */
record Footing(Face face) {
  /**
   * Draws it into the foot of a sheet: in one row, or with money in a row of its own where one does
   * not hold all.
   *
   * @return where it begins
   */
  double draw(Draft draft, Box sheet) {
    List<FootRow> rows = rows(sheet.width());
    double top = sheet.bottom() - rows.stream().mapToDouble(FootRow::height).sum();
    double foot = top;
    for (FootRow row : rows) {
      row.draw(draft, sheet.x(), foot);
      foot += row.height();
    }
    return top;
  }

  private List<FootRow> rows(double width) {
    List<String> all = told(face.nights(), face.pieces(), face.money());
    if (all.isEmpty()) {
      return List.of();
    }
    if (FootRow.holds(all, width)) {
      return List.of(FootRow.alone(all, width));
    }
    return Stream.of(told(face.nights(), face.pieces()), told(face.money()))
        .filter(cells -> !cells.isEmpty())
        .map(cells -> FootRow.oneOfTwo(cells, width))
        .toList();
  }

  private static List<String> told(String... cells) {
    return Stream.of(cells).map(PlainWords::of).filter(cell -> !cell.isEmpty()).toList();
  }
}
