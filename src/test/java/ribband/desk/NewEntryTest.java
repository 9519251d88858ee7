package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a new entry goes and what it is called. */
class NewEntryTest {
  @TempDir private Path folder;
  private Desk desk;

  @BeforeEach
  void boat() throws IOException {
    desk = new Desk(folder).with("project.yaml", "name: x");
  }

  private String free(String words) throws IOException {
    return free(Desk.NIGHT, words);
  }

  private String free(LocalDate day, String words) throws IOException {
    return NewEntry.free(desk.journal(), day, words).path();
  }

  @Test
  void theFirstEntryLiesInItsYear() throws IOException {
    NewEntry entry = NewEntry.free(desk.journal(), Desk.NIGHT, "Garboards on");
    assertEquals(new NewEntry("2026", "2026-03-14-garboards-on"), entry);
    assertEquals("2026/2026-03-14-garboards-on.md", entry.path());
    assertEquals("2026/2026-03-14-garboards-on", entry.pictures());
    assertEquals(folder.resolve("2026/2026-03-14-garboards-on.md"), entry.file(folder));
    assertEquals("2026/2026-03-14.md", free(""));
  }

  /** {@code place} is where the latest entry lies, of 31 December 2025. */
  @ParameterizedTest
  @CsvSource({
    "2025-12-31.md, 2026-03-14-x.md",
    "2025/2025-12-31.md, 2026/2026-03-14-x.md",
    "log/2025-12-31.md, log/2026-03-14-x.md",
    "log/2025/12/2025-12-31.md, log/2026/03/2026-03-14-x.md",
    "2025-12/2025-12-31-a.md, 2026-03/2026-03-14-x.md",
    "2025/2025-12/2025-12-31-a.md, 2026/2026-03/2026-03-14-x.md",
    "2025/planking/2025-12-31-a.md, 2026/planking/2026-03-14-x.md",
    "2025-12-31/notes.md, 2026-03-14-x.md",
    "2025/2025-12-31-garboard/notes.md, 2026/2026-03-14-x.md",
    "2024/2025-12-31.md, 2024/2026-03-14-x.md",
    "11/2025-12-31.md, 11/2026-03-14-x.md",
    "my 2025/2025-12-31.md, my 2025/2026-03-14-x.md"
  })
  void itLiesWhereTheLatestDoes(String place, String path) throws IOException {
    desk.entry("old/2025-01-01.md", "hours: 1", "phase: a").entry(place, "title: x");
    assertEquals(path, free("x"));
  }

  @Test
  void inTheSameMonthItLiesBesideTheLatest() throws IOException {
    desk.entry("2026/03/2026-03-13.md", "title: x");
    assertEquals("2026/03/2026-03-14-x.md", free("x"));
    assertEquals("2025/12/2025-12-01-x.md", free(LocalDate.of(2025, 12, 1), "x"));
  }

  @Test
  void aTakenNameGetsANumber() throws IOException {
    desk.entry("2026/2026-03-14-planking.md", "title: x");
    assertEquals("2026/2026-03-14-planking-2.md", free("planking"));
    desk.entry("2026/2026-03-14-planking-2.md", "title: x");
    assertEquals("2026/2026-03-14-planking-3.md", free("planking"));
    assertEquals("2026/2026-03-14.md", free(""));
    desk.entry("2026/2026-03-14.md", "title: x");
    assertEquals("2026/2026-03-14-2.md", free(""));
  }

  /** Two entries on one address are an error, wherever they lie and however they are called. */
  @ParameterizedTest
  @CsvSource({
    "elsewhere/2026-03-14-planking.md",
    "2026-03-14-Planking.MD",
    "2026/2026-03-14-planking.markdown",
    "2026/2026-03-14 planking.md",
    "2026/2026-03-14_planking.md",
    "2026/2026-03-14/planking.md"
  })
  void theAddressIsFree(String there) throws IOException {
    desk.entry("2026/2026-03-15-later.md", "title: x").entry(there, "title: x");
    NewEntry entry = NewEntry.free(desk.journal(), Desk.NIGHT, "Planking");
    assertEquals("2026/2026-03-14-planking-2.md", entry.path());
    entry.write(folder, "---\n---\n");
    assertEquals(List.of(), desk.problems());
  }

  @Test
  void anEntryThatCannotBeReadHasItsNameToo() throws IOException {
    desk.with("2026-03-14-planking.md", "---", "hours: [").entry("2026/2026-03-13.md", "title: x");
    assertEquals("2026/2026-03-14-planking-2.md", free("planking"));
  }

  @Test
  void whatIsNoFileOfTheJournalIsInTheWayAllTheSame() throws IOException {
    Files.createDirectories(folder.resolve("2026/2026-03-14-a.md"));
    assertEquals("2026/2026-03-14-a-2.md", free("a"));
    Files.createSymbolicLink(folder.resolve("2026/2026-03-14-b.md"), folder.resolve("nowhere"));
    assertEquals("2026/2026-03-14-b-2.md", free("b"));
    Files.createFile(folder.resolve("2026/2026-03-14-c"));
    assertEquals("2026/2026-03-14-c-2.md", free("c"));
    Files.createDirectory(folder.resolve("2026/2026-03-14-d"));
    assertEquals("2026/2026-03-14-d.md", free("d"));
  }

  /** Else it would show the pictures of another. */
  @Test
  void itsFolderOfPicturesIsNoOtherEntrys() throws IOException {
    desk.entry("2026-03-14/notes.md", "title: x").entry("2026-03-15.md", "title: x");
    assertEquals("2026-03-14-2.md", free(""));
    desk.with("2026-03-14-scarfs/a.png", "x");
    assertEquals("2026-03-14-scarfs.md", free("scarfs"));
    desk.entry("2026-03-13.md", "photos: [2026-03-14-scarfs/a.png]");
    assertEquals("2026-03-14-scarfs-2.md", free("scarfs"));
    assertEquals("2026-03-14-scarf.md", free("scarf"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Garboards on!|garboards-on",
        "  -- a, b; c --  |a-b-c",
        "ÜBERGRÖSSE 3½|übergrösse-3½",
        "船の外板|船の外板",
        "e\u0301tai|étai",
        "../../etc/passwd|etc-passwd",
        "a.md|a-md",
        "...|",
        "\uD83D\uDE00|",
        "con|con",
        "हिन्दी|हिन्दी"
      })
  void wordsBecomeAName(String words, String slug) throws IOException {
    String name = slug == null ? "2026-03-14.md" : "2026-03-14-" + slug + ".md";
    assertEquals("2026/" + name, free(words));
  }

  @Test
  void aNameIsShortEnoughForEveryFileSystem() throws IOException {
    assertEquals("2026/2026-03-14-" + "a".repeat(60) + ".md", free("a".repeat(61)));
    assertEquals("2026/2026-03-14-" + "a".repeat(59) + ".md", free("a".repeat(59) + " b"));
    // Letters of four bytes: 45 of them make 180.
    String letter = "\uD800\uDF30";
    assertEquals("2026/2026-03-14-" + letter.repeat(45) + ".md", free(letter.repeat(46)));
    assertTrue(free("船".repeat(70)).getBytes(StandardCharsets.UTF_8).length < 215);
  }

  /** The address of a long name is cut, and must differ all the same. */
  @Test
  void longNamesGetNumbersToo() throws IOException {
    String words = "\uD800\uDF30".repeat(60);
    for (int i = 0; i < 3; i++) {
      NewEntry.free(desk.journal(), Desk.NIGHT, words).write(folder, "---\n---\n");
    }
    assertEquals(3, desk.journal().entries().size());
    assertEquals(List.of(), desk.problems());
  }

  @Test
  void itIsWrittenWithItsFolders() throws IOException {
    NewEntry entry = new NewEntry("a/b", "2026-03-14-ü");
    assertEquals(folder.resolve("a/b/2026-03-14-ü.md"), entry.write(folder, "é\n"));
    assertEquals("é\n", desk.text("a/b/2026-03-14-ü.md"));
    assertEquals(
        folder.resolve("2026-03-14.md"), new NewEntry("", "2026-03-14").write(folder, "root\n"));
    assertEquals("root\n", desk.text("2026-03-14.md"));
  }

  @Test
  void aFileThatHasComeSinceStays() throws IOException {
    NewEntry entry = NewEntry.free(desk.journal(), Desk.NIGHT, "x");
    entry.write(folder, "first\n");
    assertThrows(FileAlreadyExistsException.class, () -> entry.write(folder, "second\n"));
    assertEquals("first\n", desk.text(entry.path()));
  }

  @Test
  void aFileInTheWayOfItsFolderIsNamed() throws IOException {
    Path file = Files.createFile(folder.resolve("2026"));
    NewEntry entry = NewEntry.free(desk.journal(), Desk.NIGHT, "x");
    String told = assertThrows(IOException.class, () -> entry.write(folder, "x\n")).getMessage();
    assertTrue(told.contains(file.toString()), told);
  }
}
