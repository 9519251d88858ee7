package ribband.ledger;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ribband.journal.Carried;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Ordered;
import ribband.measure.Week;

/**
 * Every total of a journal, under one selection. The sums by month, by phase and by entry are
 * compared when it is made, so a ledger that exists adds up.
 *
 * @param carried what was counted from before the journal
 * @param whole all of it, carried work included
 * @param nights each date with hours, and how long it was, in order
 * @param bought every purchase, the dearest first, the earliest first among equals
 * @param made pieces by day and kind, in order
 */
public record Ledger(
    Sums carried,
    Sums whole,
    Map<LocalDate, Hours> nights,
    List<Bought> bought,
    List<Made> made,
    List<Row<YearMonth>> months,
    List<Row<Year>> years,
    List<Row<Week>> weeks,
    List<Row<Entry>> entries,
    List<PhaseRow> phases) {
  public Ledger {
    nights = Ordered.copy(nights);
    bought = List.copyOf(bought);
    made = List.copyOf(made);
    months = List.copyOf(months);
    years = List.copyOf(years);
    weeks = List.copyOf(weeks);
    entries = List.copyOf(entries);
    phases = List.copyOf(phases);
  }

  public static Ledger of(Journal journal) {
    return of(journal, Selection.ALL);
  }

  public static Ledger of(Journal journal, Selection selection) {
    List<Line> lines = new ArrayList<>();
    for (Entry entry : journal.entries()) {
      Line line = Line.of(entry, selection);
      if (selection.covers(entry.date()) && (selection.phase().isEmpty() || line.counts())) {
        lines.add(line);
      }
    }
    Sums carried = carried(journal.project().carried(), selection);
    Sums whole = total(carried, lines);
    Ledger ledger =
        new Ledger(
            carried,
            whole,
            nights(lines),
            Bought.of(journal, selection),
            Made.of(journal, selection),
            rows(Periods.MONTHS, lines, carried),
            rows(Periods.YEARS, lines, carried),
            rows(Periods.WEEKS, lines, carried),
            entryRows(lines, carried),
            phaseRows(journal, selection, lines, whole));
    ledger.verify();
    return ledger;
  }

  private static Sums carried(Carried carried, Selection selection) {
    if (!selection.takesCarried()) {
      return Sums.NONE;
    }
    Map<String, Hours> hours = new LinkedHashMap<>(carried.hours());
    hours.keySet().removeIf(phase -> !selection.covers(phase));
    Map<String, Money> cost = new LinkedHashMap<>(carried.cost());
    cost.keySet().removeIf(phase -> !selection.covers(phase));
    // How many carried sessions fell to one phase is not known.
    int sessions = selection.phase().isPresent() ? 0 : carried.sessions();
    return new Sums(sessions, hours, cost);
  }

  private static Sums total(Sums start, List<Line> lines) {
    Sums total = start;
    for (Line line : lines) {
      total = total.plus(line.sums());
    }
    return total;
  }

  private static Map<LocalDate, Hours> nights(List<Line> lines) {
    Map<LocalDate, Hours> nights = new TreeMap<>();
    for (Line line : lines) {
      if (line.isNight()) {
        nights.merge(line.entry().date(), line.sums().totalHours(), Hours::plus);
      }
    }
    return nights;
  }

  private static <P extends Comparable<? super P>> List<Row<P>> rows(
      Periods<P> periods, List<Line> lines, Sums carried) {
    Map<P, List<Line>> byPeriod =
        lines.stream()
            .collect(Collectors.groupingBy(line -> periods.of().apply(line.entry().date())));
    List<Row<P>> rows = new ArrayList<>();
    Sums toDate = carried;
    for (Map.Entry<P, List<Line>> period : periods.filled(byPeriod, none -> List.of()).entrySet()) {
      Sums sums = total(Sums.NONE, period.getValue());
      toDate = toDate.plus(sums);
      int nights = nights(period.getValue()).size();
      rows.add(new Row<>(period.getKey(), sums, nights, toDate, OptionalInt.empty()));
    }
    return ranked(rows);
  }

  /** spec: competition ranking (1, 2, 2, 4) among the rows shown. */
  private static <P> List<Row<P>> ranked(List<Row<P>> rows) {
    List<Hours> most = rows.stream().map(Row::hours).sorted((a, b) -> b.compareTo(a)).toList();
    Map<Hours, Integer> ranks = new LinkedHashMap<>();
    for (int i = 0; i < most.size(); i++) {
      ranks.putIfAbsent(most.get(i), i + 1);
    }
    return rows.stream()
        .map(
            row ->
                new Row<>(
                    row.period(),
                    row.sums(),
                    row.nights(),
                    row.toDate(),
                    OptionalInt.of(ranks.get(row.hours()))))
        .toList();
  }

  private static List<Row<Entry>> entryRows(List<Line> lines, Sums carried) {
    List<Row<Entry>> rows = new ArrayList<>();
    Sums toDate = carried;
    for (Line line : lines) {
      toDate = toDate.plus(line.sums());
      int nights = line.isNight() ? 1 : 0;
      rows.add(new Row<>(line.entry(), line.sums(), nights, toDate, OptionalInt.empty()));
    }
    return rows;
  }

  /** spec: phases in their order, zero rows too, {@code unsorted} last and only if not zero. */
  private static List<PhaseRow> phaseRows(
      Journal journal, Selection selection, List<Line> lines, Sums whole) {
    List<Phase> phases = new ArrayList<>(journal.phases());
    String unsorted = Phase.UNSORTED.id();
    if (!whole.hoursOf(unsorted).isZero() || !whole.costOf(unsorted).isZero()) {
      phases.add(Phase.UNSORTED);
    }
    return phases.stream()
        .filter(phase -> selection.covers(phase.id()))
        .map(
            phase ->
                new PhaseRow(
                    phase,
                    sessionsIn(phase.id(), lines),
                    whole.hoursOf(phase.id()),
                    whole.costOf(phase.id())))
        .toList();
  }

  private static int sessionsIn(String phase, List<Line> lines) {
    return (int) lines.stream().filter(line -> line.sums().hours().containsKey(phase)).count();
  }

  private void verify() {
    Sums byMonth = carried;
    for (Row<YearMonth> month : months) {
      byMonth = byMonth.plus(month.sums());
    }
    Hours phaseHours = Hours.sum(phases.stream().map(PhaseRow::hours).toList());
    Money phaseCost = Money.sum(phases.stream().map(PhaseRow::cost).toList());
    boolean agree =
        byMonth.totalHours().equals(whole.totalHours())
            && byMonth.totalCost().equals(whole.totalCost())
            && phaseHours.equals(whole.totalHours())
            && phaseCost.equals(whole.totalCost())
            && byMonth.sessions() == whole.sessions();
    if (!agree) {
      throw new IllegalStateException(
          "totals do not agree: by month " + byMonth + ", whole " + whole + ", by phase " + phases);
    }
  }

  /**
   * The ids of the phases with hours in a period, most hours first; of equal ones the phase that
   * stands first in the project.
   */
  public List<String> mostFirst(Row<?> period) {
    return phaseIds().stream()
        .filter(id -> !period.sums().hoursOf(id).isZero())
        .sorted(Comparator.comparing((String id) -> period.sums().hoursOf(id)).reversed())
        .toList();
  }

  /** The ids of all phases that have a figure, in the order of the phase rows. */
  public Set<String> phaseIds() {
    return phases.stream()
        .map(row -> row.phase().id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
