package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.browser.Tabs.Place;
import ribband.cli.WatchRun;
import ribband.whole.FullJournal;

/** Pages in Chromium while their journal is written. */
class WatchInBrowserTest {
  private static final String WRONG = "is not a length of time";

  /** The glyphs of a font may come after the page, and a line be a pixel higher. */
  private static final int FEW_PIXELS = 4;

  @TempDir private Path folder;
  private Path boat;
  private Path entry;

  @BeforeEach
  void journal() throws IOException {
    Installed.node();
    Installed.chromium();
    boat = Files.createDirectory(folder.resolve("boat"));
    FullJournal.write(boat);
    entry = boat.resolve("2026/2026-11-20-long-night.md");
    write("The first words.");
  }

  private WatchRun watch() throws Exception {
    return new WatchRun(boat, "--today", "2026-11-25").published(1);
  }

  private URI page(WatchRun watch) throws Exception {
    String name = entry.getFileName().toString().replaceFirst("\\.md$", ".html");
    return watch.address().resolve("/entries/" + name);
  }

  private void write(String words) throws IOException {
    WatchRun.save(entry, text("Long night", "2:45", words));
  }

  private void spoil() throws IOException {
    WatchRun.save(entry, text("Long night", "2;45", "Spoiled."));
  }

  /** An entry of several screens. */
  private static String text(String title, String hours, String words) {
    String evening =
        "Faired, looked along it, faired again, and looked along it once more.\n\n".repeat(60);
    return "---\ntitle: "
        + title
        + "\nphase: fairing\nhours: "
        + hours
        + "\n---\n"
        + evening
        + words
        + "\n";
  }

  @Test
  void aSavedEntryIsSeenWhereTheReaderWas() throws Exception {
    try (WatchRun watch = watch();
        Tabs tabs = new Tabs()) {
      tabs.open("entry", page(watch));
      tabs.open("months", watch.address().resolve("/index.html"));
      tabs.scroll("months", 50);
      tabs.front("entry");
      tabs.scroll("entry", 50);
      Place before = tabs.place("entry");
      assertTrue(before.y() > 100, before.toString());

      write("The plank came off the mould without a word.");

      tabs.see("entry", "came off the mould without a word");
      Place after = tabs.place("entry");
      assertEquals(before.open(), after.open());
      assertEquals(before.y(), after.y(), FEW_PIXELS);
      assertEquals(before.loads() + 1, after.loads());

      Place was = tabs.place("months");
      WatchRun.save(entry, text("Another name", "2:45", "The same."));
      tabs.front("months");
      tabs.see("months", "Another name");
      assertEquals(was.open(), tabs.place("months").open());
      assertEquals(was.y(), tabs.place("months").y(), FEW_PIXELS);
      tabs.staysHome();
    }
  }

  @Test
  void problemsAreOnThePageUntilTheyAreMended() throws Exception {
    try (WatchRun watch = watch();
        Tabs tabs = new Tabs()) {
      tabs.open("entry", page(watch));
      tabs.scroll("entry", 50);
      Place before = tabs.place("entry");

      spoil();

      tabs.see("entry", WRONG);
      tabs.see("entry", "The pages stay as they were until all is mended.");
      assertEquals(before, tabs.place("entry"), "the old page is still there");
      tabs.press("entry", "Escape");
      tabs.miss("entry", WRONG);
      write("Mended now.");
      tabs.see("entry", "Mended now.");
      spoil();
      tabs.see("entry", WRONG);
      write("Mended again.");
      tabs.see("entry", "Mended again.");
      tabs.miss("entry", WRONG);
      tabs.staysHome();
    }
  }

  @Test
  void theBoxIsForEverybody() throws Exception {
    try (WatchRun watch = watch();
        Tabs tabs = new Tabs()) {
      spoil();
      for (String theme : new String[] {"light", "dark"}) {
        for (int width : new int[] {320, 1280}) {
          for (URI page : new URI[] {page(watch), watch.address().resolve("/none.html")}) {
            String tab = theme + width + page;
            tabs.open(tab, page, width, theme);
            tabs.see(tab, WRONG);
            tabs.check(tab);
          }
        }
      }
      tabs.staysHome();
    }
  }

  @Test
  void anEntryThatIsGoneMayComeBack() throws Exception {
    try (WatchRun watch = watch();
        Tabs tabs = new Tabs()) {
      tabs.open("entry", page(watch));
      tabs.scroll("entry", 50);
      Place before = tabs.place("entry");

      Path away = Files.move(entry, folder.resolve("away.md"));

      tabs.see("entry", "There is no such page");
      Files.move(away, entry);
      tabs.miss("entry", "There is no such page");
      assertEquals(before.y(), tabs.place("entry").y(), FEW_PIXELS);
      tabs.staysHome();
    }
  }

  @Test
  void aFirstStartWithErrorsOpensTheFirstPageByItself() throws Exception {
    spoil();
    try (WatchRun watch = new WatchRun(boat, "--today", "2026-11-25");
        Tabs tabs = new Tabs()) {
      tabs.open("first", watch.address());
      tabs.see("first", "Nothing is published yet");
      tabs.see("first", WRONG);
      tabs.check("first");
      write("At last.");
      tabs.miss("first", "Nothing is published yet");
      tabs.staysHome();
    }
  }

  @Test
  void tenOpenTabsAreAllKeptUp() throws Exception {
    try (WatchRun watch = watch();
        Tabs tabs = new Tabs()) {
      for (int tab : IntStream.range(0, 10).toArray()) {
        tabs.open("tab " + tab, page(watch));
      }
      write("Ten pairs of clamps.");
      for (int tab : IntStream.range(0, 10).toArray()) {
        tabs.front("tab " + tab);
        tabs.see("tab " + tab, "Ten pairs of clamps.");
      }
      tabs.staysHome();
    }
  }

  @Test
  void aWatchThatEndedAndBeginsAgainIsFound() throws Exception {
    try (Tabs tabs = new Tabs()) {
      String port;
      try (WatchRun watch = watch()) {
        port = Integer.toString(watch.address().getPort());
        tabs.open("entry", page(watch));
      }
      tabs.see("entry", "Ribband no longer watches");
      write("Written in between.");
      try (WatchRun watch = new WatchRun(boat, "--today", "2026-11-25", "--port", port)) {
        assertEquals(port, Integer.toString(watch.address().getPort()));
        tabs.see("entry", "Written in between.");
        tabs.miss("entry", "Ribband no longer watches");
      }
    }
  }
}
