package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Publishing again: only what changed, only what is its own. */
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
  void aMemoryThatCannotBeWrittenTakesNothingFromThePublish() throws IOException {
    FullJournal.write(folder);
    Files.createDirectories(folder.resolve(".ribband/pictures/full"));

    String told = secondLine(publish());

    assertTrue(told.matches("\\d+ files written, 0 unchanged, 0 removed"), told);
  }

  /** {@link InMemory} looks after each. */
  @Test
  void noCommandTouchesTheJournal() throws IOException {
    FullJournal.write(folder);
    Builder builder = new Builder(folder);
    for (String text : List.of("---\nhours: 1\nphase: fairing\n---\n", "---\nbroken: [\n---\n")) {
      new InMemory(folder).with("2026/2026-05-03.md", text);
      int code = text.contains("broken") ? 1 : 0;
      assertEquals(code, builder.run("check").code());
      assertEquals(code, builder.run("tally", "--by", "week").code());
      assertEquals(code, builder.run("publish").code());
    }
  }

  /** A night's work would else grow with the years, and so would what goes to the server. */
  @Test
  void aNightMoreLeavesThePagesOfOlderEntriesAsTheyAre() throws IOException {
    FullJournal.write(folder);
    Map<String, String> before = new Builder(folder).publish().hashes();
    new InMemory(folder).with("2026/2026-05-03.md", "---\nhours: 1\nphase: fairing\n---\nMore.\n");

    Map<String, String> after = new Builder(folder).publish().hashes();

    List<String> entries =
        before.keySet().stream().filter(path -> path.startsWith("entries/")).toList();
    assertEquals(
        entries.subList(entries.size() - 1, entries.size()),
        entries.stream().filter(path -> !before.get(path).equals(after.get(path))).toList());
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

    refused(
        letters.toString(), " holds files and no site of ours; choose an empty or a new folder");
    assertEquals(List.of("to-mother.txt"), new Published(letters).paths());
  }

  @Test
  void theJournalItselfAndWhatHoldsItAreRefused() throws IOException {
    FullJournal.write(folder);
    String instead = "; choose a folder of its own, such as " + folder.resolve("site");
    refused(folder.toString(), " is the journal itself" + instead);
    refused(folder.getParent().toString(), " is a folder above the journal" + instead);
    refused("/", " is the root of a disk" + instead);
    refused(
        folder.resolve("2026").toString(),
        " holds files and no site of ours; choose an empty or a new folder");
    assertFalse(Files.exists(folder.resolve("site")));
  }

  private void refused(String output, String why) throws IOException {
    InMemory.Run run = new Builder(folder).run("publish", "-o", output);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertEquals("ribband: the output " + output + why + "\n", run.err());
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
  void aLaidJournalIsPublishedAtOnce() throws IOException {
    assertEquals(0, new InMemory(folder).run("lay", "boat").code());

    Published site = new Builder(folder.resolve("boat")).publish();

    assertEquals(1, site.pages().stream().filter(page -> page.startsWith("entries/")).count());
    assertTrue(site.has("index.html"));
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
