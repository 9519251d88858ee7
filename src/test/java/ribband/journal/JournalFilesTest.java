package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.problem.Problem;

/**
 * Files as they come: encodings, sizes, links, devices, odd names; what is read and what is not.
 */
class JournalFilesTest {
  private static final String ENTRY = "2026/2026-03-14-a.md";

  @TempDir Path outside;
  private Path root;

  @BeforeEach
  void layDown() throws IOException {
    root = Files.createDirectory(outside.resolve("journal"));
    write("project.yaml", "name: Dunlin\ncurrency: USD\nphases: [planking]\n");
  }

  private void write(String file, String text) throws IOException {
    JournalFiles.write(root, file, text.getBytes(StandardCharsets.UTF_8));
  }

  private void tells(String... lines) throws IOException {
    assertEquals(
        String.join("\n", lines), String.join("\n", JournalFiles.told(JournalFiles.read(root))));
  }

  private List<String> entries() throws IOException {
    return JournalFiles.read(root).journal().entries().stream().map(Entry::file).toList();
  }

  /** The second entry of a night is named -2, and a hyphen sorts before a point. */
  @Test
  void entriesOfOneDayStandInTheOrderOfTheirNamesWithoutEndings() throws IOException {
    for (String file : List.of("14-a-2.md", "14-a.markdown", "14-a-10.md", "14.md", "13-b.md")) {
      write("2026/2026-03-" + file, "---\nhours: 1\nphase: planking\n---\n");
    }
    assertEquals(
        List.of(
            "2026/2026-03-13-b.md",
            "2026/2026-03-14.md",
            "2026/2026-03-14-a.markdown",
            "2026/2026-03-14-a-10.md",
            "2026/2026-03-14-a-2.md"),
        entries());
  }

  @Test
  void theIssuesExampleIsToldWordForWord() throws IOException {
    write(
        "2026/2026-03-14-garboard.md",
        "---\ntitle: Garboards on\nphase: planking\nhours: 2;45\n---\n");
    tells(
        "2026/2026-03-14-garboard.md:4:8: error: hours \"2;45\" is not a length of time; write"
            + " 2:45, 2.75 or 2 3/4");
  }

  @Test
  void emptyAndBlankEntriesAreErrors() throws IOException {
    for (String text : List.of("", " \n\t\n", "\uFEFF", "\r\n\r\n")) {
      write(ENTRY, text);
      tells(
          ENTRY
              + ":1:1: error: the entry is empty; write --- above and below its keys, and a few words");
    }
  }

  @Test
  void carriageReturnsAloneAreNoLineEnds() throws IOException {
    write(ENTRY, "---\rhours: 2\r---\r");
    tells(
        ENTRY + ":1:4: error: a line ends with CR alone; save the file with LF or CRLF line ends");
  }

  @Test
  void aFileWithoutItsLastLineEndIsFine() throws IOException {
    write(ENTRY, "---\nphase: planking\nhours: 2\n---");
    tells();
  }

  @Test
  void oneEntryInEveryFormOfTextIsOneValue() throws IOException {
    String text =
        "---\nphase: planking\nhours: 2:45\ncost: 88.20\nlesson: |\n  a\n  b\n---\nOne\n\nTwo\n";
    write(ENTRY, text);
    Entry plain = JournalFiles.read(root).journal().entries().get(0);
    for (String form :
        List.of(
            "\uFEFF" + text, text.replace("\n", "\r\n"), "\uFEFF" + text.replace("\n", "\r\n"))) {
      write(ENTRY, form);
      assertEquals(plain, JournalFiles.read(root).journal().entries().get(0));
    }
  }

  @Test
  void wordsForOneLineOfPrintAreOneLine() throws IOException {
    write(ENTRY, "---\ntitle: >\n  Garboards\n\n  on\nlesson: |\n  a\n  b\n---\n");
    Entry entry = JournalFiles.read(root).journal().entries().get(0);
    assertEquals("Garboards on", entry.title());
    assertEquals(List.of("a\nb"), entry.lessons());
  }

  @Test
  void aFenceThatIsNeverClosedIsToldWhereItOpens() throws IOException {
    write(ENTRY, "---\nhours: 2\n\nSome words\n");
    tells(
        ENTRY
            + ":1:1: error: the fence --- that opens here is never closed; write --- on a line of"
            + " its own below the keys");
  }

  @Test
  void aSecondFenceInTheTextIsText() throws IOException {
    write(ENTRY, "---\nphase: planking\n---\nabove\n\n---\nbelow\n");
    tells();
    Entry entry = JournalFiles.read(root).journal().entries().get(0);
    assertEquals("above\n\n---\nbelow\n", entry.text());
    assertEquals(4, entry.textLine());
  }

  @Test
  void latin1IsToldWithItsPlace() throws IOException {
    JournalFiles.write(
        root, ENTRY, "---\ntitle: é geglättet\n---\n".getBytes(StandardCharsets.ISO_8859_1));
    tells(ENTRY + ":2:8: error: byte E9 is not UTF-8; save the file as UTF-8");
    JournalFiles.write(
        root, ENTRY, new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'a', (byte) 0xFC});
    tells(ENTRY + ":1:2: error: byte FC is not UTF-8; save the file as UTF-8");
  }

  @Test
  void utf16IsToldAsSuch() throws IOException {
    for (var charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      JournalFiles.write(root, ENTRY, "\uFEFF---\nhours: 2\n---\n".getBytes(charset));
      tells(ENTRY + ":1:1: error: the file is not UTF-8 but UTF-16; save it as UTF-8");
    }
    JournalFiles.write(root, ENTRY, "---\n---\n".getBytes(StandardCharsets.UTF_16BE));
    tells(
        ENTRY
            + ":1:1: error: control character 0000 stands here; take it out, and 7 more below it");
  }

  @Test
  void controlCharactersAreToldInKeysAndText() throws IOException {
    write(ENTRY, "---\r\ntitle: a\0b\r\n---\r\n");
    tells(ENTRY + ":2:9: error: control character 0000 stands here; take it out");
    write(ENTRY, "---\n---\n😀 two\u0007 and \u001b[31m\n");
    tells(
        ENTRY
            + ":3:6: error: control character 0007 stands here; take it out, and 1 more below it");
    write(ENTRY, "---\ntitle: a\u2028hours: 2\n---\n");
    tells(ENTRY + ":2:9: error: control character 2028 stands here; take it out");
  }

  @Test
  void charactersThatTurnTheReadingDirectionAreWarnedOfAndShownHarmlessly() throws IOException {
    write(ENTRY, "---\nphase: plank\u202Eing\n---\n");
    tells(
        ENTRY
            + ":2:8: error: phase \"plank\\u202eing\" is not among the phases of project.yaml; did"
            + " you mean \"planking\"?",
        ENTRY
            + ":2:13: warning: an invisible character that turns the reading direction stands"
            + " here; take it out");
  }

  @Test
  void hugeFilesAreRefusedBeforeTheyAreParsed() throws IOException {
    write(ENTRY, "---\ntitle: " + "a".repeat(4 << 20) + "\n---\n");
    tells(
        ENTRY
            + ":1:1: error: the file is larger than 1 MiB; split it into several entries of the same date");
    write(ENTRY, "---\ntitle: " + "a".repeat(64 << 10) + "\n---\n");
    tells(ENTRY + ":2:1: error: the keys are larger than 64 KiB; write fewer");
    write(ENTRY, "---\n---\n" + "a".repeat((1 << 20) + 1));
    tells(ENTRY + ":3:1: error: the text is larger than 1 MiB; split the entry in two");
    write(ENTRY, "---\n---\n" + "a".repeat(1 << 20));
    tells();
  }

  @Test
  void longNumbersNeverReachArithmetic() throws IOException {
    for (String figures : List.of("1".repeat(1200), "0." + "1".repeat(1200), "1e1000000000")) {
      write(ENTRY, "---\nphase: planking\nhours: " + figures + "\ncost: " + figures + "\n---\n");
      String shown = figures.length() > 60 ? figures.substring(0, 60) + "..." : figures;
      tells(
          ENTRY
              + ":3:8: error: hours \""
              + shown
              + "\" "
              + (figures.startsWith("0")
                  ? "has more than 4 decimal places; write it to the minute, as 2:45"
                  : "is not a length of time; write 2:45, 2.75 or 2 3/4"),
          ENTRY
              + ":4:7: error: cost \""
              + shown
              + "\" is not an amount of money; write figures alone, as 88.20");
    }
  }

  @Test
  void deepNestingIsRefusedAtItsPlaceOnASmallStack() throws Exception {
    String sentence = ": error: this nests more than 20 deep; write it flatter";
    write(ENTRY, "---\ntodo: " + "[".repeat(21) + "]".repeat(21) + "\n---\n");
    tells(ENTRY + ":2:27" + sentence);
    write(ENTRY, "---\ntodo: " + "[".repeat(60_000) + "\n---\n");
    String flow = onSmallStack();
    assertEquals(ENTRY + ":2:27" + sentence, flow);
    write(ENTRY, "---\ntodo:\n  " + "- ".repeat(30_000) + "a\n---\n");
    assertEquals(ENTRY + ":3:43" + sentence, onSmallStack());
    write(ENTRY, "---\ntodo: " + "[".repeat(100_000) + "\n---\n");
    assertEquals(
        ENTRY + ":2:1: error: the keys are larger than 64 KiB; write fewer", onSmallStack());
  }

  private String onSmallStack() throws InterruptedException {
    List<String> told = new ArrayList<>();
    List<Throwable> thrown = new ArrayList<>();
    Thread thread =
        new Thread(
            null,
            () -> {
              try {
                JournalFiles.read(root).problems().stream()
                    .map(Problem::toString)
                    .forEach(told::add);
              } catch (IOException e) {
                told.add(e.toString());
              }
            },
            "small",
            256 << 10);
    thread.setUncaughtExceptionHandler((t, e) -> thrown.add(e));
    thread.start();
    thread.join();
    assertEquals(List.of(), thrown);
    return String.join("\n", told);
  }

  @Test
  void anAliasBombIsRefusedAtItsFirstAnchor() throws IOException {
    StringBuilder bomb = new StringBuilder("---\na0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 10; i++) {
      String one = "*a" + (i - 1);
      bomb.append(
          "a" + i + ": &a" + i + " [" + String.join(", ", Collections.nCopies(9, one)) + "]\n");
    }
    write(ENTRY, bomb + "---\n");
    tells(
        ENTRY
            + ":2:5: error: a text cannot begin with &, which means an anchor in YAML and is not"
            + " supported; put quotes round it");
  }

  @Test
  void manyProblemsAreAllToldInTheOrderOfTheirPlaces() throws IOException {
    write("2026/2026-03-16-c.md", "---\nphase: x\nhours: y\n---\n");
    write("2026/2026-03-15-b.md", "---\nhours: y\nphase: x\nwaht: z\n---\n");
    List<Problem> problems = JournalFiles.read(root).problems();
    assertEquals(5, problems.size());
    assertEquals(problems.stream().sorted().toList(), problems);
    assertEquals(
        "[2026/2026-03-15-b.md:2:8, 2026/2026-03-15-b.md:3:8, 2026/2026-03-15-b.md:4:1,"
            + " 2026/2026-03-16-c.md:2:8, 2026/2026-03-16-c.md:3:8]",
        problems.stream().map(Problem::place).toList().toString());
  }

  @Test
  void dottedFoldersTheOutputAndOtherSitesAreNotRead() throws IOException {
    write(".git/2026-03-14-a.md", "");
    write("2026/.drafts/2026-03-14-a.md", "");
    write("2026/.2026-03-14-a.md", "");
    write("site/2026-03-14-a.md", "");
    write("old-site/site-files.txt", "");
    write("old-site/deep/2026-03-14-a.md", "");
    write("fine/deep/er/2026-03-14-a.md", "---\n---\n");
    assertEquals(List.of("fine/deep/er/2026-03-14-a.md"), entries());
    tells();
  }

  @Test
  void linksThatLeaveTheJournalAreNotRead() throws IOException {
    Path secret =
        Files.writeString(outside.resolve("2026-03-14-secret.md"), "---\nhours: 2;45\n---\n");
    Path picture = Files.writeString(outside.resolve("secret.jpg"), "x");
    Files.createSymbolicLink(root.resolve("2026-03-14-link.md"), secret);
    Files.createSymbolicLink(root.resolve("away"), outside);
    Files.createSymbolicLink(root.resolve("loop"), root);
    Files.createSymbolicLink(root.resolve("gone.jpg"), outside.resolve("nothing"));
    Files.createSymbolicLink(root.resolve("link.jpg"), picture);
    write("plan.jpg", "x");
    Files.createSymbolicLink(root.resolve("inside.jpg"), root.resolve("plan.jpg"));
    write(ENTRY, "---\nphotos: [link.jpg, gone.jpg, away/secret.jpg, inside.jpg]\n---\n");
    String sentence = " is no plain file of the journal; copy the picture itself into the journal";
    tells(
        ENTRY + ":2:10: error: picture \"link.jpg\"" + sentence,
        ENTRY + ":2:20: error: picture \"gone.jpg\"" + sentence,
        ENTRY + ":2:30: error: picture \"away/secret.jpg\"" + sentence);
  }

  @Test
  void pipesAndDevicesAreNeverOpened() throws Exception {
    Files.createDirectories(root.resolve("2026"));
    for (String pipe : List.of("2026/2026-03-13-pipe.md", "2026/pipe.jpg")) {
      Process made = new ProcessBuilder("mkfifo", root.resolve(pipe).toString()).start();
      assertEquals(0, made.waitFor());
    }
    Files.createSymbolicLink(root.resolve("2026/zero.jpg"), Path.of("/dev/zero"));
    Files.createDirectory(root.resolve("2026/2026-03-12-folder.md"));
    write(ENTRY, "---\nphotos: [pipe.jpg, zero.jpg]\n---\n");
    String sentence = " is no plain file of the journal; copy the picture itself into the journal";
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () ->
            tells(
                ENTRY + ":2:10: error: picture \"pipe.jpg\"" + sentence,
                ENTRY + ":2:20: error: picture \"zero.jpg\"" + sentence));
  }

  @Test
  void aPipeInPlaceOfTheProjectIsNotOpened() throws Exception {
    Files.delete(root.resolve("project.yaml"));
    Process made = new ProcessBuilder("mkfifo", root.resolve("project.yaml").toString()).start();
    assertEquals(0, made.waitFor());
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () ->
            tells(
                "project.yaml: error: this is no plain file of the journal; put the file itself there"));
  }

  @Test
  void aFileThatIsSavedWhileItIsReadIsWholeOrTold() throws Exception {
    List<String> bodies = List.of("old ".repeat(20_000), "new ".repeat(40_000));
    write(ENTRY, "---\n---\n" + bodies.get(0));
    Thread editor = new Thread(() -> saveOverAndOver(bodies));
    editor.start();
    try {
      for (int i = 0; i < 50; i++) {
        JournalReader.Read read = JournalFiles.read(root);
        String told = JournalFiles.told(read).toString();
        boolean whole = read.journal().entries().stream().allMatch(e -> bodies.contains(e.text()));
        boolean changing =
            told.contains("the file changes while it is read; save it and try again");
        assertTrue(changing || told.equals("[]") && whole, told);
      }
    } finally {
      editor.interrupt();
      editor.join();
    }
  }

  /** As editors do: a new file moved onto the old one. */
  private void saveOverAndOver(List<String> bodies) {
    Path fresh = outside.resolve("fresh.md");
    for (int i = 0; !Thread.currentThread().isInterrupted(); i++) {
      try {
        Files.writeString(fresh, "---\n---\n" + bodies.get(i % 2));
        Files.move(fresh, root.resolve(ENTRY), StandardCopyOption.ATOMIC_MOVE);
      } catch (IOException e) {
        return;
      }
    }
  }

  @Test
  void oddNamesOfFilesAreReadAndShownHarmlessly() throws IOException {
    String longest = "2026-03-14-" + "é".repeat(120) + ".md";
    assertTrue(longest.getBytes(StandardCharsets.UTF_8).length > 250);
    List<String> names =
        List.of(
            "2026-03-14 with spaces.md",
            "2026-03-14-100% \"sure\" #1? it's.md",
            "2026-03-14-Spantenriß naïve 舟.MD",
            "2026-03-14--leading.markdown",
            longest);
    for (String name : names) {
      write("-odd & ends/" + name, "---\nphase: planking\n---\n");
    }
    write("2026-03-14-tab\there\nand line.md", "---\nhours: x\n---\n");
    tells(
        "2026-03-14-tab\\u0009here\\u000aand line.md:2:8: error: hours \"x\" is not a length of"
            + " time; write 2:45, 2.75 or 2 3/4");
    List<String> addresses =
        JournalFiles.read(root).journal().entries().stream().map(Entry::address).sorted().toList();
    assertEquals("2026-03-14-100-sure-1-it-s", addresses.get(0));
    assertEquals("2026-03-14-Spantenriß-naïve-舟", addresses.get(1));
    assertEquals("2026-03-14-leading", addresses.get(2));
    assertEquals("2026-03-14-tab-here-and-line", addresses.get(3));
    assertEquals("2026-03-14-with-spaces", addresses.get(4));
    assertTrue(addresses.get(5).getBytes(StandardCharsets.UTF_8).length <= 200);
  }

  @Test
  void namesComposedInTwoWaysAreOne() throws IOException {
    write("a/2026-03-14-Cafe\u0301.md", "---\nphotos: b\u00e4r.jpg\n---\n");
    write("a/ba\u0308r.jpg", "x");
    assertEquals(
        "a/ba\u0308r.jpg",
        JournalFiles.read(root).journal().entries().get(0).photos().get(0).file());
    write("b/2026-03-14-caf\u00e9.md", "---\n---\n");
    tells(
        "b/2026-03-14-café.md:1:1: error: the entry has the same address as"
            + " a/2026-03-14-Cafe\u0301.md (entries/2026-03-14-Café.html); rename one of the two"
            + " files");
  }

  @Test
  void aProjectThatIsNotThereOrInAnotherEncodingIsToldAlone() throws IOException {
    write(ENTRY, "---\nphase: planking\ncost: 2\npieces: {strakes: 2}\n---\n");
    JournalFiles.write(root, "project.yaml", new byte[] {'a', (byte) 0xFC});
    tells("project.yaml:1:2: error: byte FC is not UTF-8; save the file as UTF-8");
    Files.delete(root.resolve("project.yaml"));
    tells("project.yaml: error: the file is not there; write one with a line name: Dunlin");
  }

  @Test
  void theJournalIsNeverWrittenTo() throws IOException {
    write(ENTRY, "---\nhours: 2;45\nphotos: missing.jpg\n---\n");
    write("2026/2026-03-15.md", "---\nhours: 2\nphase: planking\n---\nWords\n");
    write("2026/a.jpg", "x");
    TreeMap<String, String> before = state();
    JournalFiles.read(root);
    assertEquals(before, state());
  }

  private TreeMap<String, String> state() throws IOException {
    TreeMap<String, String> state = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.toList()) {
        String bytes = Files.isRegularFile(file) ? Arrays.toString(Files.readAllBytes(file)) : "";
        state.put(root.relativize(file).toString(), Files.getLastModifiedTime(file) + bytes);
      }
    }
    return state;
  }

  /** Seeded; a find becomes a case of its own. No line may be a stack trace, whatever the bytes. */
  @Test
  void nothingThrowsOnScrambledEntries() throws IOException {
    String whole =
        Files.readString(
            Path.of("src/test/resources/ribband/journal/project.md"), StandardCharsets.UTF_8);
    String[] pieces = whole.split("(?<=[ :\\n{}\\[\\],`|])");
    SplittableRandom random = new SplittableRandom(20260314);
    for (int i = 0; i < 1500; i++) {
      StringBuilder text = new StringBuilder("---\n");
      int length = 1 + random.nextInt(30);
      for (int j = 0; j < length; j++) {
        text.append(pieces[random.nextInt(pieces.length)]);
        if (random.nextInt(6) == 0) {
          text.appendCodePoint("&*!%@`\"'|>#?-\t\\\u00e9\u2028".codePointAt(random.nextInt(17)));
        }
      }
      String scrambled = text + "\n---\n";
      write(ENTRY, scrambled);
      write("project.yaml", text.substring(4));
      for (String line : JournalFiles.told(JournalFiles.read(root))) {
        assertTrue(
            line.matches("[^\n]+: (error|warning): [^\n]+; [^\n]+"), line + "\nof\n" + scrambled);
        assertTrue(line.indexOf('\t') < 0, line);
      }
    }
  }
}
