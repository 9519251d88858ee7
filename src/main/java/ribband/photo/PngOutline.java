package ribband.photo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.InflaterInputStream;

/**
 * The chunks of a PNG (W3C Recommendation, section 5), walked to the last.
 *
 * @param width px
 * @param height px
 * @param exif the eXIf chunk's data
 * @param profile what the iCCP chunk unfolds to; none where it is too large or broken
 * @param pixels a PNG of the chunks that make the pixels, and of no others: text, profiles and
 *     whatever else could unfold to any size never reaches the decoder
 */
record PngOutline(
    int width, int height, Optional<byte[]> exif, Optional<byte[]> profile, byte[] pixels)
    implements Outline {
  private static final int SIGNATURE = 8;
  private static final int LENGTH_AND_TYPE = 8;
  private static final int CRC = 4;

  /** Profiles of cameras and screens have some kilobytes. */
  private static final int MOST_PROFILE_BYTES = 4_000_000;

  static PngOutline of(byte[] bytes) throws UnfitPicture {
    Walk walk = new Walk(ByteBuffer.wrap(bytes));
    walk.run();
    return new PngOutline(
        walk.width, walk.height, walk.exif, walk.profile, walk.pixels.toByteArray());
  }

  /** One pass over the chunks; kept only while it runs. */
  private static final class Walk {
    private final ByteBuffer in;
    private final ByteArrayOutputStream pixels = new ByteArrayOutputStream();
    private int width;
    private int height;
    private Optional<byte[]> exif = Optional.empty();
    private Optional<byte[]> profile = Optional.empty();
    private boolean anyData;

    Walk(ByteBuffer in) {
      this.in = in;
    }

    void run() throws UnfitPicture {
      keep(0, SIGNATURE);
      in.position(SIGNATURE);
      for (String type = ""; !type.equals("IEND"); ) {
        type = chunk();
      }
      if (!anyData) {
        throw new UnfitPicture("holds no picture; copy it again from the camera");
      }
    }

    private String chunk() throws UnfitPicture {
      int start = in.position();
      if (in.remaining() < LENGTH_AND_TYPE) {
        throw UnfitPicture.cutShort();
      }
      int length = in.getInt();
      byte[] name = new byte[4];
      in.get(name);
      if (length < 0) {
        throw UnfitPicture.damaged();
      }
      if (in.remaining() - CRC < length) {
        throw UnfitPicture.cutShort();
      }
      int end = start + LENGTH_AND_TYPE + length + CRC;
      String type = new String(name, StandardCharsets.ISO_8859_1);
      if ((width == 0) != type.equals("IHDR")) {
        throw UnfitPicture.damaged();
      }
      switch (type) {
        case "IHDR" -> {
          header(length);
          keepSound(start, end);
        }
        case "PLTE", "tRNS", "IEND" -> keepSound(start, end);
        case "IDAT" -> {
          anyData = true;
          keepSound(start, end);
        }
        case "eXIf" -> exif = Optional.of(copy(start + LENGTH_AND_TYPE, length));
        case "iCCP" -> profile = unfold(copy(start + LENGTH_AND_TYPE, length));
        default -> {}
      }
      in.position(end);
      return type;
    }

    private void header(int length) throws UnfitPicture {
      if (length != 13) {
        throw UnfitPicture.damaged();
      }
      int columns = in.getInt();
      int rows = in.getInt();
      PixelLimit.check(columns, rows);
      width = columns;
      height = rows;
    }

    private void keepSound(int start, int end) throws UnfitPicture {
      CRC32 sum = new CRC32();
      sum.update(in.array(), start + 4, end - CRC - start - 4);
      if ((int) sum.getValue() != in.getInt(end - CRC)) {
        throw UnfitPicture.damaged();
      }
      keep(start, end);
    }

    private void keep(int start, int end) {
      pixels.write(in.array(), start, end - start);
    }

    private byte[] copy(int start, int length) {
      byte[] data = new byte[length];
      in.get(start, data);
      return data;
    }

    /**
     * @param chunk a name, 0, the method 0, the deflated profile
     */
    private static Optional<byte[]> unfold(byte[] chunk) {
      int name = 0;
      while (name < chunk.length && chunk[name] != 0) {
        name++;
      }
      int start = Math.min(chunk.length, name + 2);
      ByteArrayInputStream deflated = new ByteArrayInputStream(chunk, start, chunk.length - start);
      try (InflaterInputStream in = new InflaterInputStream(deflated)) {
        byte[] profile = in.readNBytes(MOST_PROFILE_BYTES);
        return in.read() < 0 ? Optional.of(profile) : Optional.empty();
      } catch (IOException e) {
        return Optional.empty();
      }
    }
  }
}
