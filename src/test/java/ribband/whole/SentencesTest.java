package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** What a month's page says in one sentence. */
class SentencesTest {
  @TempDir private Path folder;

  private void session(String file, String hours, String more) throws IOException {
    new InMemory(folder)
        .with(file + ".md", "---\nhours: " + hours + "\nphase: planking\n" + more + "---\n");
  }

  private String said(String month) throws IOException {
    Published site = new Builder(folder).publish();
    String said = site.page("months/" + month + ".html").selectFirst(".said").text();
    assertEquals(
        said,
        site.page("months/" + month + ".html")
            .selectFirst("meta[name=description]")
            .attr("content"));
    return said;
  }

  private void project(String text) throws IOException {
    new InMemory(folder).with("project.yaml", text);
  }

  @Test
  void ninthOfMany() throws IOException {
    project("phases: [planking]\n");
    for (int month = 1; month <= 12; month++) {
      session("2025-" + (month < 10 ? "0" : "") + month + "-02", 20 - month + "", "");
    }
    session("2026-01-31", "11:15", "");

    assertEquals(
        "11¼ hours in January 2026, over 1 night, 9th of 13 months with work (January 2025,"
            + " February 2025, March 2025, April 2025 and four more beat it): Planking took 11¼ and"
            + " now stands at 173¼, and the whole boat stands at 173¼ hours.",
        said("2026-01"));
  }

  @Test
  void fourMonthsThatBeatItAreAllNamed() throws IOException {
    project("phases: [planking]\n");
    for (int month = 1; month <= 5; month++) {
      session("2025-0" + month + "-02", 9 - month + "", "");
    }

    assertEquals(
        "4 hours in May 2025, over 1 night, 5th of 5 months with work (January, February, March and"
            + " April beat it): Planking took 4 and now stands at 30, and the whole boat stands at"
            + " 30 hours.",
        said("2025-05"));
  }

  @Test
  void bestButForATie() throws IOException {
    project("phases: [planking]\n");
    session("2025-01-02", "0:30", "");
    session("2026-01-02", "30 min", "");
    session("2026-02-02", "0.25", "");

    assertEquals(
        "½ hour in January 2026, over 1 night, the best month so far, level with January 2025:"
            + " Planking took ½ and now stands at 1, and the whole boat stands at 1 hour.",
        said("2026-01"));
    assertEquals(
        "¼ hour in February 2026, over 1 night, third of 3 months with work (January 2025 and"
            + " January 2026 beat it): Planking took ¼ and now stands at 1¼, and the whole boat stands"
            + " at 1¼ hours.",
        said("2026-02"));
  }

  @Test
  void nightsAreDatesAndSessionsEntries() throws IOException {
    project("phases: [planking]\n");
    session("2026-01-02-early", "1", "");
    session("2026-01-02-late", "1", "");
    session("2026-01-03", "0", "");

    assertEquals(
        "2 hours in January 2026, over 1 night, the first month with work: Planking took its first"
            + " 2, and the whole boat stands at 2 hours.",
        said("2026-01"));
    Published site = new Published(folder.resolve("site"));
    assertEquals(
        "2:00 hours 1 night the first month with work",
        site.page("index.html").selectFirst(".month .figures").text());
    assertEquals(
        "January 2026 1 2 2:00 2:00",
        site.page("index.html").select("#months ~ .table tbody tr").text());
    assertEquals(
        "month,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours\n"
            + "2026-01,2,2,0,2,0,1\n",
        site.text("months.csv"));
  }

  @Test
  void carriedWorkStandsInWhatThePhaseStandsAtAndInNoMonth() throws IOException {
    project(
        "currency: GBP\nphases: [planking]\n"
            + "carried: {through: 2025-12-31, sessions: 4, hours: {planking: 10},"
            + " cost: {planking: 100}}\n");
    session("2026-01-02", "2:45", "cost: 0.50\n");

    assertEquals(
        "2¾ hours in January 2026, over 1 night, the first month in this journal, and £0.50 went out:"
            + " Planking took 2¾ and now stands at 12¾, and the whole boat stands at 12¾ hours and"
            + " £100.50.",
        said("2026-01"));
  }

  @Test
  void moneyHiddenIsNotSaid() throws IOException {
    project("currency: GBP\nphases: [planking]\nsite: {show money: false}\n");
    session("2026-01-02", "2", "cost: 7.50\n");
    session("2026-02-02", "0", "cost: -2.50\n");

    assertEquals(
        "2 hours in January 2026, over 1 night, the first month with work: Planking took its first"
            + " 2, and the whole boat stands at 2 hours.",
        said("2026-01"));
    assertEquals(
        "No work on the boat in February 2026; the whole boat stands at 2 hours.", said("2026-02"));
  }

  @Test
  void hoursWithNoPhaseAreUnsorted() throws IOException {
    project("phases: [planking]\n");
    new InMemory(folder).with("2026-01-02.md", "---\nhours: 26 min\n---\n");

    assertEquals(
        "26 minutes in January 2026, over 1 night, the first month with work: Unsorted took its"
            + " first 0:26, and the whole boat stands at 26 minutes.",
        said("2026-01"));
  }
}
