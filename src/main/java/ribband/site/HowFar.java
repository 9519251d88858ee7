package ribband.site;

import java.util.List;
import ribband.ahead.ForecastWords;
import ribband.ledger.Ledger;
import ribband.measure.Saying;

/**
 * How far she is.
 *
 * @param nights with hours since the journal began
 * @param money to date; empty for none or hidden
 * @param hull none or one
 * @param ahead how much is left and when it may be done; empty where nobody can tell
 * @param since when she was begun; may be empty
 */
record HowFar(
    String hours,
    String unit,
    String nights,
    String nightsUnit,
    String money,
    List<Hull> hull,
    String ahead,
    String since) {

  static HowFar of(Book book) {
    Ledger ledger = book.ledger();
    int nights = ledger.nights().size();
    return new HowFar(
        Saying.hoursInColumn(ledger.whole().totalHours()),
        Saying.hourOrHours(ledger.whole().totalHours()),
        Saying.count(nights),
        nights == 1 ? "night" : "nights",
        book.showsMoney() ? book.words().money(ledger.whole().totalCost()) : "",
        Hull.of(book),
        book.ahead().flatMap(a -> ForecastWords.inShort(a.forecast())).orElse(""),
        book.journal().project().started().map(Saying::day).orElse(""));
  }
}
