package ribband.photo;

import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBufferInt;
import java.awt.image.ImageConsumer;
import java.util.BitSet;
import java.util.Hashtable;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Takes the pixels of a JPEG of several scans from the toolkit's decoder, which renders what the
 * scans add up to; ImageIO's renders each of them. It is silent about damage, so it may only be
 * given what has been found sound. Made for one decoding.
 */
final class Rendering implements ImageConsumer {
  /** Only a decoder that died, for want of memory say, takes so long. */
  private static final int PATIENCE_SECONDS = 60;

  private final BufferedImage image;
  private final int[] samples;
  private final BitSet rows = new BitSet();
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean whole;

  private Rendering(int width, int height) {
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    samples = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }

  /** The whole picture as 8-bit RGB; none where the decoder did not come to its end. */
  static Optional<BufferedImage> of(JpegOutline jpeg) {
    Rendering rendering = new Rendering(jpeg.width(), jpeg.height());
    Toolkit.getDefaultToolkit().createImage(jpeg.pixels()).getSource().startProduction(rendering);
    try {
      boolean inTime = rendering.ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
      return inTime && rendering.whole ? Optional.of(rendering.image) : Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  @Override
  public void setPixels(
      int left, int top, int width, int height, ColorModel model, int[] pixels, int at, int row) {
    for (int y = 0; y < height; y++) {
      System.arraycopy(pixels, at + y * row, samples, (top + y) * image.getWidth() + left, width);
    }
    rows.set(top, top + height);
  }

  @Override
  public void imageComplete(int status) {
    // The first call tells how it ended; errors are reported once more after it.
    if (ended.getCount() > 0) {
      whole = status == STATICIMAGEDONE && rows.cardinality() == image.getHeight();
      ended.countDown();
    }
  }

  /** Grey and palettes come so, colours never; rows left out are missed at the end. */
  @Override
  public void setPixels(
      int left, int top, int width, int height, ColorModel model, byte[] pixels, int at, int row) {}

  @Override
  public void setDimensions(int width, int height) {}

  @Override
  public void setProperties(Hashtable<?, ?> properties) {}

  @Override
  public void setColorModel(ColorModel model) {}

  @Override
  public void setHints(int hints) {}
}
