package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;
import ribband.press.Press;

/** A journal is written while it is watched; whatever happens to it, the last good site stays. */
class WatchCommandTest {
  private static final String PAGE = "/entries/2026-03-14-garboard.html";

  @TempDir private Path folder;
  private Path boat;
  private Path entry;

  @BeforeEach
  void journal() throws IOException {
    boat = Files.createDirectories(folder.resolve("boat"));
    Files.writeString(
        boat.resolve("project.yaml"), "name: Teal\nsite: {address: none}\nphases:\n  - planking\n");
    entry = Files.createDirectories(boat.resolve("2026")).resolve("2026-03-14-garboard.md");
    Files.writeString(entry, text("The first plank."));
  }

  private static String text(String words) {
    return "---\ntitle: Garboard\nphase: planking\nhours: 2\n---\n" + words + "\n";
  }

  private WatchRun watch(String... more) {
    return new WatchRun(boat, more);
  }

  @Test
  void aSaveByRenameIsPublishedAndTold() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      assertTrue(watch.address().toString().matches("http://127\\.0\\.0\\.1:[0-9]+/"));
      watch.shows(PAGE, "The first plank.");
      WatchRun.save(entry, text("The second plank."));
      watch.published(2).shows(PAGE, "The second plank.");
      assertEquals("", watch.err());
      assertTrue(
          watch
              .out()
              .lines()
              .skip(2)
              .allMatch(
                  line ->
                      line.matches(
                          "15:00:00  [0-9]+ files? written, [0-9]+ unchanged, 0 removed, in 0.0"
                              + " s")),
          watch.out());
    }
  }

  @Test
  void thePublishedFilesAreThoseOfPublish() throws Exception {
    try (WatchRun watch = watch("-o", folder.resolve("watched").toString()).published(1)) {
      watch.shows(PAGE, "/.ribband/preview.js?");
    }
    InMemory command = new InMemory(folder);
    assertEquals(0, command.run("publish", "boat", "-o", "published").code());
    assertEquals(
        JournalState.of(folder.resolve("published")).keySet(),
        JournalState.of(folder.resolve("watched")).keySet());
    for (String path : JournalState.of(folder.resolve("published")).keySet()) {
      Path file = folder.resolve("watched").resolve(path);
      if (Files.isRegularFile(file)) {
        assertEquals(-1, Files.mismatch(folder.resolve("published").resolve(path), file), path);
      }
    }
  }

  @Test
  void problemsAreToldOnceAndTheLastGoodSiteStays() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      WatchRun.save(entry, text("Wrong.").replace("hours: 2", "hours: 2;45"));
      String problem =
          "2026/2026-03-14-garboard.md:4:8: error: hours \"2;45\" is not a length of time; write"
              + " 2:45, 2.75 or 2 3/4\n";
      String count = "15:00:00  1 error in 1 entry, the site stays as it is\n";
      watch.said(count).shows("/.ribband/now?x", "is not a length of time");
      assertEquals(problem + count, watch.err());
      watch.shows(PAGE, "The first plank.");
      WatchRun.save(entry, text("Still wrong.").replace("hours: 2", "hours: 2;45"));
      watch.said(problem + count + count);
      WatchRun.save(entry, text("Right.").replace("hours: 2", "hours: 2:45"));
      watch.said("; all is mended\n").shows(PAGE, "Right.");
      assertEquals(problem + count + count, watch.err());
      assertFalse(watch.get("/.ribband/now?x").body().contains("length of time"));
    }
  }

  @Test
  void warningsArePublishedAndTold() throws Exception {
    Files.writeString(boat.resolve("2026/2026-03-15.md"), "Only words.\n");
    try (WatchRun watch = watch().said("; 1 warning in 2 entries\n")) {
      watch.shows("/.ribband/now?x", "1 warning<").shows("/entries/2026-03-15.html", "Only words.");
      assertTrue(watch.err().startsWith("2026/2026-03-15.md:1:1: warning: "), watch.err());
    }
  }

  @Test
  void aFirstStartWithErrorsListsThemUntilTheFirstGoodPublish() throws Exception {
    Files.writeString(entry, text("Wrong.").replace("hours: 2", "hours: two"));
    try (WatchRun watch = watch().said("1 error in 1 entry")) {
      watch.shows("/", "Nothing is published yet").shows("/any.html", "hours &quot;two&quot;");
      assertEquals(503, watch.get("/").statusCode());
      assertEquals(200, watch.get("/assets/ribband.css").statusCode());
      WatchRun.save(entry, text("Right."));
      watch.shows("/", "Teal");
    }
  }

  @Test
  void aFileThatIsStillWrittenIsPublishedWhole() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      Files.writeString(entry, "");
      for (String line : text("All of it.").split("(?<=\n)")) {
        Files.writeString(entry, line, StandardOpenOption.APPEND);
        Thread.sleep(15);
      }
      watch.shows(PAGE, "All of it.");
      assertTrue(watch.get("/.ribband/now?x").body().contains("data-mark=\"\""));
    }
  }

  @Test
  void foldersComeAndGo() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      Path later = Files.createDirectories(boat.resolve("2027/deep"));
      Files.writeString(later.resolve("2027-01-02-ribs.md"), text("Ribs."));
      watch.shows("/entries/2027-01-02-ribs.html", "Ribs.");
      Files.move(boat.resolve("2027"), boat.resolve("2028"));
      WatchRun.save(boat.resolve("2028/deep/2027-01-02-ribs.md"), text("Ribs again."));
      watch.shows("/entries/2027-01-02-ribs.html", "Ribs again.");
      Files.delete(boat.resolve("2028/deep/2027-01-02-ribs.md"));
      Files.delete(boat.resolve("2028/deep"));
      watch.shows("/entries/2027-01-02-ribs.html", "There is no such page");
      assertEquals(404, watch.get("/entries/2027-01-02-ribs.html").statusCode());
    }
  }

  @Test
  void theJournalMayGoAndComeBack() throws Exception {
    try (WatchRun watch = watch("-o", folder.resolve("site").toString()).published(1)) {
      Path away = folder.resolve("away");
      Files.move(boat, away);
      watch.said("boat: is not there\n").shows("/.ribband/now?x", "boat: is not there");
      watch.shows(PAGE, "The first plank.");
      Files.createDirectory(boat);
      watch.said("project.yaml");
      Files.delete(boat);
      Files.move(away, boat);
      WatchRun.save(entry, text("Back."));
      watch.shows(PAGE, "Back.").said("; all is mended");
    }
  }

  @Test
  void aSiteThatWasRemovedIsMadeAgain() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      Files.delete(boat.resolve("site/site-files.txt"));
      Files.delete(boat.resolve("site/index.html"));
      Files.move(boat.resolve("site"), folder.resolve("old"));
      watch.published(2).shows(PAGE, "The first plank.");
    }
  }

  @Test
  void anotherRunAtWorkIsWaitedFor() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      try (Press other = Press.open(boat.resolve("site"), boat)) {
        assertTrue(Files.isDirectory(other.staging()));
        WatchRun.save(entry, text("Meanwhile."));
        watch
            .said("another run is at work here")
            .shows("/.ribband/now?x", "another run is at work");
      }
      watch.shows(PAGE, "Meanwhile.").said("; all is mended");
      try (Press other = Press.open(boat.resolve("site"), boat)) {
        assertTrue(Files.isDirectory(other.staging()));
        WatchRun.save(entry, text("Once more."));
        watch.shows("/.ribband/now?x", "another run is at work");
      }
      watch.shows(PAGE, "Once more.");
      assertEquals(
          "another run is at work here (process "
              + ProcessHandle.current().pid()
              + "); it is waited for\n",
          watch.err().substring("21:00:00  ".length()));
    }
  }

  @Test
  void whatStandsInTheWayIsToldUntilItIsGone() throws Exception {
    try (WatchRun watch = watch().published(1)) {
      Path inTheWay = boat.resolve("site/entries/2026-03-15-sheer.html");
      Files.writeString(inTheWay, "Not of our making.");
      Files.writeString(boat.resolve("2026/2026-03-15-sheer.md"), text("Sheer."));
      watch.said("2026-03-15-sheer.html");
      assertEquals("Not of our making.", Files.readString(inTheWay));
      Files.delete(inTheWay);
      watch.shows("/entries/2026-03-15-sheer.html", "Sheer.");
    }
  }

  @Test
  void aPortInUseGetsTheNextFreeOne() throws Exception {
    try (ServerSocket taken =
        new ServerSocket(0, 1, InetAddress.getByAddress(new byte[] {127, 0, 0, 1}))) {
      String wished = Integer.toString(taken.getLocalPort());
      try (WatchRun watch = watch("--port", wished)) {
        URI address = watch.address();
        assertTrue(
            address.getPort() > taken.getLocalPort()
                && address.getPort() < taken.getLocalPort() + 20,
            address.toString());
      }
    }
  }

  @Test
  void whatCannotBeWatchedIsRefusedAtOnce() throws IOException {
    InMemory command = new InMemory(folder);
    assertEquals(
        new Run(2, "", "ribband: --port 0 is no port; write one from 1 to 65535\n"),
        command.run("watch", "boat", "--port", "0"));
    assertEquals(
        new Run(2, "", "ribband: --port 65536 is no port; write one from 1 to 65535\n"),
        command.run("watch", "boat", "--port", "65536"));
    Run nowhere = command.run("watch", "nowhere");
    assertEquals(2, nowhere.code());
    command.with("full/index.html", "Not of our making.");
    Run foreign = command.run("watch", "boat", "-o", "full");
    assertEquals(2, foreign.code());
    assertNotEquals("", foreign.err());
    assertEquals("Not of our making.", Files.readString(folder.resolve("full/index.html")));
  }

  @Test
  void theLockIsFreeWhenItHasEnded() throws Exception {
    watch().published(1).close();
    assertEquals(0, new InMemory(folder).run("publish", "boat").code());
  }
}
