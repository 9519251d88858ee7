package ribband.site;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ledger.PhaseRow;
import ribband.ledger.Sums;
import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * How far along the drawn hull she is, by the hours planned.
 *
 * @param from where the part begins that is told of, 40 to 960
 * @param mark where she stands, 40 to 960
 * @param share of the plan worked, said
 * @param planned hours of all phases that have a plan, said
 * @param said the drawing in words, for who cannot see it
 */
record Hull(int from, int mark, String share, String planned, String said) {
  private static final int FIRST_STATION = 40;
  private static final int LENGTH = 920;

  /** To date; none without a plan. */
  static List<Hull> of(Book book) {
    Sums whole = book.ledger().whole();
    return of(book, whole, whole);
  }

  /**
   * Up to a day, with what was won since another; none without a plan.
   *
   * @param before all that was worked before the part told of
   */
  static List<Hull> of(Book book, Sums before, Sums toDate) {
    List<PhaseRow> phases = book.ledger().phases();
    Hours planned =
        Hours.sum(phases.stream().flatMap(row -> row.phase().hours().stream()).toList());
    if (planned.isZero()) {
      return List.of();
    }
    Hours worked = workedAgainstPlan(phases, toDate);
    String share = Saying.share(worked.seconds(), planned.seconds());
    return List.of(
        new Hull(
            station(workedAgainstPlan(phases, before), planned),
            station(worked, planned),
            share,
            Saying.hours(planned),
            share + " of the planned hours are worked"));
  }

  /** Hours beyond a phase's plan bring the boat no nearer to the water. */
  private static Hours workedAgainstPlan(List<PhaseRow> phases, Sums sums) {
    List<Hours> worked = new ArrayList<>();
    for (PhaseRow row : phases) {
      Hours hours = sums.hoursOf(row.phase().id());
      Optional<Hours> plan = row.phase().hours();
      plan.ifPresent(p -> worked.add(p.compareTo(hours) < 0 ? p : hours));
    }
    return Hours.sum(worked);
  }

  private static int station(Hours part, Hours whole) {
    return FIRST_STATION
        + BigInteger.valueOf(part.seconds())
            .multiply(BigInteger.valueOf(LENGTH))
            .divide(BigInteger.valueOf(whole.seconds()))
            .intValueExact();
  }
}
