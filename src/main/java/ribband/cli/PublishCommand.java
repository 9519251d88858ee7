package ribband.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import ribband.press.PressBusy;

/** Draws the site and puts it in place, all of it or nothing. */
@Command(
    name = "publish",
    header = "Make the site, or bring it up to date",
    description =
        "Writes only what has changed since the last time, and only what it once wrote itself. A"
            + " journal with errors leaves the site as it stands.",
    footer = {
      "  ribband publish                 into site/ in the journal's folder",
      "  ribband publish -o ~/www/boat   into another folder, empty or published before"
    })
final class PublishCommand implements Callable<Integer> {
  private final Surroundings around;
  private final String version;

  @Mixin private JournalArgument journal;

  @Mixin private OutputOption output;

  @Mixin private Common options;

  PublishCommand(Surroundings around, String version) {
    this.around = around;
    this.version = version;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    LocalDate today = options.today(around.clock());
    OpenJournal.Found found = OpenJournal.find(around, journal.folder(), output.folder());
    ProblemTeller teller = new ProblemTeller(around, options);
    Publishing publishing =
        new Publishing(
            around,
            version,
            new PictureCounter(around, options),
            open -> teller.requireSound(open, ", nothing was published"));
    Publishing.Done done = publish(publishing, found, today);
    around.out().println(done.made().told());
    around.out().println(done.told());
    done.left().forEach(around.err()::println);
    around.out().println(found.output().resolve("index.html"));
    return ExitCode.DONE;
  }

  private static Publishing.Done publish(
      Publishing publishing, OpenJournal.Found found, LocalDate today)
      throws IOException, InterruptedException {
    try {
      return publishing.publish(found, today);
    } catch (PressBusy e) {
      throw Refusal.surroundings(e.getMessage());
    }
  }
}
