package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ribband.measure.Hours;

class EarnedValueTest {
  private static final Optional<BigFraction> NONE = Optional.empty();

  private static EarnedValue earned(long bac, long ac, long part, long of) {
    return new EarnedValue(new Hours(bac), new Hours(ac), BigFraction.of(part, of));
  }

  private static Optional<BigFraction> some(long numerator, long denominator) {
    return Optional.of(BigFraction.of(numerator, denominator));
  }

  /**
   * A fence of four sides at the end of day 3: BAC 4000, EV 2500, AC 2800. Source of the inputs: a
   * published lecture on project management, studylib.net/doc/5898152. It rounds CPI to 0.893 first
   * and so ends at EAC 4479, ETC 1679, VAC -479; the exact figures are 4480, 1680, -480.
   */
  @Test
  void thePublishedFenceStandsAsItsSourceHasIt() {
    EarnedValue fence = earned(4000, 2800, 5, 8);
    assertEquals(BigFraction.of(2500), fence.ev());
    assertEquals(BigFraction.of(-300), fence.cv());
    assertEquals(some(25, 28), fence.cpi());
    assertEquals(some(4480, 1), fence.eac());
    assertEquals(some(1680, 1), fence.etc());
    assertEquals(some(-480, 1), fence.vac());
    assertEquals(some(5, 4), fence.tcpi());
  }

  /** The two ways the formulas are written: BAC / CPI, and AC + (BAC - EV) / CPI. */
  @Test
  void bothWaysToTheEstimateAgree() {
    for (int part = 1; part <= 20; part++) {
      EarnedValue earned = earned(977, 431, part, 20);
      assertEquals(Optional.of(BigFraction.of(977).divide(earned.cpi().get())), earned.eac());
      assertEquals(earned.eac().get().subtract(431), earned.etc().get());
      assertEquals(BigFraction.of(977).subtract(earned.eac().get()), earned.vac().get());
    }
  }

  @Test
  void withoutHoursThereIsNoRate() {
    EarnedValue noted = earned(4000, 0, 1, 4);
    assertEquals(BigFraction.of(1000), noted.cv());
    assertEquals(NONE, noted.cpi());
    assertEquals(NONE, noted.eac());
    assertEquals(NONE, noted.etc());
    assertEquals(NONE, noted.vac());
    assertEquals(some(3, 4), noted.tcpi());
  }

  @Test
  void whereNothingIsEarnedTheRateIsZeroAndLeadsNowhere() {
    EarnedValue begun = earned(4000, 500, 0, 1);
    assertEquals(BigFraction.of(-500), begun.cv());
    assertEquals(some(0, 1), begun.cpi());
    assertEquals(NONE, begun.eac());
    assertEquals(NONE, begun.etc());
    assertEquals(NONE, begun.vac());
    assertEquals(some(8, 7), begun.tcpi());
  }

  @Test
  void noRateBringsBackAPlanThatIsUsedUp() {
    assertEquals(NONE, earned(4000, 4000, 1, 2).tcpi());
    assertEquals(NONE, earned(4000, 4001, 1, 2).tcpi());
    assertEquals(some(2000, 1), earned(4000, 3999, 1, 2).tcpi());
  }

  @Test
  void whatIsDoneHasNothingLeft() {
    EarnedValue over = earned(4000, 5000, 1, 1);
    assertEquals(some(4, 5), over.cpi());
    assertEquals(some(5000, 1), over.eac());
    assertEquals(some(0, 1), over.etc());
    assertEquals(some(-1000, 1), over.vac());
    assertEquals(some(0, 1), over.tcpi());
    assertEquals(some(0, 1), earned(4000, 3000, 1, 1).tcpi());
    assertEquals(NONE, earned(4000, 4000, 1, 1).tcpi());
  }

  @Test
  void aShareBelowNothingOrBeyondAllIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> earned(1, 1, -1, 9));
    assertThrows(IllegalArgumentException.class, () -> earned(1, 1, 10, 9));
  }
}
