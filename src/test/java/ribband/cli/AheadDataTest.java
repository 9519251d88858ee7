package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ahead.Skiff;
import ribband.cli.InMemory.Run;

/** Each part of what lies ahead as a file; whole sheets are in {@code ahead/AheadSheetsTest}. */
class AheadDataTest {
  @TempDir Path folder;

  private InMemory skiff() throws IOException {
    InMemory memory =
        new InMemory(folder)
            .with("project.yaml", "name: Dunlin\ncurrency: USD\nunits: us\n" + Skiff.PROJECT);
    for (String night : Skiff.NIGHTS) {
      String[] parts = night.split("\n", 2);
      memory.with(parts[0] + ".md", "---\n" + parts[1] + "---\n");
    }
    return memory;
  }

  private String ahead(String... words) throws IOException {
    return told(skiff(), words);
  }

  private static String told(InMemory memory, String... words) {
    List<String> all = new ArrayList<>(List.of("ahead", "-q"));
    all.addAll(List.of(words));
    Run run = memory.run(all.toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(0, run.code());
    return run.out();
  }

  @Test
  void jobsForASpreadsheet() throws IOException {
    assertEquals(
        """
        id,state,what,phase,hours,waits_for,held_until,held_by,frees,helps,chain_nights,noted,done
        fair,waiting,Fair the hull,fairing,6,strakes,,,,prime,3,2026-03-02,
        rig,waiting,Step the mast,rigging,,fairing,,,,,1,2026-03-02,
        shed,ready,Clear the shed,planking,1.5,,,,,prime,2,2026-03-02,
        prime,waiting,prime,fairing,2,"fair, shed",,,,,1,2026-03-02,
        trim,held,Trim the stem,planking,1,,2026-03-18T08:54:00-05:00,Starboard 2,,,1,2026-03-17,
        glue-stem,done,glue-stem,planking,,,,,,,,2026-03-17,2026-03-17
        """,
        ahead("--now", "2026-03-17 22:00", "--format", "csv"));
  }

  @Test
  void piecesForAnotherProgram() throws IOException {
    assertEquals(
        """
        [
          {"kind": "strakes", "side": null, "total": 8, "done": 4, "left": 4, "share": 0.5, "numbers_left": null, "a_session": 1, "sessions_left": 4, "nights_left": 4, "hours_each": 3.75, "rate_from": "kind", "hours_each_planned": 3, "hours_left": 15},
          {"kind": "strakes", "side": "port", "total": 4, "done": 2, "left": 2, "share": 0.5, "numbers_left": "3 4", "a_session": 1, "sessions_left": null, "nights_left": null, "hours_each": 3.75, "rate_from": "kind", "hours_each_planned": 3, "hours_left": 7.5},
          {"kind": "strakes", "side": "starboard", "total": 4, "done": 2, "left": 2, "share": 0.5, "numbers_left": "3 4", "a_session": 1, "sessions_left": null, "nights_left": null, "hours_each": 3.75, "rate_from": "kind", "hours_each_planned": 3, "hours_left": 7.5},
          {"kind": "knees", "side": null, "total": 4, "done": 2, "left": 2, "share": 0.5, "numbers_left": null, "a_session": 2, "sessions_left": 1, "nights_left": 2, "hours_each": 1, "rate_from": "kind", "hours_each_planned": 1, "hours_left": 2}
        ]
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "pieces", "--format", "json"));
  }

  @Test
  void nightsForAnotherProgram() throws IOException {
    assertEquals(
        """
        [
          {"kind": "strakes", "left": 4, "evening_hours": 4, "clamps": 10, "clamps_held": 10, "by_clamps": 1, "by_cure": 1, "by_hours": 1.0667, "by_resin": 60, "binding": "clamps", "a_night": 1, "nights_left": 4, "tonight": 0, "nights_saved": null, "done_by": null, "unknown": null},
          {"kind": "knees", "left": 2, "evening_hours": 4, "clamps": 10, "clamps_held": 10, "by_clamps": null, "by_cure": null, "by_hours": 4, "by_resin": null, "binding": "hours", "a_night": 4, "nights_left": 1, "tonight": 2, "nights_saved": null, "done_by": null, "unknown": "knees hold no clamps in project.yaml; knees name no adhesive"}
        ]
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "nights", "--format", "json"));
  }

  @Test
  void planForAnotherProgram() throws IOException {
    assertEquals(
        """
        [
          {"phase": "planking", "hours_planned": 40, "hours": 17, "complete": 0.5, "complete_from": "pieces", "ev": 20, "ac": 17, "cv": 3, "cpi": 1.1765, "eac": 34, "etc": 17, "vac": 6, "tcpi": 0.8696, "cost_planned": 900.00, "cost": 300.00},
          {"phase": "fairing", "hours_planned": 27, "hours": 0, "complete": 0, "complete_from": "assumed", "ev": 0, "ac": 0, "cv": 0, "cpi": null, "eac": null, "etc": null, "vac": null, "tcpi": 1, "cost_planned": null, "cost": 0.00},
          {"phase": "rigging", "hours_planned": null, "hours": 0, "complete": null, "complete_from": "unknown", "ev": null, "ac": null, "cv": null, "cpi": null, "eac": null, "etc": null, "vac": null, "tcpi": null, "cost_planned": null, "cost": 0.00},
          {"phase": "whole", "hours_planned": 67, "hours": 17, "complete": 0.2985, "complete_from": null, "ev": 20, "ac": 17, "cv": 3, "cpi": 1.1765, "eac": 56.95, "etc": 39.95, "vac": 10.05, "tcpi": 0.94, "cost_planned": 900.00, "cost": 300.00}
        ]
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "plan", "--format", "json"));
  }

  @Test
  void leftForAnotherProgram() throws IOException {
    assertEquals(
        """
        [
          {"what": "Planking", "hours_left": 17, "from": "pieces"},
          {"what": "Fairing", "hours_left": 27, "from": "plan"},
          {"what": "Rigging", "hours_left": null, "from": "left out"}
        ]
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "left", "--format", "json"));
  }

  @Test
  void forecastForAnotherProgram() throws IOException {
    assertEquals(
        """
        [
          {"percentile": 50, "sunday": "2026-05-10", "unknown": null, "hours_left": 44, "weeks_drawn_from": 2},
          {"percentile": 80, "sunday": "2026-05-17", "unknown": null, "hours_left": 44, "weeks_drawn_from": 2},
          {"percentile": 95, "sunday": "2026-05-17", "unknown": null, "hours_left": 44, "weeks_drawn_from": 2}
        ]
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "forecast", "--format", "json"));
  }
}
