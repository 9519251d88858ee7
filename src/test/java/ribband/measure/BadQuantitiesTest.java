package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of an amount that cannot be read, whole. */
class BadQuantitiesTest {
  @ParameterizedTest
  @CsvSource({
    "'', 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "fl oz, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "-2 fl oz, 'is below zero; write how much there is, as 2 fl oz'",
    "−2 fl oz, 'is below zero; write how much there is, as 2 fl oz'",
    "'1,5 qt', 'has a decimal comma; write 1.5 qt'",
    "1.5.2 qt, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "1/0 qt, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "1 3/2 qt, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "2e3 ml, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'",
    "2 in x 8, 'has a unit on one side alone; write 2 in x 8 in'",
    "2 x 8 ft, 'has a unit on one side alone; write 2 ft x 8 ft'",
    "2 oz x 8 ft, 'is not an amount; write a number and a unit, as 2 fl oz, 1 1/2 qt or 40 screws'"
  })
  void amounts(String written, String told) {
    assertEquals(
        told, assertThrows(Unreadable.class, () -> Quantity.read(written), written).getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "VOLUME, 2 oz, 'is a weight, and a volume belongs here; write fl oz for fluid ounces'",
    "VOLUME, 2 ounces, 'is a weight, and a volume belongs here; write fl oz for fluid ounces'",
    "VOLUME, 90 g, 'is a weight, and a volume belongs here; write it as 2 fl oz'",
    "VOLUME, 2 in x 8 ft, 'is an area, and a volume belongs here; write it as 2 fl oz'",
    "VOLUME, 40 screws, 'is a count, and a volume belongs here; write it as 2 fl oz'",
    "MASS, 3 ft2, 'is an area, and a weight belongs here; write it as 12 oz'",
    "AREA, 2 oz, 'is a weight, and an area belongs here; write it as 2 in x 8 ft'",
    "AREA, 2 gal, 'is a volume, and an area belongs here; write it as 2 in x 8 ft'",
    "LENGTH, 2 bf, 'is board feet, and a length belongs here; write it as 8 ft'",
    "COUNT, 2 in, 'is a length, and a count belongs here; write it as 40'"
  })
  void mixedDimensionsNameBoth(Dimension wanted, String written, String told) {
    assertEquals(
        told, assertThrows(Unreadable.class, () -> Quantity.of(wanted).read(written)).getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "140 in2, 'is not a spread; write 140 in2 per fl oz or 200 cm2 per 30 ml'",
    "140 in2 per ft, 'is not an area for an amount; write 140 in2 per fl oz or 200 cm2 per 30 ml'",
    "140 fl oz per in2, 'is not an area for an amount; write 140 in2 per fl oz or 200 cm2 per 30 ml'",
    "0 in2 per fl oz, 'is not an area for an amount; write 140 in2 per fl oz or 200 cm2 per 30 ml'"
  })
  void spreads(String written, String told) {
    assertEquals(told, assertThrows(Unreadable.class, () -> Spread.read(written)).getMessage());
  }
}
