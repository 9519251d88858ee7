package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.ledger.Sums;
import ribband.pieces.PieceCount;
import ribband.plan.EarnedValue;
import ribband.plan.Standing;
import ribband.plan.StandingWords;

/**
 * How far along the drawn hull she is: what is complete of all phases with planned hours.
 *
 * @param from where the part begins that is told of, 40 to 960
 * @param mark where she stands, 40 to 960
 * @param share of her that is built, said
 * @param said the drawing in words, for who cannot see it
 */
record Hull(int from, int mark, String share, String said) {
  private static final int FIRST_STATION = 40;
  private static final int LENGTH = 920;

  /** To date; none without a plan. */
  static List<Hull> of(Book book) {
    return complete(book.whole().standing()).map(complete -> of(complete, complete)).stream()
        .toList();
  }

  /** At a month's end, with what was won in it; none without a plan. */
  static List<Hull> of(Book book, Row<YearMonth> month) {
    YearMonth before = month.period().minusMonths(1);
    Sums carried = book.month(before).map(Row::toDate).orElse(book.ledger().carried());
    Optional<BigFraction> from = complete(book, carried, before.atEndOfMonth());
    Optional<BigFraction> to = complete(book, month.toDate(), month.period().atEndOfMonth());
    return from.flatMap(f -> to.map(t -> of(f, t))).stream().toList();
  }

  private static Optional<BigFraction> complete(Book book, Sums toDate, LocalDate day) {
    List<PhaseRow> rows = book.ledger().phases().stream().map(row -> as(row, toDate)).toList();
    return complete(Standing.of(book.journal(), rows, PieceCount.of(book.journal(), day), day));
  }

  private static PhaseRow as(PhaseRow row, Sums toDate) {
    String id = row.phase().id();
    return new PhaseRow(row.phase(), row.sessions(), toDate.hoursOf(id), toDate.costOf(id));
  }

  private static Optional<BigFraction> complete(Standing standing) {
    return standing.whole().map(EarnedValue::complete);
  }

  private static Hull of(BigFraction from, BigFraction to) {
    String share = StandingWords.share(to);
    return new Hull(station(from), station(to), share, "She is " + share + " built, by the plan");
  }

  private static int station(BigFraction share) {
    return FIRST_STATION + share.multiply(LENGTH).intValue();
  }
}
