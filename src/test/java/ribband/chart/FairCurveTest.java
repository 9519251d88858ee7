package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FairCurveTest {
  @Test
  void straightKnotsGiveAStraightCurve() {
    assertArrayEquals(
        new double[] {2, 2, 2},
        FairCurve.slopes(new double[] {0, 1, 4}, new double[] {0, 2, 8}),
        1e-12);
  }

  @Test
  void aTurnAndALevelRunHaveLevelSlopes() {
    double[] slopes = FairCurve.slopes(new double[] {0, 1, 2, 3, 4}, new double[] {0, 3, 1, 1, 2});
    assertEquals(0, slopes[1]);
    assertEquals(0, slopes[2]);
    assertEquals(0, slopes[3]);
  }

  /** Worked by hand from the rule: secants 1 and 10, mean 5.5, held to the circle of radius 3. */
  @Test
  void aSteepNeighbourIsHeldWithinTheCircle() {
    double[] slopes = FairCurve.slopes(new double[] {0, 1, 2}, new double[] {0, 1, 11});
    double reach = Math.sqrt(1 + 5.5 * 5.5);
    assertArrayEquals(new double[] {3 / reach, 3 * 5.5 / reach, 10}, slopes, 1e-12);
  }

  /**
   * The knots of the paper's own example of overshoot, RPN 14 (radiochemical data); figures from
   * memory.
   */
  @Test
  void theSourcesOwnDataStaysMonotone() {
    double[] xs = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};
    double[] ys = {0, 2.76429e-5, 4.37498e-2, .169183, .469428, .943740, .998636, .999919, .999994};
    assertSamplesRise(xs, ys);
  }

  @Test
  void risingKnotsGiveARisingCurve() {
    Random random = new Random(11);
    for (int run = 0; run < 300; run++) {
      int knots = 2 + random.nextInt(30);
      double[] xs = new double[knots];
      double[] ys = new double[knots];
      for (int k = 1; k < knots; k++) {
        xs[k] = xs[k - 1] + 0.01 + random.nextInt(40);
        ys[k] = ys[k - 1] + (random.nextInt(3) == 0 ? 0 : random.nextInt(1000) / 7.0);
      }
      assertSamplesRise(xs, ys);
    }
  }

  private static void assertSamplesRise(double[] xs, double[] ys) {
    double[] slopes = FairCurve.slopes(xs, ys);
    double scale = ys[ys.length - 1] - ys[0];
    for (int k = 0; k + 1 < xs.length; k++) {
      double third = (xs[k + 1] - xs[k]) / 3;
      double before = ys[k];
      for (int i = 1; i <= 50; i++) {
        double y =
            cubic(
                i / 50.0,
                ys[k],
                ys[k] + slopes[k] * third,
                ys[k + 1] - slopes[k + 1] * third,
                ys[k + 1]);
        assertTrue(y >= before - 1e-12 * scale, "falls in piece " + k);
        before = y;
      }
      assertEquals(ys[k + 1], before, 1e-9 * scale);
    }
  }

  static double cubic(double t, double a, double b, double c, double d) {
    double s = 1 - t;
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  }

  @Test
  void theDrawnCurvePassesThroughItsKnots() {
    FairCurve curve = FairCurve.through(new double[] {1, 2.5, 9}, new double[] {10, 7, 3});
    assertEquals(10, curve.x());
    assertEquals(100, curve.y());
    assertEquals(List.of(25, 90), curve.pieces().stream().map(FairCurve.Piece::x).toList());
    assertEquals(List.of(70, 30), curve.pieces().stream().map(FairCurve.Piece::y).toList());
  }

  @Test
  void knotsThatDoNotAdvanceAreRefused() {
    assertEquals(
        "knots do not advance at 1.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> FairCurve.slopes(new double[] {1, 1}, new double[] {0, 1}))
            .getMessage());
  }
}
