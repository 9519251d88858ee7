package ribband.chart;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
   * @param weight quiet where it has no night
   * @param y of its rule
   * @param start where its first day stands
   * @param end where its last day stands
   * @param longest the figure of the longest night of all; none where it is not on this line
   * @param figure the month's sum; empty for none
   */
  public record Line(
      Weight weight,
      Label name,
      int y,
      int start,
      int end,
      List<Tick> ticks,
      List<Label> longest,
      Label figure) {
    public Line {
      ticks = List.copyOf(ticks);
      longest = List.copyOf(longest);
    }
  }

  /**
   * A night on its line.
   *
   * @param top of the tick; the line's own height is its foot
   * @param longest whether it alone is the longest of all
   * @param said the night in words
   */
  public record Tick(int x, int top, boolean longest, String said) {
    private Box box(int foot) {
      return new Box(x - 3, top, x + 3, foot);
    }
  }

  /** The amount of the longest night of all, and whether one night alone has it. */
  private record Tallest(long amount, boolean alone) {}

  /** The chart of a year whose nights are all told. */
  public static Chart<YearOfNights> chart(
      Caption caption, int year, List<Night> nights, Yardstick yardstick) {
    return chart(caption, year, nights, Map.of(), yardstick);
  }

  /**
   * The chart of a year.
   *
   * @param nights of any years, none twice; only this year's are drawn, but the longest of all sets
   *     the scale, so that years can be held against each other
   * @param untold what nights without a tick add to their month's sum; months of any years
   */
  public static Chart<YearOfNights> chart(
      Caption caption,
      int year,
      List<Night> nights,
      Map<YearMonth, Long> untold,
      Yardstick yardstick) {
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
    Year at = Year.of(year);
    Map<YearMonth, Long> rest =
        untold.entrySet().stream()
            .filter(month -> Year.from(month.getKey()).equals(at))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    return Chart.of(
        caption,
        size -> draw(year, own, rest, tallest, yardstick, size),
        table(own, sum(rest), yardstick));
  }

  private static Table table(List<Night> nights, long untold, Yardstick yardstick) {
    List<Table.Row> rows =
        nights.stream()
            .map(
                night ->
                    new Table.Row(
                        Saying.day(night.date),
                        night.href,
                        List.of(yardstick.figure(night.amount))))
            .toList();
    long all = Math.addExact(sum(nights.stream()), untold);
    List<Table.Row> foot = new ArrayList<>();
    if (untold != 0) {
      foot.add(Table.Row.of("Not shown", List.of(yardstick.figure(untold))));
    }
    foot.add(Table.Row.of("All", List.of(yardstick.figure(all))));
    return new Table("Night", List.of(yardstick.what()), rows, foot);
  }

  private static long sum(Map<YearMonth, Long> untold) {
    return untold.values().stream().reduce(0L, Math::addExact);
  }

  private static long sum(Stream<Night> nights) {
    return nights.map(Night::amount).reduce(0L, Math::addExact);
  }

  private static YearOfNights draw(
      int year,
      List<Night> nights,
      Map<YearMonth, Long> untold,
      Tallest tallest,
      Yardstick yardstick,
      Size size) {
    // No month has more than the year.
    int sums = Lettering.width(yardstick.figure(Math.addExact(sum(nights.stream()), sum(untold))));
    Frame frame = new Frame(size.width(), name(size), sums + 14);
    List<Line> lines = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      YearMonth at = YearMonth.of(year, month);
      List<Night> own = nights.stream().filter(n -> YearMonth.from(n.date).equals(at)).toList();
      lines.add(line(at, own, untold.getOrDefault(at, 0L), tallest, yardstick, size, frame));
    }
    int bottom = TOP + 12 * pitch(size) + 6;
    List<Label> days =
        NUMBERED.stream()
            .map(day -> new Label(x(day, frame), bottom + 14, Label.Anchor.MIDDLE, "" + day))
            .toList();
    return new YearOfNights(frame.width(), bottom + Lettering.LINE + 2, TOP, bottom, days, lines);
  }

  private static int name(Size size) {
    return size == Size.NARROW ? 40 : 100;
  }

  private static int pitch(Size size) {
    return switch (size) {
      case WIDE -> 38;
      case MIDDLE -> 34;
      case NARROW -> 32;
    };
  }

  private static Line line(
      YearMonth month,
      List<Night> nights,
      long untold,
      Tallest tallest,
      Yardstick yardstick,
      Size size,
      Frame frame) {
    int y = TOP + month.getMonthValue() * pitch(size);
    // The tallest tick leaves a gap under the line above it.
    Scale height = new Scale(0, Math.max(tallest.amount, 1), y, y - pitch(size) + 6);
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
    String name = size == Size.NARROW ? Saying.shortMonth(month) : Saying.monthName(month);
    long sum = Math.addExact(sum(nights.stream()), untold);
    return new Line(
        ticks.isEmpty() ? Weight.QUIET : Weight.STRONG,
        new Label(0, y, Label.Anchor.START, name),
        y,
        x(1, frame),
        x(month.lengthOfMonth(), frame),
        ticks,
        ticks.stream()
            .filter(Tick::longest)
            .flatMap(
                tick -> figure(tick, y, ticks, yardstick.figure(tallest.amount), frame).stream())
            .toList(),
        new Label(frame.width(), y, Label.Anchor.END, sum == 0 ? "" : yardstick.figure(sum)));
  }

  /** Beside its tick, where no other tick is in the way. */
  private static Optional<Label> figure(
      Tick tick, int foot, List<Tick> ticks, String text, Frame frame) {
    int y = tick.top + Lettering.RISE;
    return Stream.of(
            new Label(tick.x + 6, y, Label.Anchor.START, text),
            new Label(tick.x - 6, y, Label.Anchor.END, text))
        .filter(label -> label.box().left() >= frame.left() && label.box().right() <= frame.end())
        .filter(label -> ticks.stream().noneMatch(other -> label.box().overlaps(other.box(foot))))
        .findFirst();
  }

  private static int x(int day, Frame frame) {
    return frame.left() + frame.span() * (day - 1) / 30;
  }
}
