package ribband.photo;

import java.awt.Point;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;

/**
 * Takes a picture's rows as a decoder sets them, top to bottom, and keeps only a smaller picture of
 * them: each new pixel is the mean of the area it covers. So the large picture never stands in
 * memory. Made for one decoding.
 *
 * <p>The JDK's JPEG reader is known, not promised, to set whole rows in order: whatever else it
 * sets makes {@link #small} empty.
 */
final class ShrinkingRaster extends WritableRaster {
  private static final int BANDS = 3;

  /** A new pixel's length, in the parts that old pixels share it by. */
  private static final int WHOLE = 256;

  private static final long EVEN_BYTES = 0x00FF00FF00FF00FFL;

  private final BufferedImage small;
  private final byte[] samples;
  private final long[] packed;

  /**
   * Sums of the row in work, four of 16 bits in a long: those of bytes 0, 2, 4, 6 of each eight.
   */
  private final long[] even;

  /** Those of bytes 1, 3, 5, 7. */
  private final long[] odd;

  private final int[] sums;
  private final int[] shares;
  private final int[] smallRow;
  private int next;
  private int filled;
  private int finished;
  private boolean strayed;

  /**
   * @param smallWidth px, no more than the width
   * @param smallHeight px, no more than the height
   */
  ShrinkingRaster(int width, int height, int smallWidth, int smallHeight) {
    super(
        new PixelInterleavedSampleModel(
            DataBuffer.TYPE_BYTE, width, height, BANDS, BANDS * width, new int[] {0, 1, 2}),
        new DataBufferByte(0),
        new Point());
    small = new BufferedImage(smallWidth, smallHeight, BufferedImage.TYPE_INT_RGB);
    int longs = (BANDS * width + Long.BYTES - 1) / Long.BYTES;
    samples = new byte[longs * Long.BYTES];
    packed = new long[longs];
    even = new long[longs];
    odd = new long[longs];
    sums = new int[longs * Long.BYTES];
    smallRow = new int[smallWidth];
    shares = new int[width];
    for (int x = 0; x < width; x++) {
      shares[x] = share(x, width, smallWidth);
    }
  }

  /** A picture to decode into: it has the large one's size and none of its pixels. */
  BufferedImage large() {
    ColorSpace colours = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    return new BufferedImage(
        new ComponentColorModel(colours, false, false, Transparency.OPAQUE, DataBuffer.TYPE_BYTE),
        this,
        false,
        null);
  }

  /** The smaller picture; none where not each row was set, once and in its turn. */
  Optional<BufferedImage> small() {
    return strayed || next < getHeight() ? Optional.empty() : Optional.of(small);
  }

  @Override
  public void setRect(int left, int top, Raster row) {
    boolean inTurn =
        left == 0
            && top == next
            && top < getHeight()
            && row.getWidth() == getWidth()
            && row.getHeight() == 1
            && row.getNumBands() == BANDS
            && row.getTransferType() == DataBuffer.TYPE_BYTE;
    if (!inTurn) {
      strayed = true;
      return;
    }
    row.getDataElements(row.getMinX(), row.getMinY(), getWidth(), 1, samples);
    ByteBuffer.wrap(samples).order(ByteOrder.LITTLE_ENDIAN).asLongBuffer().get(packed);
    int share = share(next++, getHeight(), small.getHeight());
    int here = Math.min(share, WHOLE - filled);
    add(here);
    filled += here;
    if (filled == WHOLE) {
      finishRow();
      filled = share - here;
      add(filled);
    }
  }

  /** How much of a new pixel an old one takes; exactly {@link #WHOLE} for each new one in all. */
  private static int share(int at, int length, int smallLength) {
    return edge(at + 1, length, smallLength) - edge(at, length, smallLength);
  }

  private static int edge(int at, int length, int smallLength) {
    return (int) ((2L * WHOLE * smallLength * at + length) / (2L * length));
  }

  /** The sums of a whole row are at most 255 times 256, which 16 bits hold. */
  private void add(int share) {
    if (share == 0) {
      return;
    }
    for (int i = 0; i < packed.length; i++) {
      even[i] += (packed[i] & EVEN_BYTES) * share;
      odd[i] += (packed[i] >>> 8 & EVEN_BYTES) * share;
    }
  }

  private void finishRow() {
    unpack();
    int red = WHOLE * WHOLE / 2;
    int green = red;
    int blue = red;
    int full = 0;
    int out = 0;
    for (int x = 0, at = 0; x < shares.length; x++, at += BANDS) {
      int share = shares[x];
      full += share;
      int over = full - WHOLE;
      if (over < 0) {
        red += share * sums[at];
        green += share * sums[at + 1];
        blue += share * sums[at + 2];
      } else {
        int here = share - over;
        smallRow[out++] =
            red + here * sums[at] >>> 16 << 16
                | green + here * sums[at + 1] >>> 16 << 8
                | blue + here * sums[at + 2] >>> 16;
        red = WHOLE * WHOLE / 2 + over * sums[at];
        green = WHOLE * WHOLE / 2 + over * sums[at + 1];
        blue = WHOLE * WHOLE / 2 + over * sums[at + 2];
        full = over;
      }
    }
    small.getRaster().setDataElements(0, finished++, smallRow.length, 1, smallRow);
    Arrays.fill(even, 0);
    Arrays.fill(odd, 0);
  }

  private void unpack() {
    for (int i = 0, at = 0; i < even.length; i++, at += Long.BYTES) {
      long evens = even[i];
      long odds = odd[i];
      sums[at] = (int) evens & 0xFFFF;
      sums[at + 1] = (int) odds & 0xFFFF;
      sums[at + 2] = (int) evens >>> 16;
      sums[at + 3] = (int) odds >>> 16;
      sums[at + 4] = (int) (evens >>> 32) & 0xFFFF;
      sums[at + 5] = (int) (odds >>> 32) & 0xFFFF;
      sums[at + 6] = (int) (evens >>> 48);
      sums[at + 7] = (int) (odds >>> 48);
    }
  }
}
