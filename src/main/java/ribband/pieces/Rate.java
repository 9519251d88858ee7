package ribband.pieces;

import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;

/**
 * How long a piece takes.
 *
 * @param secondsEach exact, 0 or more
 */
public record Rate(BigFraction secondsEach, Basis basis) {
  /** What it goes by. */
  public enum Basis {
    /** The sessions that made some on that side. */
    SIDE,
    /** All sessions that made some. */
    KIND,
    /** What the project plans for a piece. */
    PLANNED
  }

  /** To the second. */
  public Hours each() {
    return hours(secondsEach);
  }

  static Hours hours(BigFraction seconds) {
    return new Hours(seconds.bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact());
  }
}
