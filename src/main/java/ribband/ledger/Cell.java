package ribband.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Quantity;
import ribband.measure.Saying;

/** One value of a sheet, as data files have it and as a person reads it. */
public sealed interface Cell {
  /** For data files; empty where there is no value. */
  String data();

  /** For a person. */
  String said();

  /** Whether {@link #data()} is a number. */
  default boolean isNumber() {
    return true;
  }

  /**
   * A name or words.
   *
   * @param said the same for a person: the month's name for its number
   */
  record Words(String data, String said) implements Cell {
    public Words {
      Objects.requireNonNull(data);
      Objects.requireNonNull(said);
    }

    public static Words of(String text) {
      return new Words(text, text);
    }

    @Override
    public boolean isNumber() {
      return false;
    }
  }

  /** A whole number of things. */
  record Count(long number) implements Cell {
    @Override
    public String data() {
      return Long.toString(number);
    }

    @Override
    public String said() {
      return Saying.count(number);
    }
  }

  /** A length of working time. */
  record Worked(Hours hours) implements Cell {
    public Worked {
      Objects.requireNonNull(hours);
    }

    @Override
    public String data() {
      return hours.decimal();
    }

    @Override
    public String said() {
      return Saying.hours(hours);
    }
  }

  /** An amount of money. */
  record Paid(Money money, Currency currency) implements Cell {
    public Paid {
      Objects.requireNonNull(money);
      Objects.requireNonNull(currency);
    }

    @Override
    public String data() {
      return money.decimal(currency);
    }

    @Override
    public String said() {
      return Saying.money(money, currency);
    }
  }

  /**
   * An amount of something.
   *
   * @param said the same for a person, with its unit
   */
  record Measured(Quantity quantity, String said) implements Cell {
    private static final int PLACES = 4;

    public Measured {
      Objects.requireNonNull(quantity);
      Objects.requireNonNull(said);
    }

    /** Decimal, in the quantity's unit, at most 4 places, rounded half up. */
    @Override
    public String data() {
      BigDecimal number = quantity.number().bigDecimalValue(PLACES, RoundingMode.HALF_UP);
      return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
  }

  /**
   * A bare number of either sign, such as a ratio, or hours that may be owed.
   *
   * @param said the same for a person
   */
  record Exact(BigFraction number, String said) implements Cell {
    private static final int PLACES = 4;

    public Exact {
      Objects.requireNonNull(number);
      Objects.requireNonNull(said);
    }

    /** Said as data files have it. */
    public static Exact of(BigFraction number) {
      return new Exact(number, decimal(number).replace('-', '−'));
    }

    /** Decimal, at most 4 places, rounded half up. */
    @Override
    public String data() {
      return decimal(number);
    }

    private static String decimal(BigFraction number) {
      BigDecimal decimal = number.bigDecimalValue(PLACES, RoundingMode.HALF_UP);
      return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
  }

  /** Nothing: not planned, not ranked. */
  record Blank() implements Cell {
    @Override
    public String data() {
      return "";
    }

    @Override
    public String said() {
      return "";
    }

    @Override
    public boolean isNumber() {
      return false;
    }
  }
}
