package ribband.photo;

import java.awt.image.BufferedImage;
import java.util.BitSet;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadUpdateListener;

/** Notes which rows a reader has filled, where a file may end early without a word. */
final class FinishedRows implements IIOReadUpdateListener {
  private final BitSet rows = new BitSet();

  int count() {
    return rows.cardinality();
  }

  @Override
  public void imageUpdate(
      ImageReader reader,
      BufferedImage image,
      int left,
      int top,
      int width,
      int height,
      int stepRight,
      int stepDown,
      int[] bands) {
    for (int i = 0; i < height; i++) {
      rows.set(top + i * stepDown);
    }
  }

  @Override
  public void passStarted(
      ImageReader reader,
      BufferedImage image,
      int pass,
      int firstPass,
      int lastPass,
      int left,
      int top,
      int stepRight,
      int stepDown,
      int[] bands) {}

  @Override
  public void passComplete(ImageReader reader, BufferedImage image) {}

  @Override
  public void thumbnailPassStarted(
      ImageReader reader,
      BufferedImage image,
      int pass,
      int firstPass,
      int lastPass,
      int left,
      int top,
      int stepRight,
      int stepDown,
      int[] bands) {}

  @Override
  public void thumbnailUpdate(
      ImageReader reader,
      BufferedImage image,
      int left,
      int top,
      int width,
      int height,
      int stepRight,
      int stepDown,
      int[] bands) {}

  @Override
  public void thumbnailPassComplete(ImageReader reader, BufferedImage image) {}
}
