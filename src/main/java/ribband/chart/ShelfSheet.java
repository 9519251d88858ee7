package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ribband.chart.ShelfLevel.Day;
import ribband.chart.ShelfLevel.Delivery;

/** Draws one shelf for one width; what is handed in is as {@link ShelfLevel#chart} says. */
record ShelfSheet(
    long before,
    List<Day> days,
    LocalDate to,
    List<Delivery> deliveries,
    List<RunningCurve.Plan> reserve,
    Yardstick yardstick) {
  private static final int HEAD = 44;
  private static final int FOOT = 44;
  private static final int PHONE_MARGIN = 10;
  private static final List<Notes.Side> SIDES =
      List.of(Notes.Side.ABOVE_RIGHT, Notes.Side.ABOVE_LEFT);

  private static int plot(Size size) {
    return size == Size.NARROW ? 100 : 120;
  }

  Table table() {
    List<Table.Row> rows = new ArrayList<>();
    int next = 0;
    long level = before;
    YearMonth end = YearMonth.from(to);
    for (YearMonth m = YearMonth.from(days.get(0).date()); !m.isAfter(end); m = m.plusMonths(1)) {
      long came = 0;
      long went = 0;
      for (; next < days.size() && YearMonth.from(days.get(next).date()).equals(m); next++) {
        came = Math.addExact(came, days.get(next).came());
        went = Math.addExact(went, days.get(next).went());
        level = days.get(next).level();
      }
      rows.add(
          Table.Row.of(
              MonthNames.full(m),
              List.of(yardstick.figure(came), yardstick.figure(went), yardstick.figure(level))));
    }
    return new Table("Month", List.of("Came", "Went", "Left"), rows, List.of());
  }

  ShelfLevel draw(Size size) {
    long highest = days.stream().mapToLong(Day::highest).reduce(before, Math::max);
    long top = reserve.stream().mapToLong(RunningCurve.Plan::amount).reduce(highest, Math::max);
    Ticks ticks = yardstick.ticks(0, top);
    int foot = HEAD + plot(size);
    Scale scale = Scale.of(ticks, foot, HEAD);
    List<Rule> rules = Rule.at(ticks, scale, yardstick);
    Frame frame = Frame.withRoomFor(rules, size, margin(size));
    Days across = Days.of(days.get(0).date(), to, frame.shorter(Steps.TAIL));
    Steps level =
        Steps.through(
            frame.left(),
            scale.at(before),
            days.stream().map(day -> stop(day, across, scale)).toList(),
            across.at(to) + Steps.TAIL);
    int endX = level.endX();
    int endY = level.endY();
    Clearance clearance = new Clearance(new Box(0, 0, frame.width(), foot - 2));
    rules.forEach(rule -> clearance.shade(rule.lettering().box()));
    clearance.take(level);
    Label now = end(endX, endY, foot, size, frame, clearance);
    clearance.take(now.largeBox());
    List<Callout> came =
        new Notes(clearance, SIDES)
            .lay(
                deliveries.stream()
                    .map(
                        d ->
                            new Notes.Note(
                                across.at(d.date()), scale.at(highest(d.date())), d.text()))
                    .toList());
    return new ShelfLevel(
        frame.width(),
        foot + FOOT,
        frame.left(),
        frame.end(),
        foot,
        rules,
        MonthMark.along(
            YearMonth.from(across.from()),
            YearMonth.from(across.to()),
            across.aMonth(),
            month -> across.at(month.atDay(1))),
        level,
        endX,
        endY,
        now,
        came,
        reserve.stream().map(r -> scale.at(r.amount())).toList(),
        reserve.stream()
            .flatMap(r -> name(r.label(), scale.at(r.amount()), size, now, endY, frame, clearance))
            .toList());
  }

  private int margin(Size size) {
    int name = Lettering.widest(reserve.stream().map(RunningCurve.Plan::label));
    return size == Size.NARROW
        ? PHONE_MARGIN
        : Math.max(Lettering.largeWidth(yardstick.figure(now())), name) + 14;
  }

  private long now() {
    return days.get(days.size() - 1).level();
  }

  private long highest(LocalDate date) {
    return days.stream()
        .filter(day -> !day.date().isAfter(date))
        .mapToLong(day -> day.date().equals(date) ? day.highest() : day.level())
        .reduce(before, (earlier, later) -> later);
  }

  private static Steps.Stop stop(Day day, Days across, Scale scale) {
    return Steps.Stop.at(across.at(day.date()), scale.at(day.highest()), scale.at(day.level()));
  }

  /** At the level's end; on a phone over it, where the level leaves it room. */
  private Label end(int x, int y, int foot, Size size, Frame frame, Clearance clearance) {
    String text = yardstick.figure(now());
    if (size != Size.NARROW) {
      return new Label(x + 10, Math.min(y + 6, foot - 4), Label.Anchor.START, text);
    }
    return IntStream.iterate(y - 12, base -> base > Lettering.LARGE_RISE, base -> base - 6)
        .mapToObj(base -> new Label(frame.width(), base, Label.Anchor.END, text))
        .filter(label -> clearance.isFree(label.largeBox()))
        .findFirst()
        .orElse(new Label(frame.width(), y - 12, Label.Anchor.END, text));
  }

  /** At its line's end; on a phone on the line, where the level leaves it room. */
  private static Stream<Label> name(
      String text, int y, Size size, Label now, int endY, Frame frame, Clearance clearance) {
    if (size != Size.NARROW) {
      return Stream.of(LineEnds.name(text, frame.end() + 10, y, now, endY));
    }
    return Stream.of(
            new Label(frame.left(), y - 6, Label.Anchor.START, text),
            new Label(frame.left(), y + 16, Label.Anchor.START, text),
            new Label(frame.end() - 16, y - 6, Label.Anchor.END, text),
            new Label(frame.end() - 16, y + 16, Label.Anchor.END, text))
        .filter(label -> clearance.isFree(label.box()))
        .limit(1);
  }
}
