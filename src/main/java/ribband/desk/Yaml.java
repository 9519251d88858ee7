package ribband.desk;

import java.util.regex.Pattern;
import ribband.measure.Hours;

/** Writes words and hours as YAML, so that they are read back as they are. */
final class Yaml {
  /** Words that no reader of YAML takes for anything else, in braces too. */
  private static final Pattern PLAIN =
      Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N} _./()+-]*", Pattern.UNICODE_CHARACTER_CLASS);

  /** What a reader of YAML takes for something else than words. */
  private static final Pattern SPECIAL = Pattern.compile("(?i)null|true|false|yes|no|on|off|y|n");

  /** What no journal file may hold, or what makes it warn. */
  private static final Pattern UNSEEN =
      Pattern.compile(
          "[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\\uFEFF\\uFFFE\\uFFFF\\u202A-\\u202E\\u2066-\\u2069]+");

  private Yaml() {}

  /** Words on one line, a space in place of what cannot be seen. */
  static String line(String words) {
    return UNSEEN.matcher(words).replaceAll(" ").strip();
  }

  /** One line of words, quoted where they would not be read as words. */
  static String text(String words) {
    String line = line(words);
    String quoted = "'" + line.replace("'", "''") + "'";
    return PLAIN.matcher(line).matches() && !SPECIAL.matcher(line).matches() ? line : quoted;
  }

  /**
   * {@code 2:45}; decimal where there are seconds. Read back as the same seconds: 4 decimals are a
   * third of a second.
   */
  static String hours(Hours hours) {
    long minutes = hours.seconds() / 60;
    return hours.seconds() % 60 == 0
        ? minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60
        : hours.decimal();
  }
}
