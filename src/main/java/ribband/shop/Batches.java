package ribband.shop;

import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;
import ribband.measure.Span;
import ribband.measure.Unit;

/**
 * Into how many cups a mix is parted, so that each is used up before it sets.
 *
 * @param count 1 or more
 * @param each the same for all, exact
 */
public record Batches(long count, Quantity each) {
  /** A fluid ounce takes two minutes to mix and spread: common practice, no source. */
  private static final long SECONDS_A_FLUID_OUNCE = 120;

  /**
   * How long a volume takes to spread, where nobody says.
   *
   * @return to the second, 1 second at least
   */
  public static Span assumedTime(Quantity volume) {
    long seconds = volume.in(Unit.of("fl oz")).number().multiply(SECONDS_A_FLUID_OUNCE).longValue();
    return new Span(Math.max(1, seconds));
  }

  /**
   * As few as keep within the pot life.
   *
   * @param takes to spread all of it
   * @param potLife in the cup, at the temperature of the shop
   */
  public static Batches of(Quantity total, Span takes, Span potLife) {
    long count = -Math.floorDiv(-takes.seconds(), potLife.seconds());
    return new Batches(count, total.times(BigFraction.of(1).divide(count)));
  }
}
