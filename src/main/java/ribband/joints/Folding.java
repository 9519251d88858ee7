package ribband.joints;

import java.nio.charset.StandardCharsets;

/**
 * Folds the lines of a calendar.
 *
 * <p>spec: RFC 5545 3.1: no line is longer than 75 octets, its end not counted; a fold is a line
 * end and a space. The library that writes the calendar counts characters.
 */
final class Folding {
  private static final int OCTETS = 75;

  private Folding() {}

  /** Folds between characters, never within one. */
  static String of(String lines) {
    StringBuilder folded = new StringBuilder(lines.length() + lines.length() / OCTETS);
    int octets = 0;
    for (int i = 0; i < lines.length(); ) {
      int point = lines.codePointAt(i);
      String one = Character.toString(point);
      int length = one.getBytes(StandardCharsets.UTF_8).length;
      boolean isEnd = point == '\r' || point == '\n';
      if (!isEnd && octets + length > OCTETS) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(one);
      octets = isEnd ? 0 : octets + length;
      i += one.length();
    }
    return folded.toString();
  }
}
