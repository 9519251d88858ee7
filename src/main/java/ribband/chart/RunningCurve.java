package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A running total over dates as one fair curve.
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
 * @param notes what is told of single dates, with leaders down to the curve
 * @param plan the level the total is to reach; none or one
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
    List<Rule> plan) {
  private static final Frame NARROW = new Frame(Frame.NARROW, 40, 12, 180);
  private static final int FOOT = 44;
  private static final int KNOT_SPACING = 14;

  public RunningCurve {
    rules = List.copyOf(rules);
    months = List.copyOf(months);
    notes = List.copyOf(notes);
    plan = List.copyOf(plan);
  }

  /**
   * What one date adds.
   *
   * @param amount below zero where it came back
   */
  public record Step(LocalDate date, long amount) {}

  /** Something told of one date, on the curve. */
  public record Note(LocalDate date, String text) {}

  /**
   * The level the total is to reach.
   *
   * @param label stands on the level's line: {@code plan 640}
   */
  public record Plan(long amount, String label) {}

  /**
   * The chart of a running total.
   *
   * @param carried the total before the first step
   * @param steps at least one, in any order, several a date allowed
   * @param notes those outside the steps' dates are left out
   * @param plan none or one
   */
  public static Chart<RunningCurve> chart(
      Caption caption,
      long carried,
      List<Step> steps,
      List<Note> notes,
      List<Plan> plan,
      Yardstick yardstick) {
    RunningTotal total = RunningTotal.of(carried, steps);
    return new Chart<>(
        caption,
        draw(total, notes, plan, yardstick, wide(yardstick.words(total.total()))),
        draw(total, notes, plan, yardstick, NARROW),
        table(total, yardstick));
  }

  private static Frame wide(String total) {
    return new Frame(Frame.WIDE, 56, boldWidth(total) + 8, 240);
  }

  private static Table table(RunningTotal total, Yardstick yardstick) {
    List<Table.Row> rows = new ArrayList<>();
    if (total.carried() != 0) {
      String carried = yardstick.figure(total.carried());
      rows.add(Table.Row.of("Before", List.of(carried, carried)));
    }
    long before = total.carried();
    for (YearMonth month : total.months()) {
      long after = total.at(month.atEndOfMonth());
      long added = Math.subtractExact(after, before);
      rows.add(
          Table.Row.of(
              MonthNames.full(month), List.of(yardstick.figure(added), yardstick.figure(after))));
      before = after;
    }
    return new Table("Month", List.of(yardstick.what(), "To date"), rows, List.of());
  }

  private static RunningCurve draw(
      RunningTotal total, List<Note> notes, List<Plan> plan, Yardstick yardstick, Frame least) {
    Ticks ticks = ticks(total, plan, yardstick);
    Frame frame = least.withRoomFor(ticks, yardstick);
    // The first month is shown from its first day.
    Days days = Days.of(total.first().minusDays(1), total.last(), frame);
    List<Note> told =
        notes.stream()
            .filter(note -> !note.date.isBefore(total.first()) && !note.date.isAfter(total.last()))
            .sorted(Comparator.comparing(Note::date))
            .toList();
    List<Callouts.Placed> placed =
        Callouts.lay(
            told.stream().map(note -> new Callouts.Flag(days.at(note.date), note.text)).toList(),
            frame.width());
    int rows = Callouts.rows(placed);
    int top = rows * Lettering.LINE + 20;
    int bottom = top + frame.plot();
    Scale scale = Scale.of(ticks, bottom, top);
    List<Callout> callouts = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      LocalDate date = told.get(i).date;
      callouts.add(placed.get(i).callout(scale.at(total.at(date)), days.at(date), rows));
    }
    YearMonth firstMonth = YearMonth.from(days.from());
    return new RunningCurve(
        frame.width(),
        bottom + FOOT,
        frame.left(),
        frame.end(),
        scale.at(0),
        bottom,
        Rule.at(ticks, scale, yardstick),
        MonthMark.along(
            firstMonth, YearMonth.from(days.to()), days.aMonth(), month -> days.at(month.atDay(1))),
        curve(total, told, days, scale),
        days.at(total.last()),
        scale.at(total.total()),
        end(total, yardstick.words(total.total()), days, scale, frame),
        callouts,
        plan.stream().map(level -> new Rule(scale.at(level.amount), level.label)).toList());
  }

  private static Ticks ticks(RunningTotal total, List<Plan> plan, Yardstick yardstick) {
    long highest = plan.stream().map(Plan::amount).reduce(total.highest(), Math::max);
    long lowest = plan.stream().map(Plan::amount).reduce(total.lowest(), Math::min);
    return yardstick.ticks(lowest, highest);
  }

  private static FairCurve curve(RunningTotal total, List<Note> notes, Days days, Scale scale) {
    List<LocalDate> knots =
        total.knots(days.across(KNOT_SPACING), notes.stream().map(Note::date).toList());
    return FairCurve.through(
        knots.stream().mapToDouble(days::exactly).toArray(),
        knots.stream().mapToDouble(date -> scale.exactly(total.at(date))).toArray());
  }

  /** At the line's end where the margin has room, else on the side that the line leaves free. */
  private static Label end(RunningTotal total, String text, Days days, Scale scale, Frame frame) {
    int x = days.at(total.last());
    int y = scale.at(total.total());
    if (x + 8 + boldWidth(text) <= frame.width()) {
      boolean onZero = Math.abs(scale.at(0) - y) < 8;
      return new Label(x + 8, onZero ? y - 8 : y + 5, Label.Anchor.START, text);
    }
    long before = total.at(total.last().minusDays(days.across(boldWidth(text))));
    int clear = before > total.total() ? y + 22 : y - 10;
    return new Label(Math.min(x + 8, frame.width()), clear, Label.Anchor.END, text);
  }

  private static int boldWidth(String text) {
    return Lettering.width(text) * 5 / 4;
  }
}
