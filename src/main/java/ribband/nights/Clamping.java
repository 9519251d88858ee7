package ribband.nights;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;
import ribband.measure.Span;
import ribband.shop.Figure;

/**
 * How many pieces a shop's clamps hold.
 *
 * @param shop how many it has, 0 or more
 * @param each how many a piece holds, 1 or more
 * @param held how many are still on
 * @param time how long they stay on
 * @param evening how long a night's work is; empty where nothing tells it
 */
public record Clamping(int shop, int each, int held, Figure<Span> time, Optional<Hours> evening) {
  private static final long DAY = 86_400;

  /** Pieces at a time. */
  public int load() {
    return shop / each;
  }

  public int free() {
    return Math.max(0, shop - held);
  }

  /** spec: within an evening clamps are used again where they come off before its end. */
  public long loads() {
    return time.value()
        .flatMap(on -> evening.map(length -> -Math.floorDiv(-length.seconds(), on.seconds())))
        .map(times -> Math.max(1, times))
        .orElse(1L);
  }

  /** Nights from one load to the next with the same clamps; 1 where they are free the next. */
  public Figure<Long> every() {
    return time.map(on -> Math.max(1, -Math.floorDiv(-on.seconds(), DAY)));
  }

  /** Pieces a night, were the clamps free each evening. */
  public BigFraction perNight() {
    return whole(load() * loads());
  }

  /** Pieces a night as the cure frees the clamps; unknown where no time is promised. */
  public Figure<BigFraction> perNightOfCure() {
    return every().map(nights -> perNight().divide(whole(nights)));
  }

  /** Pieces that the clamps which are free hold, one load after another. */
  public long tonight() {
    return free() / each * loads();
  }

  private static BigFraction whole(long number) {
    return BigFraction.of(BigInteger.valueOf(number));
  }
}
