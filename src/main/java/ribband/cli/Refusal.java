package ribband.cli;

import ribband.measure.Unreadable;
import ribband.problem.OneLine;

/** Ends a command early; carries the exit code and the line to print, which may be empty. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  private Refusal(int exitCode, String line) {
    super(line, null, false, false);
    this.exitCode = exitCode;
  }

  static Refusal wrongUsage(String line) {
    return new Refusal(ExitCode.WRONG_USAGE, line);
  }

  /** An option whose value cannot be read. */
  static Refusal wrongValue(String option, String value, Unreadable why) {
    return wrongUsage(option + " " + OneLine.quote(value) + " " + why.wrong() + "; " + why.cure());
  }

  static Refusal surroundings(String line) {
    return new Refusal(ExitCode.SURROUNDINGS, line);
  }

  /** The errors themselves are already told. */
  static Refusal journalHasErrors() {
    return new Refusal(ExitCode.JOURNAL_HAS_ERRORS, "");
  }

  int exitCode() {
    return exitCode;
  }
}
