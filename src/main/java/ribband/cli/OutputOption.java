package ribband.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option of commands that publish. */
final class OutputOption {
  @Option(
      names = {"-o", "--output"},
      paramLabel = "DIR",
      description = "the site's folder; without it site/ in the journal's")
  private String folder;

  /** As typed. */
  Optional<String> folder() {
    return Optional.ofNullable(folder);
  }
}
