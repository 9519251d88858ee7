package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;
import ribband.photo.Camera;

/** What the builder types and reads; what the entry holds is tested in {@code desk/TonightTest}. */
class TonightCommandTest {
  private static final String NOTHING = "nothing is soft: nothing to look at before bed\n";

  @TempDir Path temporary;
  private Path folder;
  private InMemory memory;

  @BeforeEach
  void skiff() throws IOException {
    folder = temporary.toRealPath().resolve("skiff");
    memory =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Dunlin
                currency: USD
                time zone: America/Chicago
                phases: [{id: planking}, {id: fairing}]
                adhesives:
                  epoxy: {open time: 60 min, soft for: 90 min, clamp time: 8 h, full cure: 7 days}
                pieces: {strakes: {total: 4, phase: planking}}
                """)
            .with(
                "2026/2026-05-30-third.md",
                "---\nphase: planking\nhours: 2\npieces: {strakes: 3}\n---\n");
  }

  private Run tonight(String... words) {
    List<String> all = new ArrayList<>(List.of("tonight"));
    all.addAll(List.of(words));
    return memory.run(all.toArray(String[]::new));
  }

  private String text(String file) throws IOException {
    return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
  }

  private static String check(InMemory in) {
    return in.run("check").out();
  }

  @Test
  void aNightIsMadeAndItsPathIsTheResult() throws IOException {
    assertEquals(new Run(0, "2026/2026-06-01-planking.md\n", NOTHING), tonight());
    assertEquals(
        """
        ---
        title:
        phase: planking                # or fairing
        hours:                         # 2:45, or by phase {planking: 2, fairing: 0:45}
        # pieces:
        #   strakes:                   # 3 of 4 are done
        ---

        """,
        text("2026/2026-06-01-planking.md"));
    assertEquals("2 entries, no errors, no warnings\n", check(memory));
  }

  @Test
  void thePathCanBeOpenedFromHere() throws IOException {
    InMemory above = new InMemory(temporary.toRealPath());
    assertEquals("skiff/2026/2026-06-01-planking.md\n", above.run("tonight", "skiff", "-q").out());
    assertEquals(
        folder + "/2026/2026-06-01-planking-2.md\n",
        above.run("tonight", folder.toString(), "-q").out());
    InMemory inside = new InMemory(Files.createDirectories(folder.resolve("receipts")));
    assertEquals(
        new Run(0, folder + "/2026/2026-06-01-planking-3.md\n", ""), inside.run("tonight", "-q"));
    assertEquals("2026/2026-06-01-planking-4.md\n", tonight("-q").out());
    assertEquals("./2026/2026-06-01-planking-5.md\n", tonight(".", "-q").out());
  }

  @Test
  void aSecondEntryOfTheNightSaysSo() {
    tonight("--title", "Garboards on");
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            "this night has 1 entry already: 2026/2026-06-01-garboards-on.md\n" + NOTHING),
        tonight());
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking-2.md\n",
            "this night has 2 entries already: 2026/2026-06-01-garboards-on.md and"
                + " 2026/2026-06-01-planking.md\n"
                + NOTHING),
        tonight());
  }

  @Test
  void pastMidnightItIsStillTheNightBefore() {
    memory.at("2026-06-02T03:59:59");
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            "before 4 in the morning: this is the night of 1 June 2026\n" + NOTHING),
        tonight());
    memory.at("2026-06-02T04:00");
    assertEquals(new Run(0, "2026/2026-06-02-planking.md\n", NOTHING), tonight());
    memory.at("2027-01-01T00:00");
    assertEquals(new Run(0, "2026/2026-12-31-planking.md\n", ""), tonight("-q"));
  }

  @Test
  void aDayThatIsNamedIsTheNight() {
    memory.at("2026-06-02T01:00");
    assertEquals(
        new Run(0, "2026/2026-05-31-planking.md\n", NOTHING), tonight("--date", "2026-05-31"));
    assertEquals(
        new Run(0, "2026/2026-06-02-planking.md\n", NOTHING), tonight("--today", "2026-06-02"));
    assertEquals(
        new Run(0, "2026/2026-05-29.md\n", ""),
        tonight("-q", "--today", "2026-06-02", "--date", "2026-05-29"));
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --date \"1 June\" is not a date; write year-month-day, as 2026-03-14\n"),
        tonight("--date", "1 June"));
  }

  @Test
  void aNightAheadIsWrittenAndSaidToBe() {
    assertEquals(
        new Run(
            0,
            "2026/2026-07-01-planking.md\n",
            "2026/2026-07-01-planking.md:1:1: warning: the date 2026-07-01 is in the future, today"
                + " is 2026-06-01; check the date\n"
                + NOTHING),
        tonight("--date", "2026-07-01"));
  }

  @Test
  void aTitleNamesTheFile() throws IOException {
    assertEquals("2026/2026-06-01-plank-3.md\n", tonight("--title", "Plank #3").out());
    assertTrue(text("2026/2026-06-01-plank-3.md").startsWith("---\ntitle: 'Plank #3'\n"));
    assertEquals("2026/2026-06-01-planking.md\n", tonight("--title", " ").out());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --title \""
                + "a".repeat(60)
                + "...\" is longer than 200 letters; write the rest into the text\n"),
        tonight("--title", "a".repeat(201)));
    assertEquals(0, tonight("--title", "a".repeat(200)).code());
  }

  @Test
  void whatWasSaidIsToldAndWritten() throws IOException {
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            """
            understood:
              planking 2¾ h
              $23.70 for sanding discs
              1 strake
              into the text: "the wood smelled of rain"
            """
                + NOTHING),
        tonight(
            "--say",
            "planking 2:45, 23.70 sanding discs, one strake on, the wood smelled of rain"));
    assertEquals(
        """
        ---
        title:
        phase: planking                # or fairing
        hours: 2:45
        cost: 23.70
        materials:
          bought:
            - item: sanding discs
              cost: 23.70
        pieces:
          strakes: 1                   # 3 of 4 are done
        ---

        the wood smelled of rain
        """,
        text("2026/2026-06-01-planking.md"));
    assertEquals("2 entries, no errors, no warnings\n", check(memory));
    assertTrue(tonight("--say", " ").err().endsWith("\nnothing was said\n" + NOTHING));
    assertEquals("", tonight("-q", "--say", "planking 1 h").err());
  }

  @Test
  void whatCannotBeTakenBackIsText() throws IOException {
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            """
            understood:
              1 strake, taken back
              into the text: "minus three strakes": takes back more than the 2 done by then
              into the text: "it rained hard"
              into the text: "removed strake 3": takes back number 3, which was not done by then
            """
                + NOTHING),
        tonight("--say", "-1 strake, minus three strakes, it rained hard, removed strake 3"));
    assertTrue(
        text("2026/2026-06-01-planking.md")
            .endsWith(
                """
                pieces:
                  strakes: -1                  # 3 of 4 are done
                ---

                minus three strakes

                it rained hard

                removed strake 3
                """),
        text("2026/2026-06-01-planking.md"));
    assertEquals("2 entries, no errors, no warnings\n", check(memory));
    // What was done later was not done by then.
    assertEquals(
        """
        understood:
          into the text: "-1 strake": takes back more than the 0 done by then
        """
            + NOTHING,
        tonight("--date", "2026-05-29", "--say", "-1 strake").err());
  }

  @Test
  void whatDoesNotFitTheJournalIsWrittenAndToldWithItsCure() throws IOException {
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            """
            understood:
              2 strakes
            2026/2026-06-01-planking.md:6:12: error: strakes come to 5 with this, more than the 4 there are in project.yaml; lower this count, or raise the total
            the journal has 1 error; see it with: ribband check
            2026/2026-06-01-planking.md has errors: what it glued may not all be known here
            """),
        tonight("--say", "two strakes"));
    assertTrue(text("2026/2026-06-01-planking.md").contains("\n  strakes: 2 "));
  }

  @Test
  void aJournalWithErrorsTakesTonightAllTheSame() throws IOException {
    memory
        .with("2026/2026-05-31.md", "---\nhours: x\nphase: nowhere\n---\n")
        .with("2026/2026-05-31-b.md", "---\nhours: [\n---\n");
    Run run = new InMemory(temporary.toRealPath()).run("tonight", "skiff");
    assertEquals(
        new Run(
            0,
            "skiff/2026/2026-06-01-planking.md\n",
            """
            the journal has 3 errors; see them with: ribband check skiff
            2026/2026-05-31-b.md has errors: what it glued is not known here
            2026/2026-05-31.md has errors: what it glued may not all be known here
            """),
        run);
    memory.with("project.yaml", "name: [\n");
    Run unread = tonight("--say", "planking 2 h, two strakes");
    assertEquals("2026/2026-06-01-planking-2.md\n", unread.out());
    assertEquals(0, unread.code());
    assertTrue(unread.err().contains("see them with: ribband check\n"), unread.err());
    assertTrue(
        unread.err().contains("\nproject.yaml has errors: times of adhesives are not known\n"),
        unread.err());
    assertFalse(unread.err().contains(NOTHING), unread.err());
    assertTrue(text("2026/2026-06-01-planking-2.md").contains("\nphase: planking"));
    Files.delete(folder.resolve("project.yaml"));
    assertEquals(2, tonight().code());
  }

  private Path card() throws IOException {
    Path card = temporary.resolve("my card");
    Camera.shoot(card.resolve("IMG_1.JPG"), 16, 12, 1, "2026:06:01 20:00:00");
    Camera.shoot(card.resolve("IMG_2.JPG"), 17, 12, 1, "2026:05:30 20:00:00");
    Files.writeString(card.resolve("a.mov"), "x");
    return card;
  }

  @Test
  void picturesAreBroughtInAndTheOthersToldWithWhy() throws IOException {
    card();
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            """
            1 picture in the entry's folder
            left out 2: 1 film, 1 taken before 04:00 on 31 May 2026
            """
                + NOTHING),
        tonight("--photos", "../my card"));
    assertTrue(Files.exists(folder.resolve("2026/2026-06-01-planking/IMG_1.JPG")));
    assertEquals("2 entries, no errors, no warnings\n", check(memory));
    assertEquals(
        """
        this night has 1 entry already: 2026/2026-06-01-planking.md
        no picture of this night was found
        left out 3: 1 film, 1 taken before 04:00 on 31 May 2026, 1 already in the journal
        """
            + NOTHING,
        tonight("--photos", card().toString()).err());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --photos \"../none\" is not there; name the folder that holds the pictures\n"),
        tonight("--photos", "../none"));
  }

  @Test
  void whatTheDiskRefusesIsToldInOneLine() throws IOException {
    memory.with("2027", "a file");
    Run run = tonight("--date", "2027-01-01");
    assertEquals(3, run.code());
    assertEquals("", run.out());
    assertEquals(
        "ribband: cannot make the folder "
            + folder.resolve("2027")
            + ": "
            + folder.resolve("2027")
            + " is already there\n",
        run.err());
    assertEquals(
        "not written: planking 2:45,\\u0007 rain\n" + run.err(),
        tonight("--date", "2027-01-01", "--say", "planking 2:45,\u0007 rain").err());
    assertEquals(run, tonight("--date", "2027-01-01", "--say", " "));
  }

  private final List<List<String>> opened = new ArrayList<>();

  /** Writes a joint, as somebody at the keyboard would. */
  private int write(List<String> command, String keys) throws IOException {
    opened.add(command);
    Path file = Path.of(command.get(command.size() - 1));
    Files.writeString(file, "---\n" + keys + "---\n", StandardOpenOption.TRUNCATE_EXISTING);
    return 1;
  }

  @Test
  void onATerminalTheEditorOpensAndItsEndIsWaitedFor() throws IOException {
    memory
        .at("2026-06-01T21:00")
        .watched(Map.of("VISUAL", "my-editor --wait", "EDITOR", "other", "NO_COLOR", "1"))
        .editor(
            command ->
                write(
                    command,
                    "phase: planing\n"
                        + "joints: [{name: Scarf, adhesive: epoxy, spread at: 20:25,"
                        + " clamped at: 20:40}]\n"));
    Run run = tonight();
    String path = folder + "/2026/2026-06-01-planking.md";
    assertEquals(List.of(List.of("my-editor", "--wait", path)), opened);
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            """
            the editor ended with 1; the entry is as it was left
            2026/2026-06-01-planking.md:2:8: error: phase "planing" is not among the phases of project.yaml; did you mean "planking"?
                phase: planing
                       ^
            the journal has 1 error; see it with: ribband check
            before bed (America/Chicago):
              21:40  Scarf: last look, in 40 min; soft until 21:55
            2026/2026-06-01-planking.md has errors: what it glued may not all be known here
            A cup full of mixed resin heats up by itself: mix small batches, spread them out
            at once, leave what is left over outdoors on concrete until it is cold.
            The maker's data sheet and local rules govern.
            """),
        run);
  }

  /** Reckoned as on that day, at the time by the clock. */
  @Test
  void anotherTodayIsAsLateAsTheClock() throws IOException {
    memory.with(
        "2026/2026-03-14.md",
        "---\njoints: [{name: Scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40}]\n---\n");
    memory.at("2026-06-01T21:00");
    assertTrue(tonight("--today", "2026-03-14").err().contains("  21:40  Scarf: last look, in 40"));
    assertEquals(NOTHING, tonight("--date", "2026-03-15").err());
  }

  @Test
  void anEditorThatCannotBeStartedIsTold() {
    memory
        .watched(Map.of("EDITOR", "none -x"))
        .editor(
            command -> {
              throw new IOException("no such program");
            });
    assertEquals(
        new Run(
            0,
            "2026/2026-06-01-planking.md\n",
            "the editor none cannot be started; set VISUAL to one that can, and open the entry by"
                + " hand\n"
                + NOTHING),
        tonight());
  }

  @Test
  void withoutATerminalOrAnEditorNoneIsOpened() {
    assertEquals(0, tonight().code());
    memory.watched(Map.of());
    assertEquals(new Run(0, "2026/2026-06-01-planking-2.md\n", ""), tonight("-q"));
  }

  @Test
  void aRealProcessIsWaitedForAndGetsTheFile() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
    Editor editor = Editor.process();
    Path file = Files.writeString(temporary.resolve("it's here.md"), "x");
    assertEquals(
        3, editor.run(List.of("/bin/sh", "-c", "echo y > \"$0\"; exit 3", file.toString())));
    assertEquals("y\n", Files.readString(file));
  }

  @Test
  void anEntryThatTheEditorTookAwayIsNoTrouble() {
    memory
        .watched(Map.of("EDITOR", "ed"))
        .editor(
            command -> {
              Files.delete(Path.of(command.get(1)));
              return 0;
            });
    assertEquals(new Run(0, "2026/2026-06-01-planking.md\n", NOTHING), tonight());
  }
}
