package ribband.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A temperature in the scale the builder wrote.
 *
 * @param degrees with at most 2 decimal places
 */
public record Temperature(BigDecimal degrees, Scale scale) {
  private static final Pattern WRITTEN =
      Pattern.compile("([-−]?[0-9]{1,3}(?:\\.[0-9]{1,2})?) ?(?:°|º|deg|degrees)? ?([cf])");
  private static final BigDecimal THIRTY_TWO = BigDecimal.valueOf(32);

  /** Fahrenheit or Celsius. */
  public enum Scale {
    F,
    C
  }

  public static Temperature read(String text) throws Unreadable {
    Matcher written = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!written.matches()) {
      throw new Unreadable("is not a temperature", "write 61 F or 16 C");
    }
    BigDecimal degrees = new BigDecimal(written.group(1).replace('−', '-'));
    Temperature read =
        new Temperature(degrees, Scale.valueOf(written.group(2).toUpperCase(Locale.ROOT)));
    BigDecimal celsius = read.in(Scale.C).degrees();
    if (celsius.intValue() < -50 || celsius.intValue() > 100) {
      throw new Unreadable("is no temperature of a shop", "write it as 61 F or 16 C");
    }
    return read;
  }

  /** The same temperature in the other scale, to a hundredth of a degree. */
  public Temperature in(Scale wanted) {
    if (wanted == scale) {
      return this;
    }
    BigDecimal converted =
        wanted == Scale.C
            ? degrees
                .subtract(THIRTY_TWO)
                .multiply(BigDecimal.valueOf(5))
                .divide(BigDecimal.valueOf(9), 2, RoundingMode.HALF_UP)
            : degrees.multiply(new BigDecimal("1.8")).add(THIRTY_TWO);
    return new Temperature(converted, wanted);
  }

  /** To the whole degree, for showing. */
  public Temperature whole() {
    return new Temperature(degrees.setScale(0, RoundingMode.HALF_UP), scale);
  }
}
