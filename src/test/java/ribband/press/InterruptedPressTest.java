package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.memory.Hash;

/** Lets every call that changes the disk fail, one after the other. */
class InterruptedPressTest {
  private static final Map<String, String> OLD =
      Map.of(
          "index.html", "old front",
          "entries/a.html", "old a",
          "entries/b.html", "b",
          "months/2026-02.html", "february",
          "pictures/one.jpg", "one",
          "feed.xml", "old feed");
  private static final Map<String, String> NEW =
      Map.of(
          "index.html", "new front",
          "entries/a.html", "new a",
          "entries/b.html", "b",
          "entries/c.html", "new c",
          "phases/planking.html", "planking",
          "pictures/two.jpg", "two",
          "feed.xml", "new feed");

  @TempDir Path folder;
  private Path clean;

  @BeforeEach
  void publishCleanly() throws Exception {
    folder = folder.toRealPath();
    clean = folder.resolve("clean");
    publish(clean, NEW, FailingDisk.never());
  }

  @Test
  void afterAFailureAtAnyCallFilesAreWholeAndTheNextRunFinishes() throws Exception {
    int calls = callsOf(OLD, NEW);
    assertTrue(calls > 20, "calls seen: " + calls);
    for (int failing = 1; failing <= calls; failing++) {
      Path at = folder.resolve("failed-" + failing);
      Path killed = folder.resolve("killed-" + failing);
      publish(at, OLD, FailingDisk.never());
      Disk disk = new FailingDisk(failing, () -> snapshot(at, killed));
      IOException failure =
          assertThrows(IOException.class, () -> publish(at, NEW, disk), "call " + failing);
      assertTrue(failure.getMessage().contains(at.toString()), failure.getMessage());
      assertFalse(Files.exists(at.resolve(".ribband/staging")), "call " + failing);
      for (Path left : List.of(at, killed)) {
        assertEveryFileIsWhole(left.resolve("site"), failing);
        publish(left, NEW, FailingDisk.never());
        assertEquals(Tree.of(clean.resolve("site")), Tree.of(left.resolve("site")), "" + failing);
        assertFalse(Files.exists(left.resolve(".ribband/staging")));
      }
    }
  }

  @Test
  void afterAFailureTheBuilderMayAlsoGoBack() throws Exception {
    Path old = folder.resolve("old");
    publish(old, OLD, FailingDisk.never());
    int calls = callsOf(OLD, NEW);
    for (int failing = 1; failing <= calls; failing++) {
      Path at = folder.resolve("failed-" + failing);
      publish(at, OLD, FailingDisk.never());
      Disk disk = new FailingDisk(failing, () -> {});
      assertThrows(IOException.class, () -> publish(at, NEW, disk));
      publish(at, OLD, FailingDisk.never());
      assertEquals(Tree.of(old.resolve("site")), Tree.of(at.resolve("site")), "" + failing);
    }
  }

  @Test
  void aKilledFirstPublishLeavesASiteOfOursEvenWithoutTheWorkFolder() throws Exception {
    int calls = callsOf(Map.of(), NEW);
    for (int failing = 1; failing <= calls; failing++) {
      Path at = folder.resolve("failed-" + failing);
      Path killed = folder.resolve("killed-" + failing);
      Disk disk = new FailingDisk(failing, () -> snapshot(at, killed));
      assertThrows(IOException.class, () -> publish(at, NEW, disk));
      Path moved = folder.resolve("moved-" + failing);
      Files.createDirectories(moved);
      if (Files.exists(killed.resolve("site"))) {
        Files.move(killed.resolve("site"), moved.resolve("site"));
      }
      publish(moved, NEW, FailingDisk.never());
      assertEquals(Tree.of(clean.resolve("site")), Tree.of(moved.resolve("site")), "" + failing);
    }
  }

  @Test
  void beforeTheFirstMoveTheOldSiteIsIdentical() throws Exception {
    Path at = folder.resolve("at");
    publish(at, OLD, FailingDisk.never());
    SortedMap<String, String> before = Tree.of(at.resolve("site"));
    SortedMap<String, String> times = Tree.times(at.resolve("site"));
    // The staging folders, then a file for each that changed, are made before the site is touched.
    for (int failing = 1; failing <= 9; failing++) {
      Disk disk = new FailingDisk(failing, () -> {});
      assertThrows(IOException.class, () -> publish(at, NEW, disk));
      assertEquals(before, Tree.of(at.resolve("site")));
      assertEquals(times, Tree.times(at.resolve("site")));
    }
  }

  @Test
  void aFullDiskIsToldWithThePath() throws Exception {
    Path at = folder.resolve("at");
    publish(at, Map.of("index.html", "old"), FailingDisk.never());
    Disk full = new FailingDisk(4, () -> {});
    IOException failure =
        assertThrows(IOException.class, () -> publish(at, Map.of("index.html", "new"), full));
    assertEquals(
        "cannot write " + at.resolve(".ribband/staging/pages/1") + ": No space left on device",
        failure.getMessage());
  }

  /** Pages link to each other in circles; no page that is there links to one that is not yet. */
  @Test
  void newAddressesComeBeforeWhatReplacesOlderPages() throws Exception {
    List<String> order = new ArrayList<>();
    Path at = folder.resolve("at");
    publish(at, OLD, FailingDisk.never());
    publish(at, NEW, watching(at, order));
    order.removeIf(step -> step.startsWith("- "));
    assertEquals(
        List.of(
            "site-files.txt",
            "pictures/two.jpg",
            "entries/c.html",
            "phases/planking.html",
            "entries/a.html",
            "feed.xml",
            "index.html",
            "site-files.txt"),
        order);
  }

  private static Disk watching(Path at, List<String> order) {
    return new FailingDisk(0, () -> {}) {
      @Override
      public void move(Path from, Path to) throws IOException {
        order.add(at.resolve("site").relativize(to).toString());
        super.move(from, to);
      }

      @Override
      public void delete(Path path) throws IOException {
        if (path.startsWith(at.resolve("site"))) {
          order.add("- " + at.resolve("site").relativize(path));
        }
        super.delete(path);
      }
    };
  }

  /** A month that goes takes its card along, and the page is not left without it. */
  @Test
  void aPageIsRemovedBeforeWhatItShows() throws Exception {
    List<String> order = new ArrayList<>();
    Path at = folder.resolve("at");
    Map<String, String> old =
        Map.of("cards/2026-01.png", "1", "index.html", "2", "months/2026-01.html", "3");
    publish(at, old, FailingDisk.never());
    publish(at, Map.of("index.html", "2"), watching(at, order));
    assertEquals(
        List.of(
            "site-files.txt",
            "- months/2026-01.html",
            "- cards/2026-01.png",
            "- months",
            "- cards",
            "site-files.txt"),
        order);
  }

  /** No page is in place before what it shows; the lists stand around all of them. */
  @Test
  void filesArePutInPlaceInTheirOrder() throws Exception {
    List<String> order = new ArrayList<>();
    Path at = folder.resolve("at");
    publish(
        at,
        Map.of(
            "index.html",
            "1",
            "months.csv",
            "2",
            "feed.json",
            "3",
            "money.html",
            "4",
            "entries/z.html",
            "5",
            "entries/a.html",
            "6",
            "assets/style.css",
            "7",
            "search.js",
            "10",
            "pictures/x.jpg",
            "8",
            "months/2026-01.html",
            "9"),
        watching(at, order));
    assertEquals(
        List.of(
            "site-files.txt",
            "assets/style.css",
            "pictures/x.jpg",
            "entries/a.html",
            "entries/z.html",
            "money.html",
            "months/2026-01.html",
            "feed.json",
            "months.csv",
            "search.js",
            "index.html",
            "site-files.txt"),
        order);
  }

  private int callsOf(Map<String, String> before, Map<String, String> after) throws Exception {
    Path at = folder.resolve("counted");
    if (!before.isEmpty()) {
      publish(at, before, FailingDisk.never());
    }
    FailingDisk counting = FailingDisk.never();
    publish(at, after, counting);
    return counting.calls();
  }

  private static void assertEveryFileIsWhole(Path site, int failing) throws IOException {
    Map<String, String> tree = new TreeMap<>(Tree.of(site));
    String list = tree.remove("site-files.txt");
    assertNotNull(list, "no list after call " + failing);
    for (Map.Entry<String, String> file : tree.entrySet()) {
      String path = file.getKey();
      if (path.endsWith("/")) {
        continue;
      }
      String content = file.getValue();
      assertTrue(
          content.equals(OLD.get(path)) || content.equals(NEW.get(path)),
          path + " is neither old nor new after call " + failing + ": " + content);
      String line = Hash.of(content.getBytes(StandardCharsets.UTF_8)) + "  " + path + "\n";
      assertTrue(list.contains(line), path + " is not listed after call " + failing);
    }
  }

  private static void snapshot(Path from, Path to) {
    try {
      Tree.copy(from, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Files go in by the order of their names, so that every run makes the same calls. */
  private Published publish(Path at, Map<String, String> files, Disk disk) throws Exception {
    Path journal = folder.resolve("journal");
    try (Press press = Press.open(at.resolve("site"), journal, folder.resolve("home"), disk)) {
      for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
        press.put(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
      }
      return press.finish();
    }
  }
}
