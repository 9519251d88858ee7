package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import ribband.cli.InMemory;
import ribband.whole.FullJournal;

/** Entries found by their words, in one Chromium, from the disk and from a host. */
class FinderInBrowserTest {
  private static final Path TABLE =
      Path.of("src/test/resources/ribband/site/search-words.txt").toAbsolutePath();
  private static final String HOSTILE = "<img src=x onerror=alert(1)></script>{{ 1 }}";
  private static final String TITLES =
      "[...document.querySelectorAll('.found a')].map((a) => a.textContent).join('|')";
  private static final String CLICK = "document.querySelector('.findertab button').click()";
  private static final String ASKED =
      "[...document.querySelectorAll('.finder input, .finder select')]"
          + ".map((control) => control.value).filter((value) => value).join(' ')";
  private static final String FOCUS = "document.activeElement.textContent";

  private static final String SEEK =
      """
      ribbandSearcher.open({
        entries: [
          { title: 'Clamps', day: '3 March 2026', phases: [], materials: [0] },
          { title: 'The 14 battens of March', day: '1 June 2026', phases: [], materials: [] },
          { title: 'Winds of March', day: '14 April 2026', phases: [], materials: [] },
          { title: 'Keel', day: '14 March 2025', phases: [], materials: [] },
        ],
        phases: [], materials: ['14 clamps'], words: '', lessons: '', captions: '', texts: '',
      }).then((find) =>""";

  /** Where a page is opened from. */
  enum From {
    DISK,
    HOST
  }

  @TempDir private static Path folder;
  private static Path site;
  private static Host host;
  private static Tabs tabs;
  private static int opened;

  @BeforeAll
  static void publish() throws IOException {
    Installed.node();
    Installed.chromium();
    FullJournal.picture(folder.resolve("first.png"), 300, 200);
    InMemory journal =
        new InMemory(folder)
            .with(
                "project.yaml",
                "name: Wigeon\nphases:\n  - {id: moulds, title: Moulds and strongback}\n"
                    + "  - {id: planking, title: Planking}\n  - {id: fairing, title: Fairing}\n")
            .with(
                "2026/2026-03-14-garboards.md",
                entry(
                    "Garboards on, both & <sides>",
                    "phase: planking\nhours: 3:20\nmaterials: {used: {ring nails: 40}}\n"
                        + "lesson: Dry-fit with every clamp before opening the resin.\n"
                        + "photos: [{file: first.png, caption: A spiled edge}]",
                    "The first planks. **Twist** at the stem."))
            .with(
                "2025/2025-06-01-patching.md",
                entry("Plâtre on the mould", "phase: moulds\nhours: 1", "Set by the *scarf* jig."))
            .with(
                "2025/2025-06-02-scarf.md",
                entry("The scarf jig", "phase: moulds\nhours: 2", "Square, and square again."))
            .with(
                "2025/2025-06-03-hostile.md",
                entry("'" + HOSTILE + "'", "phase: fairing\nhours: 1", "Odd."))
            .with(
                "2025/2025-06-04-kept.md",
                entry("Zebra", "phase: fairing\nhours: 1\nprivate: true", "Zebratext."));
    for (int i : IntStream.rangeClosed(10, 33).toArray()) {
      journal.with(
          "2024/2024-05-01-" + i + ".md",
          entry("Sanding " + i, "phase: fairing\nhours: 1", "Grit eighty."));
    }
    InMemory.Run run = journal.run("publish", "--today", "2026-11-25");
    assertEquals(0, run.code(), run.err());
    site = folder.resolve("site").toRealPath();
    host = new Host(site);
    tabs = new Tabs();
  }

  @AfterAll
  static void close() throws IOException {
    if (tabs != null) {
      tabs.close();
      host.close();
    }
  }

  private static String entry(String title, String keys, String text) {
    return "---\ntitle: " + title + "\n" + keys + "\n---\n" + text + "\n";
  }

  private static URI address(From from, String page) {
    return from == From.DISK ? site.resolve(page).toUri() : host.address().resolve(page);
  }

  /** A tab of its own with the page in it. */
  private static String page(From from, String page) throws IOException {
    String tab = "tab " + ++opened;
    tabs.open(tab, address(from, page));
    return tab;
  }

  /** The same with the index open and read. */
  private static String index(From from) throws IOException {
    String tab = page(from, "months/2026-03.html");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    return tab;
  }

  /** What was there before is gone at once, so that what is seen then is new. */
  private static void reload(String tab) throws IOException {
    tabs.tell(tab, "document.body.replaceChildren(); setTimeout(() => location.reload())");
    tabs.see(tab, "Find");
  }

  /** The index is closed, and the browser has gone back. */
  private static void closed(String tab) throws IOException {
    tabs.miss(tab, "Index of entries");
    tabs.tell(
        tab,
        "new Promise((done) => { const look = () => (history.state ? setTimeout(look, 20) : done());"
            + " look(); })");
  }

  private static String found(String tab, String words) throws IOException {
    tabs.tell(
        tab,
        "(() => { const field = document.querySelector('.finder input'); field.value = '"
            + words
            + "'; field.dispatchEvent(new Event('input')); })()");
    return tabs.tell(tab, TITLES);
  }

  private static String said(String tab) throws IOException {
    return tabs.tell(tab, "document.querySelector('.finder [role=status]').textContent");
  }

  private static String choose(String tab, String filter, String name) throws IOException {
    String select = "document.querySelector('.asked-" + filter + " select')";
    tabs.tell(
        tab,
        "(() => { const s = "
            + select
            + "; s.value = [...s.options].find((o) => o.text === '"
            + name
            + "').value; s.dispatchEvent(new Event('input')); })()");
    return tabs.tell(tab, TITLES);
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsAskedForBeforeItIsUsed(From from) throws IOException {
    String tab = page(from, "entries/2025-06-02-scarf.html");
    String scripts = "[...document.scripts].map((s) => s.src.split('/').pop()).join(' ')";

    assertEquals("viewer.js finder.js", tabs.tell(tab, scripts));
    assertEquals(
        "undefined undefined", tabs.tell(tab, "typeof ribbandSearch + ' ' + typeof MiniSearch"));

    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    assertEquals(
        "viewer.js finder.js search.js minisearch.js searcher.js", tabs.tell(tab, scripts));
    tabs.staysHome();
  }

  @ParameterizedTest
  @EnumSource
  void entriesAreFoundByKeysAlone(From from) throws IOException {
    String tab = page(from, "entries/2025-06-02-scarf.html");
    tabs.tell(tab, "document.querySelector('.tabs li:nth-last-child(2) a').focus()");
    tabs.press(tab, "Tab");
    assertEquals("Find", tabs.tell(tab, FOCUS));
    tabs.press(tab, "Enter");
    tabs.see(tab, "the newest first.");
    tabs.type(tab, "twist stem");
    assertEquals("Garboards on, both & <sides>", tabs.tell(tab, TITLES));
    tabs.press(tab, "Tab");
    tabs.press(tab, "Tab");
    tabs.press(tab, "Tab");
    assertEquals("Garboards on, both & <sides>", tabs.tell(tab, FOCUS));
    tabs.press(tab, "Enter");
    tabs.see(tab, "Dry-fit with every clamp");
    assertEquals(
        address(from, "entries/2026-03-14-garboards.html").getPath(),
        tabs.tell(tab, "location.pathname"));
    tabs.staysHome();
  }

  @ParameterizedTest
  @EnumSource
  void enterOpensTheFirst(From from) throws IOException {
    String tab = page(from, "entries/2026-03-14-garboards.html");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    tabs.type(tab, "xylophone");
    tabs.press(tab, "Enter");
    assertEquals("searchbox", tabs.tell(tab, "document.activeElement.getAttribute('role')"));
    found(tab, "");
    tabs.type(tab, "scarf jig");

    tabs.press(tab, "Enter");

    tabs.see(tab, "Square, and square again.");
    tabs.tell(tab, "history.back()");
    tabs.see(tab, "2 entries, the best match first.");
    tabs.staysHome();
  }

  @Test
  void arrowsGoFromTheFieldThroughWhatIsFound() throws IOException {
    String tab = index(From.DISK);
    choose(tab, "year", "2024");
    assertEquals(
        "Enter opens the first, the arrow keys go through them.",
        tabs.tell(
            tab,
            "document.getElementById(document.activeElement.getAttribute('aria-describedby'))"
                + ".textContent"));
    tabs.type(tab, "sanding");
    String[] titles = tabs.tell(tab, TITLES).split("\\|");

    tabs.press(tab, "ArrowUp");
    assertEquals("", tabs.tell(tab, FOCUS));
    tabs.press(tab, "ArrowDown");
    assertEquals(titles[0], tabs.tell(tab, FOCUS));
    tabs.press(tab, "ArrowDown");
    assertEquals(titles[1], tabs.tell(tab, FOCUS));
    tabs.press(tab, "Tab");
    assertEquals(titles[2], tabs.tell(tab, FOCUS));
    for (int i = 3; i <= 20; i++) {
      tabs.press(tab, "ArrowDown");
    }
    assertEquals("Show 4 more", tabs.tell(tab, FOCUS));
    tabs.press(tab, "ArrowDown");
    assertEquals("Show 4 more", tabs.tell(tab, FOCUS));
    tabs.press(tab, "Enter");
    tabs.press(tab, "ArrowUp");
    assertEquals(titles[19], tabs.tell(tab, FOCUS));
    for (int i = 0; i < 20; i++) {
      tabs.press(tab, "ArrowUp");
    }
    assertEquals("searchbox", tabs.tell(tab, "document.activeElement.getAttribute('role')"));
    tabs.press(tab, "Home");
    tabs.type(tab, "grit ");
    assertEquals("grit sanding", tabs.tell(tab, "document.activeElement.value"));
    // What a filter does with them is its own.
    tabs.press(tab, "Tab");
    tabs.press(tab, "ArrowDown");
    assertEquals("SELECT", tabs.tell(tab, "document.activeElement.tagName"));
  }

  @Test
  void escapeAndCloseBringTheFocusBack() throws IOException {
    String tab = index(From.DISK);
    assertEquals("searchbox", tabs.tell(tab, "document.activeElement.getAttribute('role')"));
    tabs.type(tab, "scarf");

    tabs.press(tab, "Escape");

    assertEquals(
        "false Find", tabs.tell(tab, "document.querySelector('.finder').open + ' ' + " + FOCUS));
    closed(tab);
    tabs.press(tab, "Enter");
    assertEquals("scarf", tabs.tell(tab, "document.activeElement.value"));
    tabs.tell(tab, "document.querySelector('.closer').click()");
    assertEquals(
        "false Find", tabs.tell(tab, "document.querySelector('.finder').open + ' ' + " + FOCUS));
  }

  /** The tab has been on another page before, and goes back there. */
  @ParameterizedTest
  @EnumSource
  void backClosesForwardOpensAndNoDeadEntryStays(From from) throws IOException {
    String tab = page(from, "entries/2025-06-02-scarf.html");
    tabs.see(tab, "Square, and square again.");
    String other = address(from, "months/2026-03.html").toString();
    tabs.tell(tab, "setTimeout(() => { location = '" + other + "'; })");
    tabs.miss(tab, "Square, and square again.");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    tabs.type(tab, "scarf");
    choose(tab, "year", "2025");

    tabs.tell(tab, "history.back()");
    tabs.miss(tab, "Index of entries");
    assertEquals("Find", tabs.tell(tab, FOCUS));
    tabs.tell(tab, "history.forward()");
    tabs.see(tab, "2 entries");
    assertEquals("scarf 2025", tabs.tell(tab, ASKED));
    // Opened again before the browser has gone back.
    tabs.tell(tab, "document.querySelector('.closer').click(); " + CLICK);
    tabs.see(tab, "2 entries");
    // A browser may tell of two closings at once.
    tabs.tell(
        tab,
        "document.querySelector('.closer').click();"
            + " document.querySelector('.finder').dispatchEvent(new Event('close'))");
    tabs.press(tab, "Escape");
    closed(tab);
    tabs.tell(tab, "history.back()");
    tabs.see(tab, "Square, and square again.");
    tabs.staysHome();
  }

  @ParameterizedTest
  @EnumSource
  void whoComesBackFromAnEntryFindsTheIndexAsItWas(From from) throws IOException {
    String tab = index(from);
    found(tab, "sanding");
    choose(tab, "phase", "Fairing");
    choose(tab, "year", "2024");
    tabs.tell(tab, "document.querySelector('.more').click()");
    String title =
        tabs.tell(tab, "document.querySelector('.found li:nth-child(22) a').textContent");
    tabs.tell(tab, "document.querySelector('.found li:nth-child(22) a').focus()");
    tabs.press(tab, "Enter");
    tabs.see(tab, "Grit eighty.");

    tabs.tell(tab, "history.back()");

    tabs.see(tab, "24 entries, the best match first.");
    assertEquals("sanding Fairing 2024", tabs.tell(tab, ASKED));
    assertEquals(title, tabs.tell(tab, FOCUS));
    reload(tab);
    tabs.see(tab, "24 entries, the best match first.");
    assertEquals("sanding Fairing 2024", tabs.tell(tab, ASKED));
    tabs.press(tab, "Escape");
    closed(tab);
    assertEquals("Find", tabs.tell(tab, FOCUS));
    // What was asked for when the site had more phases and years.
    tabs.tell(
        tab,
        "history.pushState({index: {words: 'scarf', phase: 'Rudder', year: '1999', opened: 9}}, '')");
    reload(tab);
    tabs.see(tab, "2 entries");
    assertEquals("scarf", tabs.tell(tab, ASKED));
    tabs.staysHome();
  }

  @Test
  void whoseEntryIsOpenAlreadyStaysThere() throws IOException {
    String tab = page(From.HOST, "entries/2025-06-02-scarf.html");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    found(tab, "scarf jig");

    tabs.tell(tab, "document.querySelector('.found a').click()");

    closed(tab);
    assertEquals("0", tabs.tell(tab, "navigation.currentEntry.index"));
  }

  @Test
  void theIndexAndTheViewerLeaveEachOtherAlone() throws IOException {
    String tab = page(From.DISK, "entries/2026-03-14-garboards.html");
    String viewer = "document.querySelector('#main a:has(> img)').click()";
    tabs.tell(tab, viewer);
    tabs.see(tab, "What it shows");
    reload(tab);
    tabs.see(tab, "What it shows");
    tabs.miss(tab, "Index of entries");
    tabs.tell(tab, "history.back()");
    tabs.miss(tab, "What it shows");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    reload(tab);
    tabs.see(tab, "the newest first.");
    tabs.miss(tab, "What it shows");
    // A picture asked for before the browser has gone back, and then the index.
    tabs.tell(tab, "document.querySelector('.closer').click(); " + viewer);
    tabs.see(tab, "What it shows");
    tabs.miss(tab, "Index of entries");
    tabs.tell(tab, "document.querySelector('.viewer').close(); " + CLICK);
    tabs.see(tab, "the newest first.");
    tabs.miss(tab, "What it shows");
    tabs.tell(tab, "history.back()");
    closed(tab);
    tabs.staysHome();
  }

  @Test
  void wordsBeginningsAndLettersWithoutAccentsFind() throws IOException {
    String tab = index(From.HOST);

    assertEquals("Plâtre on the mould", found(tab, "platre"));
    assertEquals("Plâtre on the mould", found(tab, "PLÂT"));
    assertEquals("Garboards on, both & <sides>", found(tab, "dry-fit clamp"));
    assertEquals("Garboards on, both & <sides>", found(tab, "ring nails"));
    assertEquals("Garboards on, both & <sides>", found(tab, "the first plank"));
    assertEquals("Garboards on, both & <sides>", found(tab, "spiled edge"));
    assertEquals("Sanding 17", found(tab, "grit 17"));
    assertEquals("1 entry.", said(tab));
    assertEquals("", found(tab, "zebra"));
    assertEquals("No entry has that.", said(tab));
    assertEquals("", found(tab, "zebratext"));
  }

  @Test
  void theBestMatchStandsFirstAndSaysWhere() throws IOException {
    String tab = index(From.DISK);

    assertEquals("The scarf jig|Plâtre on the mould", found(tab, "scarf jig"));
    assertEquals("2 entries, the best match first.", said(tab));
    assertEquals(
        "Moulds and strongback|Moulds and strongback, in its text",
        tabs.tell(
            tab,
            "[...document.querySelectorAll('.found .phases')].map((p) => p.textContent).join('|')"));
    assertEquals("The scarf jig|Plâtre on the mould", found(tab, "jig platypus scarf"));
    assertEquals("No entry has all of these words; 2 have some of them.", said(tab));
    assertEquals("The scarf jig|Plâtre on the mould", found(tab, "skarf"));
    assertEquals("No entry has that word; 2 have one like it.", said(tab));
    assertEquals("The scarf jig", found(tab, "sqare"));
    assertEquals("No entry has that word; 1 has one like it.", said(tab));
    assertEquals("The scarf jig", found(tab, "sqare agan"));
    assertEquals("No entry has these words; 1 has words like them.", said(tab));
    // One of them mistyped.
    assertEquals("The scarf jig", found(tab, "square agan"));
    assertEquals("No entry has all of these words; 1 has some of them.", said(tab));
    assertEquals("", found(tab, "xylophone"));
    assertEquals("No entry has that.", said(tab));
  }

  @Test
  void aDayIsFoundAsItIsSaid() throws IOException {
    String tab = index(From.HOST);

    assertEquals("Garboards on, both & <sides>", found(tab, "14 March"));
    assertEquals("Garboards on, both & <sides>", found(tab, "mar 2026"));
    assertEquals("The 14 battens of March|Keel|Winds of March|Clamps", sought(tab, "14 March"));
    assertEquals("Keel", sought(tab, "14 mar 2025"));
    assertEquals("Winds of March|The 14 battens of March|Clamps", sought(tab, "March 2026"));
    assertEquals("Clamps", sought(tab, "clamps 2026"));
    assertEquals("The 14 battens of March|Clamps", sought(tab, "14"));
    assertEquals("some", tabs.tell(tab, SEEK + " find('2 june').how)"));
  }

  private static String sought(String tab, String words) throws IOException {
    return tabs.tell(
        tab, SEEK + " find('" + words + "').found.map(({ entry }) => entry.title).join('|'))");
  }

  @Test
  void filtersNarrowAndTwentyAreShownAtOnce() throws IOException {
    String tab = index(From.DISK);
    assertEquals(
        "All,Moulds and strongback,Planking,Fairing All,2026,2025,2024",
        tabs.tell(
            tab,
            "[...document.querySelectorAll('.finder select')]"
                + ".map((s) => [...s.options].map((o) => o.text).join()).join(' ')"));

    assertEquals(HOSTILE + "|The scarf jig|Plâtre on the mould", choose(tab, "year", "2025"));
    assertEquals(
        "The scarf jig|Plâtre on the mould", choose(tab, "phase", "Moulds and strongback"));
    assertEquals("", choose(tab, "year", "2024"));
    assertEquals("No entries.", said(tab));
    choose(tab, "phase", "All");
    assertEquals("24 entries, the newest first.", said(tab));
    String rows = "document.querySelectorAll('.found li').length";
    assertEquals("20", tabs.tell(tab, rows));
    assertEquals("Show 4 more", tabs.tell(tab, "document.querySelector('.more').textContent"));
    tabs.tell(tab, "document.querySelector('.more').click()");
    assertEquals(
        "24 true", tabs.tell(tab, rows + " + ' ' + document.querySelector('.more').hidden"));
    assertEquals(tabs.tell(tab, TITLES).split("\\|")[20], tabs.tell(tab, FOCUS));
  }

  @Test
  void hostileWordsAreWords() throws IOException {
    String tab = index(From.DISK);

    assertEquals(HOSTILE, found(tab, "onerror"));
    assertEquals("0", tabs.tell(tab, "document.querySelectorAll('.finder img').length"));
    tabs.staysHome();
  }

  @Test
  void theBrowserReadsWordsAsTheProgramDoes() throws IOException {
    String tab = index(From.DISK);
    for (String line : Files.readAllLines(TABLE, StandardCharsets.UTF_8)) {
      if (!line.startsWith("#")) {
        String[] row = line.split(" \\|", 2);
        String written = row[0].replace("'", "\\'");
        assertEquals(
            row[1].strip(),
            tabs.tell(tab, "ribbandSearcher.wordsOf('" + written + "').join(' ')"),
            line);
      }
    }
  }

  @Test
  void anIndexThatCannotBeReadSaysSo() throws IOException {
    Path data = site.resolve("search.js");
    Path away = Files.move(data, folder.resolve("search.js"));
    String tab = page(From.DISK, "index.html");
    try {
      tabs.tell(tab, CLICK);
      tabs.see(tab, "The index cannot be read.");
    } finally {
      Files.move(away, data);
    }
    tabs.press(tab, "Escape");
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    tabs.forget();
  }

  @Test
  void withoutScriptThereIsNoControlAndNoGap() throws IOException {
    String tab = "tab " + ++opened;
    tabs.openWithoutScript(tab, address(From.DISK, "index.html"));

    assertEquals(
        "0", tabs.tell(tab, "document.querySelector('.findertab').getClientRects().length"));
  }

  @ParameterizedTest
  @CsvSource({"light, 320", "light, 1280", "dark, 320", "dark, 1280"})
  void theIndexIsForEverybody(String theme, int width) throws IOException {
    String tab = "tab " + ++opened;
    tabs.open(tab, address(From.DISK, "index.html"), width, theme);
    tabs.tell(tab, CLICK);
    tabs.see(tab, "the newest first.");
    tabs.check(tab);
    assertTrue(found(tab, "s").contains("Sanding"), tabs.tell(tab, TITLES));
    assertEquals(
        "",
        tabs.tell(
            tab,
            "[...document.querySelectorAll('.finder button, .finder a, .finder input, .finder select')]"
                + ".filter((e) => e.getClientRects().length && e.getBoundingClientRect().height < 24)"
                + ".map((e) => e.outerHTML).join()"));
  }
}
