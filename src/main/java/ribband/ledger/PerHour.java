package ribband.ledger;

import java.math.BigInteger;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;

/** What an hour of work cost in money. */
public final class PerHour {
  private static final BigInteger SECONDS = BigInteger.valueOf(3600);

  private PerHour() {}

  /** Money for each hour, to the nearest minor unit, half away from zero; empty without hours. */
  public static Optional<Money> of(Money money, Hours hours) {
    if (hours.isZero()) {
      return Optional.empty();
    }
    BigInteger doubled = BigInteger.valueOf(money.minor()).abs().multiply(SECONDS).shiftLeft(1);
    BigInteger twice = BigInteger.valueOf(hours.seconds()).shiftLeft(1);
    BigInteger rounded = doubled.add(BigInteger.valueOf(hours.seconds())).divide(twice);
    long minor = rounded.longValueExact();
    return Optional.of(new Money(money.isNegative() ? -minor : minor));
  }
}
