package ribband.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.PictureMemory;
import ribband.feed.ReadFeeds.Read;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Ledger;
import ribband.memory.Memory;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.site.MonthCard;
import ribband.site.Site;
import ribband.whole.FullJournal;

/** Small journals on disk, and the items that are written of them. */
class FeedsWrittenTest {
  private static final String TEAL = "https://example.org/teal/";

  @TempDir Path folder;

  private void file(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  private void project(String more) throws IOException {
    file(
        "project.yaml",
        "name: Teal\ncurrency: USD\nsite: {address: 'https://example.org/teal'}\n" + more);
  }

  private void entry(String name, String keys) throws IOException {
    file(name + ".md", "---\n" + keys + "---\n");
  }

  private Map<String, byte[]> files(Map<YearMonth, MonthCard> cards) throws IOException {
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
    Map<String, byte[]> files = new TreeMap<>();
    Feeds.write(album, Ledger.of(journal), cards, "tool 1", files::put);
    return files;
  }

  private static void requireSound(List<Problem> problems) {
    List<Problem> errors = problems.stream().filter(Problem::isError).toList();
    if (!errors.isEmpty()) {
      throw new AssertionError("the journal has errors: " + errors);
    }
  }

  private ReadFeeds feeds(Map<YearMonth, MonthCard> cards) throws IOException {
    Map<String, byte[]> files = files(cards);
    assertEquals(List.of("feed.json", "feed.xml"), List.copyOf(files.keySet()));
    return ReadFeeds.of(files.get("feed.xml"), files.get("feed.json"));
  }

  private ReadFeeds feeds() throws IOException {
    return feeds(Map.of());
  }

  private static Read item(
      String day, String page, String title, String dated, String html, String... tags) {
    Instant at = Instant.parse(dated);
    return new Read(
        "tag:example.org," + day + ":/teal/" + page,
        TEAL + page,
        title,
        at,
        at,
        html,
        List.of(tags));
  }

  private static Read withoutDigests(Read item) {
    return new Read(
        item.id(),
        item.url(),
        item.title(),
        item.published(),
        item.updated(),
        withoutDigests(item.html()),
        item.tags());
  }

  private static String withoutDigests(String text) {
    return text.replaceAll("pictures/[0-9a-f]+-", "pictures/DIGEST-");
  }

  /** The picture that stands for each item, its digest left out; empty for none. */
  private static List<String> images(ReadFeeds feeds) {
    List<String> images = new ArrayList<>();
    for (JsonNode item : feeds.tree().get("items")) {
      images.add(withoutDigests(item.path("image").asText()));
    }
    return images;
  }

  private static List<String> dated(ReadFeeds feeds) {
    return feeds.items().stream().map(item -> item.published() + " " + item.title()).toList();
  }

  @Test
  void withoutAnAddressNothingIsWritten() throws IOException {
    file("project.yaml", "name: Teal\nsite: {address: none}\n");
    entry("2026-01-10", "hours: 1\n");
    assertEquals(Map.of(), files(Map.of()));
  }

  @Test
  void theFeedTellsOfTheBoatAndWhereItStands() throws IOException {
    project("what: A punt\ntime zone: Europe/Zurich\n");
    entry("2026-01-10", "hours: 1\n");
    entry("2026-07-10", "hours: 1\n");
    ReadFeeds feeds = feeds();
    JsonNode json = feeds.tree();
    assertEquals("Teal", json.get("title").asText());
    assertEquals("A punt", json.get("description").asText());
    assertEquals(TEAL, json.get("home_page_url").asText());
    assertEquals(TEAL + "feed.json", json.get("feed_url").asText());
    assertEquals(TEAL + "assets/icon-180.png", json.get("icon").asText());
    assertEquals("Teal", feeds.wire().getTitle());
    assertEquals("A punt", feeds.wire().getSubtitle().getValue());
    assertEquals(TEAL, feeds.wire().getId());
    assertEquals(TEAL + "feed.xml", feeds.wire().getOtherLinks().get(0).getHref());
    assertEquals(TEAL, feeds.wire().getAlternateLinks().get(0).getHref());
    assertEquals("tool 1", feeds.wire().getGenerator().getValue());
    // Summer time, two hours ahead.
    assertEquals(Instant.parse("2026-07-10T10:00:00Z"), feeds.wire().getUpdated().toInstant());
  }

  @Test
  void anEntryIsThereInFullAndItsLargestPrintStandsForIt() throws IOException {
    project("phases: [{id: planking, title: Planks on}, rigging]\npieces: {strakes: {total: 6}}\n");
    FullJournal.picture(folder.resolve("wide.png"), 1700, 1100);
    FullJournal.picture(folder.resolve("small.png"), 60, 40);
    file(
        "2026-01-10-stem.md",
        "---\ntitle: Stem\nhours: {rigging: 1, planking: 2:45}\ncost: {planking: 12.50}\n"
            + "pieces: {strakes: 2}\nlesson: Less glue.\ntodo: [{id: oil, what: Oil it}]\n"
            + "photos: [small.png, {file: wide.png, cover: true, caption: The stem}]\n---\n"
            + "## So\n\nOn, see [the start](#so).\n");
    ReadFeeds feeds = feeds();
    assertEquals(List.of(TEAL + "pictures/DIGEST-1600.jpg"), images(feeds));
    assertEquals(
        List.of(
            item(
                "2026-01-10",
                "entries/2026-01-10-stem.html",
                "Stem",
                "2026-01-10T12:00:00Z",
                """
                <p><strong>3¾ hours · $12.50</strong></p>
                <ul><li><a href="https://example.org/teal/phases/planking.html">Planks on</a>: 2:45 · \
                $12.50</li><li><a href="https://example.org/teal/phases/rigging.html">Rigging</a>: \
                1:00</li></ul>
                <h2>So</h2>
                <p>On, see <a href="https://example.org/teal/entries/2026-01-10-stem.html#h-so">\
                the start</a>.</p>
                <p><strong>Lesson:</strong> Less glue.</p>
                <p><strong>Made</strong></p>
                <ul><li>Strakes: 2</li></ul>
                <p><strong>For later</strong></p>
                <ul><li>Oil it</li></ul>
                <figure><a href="https://example.org/teal/pictures/DIGEST-60.jpg">\
                <img src="https://example.org/teal/pictures/DIGEST-60.jpg" width="60" height="40" \
                alt="Photograph 1 of 2 of 10 January 2026, Stem" /></a></figure>
                <figure><a href="https://example.org/teal/pictures/DIGEST-1600.jpg">\
                <img src="https://example.org/teal/pictures/DIGEST-960.jpg" width="960" \
                height="621" alt="The stem" /></a><figcaption>The stem</figcaption></figure>
                """,
                "Planks on",
                "Rigging")),
        feeds.items().stream().map(FeedsWrittenTest::withoutDigests).toList());
  }

  @Test
  void hoursAndMoneyStandAloneWhereTheOtherIsNone() throws IOException {
    project("phases: [planking]\n");
    entry("2026-01-10", "phase: planking\nhours: 1\n");
    entry("2026-01-11", "phase: planking\ncost: 5\n");
    entry("2026-01-12", "title: Looking\nphase: planking\n");
    entry("2026-01-13", "title: Walking\n");
    String phase = "<ul><li><a href=\"" + TEAL + "phases/planking.html\">Planking</a>: ";
    assertEquals(
        List.of(
            item("2026-01-13", "entries/2026-01-13.html", "Walking", "2026-01-13T12:00:00Z", ""),
            item(
                "2026-01-12",
                "entries/2026-01-12.html",
                "Looking",
                "2026-01-12T12:00:00Z",
                "",
                "Planking"),
            item(
                "2026-01-11",
                "entries/2026-01-11.html",
                "11 January 2026",
                "2026-01-11T12:00:00Z",
                "<p><strong>$5.00</strong></p>\n" + phase + "$5.00</li></ul>\n",
                "Planking"),
            item(
                "2026-01-10",
                "entries/2026-01-10.html",
                "10 January 2026",
                "2026-01-10T12:00:00Z",
                "<p><strong>1 hour</strong></p>\n" + phase + "1:00</li></ul>\n",
                "Planking")),
        feeds().items());
    assertEquals(List.of("", "", "", ""), images(feeds()));
  }

  @Test
  void hiddenMoneyIsInNoItem() throws IOException {
    file(
        "project.yaml",
        "name: Teal\ncurrency: USD\nphases: [planking]\n"
            + "site: {address: 'https://example.org/teal', show money: false}\n");
    entry("2026-01-10", "phase: planking\nhours: 1\ncost: 5\n");
    entry("2026-01-31", "phase: planking\ncost: 5\n");
    assertEquals(
        List.of(
            item(
                "2026-01-31",
                "months/2026-01.html",
                "January 2026",
                "2026-01-31T23:59:59Z",
                "<p>1 hour over 1 night, the first month with work.</p>\n"
                    + "<ul><li>The night: Saturday 10 January 2026</li>"
                    + "<li>The whole boat: 1 hour to date</li></ul>\n"
                    + "<h3>Hours by phase</h3>\n<ul><li>Planking: 1 hour, its first</li></ul>\n"),
            item(
                "2026-01-31",
                "entries/2026-01-31.html",
                "31 January 2026",
                "2026-01-31T12:00:00Z",
                "",
                "Planking"),
            item(
                "2026-01-10",
                "entries/2026-01-10.html",
                "10 January 2026",
                "2026-01-10T12:00:00Z",
                "<p><strong>1 hour</strong></p>\n"
                    + "<ul><li><a href=\""
                    + TEAL
                    + "phases/planking.html\">Planking</a>: 1:00</li></ul>\n",
                "Planking")),
        feeds().items());
  }

  @Test
  void aMonthThatIsOverIsToldWithItsCard() throws IOException {
    project("phases: [planking]\ntime zone: America/Chicago\n");
    entry("2026-01-10", "phase: planking\nhours: 1\ncost: 5\n");
    entry("2026-02-27", "phase: planking\nhours: 2\ntodo: [{id: oil, what: Oil it}]\n");
    entry("2026-02-28", "private: true\nphase: planking\nhours: 2\n");
    ReadFeeds feeds =
        feeds(
            Map.of(
                YearMonth.of(2026, 2), new MonthCard("cards/2026-02-x.png", 1200, 630),
                YearMonth.of(2026, 3), new MonthCard("cards/2026-03-x.png", 1200, 630)));
    assertEquals(
        List.of(
            item(
                "2026-02-28",
                "months/2026-02.html",
                "February 2026",
                // Six hours behind.
                "2026-03-01T05:59:59Z",
                "<p><img src=\"https://example.org/teal/cards/2026-02-x.png\" width=\"1200\""
                    + " height=\"630\" alt=\"February 2026\" /></p>\n"
                    + "<p>4 hours over 2 nights, the best month so far.</p>\n"
                    + "<ul><li>Money: nothing went out, $5.00 to date</li>"
                    + "<li>Longest night: Friday 27 February 2026, 2 hours</li>"
                    + "<li>The whole boat: 5 hours to date</li></ul>\n"
                    + "<h3>Hours by phase</h3>\n"
                    + "<ul><li>Planking: 4 hours, 5 hours to date</li></ul>\n"
                    + "<h3>What comes next</h3>\n<ul><li>Oil it</li></ul>\n"),
            item(
                "2026-01-31",
                "months/2026-01.html",
                "January 2026",
                "2026-02-01T05:59:59Z",
                "<p>1 hour over 1 night, second of 2 months with work (February beats it).</p>\n"
                    + "<ul><li>Money: $5.00 went out, $5.00 to date</li>"
                    + "<li>The night: Saturday 10 January 2026</li>"
                    + "<li>The whole boat: 1 hour to date</li></ul>\n"
                    + "<h3>Hours by phase</h3>\n<ul><li>Planking: 1 hour, its first</li></ul>\n")),
        feeds.items().stream().filter(item -> item.url().contains("/months/")).toList());
    assertEquals(List.of(TEAL + "cards/2026-02-x.png", "", "", ""), images(feeds));
    assertEquals(
        List.of("February 2026", "27 February 2026", "January 2026", "10 January 2026"),
        feeds.titles());
    assertEquals(Instant.parse("2026-03-01T05:59:59Z"), feeds.wire().getUpdated().toInstant());
  }

  @Test
  void aMonthIsOverOnItsLastDayAndOneWithoutAnEntryIsNotTold() throws IOException {
    project("phases: [planking]\n");
    entry("2026-01-10", "hours: 1\n");
    entry("2026-03-30", "hours: 1\n");
    assertEquals(List.of("30 March 2026", "January 2026", "10 January 2026"), feeds().titles());
    entry("2026-03-31", "private: true\n");
    assertEquals(
        List.of("March 2026", "30 March 2026", "January 2026", "10 January 2026"),
        feeds().titles());
  }

  @Test
  void entriesOfADayAreASecondApartAndPrivateOnesDoNotCount() throws IOException {
    project("");
    entry("2026-01-10-a", "title: A\n");
    entry("2026-01-10-b", "title: B\nprivate: true\n");
    entry("2026-01-10-c", "title: C\n");
    entry("2026-01-10-d", "title: D\n");
    entry("2026-01-11", "title: E\n");
    assertEquals(
        List.of(
            "2026-01-11T12:00:00Z E",
            "2026-01-10T12:00:02Z D",
            "2026-01-10T12:00:01Z C",
            "2026-01-10T12:00:00Z A"),
        dated(feeds()));
  }

  @Test
  void theLastThirtyEntriesAreThereAndNoMonthBeforeThem() throws IOException {
    project("");
    entry("2026-01-31", "title: Too old\n");
    entry("2026-02-01-a", "title: First of February\n");
    entry("2026-02-01-b", "title: Second of February\n");
    for (int i = 0; i < 28; i++) {
      entry(LocalDate.of(2026, 2, 2).plusDays(i).toString(), "");
    }
    ReadFeeds feeds = feeds();
    List<String> dated = dated(feeds);
    assertEquals(31, dated.size());
    assertEquals("2026-03-01T12:00:00Z 1 March 2026", dated.get(0));
    assertEquals("2026-02-28T23:59:59Z February 2026", dated.get(1));
    assertEquals("2026-02-02T12:00:00Z 2 February 2026", dated.get(28));
    assertEquals("2026-02-01T12:00:01Z Second of February", dated.get(29));
    assertEquals("2026-02-01T12:00:00Z First of February", dated.get(30));

    entry("2026-03-02", "");
    dated = dated(feeds());
    assertEquals(31, dated.size());
    // It is the second of its day though the first is in the feed no more.
    assertEquals("2026-02-01T12:00:01Z Second of February", dated.get(30));
  }

  @Test
  void withThirtyEntriesTheMonthOfTheFirstIsTold() throws IOException {
    project("");
    for (int i = 0; i < 30; i++) {
      entry(LocalDate.of(2026, 1, 31).plusDays(i).toString(), "");
    }
    List<String> dated = dated(feeds());
    assertEquals(32, dated.size());
    assertEquals(
        List.of("2026-01-31T23:59:59Z January 2026", "2026-01-31T12:00:00Z 31 January 2026"),
        dated.subList(30, 32));
  }

  @Test
  void withoutAnEntryToShowTheFeedsAreEmpty() throws IOException {
    project("time zone: Pacific/Auckland\n");
    ReadFeeds feeds = feeds();
    assertEquals(List.of(), feeds.titles());
    assertFalse(feeds.tree().has("description"));
    // No day is known: noon of 1 January 1970, 12 hours ahead.
    assertEquals(Instant.EPOCH, feeds.wire().getUpdated().toInstant());

    project("started: 2025-07-02\n");
    entry("2026-01-31", "private: true\nhours: 1\n");
    feeds = feeds();
    assertEquals(List.of(), feeds.titles());
    assertEquals(Instant.parse("2025-07-02T12:00:00Z"), feeds.wire().getUpdated().toInstant());
  }
}
