package ribband.photo;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The chunks of a WebP (RFC 9649, section 2), walked to the last.
 *
 * @param width px, of the first frame
 * @param height px, of the first frame
 * @param frames in all
 * @param exif the TIFF block of the EXIF chunk
 * @param profile the ICCP chunk's data
 * @param pixels a WebP of the first frame alone
 */
record WebpOutline(
    int width,
    int height,
    int frames,
    Optional<byte[]> exif,
    Optional<byte[]> profile,
    byte[] pixels)
    implements Outline {
  private static final int RIFF_HEADER = 8;
  private static final int FIRST_CHUNK = 12;
  private static final int CHUNK_HEADER = 8;
  private static final int FRAME_HEADER = 16;
  private static final int HAS_ALPHA = 0x10;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

  static WebpOutline of(byte[] bytes) throws UnfitPicture {
    Walk walk = new Walk(ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN));
    try {
      walk.run();
    } catch (BufferUnderflowException | IllegalArgumentException e) {
      throw UnfitPicture.cutShort();
    }
    return new WebpOutline(
        walk.width, walk.height, Math.max(1, walk.frames), walk.exif, walk.profile, walk.still());
  }

  /** One pass over the chunks; kept only while it runs. */
  private static final class Walk {
    private final ByteBuffer in;
    private int width;
    private int height;
    private int frames;
    private Optional<byte[]> exif = Optional.empty();
    private Optional<byte[]> profile = Optional.empty();
    private byte[] alpha = {};
    private byte[] picture = {};

    Walk(ByteBuffer in) {
      this.in = in;
    }

    void run() throws UnfitPicture {
      // Some writers count one byte of padding that is not there; the chunks tell the rest.
      int end = RIFF_HEADER + in.getInt(4);
      if (end < FIRST_CHUNK || in.limit() < end - 1) {
        throw end < FIRST_CHUNK ? UnfitPicture.damaged() : UnfitPicture.cutShort();
      }
      in.position(FIRST_CHUNK);
      chunks(Math.min(end, in.limit()));
      if (picture.length == 0) {
        throw new UnfitPicture("holds no picture; copy it again from the camera");
      }
    }

    private void chunks(int end) throws UnfitPicture {
      while (end - in.position() >= CHUNK_HEADER) {
        int start = in.position();
        byte[] name = new byte[4];
        in.get(name);
        int length = in.getInt();
        int data = in.position();
        if (length < 0 || length > end - data) {
          throw UnfitPicture.cutShort();
        }
        int next = Math.min(end, data + length + (length & 1));
        switch (new String(name, StandardCharsets.ISO_8859_1)) {
          case "VP8 " -> lossy(start, data, length, next);
          case "VP8L" -> lossless(start, data, length, next);
          case "ALPH" -> alpha = picture.length == 0 ? copy(start, next) : alpha;
          case "ICCP" -> profile = Optional.of(copy(data, data + length));
          case "EXIF" -> exif = Optional.of(tiff(copy(data, data + length)));
          case "ANMF" -> frame(data + FRAME_HEADER, next);
          default -> {}
        }
        in.position(next);
      }
    }

    private void frame(int start, int end) throws UnfitPicture {
      frames++;
      if (picture.length == 0) {
        in.position(start);
        chunks(end);
      }
    }

    /** RFC 6386, section 9.1: a tag of 3 bytes, a start code of 3, then 14 bits for each side. */
    private void lossy(int start, int data, int length, int next) throws UnfitPicture {
      if (length < 10) {
        throw UnfitPicture.damaged();
      }
      keep(in.getShort(data + 6) & 0x3FFF, in.getShort(data + 8) & 0x3FFF, start, next);
    }

    /** RFC 9649, section 3.4: the byte 2F, then 14 bits for each side, less one. */
    private void lossless(int start, int data, int length, int next) throws UnfitPicture {
      if (length < 5) {
        throw UnfitPicture.damaged();
      }
      int sides = in.getInt(data + 1);
      keep((sides & 0x3FFF) + 1, (sides >>> 14 & 0x3FFF) + 1, start, next);
    }

    private void keep(int columns, int rows, int start, int next) throws UnfitPicture {
      if (picture.length == 0) {
        PixelLimit.check(columns, rows);
        width = columns;
        height = rows;
        picture = copy(start, next);
      }
    }

    private byte[] copy(int from, int to) {
      return Arrays.copyOfRange(in.array(), from, to);
    }

    /** Some writers put the opening of a JPEG's EXIF segment before it. */
    private static byte[] tiff(byte[] exif) {
      boolean opened =
          exif.length > EXIF.length && Arrays.equals(exif, 0, EXIF.length, EXIF, 0, EXIF.length);
      return opened ? Arrays.copyOfRange(exif, EXIF.length, exif.length) : exif;
    }

    byte[] still() {
      ByteArrayOutputStream chunks = new ByteArrayOutputStream();
      if (alpha.length > 0) {
        chunks.writeBytes(extended());
        chunks.writeBytes(alpha);
      }
      chunks.writeBytes(picture);
      if ((picture.length & 1) == 1) {
        chunks.write(0);
      }
      return ByteBuffer.allocate(FIRST_CHUNK + chunks.size())
          .order(ByteOrder.LITTLE_ENDIAN)
          .put("RIFF".getBytes(StandardCharsets.US_ASCII))
          .putInt(4 + chunks.size())
          .put("WEBP".getBytes(StandardCharsets.US_ASCII))
          .put(chunks.toByteArray())
          .array();
    }

    /** The chunk that tells of transparency; its sides take 24 bits each. */
    private byte[] extended() {
      return ByteBuffer.allocate(CHUNK_HEADER + 10)
          .order(ByteOrder.LITTLE_ENDIAN)
          .put("VP8X".getBytes(StandardCharsets.US_ASCII))
          .putInt(10)
          .putInt(HAS_ALPHA)
          .putShort((short) (width - 1))
          .put((byte) 0)
          .putShort((short) (height - 1))
          .put((byte) 0)
          .array();
    }
  }
}
