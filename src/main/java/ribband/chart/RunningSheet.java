package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Draws one running total for one width.
 *
 * @param notes within the total's dates, by date
 */
record RunningSheet(
    RunningTotal total,
    RunningCurve.Growth growth,
    List<RunningCurve.Note> notes,
    List<RunningCurve.Plan> plan,
    List<Span> spans,
    Yardstick yardstick) {
  /** From the zero line to below the years. */
  private static final int FOOT = 44;

  private static final int HEAD = 30;
  private static final int KNOT_SPACING = 14;
  private static final int MOST_SPAN_ROWS = 6;
  private static final int PHONE_MARGIN = 10;
  private static final List<Notes.Side> SIDES =
      List.of(
          Notes.Side.ABOVE_LEFT,
          Notes.Side.BELOW_RIGHT,
          Notes.Side.ABOVE_RIGHT,
          Notes.Side.BELOW_LEFT);

  static RunningSheet of(
      RunningTotal total,
      RunningCurve.Growth growth,
      List<RunningCurve.Note> notes,
      List<RunningCurve.Plan> plan,
      List<Span> spans,
      Yardstick yardstick) {
    List<RunningCurve.Note> told =
        notes.stream()
            .filter(
                note -> !note.date().isBefore(total.first()) && !note.date().isAfter(total.last()))
            .sorted(Comparator.comparing(RunningCurve.Note::date))
            .toList();
    return new RunningSheet(total, growth, told, plan, spans, yardstick);
  }

  /** With the notes in its description. */
  Caption told(Caption caption) {
    if (notes.isEmpty()) {
      return caption;
    }
    String said = notes.stream().map(RunningCurve.Note::dated).collect(Collectors.joining("; "));
    return new Caption(
        caption.id(),
        caption.title(),
        caption.description() + " Noted on it: " + said + ".",
        caption.summary());
  }

  Table table() {
    return new RunningTable(total, notes, yardstick).table();
  }

  private static int plot(Size size) {
    return switch (size) {
      case WIDE -> 340;
      case MIDDLE -> 280;
      case NARROW -> 200;
    };
  }

  RunningCurve draw(Size size) {
    int bottom = HEAD + plot(size);
    Ticks ticks = ticks();
    Scale scale = Scale.of(ticks, bottom, HEAD);
    List<Rule> rules = Rule.at(ticks, scale, yardstick);
    Frame frame = Frame.withRoomFor(rules, size, margin(size));
    // The first month is shown from its first day.
    Days days = Days.of(total.first().minusDays(1), total.last(), frame.shorter(tail()));
    Clearance clearance = new Clearance(new Box(0, 0, frame.width(), bottom - 2));
    Course course = course(days, scale, clearance);
    rules.forEach(rule -> clearance.shade(rule.lettering().box()));
    Label end = end(size, course, scale, frame);
    clearance.take(end.largeBox());
    List<Integer> level = plan.stream().map(p -> scale.at(p.amount())).toList();
    level.forEach(y -> clearance.shade(new Box(frame.left(), y, frame.end(), y)));
    List<Label> planName = planName(size, end, scale, frame);
    planName.forEach(name -> clearance.take(name.box()));
    List<Callout> callouts =
        new Notes(clearance, SIDES)
            .lay(notes.stream().map(n -> note(n, size, course, days)).toList());
    List<SpanLine> lines = spans(size, days, bottom + FOOT, frame);
    List<Label> keys = keys(size, callouts, bottom + FOOT, frame);
    int keysEnd = keys.stream().mapToInt(key -> key.y() + 6).max().orElse(0);
    return new RunningCurve(
        frame.width(),
        Math.max(bottom + FOOT + SpanLine.height(lines, bottom + FOOT), keysEnd),
        frame.left(),
        frame.end(),
        scale.at(0),
        bottom,
        rules,
        MonthMark.along(
            YearMonth.from(days.from()),
            YearMonth.from(days.to()),
            days.aMonth(),
            month -> days.at(month.atDay(1))),
        course,
        course.endX(),
        scale.at(total.total()),
        end,
        callouts,
        keys,
        level,
        planName,
        lines);
  }

  private Ticks ticks() {
    long highest = plan.stream().map(RunningCurve.Plan::amount).reduce(total.highest(), Math::max);
    long lowest = plan.stream().map(RunningCurve.Plan::amount).reduce(total.lowest(), Math::min);
    return yardstick.ticks(lowest, highest);
  }

  /** Room for what stands at the line's end; a phone has none. */
  private int margin(Size size) {
    int names = Lettering.widest(plan.stream().map(RunningCurve.Plan::label));
    return size == Size.NARROW
        ? PHONE_MARGIN
        : Math.max(Lettering.largeWidth(yardstick.figure(total.total())), names) + 14;
  }

  /** What a step on the last day needs to be seen. */
  private int tail() {
    return switch (growth) {
      case STEADY -> 0;
      case SUDDEN -> Steps.TAIL;
    };
  }

  private Course course(Days days, Scale scale, Clearance clearance) {
    return switch (growth) {
      case STEADY -> {
        FairCurve curve = curve(days, scale);
        clearance.take(curve);
        yield curve;
      }
      case SUDDEN -> {
        Steps steps = steps(days, scale);
        clearance.take(steps);
        yield steps;
      }
    };
  }

  private Steps steps(Days days, Scale scale) {
    return Steps.through(
        days.start(),
        scale.at(total.carried()),
        total.after().entrySet().stream()
            .map(day -> Steps.Stop.at(days.at(day.getKey()), scale.at(day.getValue())))
            .toList(),
        days.at(total.last()) + Steps.TAIL);
  }

  private FairCurve curve(Days days, Scale scale) {
    List<LocalDate> knots =
        total.knots(
            days.across(KNOT_SPACING), notes.stream().map(RunningCurve.Note::date).toList());
    return FairCurve.through(
        knots.stream().mapToDouble(days::exactly).toArray(),
        knots.stream().mapToDouble(date -> scale.exactly(total.at(date))).toArray());
  }

  /** At the line's end; on a phone over it, or under it where it comes down from above. */
  private Label end(Size size, Course course, Scale scale, Frame frame) {
    String text = yardstick.figure(total.total());
    int x = course.endX();
    int y = scale.at(total.total());
    if (size != Size.NARROW) {
      boolean isOnZero = Math.abs(scale.at(0) - y) < 10;
      return new Label(x + 10, isOnZero ? y - 4 : y + 6, Label.Anchor.START, text);
    }
    int width = Lettering.largeWidth(text);
    int right = Math.min(Math.max(x + 6, width), frame.width());
    boolean comesDown = course.heightAt(Math.max(course.startX(), right - width)) < y;
    return new Label(right, comesDown ? y + 22 : y - 12, Label.Anchor.END, text);
  }

  /** At its line's end, out of the total's way; on a phone on the line. */
  private List<Label> planName(Size size, Label end, Scale scale, Frame frame) {
    List<Label> names = new ArrayList<>();
    for (RunningCurve.Plan level : plan) {
      int y = scale.at(level.amount());
      if (size == Size.NARROW) {
        names.add(new Label(frame.left(), y - 6, Label.Anchor.START, level.label()));
      } else {
        int endY = scale.at(total.total());
        names.add(LineEnds.name(level.label(), frame.end() + 10, y, end, endY));
      }
    }
    return names;
  }

  private Notes.Note note(RunningCurve.Note note, Size size, Course course, Days days) {
    int x = days.at(note.date());
    String text = size == Size.NARROW ? "" + (notes.indexOf(note) + 1) : note.text();
    return new Notes.Note(x, course.heightAt(x), text);
  }

  private List<SpanLine> spans(Size size, Days days, int top, Frame frame) {
    List<SpanLine> lines =
        size == Size.NARROW ? List.of() : SpanLine.lay(spans, days, top, frame.width());
    return SpanLine.height(lines, top) > MOST_SPAN_ROWS * SpanLine.PITCH + 8 ? List.of() : lines;
  }

  private List<Label> keys(Size size, List<Callout> callouts, int top, Frame frame) {
    List<Label> keys = new ArrayList<>();
    for (int i = 0; size == Size.NARROW && i < notes.size(); i++) {
      if (callouts.get(i).isTold()) {
        String text = Lettering.fit(i + 1 + "  " + notes.get(i).dated(), frame.width());
        int y = top + (keys.size() + 1) * (Lettering.LINE + 2);
        keys.add(new Label(0, y, Label.Anchor.START, text));
      }
    }
    return keys;
  }
}
