package ribband.postcard;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Words at their place.
 *
 * @param size of an em, in units
 * @param x where they begin, in units
 * @param baseline in units
 */
record Words(String text, Hand hand, double size, double x, double baseline) {
  Path2D outline() {
    AffineTransform place = AffineTransform.getTranslateInstance(x, baseline);
    place.scale(size, size);
    return new Path2D.Double(Lettering.of(text, hand).outline(), place);
  }

  /** What is inked. */
  Box box() {
    Rectangle2D inked = outline().getBounds2D();
    return new Box(inked.getX(), inked.getY(), inked.getWidth(), inked.getHeight());
  }
}
