package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was reckoned, as a shop measures it; the factors are those of Unit, exact by definition. */
class ShopTalkTest {
  private static final ShopTalk US = new ShopTalk(Units.US);
  private static final ShopTalk METRIC = new ShopTalk(Units.METRIC);

  @ParameterizedTest
  @CsvSource({
    "44.36 ml, 44 ml, 1½ fl oz",
    "9.96 ml, 10 ml, ⅜ fl oz",
    "2.54 ml, 2½ ml, ⅛ fl oz",
    "1.4667 fl oz, 43 ml, 1½ fl oz",
    "127.9 fl oz, 3.78 l, 127⅞ fl oz",
    "128 fl oz, 3.79 l, 1 gal",
    "999 ml, 999 ml, 33¾ fl oz",
    "1000 ml, 1 l, 33⅞ fl oz",
    "15.9 oz, 451 g, 15⅞ oz",
    "16 oz, 454 g, 1 lb",
    "1 kg, 1 kg, 2¼ lb",
    "35.9 in, 912 mm, 35⅞ in",
    "36 in, 914 mm, 3 ft",
    "1 m, 1 m, 3¼ ft",
    "575 in2, '3,710 cm²', 575 in²",
    "576 in2, '3,716 cm²', 4 ft²",
    "5 ft2, '4,645 cm²', 5 ft²",
    "1 m2, 1 m², 10.8 ft²",
    "7/3 board feet, 2.33 bf, 2.33 bf",
    "40 screws, 40 screws, 40 screws"
  })
  void reckoned(String exact, String metric, String us) throws Unreadable {
    Quantity amount = Quantity.read(exact);
    assertEquals(metric, METRIC.reckoned(amount));
    assertEquals(us, US.reckoned(amount));
  }

  /** A material is told in the unit it is kept in, as far as a shop of that system has it. */
  @ParameterizedTest
  @CsvSource({
    "1.9 qt, qt, 1.8 l, 1⅞ qt",
    "0.15 qt, qt, 142 ml, 4¾ fl oz",
    "1 qt, qt, 946 ml, 1 qt",
    "0 qt, qt, 0 ml, 0 qt",
    "1234.5 ml, ml, '1,235 ml', 41¾ fl oz",
    "9.96 ml, ml, 10 ml, ⅜ fl oz",
    "8.76 ml, ml, 8.8 ml, ¼ fl oz",
    "1.239 kg, kg, 1.24 kg, 2¾ lb",
    "0.25 kg, kg, 250 g, 8⅞ oz",
    "18 in, ft, 457 mm, 1½ ft",
    "40 screws, screws, 40 screws, 40 screws"
  })
  void reckonedInAUnitOfItsOwn(String exact, String unit, String metric, String us)
      throws Unreadable {
    Quantity amount = Quantity.read(exact);
    assertEquals(metric, METRIC.reckoned(amount, Unit.read(unit)));
    assertEquals(us, US.reckoned(amount, Unit.read(unit)));
  }

  @Test
  void whatWasWrittenStays() throws Unreadable {
    assertEquals("1.47 fl oz", US.written(Quantity.read("1.4667 fl oz")));
    assertEquals("43 ml", METRIC.written(Quantity.read("1.4667 fl oz")));
    assertEquals("1½ fl oz", US.written(Quantity.read("44.36 ml")));
  }

  @ParameterizedTest
  @CsvSource({
    "140 in2 per fl oz, 31 cm² per ml, 140 in² per fl oz",
    "280 in2 per 2 fl oz, 31 cm² per ml, 140 in² per fl oz",
    "3 m2 per kg, 30 cm² per g, 132 in² per oz",
    "200 cm2 per 30 ml, 6.7 cm² per ml, 31 in² per fl oz"
  })
  void spreads(String written, String metric, String us) throws Unreadable {
    Spread spread = Spread.read(written);
    assertEquals(metric, METRIC.spread(spread));
    assertEquals(us, US.spread(spread));
  }

  @Test
  void theAreaOfOneUnit() throws Unreadable {
    Spread spread = Spread.read("140 in2 per fl oz");
    assertEquals(Quantity.read("4480 in2"), spread.areaPer(Unit.of("qt")));
    assertEquals(
        Quantity.read("144 in2"), Spread.read("1 ft2 per 12 ml").areaPer(Unit.of("ml")).times(12));
  }

  @Test
  void proportionsMultiply() throws Unreadable {
    Proportion parts = Proportion.read("2 to 1");
    Proportion densities = Proportion.read("1.5 to 0.5");
    assertEquals(new Proportion(BigFraction.of(3), BigFraction.of(1, 2)), parts.times(densities));
    assertEquals(
        new Proportion(BigFraction.of(4, 3), BigFraction.of(2)), parts.dividedBy(densities));
    assertEquals(BigFraction.of(3), parts.sum());
  }

  @Test
  void sharesAndAmounts() throws Unreadable {
    assertEquals(BigFraction.of(1, 8), Percent.read("12.5%").share());
    Quantity two = Quantity.read("2 fl oz");
    Quantity pint = Quantity.read("1 pt");
    assertEquals(Quantity.read("18 fl oz"), two.plus(pint));
    assertEquals(Quantity.read("14 fl oz"), pint.in(two.unit()).minus(two));
    assertEquals(BigFraction.of(8), pint.over(two));
    assertThrows(IllegalArgumentException.class, () -> two.minus(pint));
    assertThrows(IllegalArgumentException.class, () -> two.plus(Quantity.read("2 oz")));
    assertThrows(IllegalArgumentException.class, () -> Unit.of("furlong"));
  }

  @Test
  void aWarmthGoesOn() throws Unreadable {
    Temperature warm = Temperature.read("61 F");
    Warmth.Stay goesOn = new Warmth.Stay(warm, Optional.empty());
    Warmth.Stay ends = new Warmth.Stay(warm, Optional.of(new Span(60)));
    assertThrows(IllegalArgumentException.class, () -> new Warmth(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Warmth(List.of(ends)));
    assertThrows(IllegalArgumentException.class, () -> new Warmth(List.of(goesOn, goesOn)));
    assertEquals(2, new Warmth(List.of(ends, goesOn)).stays().size());
  }
}
