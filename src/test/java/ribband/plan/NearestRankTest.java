package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestRankTest {
  /** The values of the published example at liquisearch.com, percentile, by definition R_1. */
  @ParameterizedTest
  @CsvSource({"30, 20", "40, 20", "50, 35", "75, 40", "90, 50"})
  void thePublishedFiveValues(int percent, long value) {
    assertEquals(value, NearestRank.of(new long[] {15, 20, 35, 40, 50}, percent));
  }

  /**
   * The 12 gauge readings of the NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2, in ten
   * thousandths; cited from memory. The handbook's own P90, by another definition, is 95.1981; by
   * R_1 it is one of the readings.
   */
  @Test
  void thePublishedGaugeReadings() {
    long[] readings = {
      951772, 951567, 951937, 951959, 951442, 950610, 951591, 951195, 951065, 950925, 951990, 951682
    };
    Arrays.sort(readings);
    assertEquals(951959, NearestRank.of(readings, 90));
    assertEquals(951567, NearestRank.of(readings, 50));
  }

  /** Against the first of Hyndman and Fan's definitions in Apache Commons Statistics. */
  @Test
  void aStatisticsLibraryFindsTheSame() {
    Quantile library = Quantile.withDefaults().with(EstimationMethod.HF1);
    Random random = new Random(11);
    for (int size = 1; size <= 120; size++) {
      long[] values = random.longs(size, 0, 1000).sorted().toArray();
      double[] same = Arrays.stream(values).asDoubleStream().toArray();
      for (int percent = 1; percent < 100; percent++) {
        // In binary fractions 7% of 100 is a little over 7: such ranks are left to the tables.
        boolean isExact = size * percent % 100 != 0 || percent % 25 == 0;
        if (isExact) {
          assertEquals(
              library.evaluate(same, percent / 100.0),
              NearestRank.of(values, percent),
              percent + " of " + size);
        }
      }
    }
  }

  @Test
  void theRankIsRoundedUp() {
    long[] hundred = new long[100];
    Arrays.setAll(hundred, i -> i + 1);
    for (int percent = 1; percent <= 100; percent++) {
      assertEquals(percent, NearestRank.of(hundred, percent));
    }
    assertEquals(7, NearestRank.of(new long[] {7}, 1));
  }

  @Test
  void noValuesAndNoSuchPercentileAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> NearestRank.of(new long[0], 50));
    assertThrows(IllegalArgumentException.class, () -> NearestRank.of(new long[1], 0));
    assertThrows(IllegalArgumentException.class, () -> NearestRank.of(new long[1], 101));
  }
}
