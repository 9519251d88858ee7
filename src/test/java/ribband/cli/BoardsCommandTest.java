package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory.Run;

/** Boards told whole; the figures were reckoned by hand. */
class BoardsCommandTest {
  private static final String SAW =
      """
      Ripping thin strips: guard and splitter on, featherboard and push stick, and
      nobody in line with the blade.
      """;
  private static final String DUST =
      """
      Wood dust can cause asthma and worse, and dust of half-cured resin is resin:
      draw it off at the tool and wear a mask that fits.
      """;
  private static final String GOVERNS = "The maker's data sheet and local rules govern.\n";

  @TempDir Path folder;

  private InMemory us() throws IOException {
    return new InMemory(folder).with("project.yaml", "name: Wherry\nunits: us\n");
  }

  private InMemory metric() throws IOException {
    return new InMemory(folder).with("project.yaml", "name: Jolle\nunits: metric\n");
  }

  private InMemory none() {
    return new InMemory(folder);
  }

  private static void told(InMemory shop, String text, String... words) {
    assertEquals(new Run(0, text, ""), shop.run(words));
  }

  @Test
  void boardFeetAlone() throws IOException {
    told(
        none(),
        """
        Boards of 1¼ in x 7½ in x 11 ft

          board feet  8.59 bf
        """,
        "boards",
        "--board",
        "5/4 x 7 1/2 in x 11 ft");
  }

  @Test
  void thinStockIsBilledAsAnInch() throws IOException {
    told(
        none(),
        """
        Boards of ¾ in x 7½ in x 11 ft

          board feet  5.16 bf
                      6⅞ bf each where stock under an inch is billed as an inch, as is
                      usual (common practice)
        """,
        "boards",
        "--board",
        "3/4 in x 7 1/2 in x 11 ft");
  }

  @Test
  void boardsToBuyForStrips() throws IOException {
    told(
        us(),
        """
        Boards of 6 in x 12 ft, ripped to strips 1½ in wide with a saw that takes ⅛ in

          strips      3 from each board
          left over   1¼ in of the width
          lost        25% of the board, 4% as dust
          to buy      8 boards for 22 strips
          board feet  6 bf each, taken as 1 in thick; 48 bf together

        """
            + SAW
            + DUST
            + GOVERNS,
        "boards",
        "--board",
        "6 in x 12 ft",
        "--strip",
        "1 1/2 in",
        "--kerf",
        "1/8in",
        "--need",
        "22");
  }

  @Test
  void longStripsAreScarfed() throws IOException {
    told(
        none(),
        """
        Boards of 1 in x 6 in x 12 ft, ripped to strips ¼ in wide with a saw that takes
        ⅛ in

          strips      16 across the width
          left over   ⅛ in of the width
          lengthwise  one strip of 16 ft is scarfed from 2 lengths; each scarf takes 3
                      in, at 12:1; 7¾ ft of the last length left
          lost        56% of the board, 31% as dust
          to buy      6 boards for 44 strips
          board feet  6 bf each; 36 bf together

        """
            + SAW
            + DUST
            + GOVERNS,
        "boards",
        "--board",
        "1 in x 6 in x 12 ft",
        "--strip",
        "1/4in",
        "--kerf",
        "1/8in",
        "--need",
        "40",
        "--length",
        "16ft",
        "--scarf",
        "12:1",
        "--thick",
        "1/4in",
        "--spare",
        "10%");
  }

  @Test
  void theSlopeIsSaidToBeAssumed() throws IOException {
    told(
        none(),
        """
        Boards of 1 in x 6 in x 12 ft, ripped to strips 1 in wide with a saw that takes
        ⅛ in

          strips      5 across the width
          left over   ½ in of the width
          lengthwise  one strip of 16 ft is scarfed from 2 lengths; each scarf takes 8
                      in, at 8:1 (assumed, common practice); 7⅜ ft of the last length
                      left
          lost        44% of the board, 8% as dust
          board feet  6 bf

        """
            + SAW
            + DUST
            + GOVERNS,
        "boards",
        "--board",
        "1 in x 6 in x 12 ft",
        "--strip",
        "1in",
        "--kerf",
        "1/8in",
        "--length",
        "16ft");
  }

  @Test
  void aMetricBuilderWithAJournal() throws IOException {
    told(
        metric(),
        """
        Boards of 25 mm x 140 mm x 4 m, ripped to strips 6 mm wide with a saw that takes
        3 mm, both edges trimmed

          strips      15 across the width
          left over   2 mm of the width
          lengthwise  2 strips of 1,900 mm from each length; 197 mm of it left
          lost        39% of the board, 34% as dust
          to buy      2 boards for 40 strips
          board feet  5.93 bf (0.0140 m³) each; 11.87 bf (0.0280 m³) together
                      6.03 bf each where stock under an inch is billed as an inch, as is
                      usual (common practice)

        """
            + SAW
            + DUST
            + GOVERNS,
        "boards",
        "--board",
        "25 mm x 140 mm x 4 m",
        "--strip",
        "6mm",
        "--kerf",
        "3mm",
        "--need",
        "40",
        "--length",
        "1900mm",
        "--trim");
  }

  @Test
  void aMetricBuilderWithoutAJournal() throws IOException {
    told(
        none(),
        """
        Boards of 140 mm x 4 m, ripped to strips 6 mm wide with a saw that takes 3 mm

          strips      15 from each board
          left over   8 mm of the width
          lost        36% of the board, 30% as dust
          board feet  6.03 bf (0.0142 m³), taken as 1 in thick

        """
            + SAW
            + DUST
            + GOVERNS,
        "boards",
        "--board",
        "140 mm x 4 m",
        "--strip",
        "6mm",
        "--kerf",
        "3mm",
        "--units",
        "metric",
        "-q");
  }

  /** The word on a journal wins over the units of the question. */
  @Test
  void aMetricQuestionIsAnsweredInMetricWhereNoJournalSaysOtherwise() throws IOException {
    assertEquals(
        "Boards of 150 mm x 4 m",
        none().run("boards", "--board", "150 mm x 4 m").out().lines().findFirst().orElseThrow());
    assertEquals(
        "Boards of 5⅞ in x 13⅛ ft",
        us().run("boards", "--board", "150 mm x 4 m").out().lines().findFirst().orElseThrow());
  }

  @Test
  void aRowForOtherProgramsHasTheSameFigures() {
    told(
        none(),
        """
        board_feet_each,strips_per_board,length_unit,width_left,strips_per_length,lengths_per_strip,length_left,lost_share,sawdust_share,strips_needed,boards,board_feet
        6,16,in,0.125,1,2,93,0.5556,0.3125,44,6,36
        """,
        "boards",
        "--board",
        "1 in x 6 in x 12 ft",
        "--strip",
        "1/4in",
        "--kerf",
        "1/8in",
        "--need",
        "40",
        "--length",
        "16ft",
        "--scarf",
        "12:1",
        "--thick",
        "1/4in",
        "--spare",
        "10%",
        "--format",
        "csv");
    told(
        none(),
        """
        [
          {"board_feet_each": 8.5938, "strips_per_board": null, "length_unit": "in", "width_left": null, "strips_per_length": null, "lengths_per_strip": null, "length_left": null, "lost_share": null, "sawdust_share": null, "strips_needed": null, "boards": null, "board_feet": null}
        ]
        """,
        "boards",
        "--board",
        "5/4 x 7 1/2 in x 11 ft",
        "--format",
        "json");
  }

  /** 5.5 in by 0.3 in with a kerf of 0.1 in is exactly 14; nothing is left. */
  @Test
  void exactRatios() {
    String told =
        none()
            .run("boards", "--board", "5.5 in x 8 ft", "--strip", "0.3 in", "--kerf", "0.1 in")
            .out();
    assertTrue(told.contains("  strips      14 from each board\n  left over   nothing\n"), told);
  }

  /** Sixteenths are no eighths: the saw is set by hundredths then. */
  @Test
  void whatIsLeftOverIsNotRoundedToEighths() {
    String told =
        none()
            .run("boards", "--board", "3 in x 8 ft", "--strip", "1 in", "--kerf", "1/16 in")
            .out();
    assertTrue(told.contains("  left over   0.94 in of the width\n"), told);
  }

  private void refused(String line, String... words) {
    List<String> all = new ArrayList<>(List.of("boards"));
    all.addAll(List.of(words));
    assertEquals(new Run(2, "", "ribband: " + line + "\n"), none().run(all.toArray(String[]::new)));
  }

  @Test
  void aStripWiderThanTheBoardIsRefused() {
    refused(
        "--strip \"7 in\" is wider than the board; no strip of that width comes from it",
        "--board",
        "6 in x 12 ft",
        "--strip",
        "7 in",
        "--kerf",
        "1/8in");
    refused(
        "--strip \"6 in\" is wider than the board when it is trimmed; no strip of that width comes"
            + " from it",
        "--board",
        "6 in x 12 ft",
        "--strip",
        "6 in",
        "--kerf",
        "1/8in",
        "--trim");
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    refused("nothing says which board; give its size, as --board \"6 in x 12 ft\"");
    refused(
        "nothing says how wide the strips are; give --strip \"1 1/2 in\"",
        "--board",
        "6 in x 12 ft",
        "--need",
        "22");
    refused(
        "nothing says how wide the strips are; give --strip \"1 1/2 in\"",
        "--board",
        "6 in x 12 ft",
        "--trim");
    refused(
        "strips need --kerf, what a cut of the saw takes, as --kerf 1/8in",
        "--board",
        "6 in x 12 ft",
        "--strip",
        "1in");
    refused(
        "--spare is a share of the strips that --need counts",
        "--board",
        "6 in x 12 ft",
        "--strip",
        "1in",
        "--kerf",
        "1/8in",
        "--spare",
        "10%");
    refused(
        "a scarf would take more than half of the board's length; give the strip's own thickness"
            + " with --thick, or a steeper --scarf",
        "--board",
        "6 in x 1 ft",
        "--strip",
        "1in",
        "--kerf",
        "1/8in",
        "--length",
        "4ft");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--board | 6 in | is not a board; WRITE",
        "--board | 6 x 12 | has a side that is a count, and a length belongs there; WRITE",
        "--board | 6 oz x 12 ft | has a side that is a weight, and a length belongs there; WRITE",
        "--board | 6 in x 0 ft | has a side of nothing; WRITE",
        "--board | 6 in x 400 ft | is longer than any board; WRITE",
        "--strip | 1/4 | has no unit, and a length belongs here; write its unit too, as 1/4 in",
        "--strip | 0 in | is nothing at all; write it as 1 1/2 in",
        "--strip | 0.01 mm | is thinner than any saw leaves; write it as 1/4 in",
        "--kerf | 2 oz | is a weight, and a length belongs here; write it as 8 ft",
        "--kerf | thin | is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws",
        "--need | 2.5 | is no whole number from 1 to 99,999; write figures alone, as 22",
        "--need | 100000 | is no whole number from 1 to 99,999; write figures alone, as 22",
        "--spare | 5 | is not a share; write 5%",
        "--length | 3 ft2 | is an area, and a length belongs here; write it as 8 ft",
        "--length | 999 ft | is longer than any strip; write it as 16 ft",
        "--scarf | 8 | is no slope of a scarf; write 8:1 or 12:1",
        "--thick | 1/4 pt | is a volume, and a length belongs here; write it as 8 ft",
        "--units | us-metric | are no units; there are us, metric"
      })
  void badValuesAreToldWithWhatToWrite(String option, String value, String told) {
    Run run = none().run("boards", option, value);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    String write =
        "write its width and length, as 6 in x 12 ft, with its thickness in front where it"
            + " matters, as 1 in x 6 in x 12 ft or 5/4 x 6 in x 12 ft";
    assertEquals(
        "ribband: " + option + " \"" + value + "\" " + told.replace("WRITE", write),
        run.err()
            .lines()
            .filter(line -> line.contains(option + " \"" + value))
            .findFirst()
            .orElse(""));
  }

  @Test
  void allThatIsWrongIsToldInOneRun() {
    assertEquals(
        new Run(
            2,
            "",
            """
            ribband: --strip "1/4" has no unit, and a length belongs here; write its unit too, as 1/4 in
            ribband: --need "some" is no whole number from 1 to 99,999; write figures alone, as 22
            ribband: nothing says which board; give its size, as --board "6 in x 12 ft"
            ribband: strips need --kerf, what a cut of the saw takes, as --kerf 1/8in
            """),
        none().run("boards", "--strip", "1/4", "--need", "some"));
  }

  @Test
  void aProjectWithErrorsStopsIt() throws IOException {
    InMemory shop = new InMemory(folder).with("project.yaml", "units: both\n");
    assertEquals(
        new Run(
            1,
            "",
            """
            project.yaml:1:8: error: units "both" is no set of units; write us or metric
            1 error in project.yaml, nothing is reckoned
            """),
        shop.run("boards", "--board", "6 in x 12 ft"));
  }
}
