package ribband.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Currency;
import ribband.measure.ShopTalk;
import ribband.measure.Units;

/** How far a purchase went: first in, first out. */
class KitsTest {
  private static final LocalDate LATE = LocalDate.of(2029, 12, 31);
  private static final String GLUE =
      """
      adhesives: {epoxy: {material: resin, spread: 100 in2 per fl oz}, paint: {spread: 400 in2 per fl oz}}
      pieces:
        strakes: {total: 16, glue area: 1 in x 100 in, adhesive: epoxy}
        moulds: {total: 5}
      """;

  @TempDir Path folder;

  private List<String> kits(String material, String... entries) throws Exception {
    StockWords words =
        new StockWords(new ShopTalk(Units.US), Optional.of(Currency.readCode("USD")));
    return Texts.stock(folder, LATE, GLUE, entries).shelf(material).orElseThrow().kits().stream()
        .map(words::kit)
        .toList();
  }

  private static String bought(String day, String amount) {
    return day + "\nmaterials: {bought: [{material: resin, amount: " + amount + ", cost: 10}]}";
  }

  @Test
  void theOldestIsUsedUpFirst() throws Exception {
    assertEquals(
        List.of(
            "4 fl oz bought for $10.00 on 1 March 2026, used up on 4 March 2026: 1 joint,"
                + " 2 strakes, 230 in², 2 nights",
            "2 of 4 fl oz bought for $10.00 on 2 March 2026, 6 fl oz left: 1 coat, 150 in²,"
                + " 2 nights",
            "1 qt bought for $10.00 on 6 March 2026, not opened yet"),
        kits(
            "resin",
            bought("2026-03-01", "4 fl oz"),
            bought("2026-03-02", "2 of 4 fl oz"),
            """
            2026-03-03
            materials: {used: {resin: 2 fl oz}}
            pieces: {strakes: 2, moulds: 1}
            """,
            """
            2026-03-04
            materials: {used: {resin: 3 fl oz}}
            joints: [{adhesive: epoxy, area: 3 in x 10 in}]
            """,
            """
            2026-03-05
            materials: {used: {resin: 1 fl oz}}
            coats: [{adhesive: epoxy, area: 150 in2}, {adhesive: paint, area: 4 ft2}]
            """,
            bought("2026-03-06", "1 qt")));
  }

  /** What an entry made counts once, for the kit that gave the most. */
  @Test
  void aNightOfTwoKitsCountsForTheOneThatGaveMore() throws Exception {
    assertEquals(
        List.of(
            "1 fl oz bought for $10.00 on 1 March 2026, used up on 3 March 2026: 1 night",
            "4 fl oz bought for $10.00 on 2 March 2026, 2 fl oz left: 3 joints, 1 night"),
        kits(
            "resin",
            bought("2026-03-01", "1 fl oz"),
            bought("2026-03-02", "4 fl oz"),
            """
            2026-03-03
            materials: {used: {resin: 3 fl oz}}
            joints: [{adhesive: epoxy}, {adhesive: epoxy}, {adhesive: epoxy}]
            """));
  }

  @Test
  void whatWasNotWrittenDownIsSaidSo() throws Exception {
    assertEquals(
        List.of(
            "4 fl oz bought for $10.00 on 1 March 2026, 1 fl oz left: nothing of it was written"
                + " down"),
        kits(
            "resin",
            bought("2026-03-01", "4 fl oz"),
            "2026-03-02\nmaterials: {left: {resin: 1 fl oz}}"));
  }

  /** Nails are no glue, so every piece made that night took some. */
  @Test
  void whatIsNoGlueWentIntoAllThatWasMade() throws Exception {
    assertEquals(
        List.of(
            "100 bought for $3.00 on 1 March 2026, 60 left: 2 strakes, one of the moulds, 1 night"),
        kits(
            "nails",
            "2026-03-01\nmaterials: {bought: [{material: nails, amount: 100, cost: 3}]}",
            """
            2026-03-03
            materials: {used: {nails: 40}}
            pieces: {strakes: 2, moulds: 1}
            """));
  }
}
