package ribband.chart;

import java.time.LocalDate;
import java.util.List;
import ribband.measure.Saying;

/**
 * A running total over dates as one fair curve, with notes on it and spans of time under it.
 *
 * @param left where the dates begin
 * @param right where the dates and the rules end
 * @param zero height of the zero line
 * @param ticks height under which the month marks stand
 * @param rules lowest first
 * @param curve in tenths of the drawing's unit
 * @param endX the end of the curve
 * @param endY likewise
 * @param total what stands at the end of the curve
 * @param notes what is told of single dates; on a phone by its number in {@code keys}
 * @param keys the notes in words where the curve has only their numbers
 * @param plan height of the level the total is to reach; none or one
 * @param planName what stands at it
 * @param spans under the months; none where they would outweigh the curve
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
    FairCurve curve,
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
      long carried,
      List<Step> steps,
      List<Note> notes,
      List<Plan> plan,
      List<Span> spans,
      Yardstick yardstick) {
    RunningTotal total = RunningTotal.of(carried, steps);
    RunningSheet sheet = RunningSheet.of(total, notes, plan, spans, yardstick);
    return Chart.of(sheet.told(caption), sheet::draw, sheet.table());
  }
}
