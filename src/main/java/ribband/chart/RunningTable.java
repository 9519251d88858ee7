package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The figures under a running total, a row a month, and what happened in it. */
record RunningTable(RunningTotal total, List<RunningCurve.Note> notes, Yardstick yardstick) {
  Table table() {
    List<String> heads = new ArrayList<>(List.of(yardstick.what(), "To date"));
    List<Table.Row> rows = new ArrayList<>();
    if (total.carried() != 0) {
      String carried = yardstick.figure(total.carried());
      rows.add(row("Before", List.of(carried, carried), ""));
    }
    long before = total.carried();
    for (YearMonth month : total.months()) {
      long after = total.at(month.atEndOfMonth());
      long added = Math.subtractExact(after, before);
      String happened =
          notes.stream()
              .filter(note -> YearMonth.from(note.date()).equals(month))
              .map(RunningCurve.Note::text)
              .collect(Collectors.joining("; "));
      rows.add(
          row(
              MonthNames.full(month),
              List.of(yardstick.figure(added), yardstick.figure(after)),
              happened));
      before = after;
    }
    if (!notes.isEmpty()) {
      heads.add("Noted");
    }
    return new Table("Month", heads, rows, List.of());
  }

  private Table.Row row(String head, List<String> cells, String noted) {
    List<String> all = new ArrayList<>(cells);
    if (!notes.isEmpty()) {
      all.add(noted);
    }
    return Table.Row.of(head, all);
  }
}
