package ribband.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * A running total as a small bare curve.
 *
 * @param base height of zero
 * @param curve in tenths of the drawing's unit
 * @param endX the end of the curve
 * @param endY likewise
 */
public record Spark(
    Caption caption, int width, int height, int base, FairCurve curve, int endX, int endY) {
  private static final int WIDTH = 240;
  private static final int HEIGHT = 56;
  private static final int MARGIN = 6;

  /**
   * The spark of a running total.
   *
   * @param carried the total before the first step
   * @param steps at least one, in any order
   */
  public static Spark of(Caption caption, long carried, List<RunningCurve.Step> steps) {
    RunningTotal total = RunningTotal.of(carried, steps);
    long lowest = Math.min(0, total.lowest());
    long highest = Math.max(total.highest(), lowest + 1);
    Scale scale = new Scale(lowest, highest, HEIGHT - MARGIN, MARGIN);
    LocalDate from = total.first().minusDays(1);
    long days = ChronoUnit.DAYS.between(from, total.last());
    int end = WIDTH - MARGIN;
    List<LocalDate> knots = total.knots((int) Math.max(1, days * 8 / end), List.of());
    FairCurve curve =
        FairCurve.through(
            knots.stream()
                .mapToDouble(date -> (double) end * ChronoUnit.DAYS.between(from, date) / days)
                .toArray(),
            knots.stream().mapToDouble(date -> scale.exactly(total.at(date))).toArray());
    return new Spark(caption, WIDTH, HEIGHT, scale.at(0), curve, end, scale.at(total.total()));
  }
}
