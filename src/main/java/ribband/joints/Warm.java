package ribband.joints;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import ribband.journal.Project;
import ribband.measure.Temperature;
import ribband.measure.Temperature.Scale;
import ribband.measure.Warmth;
import ribband.shop.Adhesive;

/**
 * The temperature that something is reckoned at.
 *
 * @param warmth empty where none is known: times then last as rated
 */
public record Warm(Optional<Warmth> warmth, From from) {
  /** Where a temperature was found. */
  public enum From {
    ENTRY("entry"),
    MONTH("month"),
    RATED("rated");

    private final String word;

    From(String word) {
      this.word = word;
    }

    /** As data files have it. */
    public String word() {
      return word;
    }
  }

  /** One doubling of all times colder than they are rated at. */
  private static final BigDecimal COLD = BigDecimal.valueOf(18);

  /**
   * spec: the temperature written beside it, else the month's mean of the shop, else none.
   *
   * @param day on which it was made
   */
  public static Warm of(Optional<Warmth> written, LocalDate day, Project project) {
    if (written.isPresent()) {
      return new Warm(written, From.ENTRY);
    }
    Optional<Warmth> mean =
        Optional.ofNullable(project.shopTemperatures().get(day.getMonth())).map(Warmth::of);
    return new Warm(mean, mean.isPresent() ? From.MONTH : From.RATED);
  }

  /** Whether somebody may be tempted to heat the shop for it. */
  boolean isColdFor(Adhesive adhesive) {
    return warmth.stream()
        .flatMap(w -> w.stays().stream())
        .anyMatch(
            stay ->
                isBelow(stay.at(), adhesive.coldest(), BigDecimal.ZERO)
                    || isBelow(stay.at(), adhesive.ratedAt(), COLD));
  }

  private static boolean isBelow(
      Temperature here, Optional<Temperature> bound, BigDecimal degrees) {
    return bound
        .filter(b -> fahrenheit(b).subtract(fahrenheit(here)).compareTo(degrees) > 0)
        .isPresent();
  }

  private static BigDecimal fahrenheit(Temperature temperature) {
    return temperature.in(Scale.F).degrees();
  }
}
