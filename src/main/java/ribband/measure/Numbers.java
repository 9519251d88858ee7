package ribband.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Numbers as builders write them: {@code 2}, {@code 2.75}, {@code 3/4}, {@code 2 3/4}, {@code 2¾}.
 */
final class Numbers {
  private static final Map<String, String> GLYPHS =
      Map.ofEntries(
          Map.entry("¼", "1/4"),
          Map.entry("½", "1/2"),
          Map.entry("¾", "3/4"),
          Map.entry("⅓", "1/3"),
          Map.entry("⅔", "2/3"),
          Map.entry("⅛", "1/8"),
          Map.entry("⅜", "3/8"),
          Map.entry("⅝", "5/8"),
          Map.entry("⅞", "7/8"));

  private static final String GLYPH = "[¼½¾⅓⅔⅛⅜⅝⅞]";

  /** One number, for use inside larger patterns; holds no capturing group. */
  static final String PATTERN =
      "(?:[0-9]{1,9}[ -][0-9]{1,4}/[0-9]{1,4}|[0-9]{1,9} ?"
          + GLYPH
          + "|[0-9]{1,4}/[0-9]{1,4}|"
          + GLYPH
          + "|[0-9]{1,9}(?:\\.[0-9]{1,9})?)";

  private static final Pattern MIXED =
      Pattern.compile("(?:([0-9]{1,9})[ -])?([0-9]{1,4})/([0-9]{1,4})");
  private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(?:\\.[0-9]{1,9})?");
  private static final Pattern ZERO_IN_FRONT = Pattern.compile("0[0-9].*");

  private Numbers() {}

  /** The exact number, or empty where the text is none; a zero in front is refused too. */
  static Optional<BigFraction> read(String text) {
    if (ZERO_IN_FRONT.matcher(text).matches()) {
      return Optional.empty();
    }
    if (DECIMAL.matcher(text).matches()) {
      return Optional.of(decimal(new BigDecimal(text)));
    }
    return fraction(text);
  }

  private static Optional<BigFraction> fraction(String text) {
    Matcher mixed = MIXED.matcher(spellGlyphsOut(text));
    if (!mixed.matches()) {
      return Optional.empty();
    }
    BigInteger over = new BigInteger(mixed.group(2));
    BigInteger under = new BigInteger(mixed.group(3));
    boolean properPart = mixed.group(1) == null || over.compareTo(under) < 0;
    if (under.signum() == 0 || !properPart) {
      return Optional.empty();
    }
    BigInteger whole = mixed.group(1) == null ? BigInteger.ZERO : new BigInteger(mixed.group(1));
    return Optional.of(BigFraction.of(over, under).add(whole));
  }

  private static String spellGlyphsOut(String text) {
    String spelled = text;
    for (Map.Entry<String, String> glyph : GLYPHS.entrySet()) {
      spelled = spelled.replace(glyph.getKey(), " " + glyph.getValue() + " ");
    }
    return spelled.strip().replaceAll(" {2,}", " ");
  }

  /** The decimal as a fraction, exactly. */
  static BigFraction decimal(BigDecimal decimal) {
    BigFraction unscaled = BigFraction.of(decimal.unscaledValue());
    return decimal.scale() >= 0
        ? unscaled.divide(BigInteger.TEN.pow(decimal.scale()))
        : unscaled.multiply(BigInteger.TEN.pow(-decimal.scale()));
  }
}
