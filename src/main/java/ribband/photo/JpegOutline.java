package ribband.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The marker segments of a JPEG (ITU-T T.81, annex B), walked from start of image to end of image.
 *
 * @param width px, as stored
 * @param height px, as stored
 * @param samples what a pixel is made of
 * @param scans passes over the pixels; several in a progressive JPEG
 * @param exif the TIFF block of the first APP1 segment that holds EXIF
 * @param profile the ICC profile of the APP2 segments; none where a part is missing
 * @param pixels the file without those segments
 * @param padding zero bytes that stand just before the end of image
 */
record JpegOutline(
    int width,
    int height,
    Samples samples,
    int scans,
    Optional<byte[]> exif,
    Optional<byte[]> profile,
    byte[] pixels,
    int padding)
    implements Outline {
  /** What a pixel is made of. */
  enum Samples {
    GREY,
    COLOUR,
    /** Four inks, stored as what they leave white. */
    CMYK,
    /** Cyan, magenta and yellow as luma and chroma, black as above. */
    YCCK
  }

  private static final int START_OF_SCAN = 0xDA;
  private static final int END_OF_IMAGE = 0xD9;
  private static final int APP1 = 0xE1;
  private static final int APP2 = 0xE2;
  private static final int APP14 = 0xEE;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};
  private static final byte[] ICC = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);

  private static final byte[] ADOBE = "Adobe".getBytes(StandardCharsets.US_ASCII);

  /** After the name: version, two flags of 16 bits each, then the transform; 2 is YCCK. */
  private static final int ADOBE_TRANSFORM = 6;

  /** A camera's progressive JPEG has about ten; each scan costs a pass over all pixels. */
  private static final int MOST_SCANS = 100;

  static JpegOutline of(byte[] bytes) throws UnfitPicture {
    Walk walk = new Walk(ByteBuffer.wrap(bytes));
    walk.run();
    return new JpegOutline(
        walk.width,
        walk.height,
        walk.samples(),
        walk.scans,
        walk.exif,
        walk.profile(),
        walk.pixels(),
        walk.padding);
  }

  /** One pass over the markers; kept only while it runs. */
  private static final class Walk {
    private final ByteBuffer in;
    private int width;
    private int height;
    private int components;
    private int adobeTransform;
    private Optional<byte[]> exif = Optional.empty();

    /** Parts of the profile by their numbers, which count from 1. */
    private final SortedMap<Integer, byte[]> profileParts = new TreeMap<>();

    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private int keptTo;
    private int scans;
    private int padding;

    Walk(ByteBuffer in) {
      this.in = in;
    }

    void run() throws UnfitPicture {
      in.position(2);
      for (int marker = nextMarker(); marker != END_OF_IMAGE; marker = nextMarker()) {
        if (stands(marker)) {
          continue;
        }
        int start = in.position() - 2;
        ByteBuffer segment = segment();
        if (isFrame(marker)) {
          frame(marker, segment);
        } else if (marker == APP1 && exif.isEmpty()) {
          exif = after(EXIF, segment);
        } else if (marker == APP2 && scans == 0) {
          after(ICC, segment).ifPresent(part -> profilePart(part, start));
        } else if (marker == APP14) {
          after(ADOBE, segment).ifPresent(this::adobe);
        } else if (marker == START_OF_SCAN && ++scans > MOST_SCANS) {
          throw new UnfitPicture("is a JPEG of more than 100 scans; export it as a plain JPEG");
        }
      }
      if (width == 0 || scans == 0) {
        throw new UnfitPicture("holds no picture; copy it again from the camera");
      }
      padding = zerosBefore(in.position() - 2);
    }

    /** Passes over coded data, in which an FF is followed by 00 or a restart marker. */
    private int nextMarker() throws UnfitPicture {
      byte[] bytes = in.array();
      for (int at = in.position(); at < bytes.length - 1; at++) {
        if (bytes[at] == (byte) 0xFF && isMarker(bytes[at + 1] & 0xFF)) {
          in.position(at + 2);
          return bytes[at + 1] & 0xFF;
        }
      }
      throw UnfitPicture.cutShort();
    }

    private static boolean isMarker(int code) {
      boolean coded = code == 0x00 || (code >= 0xD0 && code <= 0xD7);
      return !coded && code != 0xFF;
    }

    /** Markers without a segment: TEM, and a start of image met again. */
    private static boolean stands(int marker) {
      return marker == 0x01 || marker == 0xD8;
    }

    private ByteBuffer segment() throws UnfitPicture {
      if (in.remaining() < 2) {
        throw UnfitPicture.cutShort();
      }
      int length = (in.getShort() & 0xFFFF) - 2;
      if (length < 0) {
        throw UnfitPicture.damaged();
      }
      if (in.remaining() < length) {
        throw UnfitPicture.cutShort();
      }
      ByteBuffer segment = in.slice(in.position(), length);
      in.position(in.position() + length);
      return segment;
    }

    private static boolean isFrame(int marker) {
      boolean otherC = marker == 0xC4 || marker == 0xC8 || marker == 0xCC;
      return marker >= 0xC0 && marker <= 0xCF && !otherC;
    }

    private void frame(int marker, ByteBuffer segment) throws UnfitPicture {
      if (segment.remaining() < 6 || width != 0) {
        throw UnfitPicture.damaged();
      }
      int precision = segment.get();
      int rows = segment.getShort() & 0xFFFF;
      int columns = segment.getShort() & 0xFFFF;
      components = segment.get() & 0xFF;
      // Only baseline, extended and progressive Huffman frames of 8 bits are decoded by the JDK.
      if (marker > 0xC2 || precision != 8 || rows == 0) {
        throw new UnfitPicture("is an unusual kind of JPEG; export it as a plain JPEG");
      }
      if (components != 1 && components != 3 && components != 4) {
        throw new UnfitPicture("is a JPEG without plain colors; export it as an sRGB JPEG");
      }
      PixelLimit.check(columns, rows);
      width = columns;
      height = rows;
    }

    private static Optional<byte[]> after(byte[] opening, ByteBuffer segment) {
      byte[] data = new byte[segment.remaining()];
      segment.get(data);
      boolean opens =
          data.length > opening.length
              && Arrays.equals(data, 0, opening.length, opening, 0, opening.length);
      return opens
          ? Optional.of(Arrays.copyOfRange(data, opening.length, data.length))
          : Optional.empty();
    }

    private void adobe(byte[] data) {
      adobeTransform = data.length > ADOBE_TRANSFORM ? data[ADOBE_TRANSFORM] : 0;
    }

    Samples samples() {
      return switch (components) {
        case 1 -> Samples.GREY;
        case 3 -> Samples.COLOUR;
        default -> adobeTransform == 2 ? Samples.YCCK : Samples.CMYK;
      };
    }

    /** A part opens with its number and the count of parts. */
    private void profilePart(byte[] part, int start) {
      if (part.length > 2) {
        profileParts.put(part[0] & 0xFF, part);
      }
      kept.write(in.array(), keptTo, start - keptTo);
      keptTo = in.position();
    }

    Optional<byte[]> profile() {
      ByteArrayOutputStream whole = new ByteArrayOutputStream();
      for (byte[] part : profileParts.values()) {
        whole.write(part, 2, part.length - 2);
      }
      boolean complete =
          !profileParts.isEmpty()
              && (profileParts.get(profileParts.lastKey())[1] & 0xFF) == profileParts.size()
              && profileParts.lastKey() == profileParts.size();
      return complete ? Optional.of(whole.toByteArray()) : Optional.empty();
    }

    byte[] pixels() {
      if (keptTo == 0) {
        return in.array();
      }
      kept.write(in.array(), keptTo, in.capacity() - keptTo);
      return kept.toByteArray();
    }

    private int zerosBefore(int end) {
      int start = end;
      while (start > 0 && in.get(start - 1) == 0) {
        start--;
      }
      return end - start;
    }
  }
}
