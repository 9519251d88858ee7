package ribband.past;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.measure.Unreadable;

/**
 * Reads amounts of the journal's currency as spreadsheets write them, exactly: signs, names of
 * currencies and parentheses are taken off here.
 */
final class MoneyCell {
  private static final Pattern NAMED =
      Pattern.compile("^(\\p{Sc}|[A-Za-z]{3})|(\\p{Sc}|[A-Za-z]{3})$");

  /** Whose sign it is, where it is not the journal's; a dollar sign is one of many dollars. */
  private static final Map<String, List<String>> SIGNS =
      Map.of("€", List.of("EUR"), "£", List.of("GBP"), "¥", List.of("JPY", "CNY"));

  private static final List<String> NO_DOLLARS = List.of("EUR", "GBP", "JPY", "CNY");

  private final Currency currency;
  private final DecimalMark decimal;

  private MoneyCell(Currency currency, DecimalMark decimal) {
    this.currency = currency;
    this.decimal = decimal;
  }

  /**
   * @param costs the sheet's amounts, as written
   * @param hours its lengths of time, which tell the decimal mark as well
   */
  static MoneyCell of(Currency currency, List<String> costs, List<String> hours) {
    return new MoneyCell(currency, DecimalMark.of(costs, hours));
  }

  /** Reads an amount. */
  Money read(String text) throws Unreadable {
    Bare bare = bare(text);
    if (currency.equals(Currency.NONE)) {
      if (bare.figures().matches("[0.,]+")) {
        return Money.ZERO;
      }
      throw new Unreadable(
          "is an amount, and the journal names no currency",
          "write currency: USD, or another code of ISO 4217, into project.yaml");
    }
    String plain = decimal.plain(bare.figures(), currency);
    return currency.read(bare.negative() ? "-" + plain : plain);
  }

  String said(Money amount) {
    return Saying.money(amount, currency);
  }

  /** An amount without its sign and its currency. */
  private record Bare(boolean negative, String figures) {}

  private Bare bare(String text) throws Unreadable {
    String left = text.strip().replace('−', '-').replace('–', '-');
    int minus = 0;
    for (String before = ""; !left.equals(before); ) {
      before = left;
      if (left.startsWith("(") && left.endsWith(")")) {
        minus++;
        left = left.substring(1, left.length() - 1).strip();
      }
      if (left.startsWith("-") || left.endsWith("-")) {
        minus++;
        left = left.replaceFirst(left.startsWith("-") ? "^-" : "-$", "").strip();
      }
      Matcher named = NAMED.matcher(left);
      if (named.find()) {
        refuseOther(named.group().toUpperCase(Locale.ROOT));
        boolean known =
            named.group().length() == 1 || named.group().equalsIgnoreCase(currency.code());
        left = known ? strip(left, named) : left;
      }
    }
    if (minus > 1) {
      throw new Unreadable("is below zero twice", "write one minus, as -12.00");
    }
    return new Bare(minus == 1, left);
  }

  private static String strip(String text, Matcher named) {
    return (text.substring(0, named.start()) + text.substring(named.end())).strip();
  }

  /** Refuses a sign or a code of another currency; anything else is let pass. */
  void refuseOther(String name) throws Unreadable {
    boolean other = isCode(name) && !name.equals(currency.code());
    if (name.equals("$")) {
      other = NO_DOLLARS.contains(currency.code());
    } else if (SIGNS.containsKey(name)) {
      other = !SIGNS.get(name).contains(currency.code());
    }
    if (other && !currency.equals(Currency.NONE)) {
      throw new Unreadable(
          "is in " + name + ", and the journal in " + currency.code(),
          "reckon it in " + currency.code());
    }
  }

  private static boolean isCode(String name) {
    return name.length() == 3 && Currency.all().containsKey(name);
  }
}
