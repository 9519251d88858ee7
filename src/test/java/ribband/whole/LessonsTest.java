package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** What was learned stands on a page of its own, by phase. */
class LessonsTest {
  @TempDir private Path folder;

  private InMemory journal(String project) throws IOException {
    return new InMemory(folder).with("project.yaml", project);
  }

  private static String entry(String... keys) {
    return "---\n" + String.join("\n", keys) + "\n---\n";
  }

  private static List<String> told(Element section) {
    return section.select("li > *").eachText();
  }

  @Test
  void lessonsStandByPhaseInTheProjectsOrderTheNewestFirst() throws IOException {
    journal("phases: [{id: planking, title: Planking}, fairing, {id: Deck-Två, title: Deck}]\n")
        .with("2026-01-01.md", entry("phase: fairing", "lesson: Sand late."))
        .with("2026-01-02-a.md", entry("phase: planking", "lesson: [First., Then.]"))
        .with("2026-01-02-b.md", entry("title: Again", "phase: planking", "lesson: Later."))
        .with("2026-01-03.md", entry("title: Sole", "hours: {planking: 1}", "lesson: Mark it."))
        .with(
            "2026-01-04.md",
            entry("title: Two", "hours: {planking: 1, fairing: 1}", "lesson: Rest."))
        .with("2026-01-05.md", entry("title: Bare", "lesson: Sweep."))
        .with("2026-01-06.md", entry("title: Deck", "phase: deck två", "lesson: Crown it."))
        .with("2026-01-07.md", entry("title: Silent", "phase: deck två"));

    Published site = new Builder(folder).publish();

    Document page = site.page("lessons.html");
    assertEquals("8 lessons, the newest of each phase first.", page.select(".said").text());
    List<Element> sections = page.select("main section");
    assertEquals(
        List.of("Planking", "Fairing", "Deck", "Without a phase"),
        sections.stream().map(section -> section.select("h2").text()).toList());
    assertEquals(
        List.of(
            "3 January 2026",
            "Mark it. Sole",
            "2 January 2026",
            "Later. Again",
            "2 January 2026",
            "First. Then. A"),
        told(sections.get(0)));
    assertEquals(
        List.of("5 January 2026", "Sweep. Bare", "4 January 2026", "Rest. Two"),
        told(sections.get(3)));
    assertEquals(
        List.of("Planking 4", "Fairing 1", "Deck 1", "Without a phase 2"),
        page.select(".jump li").eachText());
    for (Element jump : page.select(".jump a")) {
      assertEquals(jump.text(), page.getElementById(jump.attr("href").substring(1)).text());
    }
    assertEquals(
        List.of(
            "phases/planking.html",
            "entries/2026-01-03.html",
            "entries/2026-01-02-b.html",
            "entries/2026-01-02-a.html"),
        sections.get(0).select("a").eachAttr("href"));
    assertEquals(List.of(), sections.get(3).select("h2 a").eachAttr("href"));
    assertEquals("2026-01-03", sections.get(0).selectFirst("time").attr("datetime"));
    Element deck = site.page("phases/Deck-Två.html").selectFirst("a:contains(learned)");
    assertEquals("1 lesson learned in this phase", deck.text());
    assertEquals("../lessons.html#phase-Deck-Två", deck.attr("href"));
    assertEquals("phase-Deck-Två", sections.get(2).selectFirst("h2").id());
  }

  @Test
  void phasesThatOnlyEntriesNameHaveTheirLessonsToo() throws IOException {
    journal("name: Teal\n")
        .with("2026-01-01.md", entry("phase: side decks", "lesson: Scribe twice."))
        .with("2026-01-02.md", entry("hours: 1", "phase: planking"));

    Published site = new Builder(folder).publish();

    Document page = site.page("lessons.html");
    assertEquals(List.of("Side decks"), page.select("h2").eachText());
    // One phase needs no list to jump by.
    assertTrue(page.select(".jump").isEmpty());
    assertTrue(site.page("phases/planking.html").select("a[href*=lessons.html#]").isEmpty());
  }

  @Test
  void privateLessonsAreNowhere() throws IOException {
    InMemory ribband =
        journal("phases: [planking]\n")
            .with(
                "2026-01-01.md",
                entry("title: Zebra", "phase: planking", "private: true", "lesson: Zebrafy."))
            .with("2026-01-02.md", entry("hours: 1", "phase: planking"));

    Published site = new Builder(folder).publish();

    assertFalse(site.has("lessons.html"));
    ribband.with("2026-01-03.md", entry("phase: planking", "lesson: Open."));
    new Builder(folder).publish();
    assertEquals("1 lesson, the newest of each phase first.", said(site));
    assertEquals(
        "1 lesson learned in this phase",
        site.page("phases/planking.html").select("a:contains(learned)").text());
    assertEquals(List.of(), site.filesWith("Zebra"));
  }

  private static String said(Published site) throws IOException {
    return site.page("lessons.html").select(".said").text();
  }

  @Test
  void aLessonIsWordsAndNoMarkup() throws IOException {
    String lesson = "Use <b>two</b> & *never* [three](https://example.org/)";
    journal("phases: [planking]\n")
        .with("2026-01-01.md", entry("phase: planking", "lesson: '" + lesson + "'"));

    Published site = new Builder(folder).publish();

    Element told = site.page("lessons.html").selectFirst(".learned p");
    assertEquals(lesson, told.text());
    assertTrue(told.children().isEmpty());
    assertEquals("Lesson " + lesson, site.page("entries/2026-01-01.html").select(".lesson").text());
  }

  @Test
  void thePageComesWithTheFirstLessonAndGoesWithTheLast() throws IOException {
    journal("phases: [planking]\n")
        .with("2026-01-01.md", entry("phase: planking", "hours: 1", "lesson: Wait."));
    Published site = new Builder(folder).publish();
    assertTrue(site.has("lessons.html"));
    assertEquals(
        "lessons.html", site.page("index.html").select(".tabs a:contains(Lessons)").attr("href"));

    Files.delete(folder.resolve("2026-01-01.md"));
    new InMemory(folder).with("2026-01-01.md", entry("phase: planking", "hours: 1"));
    new Builder(folder).publish();

    assertFalse(site.has("lessons.html"));
    assertEquals(List.of(), site.filesWith("lessons.html"));
  }
}
