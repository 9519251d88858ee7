package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ahead.Ahead;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.PictureMemory;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Ledger;
import ribband.memory.Memory;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.stock.Stock;
import ribband.whole.FullJournal;

/** What of a journal a search may look at. */
class SearchEntriesTest {
  @TempDir Path folder;

  @BeforeEach
  void aProject() throws IOException {
    file(
        "project.yaml",
        "name: Teal\ncurrency: USD\n"
            + "phases: [rigging, {id: planking, title: Planks on}, fairing]\n");
  }

  private void file(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  private SearchEntries search() throws IOException {
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2030, 1, 1));
    requireSound(read.problems());
    Journal journal = read.journal();
    Problems problems = new Problems();
    Memory nothing = Memory.load(folder.resolve("no-memory"), "a build");
    Album album =
        AlbumReader.read(journal, Site.showing(journal), PictureMemory.NONE, nothing, problems);
    requireSound(problems.sorted());
    LocalDate asOf = journal.asOf().orElse(LocalDate.EPOCH);
    Stock stock = Stock.of(journal, asOf, Stock.Told.TO_READERS);
    Ahead ahead = Ahead.forReaders(journal, stock);
    return new SearchEntries(Book.of(album, Ledger.of(journal), stock, ahead, "tool 1"));
  }

  private static void requireSound(List<Problem> problems) {
    List<Problem> errors = problems.stream().filter(Problem::isError).toList();
    if (!errors.isEmpty()) {
      throw new AssertionError("the journal has errors: " + errors);
    }
  }

  @Test
  void anEntryIsLookedAtInAllItsWordsButNoAmountOfMoney() throws IOException {
    FullJournal.picture(folder.resolve("stem.png"), 60, 40);
    FullJournal.picture(folder.resolve("keel.png"), 50, 40);
    file(
        "2026-03-14-Märzkeel.md",
        "---\ntitle: Stem on\nphase: planking\nhours: {planking: 2:45, rigging: 1}\nlesson: [Less glue., Dry first.]\n"
            + "materials:\n  used: {epoxy: 2 fl oz, nails: 40}\n  bought:\n"
            + "    - {material: epoxy, amount: 1 qt, cost: 12.50}\n    - {item: discs, cost: 7}\n"
            + "photos: [{file: stem.png, caption: The stem}, keel.png]\n---\n"
            + "On at *last*.\n\n$5 was saved.\n");
    assertEquals(
        List.of(
            new SearchEntry(
                "entries/2026-03-14-M%C3%A4rzkeel.html",
                "Stem on",
                "14 March 2026",
                "3¾ hours",
                List.of("Planks on", "Rigging"),
                List.of("epoxy", "nails", "discs"),
                List.of("Less glue.", "Dry first."),
                List.of("The stem"),
                "On at last. $5 was saved.")),
        search().all());
  }

  @Test
  void aNightWithoutHoursHasItsPhaseAndOneWithoutAPhaseHasNone() throws IOException {
    file("2026-01-02.md", "---\nphase: fairing\n---\n");
    file("2026-01-03.md", "---\ntitle: Looked at her\n---\n");
    file("2026-01-04.md", "---\ntitle: Some\nhours: 1\n---\n");
    file("2026-01-05.md", "---\ntitle: A gift\nprivate: true\n---\nA gift.\n");
    assertEquals(
        List.of(
            bare("2026-01-04", "Some", "4 January 2026", "1 hour", "Unsorted"),
            bare("2026-01-03", "Looked at her", "3 January 2026", ""),
            bare("2026-01-02", "2 January 2026", "2 January 2026", "", "Fairing")),
        search().all());
  }

  private static SearchEntry bare(
      String name, String title, String day, String hours, String... phases) {
    List<String> none = List.of();
    return new SearchEntry(
        "entries/" + name + ".html", title, day, hours, List.of(phases), none, none, none, "");
  }

  @Test
  void phasesStandInTheOrderOfTheProjectWorkedInOrNot() throws IOException {
    assertEquals(List.of("Rigging", "Planks on", "Fairing"), search().phases());
    assertEquals(List.of(), search().all());
  }
}
