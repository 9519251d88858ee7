package ribband.shop;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Dimension;
import ribband.measure.Mix;
import ribband.measure.Proportion;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/**
 * How the two parts of an adhesive go together, by volume and by weight; what cannot be known
 * without densities is empty.
 *
 * @param volumes of the first part to the second
 * @param weights of the first part to the second
 * @param density of both mixed, in g/ml
 */
public record TwoParts(
    Optional<Proportion> volumes, Optional<Proportion> weights, Optional<BigFraction> density) {

  /** An amount split in its two parts, which add up to it exactly. */
  public record Split(Quantity first, Quantity second) {}

  /**
   * Weight is volume times density, each part its own.
   *
   * @param densities of the two parts, in g/ml
   */
  public static TwoParts of(Mix mix, Optional<Proportion> densities) {
    Proportion parts = mix.parts();
    Optional<Proportion> other =
        densities.map(d -> mix.by() == Mix.By.VOLUME ? parts.times(d) : parts.dividedBy(d));
    Optional<Proportion> volumes = mix.by() == Mix.By.VOLUME ? Optional.of(parts) : other;
    Optional<Proportion> weights = mix.by() == Mix.By.WEIGHT ? Optional.of(parts) : other;
    return new TwoParts(
        volumes,
        weights,
        volumes.flatMap(v -> densities.map(d -> v.times(d).sum().divide(v.sum()))));
  }

  /** The parts of an adhesive; none are known where its mix is not. */
  public static TwoParts of(Adhesive adhesive) {
    return adhesive
        .mix()
        .map(mix -> of(mix, adhesive.densities()))
        .orElse(new TwoParts(Optional.empty(), Optional.empty(), Optional.empty()));
  }

  /**
   * Splits a mixed amount.
   *
   * @param total a volume or a weight; split by what it is
   * @return exact; empty where the proportion by that is unknown
   */
  public Optional<Split> split(Quantity total) {
    Optional<Proportion> parts = total.unit().dimension() == Dimension.VOLUME ? volumes : weights;
    return parts.map(
        p ->
            new Split(
                total.times(p.first().divide(p.sum())), total.times(p.second().divide(p.sum()))));
  }

  /** A mixed amount as a volume or a weight; empty where the density to turn it with is unknown. */
  public Optional<Quantity> measuredBy(Dimension wanted, Quantity mixed) {
    if (mixed.unit().dimension() == wanted) {
      return Optional.of(mixed);
    }
    if (wanted == Dimension.VOLUME && mixed.unit().dimension() == Dimension.MASS) {
      return density.map(d -> Quantity.ofBase(mixed.inBase().divide(d), Unit.of("ml")));
    }
    if (wanted == Dimension.MASS && mixed.unit().dimension() == Dimension.VOLUME) {
      return density.map(d -> Quantity.ofBase(mixed.inBase().multiply(d), Unit.of("g")));
    }
    return Optional.empty();
  }
}
