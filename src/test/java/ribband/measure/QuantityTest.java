package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Units by their exact definitions, and amounts as they are written. */
class QuantityTest {
  private static BigFraction exact(String decimal) {
    return Numbers.decimal(new BigDecimal(decimal));
  }

  /**
   * In ml, g, mm, mm2. The inch is 2.54 cm, the US gallon 231 cubic inches and the pound 0.45359237
   * kg exactly: NIST Handbook 44, Appendix C, Section 4, and NIST SP 811, Appendix B (from memory);
   * the same figures stand in the UCUM table. The rest follows by arithmetic.
   */
  @ParameterizedTest
  @CsvSource({
    "1 in, 25.4",
    "1 ft, 304.8",
    "1 yd, 914.4",
    "1 m, 1000",
    "1 cm, 10",
    "1 mm, 1",
    "1 in2, 645.16",
    "1 ft2, 92903.04",
    "1 m2, 1000000",
    "1 cm2, 100",
    "1 yd2, 836127.36",
    "1 in3, 16.387064",
    "1 gal, 3785.411784",
    "1 qt, 946.352946",
    "1 pt, 473.176473",
    "1 fl oz, 29.5735295625",
    "1 l, 1000",
    "1 ml, 1",
    "1 tbsp, 14.78676478125",
    "1 tsp, 4.92892159375",
    "1 lb, 453.59237",
    "1 oz, 28.349523125",
    "1 kg, 1000",
    "1 g, 1"
  })
  void unitsHaveTheirExactSizes(String one, String size) throws Unreadable {
    assertEquals(exact(size), Quantity.read(one).inBase());
  }

  @Test
  void unitsFollowFromOneAnother() throws Unreadable {
    assertEquals(same("231 in3"), same("1 gal"));
    assertEquals(same("4 qt"), same("1 gal"));
    assertEquals(same("128 fl oz"), same("1 gal"));
    assertEquals(same("3 tsp"), same("1 tbsp"));
    assertEquals(same("2 tbsp"), same("1 fl oz"));
    assertEquals(same("16 oz"), same("1 lb"));
    assertEquals(same("144 in2"), same("1 ft2"));
    assertEquals(same("12 in"), same("1 ft"));
  }

  private static BigFraction same(String text) throws Unreadable {
    return Quantity.read(text).inBase();
  }

  @ParameterizedTest
  @CsvSource({
    "2 fl oz, 2 fl oz",
    "2 fl. oz., 2 fl oz",
    "2 FL OZ, 2 fl oz",
    "1 1/2 qt, 1½ qt",
    "1½ qt, 1½ qt",
    "¾ gal, ¾ gal",
    "1/3 gal, 0.33 gal",
    "2 ft 6 in, 30 in",
    "2' 6\", 30 in",
    "40, 40",
    "40 ring nails, 40 ring nails",
    "12 board feet, 12 bf",
    "2 1/2 in x 6 in, 15 in²",
    "2 in × 8 ft, 192 in²",
    "1 ft 6 in x 2 ft, 432 in²",
    "20 cm x 1.5 m, '3,000 cm²'",
    "2 boxes, 2 boxes"
  })
  void amountsAreReadAndSaid(String written, String said) throws Unreadable {
    assertEquals(said, Saying.quantity(Quantity.read(written)));
  }

  @Test
  void ouncesOfWeightAreNoFluidOunces() throws Unreadable {
    assertEquals(Dimension.MASS, Quantity.read("2 oz").unit().dimension());
    assertEquals(Dimension.VOLUME, Quantity.read("2 fl oz").unit().dimension());
    Unreadable refused =
        assertThrows(Unreadable.class, () -> Quantity.of(Dimension.VOLUME).read("2 oz"));
    assertEquals(
        "is a weight, and a volume belongs here; write fl oz for fluid ounces",
        refused.getMessage());
  }

  @Test
  void countsGoTogetherByTheirWord() throws Unreadable {
    assertTrue(Unit.read("screws").goesWith(Unit.read("screw")));
    assertTrue(Unit.read("boxes").goesWith(Unit.read("Box")));
    assertTrue(Unit.read("tubes").goesWith(Unit.read("tube")));
    assertTrue(Unit.read("glasses").goesWith(Unit.read("glass")));
    assertTrue(Unit.read("screws").goesWith(Unit.PIECES));
    assertFalse(Unit.read("screws").goesWith(Unit.read("boxes")));
    assertFalse(Unit.read("oz").goesWith(Unit.read("fl oz")));
    assertTrue(Unit.read("ml").goesWith(Unit.read("gal")));
  }

  @ParameterizedTest
  @CsvSource({"1 qt, 1, 1 qt", "2 of 1 qt, 2, 1 qt", "3 of 100 screws, 3, 100 screws"})
  void packsAreReadByCount(String written, int count, String pack) throws Unreadable {
    Packs packs = Packs.read(written);
    assertEquals(count, packs.count());
    assertEquals(pack, Saying.quantity(packs.pack()));
    assertEquals(packs.pack().inBase().multiply(count), packs.total().inBase());
  }

  /** Worked by arithmetic: 61 F is 16.11 C, and -40 is the same on both scales. */
  @ParameterizedTest
  @CsvSource({
    "61 F, 16.11",
    "32 F, 0.00",
    "72 °F, 22.22",
    "-40 F, -40.00",
    "16 C, 16",
    "21.5c, 21.5"
  })
  void temperaturesConvert(String written, String celsius) throws Unreadable {
    assertEquals(
        new BigDecimal(celsius), Temperature.read(written).in(Temperature.Scale.C).degrees());
  }

  @ParameterizedTest
  @CsvSource({
    "20 min, 1200",
    "8 h, 28800",
    "1 h 30 min, 5400",
    "1.5 h, 5400",
    "7 days, 604800",
    "2 weeks, 1209600"
  })
  void spansAreElapsedTime(String written, long seconds) throws Unreadable {
    assertEquals(seconds, Span.read(written).seconds());
  }

  /** Each asks for one dimension and is given another. */
  @ParameterizedTest
  @CsvSource({
    "VOLUME, 2 oz, 'is a weight, and a volume belongs here; write fl oz for fluid ounces'",
    "VOLUME, 2 lb, 'is a weight, and a volume belongs here; write it as 2 fl oz'",
    "MASS, 2 fl oz, 'is a volume, and a weight belongs here; write it as 12 oz'",
    "LENGTH, 40, 'has no unit, and a length belongs here; write its unit too, as 40 in'",
    "AREA, 40, 'has no unit, and an area belongs here; write its unit too, as 40 in2'",
    "VOLUME, 1 1/2, 'has no unit, and a volume belongs here; write its unit too, as 1 1/2 fl oz'",
    "MASS, 40, 'has no unit, and a weight belongs here; write its unit too, as 40 oz'",
    "LENGTH, 40 screws, 'is a count, and a length belongs here; write it as 8 ft'",
    "AREA, 8 ft, 'is a length, and an area belongs here; write it as 2 in x 8 ft'",
    "BOARDS, 8 ft, 'is a length, and board feet belongs here; write it as 12 board feet'",
    "COUNT, 3 bf, 'is board feet, and a count belongs here; write it as 40'"
  })
  void anotherDimensionIsNamedBesideTheOneThatBelongs(
      Dimension wanted, String written, String told) {
    assertEquals(
        told, assertThrows(Unreadable.class, () -> Quantity.of(wanted).read(written)).getMessage());
  }

  /** What is advised of a dimension has that dimension. */
  @ParameterizedTest
  @EnumSource(Dimension.class)
  void theExampleOfADimensionIsReadAsThat(Dimension dimension) throws Unreadable {
    Quantity quantity = Quantity.of(dimension).read(dimension.example());
    assertEquals(dimension, quantity.unit().dimension());
  }

  @Test
  void aUnitIsToldWithWhatItMeasures() throws Unreadable {
    assertEquals("fl oz (a volume)", Unit.read("fl oz").told());
    assertEquals("screws (a count)", Unit.read("screws").told());
    assertEquals("a count", Unit.PIECES.told());
  }
}
