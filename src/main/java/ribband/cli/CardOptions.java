package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import ribband.problem.OneLine;

/** Whether cards are to be drawn, and where they go, as typed. */
final class CardOptions {
  @Option(
      names = "--card",
      description = {
        "also draw two PNG files with the best picture: 1200 x 630 for sharing, 1920 x 1080 as a"
            + " video frame"
      })
  private boolean card;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description =
          "the folder for --card, made where there is none; without it the one you are in, or the one"
              + " beside the journal")
  private String into;

  boolean wanted() {
    if (into != null && !card) {
      throw Refusal.wrongUsage("--into is the folder of cards; write --card too");
    }
    return card;
  }

  /**
   * The folder.
   *
   * <p>spec: only the commands that exist to add a file write into a journal.
   *
   * @param journal its root
   * @return as typed or, from within a journal, the one that the journal lies in
   * @throws Refusal where the one that was named is a part of the journal
   */
  String folder(Surroundings around, Path journal) throws IOException {
    if (into == null) {
      return lies(around.here(), journal) ? journal.getParent().toString() : ".";
    }
    if (lies(around.path(into), journal)) {
      throw Refusal.wrongUsage(
          OneLine.of(into)
              + " is a part of the journal, where a card might be taken for one of its pictures;"
              + " name a folder outside with --into");
    }
    return into;
  }

  /** Where the folder is not there yet, the one decides that it would be made in. */
  private static boolean lies(Path folder, Path journal) throws IOException {
    Path there = folder.toAbsolutePath().normalize();
    while (!Files.isDirectory(there) && there.getParent() != null) {
      there = there.getParent();
    }
    return there.toRealPath().startsWith(journal.toRealPath());
  }
}
