package ribband.shop;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Span;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.measure.Warmth;

/**
 * What to mix tonight, in how many cups, and how long each step may take. Deadlines are told at the
 * minute before, waits at the minute after.
 *
 * @param cold why no time is promised; empty where the rule for temperatures holds
 * @param needed exact, a volume or a weight
 * @param smallest the smallest sensible batch; empty where the ratio is not known
 * @param total what to mix in all: the need, or the smallest sensible batch where that is more
 * @param volume by volume; empty where only the weight is known
 * @param weight by weight; empty where densities are not known
 * @param takes to spread all of it
 * @param cup how long one batch may stay in its cup
 * @param batches unknown where either of the two is
 * @param close from spreading to closing the joint
 * @param soft how long the joint can be moved
 * @param lastLook after so long, a quarter of an hour before it sets; empty where that is at once,
 *     or where it is unknown how long it stays soft
 * @param clampsOff after so long
 */
public record MixPlan(
    Optional<String> cold,
    Quantity needed,
    Optional<Quantity> smallest,
    Quantity total,
    Optional<Measured> volume,
    Optional<Measured> weight,
    Figure<Span> takes,
    Figure<Span> cup,
    Figure<Batches> batches,
    Figure<Span> close,
    Figure<Span> soft,
    Optional<Span> lastLook,
    Figure<Span> clampsOff) {
  private static final long LOOK_BEFORE = 15 * 60;

  /**
   * An amount by one measure.
   *
   * @param needed in all, exact
   * @param all what to mix in all, exact
   * @param parts of one cup as the shop can measure them; empty where the ratio is not known, or a
   *     cup holds too little to keep it
   */
  public record Measured(Quantity needed, Quantity all, Optional<MeasuredPair> parts) {
    private Measured parted(BigFraction share, TwoParts two, Quantity step) {
      return new Measured(needed, all, MeasuredPair.enough(two, all.times(share), step));
    }
  }

  /**
   * The finest steps that the shop can measure.
   *
   * @param volume a volume
   * @param weight a weight
   */
  public record Steps(Quantity volume, Quantity weight) {
    private static final Steps US =
        new Steps(
            new Quantity(BigFraction.of(1, 8), Unit.of("fl oz")),
            new Quantity(BigFraction.of(1, 10), Unit.of("oz")));
    private static final Steps METRIC =
        new Steps(
            new Quantity(BigFraction.ONE, Unit.of("ml")),
            new Quantity(BigFraction.ONE, Unit.of("g")));

    /** What cups and scales of that system are marked in. */
    public static Steps usual(Units units) {
      return units == Units.US ? US : METRIC;
    }

    /** These, but for the measure that a step is of. */
    public Steps with(Quantity step) {
      return step.unit().dimension() == Dimension.VOLUME
          ? new Steps(step, weight)
          : new Steps(volume, step);
    }

    private Quantity of(Dimension measure) {
      return measure == Dimension.VOLUME ? volume : weight;
    }
  }

  /**
   * Plans a mix.
   *
   * @param needed a volume or a weight, more than 0
   * @param warmth unknown, the times are those of the data sheet
   * @param takes to spread all of it; empty where nobody said
   */
  public static MixPlan of(
      Adhesive adhesive,
      Quantity needed,
      Optional<Warmth> warmth,
      Optional<Span> takes,
      Steps steps) {
    TwoParts parts = TwoParts.of(adhesive);
    Optional<Quantity> smallest = smallest(needed, parts, steps);
    Quantity total = smallest.filter(s -> s.isMoreThan(needed)).orElse(needed);
    Times times = new Times(adhesive, warmth);
    Figure<Span> cup = times.deadline(adhesive.potLife(), "pot life");
    Figure<Span> spreading =
        takes
            .map(Figure::of)
            .orElseGet(
                () ->
                    Figure.of(
                        parts.measuredBy(Dimension.VOLUME, total).map(Batches::assumedTime),
                        "nobody says how long spreading takes, and it is known by weight alone"))
            .map(Span::minutesAfter);
    Figure<Batches> batches =
        cup.flatMap(life -> spreading.map(time -> Batches.of(total, time, life)));
    BigFraction share =
        batches.value().map(b -> BigFraction.ONE.divide(b.count())).orElse(BigFraction.ONE);
    boolean isTooFine = isPartedTooFine(batches, smallest);
    Figure<Span> soft = times.deadline(adhesive.softFor(), "soft for");
    Figure<Span> close = times.deadline(adhesive.openTime(), "open time");
    Figure<Span> clampsOff = times.waiting(adhesive.clampTime(), "clamp time");
    return new MixPlan(
        times.refusal().filter(why -> matters(why, List.of(cup, close, soft, clampsOff))),
        needed,
        smallest,
        total,
        measured(Dimension.VOLUME, needed, total, parts)
            .map(m -> isTooFine ? m : m.parted(share, parts, steps.volume())),
        measured(Dimension.MASS, needed, total, parts)
            .map(m -> isTooFine ? m : m.parted(share, parts, steps.weight())),
        spreading,
        cup,
        batches,
        close,
        soft,
        soft.value()
            .filter(span -> span.seconds() > LOOK_BEFORE)
            .map(span -> new Span(span.seconds() - LOOK_BEFORE)),
        clampsOff);
  }

  /** What comes after the last of the times does not matter to them. */
  private static boolean matters(String refusal, List<Figure<Span>> times) {
    return times.stream().allMatch(time -> time.value().isEmpty())
        || times.stream().anyMatch(time -> time.why().equals(refusal));
  }

  /** The smallest sensible batch, in the unit of the need; empty where it cannot be parted. */
  private static Optional<Quantity> smallest(Quantity needed, TwoParts parts, Steps steps) {
    return parts
        .split(needed)
        .map(split -> MeasuredPair.smallest(split, steps.of(needed.unit().dimension())))
        .map(least -> least.in(needed.unit()));
  }

  private static Optional<Measured> measured(
      Dimension by, Quantity needed, Quantity total, TwoParts parts) {
    return parts
        .measuredBy(by, total)
        .flatMap(
            all -> parts.measuredBy(by, needed).map(n -> new Measured(n, all, Optional.empty())));
  }

  /** The times of a data sheet at the temperature of the shop. */
  private record Times(Adhesive adhesive, Optional<Warmth> warmth) {
    Figure<Span> deadline(Optional<Span> rated, String key) {
      return lasts(rated, key).map(Span::minutesBefore);
    }

    Figure<Span> waiting(Optional<Span> rated, String key) {
      return lasts(rated, key).map(Span::minutesAfter);
    }

    Optional<String> refusal() {
      return warmth.flatMap(Cure.of(adhesive)::refusal);
    }

    private Figure<Span> lasts(Optional<Span> rated, String key) {
      return Figure.of(rated, "no \"" + key + "\" is given for it")
          .flatMap(span -> Cure.of(adhesive).lasts(span, warmth));
    }
  }

  /** Whether less is needed than can be measured well. */
  public boolean isRaised() {
    return total.isMoreThan(needed);
  }

  /** Whether one of several batches is less than can be measured well, so that none is parted. */
  public boolean isPartedTooFine() {
    return isPartedTooFine(batches, smallest);
  }

  private static boolean isPartedTooFine(Figure<Batches> batches, Optional<Quantity> smallest) {
    return batches
        .value()
        .filter(b -> b.count() > 1 && smallest.filter(s -> s.isMoreThan(b.each())).isPresent())
        .isPresent();
  }
}
