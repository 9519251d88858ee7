package ribband.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;

/**
 * How amounts of money are said on this site: not at all where the project hides them.
 *
 * @param shown whether any amount may be said
 */
record Words(Currency currency, boolean shown) {
  /** The amount, or an empty text where money is hidden. */
  String money(Money amount) {
    return shown ? Saying.money(amount, currency) : "";
  }

  /** The amount, a dash for none at all. */
  String moneyOrDash(Money amount) {
    return amount.isZero() ? shown ? "–" : "" : money(amount);
  }

  String money(Optional<Money> amount) {
    return amount.map(this::money).orElse("");
  }

  /** {@code $12 went out} or {@code $12 came back}; empty where hidden or none. */
  Optional<String> moved(Money amount) {
    if (!shown || amount.isZero()) {
      return Optional.empty();
    }
    Money positive = amount.isNegative() ? Money.ZERO.minus(amount) : amount;
    return Optional.of(money(positive) + (amount.isNegative() ? " came back" : " went out"));
  }

  /** With a capital letter in front, as a heading has it. */
  static String capitalised(String name) {
    int first = name.offsetByCodePoints(0, 1);
    return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
  }

  static String sentence(List<String> parts) {
    return String.join(" ", parts);
  }
}
