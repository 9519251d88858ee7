package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.measure.Hours;
import ribband.measure.Ordered;

/**
 * Nights that readers hear of one by one, and what the others add to their months.
 *
 * @param nights each date on which an entry that may be shown has hours, with all hours of the day,
 *     in order
 * @param untold the hours of all other nights, by month, in order; no month without any
 */
record ShownNights(Map<LocalDate, Hours> nights, Map<YearMonth, Hours> untold) {
  ShownNights {
    nights = Ordered.copy(nights);
    untold = Ordered.copy(untold);
  }

  /** spec: private entries are counted, never shown; so a night of theirs alone has no day. */
  static ShownNights of(Book book) {
    Set<LocalDate> told =
        book.album().shown().stream()
            .map(Leaf::entry)
            .filter(entry -> !entry.totalHours().isZero())
            .map(Entry::date)
            .collect(Collectors.toSet());
    Map<LocalDate, Hours> nights = new TreeMap<>();
    Map<YearMonth, Hours> untold = new TreeMap<>();
    book.ledger()
        .nights()
        .forEach(
            (date, hours) -> {
              if (told.contains(date)) {
                nights.put(date, hours);
              } else {
                untold.merge(YearMonth.from(date), hours, Hours::plus);
              }
            });
    return new ShownNights(nights, untold);
  }

  boolean has(LocalDate date) {
    return nights.containsKey(date);
  }
}
