package ribband.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.ShopTalk;
import ribband.measure.Units;

/** What is still needed, how much to order and by when; the figures are reckoned by hand. */
class NeedTest {
  private static final String PROJECT =
      """
      materials: {resin: {unit: fl oz, on hand: 20 fl oz, lead time: 10 days, never below: 4 fl oz}}
      adhesives: {epoxy: {material: resin, spread: 100 in2 per fl oz}}
      pieces: {strakes: {total: 16, glue area: 1 in x 100 in, adhesive: epoxy}}
      """;

  @TempDir Path folder;

  private String need(LocalDate asOf, String project, List<String> entries) throws Exception {
    Stock stock = Texts.stock(folder, asOf, project, entries.toArray(String[]::new));
    return new StockWords(new ShopTalk(Units.US), Optional.empty())
        .need(stock.shelf("resin").orElseThrow(), asOf);
  }

  private static String night(String day, int strakes, String resin) {
    return day + "\npieces: {strakes: " + strakes + "}\nmaterials: {used: {resin: " + resin + "}}";
  }

  @Test
  void enoughIsEnough() throws Exception {
    assertEquals(
        "enough (14 fl oz for 9.7 ft² of pieces not yet made; 4 fl oz kept in reserve; 18 fl oz"
            + " on hand)",
        need(LocalDate.of(2026, 3, 31), PROJECT, List.of(night("2026-03-01", 2, "2 fl oz"))));
  }

  /**
   * 4 of 16 made: 12 ask for 12 fl oz and 4 stay, 16 in all; 15 are there. In the 56 days to 25
   * April 5 were used, so 15 last 168 days, to 10 October; 10 days earlier is 30 September.
   */
  @Test
  void thePacksLastBoughtAndTheDayToOrderThem() throws Exception {
    List<String> entries =
        new ArrayList<>(
            List.of(night("2026-02-28", 0, "1 fl oz"), night("2026-03-01", 4, "5 fl oz")));
    entries.add(
        "2026-02-01\nmaterials: {bought: [{material: resin, amount: 2 of 3/4 fl oz, cost: 1},"
            + " {material: resin, amount: 1/4 fl oz, cost: -1}], left: {resin: 21 fl oz}}");
    assertEquals(
        "order 2 of ¾ fl oz by 30 September 2026 (12 fl oz for 8.3 ft² of pieces not yet made;"
            + " 4 fl oz kept in reserve; 15 fl oz on hand)",
        need(LocalDate.of(2026, 4, 25), PROJECT, entries));
  }

  @Test
  void whatIsOnOrderCounts() throws Exception {
    assertEquals(
        "enough (15 fl oz for 10.4 ft² of pieces not yet made; 4 fl oz kept in reserve; 10 fl oz"
            + " on hand, 32 fl oz on order)",
        need(
            LocalDate.of(2026, 3, 5),
            PROJECT,
            List.of(
                night("2026-03-01", 1, "10 fl oz"),
                "2026-03-02\nmaterials: {bought: [{material: resin, amount: 1 qt, cost: 60, arrived:"
                    + " 2026-03-20}]}")));
  }

  @Test
  void whatIsDownToItsReserveIsOrderedNow() throws Exception {
    assertEquals(
        "order 16 fl oz now (16 fl oz for 11.1 ft² of pieces not yet made; 4 fl oz kept in"
            + " reserve; 4 fl oz on hand)",
        need(
            LocalDate.of(2027, 3, 5),
            PROJECT,
            List.of("2026-03-01\nmaterials: {used: {resin: 16 fl oz}}")));
  }

  /** 19 fl oz at one a day run out in 19 days; the lead time of 30 days is more than is left. */
  @Test
  void aDayThatIsPastIsNow() throws Exception {
    assertEquals(
        "order 1 fl oz now (16 fl oz for 11.1 ft² of pieces not yet made; 4 fl oz kept in"
            + " reserve; 19 fl oz on hand)",
        need(
            LocalDate.of(2026, 3, 14),
            PROJECT.replace("10 days", "30 days").replace("20 fl oz", "33 fl oz"),
            List.of("2026-03-14\nmaterials: {used: {resin: 14 fl oz}}")));
  }

  @Test
  void withoutAPaceNoDayIsTold() throws Exception {
    assertEquals(
        "order 1 fl oz before the next of it is used (none was in the last 8 weeks) (12 fl oz for"
            + " 8.3 ft² of pieces not yet made; 4 fl oz kept in reserve; 15 fl oz on hand)",
        need(LocalDate.of(2026, 4, 26), PROJECT, List.of(night("2026-03-01", 4, "5 fl oz"))));
  }

  @Test
  void whatCannotBeReckonedIsNamed() throws Exception {
    assertEquals(
        "enough for what can be reckoned (4 fl oz kept in reserve; not counting strakes, whose"
            + " glue area or spread is unknown; 20 fl oz on hand)",
        need(
            LocalDate.of(2026, 4, 26),
            PROJECT.replace("glue area: 1 in x 100 in, ", ""),
            List.of("2026-03-01\nhours: 1")));
  }

  /**
   * Four measurements leave the stated 100 in2 per fl oz; the fifth makes it 50. A journal of 5
   * days has its pace over 14: 8 fl oz used, 12 last 21 days to 26 March; 10 used, 10 last to 19
   * March.
   */
  @Test
  void theOwnSpreadCountsFromTheFifthMeasurementOn() throws Exception {
    List<String> nights = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      nights.add(night("2026-03-0" + i, 1, "2 fl oz"));
    }
    String stated =
        "order 4 fl oz by 16 March 2026 (12 fl oz for 8.3 ft² of pieces not yet made; 4 fl oz kept"
            + " in reserve; 12 fl oz on hand)";
    assertEquals(stated, need(LocalDate.of(2026, 3, 5), PROJECT, nights));
    nights.add(night("2026-03-05", 1, "2 fl oz"));
    assertEquals(
        "order 16 fl oz by 9 March 2026 (22 fl oz for 7.6 ft² of pieces not yet made; 4 fl oz kept"
            + " in reserve; 10 fl oz on hand)",
        need(LocalDate.of(2026, 3, 5), PROJECT, nights));
  }

  @Test
  void scrappedPiecesAreNeededAgain() throws Exception {
    assertEquals(
        "enough (15 fl oz for 10.4 ft² of pieces not yet made; 4 fl oz kept in reserve; 20 fl oz"
            + " on hand)",
        need(
            LocalDate.of(2026, 4, 26),
            PROJECT,
            List.of("2026-03-01\npieces: {strakes: 2}", "2026-03-02\npieces: {strakes: -1}")));
  }

  @Test
  void whatNothingAsksForIsSaidSo() throws Exception {
    assertEquals(
        "nothing asks for it",
        need(
            LocalDate.of(2026, 4, 26),
            "materials: {resin: {on hand: 2 qt}}\n",
            List.of("2026-03-01\nhours: 1")));
  }

  /** Pieces glued with something else, and packs of something else, are of no concern. */
  @Test
  void otherMaterialsAreKeptApart() throws Exception {
    assertEquals(
        "order 16 fl oz now (16 fl oz for 11.1 ft² of pieces not yet made; 4 fl oz kept in"
            + " reserve; 4 fl oz on hand)",
        need(
            LocalDate.of(2026, 3, 5),
            PROJECT
                .replace("20 fl oz", "4 fl oz")
                .replace("adhesives: {", "adhesives: {paint: {spread: 1 in2 per fl oz}, ")
                .replace(
                    "pieces: {", "pieces: {doors: {total: 2, glue area: 9 ft2, adhesive: paint}, "),
            List.of(
                "2026-03-01\nmaterials: {bought: [{material: nails, amount: 7 fl oz, cost: 1}, {item:"
                    + " resin, amount: 9 fl oz, cost: 2}]}")));
  }

  /** The eight weeks end with the day and begin 55 days before it. */
  @Test
  void thePaceIsThatOfEightWeeks() throws Exception {
    String project =
        PROJECT.replace("on hand: 20 fl oz", "on hand: 21 fl oz").replace("16,", "40,");
    List<String> entries =
        List.of(
            "2026-01-01\nhours: 1",
            "2026-03-01\nmaterials: {used: {resin: 1 fl oz}}",
            "2026-04-25\nmaterials: {left: {resin: 19 fl oz}, bought: [{material: resin, amount: 1"
                + " fl oz, cost: 1, arrived: 2026-04-25}]}");
    // 1 used and 2 missing in 56 days: 19 last 354 days, to 14 April; 10 days earlier.
    assertEquals(
        "order 25 of 1 fl oz by 4 April 2027 (40 fl oz for 27.8 ft² of pieces not yet made; 4 fl oz"
            + " kept in reserve; 19 fl oz on hand)",
        need(LocalDate.of(2026, 4, 25), project, entries));
    // A day later the first of them is out of sight: 2 in 56 days, 19 last 532.
    assertEquals(
        "order 25 of 1 fl oz by 30 September 2027 (40 fl oz for 27.8 ft² of pieces not yet made;"
            + " 4 fl oz kept in reserve; 19 fl oz on hand)",
        need(LocalDate.of(2026, 4, 26), project, entries));
  }
}
