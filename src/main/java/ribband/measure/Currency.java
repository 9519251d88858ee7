package ribband.measure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
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

  private static final Pattern AMOUNT = Pattern.compile("-?(0|[1-9][0-9]{0,12})(\\.[0-9]{1,20})?");
  private static final BigDecimal MOST_MINOR = BigDecimal.TEN.pow(12);
  private static final BigDecimal EXAMPLE = new BigDecimal("88.20");

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
    Currency currency = Table.BY_CODE.get(text.strip().toUpperCase(Locale.ROOT));
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
    if (isTooMuch(amount)) {
      throw tooMuch();
    }
    if (amount.scale() > digits) {
      throw new Unreadable(
          "has more decimal places than " + code + " has (" + digits + ")",
          "write " + nearest(amount));
    }
    return new Money(amount.movePointRight(digits).longValueExact());
  }

  private boolean isTooMuch(BigDecimal amount) {
    return amount.movePointRight(digits).abs().compareTo(MOST_MINOR) > 0;
  }

  private Unreadable tooMuch() {
    return new Unreadable("is more than any boat costs", figuresAlone());
  }

  private String figuresAlone() {
    return "write figures alone, as " + nearest(EXAMPLE);
  }

  private String nearest(BigDecimal amount) {
    int places = Math.min(amount.scale(), digits);
    return amount.setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** A way of writing an amount that we do not take, and what it means. */
  private record Slip(String wrong, Pattern written, UnaryOperator<String> mend) {
    Slip(String wrong, String written, UnaryOperator<String> mend) {
      this(wrong, Pattern.compile(written), mend);
    }
  }

  private static final List<Slip> SLIPS =
      List.of(
          new Slip(
              "has a thousands mark",
              "-?[1-9][0-9]{0,2}(?:[,'’\u00a0 ][0-9]{3}){1,4}(?:\\.[0-9]+)?",
              text -> text.replaceAll("[,'’\u00a0 ]", "")),
          new Slip(
              "has thousands marks and a decimal comma",
              "-?[1-9][0-9]{0,2}(?:\\.[0-9]{3}){1,4},[0-9]+",
              text -> text.replace(".", "").replace(',', '.')),
          new Slip("has a decimal comma", "-?[0-9]+,[0-9]{1,4}", text -> text.replace(',', '.')),
          new Slip(
              "has a zero in front",
              "-?0[0-9]+(?:\\.[0-9]+)?",
              text -> text.replaceFirst("^(-?)0+(?=[0-9])", "$1")),
          new Slip("has a sign in front", "\\+[0-9.]+", text -> text.substring(1)),
          new Slip(
              "has no figure before the point",
              "-?\\.[0-9]+",
              text -> text.replaceFirst("\\.", "0.")),
          new Slip("has more than figures", ".*", text -> text));

  private static final Pattern CURRENCY_NAMED =
      Pattern.compile("(?i)^(-?)(?:\\p{Sc}|[a-z]{3})\\s*|\\s*(?:\\p{Sc}|[a-z]{3})$");

  private Unreadable refusal(String plain) {
    String bare =
        plain.length() > 40 ? plain : CURRENCY_NAMED.matcher(plain).replaceAll("$1").strip();
    for (Slip slip : SLIPS) {
      if (slip.written().matcher(bare).matches()) {
        String mended = slip.mend().apply(bare);
        if (AMOUNT.matcher(mended).matches()) {
          BigDecimal meant = new BigDecimal(nearest(new BigDecimal(mended)));
          return isTooMuch(meant)
              ? tooMuch()
              : new Unreadable(slip.wrong(), "write " + meant.toPlainString());
        }
      }
    }
    return new Unreadable("is not an amount of money", figuresAlone());
  }
}
