package ribband.desk;

import java.util.regex.Pattern;

/** Writes words as YAML, so that they are read back as they are. */
final class Yaml {
  /** Words that no reader of YAML takes for anything else, in braces too. */
  private static final Pattern PLAIN =
      Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N} _./()+-]*", Pattern.UNICODE_CHARACTER_CLASS);

  /** What a reader of YAML takes for something else than words. */
  private static final Pattern SPECIAL = Pattern.compile("(?i)null|true|false|yes|no|on|off|y|n");

  private Yaml() {}

  /** One line of words, quoted where they would not be read as words. */
  static String text(String words) {
    String line = words.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029\\uFEFF]+", " ").strip();
    boolean plain = PLAIN.matcher(line).matches() && !SPECIAL.matcher(line).matches();
    return plain ? line : "'" + line.replace("'", "''") + "'";
  }
}
