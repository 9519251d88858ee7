package ribband.journal;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says a YAML parser's complaint in a builder's words, with what to write instead.
 *
 * @param line 1-based, in the text parsed
 * @param column 1-based
 */
record SyntaxHint(int line, int column, String sentence) {
  private static final String QUOTE_IT = "; put quotes round it";
  private static final String QUOTE_ALL = "; put quotes round the whole text";

  /** Which of the parser's two marks to tell: where it stopped, or what it was reading then. */
  private enum At {
    STOP,
    START
  }

  /**
   * @param reading part of what the parser says it was reading
   * @param problem part of what it says went wrong
   */
  private record Rule(String reading, String problem, At at, String sentence) {
    boolean fits(String context, String complaint) {
      return context.contains(reading) && complaint.contains(problem);
    }
  }

  private static final List<Rule> RULES =
      List.of(
          new Rule("", "(TAB)", At.STOP, "a tab stands where spaces belong; indent with spaces"),
          new Rule("alias", "", At.START, cannotBegin('*')),
          new Rule("anchor", "", At.START, cannotBegin('&')),
          new Rule("tag", "", At.START, cannotBegin('!')),
          new Rule("", "'%' that cannot start", At.STOP, "a text cannot begin with %" + QUOTE_IT),
          new Rule("", "'@' that cannot start", At.STOP, "a text cannot begin with @" + QUOTE_IT),
          new Rule("", "'`' that cannot start", At.STOP, "a text cannot begin with `" + QUOTE_IT),
          new Rule("", "but found ','", At.STOP, "a text cannot begin with a comma" + QUOTE_IT),
          new Rule(
              "", "mapping keys are not allowed", At.STOP, "a text cannot begin with ?" + QUOTE_IT),
          new Rule(
              "",
              "sequence entries are not allowed",
              At.STOP,
              "a text cannot begin with a hyphen and a space"
                  + QUOTE_IT
                  + ", or begin the list in a line of its own"),
          new Rule(
              "block scalar",
              "",
              At.START,
              "a text cannot begin with > or | and go on in that line" + QUOTE_IT),
          new Rule(
              "",
              "expected the node content",
              At.STOP,
              "a bracket closes here that none has opened" + QUOTE_ALL),
          new Rule(
              "quoted",
              "end of stream",
              At.START,
              "a quote is opened here and never closed; close it, or put the whole text in quotes"),
          new Rule(
              "double-quoted",
              "",
              At.STOP,
              "a backslash in double quotes begins an escape; write it twice, or use single quotes"),
          new Rule(
              "",
              "mapping values are not allowed",
              At.STOP,
              "a colon and a space stand inside a text; put quotes round it, as title: \"Note:"
                  + " check the bevel\""),
          new Rule(
              "flow",
              "",
              At.START,
              "a bracket is opened here and not closed in order; close it, and put quotes round"
                  + " texts that hold a comma, a colon or a bracket"),
          new Rule(
              "simple key",
              "",
              At.START,
              "this line has no colon with a space behind it; write a key, a colon, a space and a"
                  + " value, as hours: 2:45"),
          new Rule(
              "",
              "expected '<document start>'",
              At.STOP,
              "this line is not in line with the keys above it; set it straight below them"),
          new Rule(
              "",
              "expected <block end>",
              At.STOP,
              "this line is not in line with the keys above it; set it straight below them"));

  /** For signs that begin something else in YAML, which we do not take. */
  static String cannotBegin(int sign) {
    String means = sign == '*' ? "an alias" : sign == '&' ? "an anchor" : "a tag";
    return "a text cannot begin with "
        + Character.toString(sign)
        + ", which means "
        + means
        + " in YAML and is not supported"
        + QUOTE_IT;
  }

  /**
   * @param lines of the text parsed
   */
  static SyntaxHint of(MarkedYAMLException e, String[] lines) {
    String problem = Optional.ofNullable(e.getProblem()).orElse("");
    String context = Optional.ofNullable(e.getContext()).orElse("");
    Mark stop = e.getProblemMark();
    return seenInTheLines(e, problem, lines)
        .or(
            () ->
                RULES.stream()
                    .filter(rule -> rule.fits(context, problem))
                    .findFirst()
                    .map(
                        rule ->
                            at(rule.at() == At.START ? e.getContextMark() : stop, rule.sentence())))
        .orElseGet(
            () ->
                at(
                    stop,
                    "this cannot be read as YAML; put quotes round texts that hold any of"
                        + " : # , [ ] { } * & ! %"));
  }

  private static SyntaxHint at(Mark mark, String sentence) {
    return new SyntaxHint(mark.getLine() + 1, mark.getColumn() + 1, sentence);
  }

  /** Where the parser's words alone do not tell what the builder did. */
  private static Optional<SyntaxHint> seenInTheLines(
      MarkedYAMLException e, String problem, String[] lines) {
    Mark stop = e.getProblemMark();
    int at = stop.getLine();
    String line = at < lines.length ? lines[at] : "";
    int width = Math.min(stop.getColumn(), line.codePointCount(0, line.length()));
    String before = line.substring(0, line.offsetByCodePoints(0, width));
    if (line.startsWith("\t")) {
      return Optional.of(new SyntaxHint(at + 1, 1, RULES.get(0).sentence()));
    }
    if (problem.contains("expected <block end>") && !before.isBlank()) {
      return Optional.of(
          at(stop, "the text goes on after its quote or bracket is closed" + QUOTE_ALL));
    }
    boolean inOneLine = e.getContextMark() != null && e.getContextMark().getLine() == at;
    if (problem.contains("expected ','") && inOneLine && line.startsWith(":", before.length())) {
      return rule("mapping values are not allowed").map(rule -> at(stop, rule.sentence()));
    }
    boolean belowNoKey = at > 0 && !line.startsWith(" ") && !lines[at - 1].contains(": ");
    if (problem.contains("mapping values") && belowNoKey) {
      return rule("simple key").map(rule -> new SyntaxHint(at, 1, rule.sentence()));
    }
    if (problem.contains("<document start>")) {
      return lineThat("%", at, lines, "a line of keys cannot begin with %" + QUOTE_IT)
          .or(() -> lineThat("...", at, lines, "three dots end the keys here; take them out"));
    }
    return Optional.empty();
  }

  private static Optional<Rule> rule(String part) {
    return RULES.stream()
        .filter(r -> r.problem().equals(part) || r.reading().equals(part))
        .findFirst();
  }

  private static Optional<SyntaxHint> lineThat(
      String begins, int last, String[] lines, String sentence) {
    List<String> upTo = Arrays.asList(lines).subList(0, Math.min(last + 1, lines.length));
    return upTo.stream()
        .filter(line -> line.startsWith(begins))
        .findFirst()
        .map(line -> new SyntaxHint(upTo.indexOf(line) + 1, 1, sentence));
  }
}
