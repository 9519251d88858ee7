package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.cli.InMemory.Run;
import ribband.photo.Camera;

/** As a new user: a journal is laid, and each night is written down with one command. */
class NightsInARowTest {
  @TempDir private Path yard;
  private Path boat;

  private Run at(String moment, String... arguments) {
    Run run = new InMemory(boat).at(moment).run(arguments);
    assertEquals(0, run.code(), run.err());
    return run;
  }

  @Test
  void threeNightsAreThreeEntriesAndAddUp() throws IOException {
    assertEquals(0, new InMemory(yard).at("2026-03-13T21:00").run("lay", "boat").code());
    boat = yard.toRealPath().resolve("boat");
    assertEquals(
        new Run(
            0,
            "2026/2026-03-14-planking.md\n",
            """
            understood:
              planking 2¾ h
              $23.70 for sanding discs
            nothing is soft: nothing to look at before bed
            """),
        at("2026-03-14T22:30", "tonight", "--say", "planking 2:45, 23.70 sanding discs"));
    assertEquals(
        new Run(
            0,
            "2026/2026-03-15-planking.md\n",
            """
            before 4 in the morning: this is the night of 15 March 2026
            understood:
              1½ h
              $12.50 for screws
              into the text: "the stem fits"
            nothing is soft: nothing to look at before bed
            """),
        at("2026-03-16T00:30", "tonight", "--say", "1h30, 12.50 screws, the stem fits"));
    Path card = yard.resolve("card");
    Camera.shoot(card.resolve("DCIM/IMG_1.JPG"), 64, 48, 1, "2026:03:14 21:00:00");
    Camera.shoot(card.resolve("DCIM/IMG_2.JPG"), 65, 48, 6, "2026:03:16 21:00:00");
    Camera.shoot(card.resolve("DCIM/IMG_10.JPG"), 66, 48, 1, "2026:03:16 21:00:00");
    assertEquals(
        new Run(
            0,
            "2026/2026-03-16-stem-in.md\n",
            """
            understood:
              backbone 3 h
            2 pictures in the entry's folder
            left out 1: 1 taken before 04:00 on 16 March 2026
            nothing is soft: nothing to look at before bed
            """),
        at(
            "2026-03-16T23:00",
            "tonight",
            "--title",
            "Stem in",
            "--say",
            "backbone 3 hours",
            "--photos",
            card.toString()));
    assertEquals("4 entries, no errors, no warnings\n", at("2026-03-16T23:01", "check").out());
    assertEquals(
        """
        entry,sessions,hours,cost,hours_to_date,cost_to_date
        2026-03-13-first-night,0,0,0.00,0,0.00
        2026-03-14-planking,1,2.75,23.70,2.75,23.70
        2026-03-15-planking,1,1.5,12.50,4.25,36.20
        2026-03-16-stem-in,1,3,0.00,7.25,36.20
        """,
        at("2026-03-16T23:01", "tally", "--by", "entry", "--format", "csv").out());
    assertEquals(
        """
        phase,sessions,hours,cost,hours_planned,cost_planned
        lofting,0,0,0.00,,
        backbone,1,3,0.00,,
        planking,2,4.25,36.20,,
        inside,0,0,0.00,,
        finishing,0,0,0.00,,
        """,
        at("2026-03-16T23:01", "tally", "--by", "phase", "--format", "csv").out());
    at("2026-03-16T23:01", "publish");
    Published site = new Published(boat.resolve("site"));
    assertTrue(site.page("entries/2026-03-15-planking.html").text().contains("the stem fits"));
    assertEquals(2, site.page("entries/2026-03-16-stem-in.html").select("main img").size());
  }
}
