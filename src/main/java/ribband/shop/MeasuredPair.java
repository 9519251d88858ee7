package ribband.shop;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Quantity;

/**
 * The two parts of a mix as a shop can measure them: both whole steps of the measure, rounded as a
 * pair so that their ratio stays nearest to the true one.
 */
public record MeasuredPair(Quantity first, Quantity second) {
  /**
   * Half a step of misreading is then at most a tenth of the smaller part: a choice of ours, as the
   * makers' sheets say how exact the ratio has to be.
   */
  private static final int FEWEST_STEPS = 5;

  /** No spread is known to so small a share: a choice of ours. */
  private static final BigFraction SHORT = BigFraction.of(1, 50);

  /**
   * Rounds a split.
   *
   * @param step the finest step of the measure, of the split's dimension
   * @return of all pairs of a step more or less for each part, the one whose ratio is nearest; of
   *     those, the one nearest to the total, then the larger
   */
  public static MeasuredPair of(TwoParts.Split split, Quantity step) {
    BigFraction ratio = split.first().over(split.second());
    BigFraction total = split.first().plus(split.second()).over(step);
    List<MeasuredPair> pairs = new ArrayList<>();
    for (BigFraction first : steps(split.first().over(step))) {
      for (BigFraction second : steps(split.second().over(step))) {
        pairs.add(new MeasuredPair(step.times(first), step.times(second)));
      }
    }
    return pairs.stream()
        .min(
            Comparator.comparing((MeasuredPair pair) -> pair.off(ratio))
                .thenComparing(pair -> pair.total().over(step).subtract(total).abs())
                .thenComparing(
                    Comparator.comparing((MeasuredPair pair) -> pair.total().over(step))
                        .reversed()))
        .orElseThrow();
  }

  /**
   * Rounds an amount so that it is enough: where rounding as a pair leaves it short, the next pair
   * that is not.
   *
   * @param needed of both parts together
   * @return empty where the ratio by that measure is unknown
   */
  static Optional<MeasuredPair> enough(TwoParts parts, Quantity needed, Quantity step) {
    Quantity least = needed.times(BigFraction.ONE.subtract(SHORT));
    Optional<MeasuredPair> pair = parts.split(needed).map(split -> of(split, step));
    for (Quantity more = needed.plus(step);
        pair.filter(p -> least.isMoreThan(p.total())).isPresent();
        more = more.plus(step)) {
      pair = parts.split(more).map(split -> of(split, step));
    }
    return pair;
  }

  /** The whole numbers on both sides, none of them 0. */
  private static List<BigFraction> steps(BigFraction exact) {
    BigDecimal below = exact.bigDecimalValue(0, RoundingMode.FLOOR);
    BigDecimal above = exact.bigDecimalValue(0, RoundingMode.CEILING);
    BigFraction up = BigFraction.of(above.toBigInteger().max(BigInteger.ONE));
    return below.signum() == 0 ? List.of(up) : List.of(BigFraction.of(below.toBigInteger()), up);
  }

  /**
   * The smallest sensible batch: the smaller part is five steps.
   *
   * @return the total of both parts, exact; to be rounded as any other
   */
  public static Quantity smallest(TwoParts.Split split, Quantity step) {
    BigFraction smaller =
        split.first().isMoreThan(split.second())
            ? split.second().over(step)
            : split.first().over(step);
    return split.first().plus(split.second()).times(BigFraction.of(FEWEST_STEPS).divide(smaller));
  }

  /** How many times the ratio is too large or too small; 1 where it is right. */
  private BigFraction off(BigFraction ratio) {
    BigFraction times = first.over(second).divide(ratio);
    return times.compareTo(BigFraction.ONE) < 0 ? times.reciprocal() : times;
  }

  public Quantity total() {
    return first.plus(second);
  }
}
