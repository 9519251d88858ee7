package ribband.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Numbers as a shop writes them: commas between thousands, signs for eighths. */
final class Fractions {
  private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

  private Fractions() {}

  /**
   * The sign for so many eighths; empty for none.
   *
   * @param eighths 0 to 7
   */
  static String eighths(int eighths) {
    return EIGHTHS[eighths];
  }

  /** With commas between thousands. */
  static String grouped(BigInteger number) {
    StringBuilder figures = new StringBuilder(number.toString());
    for (int i = figures.length() - 3; i > 0; i -= 3) {
      figures.insert(i, ',');
    }
    return figures.toString();
  }

  /** In eighths where that is exact, else with at most two decimals. */
  static String said(BigFraction number) {
    BigFraction eighths = number.multiply(8);
    if (eighths.getDenominator().equals(BigInteger.ONE)) {
      BigInteger[] parts = eighths.getNumerator().divideAndRemainder(BigInteger.valueOf(8));
      String part = EIGHTHS[parts[1].intValue()];
      return parts[0].signum() == 0 && !part.isEmpty() ? part : grouped(parts[0]) + part;
    }
    return decimal(number.bigDecimalValue(2, RoundingMode.HALF_UP));
  }

  private static String decimal(BigDecimal value) {
    BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    String figures = plain.toPlainString();
    int point = figures.indexOf('.');
    return grouped(plain.toBigInteger()) + (point < 0 ? "" : figures.substring(point));
  }
}
