package ribband.ledger;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Week;

/**
 * The best and the longest of a ledger.
 *
 * @param bestMonth most hours, the earliest of equals; empty without hours
 * @param nights by hours, the longest first, the earliest first among equals
 * @param runOfNights the longest run of days with work
 * @param runOfWeeks the longest run of ISO weeks with work
 * @param gap the longest stretch of days without work between two nights; empty if never a day
 * @param bought every purchase, the dearest first, the earliest first among equals
 * @param mostPieces most of one kind on one day, the earliest of equals; empty if none was made
 */
public record Records(
    Optional<Row<YearMonth>> bestMonth,
    List<Night> nights,
    Optional<Stretch> runOfNights,
    Optional<Stretch> runOfWeeks,
    Optional<Stretch> gap,
    List<Bought> bought,
    Optional<Made> mostPieces) {
  public Records {
    nights = List.copyOf(nights);
    bought = List.copyOf(bought);
  }

  /** A date with hours. */
  public record Night(LocalDate date, Hours hours) {}

  /**
   * Days in a row.
   *
   * @param length days, or weeks for a run of weeks; 1 or more
   */
  public record Stretch(LocalDate from, LocalDate to, int length) {}

  public static Records of(Ledger ledger) {
    List<LocalDate> days = List.copyOf(ledger.nights().keySet());
    return new Records(
        ledger.months().stream()
            .filter(month -> !month.hours().isZero())
            .min(Comparator.comparing(month -> month.rank().orElseThrow())),
        ledger.nights().entrySet().stream()
            .map(night -> new Night(night.getKey(), night.getValue()))
            .sorted(Comparator.comparing(Night::hours).reversed().thenComparing(Night::date))
            .toList(),
        runOfNights(days),
        runOfWeeks(days),
        gap(days),
        ledger.bought(),
        mostPieces(ledger.made()));
  }

  private static Optional<Stretch> runOfNights(List<LocalDate> days) {
    List<Stretch> runs = new ArrayList<>();
    LocalDate start = null;
    LocalDate last = null;
    for (LocalDate day : days) {
      if (last == null || !last.plusDays(1).equals(day)) {
        start = day;
      }
      last = day;
      runs.add(new Stretch(start, day, (int) (day.toEpochDay() - start.toEpochDay()) + 1));
    }
    return longest(runs);
  }

  private static Optional<Stretch> runOfWeeks(List<LocalDate> days) {
    List<Stretch> runs = new ArrayList<>();
    Week last = null;
    LocalDate start = null;
    int length = 0;
    for (LocalDate day : days) {
      Week week = Week.of(day);
      if (last == null || week.compareTo(last) > 0) {
        boolean goesOn = last != null && last.next().equals(week);
        start = goesOn ? start : day;
        length = goesOn ? length + 1 : 1;
      }
      last = week;
      runs.add(new Stretch(start, day, length));
    }
    return longest(runs);
  }

  private static Optional<Stretch> gap(List<LocalDate> days) {
    List<Stretch> gaps = new ArrayList<>();
    for (int i = 1; i < days.size(); i++) {
      LocalDate from = days.get(i - 1).plusDays(1);
      LocalDate to = days.get(i).minusDays(1);
      int length = (int) (to.toEpochDay() - from.toEpochDay()) + 1;
      if (length > 0) {
        gaps.add(new Stretch(from, to, length));
      }
    }
    return longest(gaps);
  }

  /** The longest; among equals the earliest to begin, in its full length. */
  private static Optional<Stretch> longest(List<Stretch> stretches) {
    return stretches.stream()
        .max(
            Comparator.comparingInt(Stretch::length)
                .thenComparing(Stretch::from, Comparator.reverseOrder())
                .thenComparing(Stretch::to));
  }

  private static Optional<Made> mostPieces(List<Made> made) {
    return made.stream()
        .filter(one -> one.count() > 0)
        // Of equals, max takes the last and min the first.
        .min(Comparator.comparingLong(Made::count).reversed());
  }

  /** The dearest purchase. */
  public Optional<Bought> dearest() {
    return bought.stream().findFirst();
  }

  /** The longest night. */
  public Optional<Night> longestNight() {
    return nights.stream().findFirst();
  }

  /** Months or years by rank, those without hours left out; of equals the earlier first. */
  public static <P extends Comparable<? super P>> List<Row<P>> byRank(List<Row<P>> rows) {
    return rows.stream()
        .filter(row -> !row.hours().isZero())
        .sorted(
            Comparator.<Row<P>>comparingInt(row -> row.rank().orElseThrow())
                .thenComparing(Row::period))
        .toList();
  }
}
