package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory;

/** What pages say of a plan: what is left of it, or how it ended. */
class PlannedTest {
  @TempDir private Path folder;

  private Published published(String phases, String entry) throws IOException {
    new InMemory(folder)
        .with("project.yaml", "currency: USD\nphases: " + phases + "\n")
        .with("2026-01-02.md", "---\nphase: planking\n" + entry + "---\n");
    return new Builder(folder).publish();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          8    | 50%  | Planking has taken 8 hours in 1 session, 100% of all hours. 2 of the 10 hours planned are left.
          8    | 100% | Planking took 8 hours in 1 session, 100% of all hours. It is done, 2 under the 10 hours planned.
          9:50 | 100% | Planking took 9:50 hours in 1 session, 100% of all hours. It is done, 0:10 under the 10 hours planned.
          10   | 100% | Planking took 10 hours in 1 session, 100% of all hours. It is done, to plan.
          10   | 99%  | Planking has taken 10 hours in 1 session, 100% of all hours. That is the plan to the minute.
          11½  | 99%  | Planking has taken 11½ hours in 1 session, 100% of all hours. That is 1½ over the 10 hours planned.
          11½  | 100% | Planking took 11½ hours in 1 session, 100% of all hours. It is done, 1½ over the 10 hours planned.
          """)
  void aFinishedPhaseSaysHowItEnded(String hours, String complete, String said) throws IOException {
    Published site =
        published(
            "[{id: planking, title: Planking, hours: 10}]",
            "hours: " + hours + "\ncomplete: {planking: " + complete + "}\n");
    assertEquals(said, site.page("phases/planking.html").selectFirst(".said").text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [{id: planking, cost: 100}, {id: fairing, cost: 20}] | Together $30.50 $120.00 $89.50
          [{id: planking, cost: 100}, {id: fairing}]           | Together $30.50 $100.00 $69.50
          [{id: planking}, {id: fairing, cost: 20}]            | Together $30.50 not all planned
          [{id: planking}, {id: fairing}]                      | Together $30.50
          """)
  void plansAreAddedUpWhereAllMoneyHasOne(String phases, String together) throws IOException {
    Published site = published(phases, "cost: 30.50\n");
    assertEquals(
        together,
        site.page("money.html")
            .selectFirst("section[aria-labelledby=byphase] .table tfoot")
            .text());
  }

  @Test
  void whatIsLeftIsSaidInQuartersOfAnHour() throws IOException {
    Published site =
        published(
            "[{id: planking, title: Planking, hours: 10}]",
            "hours: 3:10\ncomplete: {planking: 50%}\n");
    assertEquals(
        "Planking 3¼ the plan's share still open, at the rate so far",
        site.page("ahead.html")
            .selectFirst("table:contains(how they are reckoned) tbody tr")
            .text());
  }
}
