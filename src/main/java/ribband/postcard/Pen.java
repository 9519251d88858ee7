package ribband.postcard;

import java.awt.BasicStroke;

/** The pens of the drawing: a colour, a width and a dash, in units. */
enum Pen {
  RULE(Ink.RULE, 1),
  WATERLINE(Ink.INK_2, 1, 16, 6, 4, 6),
  FINE(Ink.INK, 1),
  BORDER(Ink.INK, 2),
  FAIR(Ink.INK, 2.4f),
  BATTEN(Ink.INK, 5),
  LONGEST(Ink.ACCENT, 5),
  TAB(Ink.ACCENT, 7);

  private final Ink ink;
  private final BasicStroke stroke;

  Pen(Ink ink, float width, float... dash) {
    this.ink = ink;
    this.stroke =
        new BasicStroke(
            width,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            4,
            dash.length == 0 ? null : dash,
            0);
  }

  Ink ink() {
    return ink;
  }

  BasicStroke stroke() {
    return stroke;
  }

  /** The nearest place where an upright or level line fills whole units, not two in half. */
  double crisp(double at) {
    return stroke.getLineWidth() % 2 == 1 ? Math.floor(at) + 0.5 : Math.rint(at);
  }
}
