package ribband.measure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * A currency of ISO 4217. The table is ours, so that no other Java changes a figure.
 *
 * @param code three capital letters
 * @param digits decimal places of its smallest unit, 0 to 4
 * @param sign what stands before an amount said to a person: {@code $}, or the code and a space
 */
public record Currency(String code, int digits, String sign) {
  /** Where a project writes no amount at all: only zero is ever said in it. */
  public static final Currency NONE = new Currency("", 0, "");

  private static final Map<String, String> SIGNS =
      Map.of("USD", "$", "EUR", "€", "GBP", "£", "JPY", "¥");

  private static final Pattern AMOUNT = Pattern.compile("-?(0|[1-9][0-9]{0,11})(\\.[0-9]+)?");
  private static final String WRITE = "write figures alone, as 88.20";

  public Currency {
    Objects.requireNonNull(code);
    Objects.requireNonNull(sign);
    if (digits < 0 || digits > 4) {
      throw new IllegalArgumentException("digits of " + code + ": " + digits);
    }
  }

  private static final class Table {
    static final Map<String, Currency> BY_CODE = load();

    private static Map<String, Currency> load() {
      Map<String, Currency> byCode = new TreeMap<>();
      try (BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(
                  Objects.requireNonNull(
                      Currency.class.getResourceAsStream("/ribband/measure/iso-4217.csv")),
                  StandardCharsets.UTF_8))) {
        lines.lines().skip(1).map(line -> line.split(",")).forEach(cells -> add(byCode, cells));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return byCode;
    }

    private static void add(Map<String, Currency> byCode, String[] cells) {
      String code = cells[0];
      String sign = SIGNS.getOrDefault(code, code + "\u00a0");
      byCode.put(code, new Currency(code, Integer.parseInt(cells[1]), sign));
    }
  }

  /** All currencies by their code. */
  public static Map<String, Currency> all() {
    return Map.copyOf(Table.BY_CODE);
  }

  /** Reads an ISO 4217 code. */
  public static Currency readCode(String text) throws Unreadable {
    Currency currency = Table.BY_CODE.get(text.strip().toUpperCase(java.util.Locale.ROOT));
    if (currency == null) {
      throw new Unreadable("is no currency code of ISO 4217", "write one as USD, EUR or GBP");
    }
    return currency;
  }

  /**
   * Reads an amount of this currency.
   *
   * <p>spec: exact decimals of the currency; more places than it has is an error; no currency
   * signs, no thousands marks.
   */
  public Money read(String text) throws Unreadable {
    String plain = text.strip().replace('−', '-');
    if (!AMOUNT.matcher(plain).matches()) {
      throw refusal(plain);
    }
    BigDecimal amount = new BigDecimal(plain);
    if (amount.scale() > digits) {
      BigDecimal nearest = amount.setScale(digits, RoundingMode.HALF_UP);
      throw new Unreadable(
          "has more decimal places than " + code + " has (" + digits + ")",
          "write " + nearest.toPlainString());
    }
    return new Money(amount.movePointRight(digits).longValueExact());
  }

  private static Unreadable refusal(String plain) {
    String bare = plain.replaceAll("[\\p{Sc}\\s'_\u00a0]|(?i:[a-z]{3})", "");
    if (bare.matches("-?[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]+)?")) {
      return new Unreadable("has a thousands mark", "write " + bare.replace(",", ""));
    }
    if (bare.matches("-?[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+")) {
      return new Unreadable(
          "has thousands marks and a decimal comma",
          "write " + bare.replace(".", "").replace(',', '.'));
    }
    if (bare.matches("-?[0-9]+,[0-9]{1,4}")) {
      return new Unreadable("has a decimal comma", "write " + bare.replace(',', '.'));
    }
    if (bare.matches("-?0[0-9]+(\\.[0-9]+)?")) {
      return new Unreadable(
          "has a zero in front", "write " + bare.replaceFirst("^(-?)0+(?=[0-9])", "$1"));
    }
    if (bare.matches("\\+[0-9.]+")) {
      return new Unreadable("has a sign in front", "write " + bare.substring(1));
    }
    if (bare.matches("-?\\.[0-9]+")) {
      return new Unreadable(
          "has no figure before the point", "write " + bare.replaceFirst("\\.", "0."));
    }
    if (!bare.equals(plain) && AMOUNT.matcher(bare).matches()) {
      return new Unreadable("has more than figures", "write " + bare);
    }
    if (bare.matches("-?[0-9]{13,}(\\.[0-9]+)?")) {
      return new Unreadable("is too large an amount", "write at most 12 figures");
    }
    return new Unreadable("is not an amount of money", WRITE);
  }
}
