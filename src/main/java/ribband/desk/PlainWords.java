package ribband.desk;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Manuscript;
import ribband.prose.Prose;

/**
 * Writes plain words as Markdown that shows them as they are: a backslash stands before what would
 * be taken for a mark, and nowhere else.
 */
final class PlainWords {
  private static final Prose PROSE = new Prose();
  private static final Pattern SIGN = Pattern.compile("[!-/:-@\\[-`{-~]");

  /** Marks inside a line, wherever they may begin something. */
  private static final Pattern INSIDE =
      Pattern.compile(
          "\\\\(?=[!-/:-@\\[-`{-~]|$)" // before a sign it would hide, at the end it breaks the line
              + "|`"
              + "|\\*(?! )|(?<! )\\*"
              + "|(?<![\\p{L}\\p{N}])_|_(?![\\p{L}\\p{N}])"
              + "|\\[(?=[^\\]]*\\][(\\[:])|!(?=\\[)"
              + "|<(?=[A-Za-z/!?])"
              + "|&(?=#?[A-Za-z0-9]+;)"
              + "|~(?=~)|(?<=~)~",
          Pattern.MULTILINE);

  /** Marks that begin a line: headings, quotes, lists, rules, underlines, tables, notes. */
  private static final Pattern AHEAD =
      Pattern.compile("^(?=#{1,6}(?:\\s|$)|>|[-+](?:\\s|$)|=+\\s*$|[-:|][-:| \\t]*$|\\[)");

  private static final Pattern NUMBERED = Pattern.compile("^([0-9]{1,9})(?=[.)](?:\\s|$))");

  private PlainWords() {}

  /** The words as Markdown, lines kept. */
  static String markdown(String words) {
    String light = words.lines().map(PlainWords::line).collect(Collectors.joining("\n")).strip();
    return shows(light, words) ? light : everySign(words);
  }

  private static String line(String line) {
    String marked = INSIDE.matcher(line.strip()).replaceAll("\\\\$0");
    String ahead = AHEAD.matcher(marked).replaceFirst("\\\\");
    return NUMBERED.matcher(ahead).replaceFirst("$1\\\\");
  }

  private static String everySign(String words) {
    return words
        .lines()
        .map(line -> SIGN.matcher(line.strip()).replaceAll("\\\\$0"))
        .collect(Collectors.joining("\n"))
        .strip();
  }

  /** Whether the page would show the words, apart from where lines break. */
  private static boolean shows(String markdown, String words) {
    Problems problems = new Problems();
    Manuscript read = PROSE.read(new Body("words.md", 1, markdown), problems);
    return problems.errors() == 0 && oneLine(read.words()).equals(oneLine(words));
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
