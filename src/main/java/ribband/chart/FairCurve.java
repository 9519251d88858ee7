package ribband.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * One smooth curve through knots that never overshoots them: where the knots only rise, so does the
 * curve.
 *
 * <p>Source: F. N. Fritsch and R. E. Carlson, Monotone Piecewise Cubic Interpolation, SIAM Journal
 * on Numerical Analysis 17 (1980), 238-246; cited from memory. The slopes at the knots are the
 * means of the neighbouring secants, zero at a turn, held within the circle of radius 3.
 *
 * @param x of its first knot, in tenths of the drawing's unit
 * @param y likewise
 * @param pieces from knot to knot; none for a single knot
 */
public record FairCurve(int x, int y, List<Piece> pieces) implements Course {
  /** How much finer a curve is than the drawing: whole units would show as corners. */
  public static final int FINENESS = 10;

  public FairCurve {
    pieces = List.copyOf(pieces);
  }

  /** A cubic to (x, y) with two control points, in tenths, as SVG's {@code C} takes it. */
  public record Piece(int x1, int y1, int x2, int y2, int x, int y) {}

  /**
   * The curve through knots.
   *
   * @param xs rising, in the drawing's unit
   * @param ys as many
   */
  static FairCurve through(double[] xs, double[] ys) {
    double[] slopes = slopes(xs, ys);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k + 1 < xs.length; k++) {
      double third = (xs[k + 1] - xs[k]) / 3;
      pieces.add(
          new Piece(
              fine(xs[k] + third),
              fine(ys[k] + slopes[k] * third),
              fine(xs[k + 1] - third),
              fine(ys[k + 1] - slopes[k + 1] * third),
              fine(xs[k + 1]),
              fine(ys[k + 1])));
    }
    return new FairCurve(fine(xs[0]), fine(ys[0]), pieces);
  }

  @Override
  public boolean isFair() {
    return true;
  }

  @Override
  public int startX() {
    return x / FINENESS;
  }

  @Override
  public int endX() {
    return pieces.isEmpty() ? startX() : pieces.get(pieces.size() - 1).x / FINENESS;
  }

  @Override
  public int heightAt(int at) {
    double fromX = x;
    double fromY = y;
    for (Piece piece : pieces) {
      if (at * FINENESS <= piece.x) {
        // The handles stand at thirds, so that the distance goes evenly along a piece.
        double t = Math.max(0, (at * FINENESS - fromX) / (piece.x - fromX));
        double u = 1 - t;
        double height =
            u * u * u * fromY
                + 3 * u * u * t * piece.y1
                + 3 * u * t * t * piece.y2
                + t * t * t * piece.y;
        return (int) Math.round(height / FINENESS);
      }
      fromX = piece.x;
      fromY = piece.y;
    }
    return (int) Math.round(fromY / FINENESS);
  }

  private static int fine(double coordinate) {
    return (int) Math.round(coordinate * FINENESS);
  }

  /** The slope at each knot. */
  static double[] slopes(double[] xs, double[] ys) {
    int knots = xs.length;
    if (knots == 0 || ys.length != knots) {
      throw new IllegalArgumentException(knots + " and " + ys.length + " knots");
    }
    double[] slopes = new double[knots];
    if (knots == 1) {
      return slopes;
    }
    double[] secants = new double[knots - 1];
    for (int k = 0; k + 1 < knots; k++) {
      if (!(xs[k] < xs[k + 1])) {
        throw new IllegalArgumentException("knots do not advance at " + xs[k + 1]);
      }
      secants[k] = (ys[k + 1] - ys[k]) / (xs[k + 1] - xs[k]);
    }
    slopes[0] = secants[0];
    slopes[knots - 1] = secants[knots - 2];
    for (int k = 1; k + 1 < knots; k++) {
      boolean turns = secants[k - 1] * secants[k] <= 0;
      slopes[k] = turns ? 0 : (secants[k - 1] + secants[k]) / 2;
    }
    for (int k = 0; k + 1 < knots; k++) {
      holdWithinCircle(slopes, k, secants[k]);
    }
    return slopes;
  }

  private static void holdWithinCircle(double[] slopes, int k, double secant) {
    if (secant == 0) {
      slopes[k] = 0;
      slopes[k + 1] = 0;
      return;
    }
    double reach = Math.hypot(slopes[k] / secant, slopes[k + 1] / secant);
    if (reach > 3) {
      slopes[k] = slopes[k] * 3 / reach;
      slopes[k + 1] = slopes[k + 1] * 3 / reach;
    }
  }
}
