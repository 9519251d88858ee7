package ribband.measure;

import java.math.BigDecimal;
import java.util.Collection;

/**
 * An amount in the project's one currency, exact.
 *
 * @param minor in the currency's smallest unit (cents where it has two places); below zero is money
 *     that came back
 */
public record Money(long minor) implements Comparable<Money> {
  public static final Money ZERO = new Money(0);

  /** The sum of all, {@link #ZERO} of none. */
  public static Money sum(Collection<Money> all) {
    return all.stream().reduce(ZERO, Money::plus);
  }

  public Money plus(Money other) {
    return new Money(Math.addExact(minor, other.minor));
  }

  public Money minus(Money other) {
    return new Money(Math.subtractExact(minor, other.minor));
  }

  public boolean isZero() {
    return minor == 0;
  }

  public boolean isNegative() {
    return minor < 0;
  }

  /** For data files: with as many places as the currency has. */
  public String decimal(Currency currency) {
    return BigDecimal.valueOf(minor, currency.digits()).toPlainString();
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(minor, other.minor);
  }
}
