package ribband.past;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Decodes a spreadsheet saved as text: UTF-8, with a mark or without, or UTF-16 with one. */
final class SheetText {
  static final int MOST_BYTES = 16 << 20;
  private static final String CURE = "save it as CSV UTF-8";

  private SheetText() {}

  /** The text without a mark; empty where a problem was told. */
  static Optional<String> of(String file, byte[] bytes, Problems problems) {
    if (bytes.length > MOST_BYTES) {
      problems.error(
          Place.of(file),
          "the file is larger than 16 MiB; split it, and bring the parts one by one");
      return Optional.empty();
    }
    if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      problems.error(
          Place.of(file),
          "the file is a spreadsheet program's own; open it there and save the sheet as CSV UTF-8");
      return Optional.empty();
    }
    Charset charset =
        startsWith(bytes, 0xFF, 0xFE)
            ? StandardCharsets.UTF_16LE
            : startsWith(bytes, 0xFE, 0xFF) ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    return decoded(file, bytes, charset, problems).filter(text -> isText(file, text, problems));
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static Optional<String> decoded(
      String file, byte[] bytes, Charset charset, Problems problems) {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString().replaceFirst("^\uFEFF", "");
    if (result.isError()) {
      String wrong =
          Integer.toHexString(0x100 | bytes[in.position()] & 0xFF)
              .substring(1)
              .toUpperCase(Locale.ROOT);
      Place end = SheetRows.end(file, text);
      problems.error(
          end,
          CellAt.letters(end.column())
              + end.line()
              + " holds byte "
              + wrong
              + ", which is not "
              + charset.name()
              + "; "
              + CURE);
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static boolean isText(String file, String text, Problems problems) {
    if (text.isBlank()) {
      problems.error(Place.of(file), "the file is empty; save the sheet as CSV UTF-8");
      return false;
    }
    if (text.indexOf('\0') >= 0) {
      problems.error(
          SheetRows.end(file, text.substring(0, text.indexOf('\0'))),
          "the file holds zero bytes, so it is no UTF-8 text; " + CURE);
      return false;
    }
    return true;
  }
}
