package ribband.postcard;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * Her lines as the site draws them, in profile; and under it in plan, on the same stations. A unit
 * of this drawing is a thousandth of its width.
 */
enum HullLines {
  PROFILE(224),
  PROFILE_AND_PLAN(600);

  private static final double WIDTH = 1000;
  private static final double WATER = 152;
  private static final double CENTRE = 420;
  private static final int FIRST_STATION = 40;
  private static final int LAST_STATION = 960;
  private static final int STATION = 92;

  /** Sheer, stem, keel, laps: each from a point, by two, to a point. */
  private static final double[][] IN_PROFILE = {
    {40, 66, 260, 128, 640, 132, 960, 34},
    {960, 34, 956, 84, 934, 134, 892, 170},
    {92, 184, 320, 208, 690, 206, 892, 170},
    {52, 94, 268, 148, 646, 150, 957, 66},
    {63, 120, 278, 168, 652, 168, 948, 98},
    {74, 145, 290, 184, 660, 184, 933, 127},
    {84, 166, 304, 198, 672, 196, 914, 151}
  };

  /** Sheer and laps again, of one side, by their distance from the centre line. */
  private static final double[][] IN_PLAN = {
    {40, 88, 250, 190, 620, 206, 960, 0},
    {52, 78, 262, 166, 630, 176, 957, 0},
    {63, 63, 272, 132, 640, 136, 948, 0},
    {74, 44, 284, 90, 652, 90, 933, 0},
    {84, 23, 298, 46, 664, 44, 914, 0}
  };

  private final double height;

  HullLines(double height) {
    this.height = height;
  }

  /** As large as the place holds, in its middle. */
  void draw(Draft draft, Box place) {
    double scale = Math.min(place.width() / WIDTH, place.height() / height);
    AffineTransform at =
        AffineTransform.getTranslateInstance(
            place.x() + (place.width() - WIDTH * scale) / 2,
            place.y() + (place.height() - height * scale) / 2);
    at.scale(scale, scale);
    for (int x = FIRST_STATION; x <= LAST_STATION; x += STATION) {
      line(draft, at, x, 4, x, height - 4, Pen.RULE);
    }
    profile(draft, at);
    if (this == PROFILE_AND_PLAN) {
      plan(draft, at);
    }
  }

  private static void profile(Draft draft, AffineTransform at) {
    line(draft, at, 4, WATER, 996, WATER, Pen.WATERLINE);
    line(draft, at, 40, 66, 92, 184, Pen.FAIR);
    curves(draft, at, IN_PROFILE);
  }

  private static void plan(Draft draft, AffineTransform at) {
    line(draft, at, 4, CENTRE, 996, CENTRE, Pen.WATERLINE);
    line(draft, at, 40, CENTRE - 88, 40, CENTRE + 88, Pen.FAIR);
    for (int side : List.of(-1, 1)) {
      AffineTransform half = new AffineTransform(at);
      half.translate(0, CENTRE);
      half.scale(1, side);
      line(draft, half, 40, 88, 92, 0, Pen.FAIR);
      curves(draft, half, IN_PLAN);
    }
  }

  private static void curves(Draft draft, AffineTransform at, double[][] curves) {
    for (double[] c : curves) {
      Path2D path = new Path2D.Double();
      path.moveTo(c[0], c[1]);
      path.curveTo(c[2], c[3], c[4], c[5], c[6], c[7]);
      draft.draw(new Drawn(new Path2D.Double(path, at), Pen.FAIR));
    }
  }

  private static void line(
      Draft draft, AffineTransform at, double x1, double y1, double x2, double y2, Pen pen) {
    draft.draw(new Drawn(new Path2D.Double(Drawn.line(x1, y1, x2, y2, pen).path(), at), pen));
  }
}
