package ribband.telling;

import java.util.regex.Pattern;

/** Escapes a line of plain words so that Markdown takes none of it for markup. */
final class MarkdownWords {
  /**
   * What is markup wherever it stands, in CommonMark or in the extensions that many readers add.
   */
  private static final Pattern ANYWHERE = Pattern.compile("[\\\\`*_{}\\[\\]<|~^#=]");

  /** What would be a character by its name. */
  private static final Pattern ENTITY = Pattern.compile("&(?=[A-Za-z][A-Za-z0-9]*;)");

  /** What would become a link by itself. */
  private static final Pattern LINK = Pattern.compile("(?i)(?<=www)\\.|:(?=/)");

  /** What would begin a list, a rule or a quotation. */
  private static final Pattern BEGINNING = Pattern.compile("^(?=[-+>])|^([0-9]+)(?=[.)])");

  private MarkdownWords() {}

  static String of(String line) {
    String words = ANYWHERE.matcher(line).replaceAll("\\\\$0");
    words = ENTITY.matcher(words).replaceAll("\\\\&");
    words = LINK.matcher(words).replaceAll("\\\\$0");
    return BEGINNING.matcher(words).replaceAll("$1\\\\");
  }
}
