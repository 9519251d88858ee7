package ribband.site;

import java.util.List;
import ribband.ahead.ForecastWords;
import ribband.ledger.Ledger;
import ribband.measure.Saying;

/**
 * How far she is.
 *
 * @param times nights with hours; sessions where some were before the journal
 * @param timesUnit what these are
 * @param money to date; empty for none or hidden
 * @param hull none or one
 * @param ahead how much is left and when it may be done; empty where nobody can tell
 * @param since when she was begun; may be empty
 */
record HowFar(
    String hours,
    String unit,
    String times,
    String timesUnit,
    String money,
    List<Hull> hull,
    String ahead,
    String since) {

  static HowFar of(Book book) {
    Ledger ledger = book.ledger();
    boolean carried = !ledger.carried().totalHours().isZero();
    int times = carried ? ledger.whole().sessions() : ledger.nights().size();
    String one = carried ? "session" : "night";
    return new HowFar(
        Saying.hoursInColumn(ledger.whole().totalHours()),
        Saying.hourOrHours(ledger.whole().totalHours()),
        Saying.count(times),
        times == 1 ? one : one + "s",
        book.showsMoney() ? book.words().money(ledger.whole().totalCost()) : "",
        Hull.of(book),
        book.ahead().flatMap(a -> ForecastWords.inShort(a.forecast())).orElse(""),
        book.journal().project().started().map(Saying::day).orElse(""));
  }
}
