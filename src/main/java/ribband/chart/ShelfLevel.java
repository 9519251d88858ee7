package ribband.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * How much of a material stood on the shelf, day by day: level from one day to the next, as on a
 * dipstick.
 *
 * @param left where the dates begin
 * @param right where the dates and the rules end
 * @param zero height of the zero line
 * @param level what is there; on a day on which something came it rises first and then falls
 * @param endX the end of the level
 * @param endY likewise
 * @param now what stands at its end
 * @param came what is told of single deliveries
 * @param reserve height of the level it should not fall below; none or one
 * @param reserveName what stands at it; none where there is no room
 */
public record ShelfLevel(
    int width,
    int height,
    int left,
    int right,
    int zero,
    List<Rule> rules,
    List<MonthMark> months,
    Steps level,
    int endX,
    int endY,
    Label now,
    List<Callout> came,
    List<Integer> reserve,
    List<Label> reserveName) {
  private static final int MOST_NAMED = 8;

  public ShelfLevel {
    rules = List.copyOf(rules);
    months = List.copyOf(months);
    came = List.copyOf(came);
    reserve = List.copyOf(reserve);
    reserveName = List.copyOf(reserveName);
  }

  /**
   * One day on which something moved.
   *
   * @param came 0 or more
   * @param went 0 or more
   * @param level at the day's end, 0 or more
   */
  public record Day(LocalDate date, long came, long went, long level) {
    /** All that was there on that day: what came is there before anything of it goes. */
    long highest() {
      return came == 0 ? level : Math.addExact(level, went);
    }
  }

  /** Something told of one date, on the level. */
  public record Delivery(LocalDate date, String text) {}

  /**
   * The chart of one shelf.
   *
   * @param before the level before the first day
   * @param days at least one, by date
   * @param to the day that all is as of
   * @param deliveries named where there are few
   * @param reserve none or one, with its words
   */
  public static Chart<ShelfLevel> chart(
      Caption caption,
      long before,
      List<Day> days,
      LocalDate to,
      List<Delivery> deliveries,
      List<RunningCurve.Plan> reserve,
      Yardstick yardstick) {
    ShelfSheet sheet =
        new ShelfSheet(
            before,
            days,
            to,
            deliveries.size() > MOST_NAMED ? List.of() : deliveries,
            reserve,
            yardstick);
    return Chart.of(caption, sheet::draw, sheet.table());
  }
}
