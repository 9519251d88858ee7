package ribband.journal;

import ribband.problem.OneLine;

/** Says a YAML parser's complaint in a builder's words, with what to write instead. */
final class SyntaxHint {
  private SyntaxHint() {}

  /**
   * @param problem the parser's own words, may be empty
   * @param context what it was reading, may be null
   * @param line the line it stopped in
   */
  static String of(String problem, String context, String line) {
    String reading = context == null ? "" : context;
    if (line.startsWith("\t") || problem.contains("\\t(TAB)") || problem.contains("TAB")) {
      return "a tab stands where spaces belong; indent with spaces";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "a colon and a space stand inside a text; put quotes round the text, as "
          + "title: \"Note: check the bevel\"";
    }
    if (problem.contains("cannot start any token")) {
      return "a value cannot begin with " + culprit(problem) + "; put quotes round it";
    }
    if (problem.contains("end of stream") && reading.contains("quoted")) {
      return "a quote is opened and never closed; close it, or put the whole text in quotes";
    }
    if (reading.contains("flow")) {
      return "a bracket is opened and not closed before this; close it, and put quotes round texts"
          + " that hold a comma, a colon or a bracket";
    }
    if (problem.contains("expected <block end>") || problem.contains("expected ',' or")) {
      return "this goes on after its value has ended, or is not in line with the key above; "
          + "put quotes round the whole text, or set the key straight below the others";
    }
    if (problem.contains("could not find expected ':'")) {
      return "this line has no colon; write a key, a colon, a space and a value, as hours: 2:45";
    }
    if (problem.contains("alias") || problem.contains("anchor") || reading.contains("alias")) {
      return "a value cannot begin with * or &; put quotes round it";
    }
    if (reading.contains("tag") || reading.contains("directive")) {
      return "a value cannot begin with ! or %; put quotes round it";
    }
    if (problem.contains("special characters are not allowed")) {
      return "an unprintable character stands here; take it out";
    }
    return "this is not well-formed YAML ("
        + OneLine.of(problem)
        + "); put quotes round texts that"
        + " hold any of : # , [ ] { } * & ! %";
  }

  private static String culprit(String problem) {
    int open = problem.indexOf('\'');
    int close = problem.indexOf('\'', open + 1);
    return open >= 0 && close > open ? problem.substring(open + 1, close) : "this";
  }
}
