package ribband.measure;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A share of a whole.
 *
 * @param value 0 to 100, at most 2 decimal places
 */
public record Percent(BigDecimal value) {
  private static final Pattern WRITTEN = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,2})? ?%");
  private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

  public static Percent read(String text) throws Unreadable {
    String plain = text.strip();
    if (plain.matches("(100|[0-9]{1,2})(\\.[0-9]{1,2})?")) {
      throw new Unreadable("is not a share", "write " + plain + "%");
    }
    if (!WRITTEN.matcher(plain).matches()) {
      throw new Unreadable("is not a share", "write 40%");
    }
    BigDecimal value = new BigDecimal(plain.substring(0, plain.length() - 1).strip());
    if (value.compareTo(WHOLE) > 0) {
      throw new Unreadable("is more than the whole", "write 100% at most");
    }
    return new Percent(value);
  }

  /** As a number: 10% is 1/10. */
  public BigFraction share() {
    return Numbers.decimal(value).divide(100);
  }

  public boolean isWhole() {
    return value.compareTo(WHOLE) == 0;
  }
}
