package ribband.ledger;

import java.util.List;
import java.util.Optional;

/**
 * A table of values.
 *
 * @param columns their names, as data files spell them
 * @param opening what stood before the first row; for a person, in no data file
 * @param rows as many cells in each as there are columns
 * @param total of the opening and the rows; for a person, in no data file
 */
public record Sheet(
    List<String> columns,
    Optional<List<Cell>> opening,
    List<List<Cell>> rows,
    Optional<List<Cell>> total) {
  public Sheet {
    columns = List.copyOf(columns);
    opening = opening.map(List::copyOf);
    rows = rows.stream().map(List::copyOf).toList();
    total = total.map(List::copyOf);
    int width = columns.size();
    if (rows.stream().anyMatch(row -> row.size() != width)
        || opening.filter(row -> row.size() != width).isPresent()
        || total.filter(row -> row.size() != width).isPresent()) {
      throw new IllegalArgumentException("a row does not fit the columns " + columns);
    }
  }

  /** A sheet of rows alone. */
  public static Sheet of(List<String> columns, List<List<Cell>> rows) {
    return new Sheet(columns, Optional.empty(), rows, Optional.empty());
  }
}
