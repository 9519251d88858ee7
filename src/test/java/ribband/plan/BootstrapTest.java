package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Draws against what a full enumeration of all futures gives, exactly. */
class BootstrapTest {
  private static final long[] ONE_TWO_THREE = {1, 2, 3};
  private static final int DRAWS = 10_000;

  private static long[] weeks(long[] history, long left, int cap) {
    return Bootstrap.weeks(history, left, DRAWS, cap, new Random(1));
  }

  /** The sums of all futures of so many nights, each counted once; by enumeration. */
  private static long[] sums(long[] history, int nights) {
    long[] sums = {0};
    for (int night = 0; night < nights; night++) {
      sums =
          Arrays.stream(sums)
              .flatMap(sum -> Arrays.stream(history).map(more -> sum + more))
              .toArray();
    }
    Arrays.sort(sums);
    return sums;
  }

  /** Counts 1, 3, 6, 7, 6, 3, 1 of 27 for the sums 3 to 9: exact arithmetic. */
  @Test
  void threeNightsOfOneTwoOrThreeAsEnumerated() {
    long[] sums = sums(ONE_TWO_THREE, 3);
    for (int sum = 3; sum <= 9; sum++) {
      int wanted = sum;
      assertEquals(
          new int[] {1, 3, 6, 7, 6, 3, 1}[sum - 3],
          Arrays.stream(sums).filter(s -> s == wanted).count());
    }
    assertEquals(4, NearestRank.of(sums, 10));
    assertEquals(6, NearestRank.of(sums, 50));
    assertEquals(8, NearestRank.of(sums, 90));
  }

  @Test
  void theDrawsLandOnTheEnumeratedSums() {
    long[] sums = new long[DRAWS];
    Bootstrap.draw(
        ONE_TWO_THREE,
        100,
        DRAWS,
        3,
        new Random(5),
        (draw, week, left) -> {
          if (week == 3) {
            sums[draw] = 100 - left;
          }
        });
    Arrays.sort(sums);
    assertEquals(4, NearestRank.of(sums, 10));
    assertEquals(6, NearestRank.of(sums, 50));
    assertEquals(8, NearestRank.of(sums, 90));
    assertShare(7.0 / 27, Arrays.stream(sums).filter(sum -> sum == 6));
  }

  /** P(2) 1/9, P(3) 17/27, P(4) 76/81, P(5) 242/243, P(6) 1: exact arithmetic. */
  @Test
  void theNightsToReachSixAreThoseOfTheEnumeration() {
    long[] nights = weeks(ONE_TWO_THREE, 6, 100);
    double[] exact = {0, 1 / 9.0, 17 / 27.0, 76 / 81.0, 242 / 243.0, 1};
    for (int n = 1; n <= 6; n++) {
      int within = n;
      long enumerated = Arrays.stream(sums(ONE_TWO_THREE, n)).filter(sum -> sum >= 6).count();
      assertEquals(exact[n - 1], enumerated / Math.pow(3, n), 1e-12);
      assertShare(exact[n - 1], Arrays.stream(nights).filter(night -> night <= within));
    }
    assertEquals(3, NearestRank.of(nights, 50));
    assertEquals(4, NearestRank.of(nights, 90));
    assertEquals(2, nights[0]);
    assertEquals(3.3251, Arrays.stream(nights).average().orElseThrow(), 0.03);
  }

  /** Within four standard errors of a share of 10,000. */
  private static void assertShare(double exact, LongStream those) {
    double error = 4 * Math.sqrt(exact * (1 - exact) / DRAWS);
    assertEquals(exact, those.count() / (double) DRAWS, error);
  }

  /** A given week is missing from n draws with (1 - 1/n)^n, 0.3487 at n = 10: exact arithmetic. */
  @Test
  void aWeekIsMissedAsOftenAsItShouldBe() {
    for (int n : new int[] {2, 10, 26}) {
      long[] history = new long[n];
      history[n - 1] = 5;
      long[] weeks = weeks(history, 5, n);
      assertShare(Math.pow(1 - 1.0 / n, n), Arrays.stream(weeks).filter(week -> week == n + 1L));
    }
  }

  @Test
  void steadyWeeksGoByThePlainRate() {
    for (int pieces = 1; pieces <= 20; pieces++) {
      long[] weeks = weeks(new long[] {4, 4, 4}, pieces, 100);
      assertEquals((pieces + 3) / 4, weeks[0]);
      assertEquals((pieces + 3) / 4, weeks[DRAWS - 1]);
    }
  }

  @Test
  void theSameSeedBringsTheSameWeeks() {
    long[] history = {0, 3, 9, 4};
    assertArrayEquals(weeks(history, 300, 900), weeks(history, 300, 900));
    long[] other = Bootstrap.weeks(history, 300, DRAWS, 900, new Random(2));
    assertTrue(!Arrays.equals(weeks(history, 300, 900), other));
  }

  @Test
  void weeksOfNothingDoNotHang() {
    for (long[] history : new long[][] {{}, {0}, {0, 0, 0}}) {
      assertArrayEquals(allOf(5219), weeks(history, 1, 5218));
    }
    long[] rare = weeks(new long[] {0, 0, 0, 1}, 1_000_000, 200);
    assertArrayEquals(allOf(201), rare);
  }

  private static long[] allOf(long week) {
    return LongStream.generate(() -> week).limit(DRAWS).toArray();
  }

  @Test
  void theLastWeekThatIsAllowedCounts() {
    assertArrayEquals(allOf(8), weeks(new long[] {5}, 40, 8));
    assertArrayEquals(allOf(9), weeks(new long[] {5}, 41, 8));
    assertArrayEquals(allOf(1), weeks(new long[] {Long.MAX_VALUE}, Long.MAX_VALUE, 1));
    long[] some = weeks(new long[] {0, 5}, 10, 2);
    assertShare(0.25, Arrays.stream(some).filter(week -> week == 2));
    assertShare(0.75, Arrays.stream(some).filter(week -> week == 3));
  }
}
