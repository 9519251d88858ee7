package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ribband.cli.InMemory;

/** Papers are written whole or not at all, over nothing, and alike each time. */
class PapersFolderTest extends PapersRun {
  @Test
  void sameJournalSameBytes() throws IOException {
    FullJournal.write(folder);
    Published first = papers();
    assertEquals(0, journal().run("publish").code());
    into = scratch.resolve("again");
    assertEquals(first.hashes(), papers().hashes());
  }

  @Test
  void whatStandsThereStaysAsItIs() throws IOException {
    FullJournal.write(folder);
    Files.createDirectory(into);
    Files.writeString(into.resolve("mine.txt"), "mine");
    assertEquals(
        new InMemory.Run(
            2,
            "",
            "ribband: the output "
                + into
                + " is there and is no empty folder; choose an empty or a new folder\n"),
        run());
    assertEquals(List.of("mine.txt"), new Published(into).paths());
    assertEquals("[journal, papers]", names(scratch));
  }

  private static String names(Path folder) {
    List<String> names = new ArrayList<>(List.of(folder.toFile().list()));
    names.sort(null);
    return names.toString();
  }

  @Test
  void errorsAreAllToldAndNothingIsWritten() throws IOException {
    FullJournal.write(folder);
    journal().with("2026/2026-06-01-bad.md", "---\nhours: 2;45\nphotos: [half.png]\n---\n");
    byte[] whole = Files.readAllBytes(folder.resolve("2026/2026-03-14-garboards/tall.png"));
    Files.write(folder.resolve("half.png"), Arrays.copyOf(whole, whole.length / 2));
    InMemory.Run run = run();
    assertEquals(1, run.code());
    assertTrue(run.err().contains("hours \"2;45\""), run.err());
    assertTrue(run.err().endsWith("in 7 entries, no papers were written\n"), run.err());

    journal().with("2026/2026-06-01-bad.md", "---\nphotos: [half.png]\n---\n");
    run = run();
    assertEquals(1, run.code());
    assertTrue(run.err().contains("picture \"half.png\""), run.err());
    assertEquals("[journal]", names(scratch));
  }

  @Test
  void receiptsThatLeadOutOfTheJournalAreRefused() throws IOException {
    Files.writeString(scratch.resolve("secret.txt"), "secret");
    journal()
        .with("project.yaml", "name: Teal\ncurrency: USD\nphases: [planking]\n")
        .with("2026-01-02-a.md", closed(bought("receipts/link.txt", "5")))
        .with("2026-01-03-b.md", closed(bought("../secret.txt", "5")))
        .with("2026-01-04-c.md", closed(bought("receipts/folder", "5")));
    Files.createDirectories(folder.resolve("receipts/folder"));
    Files.createSymbolicLink(folder.resolve("receipts/link.txt"), scratch.resolve("secret.txt"));
    InMemory.Run run = run();
    assertEquals(1, run.code());
    assertEquals(
        """
        2026-01-02-a.md:5:32: error: receipt "receipts/link.txt" is no plain file of the journal; \
        copy the receipt itself into the journal
        2026-01-03-b.md:5:32: error: receipt "../secret.txt" leads out of the journal; copy the \
        receipt into the journal
        2026-01-04-c.md:5:32: error: receipt "receipts/folder" is no plain file of the journal; \
        copy the receipt itself into the journal
        3 errors in 3 entries, no papers were written
        """,
        run.err());
    assertEquals("[journal, secret.txt]", names(scratch));
  }

  /** A new folder in the journal is none of its entries, and is never read as one. */
  @Test
  void papersMayLieInTheJournal() throws IOException {
    FullJournal.write(folder);
    String before = journal().run("tally", "--format", "csv").out();
    Published outside = papers();
    into = folder.resolve("2026-05-02-papers");
    assertEquals(outside.hashes(), papers().hashes());
    assertEquals(before, journal().run("tally", "--format", "csv").out());
    into = scratch.resolve("later");
    assertEquals(outside.hashes(), papers().hashes());
  }

  @Test
  void papersNeverLieInTheSite() throws IOException {
    FullJournal.write(folder);
    Published site = new Builder(folder).publish();
    Map<String, String> before = site.hashes();
    into = folder.resolve("site/papers");
    assertEquals(2, run().code());
    assertEquals(before, site.hashes());
  }
}
