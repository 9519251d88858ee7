package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.album.Showing;
import ribband.journal.JournalFolder;
import ribband.ledger.Ledger;
import ribband.measure.Saying;
import ribband.photo.PictureFacts;
import ribband.press.LoneFolder;
import ribband.press.PressRefused;
import ribband.problem.OneLine;
import ribband.problem.Problems;
import ribband.telling.Papers;
import ribband.telling.Receipt;

/** Writes the papers of a boat into a folder, all of them or nothing. */
@Command(
    name = "papers",
    header = "Write the boat's papers: one page to print, and copies of the receipts",
    description = {
      "What may be wanted for registration, insurance or a buyer: dates, hours and money by month"
          + " and phase, every purchase with its receipt, materials, glue-ups, pictures, and blanks"
          + " to fill in and sign. As of the last entry's date.",
      "",
      "Local law governs; this is no legal form. Amounts are shown also where the site hides them."
    },
    footer = {
      "  ribband papers --into ~/dunlin-papers          of the journal here",
      "  ribband papers my-boat --into dunlin-papers    of another one"
    })
final class PapersCommand implements Callable<Integer> {
  private final Surroundings around;
  private final String release;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "FOLDER",
      description = "the papers' folder: a new one, or an empty one")
  private String into;

  @Mixin private Common options;

  PapersCommand(Surroundings around, String release) {
    this.around = around;
    this.release = release.substring(0, release.indexOf(','));
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Instant began = around.clock().instant();
    try (LoneFolder folder = LoneFolder.at(around.path(into))) {
      OpenJournal open = OpenJournal.open(around, journal.folder(), options.today(around.clock()));
      write(Inspection.of(open, Showing.NOWHERE, began), folder);
    } catch (PressRefused e) {
      throw Refusal.wrongUsage(e.getMessage());
    }
    return ExitCode.DONE;
  }

  private void write(Inspection inspection, LoneFolder folder)
      throws IOException, InterruptedException {
    if (inspection.open().errors() > 0) {
      // Bad pictures are told in the same run, though nothing will be written.
      Problems problems = new Problems();
      inspection.proof().tryOut(new PictureCounter(around, options), problems);
      requireSound(inspection.with(problems));
    }
    Ledger ledger = Ledger.of(inspection.open().journal());
    Papers papers = new Papers(inspection.album(), ledger, inspection.stock());
    print(papers, inspection, folder);
    for (Receipt receipt : papers.receipts()) {
      folder.copy(receipt.path(), original(inspection.open().journal().folder(), receipt));
    }
    for (Map.Entry<String, byte[]> file : papers.files(release).entrySet()) {
      folder.put(file.getKey(), file.getValue());
    }
    folder.finish();
    tell(papers, ledger, inspection);
  }

  private void requireSound(Inspection inspection) {
    new ProblemTeller(around, options).requireSound(inspection.open(), ", no papers were written");
  }

  private void print(Papers papers, Inspection inspection, LoneFolder folder)
      throws IOException, InterruptedException {
    Set<String> wanted = new HashSet<>();
    papers.pictures().forEach(facts -> wanted.add(facts.digest()));
    Path workshop = folder.workshop();
    Problems problems = new Problems();
    inspection
        .proof()
        .print(
            facts -> wanted.contains(facts.digest()),
            workshop,
            new PictureCounter(around, options),
            problems);
    requireSound(inspection.with(problems));
    for (PictureFacts facts : papers.pictures()) {
      folder.putFile(Papers.printPath(facts), workshop.resolve(Papers.print(facts)));
    }
  }

  /** As the journal was listed; what has become a way out of it since is not followed. */
  private static Path original(JournalFolder journal, Receipt receipt) throws IOException {
    Path file = journal.path(receipt.file());
    if (!Files.isRegularFile(file) || !file.toRealPath().startsWith(journal.root())) {
      throw new IOException(
          "cannot read " + file + ": it is no longer a plain file of the journal; run again");
    }
    return file;
  }

  private void tell(Papers papers, Ledger ledger, Inspection inspection) {
    List<String> done = new ArrayList<>();
    done.add(Saying.counted(papers.pictures().size(), "picture", "pictures"));
    done.add(Saying.counted(papers.receipts().size(), "receipt", "receipts"));
    if (papers.missing() > 0) {
      done.add(Saying.count(papers.missing()) + " named and not found");
    }
    done.add(Saying.hoursInWords(ledger.whole().totalHours()));
    if (!ledger.whole().totalCost().isZero()) {
      done.add(
          Saying.money(
              ledger.whole().totalCost(), inspection.open().journal().project().currency()));
    }
    around.out().println(String.join(", ", done));
    around.out().println(OneLine.of(around.path(into).resolve(Papers.PAGE).toString()));
  }
}
