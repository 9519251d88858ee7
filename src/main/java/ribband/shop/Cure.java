package ribband.shop;

import java.math.BigDecimal;
import java.util.Optional;
import ribband.measure.Saying;
import ribband.measure.Span;
import ribband.measure.Temperature;
import ribband.measure.Temperature.Scale;
import ribband.measure.Warmth;

/**
 * How long the times of a data sheet last at other temperatures than the one they hold for.
 *
 * <p>The rule: every 18 F (10 C) colder doubles a time, every 18 F warmer halves it. It is a rule
 * of thumb of chemistry (see "Old Rule of Thumb and the Arrhenius Equation", Journal of Chemical
 * Education), so it is used near the rated temperature alone, and never below the coldest that the
 * maker allows. Over several temperatures the shares of the cure add up.
 *
 * @param ratedAt the temperature that the times hold for; unknown, they stay as they are
 * @param coldest below it no time is promised
 */
public record Cure(Optional<Temperature> ratedAt, Optional<Temperature> coldest) {
  private static final BigDecimal DOUBLING = BigDecimal.valueOf(18);

  /** How far the rule is trusted, in F: common practice, no source. */
  private static final BigDecimal MOST_COLDER = BigDecimal.valueOf(36);

  private static final BigDecimal MOST_WARMER = BigDecimal.valueOf(18);
  private static final String ASK = "; no time is promised, see the maker's data sheet";

  public static Cure of(Adhesive adhesive) {
    return new Cure(adhesive.ratedAt(), adhesive.coldest());
  }

  /**
   * How long a time of the data sheet lasts.
   *
   * @param rated at {@link #ratedAt}
   * @param warmth unknown, the time is the rated one
   * @return to the second; unknown with the reason where it is too cold or outside the rule
   */
  public Figure<Span> lasts(Span rated, Optional<Warmth> warmth) {
    return warmth.map(w -> lasts(rated, w)).orElse(Figure.of(rated));
  }

  /** Why no time is promised somewhere along the way; empty where the rule holds all through. */
  public Optional<String> refusal(Warmth warmth) {
    return warmth.stays().stream().flatMap(stay -> refusal(stay.at()).stream()).findFirst();
  }

  private Figure<Span> lasts(Span rated, Warmth warmth) {
    // Elapsed seconds of a rule of thumb; neither hours worked nor money. StrictMath gives the same
    // bits on every machine.
    double left = rated.seconds();
    double elapsed = 0;
    for (Warmth.Stay stay : warmth.stays()) {
      Optional<String> refusal = refusal(stay.at());
      if (refusal.isPresent()) {
        return Figure.unknown(refusal.get());
      }
      double slower = slower(stay.at());
      double needed = left * slower;
      long most = stay.lasting().map(Span::seconds).orElse(Long.MAX_VALUE);
      if (needed <= most) {
        return Figure.of(new Span(Math.max(1, StrictMath.round(elapsed + needed))));
      }
      elapsed += most;
      left -= most / slower;
    }
    throw new IllegalStateException("the last stay goes on: " + warmth);
  }

  /** How many times longer everything lasts than at the rated temperature. */
  private double slower(Temperature at) {
    return ratedAt
        .map(rated -> fahrenheit(rated).subtract(fahrenheit(at)))
        .map(colder -> StrictMath.pow(2, colder.doubleValue() / DOUBLING.doubleValue()))
        .orElse(1.0);
  }

  private Optional<String> refusal(Temperature at) {
    BigDecimal here = fahrenheit(at);
    if (coldest.filter(c -> here.compareTo(fahrenheit(c)) < 0).isPresent()) {
      return Optional.of(
          Saying.temperature(at)
              + " is below the coldest for it, "
              + Saying.temperature(coldest.get().in(at.scale()))
              + ASK);
    }
    return ratedAt
        .map(rated -> fahrenheit(rated).subtract(here))
        .filter(
            colder ->
                colder.compareTo(MOST_COLDER) > 0 || colder.negate().compareTo(MOST_WARMER) > 0)
        .map(
            colder ->
                Saying.temperature(at)
                    + " is too far from "
                    + Saying.temperature(ratedAt.orElseThrow().in(at.scale()))
                    + ", which its times are rated at"
                    + ASK);
  }

  private static BigDecimal fahrenheit(Temperature temperature) {
    return temperature.in(Scale.F).degrees();
  }
}
