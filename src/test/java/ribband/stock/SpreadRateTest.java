package ribband.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.ShopTalk;
import ribband.measure.Units;

/** Which entries measure a spread, and which tell nothing about it. */
class SpreadRateTest {
  private static final LocalDate LATE = LocalDate.of(2029, 12, 31);
  private static final String PROJECT =
      """
      adhesives:
        epoxy: {material: resin%s}
        seal: {material: resin}
        paint: {spread: 400 in2 per fl oz}
      pieces:
        strakes: {total: 16, glue area: 1 in x 100 in, adhesive: epoxy}
        frames: {total: 4, adhesive: epoxy}
        moulds: {total: 5}
      """;

  @TempDir Path folder;

  private Stock stock(String stated, Stock.Told told, String... entries) throws Exception {
    return Stock.of(Texts.journal(folder, PROJECT.formatted(stated), entries), LATE, told);
  }

  private List<String> measures(Stock stock) {
    return stock.shelf("resin").orElseThrow().spreads().stream()
        .flatMap(
            rate ->
                rate.measures().stream()
                    .map(
                        m ->
                            rate.adhesive().name()
                                + " "
                                + new ShopTalk(Units.US).spread(m.spread())))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "joints: [{adhesive: epoxy, area: 200 in2}] | epoxy 100 in² per fl oz",
        "coats: [{adhesive: seal, area: 300 in2}] | seal 150 in² per fl oz",
        "joints: [{adhesive: epoxy, area: 200 in2}, {adhesive: epoxy, area: 100 in2}] | epoxy 150"
            + " in² per fl oz",
        "joints: [{adhesive: epoxy, area: 200 in2}, {adhesive: paint, area: 100 in2}] | epoxy 100"
            + " in² per fl oz",
        "pieces: {strakes: 3, moulds: 2} | epoxy 150 in² per fl oz",
        "pieces: {strakes: 3}; joints: [{adhesive: epoxy, area: 200 in2}] | epoxy 100 in² per fl oz",
        "joints: [{adhesive: epoxy, area: 200 in2}, {adhesive: epoxy}] | ''",
        "joints: [{adhesive: epoxy, area: 200 in2}, {name: Another}] | ''",
        "joints: [{adhesive: epoxy, area: 200 in2}, {adhesive: seal, area: 10 in2}] | ''",
        "pieces: {strakes: 3, frames: 1} | ''",
        "pieces: {strakes: -3} | ''",
        "pieces: {moulds: 3} | ''",
        "joints: [{adhesive: paint, area: 10 in2}] | ''"
      })
  void anEntryMeasures(String keys, String told) throws Exception {
    String entry = "2026-03-01\nmaterials: {used: {resin: 2 fl oz}}\n" + keys.replace("; ", "\n");
    String before = "2026-02-28\npieces: {strakes: 3}";
    Stock stock = stock("", Stock.Told.TO_THE_BUILDER, before, entry);
    assertEquals(told.isEmpty() ? List.of() : List.of(told), measures(stock));
  }

  /** Of cans nobody knows how much is in one. */
  @Test
  void whatIsCountedMeasuresNothing() throws Exception {
    Stock stock =
        stock(
            "",
            Stock.Told.TO_THE_BUILDER,
            "2026-03-01\nmaterials: {used: {resin: 1 can}}\npieces: {strakes: 3}");
    assertEquals(List.of(), measures(stock));
  }

  @Test
  void nothingUsedMeasuresNothing() throws Exception {
    Stock stock =
        stock(
            "",
            Stock.Told.TO_THE_BUILDER,
            "2026-03-01\nmaterials: {used: {resin: 0 fl oz}}\npieces: {strakes: 3}");
    assertEquals(List.of(), measures(stock));
  }

  @Test
  void aPrivateEntryMeasuresForTheBuilderAlone() throws Exception {
    String entry =
        "2026-03-01\nprivate: true\nmaterials: {used: {resin: 2 fl oz}, bought: [{material: resin,"
            + " amount: 1 qt, cost: 1}]}\npieces: {strakes: 3}";
    Stock builders = stock("", Stock.Told.TO_THE_BUILDER, entry);
    Stock readers = stock("", Stock.Told.TO_READERS, entry);
    assertEquals(List.of("epoxy 150 in² per fl oz"), measures(builders));
    assertEquals(List.of(), measures(readers));
    assertEquals(1, builders.shelf("resin").get().kits().get(0).nights());
    assertEquals(0, readers.shelf("resin").get().kits().get(0).nights());
    assertEquals(
        builders.shelf("resin").get().amountOnHand(), readers.shelf("resin").get().amountOnHand());
  }

  @Test
  void theRateIsSaid() throws Exception {
    StockWords words = new StockWords(new ShopTalk(Units.US), Optional.empty());
    String one = "2026-03-01\nmaterials: {used: {resin: 2 fl oz}}\npieces: {strakes: 3}";
    Stock unstated = stock("", Stock.Told.TO_THE_BUILDER, one);
    assertEquals(
        List.of(
            "measured 150 in² per fl oz over 1 entry, none stated",
            "not measured yet, none stated"),
        unstated.shelf("resin").get().spreads().stream().map(words::spread).toList());
    Stock stated = stock(", spread: 140 in2 per fl oz", Stock.Told.TO_THE_BUILDER, one);
    assertEquals(
        "measured 150 in² per fl oz over 1 entry, stated 140 in² per fl oz; the stated one counts"
            + " until there are five",
        words.spread(stated.shelf("resin").get().spreads().get(0)));
  }
}
