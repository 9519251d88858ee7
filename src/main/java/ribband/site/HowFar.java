package ribband.site;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ahead.ForecastWords;
import ribband.ledger.Ledger;
import ribband.ledger.PhaseRow;
import ribband.measure.Hours;
import ribband.measure.Saying;

/**
 * How far she is, by the hours planned.
 *
 * @param money to date; empty for none or hidden
 * @param planned of all phases that have a plan; empty without one
 * @param progress 0 to 1000, thousandths of the plan worked; -1 without a plan
 * @param mark where that is along the drawn hull, 40 to 960
 * @param said the same in words, for who cannot see the hull
 * @param ahead how much is left and when it may be done; empty where nobody can tell
 * @param since when she was begun, in words; may be empty
 */
record HowFar(
    String hours,
    String unit,
    String sessions,
    String money,
    String planned,
    String share,
    int progress,
    int mark,
    String said,
    String ahead,
    String since) {
  private static final int FIRST_STATION = 40;
  private static final int LENGTH = 920;

  static HowFar of(Book book) {
    Ledger ledger = book.ledger();
    Hours planned = planned(ledger.phases());
    Hours worked = workedAgainstPlan(ledger.phases());
    boolean isPlanned = !planned.isZero();
    int progress = isPlanned ? thousandths(worked, planned) : -1;
    String share = Saying.share(worked.seconds(), planned.seconds());
    return new HowFar(
        Saying.hours(ledger.whole().totalHours()),
        Saying.hourOrHours(ledger.whole().totalHours()),
        Saying.counted(ledger.whole().sessions(), "session", "sessions"),
        book.showsMoney() ? book.words().money(ledger.whole().totalCost()) : "",
        isPlanned ? Saying.hours(planned) : "",
        isPlanned ? share : "",
        progress,
        FIRST_STATION + progress * LENGTH / 1000,
        share + " of the planned hours are worked",
        book.ahead().flatMap(a -> ForecastWords.inShort(a.forecast())).orElse(""),
        book.journal().project().started().map(day -> "Begun " + Saying.day(day)).orElse(""));
  }

  private static Hours planned(List<PhaseRow> phases) {
    return Hours.sum(phases.stream().flatMap(row -> row.phase().hours().stream()).toList());
  }

  /** Hours beyond a phase's plan bring the boat no nearer to the water. */
  private static Hours workedAgainstPlan(List<PhaseRow> phases) {
    List<Hours> worked = new ArrayList<>();
    for (PhaseRow row : phases) {
      Optional<Hours> plan = row.phase().hours();
      plan.ifPresent(p -> worked.add(p.compareTo(row.hours()) < 0 ? p : row.hours()));
    }
    return Hours.sum(worked);
  }

  private static int thousandths(Hours part, Hours whole) {
    return BigInteger.valueOf(part.seconds())
        .multiply(BigInteger.valueOf(1000))
        .divide(BigInteger.valueOf(whole.seconds()))
        .intValueExact();
  }
}
