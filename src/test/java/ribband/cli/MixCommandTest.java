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

/**
 * Mixes told whole. The amounts and times were reckoned by hand: area over spread, parts by ratio
 * and density, the sheet's times by 2^(degrees colder / 18 F).
 */
class MixCommandTest {
  private static final String RESIN =
      """
      Resin and hardener irritate, and skin can become allergic to them for good: wear
      laminate or thick nitrile gloves, and never clean skin with solvent.
      """;
  private static final String CUP =
      """
      A cup full of mixed resin heats up by itself: mix small batches, spread them out
      at once, leave what is left over outdoors on concrete until it is cold.
      """;
  private static final String SOLVENT =
      """
      Solvent vapor catches fire: open the doors, no flame or spark, lids on. Rags
      with drying oil heat themselves: dry them flat outdoors, never in a heap.
      """;
  private static final String HEAT =
      """
      Heating the shop: heaters that burn fuel without a flue can kill by carbon
      monoxide, open doors or not; fit an alarm.
      """;
  private static final String GOVERNS = "The maker's data sheet and local rules govern.\n";

  @TempDir Path folder;

  private InMemory us() throws IOException {
    return new InMemory(folder)
        .with(
            "project.yaml",
            """
            name: Wherry
            units: us
            adhesives:
              epoxy:
                mix: 2 to 1 by volume
                densities: 1.15 to 0.97
                rated at: 72 F
                pot life: 20 min
                open time: 60 min
                soft for: 90 min
                clamp time: 8 h
                coldest: 50 F
                spread: 140 in2 per fl oz
              varnish:
                rated at: 70 F
                spread: 450 in2 per fl oz
              enamel:
                rated at: 70 F
                recoat: 16 h to 96 h
                coldest: 50 F
                spread: 450 in2 per fl oz
            """);
  }

  private InMemory metric() throws IOException {
    return new InMemory(folder)
        .with(
            "project.yaml",
            """
            name: Jolle
            units: metric
            adhesives:
              laminating resin:
                mix: 100 to 42 by weight
                densities: 1.15 to 0.97
                rated at: 22 C
                pot life: 25 min
                open time: 50 min
                soft for: 80 min
                clamp time: 10 h
                coldest: 12 C
                spread: 32 cm2 per ml
            """);
  }

  private InMemory none() {
    return new InMemory(folder);
  }

  private static void told(InMemory shop, String text, String... words) {
    assertEquals(new Run(0, text, ""), shop.run(words));
  }

  @Test
  void aCoatingIsNotMixedAndHasNoTimesOfAJoint() throws IOException {
    told(
        us(),
        """
        Take enamel for one face of 20 ft²

          needed            6⅜ fl oz

          temperature       60 °F
          to spread it      13 min, at 2 minutes a fluid ounce (assumed, common
                            practice)

        """
            + SOLVENT
            + GOVERNS,
        "mix",
        "--adhesive",
        "enamel",
        "--area",
        "20ft2",
        "--temperature",
        "60 F");
  }

  @Test
  void aCoatingToldTooColdSaysSo() throws IOException {
    String told =
        us().run("mix", "--adhesive", "enamel", "--area", "20ft2", "--temperature", "45 F").out();
    assertTrue(told.contains("  temperature       45 °F is below the coldest for it, 50 °F"), told);
    assertTrue(told.contains(HEAT), told);
  }

  @Test
  void aUsBuilderWithAJournal() throws IOException {
    told(
        us(),
        """
        Mix epoxy for 2 faces of 192 in², and 10% waste

          needed            3 fl oz, or 3⅜ oz
          part A, resin     2 fl oz, or 2.4 oz
          part B, hardener  1 fl oz, or 1 oz
          together          3 fl oz, or 3.4 oz

          temperature       61 °F; the times are reckoned from those at 72 °F
          in the cup        at most 30 min
          to spread it      7 min, at 2 minutes a fluid ounce (assumed, common practice)
          batches           one
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

          close the joint   within 1 h 31 min of spreading
          stays soft        2 h 17 min after spreading
          last look         2 h 2 min after spreading
          clamps off        12 h 14 min after closing, not yet fully cured

        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--adhesive",
        "epoxy",
        "--area",
        "2 in x 8 ft",
        "--pieces",
        "2",
        "--waste",
        "10%",
        "--temperature",
        "61F");
  }

  @Test
  void aMetricBuilderWhoseJournalListsOneAdhesive() throws IOException {
    told(
        metric(),
        """
        Mix laminating resin for one face of ½ m²

          needed            156 ml, or 170 g
          part A, resin     52 ml, or 60 g, in each batch
          part B, hardener  26 ml, or 25 g, in each batch
          together          78 ml, or 85 g, in each batch

          temperature       18 °C; the times are reckoned from those at 22 °C
          in the cup        at most 32 min
          to spread it      45 min
          batches           one batch would outlast its pot life: make 2 of 78 ml
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

          close the joint   within 1 h 5 min of spreading
          stays soft        1 h 45 min after spreading
          last look         1 h 30 min after spreading
          clamps off        13 h 12 min after closing, not yet fully cured

        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--area",
        "0.5m2",
        "--temperature",
        "18C",
        "--takes",
        "45 min");
  }

  @Test
  void aUsBuilderWithoutAJournal() throws IOException {
    told(
        none(),
        """
        Mix for one fillet of ½ in radius and 8 ft length

          needed            1¾ fl oz
          part A, resin     1¼ fl oz
          part B, hardener  ⅝ fl oz
          together          1⅞ fl oz
          by weight         unknown: the densities of its parts are not given
          too little        less than 1⅞ fl oz cannot be measured to the ratio, so the
                            parts are of that much; for less, measure finer and say so
                            with --step

          temperature       not said: the times below are as given
          to spread it      4 min, at 2 minutes a fluid ounce (assumed, common practice)

        Not given, so nothing is told of it: pot life, open time, soft for and clamp
        time.
        One fillet takes 2⅞ fl oz of thickened putty, 60% of it resin.
        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--fillet",
        "1/2in",
        "--length",
        "8ft",
        "--neat",
        "60%",
        "--ratio",
        "2 to 1");
  }

  @Test
  void aMetricBuilderWithoutAJournal() throws IOException {
    told(
        none(),
        """
        Mix for 200 ml

          needed            200 ml, or 228 g
          part A, resin     55 ml, or 66 g, in each batch
          part B, hardener  11 ml, or 11 g, in each batch
          together          66 ml, or 77 g, in each batch

          temperature       not said: the times below are as given
          in the cup        at most 20 min
          to spread it      45 min
          batches           one batch would outlast its pot life: make 3 of 66 ml
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

        Not given, so nothing is told of it: open time, soft for and clamp time.
        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--amount",
        "200ml",
        "--ratio",
        "5 to 1",
        "--densities",
        "1.18 to 0.95",
        "--pot-life",
        "20min",
        "--takes",
        "45min",
        "--units",
        "metric");
  }

  @Test
  void aMetricQuestionIsAnsweredInMetricWhereNoJournalSaysOtherwise() {
    InMemory none = new InMemory(folder);
    for (String[] need :
        List.of(
            new String[] {"--amount", "200ml"},
            new String[] {"--area", "50 mm x 2 m"},
            new String[] {"--fillet", "12mm", "--length", "2m"})) {
      List<String> words = new ArrayList<>(List.of("mix", "--ratio", "5 to 1"));
      words.addAll(List.of(need));
      String[] plain = words.toArray(String[]::new);
      words.addAll(List.of("--units", "metric"));
      assertEquals(none.run(words.toArray(String[]::new)), none.run(plain), need[0]);
    }
  }

  @Test
  void theRuleOfThumbIsSaidToBeAssumed() throws IOException {
    told(
        none(),
        """
        Mix for one face of 240 in²

          needed            1½ fl oz

          temperature       not said: the times below are as given
          to spread it      3 min, at 2 minutes a fluid ounce (assumed, common practice)

        Not given, so nothing is told of it: mix, pot life, open time, soft for and
        clamp time.
        No spread is known for it: 160 in² per fl oz is assumed, which is common
        practice.
        """
            + RESIN
            + CUP
            + SOLVENT
            + GOVERNS,
        "mix",
        "--area",
        "8 in x 30 in");
  }

  @Test
  void belowTheColdestNoTimeIsPromised() throws IOException {
    told(
        us(),
        """
        Mix epoxy for one face of 320 in²

          needed            2¼ fl oz, or 2⅝ oz
          part A, resin     1½ fl oz, or 1.9 oz
          part B, hardener  ¾ fl oz, or 0.8 oz
          together          2¼ fl oz, or 2.7 oz

          temperature       49 °F is below the coldest for it, 50 °F; no time is
                            promised, see the maker's data sheet
          in the cup        unknown at this temperature
          to spread it      5 min, at 2 minutes a fluid ounce (assumed, common practice)
          batches           unknown at this temperature

          close the joint   unknown at this temperature
          stays soft        unknown at this temperature
          last look         unknown at this temperature
          clamps off        unknown at this temperature

        """
            + RESIN
            + CUP
            + HEAT
            + GOVERNS,
        "mix",
        "--adhesive",
        "Epoxy",
        "--area",
        "8 in x 40 in",
        "--temperature",
        "49F");
  }

  @Test
  void batchesTooSmallToMeasureAreNotParted() throws IOException {
    told(
        us(),
        """
        Mix epoxy for 3 fl oz

          needed            3 fl oz, or 3⅜ oz
          part A, part B    less than 1⅞ fl oz cannot be measured to the ratio; glue
                            fewer at a time, or measure finer and say so with --step

          temperature       not said: the times below hold at 72 °F
          in the cup        at most 20 min
          to spread it      40 min
          batches           one batch would outlast its pot life: make 2 of 1½ fl oz
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

          close the joint   within 1 h of spreading
          stays soft        1 h 30 min after spreading
          last look         1 h 15 min after spreading
          clamps off        8 h after closing, not yet fully cured

        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--adhesive",
        "epoxy",
        "--amount",
        "3 fl oz",
        "--takes",
        "40 min");
  }

  @Test
  void clothIsWettedOutByItsWeight() throws IOException {
    told(
        us(),
        """
        Mix epoxy for 36 ft² in cloth of 6 oz per yd²

          needed            21⅛ fl oz, or 1½ lb
          part A, resin     7 fl oz, or 8½ oz, in each batch
          part B, hardener  3½ fl oz, or 3.6 oz, in each batch
          together          10½ fl oz, or 12.1 oz, in each batch

          temperature       77 °F for 4 h, then 59 °F; the times are reckoned from those
                            at 72 °F
          in the cup        at most 24 min
          to spread it      43 min, at 2 minutes a fluid ounce (assumed, common
                            practice)
          batches           one batch would outlast its pot life: make 2 of 10½ fl oz
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

          close the joint   within 49 min of spreading
          stays soft        1 h 14 min after spreading
          last look         59 min after spreading
          clamps off        9 h 12 min after closing, not yet fully cured

        The resin is taken to weigh as much as the cloth, which is common practice by
        hand.
        """
            + RESIN
            + CUP
            + HEAT
            + GOVERNS,
        "mix",
        "--adhesive",
        "epoxy",
        "--cloth",
        "6 oz per yd2",
        "--area",
        "3 ft x 12 ft",
        "--temperature",
        "77 F for 4 h then 59 F",
        "--pot-life",
        "30 min");
  }

  @Test
  void oneAlreadyListedButDescribedByOptionsAlone() throws IOException {
    told(
        us(),
        """
        Mix for one face of 192 in²

          needed            1¼ fl oz
          part A, part B    unknown: the amount is known by one measure and the mix by
                            the other, and the densities of its parts are not given

          temperature       not said: the times below are as given
          in the cup        at most 1 min
          to spread it      3 min, at 2 minutes a fluid ounce (assumed, common practice)
          batches           one batch would outlast its pot life: make 3 of ⅜ fl oz
                            A deep or full cup sets sooner than the rule says: spread it
                            out at once.

        Not given, so nothing is told of it: open time, soft for and clamp time.
        No spread is known for it: 160 in² per fl oz is assumed, which is common
        practice.
        """
            + RESIN
            + CUP
            + GOVERNS,
        "mix",
        "--area",
        "2 in x 8 ft",
        "--ratio",
        "1 to 1 by weight",
        "--pot-life",
        "1min",
        "-q");
  }

  @Test
  void aRowForOtherProgramsHasTheSameFigures() throws IOException {
    told(
        us(),
        """
        adhesive,volume_unit,volume_needed,volume_a,volume_b,weight_unit,weight_needed,weight_a,weight_b,batches,spreading_minutes,cup_minutes,close_minutes,soft_minutes,last_look_minutes,clamp_minutes,warnings,unknown
        epoxy,fl oz,3.0171,2,1,oz,3.4307,2.4,1,1,7,30,91,137,122,734,,
        """,
        "mix",
        "--adhesive",
        "epoxy",
        "--area",
        "2 in x 8 ft",
        "--pieces",
        "2",
        "--waste",
        "10%",
        "--temperature",
        "61F",
        "--format",
        "csv");
    told(
        metric(),
        """
        [
          {"adhesive": "laminating resin", "volume_unit": "ml", "volume_needed": 156.25, "volume_a": 52, "volume_b": 26, "weight_unit": "g", "weight_needed": 170.3383, "weight_a": 60, "weight_b": 25, "batches": 2, "spreading_minutes": 45, "cup_minutes": 32, "close_minutes": 65, "soft_minutes": 105, "last_look_minutes": 90, "clamp_minutes": 792, "warnings": "one batch would outlast its pot life: make 2 of 78 ml", "unknown": ""}
        ]
        """,
        "mix",
        "--area",
        "0.5m2",
        "--temperature",
        "18C",
        "--takes",
        "45 min",
        "--format",
        "json");
  }

  /** A warning or a refusal is a result: it stands in the row too. */
  @Test
  void whatIsUnknownAndWhatIsWarnedOfStandsInTheRow() throws IOException {
    String head =
        us().run("mix", "--adhesive", "varnish", "--amount", "1 pt", "--format", "csv")
            .out()
            .lines()
            .findFirst()
            .orElseThrow();
    told(
        us(),
        head
            + """

            epoxy,fl oz,1,1.25,0.625,oz,1.1371,1.6,0.7,,4,,,,,,"45 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data sheet; less than 1⅞ fl oz cannot be measured to the ratio, so the parts are of that much; for less, measure finer and say so with --step","45 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data sheet"
            """,
        "mix",
        "--adhesive",
        "epoxy",
        "--amount",
        "1 fl oz",
        "--temperature",
        "45F",
        "--format",
        "csv");
  }

  @Test
  void typedFiguresWinOverThoseOfTheJournal() throws IOException {
    String told =
        us().run(
                "mix",
                "--adhesive",
                "EPOXY",
                "--area",
                "160 in2",
                "--pieces",
                "4",
                "--spread",
                "80 in2 per fl oz",
                "--ratio",
                "3:1",
                "--pot-life",
                "30 min",
                "--units",
                "metric")
            .out();
    assertTrue(told.startsWith("Mix epoxy for 4 faces of 1,032 cm²\n"), told);
    assertTrue(told.contains("needed            237 ml, or 261 g\n"), told);
    assertTrue(told.contains("part A, resin     177 ml, or 204 g\n"), told);
    assertTrue(told.contains("in the cup        at most 30 min\n"), told);
  }

  /** The step is what the builder's own cups or scale can tell apart. */
  @Test
  void aFinerMeasurePartsLess() {
    String told =
        none().run("mix", "--amount", "0.9 fl oz", "--ratio", "2 to 1", "--step", "1 ml").out();
    assertTrue(told.contains("part A, resin     18 ml\n  part B, hardener  9 ml\n"), told);
  }

  private static void refused(InMemory shop, String lines, String... words) {
    List<String> all = new ArrayList<>(List.of("mix"));
    all.addAll(List.of(words));
    String told = "ribband: " + lines.replace("\n", "\nribband: ") + "\n";
    assertEquals(new Run(2, "", told), shop.run(all.toArray(String[]::new)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--area | 2 oz | is a weight, and an area belongs here; write it as 2 in x 8 ft",
        "--area | 2 x 8 ft | has a unit on one side alone; write 2 ft x 8 ft",
        "--area | 0 ft2 | is nothing at all; write it as 2 in x 8 ft",
        "--area | -3 ft2 | is below zero; write how much there is, as 2 fl oz",
        "--area | 1,5 m2 | has a decimal comma; write 1.5 m2",
        "--cloth | 6 oz | is not a weight for an area; write 6 oz per yd2 or 200 g per m2",
        "--fillet | 1/2 | has no unit, and a length belongs here; write its unit too, as 1/2 in",
        "--length | 8 fl oz | is a volume, and a length belongs here; write it as 8 ft",
        "--neat | 60 | is not a share; write 60%",
        "--neat | 0% | leaves no resin; write 60%",
        "--amount | 3 | is a count, and a volume or a weight belongs here; write it as 3 fl oz or 90 g",
        "--amount | 8 ft | is a length, and a volume or a weight belongs here; write it as 3 fl oz or 90 g",
        "--pieces | 0 | is no whole number from 1 to 99,999; write figures alone, as 2",
        "--pieces | 2.5 | is no whole number from 1 to 99,999; write figures alone, as 2",
        "--waste | 10 | is not a share; write 10%",
        "--waste | 101% | is more than the whole; write 100% at most",
        "--temperature | 61 | is not a temperature; write 61 F or 16 C",
        "--temperature | 300 F | is no temperature of a shop; write it as 61 F or 16 C",
        "--temperature | 77 F then 59 F | does not say for how long; write 61 F, or 77 F for 4 h then 59 F",
        "--takes | 5 | has no unit of time; write 5 min, h or days",
        "--step | 1 in | is a length, and a volume or a weight belongs here; write it as 3 fl oz or 90 g",
        "--ratio | two to one | is not two numbers; write them as 2 to 1 by volume",
        "--ratio | 2:0 | has a zero in it; write them as 2 to 1 by volume",
        "--ratio | 2 by cup | does not say how it is mixed; write 2 to 1 by volume or 100 to 42 by weight",
        "--densities | 1.15 | is not two numbers; write them as 1.15 to 0.97",
        "--spread | 140 in2 | is not a spread; write 140 in2 per fl oz or 200 cm2 per 30 ml",
        "--rated-at | 72 | is not a temperature; write 61 F or 16 C",
        "--coldest | warm | is not a temperature; write 61 F or 16 C",
        "--pot-life | 0 min | is no time at all; write 20 min, 8 h or 7 days",
        "--open-time | 1:30 | is not a length of time; write 20 min, 8 h or 7 days",
        "--soft-for | long | is not a length of time; write 20 min, 8 h or 7 days",
        "--clamp-time | 20 years | is not a length of time; write 20 min, 8 h or 7 days",
        "--units | metrc | are no units; did you mean \"metric\"?"
      })
  void badValuesAreToldWithWhatToWrite(String option, String value, String told) {
    Run run = none().run("mix", option, value);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertEquals(
        "ribband: " + option + " \"" + value + "\" " + told,
        run.err().lines().filter(line -> line.contains(option + " \"")).findFirst().orElse(""));
    assertTrue(run.err().lines().allMatch(line -> line.startsWith("ribband: ")), run.err());
  }

  @Test
  void allThatIsWrongIsToldInOneRun() {
    refused(
        none(),
        """
        --ratio "2 to" is not two numbers; write them as 2 to 1 by volume
        --area "2 oz" is a weight, and an area belongs here; write it as 2 in x 8 ft
        --waste "10" is not a share; write 10%
        --temperature "61" is not a temperature; write 61 F or 16 C"""
            .stripIndent(),
        "--area",
        "2 oz",
        "--waste",
        "10",
        "--temperature",
        "61",
        "--ratio",
        "2 to");
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    refused(
        none(),
        "nothing says how much is needed; give --area, --amount, or --fillet with --length");
    refused(
        none(),
        "--area, --fillet and --amount each say how much is needed; keep one",
        "--area",
        "3 ft2",
        "--amount",
        "3 fl oz");
    refused(
        none(),
        "--fillet and --length go together, as --fillet 1/2in --length 8ft",
        "--fillet",
        "1/2 in");
    refused(
        none(),
        "--cloth needs the --area that it covers",
        "--cloth",
        "200 g per m2",
        "--amount",
        "3 fl oz");
    refused(
        none(),
        "--neat is a share of the putty of a --fillet",
        "--neat",
        "60%",
        "--amount",
        "3 fl oz");
    refused(
        none(),
        "2,000 gal to mix is more than any shop does; look at the units of what you typed",
        "--amount",
        "2000 gal");
  }

  @Test
  void anAdhesiveIsNamedFromThoseThatAreListed() throws IOException {
    refused(
        us(),
        "--adhesive \"epxy\" is not among the adhesives of project.yaml; did you mean \"epoxy\"?",
        "--adhesive",
        "epxy",
        "--area",
        "3 ft2");
    refused(
        us(),
        "nothing says which adhesive; name one with --adhesive: epoxy, varnish, enamel",
        "--area",
        "3 ft2");
  }

  @Test
  void withoutAJournalNoAdhesiveCanBeNamed() throws IOException {
    refused(
        none(),
        "--adhesive names one of a journal, and no project.yaml lies here or in a folder above;"
            + " name the journal's folder, or describe the adhesive by --ratio, --spread and the"
            + " others",
        "--adhesive",
        "epoxy",
        "--area",
        "3 ft2");
    refused(
        none(),
        "there is no folder boat; begin a journal there with: ribband lay boat",
        "boat",
        "--area",
        "3 ft2");
    refused(
        none().with("project.yaml", "name: Dory\n"),
        "--adhesive \"epoxy\" is not among the adhesives of project.yaml; list it there, none are"
            + " so far",
        "--adhesive",
        "epoxy",
        "--area",
        "3 ft2");
  }

  @Test
  void nothingIsReckonedFromAProjectWithErrors() throws IOException {
    InMemory shop =
        new InMemory(folder).with("project.yaml", "adhesives:\n  epoxy: {pot life: soon}\n");
    assertEquals(
        new Run(
            1,
            "",
            """
            project.yaml:2:21: error: pot life "soon" is not a length of time; write 20 min, 8 h or 7 days
            1 error in project.yaml, nothing is reckoned
            """),
        shop.run("mix", "--amount", "3 fl oz"));
  }

  @Test
  void aNameAndOptionsDoWithoutAJournal() {
    InMemory.Run run =
        new InMemory(folder)
            .run(
                "mix",
                "--adhesive",
                "epoxy",
                "--ratio",
                "2 to 1",
                "--amount",
                "3 fl oz",
                "--format",
                "table");
    assertEquals("", run.err());
    assertEquals(
        "Mix epoxy for 3 fl oz\n", run.out().lines().limit(1).reduce("", (a, b) -> b + "\n"));
  }
}
