package ribband.measure;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two numbers that go together, resin first: {@code 2 to 1}, {@code 1.15 to 0.97}.
 *
 * @param first more than 0
 * @param second more than 0
 */
public record Proportion(BigFraction first, BigFraction second) {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "([0-9]{1,4}(?:\\.[0-9]{1,4})?)\\s*(?:to|:)\\s*([0-9]{1,4}(?:\\.[0-9]{1,4})?)");

  public Proportion {
    if (first.signum() <= 0 || second.signum() <= 0) {
      throw new IllegalArgumentException("proportion " + first + " to " + second);
    }
  }

  /** Each number times its fellow. */
  public Proportion times(Proportion other) {
    return new Proportion(first.multiply(other.first), second.multiply(other.second));
  }

  /** Each number divided by its fellow. */
  public Proportion dividedBy(Proportion other) {
    return new Proportion(first.divide(other.first), second.divide(other.second));
  }

  public BigFraction sum() {
    return first.add(second);
  }

  /** Reads {@code 1.15 to 0.97}. */
  public static Proportion read(String text) throws Unreadable {
    return read(text, "1.15 to 0.97");
  }

  static Proportion read(String text, String example) throws Unreadable {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new Unreadable("is not two numbers", "write them as " + example);
    }
    BigFraction first = Numbers.decimal(new BigDecimal(written.group(1)));
    BigFraction second = Numbers.decimal(new BigDecimal(written.group(2)));
    if (first.signum() == 0 || second.signum() == 0) {
      throw new Unreadable("has a zero in it", "write them as " + example);
    }
    return new Proportion(first, second);
  }
}
