package ribband.cli;

import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The argument of commands that read a journal. */
final class JournalArgument {
  @Parameters(
      paramLabel = "JOURNAL",
      arity = "0..1",
      description = "its folder; without it the nearest one upward with a project.yaml")
  private String folder;

  /** As typed. */
  Optional<String> folder() {
    return Optional.ofNullable(folder);
  }
}
