package ribband.postcard;

import java.awt.image.BufferedImage;
import java.util.Optional;

/** Draws cards. Keeps nothing between calls but the letters it has read, and may be shared. */
public final class Postcard {
  /** Changes whenever the look of a card would; a part of the name of a file named by content. */
  public static final String RECIPE = "postcard 3";

  private Postcard() {}

  /**
   * A card as a PNG of the shape's size: the same for the same face and picture.
   *
   * @param picture upright, of any size and proportion; shown whole
   */
  public static byte[] png(Face face, Optional<BufferedImage> picture, Shape shape) {
    Sheet sheet = SheetPlan.of(face, picture.map(Proportion::of), shape);
    return PngFile.bytes(Painter.paint(sheet, picture, shape));
  }

  /** Whether a file's content is a card that we drew, and so may be replaced by another. */
  public static boolean isOurs(byte[] content) {
    return PngFile.isOurs(content);
  }
}
