package ribband.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.ahead.Ahead;
import ribband.album.Album;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Saying;
import ribband.memory.Memory;
import ribband.photo.PictureFacts;
import ribband.press.Press;
import ribband.press.PressBusy;
import ribband.press.PressRefused;
import ribband.press.Published;
import ribband.problem.Problems;
import ribband.site.Site;

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
  private final String release;

  @Mixin private JournalArgument journal;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "DIR",
      description = "the site's folder; without it site/ in the journal's")
  private String output;

  @Mixin private Common options;

  PublishCommand(Surroundings around, String release) {
    this.around = around;
    this.release = release.substring(0, release.indexOf(','));
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Instant began = around.clock().instant();
    LocalDate today = options.today(around.clock());
    OpenJournal.Found found =
        OpenJournal.find(around, journal.folder(), Optional.ofNullable(output));
    LastPublish last = LastPublish.load(found.output().toAbsolutePath().normalize());
    OpenJournal.Listed listed = found.list(around);
    Optional<LastPublish.Made> made = last.stillStands(listed.files(), today);
    if (made.isPresent()) {
      tell(made.get(), new Published(0, made.get().files(), 0, List.of()), found.output(), began);
      return ExitCode.DONE;
    }
    return publish(listed.read(today), last, began);
  }

  private int publish(OpenJournal open, LastPublish last, Instant began)
      throws IOException, InterruptedException {
    Inspection inspection = Inspection.of(open, Site.showing(open.journal()), began);
    if (inspection.open().errors() > 0) {
      // Bad pictures are told in the same run, though nothing will be printed.
      inspection = proven(inspection);
      requireSound(inspection.open());
    }
    try (Press press = Press.open(open.output(), open.journal().folder().root())) {
      Inspection printed = print(inspection, press);
      requireSound(printed.open());
      Ledger ledger = Ledger.of(open.journal());
      Ahead ahead = Ahead.forReaders(open.journal(), printed.stock());
      int pages = Site.draw(printed.album(), ledger, printed.stock(), ahead, release, press::put);
      Published published = press.finish();
      LastPublish.Made made =
          new LastPublish.Made(
              summary(printed.album(), ledger, pages), published.written() + published.unchanged());
      remember(printed, last, made, began);
      tell(made, published, open.output(), began);
    } catch (PressRefused e) {
      throw Refusal.wrongUsage(e.getMessage());
    } catch (PressBusy e) {
      throw Refusal.surroundings(e.getMessage());
    }
    return ExitCode.DONE;
  }

  private static void remember(
      Inspection printed, LastPublish last, LastPublish.Made made, Instant began) {
    Journal journal = printed.open().journal();
    Optional<LocalDate> latest = journal.asOf();
    try {
      for (Memory memory : printed.memories()) {
        memory.save();
      }
      if (printed.open().problems().isEmpty() && latest.isPresent()) {
        last.remember(journal.folder(), latest.get(), made, began);
      }
    } catch (IOException | UncheckedIOException e) {
      // The site is in place; without its memory the next run only takes longer.
      return;
    }
  }

  private void requireSound(OpenJournal open) {
    new ProblemTeller(around, options).requireSound(open, ", nothing was published");
  }

  private Inspection proven(Inspection inspection) throws IOException, InterruptedException {
    Problems problems = new Problems();
    inspection.proof().tryOut(new PictureCounter(around, options), problems);
    return inspection.with(problems);
  }

  /** Makes the prints that the site does not hold yet. */
  private Inspection print(Inspection inspection, Press press)
      throws IOException, InterruptedException {
    Map<String, List<String>> missing = new LinkedHashMap<>();
    for (PictureFacts facts : Site.picturesOf(inspection.album())) {
      List<String> paths = Site.printPaths(facts);
      if (!press.keep(paths)) {
        missing.put(facts.digest(), paths);
      }
    }
    Problems problems = new Problems();
    inspection
        .proof()
        .print(
            facts -> missing.containsKey(facts.digest()),
            press.staging(),
            new PictureCounter(around, options),
            problems);
    if (problems.errors() == 0) {
      for (List<String> paths : missing.values()) {
        for (String path : paths) {
          press.putFile(path, press.staging().resolve(Path.of(path).getFileName()));
        }
      }
    }
    return inspection.with(problems);
  }

  private static String summary(Album album, Ledger ledger, int pages) {
    List<String> done = new ArrayList<>();
    done.add(Saying.counted(album.journal().entries().size(), "entry", "entries"));
    done.add(Saying.counted(Site.picturesOf(album).size(), "picture", "pictures"));
    done.add(Saying.counted(pages, "page", "pages"));
    done.add(Saying.hoursInWords(ledger.whole().totalHours()));
    if (!ledger.whole().totalCost().isZero()) {
      done.add(Saying.money(ledger.whole().totalCost(), album.journal().project().currency()));
    }
    return String.join(", ", done);
  }

  private void tell(LastPublish.Made made, Published published, Path site, Instant began) {
    around.out().println(made.told());
    around
        .out()
        .println(
            Saying.counted(published.written(), "file", "files")
                + " written, "
                + Saying.count(published.unchanged())
                + " unchanged, "
                + Saying.count(published.removed())
                + " removed, in "
                + seconds(Duration.between(began, around.clock().instant())));
    for (String path : published.left()) {
      around.err().println(path + " was changed by another hand since, and is left as it is");
    }
    around.out().println(site.resolve("index.html"));
  }

  private static String seconds(Duration took) {
    long tenths = Math.max(0, (took.toMillis() + 50) / 100);
    return tenths / 10 + "." + tenths % 10 + " s";
  }
}
