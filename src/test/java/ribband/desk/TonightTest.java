package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Entry;
import ribband.spoken.SpokenLine;

/** What a new entry holds; that it passes every check is tested with each. */
class TonightTest {
  private static final String[] SKIFF = {
    "name: Dunlin",
    "currency: USD",
    "time zone: America/Chicago",
    "phases: [{id: planking, title: Planking}, {id: fairing}, {id: spars}]",
    "adhesives: {epoxy: {soft for: 90 min, clamp time: 8 h}}",
    "pieces:",
    "  strakes: {total: 16, phase: planking, sides: [port, starboard]}",
    "  ribs: {total: 12, phase: planking}",
    "  oars: {total: 2, phase: spars}"
  };

  @TempDir private Path folder;
  private Desk desk;

  @BeforeEach
  void boat() throws IOException {
    desk = new Desk(folder).with("project.yaml", SKIFF);
  }

  private Tonight tonight(String title, String say) throws IOException {
    var journal = desk.journal();
    return new Tonight(
        journal,
        Desk.NIGHT,
        LocalDateTime.parse("2026-03-14T22:10").atZone(ZoneId.of("America/Chicago")).toInstant(),
        Optional.ofNullable(title),
        Optional.ofNullable(say).map(line -> SpokenLine.read(line, journal, Desk.NIGHT)));
  }

  /** Its text; the journal is as sound as it was. */
  private String write(String title, String say) throws IOException {
    List<String> before = desk.problems();
    Path file = tonight(title, say).write().file();
    List<String> after = desk.problems();
    assertEquals(before, after);
    return desk.text(folder.relativize(file).toString());
  }

  private String write() throws IOException {
    return write(null, null);
  }

  @Test
  void aFirstNightKnowsThePhasesAlone() throws IOException {
    assertEquals(
        """
        ---
        title:
        phase:                         # one of planking, fairing, spars
        hours:                         # 2:45, or by phase {planking: 2, fairing: 0:45}
        # pieces:
        #   strakes:                   # 0 of 16 are done: port 0 of 8, starboard 0 of 8
        #   ribs:                      # 0 of 12 are done
        #   oars:                      # 0 of 2 are done
        ---

        """,
        write());
    assertEquals(List.of("2026/2026-03-14.md"), tonight(null, null).before());
  }

  @Test
  void aProjectWithoutPhasesIsToldWhatOneIs() throws IOException {
    desk.with("project.yaml", "name: x");
    assertEquals(
        """
        ---
        title: Plank on
        phase:                         # the part of the build, as planking
        hours:                         # 2:45
        ---

        """,
        write("Plank on", null));
    desk.entry("2026-03-10.md", "phase: side-decks", "hours: 1");
    assertEquals(
        """
        ---
        title:
        phase: side-decks
        hours:                         # 2:45
        ---

        """,
        write());
  }

  private void aWorkingJournal() throws IOException {
    desk.entry(
            "2026-03-10-a.md",
            "phase: planking",
            "hours: 2",
            "pieces: {strakes: {port: 5, starboard: 4}, ribs: 12}",
            "todo:",
            "  - {id: trim-ends, what: Trim the strake ends, after: [strakes]}",
            "  - {id: plug-holes, what: Plug the screw holes}",
            "  - {id: oar-blanks, what: Order the blanks, phase: spars}",
            "  - {id: sheer, what: Fair the sheer}",
            "done: [sheer]")
        .entry(
            "2026-03-14-b.md",
            "phase: fairing",
            "hours: {fairing: 0:30, planking: 1}",
            "joints:",
            "  - {name: 'Scarf # 3', adhesive: epoxy, spread at: 21:00}",
            "  - {name: Knee, adhesive: epoxy, spread at: 20:00}");
  }

  @Test
  void aNightGoesOnWhereTheLastOneStopped() throws IOException {
    aWorkingJournal();
    assertEquals(
        """
        ---
        title: 'Plank #10'
        phase: planking                # or fairing, spars
        hours:                         # 2:45, or by phase {planking: 2, fairing: 0:45}
        # pieces:
        #   strakes:                   # 9 of 16 are done: port 5 of 8, starboard 4 of 8
        # done:
        #   - plug-holes               # Plug the screw holes
        #   - trim-ends                # Trim the strake ends; waits for strakes (7 left)
        # soft: Scarf # 3, last look 22:15
        # in clamps: Knee, clamps off 04:00 on 15 March 2026
        ---

        """,
        write("Plank #10", null));
    assertEquals(
        List.of("2026-03-14-b.md", "2026-03-14-plank-10.md"), tonight(null, null).before());
  }

  @Test
  void whatAJobWaitsForIsNamed() throws IOException {
    aWorkingJournal();
    desk.entry(
        "2026-03-14-c.md",
        "phase: planking",
        "hours: 1",
        "todo:",
        "  - {id: prime, after: [plug-holes, planking, spars]}");
    assertTrue(
        write()
            .contains(
                "#   - prime                    # prime; waits for plug-holes, Planking and"
                    + " Spars\n"));
  }

  @Test
  void asManyAsAreListedAreAll() throws IOException {
    desk.entry(
        "2026-03-10-a.md",
        "phase: planking",
        "hours: 2",
        "todo:",
        IntStream.rangeClosed(10, 21)
            .mapToObj(n -> "  - {id: j" + n + "}")
            .collect(Collectors.joining("\n")),
        "joints: [{name: " + "n".repeat(103) + "}]");
    String text = write();
    assertTrue(text.contains("#   - j21 "), text);
    assertFalse(text.contains("more:"), text);
    assertTrue(text.contains("\n# unknown how far: " + "n".repeat(103) + "\n"), text);
  }

  @Test
  void aJobThatWaitsForClampsSaysSo() throws IOException {
    aWorkingJournal();
    desk.entry(
        "2026-03-14-c.md",
        "phase: planking",
        "hours: 1",
        "todo: [{id: sand, what: Sand it, after: [glue-it]}, {id: glue-it, what: Glue it}]",
        "done: [glue-it]",
        "joints: [{name: Stem, adhesive: epoxy, spread at: 20:00}]");
    assertTrue(
        write()
            .contains(
                "#   - sand                     # Sand it; Stem is in clamps until 04:00 on 15"
                    + " March 2026\n"));
  }

  /** Every comment becomes a key that is right when its mark is taken away. */
  @Test
  void commentsBecomeKeys() throws IOException {
    aWorkingJournal();
    String text = write("x", null);
    String keys =
        text.lines()
            .map(
                line ->
                    line.startsWith("# pieces:") || line.startsWith("# done:")
                        ? line.substring(2)
                        : line.startsWith("#   strakes:")
                            ? "  strakes: 2"
                            : line.startsWith("#   - plug") ? line.substring(2) : line)
            .collect(Collectors.joining("\n", "", "\n"));
    desk.with("2026-03-14-x.md", keys.strip());
    assertEquals(List.of(), desk.problems());
    Entry entry =
        desk.journal().entries().stream()
            .filter(e -> e.file().equals("2026-03-14-x.md"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, entry.pieces().get(0).count());
    assertEquals("plug-holes", entry.done().get(0).name());
  }

  @Test
  void theNextDaysDoNotCount() throws IOException {
    aWorkingJournal();
    desk.entry(
        "2026-03-15.md", "phase: spars", "hours: 9", "pieces: {strakes: 7}", "done: [plug-holes]");
    String text = write();
    assertTrue(text.contains("\nphase: planking "), text);
    assertTrue(text.contains("# 9 of 16 are done"), text);
    assertTrue(text.contains("plug-holes"), text);
    assertFalse(text.contains("oars"), text);
  }

  @Test
  void thePhaseIsThatOfTheMostHours() throws IOException {
    desk.entry("2026-03-10.md", "hours: {fairing: 1, spars: 2, planking: 2}");
    assertTrue(write().contains("\nphase: spars "));
    desk.entry("2026-03-11.md", "phase: planking", "cost: 3");
    desk.entry("2026-03-12.md", "title: words only");
    assertTrue(write().contains("\nphase: spars "));
    desk.with("project.yaml", "name: x").entry("2026-03-13.md", "hours: {unsorted: 2, b: 1}");
    assertTrue(write().contains("\nphase: b "));
    desk.entry("2026-03-13-z.md", "hours: 2");
    assertTrue(write().contains("\nphase: b "));
  }

  @Test
  void whatWasSaidStandsInTheKeys() throws IOException {
    aWorkingJournal();
    assertEquals(
        """
        ---
        title:
        phase: fairing                 # or planking, spars
        hours: {fairing: 0:45, planking: 2:00}
        cost: 23.70
        materials:
          bought:
            - item: sanding discs
              cost: 23.70
        pieces:
          strakes: 2
        # soft: Scarf # 3, last look 22:15
        # in clamps: Knee, clamps off 04:00 on 15 March 2026
        ---

        the wood smelled of rain
        """,
        write(
            null,
            "fairing 0:45, planking 2 h, 23.70 sanding discs, two strakes, the wood smelled of"
                + " rain"));
  }

  @Test
  void otherKindsStayCommentsBesideThoseSaid() throws IOException {
    desk.entry("2026-03-10-a.md", "phase: planking", "hours: 2", "pieces: {strakes: 9}");
    assertTrue(
        write(null, "two strakes")
            .contains(
                """
                pieces:
                  strakes: 2                   # 9 of 16 are done: port 0 of 8, starboard 0 of 8
                  # ribs:                      # 0 of 12 are done
                """));
  }

  @Test
  void privateEntriesCountAndAreNamed() throws IOException {
    desk.entry(
        "2026-03-10-a.md",
        "private: true",
        "phase: planking",
        "hours: 2",
        "todo: [{id: gift, what: Carve the name}]");
    assertTrue(write().contains("#   - gift                     # Carve the name\n"));
  }

  @Test
  void longListsAreCut() throws IOException {
    desk.entry(
        "2026-03-10-a.md",
        "phase: planking",
        "hours: 2",
        "todo:",
        IntStream.rangeClosed(10, 24)
            .mapToObj(n -> "  - {id: j" + n + ", what: " + "w".repeat(200) + "}")
            .collect(Collectors.joining("\n")),
        "joints:",
        IntStream.rangeClosed(1, 14)
            .mapToObj(n -> "  - {name: " + "n".repeat(300) + "}")
            .collect(Collectors.joining("\n")));
    String text = write();
    assertTrue(text.contains("#   - j21 "), text);
    assertTrue(text.contains("\n# and 3 more: ribband ahead\n"), text);
    assertFalse(text.contains("j22"), text);
    assertTrue(text.contains("# " + "w".repeat(60) + "...\n"), text);
    assertEquals(12, text.lines().filter(line -> line.contains("unknown how far: nn")).count());
    assertTrue(text.contains("# unknown how far: " + "n".repeat(103) + "...\n"), text);
  }

  @Test
  void manyPhasesAreCut() throws IOException {
    desk.with(
        "project.yaml",
        "phases: ["
            + IntStream.rangeClosed(10, 35)
                .mapToObj(n -> "{id: p" + n + "}")
                .collect(Collectors.joining(", "))
            + "]");
    assertTrue(write().contains("p32, p33 and 2 more\n"));
    desk.entry("2026-03-10.md", "phase: p10", "hours: 1");
    assertTrue(write().contains("p33, p34 and 1 more\n"));
  }

  /** Names may hold what ends a line, opens a key or closes a fence. */
  @Test
  void hostileNamesStayInTheirComments() throws IOException {
    String evil = "\"a\\n---\\n# b: [\\t'x\\\" {\"";
    desk.with(
        "project.yaml",
        "pieces: {\"it's\": {total: 2}, 'no': {total: 3, sides: ['yes', \"o'er\"]}}",
        "time zone: America/Chicago",
        "adhesives: {epoxy: {soft for: 90 min}}");
    desk.entry(
        "2026-03-14-a.md",
        "phase: 'no-way'",
        "hours: {'no-way': 2, \"b'c\": 1}",
        "todo: [{id: \"it-s\", what: " + evil + "}, {id: 'yes', what: \"\\U0001F600\"}]",
        "joints: [{name: " + evil + ", adhesive: epoxy, spread at: 22:00}]");
    assertEquals(List.of(), desk.problems());
    assertEquals(
        """
        ---
        title: 'a --- b : ['
        phase: no-way                  # or b'c
        hours:                         # 2:45, or by phase {no-way: 2, 'b''c': 0:45}
        # pieces:
        #   'it''s':                   # 0 of 2 are done
        #   'no':                      # 0 of 3 are done: yes 0 of 2, o'er 0 of 1
        # done:
        #   - it-s                     # a --- # b: [ 'x" {
        #   - 'yes'                    # \uD83D\uDE00
        # soft: a --- # b: [ 'x" {, last look 23:15
        ---

        """,
        write("a\n---\n\u202Eb\u0007: [", null));
  }

  @Test
  void aJournalWithErrorsGivesWhatItCan() throws IOException {
    aWorkingJournal();
    desk.with("2026-03-13.md", "---", "hours: [", "---");
    desk.entry("2026-03-13-b.md", "hours: x", "phase: nowhere", "unknown: key");
    assertTrue(write().contains("#   strakes: "));
    desk.entry(
        "2026-03-13-c.md",
        "todo: [{id: a, after: [b], phase: planking}, {id: b, after: [a], phase: planking}]");
    String text = write();
    assertTrue(text.contains("#   strakes: "), text);
    assertFalse(text.contains("# done:"), text);
    desk.with("project.yaml", "name: [");
    assertTrue(write().contains("\nphase: "));
  }
}
