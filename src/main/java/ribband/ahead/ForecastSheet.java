package ribband.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.plan.Forecast;
import ribband.plan.HoursLeft;
import ribband.shop.Figure;

/** The forecast and the hours behind it for other programs. */
public final class ForecastSheet {
  private ForecastSheet() {}

  /** A row a percentile: the Sunday, or why there is none. */
  public static Sheet of(Forecast forecast) {
    return Sheet.of(
        List.of("percentile", "sunday", "unknown", "hours_left", "weeks_drawn_from"),
        List.of(
            row(50, forecast.p50(), forecast),
            row(80, forecast.p80(), forecast),
            row(95, forecast.p95(), forecast)));
  }

  private static List<Cell> row(int percentile, Figure<LocalDate> sunday, Forecast forecast) {
    return List.of(
        new Cell.Count(percentile),
        sunday.value().<Cell>map(day -> Cell.Words.of(day.toString())).orElseGet(Cell.Blank::new),
        sunday.value().isPresent() ? new Cell.Blank() : Cell.Words.of(sunday.why()),
        forecast.left().value().<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new),
        new Cell.Count(forecast.past().weeks().size()));
  }

  /** A row a phase: its hours left, and how they were reckoned; those left out have none. */
  public static Sheet of(HoursLeft left) {
    List<String> columns = List.of("what", "hours_left", "from");
    List<List<Cell>> rows = new ArrayList<>();
    for (HoursLeft.Part part : left.parts()) {
      rows.add(
          List.of(
              Cell.Words.of(part.name()),
              Cell.Exact.of(part.seconds().divide(3600)),
              Cell.Words.of(part.basis().name().toLowerCase(Locale.ROOT).replace('_', ' '))));
    }
    left.leftOut()
        .forEach(
            name ->
                rows.add(
                    List.of(Cell.Words.of(name), new Cell.Blank(), Cell.Words.of("left out"))));
    return Sheet.of(columns, rows);
  }
}
