package ribband.documents;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Makes the files and pictures that the format's reference names in words. */
final class SpoiledFiles {
  private static final String ENTRY = "2026-03-14-garboard.md";

  private SpoiledFiles() {}

  /** Makes a journal's entry as the words say it. */
  static void file(Path journal, String words) throws IOException {
    String head = "---\nphase: planking\n---\n";
    byte[] entry =
        switch (words) {
          case "an entry of nothing but empty lines" -> utf8("\n\n");
          case "an entry of more than 1 MiB" -> utf8(head + "word\n".repeat(230_000));
          case "an entry whose text is more than 1 MiB" -> utf8(head + "word\n".repeat(210_000));
          case "an entry whose keys are more than 64 KiB" ->
              utf8("---\nlesson:\n" + "  - a lesson\n".repeat(6_000) + "---\n");
          case "an entry saved as UTF-16" -> (head + "Words.").getBytes(StandardCharsets.UTF_16);
          case "an entry saved as Latin-1" ->
              (head + "A caf\u00e9.").getBytes(StandardCharsets.ISO_8859_1);
          case "an entry saved with CR alone" -> utf8(head.replace('\n', '\r'));
          case "an entry with two control characters" -> utf8(head + "A\u0007 and\u0007");
          case "an entry with a character that turns the reading direction" ->
              utf8(head + "A\u202e word.\n");
          case "an entry with four hundred quote marks in a line" ->
              utf8(head + ">".repeat(400) + " word\n");
          case "an entry with a hundred opening brackets in a row" -> utf8(head + "[".repeat(100));
          case "an entry with three thousand opening brackets in a paragraph" ->
              utf8(head + "[a ".repeat(3_000));
          case "an entry whose receipt is a link that leads out of the journal" -> {
            Files.createSymbolicLink(journal.resolve("receipt.pdf"), Path.of("/dev/null"));
            yield utf8(
                "---\nphase: planking\nmaterials:\n  bought:\n"
                    + "    - {item: discs, receipt: receipt.pdf}\n---\n");
          }
          case "words about the boat that hold a picture" -> {
            about(journal, utf8("![Her](hull.jpg)\n"));
            yield utf8(head);
          }
          case "words about the boat saved as Latin-1" -> {
            about(journal, "A caf\u00e9.".getBytes(StandardCharsets.ISO_8859_1));
            yield utf8(head);
          }
          default -> throw new AssertionError("nothing makes " + words);
        };
    Files.write(journal.resolve(ENTRY), entry);
  }

  private static void about(Path journal, byte[] words) throws IOException {
    Files.write(journal.resolve("about.md"), words);
    Files.writeString(journal.resolve("project.yaml"), "name: D\nsite: {about: about.md}\n");
  }

  /** Makes a picture as the words say it. */
  static void picture(Path file, String words) throws IOException {
    if (words.equals("a file of more than 200 MB")) {
      try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
        large.setLength(200_000_001);
      }
      return;
    }
    Files.write(file, bytes(words));
  }

  private static byte[] bytes(String words) throws IOException {
    byte[] jpeg = image("jpg");
    return switch (words) {
      case "an empty file" -> new byte[0];
      case "words" -> utf8("No picture, only words.\n");
      case "bytes of nothing known" -> hex("0102030405060708");
      case "a JPEG cut short" -> Arrays.copyOf(jpeg, jpeg.length - 200);
      case "a JPEG whose header is damaged" -> patched(jpeg, frame(jpeg) + 7, 0, 0);
      case "a JPEG of nothing but its ends" -> hex("ffd8ffd9");
      case "a JPEG of a hundred and one scans" -> scans(jpeg);
      case "a JPEG in arithmetic coding" -> patched(jpeg, frame(jpeg) + 1, 0xC9);
      case "a JPEG of two inks" -> patched(jpeg, frame(jpeg) + 9, 2);
      case "a PNG that says 40,000 px" -> {
        byte[] png = image("png");
        yield patched(png, 16, 0, 0, 0x9C, 0x40);
      }
      case "a GIF of two frames" ->
          Files.readAllBytes(Path.of("src/test/resources/ribband/photo/animated.gif"));
      case "HEIC" -> hex("0000001866747970686569630000000068656963");
      case "AVIF" -> hex("0000001866747970617669660000000061766966");
      case "a camera's RAW" -> hex("00000018667479706372782000000000637278");
      case "TIFF, and most other RAW" -> hex("49492a000800000000000000");
      case "BMP" -> hex("424d3600000000000000360000002800000001000000");
      case "PSD" -> hex("3842505300010000000000000003000000010000");
      case "ICO" -> hex("00000100010010100000010020006804000016000000");
      case "EPS" -> utf8("%!PS-Adobe-3.0 EPSF-3.0\n");
      case "PDF" -> utf8("%PDF-1.7\n");
      case "a film" -> hex("00000018667479706d703432000000006d703432");
      default -> throw new AssertionError("nothing makes " + words);
    };
  }

  private static byte[] scans(byte[] jpeg) throws IOException {
    int scan = 0;
    while ((jpeg[scan] & 0xFF) != 0xFF || (jpeg[scan + 1] & 0xFF) != 0xDA) {
      scan++;
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(jpeg, 0, scan);
    for (int i = 0; i < 101; i++) {
      bytes.write(jpeg, scan, jpeg.length - 2 - scan);
    }
    bytes.write(jpeg, jpeg.length - 2, 2);
    return bytes.toByteArray();
  }

  /** Where the frame's header begins (ITU-T T.81, B.2.2). */
  private static int frame(byte[] jpeg) {
    int at = 0;
    while ((jpeg[at] & 0xFF) != 0xFF || (jpeg[at + 1] & 0xFF) != 0xC0) {
      at++;
    }
    return at;
  }

  private static byte[] patched(byte[] bytes, int at, int... others) {
    byte[] patched = bytes.clone();
    for (int i = 0; i < others.length; i++) {
      patched[at + i] = (byte) others[i];
    }
    if (bytes[1] == 'P') {
      // ISO/IEC 15948, 5.3: the header's check sum is over its name and its 13 bytes.
      CRC32 sum = new CRC32();
      sum.update(patched, 12, 17);
      ByteBuffer.wrap(patched).putInt(29, (int) sum.getValue());
    }
    return patched;
  }

  private static byte[] image(String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    BufferedImage image = new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 90 * 60; i++) {
      image.setRGB(i % 90, i / 90, i * 7919);
    }
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] hex(String digits) {
    return HexFormat.of().parseHex(digits);
  }
}
