package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Every address in a site leads somewhere, whatever the journal's files are called. */
class LinksTest {
  @TempDir private Path folder;
  private Published site;

  @BeforeEach
  void publish() throws IOException {
    FullJournal.write(folder);
    new InMemory(folder)
        .with(
            "2026/2026-04-01 Ännie's 50% day #1?.md",
            "---\nphase: planking\nhours: 1\n---\nOdd [names](2026-04-02%20b%C3%A4r.md).\n")
        .with(
            "2026/2026-04-02 bär.md",
            "---\nphase: planking\nhours: 1\n---\nBack to [Ännie](<2026-04-01 Ännie's 50%25 day %231%3F.md>), to the [refund](2026-03-20-refund.md), to [a private one](2026-03-15-private.md), to [the receipt](../receipts/0314.txt).\n");
    new InMemory(folder)
        .with(
            "2026/2026-04-03 \"so-called\" & <fair>+100%.md",
            "---\ntitle: Level\nphase: fairing\nhours: 1\n---\n# Same\n\n##### Same\n\nDown[^1]."
                + " [Down](#same)\n\n[^1]: Back up.\n")
        .with(
            "2026/2026-04-03-b.md",
            "---\ntitle: Level\nphase: fairing\n---\n[That one]"
                + "(2026-04-03%20%22so-called%22%20%26%20%3Cfair%3E%2B100%25.md#same)\n");
    InMemory.Run run = new Builder(folder).run("publish");
    assertEquals(0, run.code(), run.err());
    site = new Published(folder.resolve("site"));
  }

  @Test
  void everyAddressResolves() throws IOException {
    List<String> dead = new ArrayList<>();
    for (String page : site.pages()) {
      Document document = site.page(page);
      for (String target : targets(document)) {
        if (target.startsWith("http") || target.startsWith("mailto:")) {
          continue;
        }
        String path = resolve(page, target);
        String fragment = target.contains("#") ? target.substring(target.indexOf('#') + 1) : "";
        boolean leads =
            site.has(path)
                && (fragment.isEmpty() || site.page(path).getElementById(fragment) != null);
        if (!leads || !URI.create(target).toASCIIString().equals(target)) {
          dead.add(page + " -> " + target);
        }
      }
    }
    assertEquals(List.of(), dead);
  }

  @Test
  void namesWithinAPageAreUniqueAndThere() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String page : site.pages()) {
      Document document = site.page(page);
      List<String> ids = document.select("[id]").eachAttr("id");
      List<String> named = new ArrayList<>();
      for (String attribute : List.of("aria-labelledby", "aria-describedby", "headers", "for")) {
        for (String list : document.select("[" + attribute + "]").eachAttr(attribute)) {
          named.addAll(List.of(list.split(" ")));
        }
      }
      Set<String> distinct = new HashSet<>(ids);
      if (ids.size() != distinct.size() || !distinct.containsAll(named)) {
        named.removeAll(distinct);
        wrong.add(page + " names " + named + ", has " + ids);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyPageIsReachedFromTheFirst() throws IOException {
    Set<String> seen = new HashSet<>(Set.of("index.html"));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      String page = open.pop();
      for (Element link : site.page(page).select("a[href]")) {
        String target = link.attr("href");
        String path = target.startsWith("http") ? "" : resolve(page, target);
        if (path.endsWith(".html") && seen.add(path)) {
          open.push(path);
        }
      }
    }
    assertEquals(new TreeSet<>(site.pages()), new TreeSet<>(seen));
  }

  @Test
  void linksBetweenEntriesLandOnTheirPages() throws IOException {
    Document strongback = site.page("entries/2026-01-15-strongback.html");
    Element link = strongback.selectFirst("a:containsOwn(the garboards)");
    assertEquals("2026-03-14-garboards.html#h-what-went-wrong", tail(link.attr("href")));
    Document bear = site.page("entries/2026-04-02-bär.html");
    assertEquals(
        "2026-03-20-refund.html", tail(bear.selectFirst("a:containsOwn(refund)").attr("href")));
  }

  @Test
  void linksToAHeadingFindItByItsWordsOrSayThatItIsNotThere() throws IOException {
    new InMemory(folder)
        .with(
            "2026/2026-05-20-to.md",
            "---\nphase: fairing\n---\n## \u00c4rger day\n\n### Twice\n\n### Twice\n")
        .with(
            "2026/2026-05-21-from.md",
            "---\nphase: fairing\n---\n[a](2026-05-20-to.md#\u00c4rger%20day)"
                + " [b](2026-05-20-to.md#twice-2) [c](2026-05-20-to.md#twise)"
                + " [d](2026-05-20-to.md) [e](2026-05-01-fair.md#none)\n");
    InMemory.Run run = new Builder(folder).run("publish");

    assertEquals(
        List.of(
            "2026-05-20-to.html#h-arger-day",
            "2026-05-20-to.html#h-twice-2",
            "2026-05-20-to.html",
            "2026-05-20-to.html",
            "2026-05-01-fair.html"),
        site.page("entries/2026-05-21-from.html").select(".prose a").eachAttr("href").stream()
            .map(LinksTest::tail)
            .toList());
    assertEquals(
        """
        2026/2026-05-21-from.md:4:65: warning: no heading "twise" in 2026/2026-05-20-to.md, the link leads to its page; did you mean "twice"?
        2026/2026-05-21-from.md:4:115: warning: no heading "none" in 2026/2026-05-01-fair.md, the link leads to its page; it has no headings
        """,
        run.err()
            .lines()
            .filter(line -> line.contains("no heading"))
            .map(line -> line + "\n")
            .reduce("", String::concat));
  }

  @Test
  void linksInTheWordsAboutTheBoatLandToo() throws IOException {
    new InMemory(folder)
        .with(
            "about.md",
            "Of [her twist](2026/2026-03-14-garboards.md#what-went-wrong), [him]"
                + "(2026/2026-03-15-private.md) and ![a plan](receipts/plan.png)\n");
    InMemory.Run run = new Builder(folder).run("publish");

    Document home = site.page("index.html");
    assertEquals(
        List.of("entries/2026-03-14-garboards.html#h-what-went-wrong"),
        home.select(".about a").eachAttr("href"));
    assertEquals("About the boat Of her twist, him and a plan", home.select(".about").text());
    assertEquals(
        "about.md:1:101: warning: picture \"receipts/plan.png\" is left out, the words about the boat"
            + " have none; show it in an entry",
        run.err().lines().filter(line -> line.startsWith("about.md")).findFirst().orElse(""));
  }

  @Test
  void linksToPrivateEntriesAndOtherFilesStayText() throws IOException {
    Document bear = site.page("entries/2026-04-02-bär.html");
    assertTrue(bear.text().contains("to a private one, to the receipt"));
    assertTrue(bear.select("a:containsOwn(private one)").isEmpty());
    assertTrue(bear.select("a:containsOwn(the receipt)").isEmpty());
    assertEquals(
        "2026/2026-04-02 bär.md:5:146: warning: the link to \"../receipts/0314.txt\" leads to a file"
            + " that is no entry, so it is not published and stays text; link to an entry or leave"
            + " the link out\n",
        new InMemory(folder)
                .run("check")
                .err()
                .lines()
                .filter(l -> l.contains("receipt"))
                .findFirst()
                .orElse("")
            + "\n");
  }

  @Test
  void titlesAreUniqueAndHeadingsInOrder() throws IOException {
    Set<String> titles = new HashSet<>();
    for (String page : site.pages()) {
      Document document = site.page(page);
      assertTrue(titles.add(document.title()), "twice: " + document.title());
      assertEquals(1, document.select("h1").size(), page);
      int last = 1;
      for (Element heading : document.select("h1, h2, h3, h4, h5, h6")) {
        int level = heading.tagName().charAt(1) - '0';
        assertTrue(level <= last + 1, page + " skips to " + heading);
        last = level;
      }
    }
  }

  @Test
  void phasesNamedLikeOtherPagesHaveTitlesOfTheirOwn() throws IOException {
    new InMemory(folder)
        .with(
            "project.yaml",
            FullJournal.PROJECT.replace(
                "phases:\n",
                "phases:\n  - {id: buying, title: Money}\n  - {id: stem, title: Planking}\n"
                    + "  - {id: frost, title: March 2026}\n"));

    List<String> titles = new ArrayList<>();
    Published again = new Builder(folder).publish();
    for (String page : again.pages()) {
      titles.add(again.page(page).title());
    }

    assertEquals(titles.size(), new HashSet<>(titles).size(), titles.toString());
    assertEquals("Money, phase buying – Wigeon", again.page("phases/buying.html").title());
    assertEquals("Money", again.page("phases/buying.html").selectFirst("h1").text());
  }

  @Test
  void nothingComesFromElsewhere() throws IOException {
    for (String page : site.pages()) {
      Document document = site.page(page);
      for (Element resource :
          document.select("[src], link[href]:not([rel=canonical], [rel=alternate])")) {
        String address = resource.hasAttr("src") ? resource.attr("src") : resource.attr("href");
        assertTrue(!address.contains(":") && !address.startsWith("//"), page + " " + address);
      }
      assertTrue(document.select("[style], script:not([src])").isEmpty(), page);
    }
  }

  private static List<String> targets(Document document) {
    List<String> targets = new ArrayList<>();
    document.select("[href]").forEach(e -> targets.add(e.attr("href")));
    document.select("[src]").forEach(e -> targets.add(e.attr("src")));
    for (Element image : document.select("[srcset]")) {
      for (String candidate : image.attr("srcset").split(",")) {
        targets.add(candidate.strip().split(" ")[0]);
      }
    }
    for (Element shape : document.select("[clip-path], [fill*=url], [mask]")) {
      for (String attribute : List.of("clip-path", "fill", "mask")) {
        if (shape.hasAttr(attribute)) {
          targets.add(shape.attr(attribute).replaceAll("^url\\((.*)\\)$", "$1"));
        }
      }
    }
    targets.removeIf(target -> target.equals("none"));
    return targets;
  }

  private static String resolve(String page, String target) {
    String path = target.replaceFirst("#.*", "");
    if (path.isEmpty()) {
      return page;
    }
    Path base = Path.of("/" + page).getParent();
    String decoded = URLDecoder.decode(path.replace("+", "%2B"), StandardCharsets.UTF_8);
    return base.resolve(decoded).normalize().toString().substring(1);
  }

  private static String tail(String href) {
    return href.substring(href.lastIndexOf('/') + 1);
  }
}
