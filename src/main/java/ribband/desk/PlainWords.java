package ribband.desk;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes words as Markdown that is read as those words: marks that would mean something where they
 * stand get a backslash, and no others.
 */
final class PlainWords {
  /** What begins a heading, a quotation, a list, a rule or a block of code. */
  private static final Pattern BLOCK = Pattern.compile("^(?:#|>|[-+](?=\\s|$|-)|~)");

  private static final Pattern NUMBERED = Pattern.compile("^([0-9]{1,9})([.)])(?=\\s|$)");

  /** Emphasis, code, links, tags, entities, and a backslash that would take a mark away. */
  private static final Pattern INLINE =
      Pattern.compile(
          "\\\\(?=\\p{Punct}|$)|`|\\[|\\*(?!(?<=\\s\\*)\\s)|_(?!(?<=[\\p{L}\\p{N}]_)[\\p{L}\\p{N}])"
              + "|<(?=[A-Za-z/!?])|&(?=#?\\w+;)|~(?=~)|(?<=~)~");

  private PlainWords() {}

  /** One line of Markdown, a paragraph of its own. */
  static String of(String words) {
    String line = INLINE.matcher(Yaml.line(words)).replaceAll(PlainWords::marked);
    line = BLOCK.matcher(line).replaceFirst(PlainWords::marked);
    return NUMBERED.matcher(line).replaceFirst("$1\\\\$2");
  }

  private static String marked(MatchResult mark) {
    return Matcher.quoteReplacement("\\" + mark.group());
  }
}
