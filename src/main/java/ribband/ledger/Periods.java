package ribband.ledger;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import ribband.measure.Week;

/**
 * A way to cut time.
 *
 * @param of the period a day lies in
 * @param next the period after one
 */
record Periods<P extends Comparable<? super P>>(Function<LocalDate, P> of, UnaryOperator<P> next) {
  static final Periods<YearMonth> MONTHS = new Periods<>(YearMonth::from, m -> m.plusMonths(1));
  static final Periods<Year> YEARS = new Periods<>(Year::from, y -> y.plusYears(1));
  static final Periods<Week> WEEKS = new Periods<>(Week::of, Week::next);

  /** spec: periods without an entry between the first and the last stand with zeros. */
  <V> Map<P, V> filled(Map<P, V> some, Function<P, V> none) {
    TreeMap<P, V> all = new TreeMap<>(Comparator.naturalOrder());
    all.putAll(some);
    if (!all.isEmpty()) {
      for (P p = all.firstKey(); p.compareTo(all.lastKey()) < 0; p = next.apply(p)) {
        all.computeIfAbsent(p, none);
      }
    }
    return all;
  }
}
