package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory;

/** Publishing again: only what changed, only what is its own, the same bytes everywhere. */
class RepublishTest {
  @TempDir private Path folder;
  @TempDir private Path other;

  private static String secondLine(InMemory.Run run) {
    assertEquals(0, run.code(), run.err());
    return run.out().lines().skip(1).findFirst().orElseThrow().replaceFirst(", in .*", "");
  }

  private InMemory.Run publish() throws IOException {
    return new Builder(folder).run("publish");
  }

  @Test
  void nothingChangedWritesNothing() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> times = Published.times(folder.resolve("site"), List.of());

    String told = secondLine(publish());

    assertTrue(told.matches("0 files written, \\d+ unchanged, 0 removed"), told);
    assertEquals(times, Published.times(folder.resolve("site"), List.of()));
  }

  @Test
  void aRemovedEntryTakesItsPageAndPicturesAlong() throws IOException {
    FullJournal.write(folder);
    publish();
    Files.delete(folder.resolve("2026/2026-03-14-garboards.md"));

    InMemory.Run run = publish();

    Published site = new Published(folder.resolve("site"));
    assertEquals(0, run.code(), run.err());
    assertFalse(site.has("entries/2026-03-14-garboards.html"));
    assertTrue(site.paths().stream().noneMatch(path -> path.startsWith("pictures/")));
  }

  @Test
  void aPictureIsPrintedOnceForAsLongAsItStays() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = Published.times(folder.resolve("site/pictures"), List.of());
    // Another time and another name, the same bytes.
    Path picture = folder.resolve("2026/2026-03-14-garboards/square.jpg");
    Files.move(picture, picture.resolveSibling("renamed.jpg"));
    Path entry = folder.resolve("2026/2026-03-14-garboards.md");
    Files.writeString(entry, Files.readString(entry).replace("square.jpg", "renamed.jpg"));

    assertEquals(0, publish().code());

    assertEquals(before, Published.times(folder.resolve("site/pictures"), List.of()));
  }

  @Test
  void forgettingChangesNoByte() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = new Published(folder.resolve("site")).hashes();
    for (Path file : Published.filesOf(folder.resolve(".ribband"))) {
      Files.delete(file);
    }

    assertEquals(0, publish().code());
    assertEquals(before, new Published(folder.resolve("site")).hashes());
  }

  @Test
  void filesOfOthersStayAsTheyAre() throws IOException {
    FullJournal.write(folder);
    publish();
    new InMemory(folder.resolve("site"))
        .with("CNAME", "example.org\n")
        .with(".git/config", "[core]\n")
        .with("entries/note.txt", "mine\n");
    Map<String, String> foreign =
        Published.times(folder.resolve("site"), List.of("assets", "pictures", "index"));
    Files.delete(folder.resolve("2026/2026-05-01-fair.md"));

    assertEquals(0, publish().code());

    Map<String, String> after =
        Published.times(folder.resolve("site"), List.of("assets", "pictures", "index"));
    for (String path : List.of("CNAME", ".git/config", "entries/note.txt")) {
      assertEquals(foreign.get(path), after.get(path), path);
    }
    assertFalse(after.containsKey("entries/2026-05-01-fair.html"));
  }

  @Test
  void aFolderOfOthersIsRefused() throws IOException {
    FullJournal.write(folder);
    Path letters = Files.createDirectories(other.resolve("letters"));
    Files.writeString(letters.resolve("to-mother.txt"), "Dear");

    InMemory.Run run = new Builder(folder).run("publish", "-o", letters.toString());

    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("ribband: the output " + letters), run.err());
    assertEquals(List.of("to-mother.txt"), new Published(letters).paths());
  }

  @Test
  void anErrorLeavesTheLastGoodSiteWhole() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = new Published(folder.resolve("site")).hashes();
    new InMemory(folder).with("2026/2026-05-02.md", "---\nhours: 2;45\nphase: fairing\n---\n");
    Path picture = folder.resolve("2026/2026-03-14-garboards/wide.jpg");
    byte[] whole = Files.readAllBytes(picture);
    Files.write(picture, java.util.Arrays.copyOf(whole, whole.length / 2));

    InMemory.Run run = publish();

    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(
        """
        2026/2026-03-14-garboards.md:23:12: error: picture "2026/2026-03-14-garboards/wide.jpg" is cut short; copy it again from the camera
        2026/2026-05-02.md:2:8: error: hours "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
        2 errors in 7 entries, nothing was published
        """,
        run.err());
    assertEquals(before, new Published(folder.resolve("site")).hashes());
  }

  @Test
  void aPictureThatOnlyPrintingFindsBadStopsThePublish() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\n")
        .with("2026-01-01-a.md", "---\nhours: 1\nphase: x\nphotos: [heic.jpg, empty.jpg]\n---\n")
        .with("empty.jpg", "")
        .with("heic.jpg", "\0\0\0\u0018ftypheic\0\0\0\0mif1heic");

    InMemory.Run run = publish();

    assertEquals(1, run.code());
    assertEquals(
        """
        2026-01-01-a.md:4:10: error: picture "heic.jpg" is a HEIC picture; export it as JPEG
        2026-01-01-a.md:4:20: error: picture "empty.jpg" is empty; copy it again from the camera
        2 errors in 1 entry, nothing was published
        """,
        run.err());
    assertFalse(Files.exists(folder.resolve("site")));
  }

  @ParameterizedTest
  @CsvSource({
    "tr, Asia/Tokyo",
    "ar-EG, Pacific/Kiritimati",
    "de, Pacific/Niue",
    "th-TH-u-ca-buddhist, UTC"
  })
  void sameBytesUnderOtherSkies(String language, String zone) throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> here = new Published(folder.resolve("site")).hashes();
    Locale locale = Locale.getDefault();
    TimeZone time = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      Path there = other.resolve("site");
      assertEquals(0, new Builder(folder).run("publish", "-o", there.toString()).code());
      assertEquals(here, new Published(there).hashes());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(time);
    }
  }

  @Test
  void sameBytesOnOneThreadAndOnFour() throws Exception {
    FullJournal.write(folder);
    Map<String, String> one = onThreads(1);
    assertEquals(one, onThreads(4));
  }

  private Map<String, String> onThreads(int threads) throws Exception {
    Path site = other.resolve("site" + threads);
    Callable<Integer> work = () -> new Builder(folder).run("publish", "-o", site.toString()).code();
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      assertEquals(0, pool.submit(work).get());
    } finally {
      pool.shutdown();
    }
    return new Published(site).hashes();
  }

  @Test
  void lineEndsMakeNoDifference() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = new Published(folder.resolve("site")).hashes();
    for (Path file : Published.filesOf(folder.resolve("2026"))) {
      if (file.toString().endsWith(".md")) {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        Files.writeString(file, "\uFEFF" + text.replace("\n", "\r\n"), StandardCharsets.UTF_8);
      }
    }

    assertEquals(0, publish().code());
    assertEquals(before, new Published(folder.resolve("site")).hashes());
  }

  @Test
  void csvIsByteForByteWhatTallyPrints() throws IOException {
    FullJournal.write(folder);
    publish();
    Published site = new Published(folder.resolve("site"));

    assertEquals(
        new Builder(folder).run("tally", "--format", "csv").out(), site.text("months.csv"));
    assertEquals(
        new Builder(folder).run("tally", "--by", "phase", "--format", "csv").out(),
        site.text("phases.csv"));
    assertNotEquals("", site.text("months.csv"));
  }

  @Test
  void aSiteInsideTheJournalIsNeverReadAsJournal() throws IOException {
    FullJournal.write(folder);
    publish();
    Path elsewhere = folder.resolve("published");
    assertEquals(0, new Builder(folder).run("publish", "-o", elsewhere.toString()).code());
    Files.copy(folder.resolve("2026/2026-01-16.md"), elsewhere.resolve("2026-06-01-copy.md"));

    String out = new Builder(folder).run("check").out();

    assertEquals("6 entries, no errors, no warnings\n", out);
  }
}
