package ribband.chart;

import java.time.LocalDate;
import java.util.List;
import ribband.measure.Saying;

/**
 * A running total over dates as one line, with notes on it and spans of time under it.
 *
 * @param left where the dates begin
 * @param right where the dates and the rules end
 * @param zero height of the zero line
 * @param ticks height under which the month marks stand
 * @param rules lowest first
 * @param course how the total runs
 * @param endX the end of the line
 * @param endY likewise
 * @param total what stands at the end of the line
 * @param notes what is told of single dates; on a phone by its number in {@code keys}
 * @param keys the notes in words where the line has only their numbers
 * @param plan height of the level the total is to reach; none or one
 * @param planName what stands at it
 * @param spans under the months; none where they would outweigh the line
 */
public record RunningCurve(
    int width,
    int height,
    int left,
    int right,
    int zero,
    int ticks,
    List<Rule> rules,
    List<MonthMark> months,
    Course course,
    int endX,
    int endY,
    Label total,
    List<Callout> notes,
    List<Label> keys,
    List<Integer> plan,
    List<Label> planName,
    List<SpanLine> spans) {
  public RunningCurve {
    rules = List.copyOf(rules);
    months = List.copyOf(months);
    notes = List.copyOf(notes);
    keys = List.copyOf(keys);
    plan = List.copyOf(plan);
    planName = List.copyOf(planName);
    spans = List.copyOf(spans);
  }

  /** How a total grows. */
  public enum Growth {
    /** Little by little: one fair curve. */
    STEADY,
    /** All at once on its date, and not at all in between: steps, up or down. */
    SUDDEN
  }

  /**
   * What one date adds.
   *
   * @param amount below zero where it came back
   */
  public record Step(LocalDate date, long amount) {}

  /** Something told of one date, on the curve. */
  public record Note(LocalDate date, String text) {
    String dated() {
      return text + ", " + Saying.day(date);
    }
  }

  /**
   * The level the total is to reach.
   *
   * @param label stands at the level's line: {@code 640:00 planned}
   */
  public record Plan(long amount, String label) {}

  /**
   * The chart of a running total.
   *
   * @param carried the total before the first step
   * @param steps at least one, in any order, several a date allowed
   * @param notes those outside the steps' dates are left out
   * @param plan none or one
   * @param spans in the order in which they choose their rows
   */
  public static Chart<RunningCurve> chart(
      Caption caption,
      Growth growth,
      long carried,
      List<Step> steps,
      List<Note> notes,
      List<Plan> plan,
      List<Span> spans,
      Yardstick yardstick) {
    RunningTotal total = RunningTotal.of(carried, steps);
    RunningSheet sheet = RunningSheet.of(total, growth, notes, plan, spans, yardstick);
    return Chart.of(sheet.told(caption), sheet::draw, sheet.table());
  }
}
