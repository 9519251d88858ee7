package ribband.prose;

import java.util.Objects;

/**
 * An entry's text as it stands in its file.
 *
 * @param file path from the journal's root, for the places of problems
 * @param firstLine 1-based line of the file on which the text begins
 * @param text Markdown, lines ending in LF or CRLF; may be empty
 */
public record Body(String file, int firstLine, String text) {
  public Body {
    Objects.requireNonNull(file);
    Objects.requireNonNull(text);
    if (firstLine < 1) {
      throw new IllegalArgumentException("first line " + firstLine);
    }
  }
}
