package ribband.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/** Builds EXIF blocks by hand (EXIF 2.32, 4.6) and plants them in JPEGs and PNGs. */
final class Exif {
  static final String OWNER = "Owner Planted Here";
  static final String SERIAL = "SN-4711-PLANTED";
  static final String COMMENT = "Planted comment";

  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;

  private record Tag(int number, int type, int count, byte[] value) {}

  private Exif() {}

  static byte[] orientation(int value) {
    return tiff(value, "2026:03:14 20:25:41");
  }

  /** A TIFF block with orientation, owner, time, serial number, position and thumbnail. */
  static byte[] tiff(int orientation, String taken) {
    byte[] thumbnail = Scene.jpeg(Scene.of(16, 12));
    int ifd0 = 8;
    List<Tag> main =
        new ArrayList<>(
            List.of(
                new Tag(0x0112, SHORT, 1, shorts(orientation)),
                new Tag(0x013B, ASCII, OWNER.length() + 1, ascii(OWNER)),
                new Tag(0x8769, LONG, 1, longs(0)),
                new Tag(0x8825, LONG, 1, longs(0))));
    List<Tag> shot =
        List.of(
            new Tag(0x9003, ASCII, taken.length() + 1, ascii(taken)),
            new Tag(0xA430, ASCII, OWNER.length() + 1, ascii(OWNER)),
            new Tag(0xA431, ASCII, SERIAL.length() + 1, ascii(SERIAL)));
    List<Tag> position =
        List.of(
            new Tag(1, ASCII, 2, ascii("N")),
            new Tag(2, RATIONAL, 3, longs(12, 1, 34, 1, 5678, 100)),
            new Tag(3, ASCII, 2, ascii("W")),
            new Tag(4, RATIONAL, 3, longs(43, 1, 21, 1, 8765, 100)));
    int shotAt = ifd0 + size(main);
    int positionAt = shotAt + size(shot);
    int smallAt = positionAt + size(position);
    main.set(2, new Tag(0x8769, LONG, 1, longs(shotAt)));
    main.set(3, new Tag(0x8825, LONG, 1, longs(positionAt)));
    List<Tag> small = new ArrayList<>();
    small.add(new Tag(0x0201, LONG, 1, longs(0)));
    small.add(new Tag(0x0202, LONG, 1, longs(thumbnail.length)));
    int thumbnailAt = smallAt + size(small);
    small.set(0, new Tag(0x0201, LONG, 1, longs(thumbnailAt)));
    ByteBuffer out = buffer(thumbnailAt + thumbnail.length);
    out.put(ascii("II")[0]).put((byte) 'I').putShort((short) 42).putInt(ifd0);
    write(out, main, smallAt);
    write(out, shot, 0);
    write(out, position, 0);
    write(out, small, 0);
    return out.put(thumbnail).array();
  }

  /** The JPEG with the block in an APP1 segment, a comment, and bytes after its end. */
  static byte[] inJpeg(byte[] jpeg, byte[] tiff) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    segment(out, 0xE1, join(new byte[] {'E', 'x', 'i', 'f', 0, 0}, tiff));
    segment(out, 0xE1, ascii("http://ns.adobe.com/xap/1.0/\0<x>" + OWNER + "</x>"));
    segment(out, 0xFE, ascii(COMMENT));
    out.write(jpeg, 2, jpeg.length - 2);
    out.writeBytes(ascii(SERIAL));
    return out.toByteArray();
  }

  /** The PNG with the block in an eXIf chunk after its header. */
  static byte[] inPng(byte[] png, byte[] tiff) {
    return withChunk(png, "eXIf", tiff);
  }

  /** The PNG with one more chunk after its header. */
  static byte[] withChunk(byte[] png, String type, byte[] data) {
    int header = 8 + 25;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, header);
    out.writeBytes(chunk(type, data));
    out.write(png, header, png.length - header);
    return out.toByteArray();
  }

  static byte[] chunk(String type, byte[] data) {
    byte[] named = join(type.getBytes(StandardCharsets.ISO_8859_1), data);
    CRC32 sum = new CRC32();
    sum.update(named);
    return ByteBuffer.allocate(named.length + 8)
        .putInt(data.length)
        .put(named)
        .putInt((int) sum.getValue())
        .array();
  }

  static void segment(ByteArrayOutputStream out, int marker, byte[] data) {
    out.write(0xFF);
    out.write(marker);
    out.write(data.length + 2 >> 8);
    out.write(data.length + 2);
    out.writeBytes(data);
  }

  static byte[] join(byte[] first, byte[] second) {
    return ByteBuffer.allocate(first.length + second.length).put(first).put(second).array();
  }

  private static void write(ByteBuffer out, List<Tag> tags, int next) {
    int spare = out.position() + 2 + 12 * tags.size() + 4;
    out.putShort((short) tags.size());
    ByteArrayOutputStream longer = new ByteArrayOutputStream();
    for (Tag tag : tags) {
      out.putShort((short) tag.number()).putShort((short) tag.type()).putInt(tag.count());
      if (tag.value().length <= 4) {
        out.put(tag.value()).put(new byte[4 - tag.value().length]);
      } else {
        out.putInt(spare + longer.size());
        longer.writeBytes(tag.value());
      }
    }
    out.putInt(next).put(longer.toByteArray());
  }

  private static int size(List<Tag> tags) {
    return 2
        + 12 * tags.size()
        + 4
        + tags.stream().mapToInt(tag -> tag.value().length).filter(length -> length > 4).sum();
  }

  private static byte[] ascii(String text) {
    return (text + "\0").getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] shorts(int value) {
    return buffer(2).putShort((short) value).array();
  }

  private static byte[] longs(int... values) {
    ByteBuffer out = buffer(4 * values.length);
    for (int value : values) {
      out.putInt(value);
    }
    return out.array();
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }
}
