package ribband.shop;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Unreadable;

/**
 * The slope of a scarf: {@code 8:1} is eight times as long as the stock is thick.
 *
 * @param times 1 or more
 */
public record Slope(int times) {
  private static final Pattern WRITTEN = Pattern.compile("([1-9][0-9]?)\\s*(?::|to)\\s*1");

  public static Slope read(String text) throws Unreadable {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new Unreadable("is no slope of a scarf", "write 8:1 or 12:1");
    }
    return new Slope(Integer.parseInt(written.group(1)));
  }

  /** How much length one scarf takes away. */
  public Quantity loss(Quantity thickness) {
    return thickness.times(BigFraction.of(times));
  }
}
