package ribband.journal;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * The text of a journal file: strict UTF-8, lines ended by LF.
 *
 * @param file journal path
 * @param text without byte-order mark; CRLF has become LF
 */
record Source(String file, String text) {
  /** The largest file read: keys of 64 KiB over a text of 1 MiB. */
  static final int MOST_BYTES = (1 << 20) + (64 << 10);

  /** Also the line and paragraph separators, which YAML would count as line ends and we do not. */
  private static final Pattern CONTROL =
      Pattern.compile("[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u2028\\u2029\\uFFFE\\uFFFF]");

  private static final Pattern TURNING = Pattern.compile("[\\u202A-\\u202E\\u2066-\\u2069]");

  /** Decodes a file's bytes; empty where a problem was told. */
  static Optional<Source> of(String file, byte[] bytes, Problems problems) {
    if (bytes.length > MOST_BYTES) {
      problems.error(
          new Place(file, 1, 1),
          "the file is larger than 1 MiB; split it into several entries of the same date");
      return Optional.empty();
    }
    if (startsWithUtf16Mark(bytes)) {
      problems.error(new Place(file, 1, 1), "the file is not UTF-8 but UTF-16; save it as UTF-8");
      return Optional.empty();
    }
    return decode(file, bytes, problems)
        .flatMap(text -> linesEnded(file, text, problems))
        .filter(text -> printable(file, text, problems))
        .map(text -> new Source(file, text));
  }

  private static boolean startsWithUtf16Mark(byte[] bytes) {
    return bytes.length >= 2
        && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
            || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
  }

  private static Optional<String> decode(String file, byte[] bytes, Problems problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = decoder.decode(in, text, true);
    text.flip();
    String decoded = text.toString().replaceFirst("^\uFEFF", "");
    if (result.isError()) {
      String wrong = Integer.toHexString(bytes[in.position()] & 0xFF).toUpperCase(Locale.ROOT);
      problems.error(
          placeAt(file, decoded, decoded.length()),
          "byte " + wrong + " is not UTF-8; save the file as UTF-8");
      return Optional.empty();
    }
    return Optional.of(decoded);
  }

  private static Optional<String> linesEnded(String file, String text, Problems problems) {
    String lines = text.replace("\r\n", "\n");
    int stray = lines.indexOf('\r');
    if (stray >= 0) {
      problems.error(
          placeAt(file, lines, stray),
          "a line ends with CR alone; save the file with LF or CRLF line ends");
      return Optional.empty();
    }
    return Optional.of(lines);
  }

  private static boolean printable(String file, String text, Problems problems) {
    if (isOrdinary(text)) {
      return true;
    }
    Matcher turning = TURNING.matcher(text);
    if (turning.find()) {
      problems.warning(
          placeAt(file, text, turning.start()),
          "an invisible character that turns the reading direction stands here; take it out"
              + allOf(turning));
    }
    Matcher control = CONTROL.matcher(text);
    if (!control.find()) {
      return true;
    }
    problems.error(
        placeAt(file, text, control.start()),
        "control character "
            + Integer.toHexString(0x10000 | control.group().charAt(0))
                .substring(1)
                .toUpperCase(Locale.ROOT)
            + " stands here; take it out"
            + allOf(control));
    return false;
  }

  /** One line tells of all such characters of a file, which may be no text at all. */
  private static String allOf(Matcher found) {
    long more = found.results().count();
    return more == 0 ? "" : ", and " + more + " more below it";
  }

  /** Whether a text holds what no editor shows; a line may end in it. */
  static boolean hasControl(String text) {
    return !isOrdinary(text) && CONTROL.matcher(text).find();
  }

  /**
   * Most texts hold none of what the patterns look for, and a plain look at each letter is fast.
   */
  private static boolean isOrdinary(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= ' ' && c < 0x7F || c == '\n' || c == '\t' || c > 0x9F && c < 0x2028;
      if (!letter) {
        return false;
      }
    }
    return true;
  }

  private static Place placeAt(String file, String text, int offset) {
    int line = 1;
    int start = 0;
    for (int i = text.indexOf('\n'); i >= 0 && i < offset; i = text.indexOf('\n', i + 1)) {
      line++;
      start = i + 1;
    }
    return new Place(file, line, text.codePointCount(start, offset) + 1);
  }
}
