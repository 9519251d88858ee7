package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/**
 * What the head of each page tells other sites, feed readers and search engines. The properties are
 * those of the Open Graph protocol (ogp.me); {@code canonical} is RFC 6596.
 */
class HeadsTest {
  private static final String ADDRESS = "'https://example.org/wigeon/'";
  private static final String BOAT = "https://example.org/wigeon/";

  @TempDir private Path folder;

  private Published publish(String project) throws IOException {
    FullJournal.write(folder);
    new InMemory(folder)
        .with("project.yaml", project)
        .with(
            "2026/2026-05-02 Ännie's #1?.md",
            "---\ntitle: Ä & \"Ö\"\nhours: 1\nphase: fairing\n---\n");
    return new Builder(folder).publish();
  }

  private Published at(String address) throws IOException {
    return publish(FullJournal.PROJECT.replace(ADDRESS, address));
  }

  /** Each line of what a page's head tells, in its order. */
  private static List<String> told(Document page) {
    return page
        .head()
        .select("link[rel=canonical], link[rel=alternate], meta[property], meta[name=robots]")
        .stream()
        .map(HeadsTest::line)
        .toList();
  }

  private static String line(Element tag) {
    return tag.tagName().equals("link")
        ? Stream.of(tag.attr("rel"), tag.attr("type"), tag.attr("href"), tag.attr("title"))
            .filter(word -> !word.isEmpty())
            .reduce((a, b) -> a + " " + b)
            .orElseThrow()
        : tag.attr("property") + tag.attr("name") + " " + tag.attr("content");
  }

  @Test
  void anEntryIsAnArticleWithItsCover() throws IOException {
    Published site = at(ADDRESS);
    String cover =
        site.paths().stream().filter(path -> path.endsWith("-1600.jpg")).findFirst().orElseThrow();
    assertEquals(
        List.of(
            "canonical " + BOAT + "entries/2026-03-14-garboards.html",
            "alternate application/atom+xml " + BOAT + "feed.xml Wigeon",
            "alternate application/feed+json " + BOAT + "feed.json Wigeon",
            "og:type article",
            "og:url " + BOAT + "entries/2026-03-14-garboards.html",
            "og:site_name Wigeon",
            "og:title Garboards on, both & <sides>",
            "og:description "
                + site.page("entries/2026-03-14-garboards.html")
                    .select("meta[name=description]")
                    .attr("content"),
            "og:image " + BOAT + cover,
            "og:image:width 1600",
            "og:image:height 1035",
            "og:image:alt A plank on moulds",
            "article:published_time 2026-03-14"),
        told(site.page("entries/2026-03-14-garboards.html")));
  }

  @Test
  void theFirstPageIsTheFolderItself() throws IOException {
    Document home = at(ADDRESS).page("index.html");
    List<String> told = new ArrayList<>(told(home));
    told.removeIf(line -> line.startsWith("og:image"));
    assertEquals(
        List.of(
            "canonical " + BOAT,
            "alternate application/atom+xml " + BOAT + "feed.xml Wigeon",
            "alternate application/feed+json " + BOAT + "feed.json Wigeon",
            "og:type website",
            "og:url " + BOAT,
            "og:site_name Wigeon",
            "og:title Wigeon",
            "og:description Wigeon: An invented punt for tests."),
        told);
    assertEquals(
        List.of("1200", "630"),
        home.select("meta[property=og:image:width], meta[property=og:image:height]")
            .eachAttr("content"));
  }

  @Test
  void aPageHasThePictureThatStandsForItUnlessLaterNightsChangeThatAlone() throws IOException {
    Published site = at(ADDRESS);
    assertTrue(image(site, "index.html").matches("cards/2026-05-[0-9a-f]+\\.png"));
    assertEquals(image(site, "index.html"), image(site, "records.html"));
    assertEquals(image(site, "index.html"), image(site, "months/2026-05.html"));
    assertEquals(
        site.page("months/2026-05.html").select("meta[name=description]").attr("content"),
        site.page("money.html").select("meta[property=og:image:alt]").attr("content"));
    assertTrue(image(site, "months/2026-03.html").matches("cards/2026-03-[0-9a-f]+\\.png"));
    assertTrue(image(site, "phases/planking.html").endsWith("-1600.jpg"));
    assertEquals("", image(site, "entries/2026-01-16.html"));
    assertEquals("", image(site, "phases/moulds.html"));
  }

  private static String image(Published site, String page) throws IOException {
    List<String> images = site.page(page).select("meta[property=og:image]").eachAttr("content");
    assertTrue(images.size() < 2, page);
    return images.isEmpty() ? "" : Whole.path(images.get(0), BOAT);
  }

  @Test
  void aPictureMarkedAsACoverStandsForItsPhase() throws IOException {
    String night = "---\nphase: rig\nhours: 1\nphotos: [{file: %s, cover: %s}]\n---\n";
    new InMemory(folder)
        .with("project.yaml", "name: Teal\nsite: {address: 'https://example.org/wigeon/'}\n")
        .with("2026-01-10.md", night.formatted("a.png", true))
        .with("2026-01-11.md", night.formatted("b.png", false));
    FullJournal.picture(folder.resolve("a.png"), 40, 30);
    FullJournal.picture(folder.resolve("b.png"), 60, 30);
    assertTrue(image(new Builder(folder).publish(), "phases/rig.html").endsWith("-40.jpg"));
  }

  @Test
  void theFootOfEveryPageLeadsToTheFeeds() throws IOException {
    Published site = at(ADDRESS);
    for (String page : site.pages()) {
      String root = page.contains("/") ? "../" : "";
      assertEquals("Follow: Atom, JSON Feed", site.page(page).select(".foot p:has(a)").text());
      assertEquals(
          List.of(root + "feed.xml", root + "feed.json"),
          site.page(page).select(".foot a").eachAttr("href"),
          page);
    }
  }

  @Test
  void everyPageHasTheWholeAddressItStandsAt() throws IOException {
    Published site = at(ADDRESS);
    for (String page : site.pages()) {
      Document document = site.page(page);
      String canonical = document.select("link[rel=canonical]").attr("href");
      assertEquals(page, Whole.path(canonical, BOAT), page);
      assertEquals(canonical, document.select("meta[property=og:url]").attr("content"));
      for (String image : document.select("meta[property=og:image]").eachAttr("content")) {
        assertTrue(site.has(Whole.path(image, BOAT)), image);
      }
    }
    assertEquals(
        BOAT + "entries/2026-05-02-%C3%84nnie-s-1.html",
        site.page("entries/2026-05-02-Ännie-s-1.html").select("link[rel=canonical]").attr("href"));
  }

  @Test
  void anAddressMayHaveAPortAndOtherLetters() throws IOException {
    Published site = at("'HTTP://Bücher.Example:8080/Möwe'");
    // The host by the algorithm of RFC 3492; the pair is common in texts on it.
    assertEquals(
        "http://xn--bcher-kva.example:8080/M%C3%B6we/",
        site.page("index.html").select("link[rel=canonical]").attr("href"));
    assertEquals(
        "http://xn--bcher-kva.example:8080/M%C3%B6we/money.html",
        site.page("money.html").select("link[rel=canonical]").attr("href"));
  }

  @Test
  void withoutAnAddressNothingIsTold() throws IOException {
    Published site = at("none");
    for (String page : site.pages()) {
      assertEquals(List.of(), told(site.page(page)), page);
      assertEquals(List.of(), site.page(page).select(".foot a").eachText(), page);
    }
  }

  @Test
  void aPrivateLogAsksSearchEnginesToStayAwayFromEveryPage() throws IOException {
    for (String address : List.of(ADDRESS, "none")) {
      Published site =
          publish(
              FullJournal.PROJECT.replace(
                  "address: " + ADDRESS, "robots: none, address: " + address));
      for (String page : site.pages()) {
        assertEquals(
            List.of("none"), site.page(page).select("meta[name=robots]").eachAttr("content"), page);
      }
    }
  }
}
