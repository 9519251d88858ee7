package ribband.past;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.past.HoursCell.Unit;

/** The sums of the rows so far, against which a row of totals is held; for one reading. */
final class RunningSums {
  private static final Set<String> WORDS =
      Set.of("total", "totals", "sum", "subtotal", "grand total", "in all", "all");

  private final MoneyCell money;
  private final Unit unit;
  private Hours hours = Hours.ZERO;
  private Money cost = Money.ZERO;

  RunningSums(MoneyCell money, Unit unit) {
    this.money = money;
    this.unit = unit;
  }

  void add(PastSession session) {
    hours = hours.plus(session.hours());
    cost = cost.plus(session.cost());
  }

  /** Whether the date's cell says that the row is none of a session. */
  static boolean isNamed(Row row, What dated) {
    String word = row.text(dated).toLowerCase(Locale.ROOT).replaceAll("[:.]$", "");
    return WORDS.contains(word) || word.endsWith(" total") || word.startsWith("total ");
  }

  /** {@code 4¼ h and $23.70}. */
  String told() {
    return Saying.hours(hours) + " h" + (cost.isZero() ? "" : " and " + money.said(cost));
  }

  /** Whether a row without a date tells these sums, and nothing else. */
  boolean areIn(Row row) {
    Optional<Hours> rowHours = hours(row.text(What.HOURS));
    Optional<Money> rowCost = cost(row.text(What.COST));
    boolean told = !row.text(What.HOURS).isEmpty() || !row.text(What.COST).isEmpty();
    return told
        && rowHours.filter(hours::equals).isPresent() == !row.text(What.HOURS).isEmpty()
        && rowCost.filter(cost::equals).isPresent() == !row.text(What.COST).isEmpty();
  }

  private Optional<Hours> hours(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(HoursCell.read(text, unit));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  private Optional<Money> cost(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(money.read(text));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }
}
