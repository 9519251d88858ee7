package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import ribband.measure.Saying;

/**
 * One year's nights: a ruled line for each month, on it a tick for each night, as tall as its
 * hours.
 *
 * @param days the days of the month that are numbered under the lines
 * @param lines January first
 * @param top where the lines of the numbered days begin
 * @param bottom where they end
 */
public record YearOfNights(
    int width, int height, int top, int bottom, List<Label> days, List<Line> lines) {
  private static final Frame WIDE = new Frame(Frame.WIDE, 92, 72, 34);
  private static final Frame NARROW = new Frame(Frame.NARROW, 34, 46, 30);
  private static final int TOP = 6;
  private static final List<Integer> NUMBERED = List.of(1, 5, 10, 15, 20, 25, 30);

  public YearOfNights {
    days = List.copyOf(days);
    lines = List.copyOf(lines);
  }

  /**
   * One night.
   *
   * @param amount its hours, in the yardstick's smallest unit; 0 or more
   * @param href the night's page; empty for none
   */
  public record Night(LocalDate date, long amount, String href) {
    public Night {
      if (amount < 0) {
        throw new IllegalArgumentException("night of " + amount);
      }
    }
  }

  /**
   * One month.
   *
   * @param y of its rule
   * @param start where its first day stands
   * @param end where its last day stands
   */
  public record Line(Label name, int y, int start, int end, List<Tick> ticks, Label figure) {
    public Line {
      ticks = List.copyOf(ticks);
    }
  }

  /**
   * A night on its line.
   *
   * @param top of the tick; the line's own height is its foot
   * @param longest whether it alone is the longest of all
   * @param said the night in words
   */
  public record Tick(int x, int top, boolean longest, String said) {}

  /** The amount of the longest night of all, and whether one night alone has it. */
  private record Tallest(long amount, boolean alone) {}

  /**
   * The chart of a year.
   *
   * @param nights of any years, none twice; only this year's are drawn, but the longest of all sets
   *     the scale, so that years can be held against each other
   */
  public static Chart<YearOfNights> chart(
      Caption caption, int year, List<Night> nights, Yardstick yardstick) {
    long longest = nights.stream().mapToLong(Night::amount).max().orElse(0);
    Tallest tallest =
        new Tallest(longest, nights.stream().filter(night -> night.amount == longest).count() == 1);
    SortedMap<LocalDate, Night> ofYear = new TreeMap<>();
    for (Night night : nights) {
      if (night.date.getYear() == year && ofYear.put(night.date, night) != null) {
        throw new IllegalArgumentException("twice " + night.date);
      }
    }
    List<Night> own = ofYear.values().stream().sorted(Comparator.comparing(Night::date)).toList();
    return new Chart<>(
        caption,
        draw(year, own, tallest, yardstick, WIDE),
        draw(year, own, tallest, yardstick, NARROW),
        table(own, yardstick));
  }

  private static Table table(List<Night> nights, Yardstick yardstick) {
    List<Table.Row> rows =
        nights.stream()
            .map(
                night ->
                    new Table.Row(
                        Saying.day(night.date),
                        night.href,
                        List.of(yardstick.figure(night.amount))))
            .toList();
    Table.Row all = Table.Row.of("All", List.of(yardstick.figure(sum(nights.stream()))));
    return new Table("Night", List.of(yardstick.what()), rows, List.of(all));
  }

  private static long sum(Stream<Night> nights) {
    return nights.map(Night::amount).reduce(0L, Math::addExact);
  }

  private static YearOfNights draw(
      int year, List<Night> nights, Tallest tallest, Yardstick yardstick, Frame frame) {
    List<Line> lines = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      YearMonth at = YearMonth.of(year, month);
      List<Night> own = nights.stream().filter(n -> YearMonth.from(n.date).equals(at)).toList();
      lines.add(line(at, own, tallest, yardstick, frame));
    }
    int bottom = TOP + 12 * frame.plot() + 6;
    List<Label> days =
        NUMBERED.stream()
            .map(day -> new Label(x(day, frame), bottom + 14, Label.Anchor.MIDDLE, "" + day))
            .toList();
    return new YearOfNights(frame.width(), bottom + Lettering.LINE + 2, TOP, bottom, days, lines);
  }

  private static Line line(
      YearMonth month, List<Night> nights, Tallest tallest, Yardstick yardstick, Frame frame) {
    int y = TOP + month.getMonthValue() * frame.plot();
    // The tallest tick leaves a gap under the line above it.
    Scale height = new Scale(0, Math.max(tallest.amount, 1), y, y - frame.plot() + 6);
    List<Tick> ticks =
        nights.stream()
            .filter(night -> night.amount > 0)
            .map(
                night ->
                    new Tick(
                        x(night.date.getDayOfMonth(), frame),
                        Math.min(height.at(night.amount), y - 1),
                        tallest.alone && night.amount == tallest.amount,
                        Saying.day(night.date) + ": " + yardstick.words(night.amount)))
            .toList();
    boolean wide = frame.width() == Frame.WIDE;
    String name = wide ? Saying.monthName(month) : Saying.shortMonth(month);
    long sum = sum(nights.stream());
    return new Line(
        new Label(0, y, Label.Anchor.START, name),
        y,
        x(1, frame),
        x(month.lengthOfMonth(), frame),
        ticks,
        new Label(frame.width(), y, Label.Anchor.END, sum == 0 ? "" : yardstick.figure(sum)));
  }

  private static int x(int day, Frame frame) {
    return frame.left() + frame.span() * (day - 1) / 30;
  }
}
