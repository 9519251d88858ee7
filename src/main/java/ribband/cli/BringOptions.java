package ribband.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import ribband.measure.Name;
import ribband.measure.Unreadable;
import ribband.past.Asked;
import ribband.past.DayOrder;
import ribband.past.What;

/** How a spreadsheet is to be read, where it does not tell that itself. */
final class BringOptions {
  @Option(
      names = "--column",
      paramLabel = "WHAT=COLUMN",
      description =
          "take hours=B: date, hours, phase, cost, note or entry from a column, named by its"
              + " letter or its heading; none takes it from no column")
  private List<String> columns = List.of();

  @Option(
      names = "--phase",
      paramLabel = "NAME=ID",
      description = "the phase that a word of the sheet means; =ID for rows that name none")
  private List<String> phases = List.of();

  @Option(
      names = "--dates",
      paramLabel = "ORDER",
      description = "day-first or month-first, where no date of the sheet tells it")
  private String dates;

  /**
   * What was asked for.
   *
   * @throws Refusal where it cannot be read
   */
  Asked read() {
    Map<What, String> byWhat = new EnumMap<>(What.class);
    for (String column : columns) {
      String[] parts = parts("--column", column, column.indexOf('='), "hours=B");
      if (byWhat.put(what(column, parts[0]), parts[1]) != null) {
        throw Refusal.wrongUsage("--column " + parts[0] + " stands twice; keep one");
      }
    }
    Map<String, String> byName = new LinkedHashMap<>();
    for (String phase : phases) {
      String[] parts = parts("--phase", phase, phase.lastIndexOf('='), "\"hull work=planking\"");
      byName.put(Name.fold(parts[0]), parts[1]);
    }
    return new Asked(byWhat, byName, order());
  }

  private static String[] parts(String option, String text, int cut, String example) {
    if (cut < 0 || text.substring(cut + 1).isBlank()) {
      throw Refusal.wrongValue(
          option, text, new Unreadable("has nothing behind a =", "write " + example));
    }
    return new String[] {text.substring(0, cut), text.substring(cut + 1).strip()};
  }

  private static What what(String column, String word) {
    try {
      return What.read(word);
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--column", column, e);
    }
  }

  private Optional<DayOrder> order() {
    try {
      return dates == null ? Optional.empty() : Optional.of(DayOrder.read(dates));
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--dates", dates, e);
    }
  }
}
