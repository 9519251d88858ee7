package ribband.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.problem.Problem;

/** What the builder reads last, whole; the times are those of {@code BondsTest}. */
class BeforeBedTest {
  private static final String SKIFF =
      """
      name: Dunlin
      time zone: America/Chicago
      adhesives:
        epoxy:
          material: resin
          rated at: 72 F
          open time: 60 min
          soft for: 90 min
          clamp time: 8 h
          recoat: 3 h to 24 h
          full cure: 7 days
          coldest: 50 F
        glue: {clamp time: 1 h}
        varnish: {recoat: 3 h to 24 h}
      """;

  private static final String NOTHING = "nothing is soft: nothing to look at before bed\n";

  private static final String CUP =
      """
      A cup full of mixed resin heats up by itself: mix small batches, spread them out
      at once, leave what is left over outdoors on concrete until it is cold.
      """;

  private static final String RAGS =
      """
      Solvent vapor catches fire: open the doors, no flame or spark, lids on. Rags
      with drying oil heat themselves: dry them flat outdoors, never in a heap.
      """;

  private static final String GOVERNS = "The maker's data sheet and local rules govern.\n";

  @TempDir Path folder;

  private String told(String now, String keys) throws IOException {
    return of(Journals.read(folder, SKIFF, "2026-03-14", keys), now);
  }

  private static String of(Journal journal, String now) {
    return of(journal, List.of(), now);
  }

  private static String of(Journal journal, List<Problem> problems, String now) {
    return BeforeBed.of(
        journal, problems, LocalDateTime.parse(now).atZone(journal.project().zone()).toInstant());
  }

  private static final String SCARF =
      "joints: [{name: Scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40,"
          + " temperature: 72 F}]";

  @Test
  void aNightInOrderOfTime() throws IOException {
    assertEquals(
        """
        before bed (America/Chicago):
          21:40                   Scarf: last look, in 30 min; soft until 21:55
          21:45                   Knee: close the joint, in 35 min
          22:00                   Knee: last look, in 50 min; soft until 22:15
          22:30                   Breasthook: clamps may come off, in 1 h 20 min
          20:50 on 15 March 2026  Hull, inside: last chance to coat without sanding, in
                                  23 h 40 min; not before 23:50
                                  Breasthook: last look unknown: glue has no "soft for"
                                  in project.yaml
                                  Thwart: last look unknown: no adhesive is named
                                  Rail: next coat unknown: "at" is not written
        """
            + CUP
            + RAGS
            + GOVERNS,
        told(
            "2026-03-14T21:10",
            """
            joints:
              - {name: Scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40, temperature: 72 F}
              - {name: Knee, adhesive: epoxy, spread at: 20:45, temperature: 72 F}
              - {name: Breasthook, adhesive: glue, clamped at: 21:30}
              - {name: Thwart, clamped at: 21:30}
            coats:
              - {what: "Hull, inside", adhesive: epoxy, at: 20:50, temperature: 72 F}
              - {what: Rail, adhesive: epoxy}
            """));
  }

  @Test
  void whereNothingIsSoftItSaysSo() throws IOException {
    assertEquals(NOTHING, told("2026-03-14T22:00", "title: x"));
    // In clamps until the morning, and curing: there is something, but not for tonight.
    assertEquals(NOTHING + CUP + GOVERNS, told("2026-03-14T23:30", SCARF));
    assertEquals(NOTHING + GOVERNS, told("2026-03-16T22:00", SCARF));
    assertEquals(NOTHING, told("2026-03-24T22:00", SCARF));
  }

  private String first(String now, String keys) throws IOException {
    return told(now, keys).lines().skip(1).findFirst().orElseThrow();
  }

  @Test
  void aLookGoesBy() throws IOException {
    assertEquals(
        "  21:40  Scarf: last look, in 1 min; soft until 21:55", first("2026-03-14T21:39", SCARF));
    assertEquals(
        "  21:40  Scarf: last look now; soft until 21:55", first("2026-03-14T21:39:01", SCARF));
    assertEquals(
        "  21:40  Scarf: last look now; soft until 21:55", first("2026-03-14T21:40", SCARF));
    assertEquals(
        "  21:40  Scarf: look now, it is soft until 21:55", first("2026-03-14T21:41", SCARF));
    assertEquals(
        "  21:40  Scarf: look now, it is soft until 21:55", first("2026-03-14T21:54:59", SCARF));
    String gone = "  21:40  Scarf: was soft until 21:55 and cannot be moved any more";
    assertEquals(gone, first("2026-03-14T21:55", SCARF));
    assertEquals(gone, first("2026-03-14T22:54:59", SCARF));
    assertEquals(NOTHING + CUP + GOVERNS, told("2026-03-14T22:55", SCARF));
  }

  /** Clamped at 20:40, so off at 04:40. */
  @Test
  void clampsComeOffInTheNightTheyMay() throws IOException {
    assertEquals(NOTHING + CUP + GOVERNS, told("2026-03-15T03:59", SCARF));
    assertEquals(
        "  04:40  Scarf: clamps may come off, in 40 min", first("2026-03-15T04:00", SCARF));
    assertEquals("  04:40  Scarf: clamps may come off now", first("2026-03-15T04:40", SCARF));
    assertEquals("  04:40  Scarf: clamps may come off now", first("2026-03-15T21:00", SCARF));
    assertEquals(
        "  04:40 on 15 March 2026  Scarf: clamps may come off now",
        first("2026-03-16T04:39", SCARF));
    assertEquals(NOTHING + GOVERNS, told("2026-03-16T04:40", SCARF));
    String early = SCARF.replace("20:25", "19:40").replace("20:40", "19:45");
    assertEquals(
        "  03:45 on 15 March 2026  Scarf: clamps may come off, in 4 h 45 min",
        first("2026-03-14T23:00", early));
    String edge = SCARF.replace("20:25", "19:40").replace("20:40", "20:00");
    assertEquals(
        "  04:00 on 15 March 2026  Scarf: clamps may come off, in 5 h",
        first("2026-03-14T23:00", edge));
  }

  private static final String COAT =
      "coats: [{what: Hull, adhesive: varnish, at: 21:00, temperature: 72 F}]";

  /** Laid at 21:00, so to be coated again from 00:00 to 21:00 of the next day. */
  @Test
  void aWindowThatEndsBeforeTheSameTimeTomorrowIsTold() throws IOException {
    assertEquals(NOTHING + CUP + RAGS + GOVERNS, told("2026-03-14T21:00", COAT));
    assertEquals(
        "  21:00 on 15 March 2026  Hull: last chance to coat without sanding, in 23 h 59",
        first("2026-03-14T21:01", COAT));
    assertEquals(
        "                          min; not before 00:00 on 15 March 2026",
        told("2026-03-14T21:01", COAT).lines().skip(2).findFirst().orElseThrow());
    assertEquals(
        "  21:00  Hull: last chance to coat without sanding, in 21 h",
        first("2026-03-15T00:00", COAT));
    assertEquals(
        "  21:00  Hull: last chance to coat without sanding now",
        first("2026-03-15T20:59:01", COAT));
    assertEquals(NOTHING, told("2026-03-15T21:00", COAT));
  }

  @Test
  void aCoatThatIsCoveredWaitsForNothing() throws IOException {
    Journals.read(folder, SKIFF, "2026-03-14", COAT);
    Journals.entry(folder, "2026-03-15", "coats: [{what: Hull, adhesive: glue, at: 20:00}]");
    assertEquals(
        "before bed (America/Chicago):\n"
            + "    Hull: next coat unknown: glue has no \"recoat\" in project.yaml\n"
            + CUP
            + RAGS
            + GOVERNS,
        of(Journals.read(folder), "2026-03-15T20:30"));
  }

  /** Older ones are not told again every night; joints without any time live for a week. */
  @Test
  void whatIsUnknownIsToldInItsNightAlone() throws IOException {
    String told =
        """
        before bed (America/Chicago):
            Knee: last look unknown: glue has no "soft for" in project.yaml
        """;
    String plain = "joints: [{name: Knee, adhesive: glue}]";
    assertEquals(told + CUP + GOVERNS, told("2026-03-14T22:00", plain));
    assertEquals(told + CUP + GOVERNS, of(readAgain(), "2026-03-15T03:59"));
    assertEquals(NOTHING + GOVERNS, of(readAgain(), "2026-03-15T04:00"));
  }

  private Journal readAgain() throws IOException {
    return Journals.read(folder);
  }

  @Test
  void resinThatWasUsedCallsForCare() throws IOException {
    assertEquals(
        NOTHING + CUP + GOVERNS, told("2026-03-14T22:00", "materials: {used: {Resin: 2 fl oz}}"));
    assertEquals(NOTHING, of(readAgain(), "2026-03-15T22:00"));
    assertEquals(NOTHING, told("2026-03-14T22:00", "materials: {used: {nails: 2}}"));
    assertEquals(
        NOTHING + CUP + GOVERNS, told("2026-03-14T22:00", "materials: {used: {glue: 2 fl oz}}"));
  }

  @Test
  void withoutATimeZoneTimesAreInUtc() throws IOException {
    Journal journal =
        Journals.read(folder, SKIFF.replace("America/Chicago", "UTC"), "2026-03-14", SCARF);
    assertEquals(
        "before bed (UTC):", of(journal, "2026-03-14T21:00").lines().findFirst().orElseThrow());
    Journal none =
        Journals.read(
            folder, SKIFF.replace("time zone: America/Chicago\n", ""), "2026-03-14", SCARF);
    assertEquals(
        "before bed (UTC):", of(none, "2026-03-14T21:00").lines().findFirst().orElseThrow());
  }

  private List<String> live(String now, String keys) throws IOException {
    Journal journal = Journals.read(folder, SKIFF, "2026-03-14", keys);
    return LiveWords.of(
        Bonds.of(journal, LocalDateTime.parse(now).atZone(journal.project().zone()).toInstant()));
  }

  @Test
  void whatIsAtWorkIsSaidInALine() throws IOException {
    String night =
        """
        joints:
          - {name: Breasthook, adhesive: epoxy, spread at: 21:15, temperature: 72 F}
          - {name: Thwart}
          - {name: Scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40, temperature: 72 F}
        coats:
          - {what: Hull, adhesive: varnish, at: 21:00, temperature: 72 F}
        """;
    assertEquals(
        List.of(
            "soft: Scarf, last look 21:40",
            "soft: Breasthook, close the joint 22:15",
            "too soon to coat again: Hull, may be coated again 00:00 on 15 March 2026",
            "unknown how far: Thwart"),
        live("2026-03-14T21:30", night));
    assertEquals(
        List.of(
            "in clamps: Scarf, clamps off 04:40",
            "in clamps: Breasthook, clamps off 05:15",
            "may be coated again: Hull, last chance to coat without sanding 21:00",
            "unknown how far: Thwart"),
        live("2026-03-15T00:30", night));
    assertEquals(
        List.of("still ahead: Breasthook, close the joint 22:15"),
        live("2026-03-14T21:00", night).stream().filter(l -> l.contains("Breast")).toList());
    assertEquals(List.of("unknown how far: Thwart"), live("2026-03-16T12:00", night));
  }

  private String unread(String project, String now) throws IOException {
    Files.writeString(folder.resolve("project.yaml"), project);
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2030, 1, 1));
    return of(read.journal(), read.problems(), now);
  }

  @Test
  void anEntryOfTheseDaysThatCannotBeReadIsNamed() throws IOException {
    Journals.entry(folder, "2026-03-10-g2", "joints: [");
    String unknown = "2026-03-10-g2.md has errors: what it glued is not known here\n";
    assertEquals(unknown, unread(SKIFF, "2026-03-10T22:00"));
    assertEquals(unknown, unread(SKIFF, "2026-03-18T22:00"));
    assertEquals(unknown, unread(SKIFF, "2026-03-19T03:59"));
    assertEquals(NOTHING, unread(SKIFF, "2026-03-19T22:00"));
    Files.createDirectories(folder.resolve("2026-03-17 sheer"));
    Journals.entry(folder, "2026-03-17 sheer/notes", "joints: [");
    assertEquals(
        "2026-03-17 sheer/notes.md has errors: what it glued is not known here\n",
        unread(SKIFF, "2026-03-19T22:00"));
  }

  @Test
  void whatIsKnownIsToldBeforeWhatIsNot() throws IOException {
    Journals.entry(folder, "2026-03-14", SCARF + "\nhours: x");
    Journals.entry(folder, "2026-03-13-x", "title: a: b");
    assertEquals(
        """
        before bed (America/Chicago):
          21:40  Scarf: last look, in 30 min; soft until 21:55
        2026-03-13-x.md has errors: what it glued is not known here
        2026-03-14.md has errors: what it glued may not all be known here
        """
            + CUP
            + GOVERNS,
        unread(SKIFF, "2026-03-14T21:10"));
  }

  @Test
  void ofManyThatCannotBeReadFiveAreNamed() throws IOException {
    for (int n = 1; n <= 6; n++) {
      Journals.entry(folder, "2026-03-1" + n, "joints: [");
    }
    List<String> lines = unread(SKIFF, "2026-03-16T22:00").lines().toList();
    assertEquals(6, lines.size());
    assertEquals("2026-03-15.md has errors: what it glued is not known here", lines.get(4));
    assertEquals("and 1 entry more", lines.get(5));
    // Nobody knows when a day was that is none.
    Journals.entry(folder, "2026-02-30", "hours: 1");
    assertEquals(
        "2026-02-30.md has errors: what it glued is not known here",
        unread(SKIFF, "2026-05-16T22:00").lines().findFirst().orElseThrow());
  }

  @Test
  void aProjectWithErrorsIsNamed() throws IOException {
    assertEquals(
        "project.yaml has errors: times of adhesives are not known\n",
        unread("name: [\n", "2026-03-14T21:10"));
    assertEquals(
        "project.yaml has errors: times of adhesives may not all be known\n",
        unread(SKIFF + "  fast: {soft for: soon}\n", "2026-03-14T21:10"));
  }

  @Test
  void warningsLeaveNoDoubt() throws IOException {
    Journals.entry(folder, "2026-03-14", "hours: 2");
    assertEquals(NOTHING, unread(SKIFF, "2026-03-14T21:10"));
  }
}
