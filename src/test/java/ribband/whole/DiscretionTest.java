package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** What the builder keeps to himself is nowhere in the site. */
class DiscretionTest {
  @TempDir private Path folder;

  @Test
  void whyNobodyBuildsIsToldNowhere() throws IOException {
    FullJournal.write(folder);
    String project = FullJournal.PROJECT.replace("why: holiday", "why: zebra dance");
    new InMemory(folder).with("project.yaml", project);

    assertEquals(0, new Builder(folder).run("publish").code());

    assertTrue(project.contains("zebra"));
    try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains("zebra"), file.toString());
      }
    }
  }

  @Test
  void hiddenMoneyIsNowhere() throws IOException {
    FullJournal.write(folder);
    new InMemory(folder)
        .with(
            "project.yaml",
            FullJournal.PROJECT
                .replace("show money: true", "show money: false")
                .replace("cost: 80}", "cost: 7654.32}")
                .replace("{moulds: 61.20}", "{moulds: 8765.43}")
                .replace("worth: 38.00", "worth: 6543.21"))
        .with(
            "2026/2026-04-05-dear.md",
            """
            ---
            phase: planking
            hours: 1
            cost: 98765.43
            materials: {bought: [{item: bronze, cost: 1234.57, from: the foundry}]}
            ---
            Dear.
            """);

    assertEquals(0, new Builder(folder).run("publish").code());
    Published site = new Published(folder.resolve("site"));

    assertFalse(site.has("money.html"));
    assertEquals(
        List.of("bronze, from the foundry"),
        site.page("entries/2026-04-05-dear.html").select(".bench li").eachText());
    assertTrue(site.page("records.html").select(".records div:contains(Largest)").isEmpty());
    for (String page : site.pages()) {
      assertTrue(site.page(page).select("a[href*=money]").isEmpty(), page);
      assertFalse(site.text(page).contains("$"), page);
    }
    for (String feed : List.of("feed.xml", "feed.json")) {
      assertTrue(site.text(feed).contains("April 2026"), feed);
      assertTrue(site.text(feed).contains("2026-04-05-dear.html"), feed);
      assertFalse(site.text(feed).contains("$"), feed);
    }
    for (String planted :
        List.of(
            "98765",
            "98,765",
            "1234.57",
            "1,234.57",
            "97530",
            "97,530",
            "7654",
            "7,654",
            "8765",
            "8,765",
            "6543",
            "6,543",
            "USD")) {
      assertEquals(List.of(), site.filesWith(planted), planted);
    }
    assertEquals(
        "month,sessions,hours,hours_to_date,rank_by_hours",
        site.text("months.csv").lines().findFirst().orElseThrow());
    assertEquals(
        "phase,sessions,hours,hours_planned",
        site.text("phases.csv").lines().findFirst().orElseThrow());
  }

  @Test
  void privateEntriesAreCountedAndNowhereShown() throws IOException {
    FullJournal.write(folder);
    new InMemory(folder)
        .with(
            "2026/2026-04-06-zebrafile.md",
            """
            ---
            title: Zebratitle
            phase: fairing
            hours: 1:15
            private: true
            materials:
              used: {zebramaterial: 3 ml}
              bought: [{item: zebraitem, cost: 17.17, from: zebraseller}]
            joints: [{name: zebrajoint}]
            coats: [{what: zebracoat}]
            todo: [{id: zebrajob, what: Zebrawork}]
            lesson: Zebralesson
            mark: Zebramark
            photos: [{file: zebraphoto.png, caption: Zebracaption, alt: Zebraalt}]
            ---
            Zebratext. ![zebrainline](zebrainline.png)
            """)
        .with(
            "2026/2026-04-07-open.md",
            "---\nphase: fairing\nhours: 1\ndone: [zebrajob]\n"
                + "todo: [{id: sand, what: Sand, after: [zebrajob]}]\n---\n[x](2026-04-06-zebrafile.md)\n");
    FullJournal.picture(folder.resolve("2026/2026-04-06-zebrafile/zebraphoto.png"), 321, 213);
    FullJournal.picture(folder.resolve("2026/2026-04-06-zebrafile/zebrainline.png"), 322, 214);

    InMemory.Run run = new Builder(folder).run("publish");
    assertEquals(0, run.code(), run.err());
    Published site = new Published(folder.resolve("site"));

    assertTrue(site.text("feed.xml").contains("April 2026"));
    for (String planted : List.of("zebra", "Zebra", "2026-04-06-", "Secretly", "Hidden words")) {
      assertEquals(List.of(), site.filesWith(planted), planted);
    }
    assertTrue(
        site.paths().stream().noneMatch(path -> path.contains("-321") || path.contains("-322")));
    assertTrue(site.text("months.csv").contains("2026-04,2,2.25,17.17,"), site.text("months.csv"));
    assertTrue(site.page("months/2026-04.html").text().contains("1¼ hours more not listed."));
    assertEquals(
        "April 2026 Not listed",
        site.page("money.html")
            .select("tr:contains(Not listed)")
            .last()
            .text()
            .replaceFirst(" \\$.*", ""));
  }

  @Test
  void aPrivateNightHoldsItsRecordWithoutATitleOrLink() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "phases: [planking]\n")
        .with("2026-01-01.md", "---\nhours: 1\nphase: planking\n---\n")
        .with(
            "2026-01-02.md", "---\ntitle: Zebra\nhours: 9\nphase: planking\nprivate: true\n---\n");

    Published site = new Builder(folder).publish();

    Document records = site.page("records.html");
    Element night = records.selectFirst(".records div:contains(Longest night)");
    assertEquals("Longest night 9:00 hours in one night", night.text());
    assertTrue(night.select("a").isEmpty());
    Element row = records.selectFirst("table:has(caption:contains(The longest nights)) tbody tr");
    assertEquals("not shown 9:00", row.text());
    assertTrue(row.select("a").isEmpty());
    assertEquals(
        List.of("1 January 2026 1 January 2026 1:00 1:00", "– Not shown, 1 night 9:00 10:00"),
        site.page("phases/planking.html")
            .select("table:has(caption:contains(Entry by entry)) > tbody > tr")
            .eachText());
    assertEquals(List.of(), site.filesWith("Zebra"));
    assertEquals(
        "All figures as of 2 January 2026", site.page("index.html").selectFirst(".asof").text());
  }

  @Test
  void privateNightsHaveNoDayAndTheirHoursStayInTheSums() throws IOException {
    String hidden = "hours: 2:40\nphase: planking\nprivate: true\n---\n";
    new InMemory(folder)
        .with("project.yaml", "phases: [planking]\n")
        .with("2026-01-01.md", "---\nhours: 1\nphase: planking\n---\n")
        .with("2026-01-02.md", "---\n" + hidden)
        .with("2026-01-03-a.md", "---\nhours: 1:30\nphase: planking\n---\n")
        .with("2026-01-03-b.md", "---\nhours: 0:15\nphase: planking\nprivate: true\n---\n")
        .with("2026-01-04.md", "---\n" + hidden)
        .with("2026-01-05.md", "---\nhours: 0:30\nphase: planking\n---\n");

    Published site = new Builder(folder).publish();

    for (String page : List.of("index.html", "records.html")) {
      Element nights = site.page(page).getElementById("nights-2026");
      assertEquals(
          List.of("1 January 2026: 1 hour", "3 January 2026: 1¾ hours", "5 January 2026: ½ hour"),
          nights.select(".chart-wide .night title").eachText());
      assertEquals(List.of("8:35"), nights.select(".chart-wide .sum").eachText());
      assertEquals(
          List.of(
              "1 January 2026 1:00",
              "3 January 2026 1:45",
              "5 January 2026 0:30",
              "Not shown 5:20",
              "All 8:35"),
          nights.select("tbody tr, tfoot tr").eachText());
      assertEquals(
          "5 nights, 8:35 hours. 5:20 hours of them not shown by night.",
          nights.selectFirst("figcaption").ownText());
    }
    assertEquals(
        "Longest run 5 nights in a row, January 2026",
        site.page("records.html").selectFirst(".records div:contains(Longest run)").text());
    assertEquals(
        List.of(
            "1 January 2026 1 January 2026 1:00 1:00",
            "3 January 2026 A 1:30 2:30",
            "5 January 2026 5 January 2026 0:30 3:00",
            "– Not shown, 3 nights 5:35 8:35"),
        site.page("phases/planking.html")
            .select("table:has(caption:contains(Entry by entry)) > tbody > tr")
            .eachText());
    for (String day : List.of("2 January 2026", "4 January 2026", "2026-01-02", "2026-01-04")) {
      assertEquals(List.of(), site.filesWith(day), day);
    }
  }

  @Test
  void privatePiecesHoldTheirRecordAndPrivatePurchasesHoldNone() throws IOException {
    String head = "---\nphase: planking\n";
    new InMemory(folder)
        .with(
            "project.yaml",
            "currency: USD\nphases: [planking]\npieces: {strakes: {total: 16, phase: planking}}\n")
        .with(
            "2026-01-01.md",
            head
                + "pieces: {strakes: 2}\nmaterials: {bought: [{item: clamps, cost: 31.41}]}\n---\n")
        .with(
            "2026-01-02-zebra.md",
            head
                + "private: true\npieces: {strakes: 5}\n"
                + "materials: {bought: [{item: Zebra, cost: 2718.28}, {item: x, cost: 1}]}\n---\n")
        .with("2026-01-02-open.md", head + "hours: 1\n---\n");

    Published site = new Builder(folder).publish();

    Document records = site.page("records.html");
    Element pieces = records.selectFirst(".records div:contains(Most pieces)");
    assertEquals("Most pieces in a night 5 strakes", pieces.text());
    assertTrue(pieces.select("a").isEmpty());
    Element dearest = records.selectFirst(".records div:contains(Largest)");
    assertEquals("Largest purchase $31.41 clamps, on 1 January 2026", dearest.text());
    assertEquals("entries/2026-01-01.html", dearest.selectFirst("a").attr("href"));
    assertEquals(List.of(), site.filesWith("2,718"));
    assertEquals(List.of(), site.filesWith("2718"));
  }

  @Test
  void aPictureSharedWithAPrivateEntryIsPublishedOnce() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\n")
        .with("2026-01-01-a.md", "---\nhours: 1\nphase: x\nphotos: [p.png]\n---\n")
        .with("2026-01-02-b.md", "---\nhours: 1\nphase: x\nphotos: [p.png]\nprivate: true\n---\n")
        .with("2026-01-03-c.md", "---\nhours: 1\nphase: x\nphotos: [p.png]\n---\n");
    FullJournal.picture(folder.resolve("p.png"), 300, 200);

    assertEquals(0, new Builder(folder).run("publish").code());

    List<String> prints =
        new Published(folder.resolve("site"))
            .paths().stream().filter(path -> path.startsWith("pictures/")).toList();
    assertEquals(1, prints.size());
    assertTrue(prints.get(0).endsWith("-300.jpg"));
  }
}
