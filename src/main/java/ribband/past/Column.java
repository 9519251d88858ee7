package ribband.past;

import java.util.Objects;

/**
 * A column that is taken.
 *
 * @param index 0-based
 */
record Column(What what, int index, Heading heading) {
  Column {
    Objects.requireNonNull(what);
    Objects.requireNonNull(heading);
  }

  CellAt at(String file, int row) {
    return new CellAt(file, row, index + 1, heading.text());
  }

  /** {@code B "Hrs" for the hours}. */
  String told() {
    return Header.named(index, heading) + " for the " + what.word();
  }
}
