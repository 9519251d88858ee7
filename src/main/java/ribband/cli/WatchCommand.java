package ribband.cli;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.preview.Lookout;
import ribband.preview.Preview;

/** Publishes at every save and shows the site to a browser on this machine, until it is ended. */
@Command(
    name = "watch",
    header = "Publish at every save, and show the site in a browser",
    description =
        "Serves the site to this machine alone and brings open pages up to date by itself. Problems"
            + " are told here and on the pages; the last good site stays. Ctrl-C ends it.",
    footer = {
      "  ribband watch                 at http://127.0.0.1:6415/ or the next free port",
      "  ribband watch my-boat --port 8000"
    })
final class WatchCommand implements Callable<Integer> {
  private static final Duration LAST_PUBLISH = Duration.ofSeconds(10);
  private static final int LAST_PORT = 65_535;

  private final Surroundings around;
  private final String version;

  @Mixin private JournalArgument journal;

  @Mixin private OutputOption output;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "6415",
      description = "the port, or the first of those to be tried; without it 6415")
  private int port;

  @Mixin private Common options;

  WatchCommand(Surroundings around, String version) {
    this.around = around;
    this.version = version;
  }

  @Override
  public Integer call() throws IOException {
    if (port < 1 || port > LAST_PORT) {
      throw Refusal.wrongUsage("--port " + port + " is no port; write one from 1 to 65535");
    }
    OpenJournal.Found found = OpenJournal.find(around, journal.folder(), output.folder());
    try {
      serve(found);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.DONE;
  }

  private void serve(OpenJournal.Found found) throws IOException, InterruptedException {
    String name = found.root().toRealPath().getFileName().toString();
    String release = version.substring(0, version.indexOf(','));
    Preview preview = Preview.open(found.output(), port, name, release);
    try (preview) {
      around.out().println(preview.address());
      around.out().flush();
      watch(new Watching(around, version, options, found, preview));
    }
  }

  private void watch(Watching watching) throws InterruptedException {
    Lookout lookout = new Lookout(watching, around.clock());
    // Ctrl-C lets a publish that is under way come to its end.
    Thread end = new Thread(() -> stop(lookout), "end of watch");
    Runtime.getRuntime().addShutdownHook(end);
    try {
      lookout.run();
    } finally {
      unhook(end);
    }
  }

  private static void stop(Lookout lookout) {
    try {
      lookout.stop(LAST_PUBLISH);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void unhook(Thread end) {
    try {
      Runtime.getRuntime().removeShutdownHook(end);
    } catch (IllegalStateException e) {
      // The machine is on its way down already.
      return;
    }
  }
}
