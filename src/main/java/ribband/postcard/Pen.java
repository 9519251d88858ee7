package ribband.postcard;

import java.awt.BasicStroke;

/** The pens of the drawing: a colour, a width and a dash, in units. */
enum Pen {
  RULE(Ink.RULE, 1.2f),
  STATION(Ink.RULE, 1.2f),
  WATERLINE(Ink.INK_2, 1.2f, 16, 6, 4, 6),
  BORDER(Ink.INK, 2f),
  PRINT(Ink.INK, 1.2f),
  FAIR(Ink.INK, 2.4f),
  FAR(Ink.INK_2, 1.4f, 3, 5),
  BATTEN(Ink.INK, 5f),
  LONGEST(Ink.ACCENT, 5f),
  TAB(Ink.ACCENT, 7f);

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
}
