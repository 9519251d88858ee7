package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RefusedOutputTest {
  private static final String HASH = "0".repeat(64);

  @TempDir Path folder;
  private Path journal;
  private Path home;

  @BeforeEach
  void makeJournal() throws IOException {
    folder = folder.toRealPath();
    home = Files.createDirectories(folder.resolve("home/ann"));
    journal = folder.resolve("boats/dunlin");
    Tree.write(journal, "project.yaml", "name: Dunlin\n");
    Tree.write(journal, "2026/2026-03-14-garboard.md", "---\nhours: 2\n---\n");
    Tree.write(folder, "foreign/notes.txt", "mine");
    Files.createSymbolicLink(folder.resolve("to-journal"), journal);
    Files.createSymbolicLink(folder.resolve("to-boats"), folder.resolve("boats"));
    Files.createSymbolicLink(folder.resolve("to-nowhere"), folder.resolve("nowhere"));
  }

  @ParameterizedTest
  @CsvSource({
    "boats/dunlin, is the journal itself",
    "boats/dunlin/2026/.., is the journal itself",
    "to-journal, is the journal itself",
    "to-boats/dunlin, is the journal itself",
    "boats, is a folder above the journal",
    "to-boats, is a folder above the journal",
    "'', is a folder above the journal",
    "home/ann, is your home folder itself",
    "home, is a folder above your home folder",
    "/, is the root of a disk",
    "boats/dunlin/.ribband, is in a work folder of the tool",
    "boats/.Ribband/site, is in a work folder of the tool",
  })
  void anOutputThatWouldCoverMoreThanASiteIsRefused(String output, String why) throws Exception {
    Path wrong = folder.resolve(output);
    assertRefused(
        wrong,
        "the output "
            + wrong
            + " "
            + why
            + "; choose a folder of its own, such as "
            + journal.resolve("site"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"foreign", "boats/dunlin/2026", "to-journal/2026"})
  void aFolderWithFilesAndNoSiteOfOursIsRefused(String output) throws Exception {
    assertRefused(
        folder.resolve(output),
        "the output "
            + folder.resolve(output).toRealPath()
            + " holds files and no site of ours; choose an empty or a new folder");
  }

  @Test
  void whatIsNoFolderIsRefused() throws Exception {
    Path file = folder.resolve("foreign/notes.txt");
    assertRefused(file, "the output " + file + " is not a folder; choose a folder");
    Path link = folder.resolve("to-nowhere");
    assertRefused(
        link, "the output " + link + " is a link that leads nowhere; remove it or mend it");
  }

  @Test
  void aJournalInADeepFolderReachedByALinkIsFoundAbove() throws Exception {
    Path shed = folder.resolve("shed");
    Files.createDirectory(shed);
    Files.createSymbolicLink(shed.resolve("boats"), folder.resolve("boats"));
    Path wrong = folder.resolve("boats");
    assertRefused(
        wrong,
        shed.resolve("boats/dunlin"),
        "the output "
            + wrong
            + " is a folder above the journal; choose a folder of its own, such"
            + " as "
            + shed.resolve("boats/dunlin/site"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"boats/dunlin/site", "boats/dunlin/2026/site", "boats/empty", "new/deep/site"})
  void anEmptyOrNewFolderOutsideOrInsideTheJournalIsFine(String output) throws Exception {
    Files.createDirectory(folder.resolve("boats/empty"));
    Path site = folder.resolve(output);
    for (int run = 0; run < 2; run++) {
      try (Press press = Press.open(site, journal, home, FailingDisk.never())) {
        press.put("index.html", new byte[] {1});
        press.finish();
        assertEquals(site.resolveSibling(".ribband"), Press.workFolder(site));
        assertTrue(Files.isDirectory(Press.workFolder(site)));
      }
    }
    assertEquals(List.of("index.html", "site-files.txt"), List.copyOf(Tree.of(site).keySet()));
  }

  @Test
  void anOutputThatIsALinkToASiteIsWrittenBehindTheLink() throws Exception {
    Path real = Files.createDirectories(folder.resolve("www/dunlin"));
    Path link = Files.createSymbolicLink(folder.resolve("boats/dunlin/site"), real);
    try (Press press = Press.open(link, journal, home, FailingDisk.never())) {
      press.put("index.html", new byte[] {1});
      press.finish();
      assertEquals(folder.resolve("www/.ribband"), Press.workFolder(link));
      assertTrue(Files.isDirectory(Press.workFolder(link)));
    }
    assertEquals(List.of("index.html", "site-files.txt"), List.copyOf(Tree.of(real).keySet()));
    assertEquals(true, Files.isSymbolicLink(link));
  }

  @Test
  void aWorkFolderThatIsALinkIsRefused() throws Exception {
    Files.createSymbolicLink(journal.resolve(".ribband"), home);
    assertRefused(
        journal.resolve("site"),
        "the work folder " + journal.resolve(".ribband") + " is a link; remove the link");
  }

  static List<List<String>> hostileLists() {
    String header = "# Ribband site files, form 1\n";
    String stays = " does not stay in the site";
    return List.of(
        List.of("", "its first line is not \"# Ribband site files, form 1\""),
        List.of("shopping\n", "its first line is not \"# Ribband site files, form 1\""),
        List.of(
            "# Ribband site files, form 2\n",
            "its first line is not \"# Ribband site files, form 1\""),
        List.of(header + HASH + "  a.html", "its last line is cut off"),
        List.of(header + "\n", "line 2 is not a hash, two spaces and a path"),
        List.of(header + HASH + " a.html\n", "line 2 is not a hash, two spaces and a path"),
        List.of(header + "00  a.html\n", "line 2 is not a hash, two spaces and a path"),
        List.of(header + HASH + "  /etc/passwd\n", "the path in line 2" + stays),
        List.of(
            header + HASH + "  a.html\n" + HASH + "  ../project.yaml\n",
            "the path in line 3" + stays),
        List.of(header + HASH + "  a/../../b\n", "the path in line 2" + stays),
        List.of(header + HASH + "  a\\..\\b\n", "the path in line 2" + stays),
        List.of(header + HASH + "  .git/config\n", "the path in line 2" + stays),
        List.of(header + HASH + "  a\0b\n", "the path in line 2" + stays),
        List.of(header + HASH + "  site-files.txt\n", "the path in line 2" + stays));
  }

  @ParameterizedTest
  @MethodSource("hostileLists")
  void aDamagedOrHostileListIsRefused(List<String> listAndWhy) throws Exception {
    Path site = journal.resolve("site");
    Tree.write(site, "site-files.txt", listAndWhy.get(0));
    Tree.write(site, "a.html", "page");
    assertRefused(
        site,
        "the list "
            + site.resolve("site-files.txt")
            + " is damaged: "
            + listAndWhy.get(1)
            + "; move the folder "
            + site
            + " away, then publish again");
  }

  @Test
  void aListThatIsNotUtf8OrNoFileIsRefused() throws Exception {
    Path site = Files.createDirectories(journal.resolve("site"));
    Path list = site.resolve("site-files.txt");
    String cure = "; move the folder " + site + " away, then publish again";
    Files.write(list, "# Ribband bär\n".getBytes(StandardCharsets.ISO_8859_1));
    assertRefused(site, "the list " + list + " is damaged: it is not UTF-8" + cure);
    Files.delete(list);
    Files.createSymbolicLink(list, journal.resolve("project.yaml"));
    assertRefused(site, "the list " + list + " is damaged: it is not a file of ours" + cure);
    Files.delete(list);
    Files.createDirectory(list);
    assertRefused(site, "the list " + list + " is damaged: it is not a file of ours" + cure);
  }

  private void assertRefused(Path output, String message) throws IOException {
    assertRefused(output, journal, message);
  }

  private void assertRefused(Path output, Path root, String message) throws IOException {
    SortedMap<String, String> before = Tree.of(folder);
    PressRefused refused =
        assertThrows(
            PressRefused.class, () -> Press.open(output, root, home, FailingDisk.never()).close());
    assertEquals(message, refused.getMessage());
    assertEquals(before, Tree.of(folder));
    assertFalse(Files.exists(Path.of("/.ribband")));
  }
}
