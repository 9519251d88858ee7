package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribband.chart.Yardstick.Division;

class TicksTest {
  @Test
  void hoursAreDividedByQuartersThenByTens() {
    assertEquals(
        List.of(0L, 1800L, 3600L, 5400L, 7200L, 9000L),
        Ticks.covering(0, 9000, 3600, Division.SIXTIETHS).values());
    assertEquals(
        new Ticks(0, 180_000, 36_000), Ticks.covering(0, 150_000, 3600, Division.SIXTIETHS));
  }

  @Test
  void refundsReachBelowZero() {
    assertEquals(
        List.of(-50_000L, 0L, 50_000L, 100_000L, 150_000L),
        Ticks.covering(-35_000, 124_500, 100, Division.TENTHS).values());
    assertEquals(new Ticks(-8000, 0, 2000), Ticks.covering(-7000, -7000, 100, Division.TENTHS));
  }

  @Test
  void nothingAtAllIsShownAsTwoWholes() {
    assertEquals(new Ticks(0, 200, 50), Ticks.covering(0, 0, 100, Division.TENTHS));
    assertEquals(new Ticks(0, 7200, 1800), Ticks.covering(0, 0, 3600, Division.SIXTIETHS));
  }

  @Test
  void oneSmallestUnitStillHasThreeTicks() {
    assertEquals(new Ticks(0, 2, 1), Ticks.covering(0, 1, 100, Division.TENTHS));
    assertEquals(new Ticks(-2, 0, 1), Ticks.covering(-1, 0, 100, Division.TENTHS));
  }

  @Test
  void everyRangeIsCoveredByThreeToEightRoundTicksWithZeroAmongThem() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      long reach = 1L << random.nextInt(61);
      long one = random.nextLong() % reach;
      long other = i % 3 == 0 ? 0 : random.nextLong() % reach;
      long low = Math.min(one, other);
      long high = Math.max(one, other);
      Division division = i % 2 == 0 ? Division.TENTHS : Division.SIXTIETHS;
      Ticks ticks = Ticks.covering(low, high, 3600, division);
      List<Long> values = ticks.values();
      String said = low + " to " + high + ": " + values;
      assertTrue(values.size() >= 3 && values.size() <= 8, said);
      assertTrue(values.get(0) <= low && values.get(values.size() - 1) >= high, said);
      assertTrue(values.contains(0L), said);
      for (int k = 1; k < values.size(); k++) {
        assertEquals(ticks.step(), values.get(k) - values.get(k - 1), said);
      }
      assertTrue(isRound(ticks.step(), division), said);
    }
  }

  private static boolean isRound(long step, Division division) {
    if (division == Division.SIXTIETHS && step < 3600) {
      return List.of(60L, 120L, 300L, 600L, 900L, 1800L).contains(step);
    }
    long digits = division == Division.SIXTIETHS ? step / 3600 : step;
    while (digits % 10 == 0) {
      digits /= 10;
    }
    return digits == 1 || digits == 2 || digits == 5;
  }

  @Test
  void anAmountBeyondTheLimitIsRefused() {
    assertEquals(
        "range 0 to 4000000000000000001",
        assertThrows(
                IllegalArgumentException.class,
                () -> Ticks.covering(0, Ticks.LIMIT + 1, 100, Division.TENTHS))
            .getMessage());
    assertEquals(
        5, Ticks.covering(-Ticks.LIMIT, Ticks.LIMIT, 100, Division.TENTHS).values().size());
  }
}
