package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** What lies ahead, on the site; all figures worked by hand. */
class AheadPageTest {
  private static final String PROJECT =
      """
      name: Teal
      currency: USD
      site: {show money: %s}
      phases:
        - {id: planking, title: Planking, hours: 40, cost: 1400}
        - {id: fairing, title: Fairing, hours: 10}
        - {id: rigging, title: Rigging}
      adhesives:
        epoxy: {rated at: 72 F, clamp time: 8 h, full cure: 7 days, coldest: 50 F}
      pieces:
        strakes: {total: 8, phase: planking, sides: [port, starboard], adhesive: epoxy, clamps: 10, hours: 4}
      clamps: 24
      shop temperatures: {mar: 60 F, apr: 40 F}
      """;

  @TempDir private Path folder;

  /** Ten hours and a strake in each of four weeks. */
  private InMemory journal(String money) throws IOException {
    InMemory ribband = new InMemory(folder).with("project.yaml", PROJECT.formatted(money));
    String[] strakes = {"port: [1]", "starboard: [1]", "port: [2]", "starboard: [2]"};
    String[] mondays = {"2026-02-02", "2026-02-09", "2026-02-16", "2026-02-23"};
    for (int week = 0; week < strakes.length; week++) {
      ribband.with(
          mondays[week] + ".md",
          "---\nphase: planking\nhours: 10\ncost: 31.41\npieces: {strakes: {"
              + strakes[week]
              + "}}\n---\n");
    }
    return ribband.with(
        "2026-03-04-later.md",
        """
        ---
        title: Later
        todo:
          - {id: trim, what: Trim the ends, after: [strakes], phase: planking, hours: 1.5}
          - {id: sand, what: Sand the hull, after: [trim, mask]}
          - {id: mask, what: Mask the sheer}
          - {id: launch, what: Launch her, after: [rigging, gift]}
          - {id: gone, what: Long done}
        done: [gone]
        ---
        """);
  }

  private Published published(InMemory ribband) throws IOException {
    InMemory.Run run = ribband.run("publish", "-q");
    assertEquals(0, run.code(), run.err());
    return new Published(folder.resolve("site"));
  }

  private InMemory withAGift(InMemory ribband) throws IOException {
    return ribband.with(
        "2026-03-03-secret.md",
        """
        ---
        title: Secretly
        private: true
        todo: [{id: gift, what: A carved Xylophone}]
        lesson: Zounds.
        joints: [{name: Quoin, adhesive: epoxy, clamped at: 20:00, temperature: 71 F}]
        ---
        """);
  }

  @Test
  void whenSheFloatsWithItsHours() throws IOException {
    Document page = published(withAGift(journal("true"))).page("ahead.html");
    assertEquals(
        "50 hours are left, with even odds of being done by 12 April 2026. Four jobs are open, one"
            + " of them ready.",
        page.select(".said").text());
    assertEquals(
        "Even odds by Sunday 12 April 2026. Four in five by Sunday 12 April 2026."
            + " Nineteen in twenty by Sunday 12 April 2026. The figures",
        page.select("#fan figcaption").first().ownText() + " The figures");
    assertEquals(
        List.of(
            "Drawn 10,000 times from the last 4 whole weeks, idle ones among them; a guess from the"
                + " past, and no promise.",
            "Too cold in the shop for epoxy: April 2026.",
            "Plan against actual comes to other hours, as it takes one rate for the whole of a phase"
                + " and one for all of them; here pieces left go at their own rate, and each phase"
                + " at its own.",
            "Left out, as no hours are planned for them: Rigging."),
        page.select("section[aria-labelledby=afloat] .halves p").eachText());
    assertEquals(
        List.of(
            "Planking 40 the pieces left, at their own rate",
            "Fairing 10 the plan's share still open, as there is no rate yet"),
        page.select("section[aria-labelledby=afloat] .halves .table tbody tr").eachText());
  }

  @Test
  void whatNextWithoutWhatIsPrivate() throws IOException {
    Published site = published(withAGift(journal("true")));
    Document page = site.page("ahead.html");
    assertEquals(
        List.of(
            "Mask the sheer With others frees “Sand the hull”.",
            "Launch her Waits for Rigging and a job not listed.",
            "Trim the ends 1½ hours, Planking Waits for strakes (4 left); with others frees “Sand"
                + " the hull”.",
            "Sand the hull Waits for “Trim the ends” and “Mask the sheer”."),
        page.select(".jobs").stream()
            .limit(2)
            .flatMap(list -> list.select("li").eachText().stream())
            .toList());
    assertEquals(
        "entries/2026-03-04-later.html", page.select(".jobs a:contains(Mask)").attr("href"));
    assertEquals(
        List.of(
            "Job Launch her Rigging and a job not listed",
            "Job Mask the sheer –",
            "Pieces Strakes (4 left) –",
            "Job Trim the ends strakes (4 left)",
            "Job Sand the hull “Trim the ends” and “Mask the sheer”"),
        page.select("#order tbody tr").eachText().stream()
            .filter(row -> !row.startsWith("Phase") && !row.contains("A job not listed"))
            .toList());
    for (String secret : List.of("Xylophone", "Zounds", "Secretly", "Quoin", "71 °F", "gift")) {
      assertEquals(List.of(), site.filesWith(secret), secret);
    }
  }

  @Test
  void theLongestChainOfNights() throws IOException {
    Document page =
        published(
                journal("true")
                    .with("2026-03-03.md", "x\n")
                    .with("2026-03-01-gift.md", "---\ntodo: [{id: gift, what: A bell}]\n---\n"))
            .page("ahead.html");
    assertEquals(
        List.of("4 strakes, 4 nights", "“Trim the ends”, 1 night", "“Sand the hull”, 1 night"),
        page.select(".chain li").eachText());
    assertTrue(page.select("section[aria-labelledby=chain] p").text().startsWith("Six nights"));
  }

  @Test
  void piecesWithWhatLimitsANight() throws IOException {
    Document page = published(withAGift(journal("true"))).page("ahead.html");
    assertEquals(
        List.of("Strakes 4 of 8 4 50% 1 4 4 10:00 4:00"),
        page.select("section[aria-labelledby=pieces] tbody tr").eachText());
    assertEquals(
        List.of(
            "Strakes: 4 of 8 made, 4 left: port number 3 and 4; starboard number 3 and 4; 10"
                + " hours each, 4 hours planned.",
            "Strakes: hours are the limit: the usual evening of 10 hours makes one, at 10 hours each.",
            "A session is a night that made some; nights left count those that finished none, too."),
        page.select("section[aria-labelledby=pieces] li").eachText());
  }

  @Test
  void planAgainstActual() throws IOException {
    Document page = published(withAGift(journal("true"))).page("ahead.html");
    assertEquals(
        List.of(
            "Planking: at this rate 80 hours in all, 40 over plan.",
            "All of it: at this rate 100 hours in all, 50 over plan.",
            "Not in the whole, as no hours are planned: Rigging."),
        page.select("section[aria-labelledby=plan] .kits li").eachText());
    assertEquals(
        List.of(
            "Planking 40:00 40:00 50% pieces $1,400.00 $125.64",
            "Fairing 10:00 0:00 0% assumed, by hours – –",
            "All with planned hours 50:00 40:00 40% $1,400.00 $125.64"),
        page.select("section[aria-labelledby=plan] .table").get(0).select("tbody tr").eachText());
    assertEquals(
        List.of(
            "Planking 20:00 40:00 −20:00 0.50 80:00 40:00 −40:00 –",
            "Fairing 0:00 0:00 0:00 – – – – 1.00",
            "All with planned hours 20:00 40:00 −20:00 0.50 100:00 60:00 −50:00 3.00"),
        page.select("section[aria-labelledby=plan] .table").get(1).select("tbody tr").eachText());
    assertEquals(8, page.select(".signs dt").size());
  }

  @Test
  void aPhasesPageSaysHowItStands() throws IOException {
    Published site =
        published(journal("true").with("2026-03-01-gift.md", "---\ntodo: [{id: gift}]\n---\n"));
    assertEquals(
        "At this rate 80 hours in all, 40 over plan",
        site.page("phases/planking.html").select("a[href=../ahead.html#plan]").text());
    assertEquals("", site.page("phases/fairing.html").select("a[href*=ahead.html#]").text());
  }

  @Test
  void hiddenMoneyIsNotInThePlan() throws IOException {
    Document page = published(withAGift(journal("false"))).page("ahead.html");
    assertEquals(
        List.of(
            "Planking 40:00 40:00 50% pieces",
            "Fairing 10:00 0:00 0% assumed, by hours", "All with planned hours 50:00 40:00 40%"),
        page.select("section[aria-labelledby=plan] .table").get(0).select("tbody tr").eachText());
    assertFalse(page.outerHtml().contains("$"));
    assertFalse(page.outerHtml().contains("1,400"));
  }

  @Test
  void whereNothingLiesAheadThereIsNoPageAndNoTab() throws IOException {
    InMemory ribband =
        new InMemory(folder)
            .with("project.yaml", "name: Teal\n")
            .with("2026-03-14.md", "---\nhours: 2\nphase: planking\n---\n");
    Published site = published(ribband);
    assertFalse(site.has("ahead.html"));
    assertEquals(List.of(), site.filesWith("ahead.html"));
  }

  @Test
  void jobsAloneAreAPage() throws IOException {
    InMemory ribband =
        new InMemory(folder)
            .with("project.yaml", "name: Teal\n")
            .with("2026-03-14.md", "---\ntodo: [{id: bell, what: Polish the bell}]\n---\n");
    Document page = published(ribband).page("ahead.html");
    assertEquals("One job is open and ready.", page.select(".said").text());
    assertEquals(List.of("What next", "The longest chain of nights"), page.select("h2").eachText());
  }
}
