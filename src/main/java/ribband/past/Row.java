package ribband.past;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ribband.measure.Unreadable;

/**
 * A row below the header.
 *
 * @param number 1-based, as spreadsheets number it
 */
record Row(String file, int number, Map<What, Column> columns, List<String> cells) {
  /** The mark that keeps a spreadsheet from taking words for a formula; see the tally's CSV. */
  private static final Pattern GUARDED = Pattern.compile("'[=+\\-@\\t\\r].*", Pattern.DOTALL);

  private static final Pattern LINE_END = Pattern.compile("\r\n?|[\u0085\u2028\u2029]");

  private static final Pattern CONTROL =
      Pattern.compile("[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\uFFFE\\uFFFF]");

  Row {
    columns = Map.copyOf(columns);
    cells = List.copyOf(cells);
  }

  /** What stands in a cell; empty also where there is no such column. */
  String text(What what) {
    Column column = columns.get(what);
    String cell = column == null || column.index() >= cells.size() ? "" : cells.get(column.index());
    String plain = LINE_END.matcher(cell).replaceAll("\n").strip();
    return GUARDED.matcher(plain).matches() ? plain.substring(1) : plain;
  }

  Optional<CellAt> at(What what) {
    return Optional.ofNullable(columns.get(what)).map(column -> column.at(file, number));
  }

  /** Refuses what no text may hold. */
  static String printable(String text) throws Unreadable {
    if (CONTROL.matcher(text).find()) {
      throw new Unreadable("holds a character that no text has", "take it out");
    }
    return text;
  }

  boolean isBlank() {
    return columns.keySet().stream().allMatch(what -> text(what).isEmpty());
  }
}
