package ribband.postcard;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * Her lines as the site draws them, in profile, and under it in half breadth on the same stations.
 * A unit of the drawing is a thousandth of its width.
 */
final class HullLines {
  /** What of her is drawn. */
  enum Views {
    PROFILE,
    BOTH
  }

  private static final double WIDTH = 1000;
  private static final double PROFILE_HEIGHT = 224;
  private static final double BOTH_HEIGHT = 500;
  private static final double WATER = 152;
  private static final double CENTRE = 440;

  private static final double[][] PROFILE = {
    {40, 66, 260, 128, 640, 132, 960, 34},
    {960, 34, 956, 84, 934, 134, 892, 170},
    {92, 184, 320, 208, 690, 206, 892, 170},
    {52, 94, 268, 148, 646, 150, 957, 66},
    {63, 120, 278, 168, 652, 168, 948, 98},
    {74, 145, 290, 184, 660, 184, 933, 127},
    {84, 166, 304, 198, 672, 196, 914, 151}
  };

  private static final double[][] HALF_BREADTH = {
    {40, 352, 260, 262, 640, 250, 960, CENTRE},
    {52, 362, 268, 282, 646, 274, 957, CENTRE},
    {63, 376, 278, 310, 652, 308, 948, CENTRE},
    {74, 394, 290, 344, 660, 344, 933, CENTRE},
    {84, 414, 304, 386, 672, 386, 914, CENTRE}
  };

  private HullLines() {}

  /** As large as the place holds, in its middle. */
  static void draw(Draft draft, Box place, Views views) {
    double height =
        switch (views) {
          case PROFILE -> PROFILE_HEIGHT;
          case BOTH -> BOTH_HEIGHT;
        };
    double scale = Math.min(place.width() / WIDTH, place.height() / height);
    AffineTransform at =
        AffineTransform.getTranslateInstance(
            place.x() + (place.width() - WIDTH * scale) / 2,
            place.y() + (place.height() - height * scale) / 2);
    at.scale(scale, scale);
    for (double x = 40; x <= 960; x += 92) {
      line(draft, at, x, 10, x, height - 10, Pen.STATION);
    }
    line(draft, at, 4, WATER, 996, WATER, Pen.WATERLINE);
    line(draft, at, 40, 66, 92, 184, Pen.FAIR);
    curves(draft, at, PROFILE);
    if (views == Views.BOTH) {
      line(draft, at, 4, CENTRE, 996, CENTRE, Pen.WATERLINE);
      line(draft, at, 40, 352, 92, CENTRE, Pen.FAIR);
      curves(draft, at, HALF_BREADTH);
    }
  }

  private static void curves(Draft draft, AffineTransform at, double[][] curves) {
    for (double[] c : List.of(curves)) {
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
