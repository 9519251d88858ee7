package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** What the builder reads; the figures are checked in {@code joints/BondsTest}. */
class JointsCommandTest {
  @TempDir Path temporary;
  private Path folder;
  private Path beside;
  private InMemory memory;

  @BeforeEach
  void skiff() throws IOException {
    folder = temporary.resolve("skiff");
    beside = Files.createDirectories(temporary.resolve("beside"));
    memory =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Dunlin
                units: us
                time zone: America/Chicago
                adhesives:
                  epoxy:
                    rated at: 72 F
                    open time: 60 min
                    soft for: 90 min
                    clamp time: 8 h
                    recoat: 3 h to 24 h
                    full cure: 7 days
                    coldest: 50 F
                    spread: 140 in2 per fl oz
                  glue: {clamp time: 1 h}
                """)
            .with(
                "2026-03-14-garboard.md",
                """
                ---
                joints:
                  - name: Starboard garboard scarf
                    adhesive: epoxy
                    spread at: 20:25
                    clamped at: 20:40
                    temperature: 61 F
                    area: 2 1/2 in x 6 in
                  - name: Breasthook
                    adhesive: glue
                    clamped at: 21:30
                coats:
                  - what: Hull, inside
                    adhesive: epoxy
                    at: 21:10
                    temperature: 49 F
                ---
                """);
  }

  private String joints(String... words) {
    List<String> all = new ArrayList<>(List.of("joints", "-q"));
    all.addAll(List.of(words));
    Run run = memory.run(all.toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(0, run.code());
    return run.out();
  }

  @Test
  void aNightInUsUnits() {
    assertEquals(
        """
        Dunlin, joints and coats on 14 March 2026 at 22:10 (America/Chicago)

        Starboard garboard scarf: soft
          glued        14 March 2026, spread at 20:25, epoxy, at 61 °F
          closed       20:40, in time: the latest was 21:56
          last look    22:27, in 17 min
          soft until   22:42, in 32 min
          clamps off   08:54 on 15 March 2026, in 10 h 44 min
          full cure    13:17 on 25 March 2026, in 10 days
          mixed        ⅛ fl oz of epoxy, estimated from the area

        Breasthook: in clamps
          glued        14 March 2026, glue, as rated
          closed       21:30; whether in time is unknown: glue has no "open time" in
                       project.yaml
          last look    unknown: glue has no "soft for" in project.yaml
          soft until   unknown: glue has no "soft for" in project.yaml
          clamps off   22:30, in 20 min
          full cure    unknown: glue has no "full cure" in project.yaml

        Hull, inside: unknown how far
          laid         14 March 2026, at 21:10, epoxy, at 49 °F
          next coat    unknown: 49 °F is below the coldest for it, 50 °F; no time is
                       promised, see the maker's data sheet
          full cure    unknown: 49 °F is below the coldest for it, 50 °F; no time is
                       promised, see the maker's data sheet

        Next: Starboard garboard scarf, last look: 22:27, in 17 min.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        Wood dust can cause asthma and worse, and dust of half-cured resin is resin:
        draw it off at the tool and wear a mask that fits.
        Heating the shop: heaters that burn fuel without a flue can kill by carbon
        monoxide, open doors or not; fit an alarm.
        The maker's data sheet and local rules govern.
        """,
        joints("--now", "2026-03-14 22:10"));
  }

  /** The page on the format shows the first block of it. */
  @Test
  void theExampleOfThePageIsWhatIsTold() throws IOException {
    String page = Files.readString(Path.of("docs/journal-format.md"), StandardCharsets.UTF_8);
    String block = joints("--now", "2026-03-14 22:10").split("\n\n")[1];
    assertTrue(page.contains("```text joints\n" + block + "\n```\n"), block);
  }

  @Test
  void aDayNamedAsTodayIsItsEvening() {
    assertTrue(
        joints("--today", "2026-03-14")
            .startsWith(
                """
                Dunlin, joints and coats on 14 March 2026 at 18:00 (America/Chicago)

                Starboard garboard scarf: still ahead
                """));
    assertEquals(
        joints("--now", "2026-03-14 22:10"), joints("--today", "2026-03-14", "--now", "22:10"));
  }

  @Test
  void withoutATimeZoneTimesAreInUtc() throws IOException {
    assertEquals(
        """
        Dory, joints and coats on 1 June 2026 at 20:00 (UTC)

        No joint and no coat is written down yet.
        """,
        new InMemory(temporary.resolve("dory"))
            .with("project.yaml", "name: Dory\n")
            .run("joints", "-q")
            .out());
  }

  private static final String CSV =
      """
      kind,name,entry,adhesive,temperature,temperature_from,state,spread_at,clamped_at,close_by,closed,last_look,soft_until,clamps_off,recoat_from,recoat_to,covered_at,full_cure,estimated_use,estimated_unit,unknown
      joint,Starboard garboard scarf,2026-03-14-garboard,epoxy,61 °F,entry,curing,2026-03-14T20:25:00-05:00,2026-03-14T20:40:00-05:00,2026-03-14T21:56:00-05:00,in time,2026-03-14T22:27:00-05:00,2026-03-14T22:42:00-05:00,2026-03-15T08:54:00-05:00,,,,2026-03-25T13:17:00-05:00,0.1071,fl oz,
      """;

  @Test
  void csvAndJsonHaveTheLiveOnes() {
    assertEquals(CSV, joints("--format", "csv", "--now", "2026-03-24 00:00"));
    assertEquals(
        """
        [
          {"kind": "joint", "name": "Starboard garboard scarf", "entry": "2026-03-14-garboard", "adhesive": "epoxy", "temperature": "61 °F", "temperature_from": "entry", "state": "curing", "spread_at": "2026-03-14T20:25:00-05:00", "clamped_at": "2026-03-14T20:40:00-05:00", "close_by": "2026-03-14T21:56:00-05:00", "closed": "in time", "last_look": "2026-03-14T22:27:00-05:00", "soft_until": "2026-03-14T22:42:00-05:00", "clamps_off": "2026-03-15T08:54:00-05:00", "recoat_from": null, "recoat_to": null, "covered_at": null, "full_cure": "2026-03-25T13:17:00-05:00", "estimated_use": 0.1071, "estimated_unit": "fl oz", "unknown": null}
        ]
        """,
        joints("--format", "json", "--now", "2026-03-24 00:00"));
    assertEquals("[]\n", joints("--format", "json"));
    assertEquals(4, joints("--format", "csv", "--all").lines().count());
  }

  private Run calendar(String file, String... words) {
    List<String> all = new ArrayList<>(List.of("joints", "--format", "csv", "--calendar", file));
    all.addAll(List.of(words));
    return memory.run(all.toArray(String[]::new));
  }

  @Test
  void aCalendarIsWrittenAndWrittenOverBesideTheListing() throws IOException {
    Path file = beside.resolve("joints.ics");
    Run first = calendar(file.toString(), "--now", "2026-03-24 00:00", "--all");
    assertEquals(0, first.code());
    assertEquals("wrote " + file + ": 3 events\n", first.err());
    byte[] written = Files.readAllBytes(file);
    assertEquals(
        new Run(0, CSV, "no event is ahead, no calendar written\n"),
        calendar(file.toString(), "--now", "2026-03-24 00:00"));
    assertEquals(
        new String(written, StandardCharsets.UTF_8),
        Files.readString(file, StandardCharsets.UTF_8));
    Run next = calendar("../beside/joints.ics", "--now", "2026-03-14 22:28");
    assertEquals("wrote ../beside/joints.ics: 2 events\n", next.err());
    assertTrue(Files.size(file) < written.length);
  }

  @Test
  void whatIsNoCalendarOfOursStaysAsItIs() throws IOException {
    Path notes = Files.writeString(beside.resolve("notes.txt"), "mine");
    Path link = Files.createSymbolicLink(beside.resolve("link"), beside.resolve("nowhere"));
    for (Path file : List.of(notes, link)) {
      assertEquals(
          new Run(
              2,
              "",
              "ribband: "
                  + file
                  + " is no calendar that ribband wrote and stays as it is; name another file\n"),
          calendar(file.toString(), "--all"));
    }
    assertEquals("mine", Files.readString(notes));
    assertTrue(Files.isSymbolicLink(link));
  }

  @Test
  void aPlaceWhereNoFileCanStandIsTold() {
    assertEquals(
        new Run(3, "", "ribband: cannot write " + beside + ": it is a folder; name a file in it\n"),
        calendar(beside.toString(), "--all"));
    assertEquals(
        new Run(
            3,
            "",
            "ribband: cannot write none/joints.ics: its folder is not there; make the folder"
                + " first\n"),
        calendar("none/joints.ics", "--all"));
  }

  @Test
  void wrongWordsAreAnsweredWithTheRightOnes() {
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --now \"10 pm\" is not on the 24-hour clock; write 22:00, or 2026-03-15 07:30"
                + " on another day\n"),
        memory.run("joints", "--now", "10 pm"));
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --now \"2026-02-29 07:30\" is not in the calendar; that month ends with"
                + " 2026-02-28\n"),
        memory.run("joints", "--now", "2026-02-29 07:30"));
  }

  @Test
  void noTimeIsToldOfAJournalWithErrors() throws IOException {
    memory.with("2026-05-03.md", "---\njoints: [{name: a, adhesive: epxy}]\n---\n");
    Path file = beside.resolve("joints.ics");
    Run run = memory.run("joints", "-q", "--calendar", file.toString());
    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertTrue(Files.notExists(file));
  }
}
