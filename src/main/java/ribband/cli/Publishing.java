package ribband.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.ahead.Ahead;
import ribband.album.Album;
import ribband.album.PictureProof;
import ribband.feed.Feeds;
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
import ribband.site.MonthCard;
import ribband.site.Site;

/**
 * One publish, from the journal's files to the site in place, for {@code publish} and {@code
 * watch}.
 */
final class Publishing {
  private final Surroundings around;
  private final String release;
  private final PictureProof.Progress progress;
  private final Judge judge;

  /** Hears of all problems once, before anything is put in place. */
  @FunctionalInterface
  interface Judge {
    /**
     * @throws Refusal where nothing is to be published; always where one is an error
     */
    void hear(OpenJournal journal);
  }

  /**
   * What a publish did.
   *
   * @param began when the journal was listed
   * @param took until all was in place
   */
  record Done(LastPublish.Made made, Published published, Instant began, Duration took) {
    /** {@code 3 files written, 104 unchanged, 0 removed, in 0.2 s}. */
    String told() {
      return Saying.counted(published.written(), "file", "files")
          + " written, "
          + Saying.count(published.unchanged())
          + " unchanged, "
          + Saying.count(published.removed())
          + " removed, in "
          + seconds(took);
    }

    /** The files that are left as somebody else made them, a line each. */
    List<String> left() {
      return published.left().stream()
          .map(path -> path + " was changed by another hand since, and is left as it is")
          .toList();
    }

    private static String seconds(Duration took) {
      long tenths = Math.max(0, (took.toMillis() + 50) / 100);
      return tenths / 10 + "." + tenths % 10 + " s";
    }
  }

  /**
   * @param version the program's, as {@code --version} tells it
   */
  Publishing(Surroundings around, String version, PictureProof.Progress progress, Judge judge) {
    this.around = around;
    this.release = version.substring(0, version.indexOf(','));
    this.progress = progress;
    this.judge = judge;
  }

  /**
   * Publishes, or finds that nothing has changed.
   *
   * @throws Refusal where the judge refuses, or no site may stand there
   * @throws PressBusy where another run is at work
   */
  Done publish(OpenJournal.Found found, LocalDate today)
      throws PressBusy, IOException, InterruptedException {
    Instant began = around.clock().instant();
    LastPublish last = LastPublish.load(found.output().toAbsolutePath().normalize());
    OpenJournal.Listed listed = found.list(around);
    Optional<LastPublish.Made> made = last.stillStands(listed.files(), today);
    if (made.isPresent()) {
      tellAgain(made.get(), listed);
      return done(made.get(), new Published(0, made.get().files(), 0, List.of()), began);
    }
    return publish(listed.read(today), last, began);
  }

  private void tellAgain(LastPublish.Made made, OpenJournal.Listed listed) {
    if (made.address() == LastPublish.Made.Address.UNSAID) {
      OpenJournal read = listed.readProject();
      Problems address = AddressWarning.of(read.journal().project());
      judge.hear(new OpenJournal(read.journal(), made.entries(), read.output(), address.sorted()));
    }
  }

  private Done publish(OpenJournal open, LastPublish last, Instant began)
      throws PressBusy, IOException, InterruptedException {
    Inspection inspection = Inspection.of(open, Site.showing(open.journal()), began);
    if (inspection.open().errors() > 0) {
      // Bad pictures are told in the same run, though nothing will be printed.
      inspection = proven(inspection);
      judge.hear(inspection.open());
    }
    try (Press press = Press.open(open.output(), open.journal().folder().root())) {
      Inspection printed = print(inspection, press);
      Problems address = AddressWarning.of(open.journal().project());
      judge.hear(printed.open().with(address));
      Ledger ledger = Ledger.of(open.journal());
      Ahead ahead = Ahead.forReaders(open.journal(), printed.stock());
      Map<YearMonth, MonthCard> cards = SiteCards.put(printed.album(), ledger, press);
      int pages =
          Site.draw(printed.album(), ledger, printed.stock(), ahead, cards, release, press::put);
      Feeds.write(printed.album(), ledger, cards, release, press::put);
      Published published = press.finish();
      LastPublish.Made made =
          new LastPublish.Made(
              summary(printed.album(), ledger, pages),
              published.written() + published.unchanged(),
              open.entries(),
              address.sorted().isEmpty()
                  ? LastPublish.Made.Address.SAID
                  : LastPublish.Made.Address.UNSAID);
      remember(printed, last, made, began);
      return done(made, published, began);
    } catch (PressRefused e) {
      throw Refusal.wrongUsage(e.getMessage());
    }
  }

  private Done done(LastPublish.Made made, Published published, Instant began) {
    return new Done(made, published, began, Duration.between(began, around.clock().instant()));
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

  private Inspection proven(Inspection inspection) throws IOException, InterruptedException {
    Problems problems = new Problems();
    inspection.proof().tryOut(progress, problems);
    return inspection.with(problems);
  }

  /** Makes the prints that the site does not hold yet. */
  private Inspection print(Inspection inspection, Press press)
      throws IOException, InterruptedException {
    Map<String, List<String>> missing = new LinkedHashMap<>();
    for (PictureFacts facts : inspection.album().pictures()) {
      List<String> paths = Site.printPaths(facts);
      if (!press.keep(paths)) {
        missing.put(facts.digest(), paths);
      }
    }
    Problems problems = new Problems();
    inspection
        .proof()
        .print(facts -> missing.containsKey(facts.digest()), press.staging(), progress, problems);
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
    done.add(Saying.counted(album.pictures().size(), "picture", "pictures"));
    done.add(Saying.counted(pages, "page", "pages"));
    done.add(Saying.hoursInWords(ledger.whole().totalHours()));
    if (!ledger.whole().totalCost().isZero()) {
      done.add(Saying.money(ledger.whole().totalCost(), album.journal().project().currency()));
    }
    return String.join(", ", done);
  }
}
