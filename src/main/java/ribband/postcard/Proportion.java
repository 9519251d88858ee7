package ribband.postcard;

import java.awt.image.BufferedImage;

/** The size of a picture in pixels. */
record Proportion(int width, int height) {
  static Proportion of(BufferedImage picture) {
    return new Proportion(picture.getWidth(), picture.getHeight());
  }

  double widthByHeight() {
    return (double) width / height;
  }
}
