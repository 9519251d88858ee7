package ribband.cli;

import java.util.List;
import java.util.stream.Collectors;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;

/**
 * Ends a command early; carries the exit code and the lines to print, of which there may be none.
 */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  private Refusal(int exitCode, List<String> lines) {
    super(lines.stream().map(OneLine::of).collect(Collectors.joining("\n")), null, false, false);
    this.exitCode = exitCode;
  }

  static Refusal wrongUsage(String line) {
    return new Refusal(ExitCode.WRONG_USAGE, List.of(line));
  }

  /** An option whose value cannot be read. */
  static Refusal wrongValue(String option, String value, Unreadable why) {
    return wrongUsage(line(option, value, why));
  }

  /** How a value that cannot be read is told. */
  static String line(String option, String value, Unreadable why) {
    return option + " " + OneLine.quote(value) + " " + why.wrong() + "; " + why.cure();
  }

  /** Several things wrong with what was typed, a line each. */
  static Refusal wrongUsage(List<String> lines) {
    return new Refusal(ExitCode.WRONG_USAGE, lines);
  }

  static Refusal surroundings(String line) {
    return new Refusal(ExitCode.SURROUNDINGS, List.of(line));
  }

  /** The errors themselves are already told. */
  static Refusal journalHasErrors() {
    return new Refusal(ExitCode.JOURNAL_HAS_ERRORS, List.of());
  }

  List<String> lines() {
    return getMessage().lines().toList();
  }

  int exitCode() {
    return exitCode;
  }
}
