package ribband.postcard;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** A line or curve at its place, in units, and the pen that draws it. */
record Drawn(Path2D path, Pen pen) {
  static Drawn line(double x1, double y1, double x2, double y2, Pen pen) {
    return new Drawn(new Path2D.Double(new Line2D.Double(x1, y1, x2, y2)), pen);
  }

  static Drawn across(double left, double right, double y, Pen pen) {
    double crisp = pen.crisp(y);
    return line(left, crisp, right, crisp, pen);
  }

  static Drawn down(double x, double top, double bottom, Pen pen) {
    double crisp = pen.crisp(x);
    return line(crisp, top, crisp, bottom, pen);
  }

  static Drawn frame(Box box, Pen pen) {
    double left = pen.crisp(box.x());
    double top = pen.crisp(box.y());
    double width = pen.crisp(box.right()) - left;
    double height = pen.crisp(box.bottom()) - top;
    return new Drawn(new Path2D.Double(new Rectangle2D.Double(left, top, width, height)), pen);
  }
}
