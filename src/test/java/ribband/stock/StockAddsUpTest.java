package ribband.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/**
 * Whatever was bought, used, counted and taken back: nothing comes from nowhere, nothing is lost.
 */
class StockAddsUpTest {
  private static final List<String> UNITS = List.of("fl oz", "ml", "pt", "tbsp");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void quantityAndValueAreConserved(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> entries = new ArrayList<>();
    LocalDate day = LocalDate.of(2026, 1, 1);
    for (int i = 0; i < 80; i++) {
      day = day.plusDays(random.nextInt(4));
      entries.add(day + "-" + i + "\n" + keys(random, day));
    }
    String project =
        random.nextBoolean()
            ? "materials: {resin: {on hand: 20 1/3 fl oz, worth: 19.99}}\n"
            : "materials: {resin: {unit: ml}}\n";
    Stock stock = Texts.stock(folder, day.minusDays(3), project, entries.toArray(String[]::new));
    Shelf shelf = stock.shelf("resin").orElseThrow();
    assertTrue(shelf.moves().size() > 40, "too few moves to tell: " + shelf.moves().size());
    followed(shelf);
    kitsHoldWhatIsThere(shelf);
    assertEquals(
        shelf.moves().stream().filter(m -> !m.shortfall().isZero()).count(),
        stock.warnings().size());
  }

  private static String keys(SplittableRandom random, LocalDate day) {
    String unit = UNITS.get(random.nextInt(UNITS.size()));
    String amount = random.nextInt(1, 9) + " " + random.nextInt(1, 7) + "/7 " + unit;
    return switch (random.nextInt(8)) {
      case 0, 1 ->
          "materials: {bought: [{material: resin, amount: 3 of "
              + amount
              + ", cost: "
              + random.nextInt(90)
              + ".37"
              + (random.nextBoolean() ? "" : ", arrived: " + day.plusDays(random.nextInt(9) - 4L))
              + "}]}";
      case 2 -> "materials: {left: {resin: " + amount + "}}";
      case 3 -> "materials: {bought: [{material: resin, amount: " + amount + ", cost: -3.11}]}";
      default -> "materials: {used: {resin: " + amount + "}}";
    };
  }

  private static void followed(Shelf shelf) {
    Quantity amount = Quantity.none(shelf.unit());
    Money worth = Money.ZERO;
    for (Move move : shelf.moves()) {
      boolean comes = move.kind().comes();
      amount = comes ? amount.plus(move.moved()) : amount.minus(move.moved());
      worth = comes ? worth.plus(move.worth()) : worth.minus(move.worth());
      assertEquals(move.onHand().orElseThrow().inBase(), amount.inBase());
      assertEquals(move.worthAfter().orElseThrow(), worth);
      assertFalse(worth.isNegative());
      assertTrue(comes || !amount.isZero() || worth.isZero(), "worth of nothing: " + move);
    }
    assertEquals(shelf.amountOnHand().orElseThrow().inBase(), amount.inBase());
    assertEquals(shelf.worthOnHand().orElseThrow(), worth);
  }

  private static void kitsHoldWhatIsThere(Shelf shelf) {
    Quantity left = Quantity.none(Unit.of("ml"));
    Quantity came = Quantity.none(Unit.of("ml"));
    for (Kit kit : shelf.kits()) {
      left = left.plus(kit.left());
      came = came.plus(kit.amount());
      assertEquals(kit.left().isZero(), kit.emptied().isPresent());
    }
    assertEquals(shelf.amountOnHand().orElseThrow().inBase(), left.inBase());
    assertEquals(
        shelf.sum(Move.Kind.OPENING, Move.Kind.BOUGHT, Move.Kind.FOUND).inBase(), came.inBase());
  }
}
