package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/**
 * A concave fillet of radius r in a square corner has the section r2 (1 - pi/4) = 0.2146018366 r2:
 * the area between two tangents at a right angle and their circle. The volumes follow by
 * arithmetic.
 */
class FilletTest {
  private static String in(String unit, Quantity volume, int places) {
    return volume
        .in(Unit.of(unit))
        .number()
        .bigDecimalValue(places, RoundingMode.HALF_UP)
        .toPlainString();
  }

  @Test
  void theSection() {
    Quantity one = Fillet.volume(Read.quantity("1 cm"), Read.quantity("1 cm"));
    assertEquals("0.2146018366", in("ml", one, 10));
    // One less a quarter of the circle's number, by a series of our own.
    BigDecimal quarter = circle().divide(BigDecimal.valueOf(4));
    assertEquals(
        BigDecimal.ONE.subtract(quarter).setScale(25, RoundingMode.HALF_UP),
        one.number().bigDecimalValue(25, RoundingMode.HALF_UP));
  }

  /** Pi = 16 arctan(1/5) - 4 arctan(1/239), a formula of 1706 (from memory). */
  private static BigDecimal circle() {
    return arctan(5)
        .multiply(BigDecimal.valueOf(16))
        .subtract(arctan(239).multiply(BigDecimal.valueOf(4)));
  }

  private static BigDecimal arctan(long denominator) {
    BigDecimal x = BigDecimal.ONE.divide(BigDecimal.valueOf(denominator), 50, RoundingMode.HALF_UP);
    BigDecimal square = x.multiply(x);
    BigDecimal power = x;
    BigDecimal sum = BigDecimal.ZERO;
    for (int n = 1; n < 100; n += 2) {
      BigDecimal term = power.divide(BigDecimal.valueOf(n), 50, RoundingMode.HALF_UP);
      sum = n % 4 == 1 ? sum.add(term) : sum.subtract(term);
      power = power.multiply(square).setScale(50, RoundingMode.HALF_UP);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({
    "1/2 in, 96 in, 5.15044, 2.8539, 84.40",
    "1/2 in, 8 ft, 5.15044, 2.8539, 84.40",
    "3/4 in, 144 in, 17.38275, 9.6320, 284.85",
    "12.7 mm, 2438.4 mm, 5.15044, 2.8539, 84.40"
  })
  void volumes(String radius, String length, String inches, String ounces, String millilitres) {
    Quantity volume = Fillet.volume(Read.quantity(radius), Read.quantity(length));
    assertEquals(inches, in("in3", volume, 5));
    assertEquals(ounces, in("fl oz", volume, 4));
    assertEquals(millilitres, in("ml", volume, 2));
  }

  @Test
  void twiceTheRadiusTakesFourTimesAsMuch() {
    Quantity once = Fillet.volume(Read.quantity("6 mm"), Read.quantity("1 m"));
    assertEquals(
        BigFraction.of(4), Fillet.volume(Read.quantity("12 mm"), Read.quantity("1 m")).over(once));
    assertEquals(
        BigFraction.of(3), Fillet.volume(Read.quantity("6 mm"), Read.quantity("3 m")).over(once));
  }
}
