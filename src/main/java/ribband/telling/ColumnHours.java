package ribband.telling;

import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * Hours in a column, where all stand under each other.
 *
 * @param data decimal, for machines
 * @param said {@code 47:30}
 */
record ColumnHours(String data, String said) {
  static ColumnHours of(Hours hours) {
    return new ColumnHours(hours.decimal(), Saying.hoursInColumn(hours));
  }
}
