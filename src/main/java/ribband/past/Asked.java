package ribband.past;

import java.util.Map;
import java.util.Optional;
import ribband.measure.Ordered;

/**
 * What the builder said of the spreadsheet.
 *
 * @param columns a column's letter, number or heading, or {@code none}
 * @param phases phase ids by folded names of the spreadsheet; the empty name is a cell without one
 * @param dates empty where the dates themselves are to tell
 */
public record Asked(
    Map<What, String> columns, Map<String, String> phases, Optional<DayOrder> dates) {
  public static final Asked NOTHING = new Asked(Map.of(), Map.of(), Optional.empty());

  public Asked {
    columns = Ordered.copy(columns);
    phases = Ordered.copy(phases);
  }
}
