package ribband.postcard;

import java.awt.Color;

/** The colours of the site by day. They stand in {@code site-template/assets/ribband.css} too. */
enum Ink {
  PAPER(0xeef1ef),
  INK(0x14283b),
  INK_2(0x485968),
  RULE(0xb9c4c8),
  ACCENT(0xb3271e),
  PRINT_EDGE(0xffffff);

  private final Color color;

  Ink(int rgb) {
    this.color = new Color(rgb);
  }

  Color color() {
    return color;
  }
}
