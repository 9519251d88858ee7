package ribband.chart;

import java.util.List;
import java.util.Objects;

/**
 * A chart's figures as text in rows and columns.
 *
 * @param corner the head of the row heads
 * @param heads one for each column of cells
 * @param foot the totals; may be empty
 */
public record Table(String corner, List<String> heads, List<Row> rows, List<Row> foot) {
  public Table {
    Objects.requireNonNull(corner);
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
    foot = List.copyOf(foot);
    for (Row row : rows) {
      if (row.cells().size() != heads.size()) {
        throw new IllegalArgumentException(row + " does not fit " + heads);
      }
    }
  }

  /**
   * One row.
   *
   * @param href where its head leads; empty for nowhere
   */
  public record Row(String head, String href, List<String> cells) {
    public Row {
      Objects.requireNonNull(head);
      Objects.requireNonNull(href);
      cells = List.copyOf(cells);
    }

    static Row of(String head, List<String> cells) {
      return new Row(head, "", cells);
    }
  }
}
