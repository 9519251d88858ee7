package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.rometools.rome.feed.atom.Category;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.feed.atom.Link;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.feed.ReadFeeds;
import ribband.feed.ReadFeeds.Read;

/**
 * What a follower's reader gets. {@link ReadFeeds} validates each feed by its published rules,
 * reads it by libraries of others and holds both against each other.
 */
class FeedsTest {
  private static final String BOAT = "https://example.org/wigeon/";
  private static final String PROJECT = "name: Teal\nsite: {address: 'https://example.org/teal'}\n";

  @TempDir private Path folder;

  private ReadFeeds publish() {
    new Builder(folder).publish();
    return ReadFeeds.in(folder.resolve("site"));
  }

  private InMemory journal(String project) throws IOException {
    return new InMemory(folder).with("project.yaml", project);
  }

  private static String night(String more) {
    return "---\nphase: planking\nhours: 1\n" + more + "---\n";
  }

  @Test
  void theFilesAreTheseToTheLetter() throws IOException {
    journal(
            "name: Teal & Co\nwhat: A <punt>\ncurrency: USD\ntime zone: Europe/Zurich\n"
                + "site: {address: 'https://example.org/teal'}\nphases: [planking]\n")
        .with(
            "2026-01-30-stem.md",
            "---\ntitle: Stem & <keel>\nphase: planking\nhours: 2:45\ncost: 12.50\n"
                + "lesson: Less \"glue\".\ntodo: [{id: oil, what: Oil & <wax>, hours: 1}]\n"
                + "---\nOn. See [the keel](2026-02-01.md#so) ]]>\n")
        .with("2026-01-31.md", "---\nphase: planking\nhours: 1\nprivate: true\n---\nHidden.\n")
        .with(
            "2026-02-01.md", "---\nphotos: keel.png\nphase: planking\n---\n## So\n\nKeel laid.\n");
    FullJournal.picture(folder.resolve("keel.png"), 60, 40);

    ReadFeeds.in(new Builder(folder).publish().path());

    String release = new InMemory(folder).run("--version").out().split(",")[0];
    for (String name : List.of("feed.xml", "feed.json")) {
      String expected =
          new String(
              Objects.requireNonNull(ReadFeeds.class.getResourceAsStream("small-" + name))
                  .readAllBytes(),
              StandardCharsets.UTF_8);
      assertEquals(
          expected,
          Files.readString(folder.resolve("site").resolve(name))
              .replace("<generator>" + release + "<", "<generator>RELEASE<")
              .replaceAll("pictures/[0-9a-f]+-60", "pictures/DIGEST-60")
              .replaceAll("(cards/2026-01)-[0-9a-f]+", "$1-DIGEST"),
          name);
    }
  }

  @Test
  void everyAddressLeadsToAFileOfTheSite() throws IOException {
    FullJournal.write(folder);
    ReadFeeds feeds = publish();
    Published site = new Published(folder.resolve("site"));
    List<String> addresses = new ArrayList<>();
    feeds.tree().findValuesAsText("image").forEach(addresses::add);
    feeds.tree().findValuesAsText("icon").forEach(addresses::add);
    feeds.tree().findValuesAsText("url").forEach(addresses::add);
    addresses.add(feeds.tree().get("home_page_url").asText());
    addresses.add(feeds.tree().get("feed_url").asText());
    Feed atom = feeds.wire();
    addresses.add(atom.getIcon());
    atom.getAlternateLinks().stream().map(Link::getHref).forEach(addresses::add);
    atom.getOtherLinks().stream().map(Link::getHref).forEach(addresses::add);
    for (Read item : feeds.items()) {
      Document html = Jsoup.parseBodyFragment(item.html());
      addresses.addAll(html.select("[href]").eachAttr("href"));
      addresses.addAll(html.select("[src]").eachAttr("src"));
      assertEquals(
          List.of(), html.select("[srcset], [style], [id], [class], script").eachAttr("id"));
    }
    assertTrue(addresses.remove("https://example.org/rivets"));
    assertTrue(addresses.size() > 20, addresses::toString);
    for (String address : addresses) {
      String[] parts = address.split("#", 2);
      String path = Whole.path(parts[0], BOAT);
      assertTrue(site.has(path), address);
      assertTrue(parts.length == 1 || site.page(path).getElementById(parts[1]) != null, address);
    }
    assertTrue(addresses.stream().anyMatch(address -> address.contains("#fn-1")));
    assertEquals("self", atom.getOtherLinks().get(0).getRel());
    assertEquals(BOAT + "feed.xml", atom.getOtherLinks().get(0).getHref());
  }

  @Test
  void anEntryIsThereInFull() throws IOException {
    FullJournal.write(folder);
    Read item = publish().titled("Garboards on, both & <sides>");
    Document html = Jsoup.parseBodyFragment(item.html());
    Document page = new Published(folder.resolve("site")).page("entries/2026-03-14-garboards.html");
    assertEquals("4 hours · $88.20", html.selectFirst("p").text());
    assertEquals(
        "Lesson: Dry-fit with every clamp before opening the resin.",
        html.select("p:has(strong:contains(Lesson))").text());
    assertEquals(
        List.of("The twist, close", "A plank on moulds", "A stem"),
        html.select("img").eachAttr("alt").subList(0, 3));
    assertEquals(4, html.select("img[width][height]").size());
    for (String part : List.of("h2", "h3", "table", "blockquote", "pre", "ol")) {
      assertEquals(page.select(".prose " + part).eachText(), html.select(part).eachText(), part);
    }
    assertTrue(
        html.select("ul").eachText().contains("☑ dry fit ☐ wipe the squeeze-out"),
        html.select("ul").eachText()::toString);
    assertEquals(
        page.select(".shares dt, .shares dd").eachText(),
        html.selectFirst("ul").select("li").stream()
            .flatMap(line -> Stream.of(line.text().split(": ", 2)))
            .toList());
    assertEquals(
        List.of("Made", "Glued", "Coated", "Used", "Left on the shelf", "Bought", "For later"),
        page.select(".note h2").eachText());
    assertEquals(
        page.select(".note").eachText(),
        html.select("p:has(strong) + ul").stream()
            .skip(1)
            .map(list -> list.previousElementSibling().text() + " " + list.text())
            .toList());
    assertEquals(List.of("Planking", "Fairing"), item.tags());
    assertEquals(BOAT + "entries/2026-03-14-garboards.html", item.url());
    assertEquals(Instant.parse("2026-03-14T17:00:00Z"), item.published());
  }

  @Test
  void hiddenMoneyIsInNoPartOfAnEntry() throws IOException {
    FullJournal.write(folder);
    journal(FullJournal.PROJECT.replace("show money: true", "show money: false"));
    ReadFeeds feeds = publish();
    Document html = Jsoup.parseBodyFragment(feeds.titled("Garboards on, both & <sides>").html());
    assertEquals("4 hours", html.selectFirst("p").text());
    assertEquals(
        List.of("Planking: 3:20", "Fairing: 0:40"), html.selectFirst("ul").select("li").eachText());
    assertEquals(
        List.of(
            "2 times 1 qt of epoxy, from the chandlery; arrived 22 March 2026", "sanding discs"),
        html.select("p:contains(Bought) + ul li").eachText());
    assertEquals("The wrong planks went back.", Jsoup.parse(feeds.titled("Refund").html()).text());
  }

  @Test
  void aPhaseIsNamedByEachOfItsEntriesAndNoOther() throws IOException {
    journal(PROJECT + "phases: [{id: planking, title: Planks & <rivets>}, {id: rig}]\n")
        .with("2026-01-10.md", "---\ntitle: Both\nhours: {rig: 1, planking: 2}\n---\n")
        .with("2026-01-11.md", "---\ntitle: Looking\nphase: rig\n---\n")
        .with("2026-01-12.md", "---\ntitle: Some\nhours: 1\n---\n")
        .with("2026-02-01.md", "---\ntitle: None\n---\n");
    ReadFeeds feeds = publish();
    assertEquals(
        List.of(
            List.of(), List.of(), List.of(), List.of("Rig"), List.of("Planks & <rivets>", "Rig")),
        feeds.items().stream().map(Read::tags).toList());
    assertEquals(
        List.of("planking", "rig"),
        feeds.wire().getEntries().get(4).getCategories().stream().map(Category::getTerm).toList());
    Document some = Jsoup.parse(feeds.titled("Some").html());
    assertEquals(List.of("Unsorted: 1:00"), some.select("li").eachText());
  }

  @Test
  void anItemTellsOfNoPrivateEntry() throws IOException {
    journal(PROJECT)
        .with("2026-01-10.md", night("private: true\ntodo: [{id: gift, what: A gift}]\n"))
        .with(
            "2026-01-11.md",
            night("title: On\ndone: [gift]\ntodo: [{id: oil, what: Oil it, after: [gift]}]\n"));
    String html = publish().titled("On").html();
    assertFalse(html.toLowerCase(Locale.ROOT).contains("gift"), html);
    assertEquals("Oil it", Jsoup.parse(html).select("p:contains(For later) + ul").text());
  }

  @Test
  void aMonthIsToldOnceItIsOver() throws IOException {
    journal(PROJECT + "time zone: Pacific/Auckland\n")
        .with("2026-01-10.md", night(""))
        .with("2026-03-30.md", night(""));
    ReadFeeds feeds = publish();
    assertEquals(List.of("30 March 2026", "January 2026", "10 January 2026"), feeds.titles());
    Read month = feeds.titled("January 2026");
    assertEquals("tag:example.org,2026-01-31:/teal/months/2026-01.html", month.id());
    assertEquals("https://example.org/teal/months/2026-01.html", month.url());
    // Summer time, 13 hours ahead.
    assertEquals(Instant.parse("2026-01-31T10:59:59Z"), month.published());
    assertTrue(month.html().contains("1 hour"), month.html());

    new InMemory(folder).with("2026-03-31.md", night(""));
    assertEquals("March 2026", publish().titles().get(0));
  }

  @Test
  void aPrivateEntryOfALaterMonthEndsAMonthToo() throws IOException {
    journal(PROJECT)
        .with("2026-01-10.md", night(""))
        .with("2026-02-01.md", night("private: true\n"));
    assertEquals(List.of("January 2026", "10 January 2026"), publish().titles());
  }

  @Test
  void theLastThirtyEntriesAreThereAndNoOlderMonth() throws IOException {
    InMemory journal = journal(PROJECT);
    for (int i = 0; i < 34; i++) {
      String day = java.time.LocalDate.of(2026, 1, 29).plusDays(i).toString();
      journal.with(day + ".md", night(i == 20 ? "private: true\n" : ""));
    }
    List<String> titles = publish().titles();
    // 29, 30 and 31 January are the oldest of 33 public ones.
    assertEquals(31, titles.size());
    assertEquals("3 March 2026", titles.get(0));
    assertEquals("February 2026", titles.get(3));
    assertEquals("1 February 2026", titles.get(30));
    assertFalse(titles.contains("18 February 2026"));
  }

  @Test
  void theMonthOfTheOldestEntryIsTold() throws IOException {
    InMemory journal = journal(PROJECT);
    for (int i = 0; i < 31; i++) {
      journal.with(java.time.LocalDate.of(2026, 1, 30).plusDays(i) + ".md", night(""));
    }
    List<String> titles = publish().titles();
    assertEquals(32, titles.size());
    assertEquals(List.of("January 2026", "31 January 2026"), titles.subList(30, 32));
  }

  @Test
  void aSecondEntryOfADayIsLater() throws IOException {
    journal(PROJECT)
        .with("2026-01-10-a.md", night("title: A\n"))
        .with("2026-01-10-b.md", night("private: true\n"))
        .with("2026-01-10-c.md", night("title: C\n"));
    ReadFeeds feeds = publish();
    assertEquals(List.of("C", "A"), feeds.titles());
    assertEquals(Instant.parse("2026-01-10T12:00:00Z"), feeds.titled("A").published());
    assertEquals(Instant.parse("2026-01-10T12:00:01Z"), feeds.titled("C").published());
  }

  @Test
  void namesStayWhateverBecomesOfTitleSchemeAndPort() throws IOException {
    journal(PROJECT).with("2026-01-10-Märzkeel.md", night("title: A\n"));
    String id = publish().titled("A").id();
    assertEquals("tag:example.org,2026-01-10:/teal/entries/2026-01-10-M%C3%A4rzkeel.html", id);
    journal(PROJECT.replace("https://example.org", "http://Example.org:8080"))
        .with("2026-01-10-Märzkeel.md", night("title: B\n"));
    assertEquals(id, publish().titled("B").id());
    journal(PROJECT.replace("teal'", "tern'"));
    assertNotEquals(id, publish().titled("B").id());
  }

  @Test
  void aJournalWithoutAnEntryHasEmptyFeeds() throws IOException {
    journal(PROJECT + "started: 2026-01-02\n");
    ReadFeeds feeds = publish();
    assertEquals(List.of(), feeds.titles());
    assertEquals(Instant.parse("2026-01-02T12:00:00Z"), feeds.wire().getUpdated().toInstant());
  }

  @Test
  void hostileWordsStayWords() throws IOException {
    String words =
        "]]> <script>alert(1)</script> &amp; &#1;&#xb;&#xfffe;&#xd800;&#13; \ud83d\udee0 \u202eRTL\u202c"
            + " `<a href=\"../x\" src=\"../x\">`\n\n    src=\"../x\" <img src=\"../x\">\n\n"
            + "[x](#h) [y](http://[::1) [z](https://example.org/a?b=c&d=%zz)\n\n"
            + "word ".repeat(20_000);
    journal(PROJECT).with("2026-01-10.md", night("title: \"]]> <b>&amp; \ud83d\udee0\"\n") + words);
    Read item = publish().titled("]]> <b>&amp; \ud83d\udee0");
    Document html = Jsoup.parseBodyFragment(item.html());
    assertEquals("src=\"../x\" <img src=\"../x\">", html.select("pre").text());
    assertEquals("<a href=\"../x\" src=\"../x\">", html.selectFirst("p code").text());
    assertTrue(html.select("script, img, b").isEmpty());
    assertTrue(
        html.text().contains("]]> <script>alert(1)</script> & "), html.text().substring(0, 80));
    assertTrue(html.text().contains("\ud83d\udee0"));
    assertTrue(item.html().length() > 100_000);
    for (String c : List.of("\u0001", "\u000b", "\u001b", "\ufffe")) {
      assertFalse(item.html().contains(c));
    }
  }

  @Test
  void eachItemHasANameOfItsOwn() throws IOException {
    FullJournal.write(folder);
    List<String> ids = publish().items().stream().map(Read::id).toList();
    assertEquals(ids.size(), new HashSet<>(ids).size());
    // RFC 4151, 2.1: tag:authority,date:specific
    assertTrue(
        ids.stream()
            .allMatch(id -> id.matches("tag:[a-z0-9.-]+,\\d{4}-\\d\\d-\\d\\d:/wigeon/\\S+")),
        ids::toString);
  }
}
