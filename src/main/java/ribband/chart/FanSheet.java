package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import ribband.measure.Saying;

/** Draws one fan for one width. */
record FanSheet(List<Fan.Day> days, Fan.Done done, List<Fan.ColdMonth> cold, Yardstick yardstick) {
  static final Frame WIDE = new Frame(Frame.WIDE, 56, 24, 240);
  static final Frame NARROW = new Frame(Frame.NARROW, 40, 12, 180);

  private static final int OUTER = 1;
  private static final int INNER = 4;
  private static final int COLD = 8;

  /** A month starts within so many days, whichever day the first one is. */
  private static final int SHORTEST = 31;

  /** Corners nearer to each other would show as kinks, as coordinates are whole. */
  private static final int SPACING = 10;

  private static final int HEAD = 26;
  private static final int STRIP = 8;
  private static final int MARKS = 44;
  private static final int SAMPLE = 24;
  private static final int GAP = 20;

  Fan draw(Frame least) {
    Fan.Day first = days.get(0);
    Ticks ticks = yardstick.ticks(0, first.p95());
    Frame frame = least.withRoomFor(ticks, yardstick);
    LocalDate soonest = first.date().plusDays(SHORTEST);
    LocalDate to = done.p95().isAfter(soonest) ? done.p95() : soonest;
    Days across = new Days(first.date(), to, frame.left(), frame.end());
    List<Callouts.Placed> placed = FanEnds.lay(flags(across), frame.width());
    int rows = Callouts.rows(placed);
    int top = rows * Lettering.LINE + HEAD;
    int zero = top + frame.plot();
    Scale scale = Scale.of(ticks, zero, top);
    List<Fan.ColdStrip> strips = strips(across, zero + 2);
    int marks = strips.isEmpty() ? zero : zero + STRIP + 4;
    List<Fan.Key> keys = keys(strips, frame, marks + MARKS);
    int startY = scale.at(first.p95());
    return new Fan(
        frame.width(),
        keys.get(keys.size() - 1).label().y() + 8,
        frame.left(),
        frame.end(),
        zero,
        marks,
        Rule.at(ticks, scale, yardstick),
        months(across),
        band(Fan.Day::p95, Fan.Day::p5, OUTER, across, scale),
        band(Fan.Day::p80, Fan.Day::p20, INNER, across, scale),
        median(across, scale),
        frame.left(),
        startY,
        now(frame, startY),
        placed.stream().map(p -> p.callout(zero, p.flag().x(), rows)).toList(),
        strips,
        keys);
  }

  /** One for each date: percentiles that end on the same day stand in one. */
  private List<Callouts.Flag> flags(Days across) {
    Map<LocalDate, List<String>> names = new LinkedHashMap<>();
    names.computeIfAbsent(done.p50(), none -> new ArrayList<>()).add("P50");
    names.computeIfAbsent(done.p80(), none -> new ArrayList<>()).add("P80");
    names.computeIfAbsent(done.p95(), none -> new ArrayList<>()).add("P95");
    return names.entrySet().stream()
        .map(
            end ->
                new Callouts.Flag(
                    across.at(end.getKey()),
                    Saying.list(end.getValue()) + ": " + Saying.day(end.getKey())))
        .toList();
  }

  private static List<MonthMark> months(Days across) {
    YearMonth first = YearMonth.from(across.from().minusDays(1)).plusMonths(1);
    return MonthMark.along(
        first, YearMonth.from(across.to()), across.aMonth(), month -> across.at(month.atDay(1)));
  }

  /** Along its upper edge to where that reaches zero, and back along the lower one. */
  private Fan.Band band(
      ToLongFunction<Fan.Day> upper,
      ToLongFunction<Fan.Day> lower,
      int hatch,
      Days across,
      Scale scale) {
    List<Fan.Corner> there = new ArrayList<>();
    List<Fan.Corner> back = new ArrayList<>();
    int last = across.start() - SPACING;
    for (Fan.Day day : days) {
      int x = across.at(day.date());
      if (x - last < SPACING && upper.applyAsLong(day) > 0) {
        continue;
      }
      last = x;
      there.add(new Fan.Corner(x, scale.at(upper.applyAsLong(day))));
      back.add(new Fan.Corner(x, scale.at(lower.applyAsLong(day))));
      if (upper.applyAsLong(day) == 0) {
        break;
      }
    }
    Collections.reverse(back);
    there.addAll(back);
    return new Fan.Band(there, hatch);
  }

  private FairCurve median(Days across, Scale scale) {
    List<Fan.Day> toZero = new ArrayList<>();
    for (Fan.Day day : days) {
      toZero.add(day);
      if (day.p50() == 0) {
        break;
      }
    }
    return FairCurve.through(
        toZero.stream().mapToDouble(day -> across.exactly(day.date())).toArray(),
        toZero.stream().mapToDouble(day -> scale.exactly(day.p50())).toArray());
  }

  private Label now(Frame frame, int startY) {
    String text = yardstick.words(days.get(0).p95()) + " left";
    int room = (frame.width() - frame.left()) * 4 / 5;
    return new Label(frame.left(), startY - 8, Label.Anchor.START, Lettering.fit(text, room));
  }

  private List<Fan.ColdStrip> strips(Days across, int y) {
    List<Fan.ColdStrip> strips = new ArrayList<>();
    for (FanSpell spell : FanSpell.of(cold)) {
      int start = across.at(later(spell.first().atDay(1), across.from()));
      int end = across.at(earlier(spell.last().plusMonths(1).atDay(1), across.to()));
      if (start < end) {
        strips.add(new Fan.ColdStrip(new Block(start, y, end - start, STRIP, COLD), spell.words()));
      }
    }
    return strips;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private List<Fan.Key> keys(List<Fan.ColdStrip> strips, Frame frame, int top) {
    Map<String, Integer> hatches = new LinkedHashMap<>();
    hatches.put("6 of 10 draws", INNER);
    hatches.put("9 of 10 draws", OUTER);
    if (!strips.isEmpty()) {
      hatches.put("too cold for " + tooColdFor(), COLD);
    }
    List<Fan.Key> keys = new ArrayList<>();
    int x = 0;
    int y = top + Lettering.LINE;
    for (Map.Entry<String, Integer> hatch : hatches.entrySet()) {
      String text = Lettering.fit(hatch.getKey(), frame.width() - SAMPLE - 8);
      int width = SAMPLE + 8 + Lettering.width(text);
      if (x > 0 && x + width > frame.width()) {
        x = 0;
        y += Lettering.LINE + 4;
      }
      keys.add(
          new Fan.Key(
              new Block(x, y - 11, SAMPLE, 12, hatch.getValue()),
              new Label(x + SAMPLE + 8, y, Label.Anchor.START, text)));
      x += width + GAP;
    }
    return keys;
  }

  /** One name where all months have the same; else only that it depends. */
  private String tooColdFor() {
    List<String> whats = cold.stream().map(Fan.ColdMonth::what).distinct().toList();
    return whats.size() == 1 ? whats.get(0) : "an adhesive";
  }
}
