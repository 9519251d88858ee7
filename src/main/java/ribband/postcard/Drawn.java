package ribband.postcard;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** A line or curve at its place, in units, and the pen that draws it. */
record Drawn(Path2D path, Pen pen) {
  static Drawn line(double x1, double y1, double x2, double y2, Pen pen) {
    return new Drawn(new Path2D.Double(new Line2D.Double(x1, y1, x2, y2)), pen);
  }

  static Drawn frame(Box box, Pen pen) {
    Path2D path = new Path2D.Double();
    path.moveTo(box.x(), box.y());
    path.lineTo(box.right(), box.y());
    path.lineTo(box.right(), box.bottom());
    path.lineTo(box.x(), box.bottom());
    path.closePath();
    return new Drawn(path, pen);
  }
}
