package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.cli.InMemory.Run;
import ribband.ledger.GeneratedJournal;

/**
 * What {@code tally --by entry --format csv} prints of one journal, brought into an empty one, is
 * printed of that again: byte for byte where nothing was carried and the names of a day's files
 * stand in one folder; with carried work the columns to date differ by what was carried.
 */
class BringRoundTripTest {
  @TempDir Path folder;

  private InMemory here() {
    return new InMemory(folder);
  }

  private String tally(String journal) {
    Run run = here().run("tally", journal, "--by", "entry", "--format", "csv");
    assertEquals(0, run.code(), run.err());
    return run.out();
  }

  /** Into an empty journal of the currency. */
  private String broughtBack(String csv, String currency) throws IOException {
    return broughtBack(csv, currency, "new");
  }

  private String broughtBack(String csv, String currency, String journal) throws IOException {
    here().with(journal + "/project.yaml", "currency: " + currency + "\n").with("all.csv", csv);
    Run run = here().run("bring", "all.csv", journal, "--write", "-q");
    assertEquals(0, run.code(), run.err());
    return tally(journal);
  }

  @Test
  void entriesOfEveryKindComeBackByteForByte() throws IOException {
    here()
        .with("old/project.yaml", "currency: USD\nphases: [planking, fairing]\n")
        .with("old/2026-03-14.md", "---\nhours: 5.3333\nphase: planking\n---\nWords.\n")
        .with("old/2026-03-14-a.md", "---\nhours: 0.0003\nphase: planking\n---\n")
        .with("old/2026-03-15 Two words & more.md", "---\ncost: -12.34\nphase: fairing\n---\n")
        .with("old/2026-03-16-nothing.md", "---\n---\nOnly words.\n")
        .with("old/2026-03-17-été_~1.md", "---\nhours: {planking: 2, fairing: 0:45}\n---\n")
        .with("old/2026-03-18-secret.md", "---\nprivate: true\nhours: 24\ncost: 1234.50\n---\n")
        .with("old/2026-03-19-" + "long".repeat(49) + ".md", "---\nhours: 1\n---\n");
    String csv = tally("old");
    assertEquals(8, csv.lines().count(), csv);
    assertEquals(csv, broughtBack(csv, "USD"));
    // A second time nothing is new, in the new journal and in the old.
    for (String journal : List.of("new", "old")) {
      Run again = here().run("bring", "all.csv", journal, "--write");
      assertEquals(0, again.code(), again.err());
      assertTrue(
          again
              .out()
              .endsWith(
                  "7 sessions are in the journal already and are passed over\n"
                      + "there is nothing to write\n"),
          again.out());
    }
  }

  @Test
  void theSampleJournalComesBackButForWhatItCarries() throws IOException {
    Run sample =
        new InMemory(Path.of("sample-journal").toAbsolutePath())
            .run("tally", "--by", "entry", "--format", "csv");
    assertEquals(0, sample.code(), sample.err());
    assertEquals(figures(sample.out()), figures(broughtBack(sample.out(), "USD")));
  }

  /** The columns but those to date, which begin with what is carried. */
  private static List<List<String>> figures(String csv) {
    return csv.lines().map(line -> Arrays.asList(line.split(",")).subList(0, 4)).toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 20260314, 77, 4711})
  void generatedJournalsComeBack(long seed) throws IOException {
    GeneratedJournal journal =
        GeneratedJournal.write(Files.createDirectory(folder.resolve("old")), seed, 150);
    String csv = tally("old");
    String back = broughtBack(csv, journal.currency);
    // Some entries lie in folders of years and some do not, so those of a day may change places.
    assertEquals(sorted(figures(csv)), sorted(figures(back)));
    if (journal.carriedSessions == 0) {
      assertEquals(lastToDate(csv), lastToDate(back));
    }
    // What lies in one folder comes back byte for byte.
    assertEquals(back, broughtBack(back, journal.currency, "newer"));
  }

  private static List<String> lastToDate(String csv) {
    String last = csv.lines().reduce((before, line) -> line).orElseThrow();
    return Arrays.asList(last.split(",")).subList(4, 6);
  }

  private static List<List<String>> sorted(List<List<String>> rows) {
    List<List<String>> sorted = new ArrayList<>(rows);
    sorted.sort((a, b) -> a.get(0).compareTo(b.get(0)));
    return sorted;
  }

  /**
   * What spreadsheets do to a sheet between opening and saving it: other separators, a mark, line
   * ends, decimal commas, zeros left off, dates in the local form.
   */
  @ParameterizedTest
  @ValueSource(strings = {"USD", "JPY", "KWD"})
  void aSpreadsheetMayHaveSavedItInItsOwnWay(String currency) throws IOException {
    String places = currency.equals("USD") ? ".50" : currency.equals("KWD") ? ".500" : "";
    here()
        .with("old/project.yaml", "currency: " + currency + "\n")
        .with("old/2026-03-04.md", "---\nhours: 5.3333\ncost: 1234" + places + "\n---\n")
        .with("old/2026-03-14.md", "---\nhours: 2.75\ncost: -3" + places + "\n---\n")
        .with("old/2026-03-15-stem.md", "---\nhours: 2\n---\n");
    String csv = tally("old");
    String local =
        "\uFEFF"
            + csv.replace(",", ";")
                .replace('.', ',')
                .replaceAll(",(\\d)0+(?=[;\n])", ",$1")
                .replaceAll("(?m)^2026-03-(\\d\\d);", "$1.03.2026;")
                .replace("\n", "\r\n");
    assertTrue(local.contains("\r\n14.03.2026;1;2,75;-3"), local);
    assertEquals(csv, broughtBack(local, currency));
  }

  @Test
  void aSpreadsheetsOwnDatesAndAmountsComeBackToo() throws IOException {
    here()
        .with("old/project.yaml", "currency: USD\n")
        .with("old/2026-03-04.md", "---\nhours: 5.3333\ncost: 1234.50\n---\n")
        .with("old/2026-03-14.md", "---\nhours: 2.75\ncost: -3.00\n---\n");
    String csv = tally("old");
    String local =
        """
        entry\tsessions\thours\tcost\thours_to_date\tcost_to_date
        3/4/2026\t1\t5:20:00\t$1,234.50\t5:20:00\t$1,234.50
        3/14/2026\t1\t2:45:00\t($3.00)\t8:05:00\t$1,231.50
        Total\t2\t8:05:00\t$1,231.50
        """;
    byte[] bytes = ("\uFEFF" + local).getBytes(StandardCharsets.UTF_16LE);
    here().with("new/project.yaml", "currency: USD\n");
    Files.write(folder.resolve("all.csv"), bytes);
    Run run = here().run("bring", "all.csv", "new", "--write", "-q");
    assertEquals(0, run.code(), run.err());
    assertEquals(csv, tally("new"));
  }
}
