package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PressTest {
  private static final Map<String, String> SITE =
      Map.of(
          "index.html", "front",
          "entries/2026-03-14-garboard.html", "garboard",
          "entries/2026-03-15-bär.html", "bär",
          "months/2026-03.html", "march",
          "pictures/scarf-480.jpg", "abc",
          "feed.xml", "feed");

  @TempDir Path folder;
  private Path journal;
  private Path site;

  @BeforeEach
  void makeJournal() throws IOException {
    folder = folder.toRealPath();
    journal = folder.resolve("boat");
    site = journal.resolve("site");
    Tree.write(journal, "project.yaml", "name: Dunlin\n");
  }

  @Test
  void aFirstPublishWritesAllAndTheList() throws Exception {
    assertEquals(new Published(6, 0, 0, List.of()), publish(SITE));
    SortedMap<String, String> expected = latin1(SITE);
    expected.put("entries/", "");
    expected.put("months/", "");
    expected.put("pictures/", "");
    SortedMap<String, String> tree = Tree.of(site);
    tree.remove("site-files.txt");
    assertEquals(expected, tree);
    assertFalse(Files.exists(journal.resolve(".ribband/staging")));
    assertEquals("name: Dunlin\n", Files.readString(journal.resolve("project.yaml")));
  }

  /** The hash of "abc" is the worked example B.1 of FIPS 180-2; the others are of the same code. */
  @Test
  void theListHasAHeaderThenHashesAndPathsInOrder() throws Exception {
    publish(Map.of("pictures/b.jpg", "abc", "a.html", "abc"));
    assertEquals(
        """
        # Ribband site files, form 1
        ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a.html
        ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  pictures/b.jpg
        """,
        Files.readString(site.resolve("site-files.txt")));
  }

  /** GNU coreutils reads the list as its own check file and finds every file right. */
  @Test
  void sha256sumAgreesWithTheList() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/sha256sum")), "no sha256sum on this machine");
    publish(SITE);
    Process check =
        new ProcessBuilder("/usr/bin/sha256sum", "--check", "--strict", "--quiet", "site-files.txt")
            .directory(site.toFile())
            .redirectErrorStream(true)
            .start();
    assertEquals("", new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    assertEquals(0, check.waitFor());
  }

  @Test
  void nothingChangedWritesNothing() throws Exception {
    publish(SITE);
    age(site);
    SortedMap<String, String> before = Tree.of(site);
    SortedMap<String, String> times = Tree.times(site);
    assertEquals(new Published(0, 6, 0, List.of()), publish(SITE));
    assertEquals(before, Tree.of(site));
    assertEquals(times, Tree.times(site));
  }

  @Test
  void onlyWhatChangedIsWritten() throws Exception {
    publish(SITE);
    age(site);
    Map<String, String> old = Tree.times(site);
    Map<String, String> next = with("months/2026-03.html", "March");
    assertEquals(new Published(1, 5, 0, List.of()), publish(next));
    assertEquals("March", Files.readString(site.resolve("months/2026-03.html")));
    Map<String, String> times = Tree.times(site);
    times.keySet().removeIf(path -> times.get(path).equals(old.get(path)));
    assertEquals(List.of("months/2026-03.html", "site-files.txt"), List.copyOf(times.keySet()));
  }

  /** A card is drawn from a print that this run made, or that an earlier one did. */
  @Test
  void whatWasPutOrKeptCanBeReadBeforeItIsInPlace() throws Exception {
    publish(SITE);
    try (Press press = Press.open(site, journal)) {
      assertThrows(IllegalArgumentException.class, () -> press.read("pictures/scarf-480.jpg"));
      assertTrue(press.keep(List.of("pictures/scarf-480.jpg")));
      press.put("index.html", "new front".getBytes(StandardCharsets.UTF_8));
      press.put("feed.xml", "feed".getBytes(StandardCharsets.UTF_8));
      Path made = Files.writeString(press.staging().resolve("mast.jpg"), "mast");
      press.putFile("pictures/mast-480.jpg", made);
      List<String> read = new ArrayList<>();
      for (String path :
          List.of("pictures/scarf-480.jpg", "index.html", "feed.xml", "pictures/mast-480.jpg")) {
        read.add(new String(press.read(path), StandardCharsets.UTF_8));
      }
      assertEquals(List.of("abc", "new front", "feed", "mast"), read);
      assertThrows(IllegalArgumentException.class, () -> press.read("months/2026-03.html"));
    }
  }

  @Test
  void pagesNeededNoLongerGoWithTheirFolders() throws Exception {
    publish(SITE);
    Map<String, String> next = new HashMap<>(SITE);
    next.keySet().removeIf(path -> path.startsWith("entries/") || path.startsWith("months/"));
    assertEquals(new Published(0, 3, 3, List.of()), publish(next));
    assertEquals(
        List.of("feed.xml", "index.html", "pictures/", "pictures/scarf-480.jpg", "site-files.txt"),
        List.copyOf(Tree.of(site).keySet()));
  }

  @Test
  void filesOfOthersStayAsTheyAre() throws Exception {
    publish(SITE);
    Tree.write(site, ".git/HEAD", "ref: refs/heads/pages\n");
    Tree.write(site, "CNAME", "dunlin.example.org\n");
    Tree.write(site, "entries/own notes.txt", "mine");
    Files.createDirectory(site.resolve("empty"));
    age(site);
    Map<String, String> times = Tree.times(site);
    publish(Map.of("index.html", "new front"));
    assertEquals(
        List.of(
            ".git/",
            ".git/HEAD",
            "CNAME",
            "empty/",
            "entries/",
            "entries/own notes.txt",
            "index.html",
            "site-files.txt"),
        List.copyOf(Tree.of(site).keySet()));
    assertEquals("mine", Files.readString(site.resolve("entries/own notes.txt")));
    for (String path : List.of(".git/HEAD", "CNAME", "entries/own notes.txt")) {
      assertEquals(times.get(path), Tree.times(site).get(path), path);
    }
  }

  @Test
  void anOldPageChangedBySomebodyIsLeftAndReported() throws Exception {
    publish(SITE);
    Tree.write(site, "months/2026-03.html", "march, with my own words");
    Map<String, String> next = new HashMap<>(SITE);
    next.remove("months/2026-03.html");
    assertEquals(new Published(0, 5, 0, List.of("months/2026-03.html")), publish(next));
    assertEquals("march, with my own words", Files.readString(site.resolve("months/2026-03.html")));
    assertEquals(new Published(0, 5, 0, List.of()), publish(next));
    PressRefused refused = assertThrows(PressRefused.class, () -> publish(SITE));
    assertEquals(clash("months/2026-03.html"), refused.getMessage());
  }

  @Test
  void aPageWeNeedIsMendedEvenAtTheSameSize() throws Exception {
    publish(SITE);
    Tree.write(site, "months/2026-03.html", "MARCH");
    Files.delete(site.resolve("feed.xml"));
    assertEquals(new Published(2, 4, 0, List.of()), publish(SITE));
    assertEquals("march", Files.readString(site.resolve("months/2026-03.html")));
    assertEquals("feed", Files.readString(site.resolve("feed.xml")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"file", "folder", "link", "dangling link", "link above", "file above"})
  void whatStandsInTheWayIsRefusedBeforeAnythingMoves(String kind) throws Exception {
    publish(Map.of("index.html", "front"));
    String way = "phases/planking.html";
    String named = way;
    Path outside = Files.createDirectory(folder.resolve("outside"));
    switch (kind) {
      case "file" -> Tree.write(site, way, "mine");
      case "folder" -> Files.createDirectories(site.resolve(way));
      case "link above" -> {
        Files.createSymbolicLink(site.resolve("phases"), outside);
        named = "phases";
      }
      case "file above" -> {
        Tree.write(site, "phases", "mine");
        named = "phases";
      }
      default -> {
        Files.createDirectories(site.resolve("phases"));
        Path target = kind.equals("link") ? journal.resolve("project.yaml") : folder.resolve("no");
        Files.createSymbolicLink(site.resolve(way), target);
      }
    }
    SortedMap<String, String> before = Tree.of(folder);
    Map<String, String> next = new HashMap<>(SITE);
    next.put(way, "planking");
    PressRefused refused = assertThrows(PressRefused.class, () -> publish(next));
    assertEquals(clash(named), refused.getMessage());
    SortedMap<String, String> after = Tree.of(folder);
    after.keySet().removeIf(path -> path.contains(".ribband/"));
    before.keySet().removeIf(path -> path.contains(".ribband/"));
    assertEquals(before, after);
  }

  @Test
  void aLinkToAFolderOfOursIsNeverDeletedThrough() throws Exception {
    publish(SITE);
    Path moved = folder.resolve("moved");
    Files.move(site.resolve("months"), moved);
    Files.createSymbolicLink(site.resolve("months"), moved);
    Map<String, String> next = new HashMap<>(SITE);
    next.remove("months/2026-03.html");
    assertEquals(new Published(0, 5, 0, List.of("months/2026-03.html")), publish(next));
    assertEquals("march", Files.readString(moved.resolve("2026-03.html")));
  }

  /** A hard link stands in for a disk that takes names which differ in case for one file. */
  @Test
  void aPageWhoseNameChangesOnlyInItsCaseIsOneFileWhereTheDiskSaysSo() throws Exception {
    publish(Map.of("index.html", "front", "entries/A.html", "old"));
    Files.createLink(site.resolve("entries/a.html"), site.resolve("entries/A.html"));
    Published published = publish(Map.of("index.html", "front", "entries/a.html", "new"));
    assertEquals(new Published(1, 1, 1, List.of()), published);
    assertEquals("new", Files.readString(site.resolve("entries/a.html")));
  }

  @Test
  void aForeignPageIsNotOursBecauseAnotherDiffersOnlyInCase() throws Exception {
    publish(Map.of("index.html", "front", "entries/A.html", "old"));
    Tree.write(site, "entries/a.html", "mine");
    assumeTrue(
        Files.readString(site.resolve("entries/A.html")).equals("old"), "names of one case here");
    PressRefused refused =
        assertThrows(PressRefused.class, () -> publish(Map.of("entries/a.html", "new")));
    assertEquals(clash("entries/a.html"), refused.getMessage());
    Files.delete(site.resolve("entries/A.html"));
    assertEquals(
        clash("entries/a.html"),
        assertThrows(PressRefused.class, () -> publish(Map.of("entries/a.html", "new")))
            .getMessage());
  }

  @Test
  void fiveThatStandInTheWayAreNamedAndTheOthersCounted() throws Exception {
    publish(Map.of("index.html", "front"));
    Map<String, String> next = new HashMap<>();
    for (int i = 1; i <= 5; i++) {
      Tree.write(site, "entries/" + i + ".html", "mine");
      next.put("entries/" + i + ".html", "ours");
    }
    String five = "entries/1.html, entries/2.html, entries/3.html, entries/4.html, entries/5.html";
    assertEquals(clash(five), assertThrows(PressRefused.class, () -> publish(next)).getMessage());
    Tree.write(site, "entries/6.html", "mine");
    next.put("entries/6.html", "ours");
    assertEquals(
        clash(five + " and 1 more"),
        assertThrows(PressRefused.class, () -> publish(next)).getMessage());
  }

  @Test
  void aNameOfAPartMayHave255BytesAndNoMore() throws Exception {
    String longest = "é".repeat(125) + ".html";
    try (Press press = open()) {
      press.put("entries/" + longest, bytes("x"));
      assertThrows(IllegalArgumentException.class, () -> press.put("x" + longest, bytes("x")));
      assertEquals(1, press.finish().written());
    }
    assertEquals("x", Files.readString(site.resolve("entries").resolve(longest)));
  }

  @Test
  void theWorkFolderLiesBesideTheOutputAlsoBehindALink() throws Exception {
    assertEquals(journal.resolve(".ribband"), Press.workFolder(site));
    Path real = Files.createDirectories(folder.resolve("www/dunlin"));
    Path link = Files.createSymbolicLink(journal.resolve("linked"), real);
    assertEquals(folder.resolve("www/.ribband"), Press.workFolder(link));
    Path nowhere = Files.createSymbolicLink(journal.resolve("lost"), folder.resolve("no"));
    assertEquals(journal.resolve(".ribband"), Press.workFolder(nowhere));
  }

  @Test
  void aKeptFileIsHeldNotWritten() throws Exception {
    publish(SITE);
    try (Press press = open()) {
      assertFalse(press.keep(List.of("pictures/scarf-480.jpg", "pictures/other.jpg")));
      assertTrue(press.keep(List.of("pictures/scarf-480.jpg")));
      assertThrows(
          IllegalArgumentException.class, () -> press.keep(List.of("pictures/scarf-480.jpg")));
      press.put("index.html", bytes("front"));
      assertEquals(new Published(0, 2, 4, List.of()), press.finish());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"abd", "abcd", ""})
  void aKeptFileThatChangedIsNotHeld(String content) throws Exception {
    publish(SITE);
    publish(SITE);
    Tree.write(site, "pictures/scarf-480.jpg", content);
    try (Press press = open()) {
      assertFalse(press.keep(List.of("pictures/scarf-480.jpg")));
    }
  }

  @Test
  void aFileKnownBySizeAndTimeIsNotReadAgain() throws Exception {
    publish(SITE);
    age(site);
    publish(SITE);
    Path picture = site.resolve("pictures/scarf-480.jpg");
    FileTime time = Files.getLastModifiedTime(picture);
    Files.writeString(picture, "xyz");
    Files.setLastModifiedTime(picture, time);
    try (Press press = open()) {
      assertTrue(press.keep(List.of("pictures/scarf-480.jpg")));
    }
    Files.delete(journal.resolve(".ribband/site-hashes"));
    try (Press press = open()) {
      assertFalse(press.keep(List.of("pictures/scarf-480.jpg")));
    }
  }

  @Test
  void aFileMadeInStagingIsMovedOrForgotten() throws Exception {
    for (int written : List.of(1, 0)) {
      try (Press press = open()) {
        Path made = Files.writeString(press.staging().resolve("x.jpg"), "picture");
        press.putFile("pictures/x.jpg", made);
        assertEquals(written, press.finish().written());
        assertFalse(Files.exists(made));
      }
      assertEquals("picture", Files.readString(site.resolve("pictures/x.jpg")));
    }
  }

  @Test
  void aFileFromElsewhereIsNotTaken() throws Exception {
    try (Press press = open()) {
      assertThrows(
          IllegalArgumentException.class,
          () -> press.putFile("project.yaml", journal.resolve("project.yaml")));
      Path climbing = press.staging().resolve("../../../project.yaml");
      assertThrows(IllegalArgumentException.class, () -> press.putFile("project.yaml", climbing));
    }
  }

  @Test
  void withoutFinishTheOldSiteIsUntouched() throws Exception {
    publish(SITE);
    SortedMap<String, String> before = Tree.of(journal);
    try (Press press = open()) {
      press.put("index.html", bytes("new front"));
    }
    SortedMap<String, String> after = Tree.of(journal);
    before.remove(".ribband/lock");
    after.remove(".ribband/lock");
    assertEquals(before, after);
  }

  @Test
  void staleStagingIsClearedAndLinksInItAreNotFollowed() throws Exception {
    Tree.write(journal, ".ribband/staging/pages/7", "half");
    Files.createSymbolicLink(journal.resolve(".ribband/staging/out"), journal);
    publish(SITE);
    assertFalse(Files.exists(journal.resolve(".ribband/staging")));
    assertTrue(Files.exists(journal.resolve("project.yaml")));
  }

  @Test
  void theWorkFolderMayBeDeletedBetweenRuns() throws Exception {
    publish(SITE);
    for (String file : List.of("lock", "site-hashes", "")) {
      Files.delete(journal.resolve(".ribband").resolve(file));
    }
    assertEquals(new Published(0, 6, 0, List.of()), publish(SITE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/a",
        "a/",
        "a//b",
        "../a",
        "a/../b",
        "./a",
        ".git/config",
        "a\\b",
        "a\nb",
        "a\0b",
        "site-files.txt",
        "Site-Files.TXT",
        "ba\u0308r.html"
      })
  void aWrongPathIsAProgrammersError(String path) throws Exception {
    try (Press press = open()) {
      IllegalArgumentException wrong =
          assertThrows(IllegalArgumentException.class, () -> press.put(path, bytes("x")));
      assertEquals("not a path of a site: \"" + path + "\"", wrong.getMessage());
    }
  }

  @Test
  void aSecondFileOnOnePathIsAProgrammersError() throws Exception {
    try (Press press = open()) {
      press.put("entries/bär.html", bytes("x"));
      for (String path : List.of("entries/bär.html", "entries/BÄR.html", "Entries/bär.html")) {
        assertThrows(IllegalArgumentException.class, () -> press.put(path, bytes("x")), path);
      }
    }
  }

  @Test
  void aFileThatIsAlsoAFolderIsAProgrammersError() throws Exception {
    try (Press press = open()) {
      press.put("a/b", bytes("x"));
      press.put("A", bytes("x"));
      assertThrows(IllegalArgumentException.class, press::finish);
    }
  }

  @Test
  void anyNumberOfThreadsGivesTheSameTree() throws Exception {
    Map<String, String> many = new TreeMap<>();
    for (int i = 0; i < 1000; i++) {
      many.put("entries/" + i + ".html", "entry " + i);
    }
    publish(many);
    Path other = folder.resolve("other/site");
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try (Press press = Press.open(other, journal)) {
      List<Future<?>> all = new ArrayList<>();
      for (Map.Entry<String, String> file : many.entrySet()) {
        all.add(
            threads.submit(
                () -> {
                  press.put(file.getKey(), bytes(file.getValue()));
                  return null;
                }));
      }
      for (Future<?> one : all) {
        one.get();
      }
      assertEquals(new Published(1000, 0, 0, List.of()), press.finish());
    } finally {
      threads.shutdown();
    }
    assertEquals(Tree.of(site), Tree.of(other));
  }

  private String clash(String path) {
    return "in the output "
        + site
        + " stands what the tool did not write, where the site needs files: "
        + path
        + "; move it away, then publish again";
  }

  private Press open() throws Exception {
    return Press.open(site, journal);
  }

  private Published publish(Map<String, String> files) throws Exception {
    try (Press press = open()) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        press.put(file.getKey(), bytes(file.getValue()));
      }
      return press.finish();
    }
  }

  private static Map<String, String> with(String path, String content) {
    Map<String, String> files = new HashMap<>(SITE);
    files.put(path, content);
    return files;
  }

  /** Makes all files an hour older, so that a later write shows in their times. */
  private static void age(Path root) throws IOException {
    FileTime hourAgo = FileTime.from(Instant.now().minusSeconds(3600));
    for (String file : Tree.times(root).keySet()) {
      Files.setLastModifiedTime(root.resolve(file), hourAgo);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static SortedMap<String, String> latin1(Map<String, String> files) {
    SortedMap<String, String> same = new TreeMap<>();
    files.forEach(
        (path, text) -> same.put(path, new String(bytes(text), StandardCharsets.ISO_8859_1)));
    return same;
  }
}
