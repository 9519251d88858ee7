package ribband.ledger;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.measure.Money;
import ribband.measure.Saying;

/**
 * The running investment: every amount spent, by date.
 *
 * @param lines they add up to the whole cost; the last running total is that
 */
public record Purchases(List<Spent> lines) {
  public Purchases {
    lines = List.copyOf(lines);
  }

  /**
   * One amount.
   *
   * @param date empty for what was spent before the journal
   * @param entry where it is written; empty for carried and private money
   * @param what the item bought; empty where the entry names none, or may not be shown
   * @param from who sold it
   * @param phase empty where several are thrown together
   * @param kind where it comes from
   */
  public record Spent(
      Optional<LocalDate> date,
      Optional<Entry> entry,
      Optional<Purchase> what,
      Optional<String> phase,
      Kind kind,
      Money amount,
      Money running) {
    Spent withRunning(Money total) {
      return new Spent(date, entry, what, phase, kind, amount, total);
    }

    /** {@code 14 March 2026}; {@code March 2026} of private money; {@code Before} of carried. */
    public String when() {
      return switch (kind) {
        case CARRIED -> "Before";
        case PRIVATE -> date.map(day -> Saying.month(YearMonth.from(day))).orElse("");
        case ITEM, REST -> date.map(Saying::day).orElse("");
      };
    }

    public Optional<String> from() {
      return what.flatMap(Purchase::from);
    }
  }

  /** Where an amount comes from. */
  public enum Kind {
    CARRIED,
    ITEM,
    REST,
    PRIVATE
  }

  public static Purchases of(Journal journal) {
    return of(journal, spent -> !spent.amount().isZero());
  }

  /** The same with what was bought and has no price of its own. */
  public static Purchases withUnpriced(Journal journal) {
    return of(journal, spent -> !spent.amount().isZero() || spent.kind() == Kind.ITEM);
  }

  private static Purchases of(Journal journal, Predicate<Spent> listed) {
    List<Spent> lines = new ArrayList<>();
    journal
        .project()
        .carried()
        .cost()
        .forEach(
            (phase, amount) ->
                lines.add(
                    line(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(phase),
                        Kind.CARRIED,
                        amount)));
    lines.addAll(byDate(journal));
    return new Purchases(running(lines.stream().filter(listed).toList()));
  }

  private static List<Spent> byDate(Journal journal) {
    Map<YearMonth, List<Spent>> months = new TreeMap<>();
    Map<YearMonth, Money> hidden = new TreeMap<>();
    for (Entry entry : journal.entries()) {
      YearMonth month = YearMonth.from(entry.date());
      for (Outlay outlay : entry.outlays()) {
        if (entry.isPublic()) {
          months.computeIfAbsent(month, m -> new ArrayList<>()).add(shown(entry, outlay));
        } else {
          hidden.merge(month, outlay.amount(), Money::plus);
        }
      }
    }
    // spec: the purchases of private entries show as one 'not listed' line a month.
    hidden.forEach(
        (month, amount) ->
            months
                .computeIfAbsent(month, m -> new ArrayList<>())
                .add(
                    line(
                        Optional.of(month.atEndOfMonth()),
                        Optional.empty(),
                        Optional.empty(),
                        Kind.PRIVATE,
                        amount)));
    return months.values().stream().flatMap(List::stream).toList();
  }

  private static Spent shown(Entry entry, Outlay outlay) {
    return new Spent(
        Optional.of(entry.date()),
        Optional.of(entry),
        outlay.purchase(),
        Optional.of(outlay.phase()),
        outlay.purchase().isPresent() ? Kind.ITEM : Kind.REST,
        outlay.amount(),
        Money.ZERO);
  }

  private static Spent line(
      Optional<LocalDate> date,
      Optional<Entry> entry,
      Optional<String> phase,
      Kind kind,
      Money amount) {
    return new Spent(date, entry, Optional.empty(), phase, kind, amount, Money.ZERO);
  }

  private static List<Spent> running(List<Spent> lines) {
    List<Spent> running = new ArrayList<>();
    Money total = Money.ZERO;
    for (Spent line : lines) {
      total = total.plus(line.amount());
      running.add(line.withRunning(total));
    }
    return running;
  }

  /** What went to each supplier, the most first; amounts with none under an empty name, last. */
  public Map<String, Money> bySupplier() {
    Map<String, Money> sums = new TreeMap<>();
    lines.forEach(line -> sums.merge(line.from().orElse(""), line.amount(), Money::plus));
    Map<String, Money> sorted = new LinkedHashMap<>();
    sums.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, Money> e) -> e.getKey().isEmpty())
                .thenComparing(Map.Entry.<String, Money>comparingByValue().reversed()))
        .forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return sorted;
  }
}
