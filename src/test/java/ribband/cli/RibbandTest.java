package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** Every command, its help and its exit codes, run in memory. */
class RibbandTest {
  @TempDir Path folder;

  private InMemory here() {
    return new InMemory(folder);
  }

  @Test
  void aLaidJournalPassesCheckAndAddsUp() {
    assertEquals(
        new Run(
            0,
            """
            made yard/my boat/project.yaml
            made yard/my boat/2026/2026-06-01-first-night.md
            next: open them in any editor, then type
              ribband check 'yard/my boat'
            """,
            ""),
        here().run("lay", "yard/my boat"));
    assertEquals(
        new Run(0, "1 entry, no errors, no warnings\n", ""), here().run("check", "yard/my boat"));
    assertEquals(
        new Run(
            0,
            """
            month,sessions,hours,cost,hours_to_date,cost_to_date,rank_by_hours
            2026-06,0,0,0.00,0,0.00,1
            """,
            ""),
        here().run("tally", "yard/my boat", "--format", "csv"));
  }

  @Test
  void layTakesAnyNameForAFolder() {
    for (String name : List.of("it's: #1", "@boat", "-boat", "Бот", "[x]")) {
      assertEquals(0, here().run("lay", "--", name).code(), name);
      assertEquals(
          new Run(0, "1 entry, no errors, no warnings\n", ""),
          here().run("check", "--", name),
          name);
    }
  }

  @Test
  void layWritesOverNothing() throws IOException {
    here().run("lay", "boat");
    here().with("boat/project.yaml", "name: Mine\n");
    assertEquals(
        new Run(
            2,
            "",
            "ribband: boat already holds a project.yaml, so a journal is there; nothing was"
                + " changed\n"),
        here().run("lay", "boat"));
    assertEquals("name: Mine\n", Files.readString(folder.resolve("boat/project.yaml")));
    here().with("old/2026/2026-06-01-first-night.md", "mine\n");
    assertEquals("made old/project.yaml\n", here().run("lay", "old", "-q").out());
    assertEquals("mine\n", Files.readString(folder.resolve("old/2026/2026-06-01-first-night.md")));
    here().with("file", "");
    Run onAFile = here().run("lay", "file");
    assertEquals(2, onAFile.code());
    assertTrue(onAFile.err().startsWith("ribband: file cannot be made, because "), onAFile.err());
  }

  @Test
  void todayMayBeAnyDay() {
    here().run("lay", "boat", "--today", "2026-07-04");
    assertEquals(
        "2026/2026-07-04-first-night.md:1:1: warning: the date 2026-07-04 is in the future, today is"
            + " 2026-06-01; check the date\n",
        here().run("check", "boat").err());
    assertEquals("", here().run("check", "boat", "--today", "2026-07-04").err());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: --today \"4 July\" is not a date; write year-month-day, as 2026-03-14\n"),
        here().run("check", "boat", "--today", "4 July"));
  }

  @Test
  void aJournalIsFoundFromWithinIt() throws IOException {
    here().run("lay", "boat");
    assertEquals(0, new InMemory(folder.resolve("boat/2026")).run("check").code());
  }

  @Test
  void whereThereIsNoJournalItSaysHowToBeginOne() throws IOException {
    here().with("empty/note.txt", "");
    assertEquals(
        new Run(
            2,
            "",
            "ribband: empty holds no project.yaml; begin a journal there with: ribband lay empty\n"),
        here().run("check", "empty"));
    assertEquals(
        new Run(
            2,
            "",
            "ribband: there is no folder the boat; begin a journal there with: ribband lay 'the"
                + " boat'\n"),
        here().run("tally", "the boat"));
    Run nowhere = here().run("check");
    assertEquals(2, nowhere.code());
    assertEquals(
        "ribband: no project.yaml lies here or in a folder above; name the journal's folder, or"
            + " begin one with: ribband lay my-boat\n",
        nowhere.err());
  }

  private InMemory faulty() throws IOException {
    return here()
        .with("project.yaml", "phases: [planking]\n")
        .with("2026-03-14-a.md", "---\nhours: 2;45\nphas: x\n---\n")
        .with("2026-03-15-b.md", "---\nhours: 1\n---\n");
  }

  @Test
  void allProblemsOfAllFilesAreToldInOneRun() throws IOException {
    assertEquals(
        new Run(
            1,
            "",
            """
            2026-03-14-a.md:2:8: error: hours "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
            2026-03-14-a.md:3:1: error: unknown key "phas"; did you mean "phase"?
            2026-03-15-b.md:2:1: warning: hours of this entry name no phase and count under unsorted; write phase: planking
            2 errors, 1 warning in 2 entries
            """),
        faulty().run("check"));
  }

  @Test
  void quietLeavesWarningsOut() throws IOException {
    assertEquals(
        """
        2026-03-14-a.md:2:8: error: hours "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
        2026-03-14-a.md:3:1: error: unknown key "phas"; did you mean "phase"?
        2 errors, 1 warning in 2 entries
        """,
        faulty().run("check", "-q").err());
  }

  @Test
  void problemsAreAListingToo() throws IOException {
    assertEquals(
        new Run(
            1,
            """
            [
              {"file": "2026-03-14-a.md", "line": 2, "column": 8, "severity": "error", "sentence": "hours \\"2;45\\" is not a length of time; write 2:45, 2.75 or 2 3/4"},
              {"file": "2026-03-14-a.md", "line": 3, "column": 1, "severity": "error", "sentence": "unknown key \\"phas\\"; did you mean \\"phase\\"?"},
              {"file": "2026-03-15-b.md", "line": 2, "column": 1, "severity": "warning", "sentence": "hours of this entry name no phase and count under unsorted; write phase: planking"}
            ]
            """,
            ""),
        faulty().run("check", "--format", "json"));
    assertEquals(
        """
        file,line,column,severity,sentence
        2026-03-14-a.md,2,8,error,"hours ""2;45"" is not a length of time; write 2:45, 2.75 or 2 3/4"
        """,
        faulty()
            .run("check", "--format", "csv")
            .out()
            .lines()
            .limit(2)
            .map(l -> l + "\n")
            .reduce("", String::concat));
  }

  @Test
  void aTerminalShowsTheFaultUnderItsLine() throws IOException {
    assertEquals(
        """
        2026-03-14-a.md:2:8: error: hours "2;45" is not a length of time; write 2:45, 2.75 or 2 3/4
            hours: 2;45
                   ^
        2026-03-14-a.md:3:1: error: unknown key "phas"; did you mean "phase"?
            phas: x
            ^
        2 errors, 1 warning in 2 entries
        """,
        faulty().watched(Map.of("NO_COLOR", "1")).run("check", "-q").err());
  }

  @Test
  void colourIsForTerminalsUnlessNoColorOrAnOptionSaysOtherwise() throws IOException {
    assertTrue(colored(faulty().watched(Map.of()).run("check")));
    assertFalse(colored(faulty().run("check")));
    assertFalse(colored(faulty().watched(Map.of("NO_COLOR", "1")).run("check")));
    assertTrue(
        colored(faulty().watched(Map.of("NO_COLOR", "1")).run("check", "--color", "always")));
    assertFalse(colored(faulty().watched(Map.of()).run("check", "--color", "never")));
    assertEquals(2, faulty().run("check", "--color", "blue").code());
  }

  private static boolean colored(Run run) {
    return run.err().contains("\u001b[");
  }

  @Test
  void slipsOnTheCommandLineAreAnsweredInTwoLines() {
    wrong("there is no command \"chek\"; did you mean \"check\"?", "ribband", "chek");
    wrong(
        "there is no option \"--formt\"; did you mean --format?",
        "ribband tally",
        "tally",
        "--formt=csv");
    wrong("there is no option \"-x\"", "ribband check", "check", "-x");
    wrong("lay needs DIR, the journal's folder", "ribband lay", "lay");
    String into = "papers needs --into FOLDER, the papers' folder: a new one, or an empty one";
    wrong(into, "ribband papers", "papers");
    wrong(into, "ribband papers", "papers", "boat", "--into");
    wrong("--by needs a value, WHAT", "ribband tally", "tally", "--by");
    wrong("--by stands twice; keep one", "ribband tally", "tally", "--by", "year", "--by", "week");
    wrong("--card takes no value; write it alone", "ribband recap", "recap", "--card=wide");
    wrong(
        "\"boat\" is one argument too many; put quotes round a name with spaces",
        "ribband check",
        "check",
        "my",
        "boat");
  }

  private void wrong(String sentence, String command, String... arguments) {
    assertEquals(
        new Run(2, "", "ribband: " + sentence + "\nhow to call it: " + command + " --help\n"),
        here().run(arguments));
  }

  @Test
  void withoutACommandTheHelpIsShown() {
    Run run = here().run();
    assertEquals(2, run.code());
    assertEquals(here().run("--help").out(), run.err());
    for (String name :
        List.of(
            "lay", "tonight", "bring", "check", "publish", "watch", "tally", "recap", "joints",
            "stock", "ahead", "mix", "boards", "papers")) {
      assertTrue(run.err().contains("\n  " + name + " "), name);
    }
  }

  @Test
  void everyHelpFitsAScreenAndShowsExamples() {
    for (String name :
        List.of(
            "lay", "tonight", "bring", "check", "publish", "watch", "tally", "recap", "joints",
            "stock", "ahead", "mix", "boards", "papers")) {
      Run run = here().run(name, "--help");
      assertEquals(0, run.code());
      assertTrue(run.out().contains("\nType     ribband " + name + " "), run.out());
      assertTrue(run.out().contains("\nExamples\n  ribband " + name), run.out());
      assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }
    assertTrue(
        here()
            .run("tally", "--help")
            .out()
            .contains("begin with this day, month or year: 2026-03-14, 2026-03 or"));
  }

  @Test
  void theVersionNamesToolAndJava() {
    Run run = here().run("--version");
    assertEquals(0, run.code());
    assertTrue(
        run.out().matches("ribband [^,]+, Java " + System.getProperty("java.version") + "\n"),
        run.out());
  }

  @Test
  void diskAndLocaleAreTheSurroundings() {
    told(3, "/x/y: permission denied", new UncheckedIOException(new AccessDeniedException("/x/y")));
    told(
        3,
        "/x/y: No space left on device",
        new java.nio.file.FileSystemException("/x/y", null, "No space left on device"));
    told(
        3,
        "this machine's locale cannot say the file name \"b\uFFFDr.jpg\"; run again with"
            + " LC_ALL=C.UTF-8 set",
        new InvalidPathException("b\uFFFDr.jpg", "unmappable"));
  }

  private void told(int code, String line, Throwable failure) {
    StringWriter err = new StringWriter();
    Surroundings around = here().surroundings(new StringWriter(), err);
    assertEquals(code, new Failures(around, "ribband").tell(failure, List.of()));
    around.err().flush();
    assertEquals("ribband: " + line + "\n", err.toString());
  }

  @Test
  void aDefectLeavesAReportAndNoStackTrace() throws IOException {
    StringWriter err = new StringWriter();
    Surroundings around = here().surroundings(new StringWriter(), err);
    int code =
        new Failures(around, "ribband 1").tell(new IllegalStateException("odd"), List.of("tally"));
    around.err().flush();
    assertEquals(70, code);
    Path report;
    try (Stream<Path> files = Files.list(folder)) {
      report = files.filter(file -> file.toString().endsWith(".txt")).findFirst().orElseThrow();
    }
    assertEquals(
        "ribband: this is a defect of ribband, not of your journal (IllegalStateException); a"
            + " report to send on is in "
            + report
            + "\n",
        err.toString());
    assertTrue(
        Files.readString(report)
            .startsWith(
                "ribband 1\narguments [tally]\njava.lang.IllegalStateException: odd\n\tat "));
  }

  @Test
  void aFullDiskBehindStandardOutputIsTold() {
    StringWriter err = new StringWriter();
    Surroundings around = here().surroundings(new StringWriter(), err);
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("No space left on device");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Surroundings broken =
        new Surroundings(
            new PrintWriter(full),
            around.err(),
            around.screen(),
            around.folder(),
            around.clock(),
            around.environment(),
            around.nameEncoding(),
            around.temporary(),
            around.editor());
    assertEquals(3, new Ribband(broken).run("--version"));
    assertEquals(
        "ribband: standard output cannot be written to; is the disk full?\n", err.toString());
  }
}
