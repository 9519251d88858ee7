package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Journals of no entry, of one, of ten years; months without work and below zero. */
class EdgesTest {
  @TempDir private Path folder;

  /**
   * @param written the journal, on disk already
   */
  private Published publish(InMemory written) throws IOException {
    InMemory.Run run = new Builder(folder).run("publish", "--today", "2036-01-01");
    assertEquals(0, run.code(), run.err());
    return new Published(folder.resolve("site"));
  }

  private static String said(Published site, String month) throws IOException {
    return site.page("months/" + month + ".html").selectFirst(".said").text();
  }

  @Test
  void anEmptyJournal() throws IOException {
    Published site = publish(new InMemory(folder).with("project.yaml", "name: Teal\n"));

    assertEquals(List.of("index.html", "pictures.html", "records.html"), site.pages());
    assertTrue(site.page("records.html").text().contains("nothing to rank"));
    assertEquals("Teal", site.page("index.html").title());
  }

  @Test
  void anEmptyProjectAndOneEntry() throws IOException {
    Published site =
        publish(
            new InMemory(folder)
                .with("project.yaml", "")
                .with("2026-03-14.md", "---\nhours: 2\nphase: planking\n---\n"));

    assertEquals(
        "2 hours in March 2026, over 1 night, the first month with work: Planking took its first 2,"
            + " and the whole boat stands at 2 hours.",
        said(site, "2026-03"));
    assertEquals(
        "Saturday 14 March 2026", site.page("entries/2026-03-14.html").selectFirst("h1").text());
  }

  @Test
  void onlyCarriedWork() throws IOException {
    Published site =
        publish(
            new InMemory(folder)
                .with(
                    "project.yaml",
                    "currency: EUR\nphases: [{id: a, hours: 10}]\n"
                        + "carried: {sessions: 3, hours: {a: 4:30}, cost: {a: 12.50}}\n"));

    assertTrue(
        site.page("index.html").text().contains("hours 4:30 sessions 3 spent €12.50 built 45%"));
    assertTrue(site.page("money.html").text().contains("Carried in from before this journal"));
  }

  @Test
  void monthsAreSaidAsTheyWere() throws IOException {
    Published site =
        publish(
            new InMemory(folder)
                .with("project.yaml", "currency: USD\nphases: [{id: planking}, {id: fairing}]\n")
                .with("2026-01-01.md", "---\nhours: 3\nphase: planking\ncost: 20\n---\n")
                .with("2026-01-02.md", "---\nhours: 1\nphase: fairing\n---\n")
                .with("2026-02-01.md", "---\nhours: 4\nphase: planking\n---\n")
                .with("2026-03-01.md", "---\nhours: 0:40\nphase: planking\ncost: -5.25\n---\n")
                .with("2026-05-01-a.md", "---\nhours: 5\nphase: planking\n---\n")
                .with("2026-05-01-b.md", "---\nhours: 2\nphase: planking\n---\n")
                .with("2027-06-01.md", "---\nphase: planking\ncost: -3\n---\n"));

    assertEquals(
        "4 hours in January 2026, over 2 nights, second of 4 months with work, level with February"
            + " (May beats it), and $20.00 went out: Planking took its first 3; Fairing took its"
            + " first 1, and the whole boat stands at 4 hours and $20.00.",
        said(site, "2026-01"));
    assertEquals(
        "40 minutes in March 2026, over 1 night, 4th of 4 months with work (May, January and"
            + " February beat it), and $5.25 came back: Planking took 0:40 and now stands at 7:40,"
            + " and the whole boat stands at 8:40 hours and $14.75.",
        said(site, "2026-03"));
    assertEquals(
        "No work on the boat in April 2026; the whole boat stands at 8:40 hours and $14.75.",
        said(site, "2026-04"));
    assertEquals(
        "7:00 hours in May 2026, over 1 night, the best month so far: Planking took 7:00 and now stands at"
            + " 14:40, and the whole boat stands at 15:40 hours and $14.75.",
        said(site, "2026-05"));
    assertEquals(
        "No work on the boat in June 2027, and $3.00 came back; the whole boat stands at"
            + " 15:40 hours and $11.75.",
        said(site, "2027-06"));
  }

  @Test
  void anEntryShowsAllItsKeysInABuildersWords() throws IOException {
    FullJournal.write(folder);
    Published site = publish(new InMemory(folder));

    Element bench = site.page("entries/2026-03-14-garboards.html").selectFirst(".bench");
    assertEquals(
        List.of(
            "Strakes: number 1, port",
            "Strakes: number 1, starboard",
            "Garboard scarf: with epoxy, over 15 in², spread at 20:25, clamped at 20:40, at 61 °F",
            "Inside of the garboards: with epoxy, over 8 ft², at 21:10, in 64 °F",
            "2 fl oz of epoxy",
            "40 ring nails",
            "160 ring nails",
            "2 times 1 qt of epoxy, from the chandlery, $64.50; arrived 22 March 2026",
            "sanding discs, $23.70",
            "Trim the strake ends (after strakes and planking, about 1 hour, for Fairing)"),
        bench.select("li").eachText());
    assertEquals(
        "Lesson Dry-fit with every clamp before opening the resin.",
        site.page("entries/2026-03-14-garboards.html").selectFirst(".lesson").text());
    assertEquals(
        List.of("Bevel the stem"),
        site.page("entries/2026-01-16.html").select(".bench li").eachText());
  }

  @Test
  void aGalleryShowsPicturesInTheirOwnShapeWithTheirWords() throws IOException {
    FullJournal.write(folder);
    Published site = publish(new InMemory(folder));

    Element page = site.page("entries/2026-03-14-garboards.html");
    Element first = page.selectFirst(".prints .wide img");
    assertEquals("960", first.attr("width"));
    assertEquals("621", first.attr("height"));
    assertEquals("A plank on moulds", first.attr("alt"));
    assertEquals(
        List.of("480w", "960w", "1600w"),
        List.of(first.attr("srcset").split(", ")).stream().map(c -> c.split(" ")[1]).toList());
    Element tall = page.selectFirst(".prints .tall img");
    assertEquals("lazy", tall.attr("loading"));
    assertTrue(tall.attr("srcset").endsWith("-700.jpg 700w"), tall.attr("srcset"));
    assertEquals(
        "Photograph 3 of 4 of 14 March 2026, Garboards on, both & <sides>",
        page.selectFirst(".prints .square img").attr("alt"));
    assertEquals(3, page.select(".prints img").size(), "the one in the text stands there alone");
    assertEquals("The twist, close", page.selectFirst(".prose figcaption").text());
    assertEquals(4, site.page("months/2026-03.html").select(".prints img").size());
    assertEquals(4, site.page("phases/planking.html").select(".prints img").size());
    assertEquals(4, site.page("pictures.html").select(".prints img").size());
    for (String name : site.pages()) {
      List<String> eager = site.page(name).select("img:not([loading=lazy])").eachAttr("src");
      assertTrue(eager.size() <= 1, name + " loads at once " + eager);
    }
  }

  @Test
  void phasesOfOddNamesHaveAddressesOfTheirOwn() throws IOException {
    Published site =
        publish(
            new InMemory(folder)
                .with("project.yaml", "phases: [a'b, a-b, side decks, a.b, 'u\u0308ber']\n")
                .with("2026-01-01.md", "---\nhours: {a'b: 1, a-b: 1, side_decks: 1}\n---\n"));

    assertEquals(
        List.of(
            "phases/a'b.html",
            "phases/a-b.html",
            "phases/a.b.html",
            "phases/side-decks.html",
            "phases/über.html"),
        site.pages().stream().filter(page -> page.startsWith("phases/")).toList());
  }

  @Test
  void moreMoneyBackThanSpentIsSaidSo() throws IOException {
    Published site =
        publish(
            new InMemory(folder)
                .with("project.yaml", "currency: USD\nphases: [a]\n")
                .with("2026-01-01.md", "---\nhours: 3\nphase: a\ncost: -3\n---\n"));

    assertEquals(
        "More has come back than has gone into the boat: $3.00.",
        site.page("money.html").selectFirst(".said").text());
  }

  @Test
  void tenYears() throws IOException {
    InMemory journal =
        new InMemory(folder).with("project.yaml", "currency: JPY\nphases: [{id: a}, {id: b}]\n");
    LocalDate day = LocalDate.of(2026, 1, 3);
    for (int i = 0; i < 400; i++) {
      String phase = i < 200 ? "a" : "b";
      journal.with(
          day.getYear() + "/" + day + ".md",
          "---\nhours: 1:30\nphase: " + phase + "\ncost: 1000\n---\n");
      day = day.plusDays(9);
    }

    Published site = publish(journal);

    assertEquals(400, site.pages().stream().filter(p -> p.startsWith("entries/")).count());
    assertEquals(119, site.pages().stream().filter(p -> p.startsWith("months/")).count());
    assertTrue(site.page("index.html").text().contains("hours 600:00 nights 400 spent ¥400,000"));
  }
}
