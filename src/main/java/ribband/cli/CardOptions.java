package ribband.cli;

import picocli.CommandLine.Option;

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
      description = "the folder for --card; without it the one you are in")
  private String into;

  boolean wanted() {
    if (into != null && !card) {
      throw Refusal.wrongUsage("--into is the folder of cards; write --card too");
    }
    return card;
  }

  /** The folder, as typed. */
  String folder() {
    return into == null ? "." : into;
  }
}
