package ribband.cli;

import java.util.regex.Pattern;

/** Writes a manual page in the language that {@code man} reads; the one place that escapes it. */
final class Roff {
  /** As many words as a line of source may hold, or one that is longer. */
  private static final Pattern LINE = Pattern.compile("(.{1,78}|\\S+)( |$)");

  private final StringBuilder page = new StringBuilder();

  /** The page's name, section, date, source and manual. */
  Roff title(String... words) {
    StringBuilder line = new StringBuilder(".TH");
    for (String word : words) {
      line.append(" \"").append(word).append('"');
    }
    return line(line.toString());
  }

  Roff section(String heading) {
    return line(".SH \"" + escaped(heading) + '"');
  }

  Roff subsection(String heading) {
    return line(".SS \"" + escaped(heading) + '"');
  }

  /** Words that are filled into lines. */
  Roff text(String words) {
    LINE.matcher(escaped(words)).results().map(found -> found.group(1)).forEach(this::guarded);
    return this;
  }

  /** What a new paragraph begins with. */
  Roff paragraph() {
    return line(".PP");
  }

  /** A term in bold, with what is to be put in its place, if anything, in italics. */
  Roff entry(String term, String placeholder, String meaning) {
    String rest = placeholder.isEmpty() ? "" : "\\fI" + escaped(placeholder) + "\\fR";
    return line(".TP").line("\\fB" + escaped(term) + "\\fR" + rest).text(meaning);
  }

  /** Lines as they stand. */
  Roff verbatim(Iterable<String> lines) {
    line(".PP").line(".nf");
    for (String each : lines) {
      guarded(escaped(each));
    }
    return line(".fi");
  }

  @Override
  public String toString() {
    return page.toString();
  }

  private Roff line(String line) {
    page.append(line).append('\n');
    return this;
  }

  /** A hyphen that is typed is no dash, and a quote that is typed is no curly one. */
  private static String escaped(String words) {
    return words
        .replace("\\", "\\e")
        .replace("-", "\\-")
        .replace("\"", "\\(dq")
        .replace("'", "\\(aq")
        .replace("~", "\\(ti")
        .replace("^", "\\(ha")
        .replace("`", "\\(ga");
  }

  /** A line of text that begins like a request is none. */
  private Roff guarded(String line) {
    return line(line.startsWith(".") ? "\\&" + line : line);
  }
}
