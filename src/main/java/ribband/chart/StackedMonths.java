package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Amounts per month, stacked by phase: what adds stands above the zero line, what came back hangs
 * below it.
 *
 * @param zero height of the zero line
 * @param left where the bars begin
 * @param end where the rules end; few months do not reach it
 * @param ticks height under which the month marks stand
 * @param rules lowest first
 * @param bars oldest first, one for each month from the first to the last
 * @param names one for each phase with any amount, on its fullest month where that is free
 */
public record StackedMonths(
    int width,
    int height,
    int left,
    int end,
    int zero,
    int ticks,
    List<Rule> rules,
    List<Bar> bars,
    List<MonthMark> months,
    List<Callout> names) {
  private static final Frame WIDE = new Frame(Frame.WIDE, 56, 8, 220);
  private static final Frame NARROW = new Frame(Frame.NARROW, 40, 4, 180);
  private static final int FOOT = 44;

  public StackedMonths {
    rules = List.copyOf(rules);
    bars = List.copyOf(bars);
    months = List.copyOf(months);
    names = List.copyOf(names);
  }

  /** A phase as the chart shows it. */
  public record Phase(String name, int hatch) {
    public Phase {
      Hatch.checked(hatch);
    }
  }

  /**
   * One month's amounts.
   *
   * @param amounts one for each phase, in the phases' order; below zero is what came back
   */
  public record Month(YearMonth month, List<Long> amounts) {
    public Month {
      amounts = List.copyOf(amounts);
    }

    long total() {
      return amounts.stream().reduce(0L, Math::addExact);
    }

    long above() {
      return amounts.stream().filter(amount -> amount > 0).reduce(0L, Math::addExact);
    }

    long below() {
      return amounts.stream().filter(amount -> amount < 0).reduce(0L, Math::addExact);
    }
  }

  /**
   * A month's blocks.
   *
   * @param said the month and its total
   */
  public record Bar(String said, List<Block> blocks) {
    public Bar {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * The chart of some months; months missing between the first and the last stand with zeros.
   *
   * @param months at least one, none twice
   */
  public static Chart<StackedMonths> chart(
      Caption caption, List<Phase> phases, List<Month> months, Yardstick yardstick) {
    List<Month> all = withoutGaps(phases.size(), months);
    return new Chart<>(
        caption,
        draw(phases, all, yardstick, WIDE),
        draw(phases, all, yardstick, NARROW),
        table(phases, all, yardstick));
  }

  private static List<Month> withoutGaps(int phases, List<Month> months) {
    SortedMap<YearMonth, Month> known = new TreeMap<>();
    for (Month month : months) {
      if (month.amounts.size() != phases || known.put(month.month, month) != null) {
        throw new IllegalArgumentException("month " + month);
      }
    }
    List<Long> nothing = IntStream.range(0, phases).mapToObj(phase -> 0L).toList();
    List<Month> all = new ArrayList<>();
    YearMonth last = known.lastKey();
    for (YearMonth at = known.firstKey(); !at.isAfter(last); at = at.plusMonths(1)) {
      all.add(known.getOrDefault(at, new Month(at, nothing)));
    }
    return all;
  }

  private static Table table(List<Phase> phases, List<Month> months, Yardstick yardstick) {
    List<String> heads = new ArrayList<>(phases.stream().map(Phase::name).toList());
    heads.add("All");
    List<Table.Row> rows =
        months.stream()
            .map(month -> row(MonthNames.full(month.month), month.amounts, yardstick))
            .toList();
    List<Long> totals =
        IntStream.range(0, phases.size())
            .mapToObj(
                phase ->
                    months.stream()
                        .map(month -> month.amounts.get(phase))
                        .reduce(0L, Math::addExact))
            .toList();
    return new Table("Month", heads, rows, List.of(row("All", totals, yardstick)));
  }

  private static Table.Row row(String head, List<Long> amounts, Yardstick yardstick) {
    List<Long> cells = new ArrayList<>(amounts);
    cells.add(amounts.stream().reduce(0L, Math::addExact));
    return Table.Row.of(head, cells.stream().map(yardstick::figure).toList());
  }

  private static StackedMonths draw(
      List<Phase> phases, List<Month> months, Yardstick yardstick, Frame least) {
    Ticks ticks =
        yardstick.ticks(
            months.stream().mapToLong(Month::below).min().orElse(0),
            months.stream().mapToLong(Month::above).max().orElse(0));
    Frame frame = least.withRoomFor(ticks, yardstick);
    Slots slots = Slots.of(months.size(), frame);
    List<Named> named = name(phases, months, slots);
    List<Callouts.Placed> placed =
        Callouts.lay(
            named.stream().map(n -> new Callouts.Flag(n.x, phases.get(n.phase).name)).toList(),
            frame.width());
    int rows = Callouts.rows(placed);
    int top = rows * Lettering.LINE + 18;
    int bottom = top + frame.plot();
    Scale scale = Scale.of(ticks, bottom, top);
    List<Callout> names = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      Named n = named.get(i);
      int foot = middle(months.get(n.month), n.phase, scale);
      names.add(placed.get(i).callout(foot, slots.x(n.month) + slots.inset(), rows));
    }
    YearMonth first = months.get(0).month;
    return new StackedMonths(
        frame.width(),
        bottom + FOOT,
        frame.left(),
        frame.end(),
        scale.at(0),
        bottom,
        Rule.at(ticks, scale, yardstick),
        bars(phases, months, slots, scale, yardstick),
        MonthMark.along(
            first,
            months.get(months.size() - 1).month,
            slots.room(),
            month -> slots.x(MonthNames.between(first, month)) + slots.bar() / 2),
        names);
  }

  private static List<Bar> bars(
      List<Phase> phases, List<Month> months, Slots slots, Scale scale, Yardstick yardstick) {
    List<Bar> bars = new ArrayList<>();
    for (Month month : months) {
      bars.add(
          new Bar(
              MonthNames.full(month.month) + ": " + yardstick.words(month.total()),
              blocks(phases, month, slots.x(bars.size()), slots.bar(), scale)));
    }
    return bars;
  }

  private static List<Block> blocks(
      List<Phase> phases, Month month, int x, int width, Scale scale) {
    List<Block> blocks = new ArrayList<>();
    for (int phase = 0; phase < phases.size(); phase++) {
      long amount = month.amounts.get(phase);
      long start = under(month, phase);
      int edge = scale.at(start);
      int other = scale.at(start + amount);
      if (edge != other) {
        blocks.add(
            new Block(
                x, Math.min(edge, other), width, Math.abs(edge - other), phases.get(phase).hatch));
      }
    }
    return blocks;
  }

  /** What lies between the zero line and a phase's block, on its side of the line. */
  private static long under(Month month, int phase) {
    long amount = month.amounts.get(phase);
    return month.amounts.subList(0, phase).stream()
        .filter(other -> Long.signum(other) == Long.signum(amount))
        .reduce(0L, Math::addExact);
  }

  private static int middle(Month month, int phase, Scale scale) {
    long start = under(month, phase);
    return (scale.at(start) + scale.at(start + month.amounts.get(phase))) / 2;
  }

  /** Which month a phase is named on, and where its leader stands. */
  private record Named(int phase, int month, int x) {}

  private static List<Named> name(List<Phase> phases, List<Month> months, Slots slots) {
    int[] chosen = NamedMonths.choose(phases.size(), months);
    List<Named> named = new ArrayList<>();
    for (int phase = 0; phase < chosen.length; phase++) {
      int month = chosen[phase];
      if (month >= 0) {
        long above =
            Arrays.stream(chosen, phase + 1, chosen.length).filter(m -> m == month).count();
        // The deepest leader runs outermost, so that none has to cross another.
        named.add(new Named(phase, month, slots.x(month) - slots.lead((int) above)));
      }
    }
    return named;
  }
}
