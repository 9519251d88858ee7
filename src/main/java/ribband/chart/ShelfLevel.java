package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of a material stood on the shelf, day by day: level from one day to the next, as on a
 * dipstick.
 *
 * @param left where the dates begin
 * @param right where the dates and the rules end
 * @param zero height of the zero line
 * @param startY height of the level at the left
 * @param corners where the level changes, from left to right, and to what height
 * @param endX the end of the level
 * @param endY likewise
 * @param now what stands at its end
 * @param came what is told of single deliveries, with leaders down to the level
 * @param reserve the level it should not fall below; none or one
 * @param reserveName what stands on it; none where the level runs too near on both sides
 */
public record ShelfLevel(
    int width,
    int height,
    int left,
    int right,
    int zero,
    List<Rule> rules,
    List<MonthMark> months,
    int startY,
    List<Corner> corners,
    int endX,
    int endY,
    Label now,
    List<Callout> came,
    List<Rule> reserve,
    List<Label> reserveName) {
  private static final Frame NARROW = new Frame(Frame.NARROW, 40, 12, 90);
  private static final int PLOT = 110;
  private static final int FOOT = 44;
  private static final int MOST_NAMED = 8;

  public ShelfLevel {
    rules = List.copyOf(rules);
    months = List.copyOf(months);
    corners = List.copyOf(corners);
    came = List.copyOf(came);
    reserve = List.copyOf(reserve);
    reserveName = List.copyOf(reserveName);
  }

  /** A change of level. */
  public record Corner(int x, int y) {}

  /**
   * One day on which something moved.
   *
   * @param came 0 or more
   * @param went 0 or more
   * @param level at the day's end, 0 or more
   */
  public record Day(LocalDate date, long came, long went, long level) {}

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
    Story story =
        new Story(
            before,
            days,
            to,
            deliveries.size() > MOST_NAMED ? List.of() : deliveries,
            reserve,
            yardstick);
    String now = yardstick.words(story.now());
    Frame wide = new Frame(Frame.WIDE, 56, Lettering.width(now) * 5 / 4 + 8, PLOT);
    return new Chart<>(caption, story.draw(wide), story.draw(NARROW), story.table());
  }

  private record Story(
      long before,
      List<Day> days,
      LocalDate to,
      List<Delivery> deliveries,
      List<RunningCurve.Plan> reserve,
      Yardstick yardstick) {
    long now() {
      return days.get(days.size() - 1).level;
    }

    private Table table() {
      List<Table.Row> rows = new ArrayList<>();
      int next = 0;
      long level = before;
      YearMonth end = YearMonth.from(to);
      for (YearMonth m = YearMonth.from(days.get(0).date); !m.isAfter(end); m = m.plusMonths(1)) {
        long came = 0;
        long went = 0;
        for (; next < days.size() && YearMonth.from(days.get(next).date).equals(m); next++) {
          came = Math.addExact(came, days.get(next).came);
          went = Math.addExact(went, days.get(next).went);
          level = days.get(next).level;
        }
        rows.add(
            Table.Row.of(
                MonthNames.full(m),
                List.of(yardstick.figure(came), yardstick.figure(went), yardstick.figure(level))));
      }
      return new Table("Month", List.of("Came", "Went", "Left"), rows, List.of());
    }

    private ShelfLevel draw(Frame least) {
      long highest = days.stream().mapToLong(Day::level).reduce(before, Math::max);
      long top = reserve.stream().mapToLong(RunningCurve.Plan::amount).reduce(highest, Math::max);
      Ticks ticks = yardstick.ticks(0, top);
      Frame frame = least.withRoomFor(ticks, yardstick);
      Days across = Days.of(days.get(0).date, to, frame);
      List<Callouts.Placed> placed =
          Callouts.lay(
              deliveries.stream().map(d -> new Callouts.Flag(across.at(d.date), d.text)).toList(),
              frame.width());
      int rows = Callouts.rows(placed);
      int head = rows * Lettering.LINE + 20;
      int foot = head + frame.plot();
      Scale scale = Scale.of(ticks, foot, head);
      List<Callout> came = new ArrayList<>();
      for (int i = 0; i < deliveries.size(); i++) {
        int x = across.at(deliveries.get(i).date);
        came.add(placed.get(i).callout(scale.at(level(deliveries.get(i).date)), x, rows));
      }
      int endX = across.at(to);
      int endY = scale.at(now());
      return new ShelfLevel(
          frame.width(),
          foot + FOOT,
          frame.left(),
          frame.end(),
          foot,
          Rule.at(ticks, scale, yardstick),
          MonthMark.along(
              YearMonth.from(across.from()),
              YearMonth.from(across.to()),
              across.aMonth(),
              month -> across.at(month.atDay(1))),
          scale.at(before),
          corners(across, scale),
          endX,
          endY,
          end(endX, endY, foot, frame),
          came,
          reserve.stream().map(r -> new Rule(scale.at(r.amount()), r.label())).toList(),
          reserve.stream()
              .flatMap(r -> name(r.label(), scale.at(r.amount()), across, scale, frame).stream())
              .toList());
    }

    /** Above its line, at the side where the level leaves it room. */
    private Optional<Label> name(String text, int y, Days across, Scale scale, Frame frame) {
      int width = Lettering.width(text);
      if (isClear(frame.left(), frame.left() + width, y, across, scale)) {
        return Optional.of(new Label(frame.left(), y - 6, Label.Anchor.START, text));
      }
      return isClear(frame.end() - width - 16, frame.end(), y, across, scale)
          ? Optional.of(new Label(frame.end() - 16, y - 6, Label.Anchor.END, text))
          : Optional.empty();
    }

    private boolean isClear(int from, int to, int y, Days across, Scale scale) {
      List<Integer> heights = new ArrayList<>();
      int height = scale.at(before);
      for (Corner corner : corners(across, scale)) {
        if (corner.x > from && heights.isEmpty()) {
          heights.add(height);
        }
        height = corner.y;
        if (corner.x > from && corner.x < to) {
          heights.add(height);
        }
      }
      if (heights.isEmpty()) {
        heights.add(height);
      }
      // On one side all along: a drop from above to below would run through the words.
      return heights.stream().allMatch(h -> h < y - 20)
          || heights.stream().allMatch(h -> h > y + 3);
    }

    private long level(LocalDate date) {
      return days.stream()
          .filter(day -> !day.date.isAfter(date))
          .mapToLong(Day::level)
          .reduce(before, (earlier, later) -> later);
    }

    /** One for each place on the sheet, however many days fall on it. */
    private List<Corner> corners(Days across, Scale scale) {
      List<Corner> corners = new ArrayList<>();
      for (Day day : days) {
        Corner corner = new Corner(across.at(day.date), scale.at(day.level));
        if (!corners.isEmpty() && corners.get(corners.size() - 1).x == corner.x) {
          corners.remove(corners.size() - 1);
        }
        corners.add(corner);
      }
      return corners;
    }

    private Label end(int x, int y, int foot, Frame frame) {
      String text = yardstick.words(now());
      if (x + 8 + Lettering.width(text) * 5 / 4 <= frame.width()) {
        return new Label(x + 8, y > foot - 8 ? y - 6 : y + 5, Label.Anchor.START, text);
      }
      return new Label(frame.width(), y - 10, Label.Anchor.END, text);
    }
  }
}
