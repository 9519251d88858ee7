package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Amounts per month, a row for all and a row for each phase, all on one scale: like the level lines
 * of a hull, one under the other at the same stations.
 *
 * @param left where the months begin
 * @param right where they end
 * @param ticks height under which the month marks stand
 * @param years where a year begins, but for the first month
 * @param bar width of a bar
 * @param rows all first
 */
public record MonthRows(
    int width,
    int height,
    int left,
    int right,
    int ticks,
    List<Integer> years,
    int bar,
    List<Row> rows,
    List<MonthMark> months) {
  public MonthRows {
    years = List.copyOf(years);
    rows = List.copyOf(rows);
    months = List.copyOf(months);
  }

  /** A phase as the chart shows it. */
  public record Phase(String name, Weight weight) {}

  /**
   * One month's amounts.
   *
   * @param all of all phases, those too that the chart leaves out; below zero is what came back
   * @param amounts one for each phase, in the phases' order
   */
  public record Month(YearMonth month, long all, List<Long> amounts) {
    public Month {
      amounts = List.copyOf(amounts);
    }
  }

  /**
   * One row.
   *
   * @param zero height of its line
   * @param bars of the months with an amount, oldest first
   * @param now the bar of the month that is marked; none or one
   * @param peak what its fullest month has, over its bar; none where no month has any
   * @param total what all its months have
   */
  public record Row(
      Weight weight,
      Label name,
      int zero,
      List<Bar> bars,
      List<Bar> now,
      List<Label> peak,
      Label total) {
    public Row {
      bars = List.copyOf(bars);
      now = List.copyOf(now);
      peak = List.copyOf(peak);
    }
  }

  /**
   * A month's bar.
   *
   * @param x its middle
   * @param end its height; its foot is on the row's line
   */
  public record Bar(int x, int end) {}

  /**
   * The chart of some months; months missing between the first and the last stand with zeros.
   *
   * @param all how the row of all is drawn
   * @param months at least one, none twice
   * @param now the month that is marked; none where no month is the page's own
   */
  public static Chart<MonthRows> chart(
      Caption caption,
      Weight all,
      List<Phase> phases,
      List<Month> months,
      Optional<YearMonth> now,
      Yardstick yardstick) {
    MonthRowsSheet sheet =
        new MonthRowsSheet(all, phases, withoutGaps(phases.size(), months), now, yardstick);
    return Chart.of(caption, sheet::draw, sheet.table());
  }

  private static List<Month> withoutGaps(int phases, List<Month> months) {
    SortedMap<YearMonth, Month> known = new TreeMap<>();
    for (Month month : months) {
      if (month.amounts.size() != phases || known.put(month.month, month) != null) {
        throw new IllegalArgumentException("month " + month);
      }
    }
    List<Long> nothing = IntStream.range(0, phases).mapToObj(phase -> 0L).toList();
    List<Month> all = new ArrayList<>();
    YearMonth last = known.lastKey();
    for (YearMonth at = known.firstKey(); !at.isAfter(last); at = at.plusMonths(1)) {
      all.add(known.getOrDefault(at, new Month(at, 0, nothing)));
    }
    return all;
  }
}
