package ribband.plan;

import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** Says to a builder how a phase stands; where nothing follows from the figures, nothing is. */
public final class StandingWords {
  private static final BigFraction QUARTER = BigFraction.of(900);
  private static final BigFraction HOUR = BigFraction.of(3600);

  /** From here on a quarter of an hour more or less means nothing. */
  private static final BigFraction LONG = BigFraction.of(20 * 3600);

  private static final long PARTS = 1_000_000_000_000L;

  private StandingWords() {}

  /** {@code at this rate 148 hours in all, 28 over plan}; what it is of stands before it. */
  public static String of(PhaseStanding phase) {
    Optional<EarnedValue> earned = phase.earned();
    if (phase.isDone()) {
      return done(phase.hours(), phase.planned());
    }
    if (phase.hours().isZero()) {
      return "no hours yet";
    }
    if (earned.isEmpty()) {
      return Saying.hoursInWords(phase.hours()) + ", no hours planned";
    }
    if (phase.complete().basis() == Complete.Basis.ASSUMED) {
      return used(earned.get());
    }
    return atThisRate(earned.get());
  }

  /** The same of the whole. */
  public static String ofWhole(Standing standing) {
    Optional<EarnedValue> whole = standing.whole();
    if (whole.isEmpty()) {
      return "no hours planned";
    }
    EarnedValue earned = whole.get();
    boolean isDone = standing.assumed().isEmpty() && earned.left().signum() == 0;
    if (isDone) {
      return done(earned.ac(), Optional.of(earned.bac()));
    }
    if (earned.ac().isZero()) {
      return "no hours yet";
    }
    return standing.isGuess()
        ? used(earned)
        : atThisRate(earned)
            + (standing.assumed().isEmpty() ? "" : "; part of it assumed by hours");
  }

  /** What {@link #ofWhole} leaves to work; empty where it names no rate. */
  public static Optional<Hours> leftAtOneRate(Standing standing) {
    return standing.isGuess()
        ? Optional.empty()
        : standing
            .whole()
            .flatMap(EarnedValue::etc)
            .map(left -> new Hours(left.bigDecimalValue(0, RoundingMode.CEILING).longValueExact()));
  }

  private static String done(Hours hours, Optional<Hours> planned) {
    if (hours.isZero()) {
      return "done, no hours noted";
    }
    return "done in "
        + Saying.hoursInWords(hours)
        + planned.map(plan -> ", " + againstPlan(seconds(hours), plan)).orElse("");
  }

  /** A share that was guessed from the hours says nothing about the rate. */
  private static String used(EarnedValue earned) {
    return earned.ac().compareTo(earned.bac()) > 0
        ? Saying.hoursInWords(earned.ac())
            + " so far, "
            + againstPlan(seconds(earned.ac()), earned.bac())
        : Saying.hours(earned.ac())
            + " of "
            + Saying.hoursInWords(earned.bac())
            + " used, how far it stands is not noted";
  }

  private static String atThisRate(EarnedValue earned) {
    return earned
        .eac()
        .map(StandingWords::rounded)
        .map(
            eac ->
                "at this rate "
                    + Saying.hoursInWords(eac)
                    + " in all, "
                    + againstPlan(seconds(eac), earned.bac()))
        .orElseGet(() -> Saying.hoursInWords(earned.ac()) + " so far, none of it done yet");
  }

  /** What is said, so that the words add up. */
  private static Hours rounded(BigFraction seconds) {
    BigFraction step = seconds.compareTo(LONG) < 0 ? QUARTER : HOUR;
    long steps = seconds.divide(step).bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact();
    return new Hours(Math.multiplyExact(steps, step.longValue()));
  }

  private static String againstPlan(BigFraction seconds, Hours plan) {
    BigFraction over = seconds.subtract(seconds(plan));
    String hours = Saying.hours(magnitude(over));
    if (hours.equals("0")) {
      return "as planned";
    }
    return hours + (over.signum() > 0 ? " over plan" : " under plan");
  }

  private static BigFraction seconds(Hours hours) {
    return BigFraction.of(hours.seconds());
  }

  private static Hours magnitude(BigFraction seconds) {
    return new Hours(seconds.abs().bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact());
  }

  /** {@code −12½}; zero without a sign. */
  public static String hours(BigFraction seconds) {
    String hours = Saying.hours(magnitude(seconds));
    return (seconds.signum() < 0 && !hours.equals("0") ? "−" : "") + hours;
  }

  /** {@code 37%}; what is not whole never looks so. */
  public static String share(BigFraction share) {
    return Saying.share(
        share.multiply(PARTS).bigDecimalValue(0, RoundingMode.DOWN).longValueExact(), PARTS);
  }

  /** {@code 0.89}; a dash where it is undefined. */
  public static String index(Optional<BigFraction> index) {
    return index
        .map(value -> value.bigDecimalValue(2, RoundingMode.HALF_UP).toPlainString())
        .orElse("–");
  }
}
