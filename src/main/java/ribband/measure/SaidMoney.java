package ribband.measure;

import java.util.Objects;
import java.util.Optional;

/**
 * How amounts of money are said where a journal may hide them: then not at all.
 *
 * @param shown whether any amount may be said
 */
public record SaidMoney(Currency currency, boolean shown) {
  public SaidMoney {
    Objects.requireNonNull(currency);
  }

  /** The amount, or an empty text where money is hidden. */
  public String money(Money amount) {
    return shown ? Saying.money(amount, currency) : "";
  }

  /** The amount, a dash for none at all. */
  public String moneyOrDash(Money amount) {
    return amount.isZero() ? shown ? "–" : "" : money(amount);
  }

  public String money(Optional<Money> amount) {
    return amount.map(this::money).orElse("");
  }

  /** {@code $12 went out} or {@code $12 came back}; empty where hidden or none. */
  public Optional<String> moved(Money amount) {
    if (!shown || amount.isZero()) {
      return Optional.empty();
    }
    Money positive = amount.isNegative() ? Money.ZERO.minus(amount) : amount;
    return Optional.of(money(positive) + (amount.isNegative() ? " came back" : " went out"));
  }
}
