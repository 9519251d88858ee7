package ribband.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/** Draws one fan for one width. */
record FanSheet(
    List<Fan.Day> days,
    Fan.Done done,
    List<Fan.ColdMonth> cold,
    List<Fan.Rest> rests,
    Yardstick yardstick) {
  /** What is lettered beside the scale would else read as going on from it. */
  private static final int BESIDE_SCALE = 12;

  /** A month starts within so many days, whichever day the first one is. */
  private static final int SHORTEST = 31;

  /** Corners nearer to each other would show as kinks, as coordinates are whole. */
  private static final int SPACING = 10;

  private static final int FOOT = 44;
  private static final int MOST_MARGIN = 230;
  private static final int STRIDE = 4;

  /** A band is named where it is that thick at least. */
  private static final int THICK = 8;

  private static final List<Integer> OUTER = List.of(60, 70, 50, 40, 80, 30);
  private static final List<Integer> INNER = List.of(40, 45, 50, 35, 30, 55);

  private static final List<Notes.Side> RIGHT =
      List.of(Notes.Side.ABOVE_RIGHT, Notes.Side.ABOVE_LEFT);

  /** Over the plot; on a phone the dates stand there. */
  private static int head(Size size) {
    return size == Size.NARROW ? 96 : 40;
  }

  private static int plot(Size size) {
    return switch (size) {
      case WIDE -> 320;
      case MIDDLE -> 260;
      case NARROW -> 200;
    };
  }

  /** On the right there is room for the dates. */
  private int margin(Size size) {
    return size == Size.NARROW ? 10 : Math.min(MOST_MARGIN, new FanEnds(done, size).widest() + 2);
  }

  Fan draw(Size size) {
    Fan.Day first = days.get(0);
    Ticks ticks = yardstick.ticks(0, first.p95());
    int zero = head(size) + plot(size);
    Scale scale = Scale.of(ticks, zero, head(size));
    List<Rule> rules = Rule.at(ticks, scale, yardstick);
    Frame frame = Frame.withRoomFor(rules, size, margin(size));
    LocalDate soonest = first.date().plusDays(SHORTEST);
    LocalDate to = done.p95().isAfter(soonest) ? done.p95() : soonest;
    Days across = new Days(first.date(), to, frame.left(), frame.end());
    Clearance clearance = new Clearance(new Box(0, 0, frame.width(), zero - 2));
    Fan.Band outer = band(Fan.Day::p95, Fan.Day::p5, across, scale);
    Fan.Band inner = band(Fan.Day::p80, Fan.Day::p20, across, scale);
    rules.forEach(rule -> clearance.shade(besideScale(rule.lettering().box())));
    shade(outer, zero, clearance);
    int startY = scale.at(first.p95());
    Label now = now(frame, startY);
    clearance.take(now.largeBox());
    List<Callout> ends = new FanEnds(done, size).lay(across, zero, clearance);
    List<SpanLine> spells = SpanLine.lay(spells(frame), across, zero + FOOT, frame.width());
    return new Fan(
        frame.width(),
        zero + FOOT + SpanLine.height(spells, zero + FOOT),
        frame.left(),
        frame.end(),
        zero,
        zero,
        rules,
        months(across),
        outer,
        inner,
        median(across, scale),
        frame.left(),
        startY,
        now,
        ends,
        bands(across, scale, new Notes(clearance, RIGHT)),
        spells);
  }

  private static Box besideScale(Box lettering) {
    return new Box(
        lettering.left(), lettering.top(), lettering.right() + BESIDE_SCALE, lettering.bottom());
  }

  /** All from the upper edge down: nothing is lettered on a band. */
  private static void shade(Fan.Band band, int zero, Clearance clearance) {
    List<Fan.Corner> upper = band.edge().subList(0, band.edge().size() / 2);
    for (int i = 1; i < upper.size(); i++) {
      Fan.Corner from = upper.get(i - 1);
      Fan.Corner to = upper.get(i);
      for (int x = from.x(); x < to.x(); x += STRIDE) {
        int y = from.y() + (to.y() - from.y()) * (x - from.x()) / (to.x() - from.x());
        clearance.shade(new Box(x, y, Math.min(to.x(), x + STRIDE), zero));
      }
    }
  }

  /** Each band by how many draws lie in it, somewhere along the way to even odds. */
  private List<Callout> bands(Days across, Scale scale, Notes notes) {
    return Stream.of(
            band("9 in 10 odds", OUTER, Fan.Day::p95, Fan.Day::p80, across, scale, notes),
            band("6 in 10", INNER, Fan.Day::p80, Fan.Day::p50, across, scale, notes))
        .flatMap(Optional::stream)
        .toList();
  }

  /** At the first of some hundredths of the way where its upper half is thick and room is over. */
  private Optional<Callout> band(
      String name,
      List<Integer> hundredths,
      ToLongFunction<Fan.Day> upper,
      ToLongFunction<Fan.Day> lower,
      Days across,
      Scale scale,
      Notes notes) {
    int way = across.at(done.p50()) - across.start();
    for (int part : hundredths) {
      int x = across.start() + way * part / 100;
      int top = height(upper, x, across, scale);
      int bottom = height(lower, x, across, scale);
      if (bottom - top >= THICK) {
        Callout callout = notes.lay(List.of(new Notes.Note(x, (top + bottom) / 2, name))).get(0);
        if (callout.isTold()) {
          return Optional.of(callout);
        }
      }
    }
    return Optional.empty();
  }

  /** Of an edge, straight from day to day. */
  private int height(ToLongFunction<Fan.Day> edge, int at, Days across, Scale scale) {
    for (int i = 1; i < days.size(); i++) {
      int from = across.at(days.get(i - 1).date());
      int to = across.at(days.get(i).date());
      if (at <= to && from < to) {
        int start = scale.at(edge.applyAsLong(days.get(i - 1)));
        int end = scale.at(edge.applyAsLong(days.get(i)));
        return start + (end - start) * (at - from) / (to - from);
      }
    }
    return scale.at(0);
  }

  private static List<MonthMark> months(Days across) {
    YearMonth first = YearMonth.from(across.from().minusDays(1)).plusMonths(1);
    return MonthMark.along(
        first, YearMonth.from(across.to()), across.aMonth(), month -> across.at(month.atDay(1)));
  }

  /** Along its upper edge to where that reaches zero, and back along the lower one. */
  private Fan.Band band(
      ToLongFunction<Fan.Day> upper, ToLongFunction<Fan.Day> lower, Days across, Scale scale) {
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
    return new Fan.Band(there);
  }

  /** Through the days at which the bands have their corners. */
  private FairCurve median(Days across, Scale scale) {
    List<Fan.Day> knots = new ArrayList<>();
    int last = across.start() - SPACING;
    for (Fan.Day day : days) {
      int x = across.at(day.date());
      if (x - last >= SPACING || day.p50() == 0) {
        last = x;
        knots.add(day);
      }
      if (day.p50() == 0) {
        break;
      }
    }
    return FairCurve.through(
        knots.stream().mapToDouble(day -> across.exactly(day.date())).toArray(),
        knots.stream().mapToDouble(day -> scale.exactly(day.p50())).toArray());
  }

  private Label now(Frame frame, int startY) {
    String text = yardstick.figure(days.get(0).p95()) + " left";
    int x = Math.max(0, Math.min(frame.left(), frame.width() - Lettering.largeWidth(text)));
    return new Label(x, startY - 12, Label.Anchor.START, text);
  }

  /** Named in full where that fits, and what comes again only once. */
  private List<Span> spells(Frame frame) {
    Set<String> named = new HashSet<>();
    List<Span> spans = new ArrayList<>();
    for (FanSpell spell : FanSpell.of(cold)) {
      String full = "too cold for " + spell.what();
      boolean fits = Lettering.width(full) <= frame.width();
      String name = fits ? full : "too cold to glue or to coat";
      spans.add(
          new Span(
              named.add(name) ? name : "",
              spell.first().atDay(1),
              spell.last().atEndOfMonth(),
              List.of()));
    }
    for (Fan.Rest rest : FanSpell.joined(rests)) {
      String name = Lettering.fit(rest.name(), frame.width());
      spans.add(new Span(named.add(name) ? name : "", rest.from(), rest.to(), List.of()));
    }
    return spans;
  }
}
