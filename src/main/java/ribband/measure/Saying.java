package ribband.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;

/** Says values to a person, in English words and signs of our own: the same on every Java. */
public final class Saying {
  private static final List<String> NUMBERS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private Saying() {}

  /** To the minute: {@code 26½} where quarters tell it, else {@code 26:40}; {@code 0} for none. */
  public static String hours(Hours hours) {
    long minutes = (hours.seconds() + 30) / 60;
    long whole = minutes / 60;
    long rest = minutes % 60;
    if (rest % 15 != 0) {
      return Fractions.grouped(BigInteger.valueOf(whole)) + ":" + (rest < 10 ? "0" : "") + rest;
    }
    String quarter = Fractions.eighths((int) (rest / 15) * 2);
    return whole == 0 && rest != 0
        ? quarter
        : Fractions.grouped(BigInteger.valueOf(whole)) + quarter;
  }

  /** Whether {@link #hours} says them without a colon. */
  public static boolean isInQuarters(Hours hours) {
    return (hours.seconds() + 30) / 60 % 15 == 0;
  }

  /** {@code 26½ hours}, {@code 1 hour}, {@code 26:40 hours}; below an hour {@code 40 minutes}. */
  public static String hoursInWords(Hours hours) {
    long minutes = (hours.seconds() + 30) / 60;
    return minutes < 60 && minutes % 15 != 0
        ? counted(minutes, "minute", "minutes")
        : hours(hours) + " " + hourOrHours(hours);
  }

  /**
   * For columns, where figures stand under each other: {@code 26:30}, {@code 0:05}, {@code 3:00}.
   */
  public static String hoursInColumn(Hours hours) {
    long minutes = (hours.seconds() + 30) / 60;
    long rest = minutes % 60;
    return Fractions.grouped(BigInteger.valueOf(minutes / 60))
        + ":"
        + (rest < 10 ? "0" : "")
        + rest;
  }

  /**
   * {@code 26½ hours}, {@code 26 hours 40 minutes}, {@code 40 minutes}: for text that is pasted
   * elsewhere, where 26:40 may become a link to a moment of a video.
   */
  public static String hoursSpelledOut(Hours hours) {
    long minutes = (hours.seconds() + 30) / 60;
    return minutes < 60 || minutes % 15 == 0
        ? hoursInWords(hours)
        : counted(minutes / 60, "hour", "hours") + " " + counted(minutes % 60, "minute", "minutes");
  }

  /** {@code hour} or {@code hours}, beside figures in large letters. */
  public static String hourOrHours(Hours hours) {
    long minutes = (hours.seconds() + 30) / 60;
    return minutes > 0 && minutes <= 60 ? "hour" : "hours";
  }

  /** {@code $1,234.50}, {@code −$20.00}; whole amounts of money keep their places. */
  public static String money(Money money, Currency currency) {
    BigDecimal amount = BigDecimal.valueOf(money.minor(), currency.digits()).abs();
    String figures = amount.toPlainString();
    int point = figures.indexOf('.');
    String places = point < 0 ? "" : figures.substring(point);
    return (money.isNegative() ? "−" : "")
        + currency.sign()
        + Fractions.grouped(amount.toBigInteger())
        + places;
  }

  /** In whole units, rounded half up, for axes and glances: {@code $1,235}. */
  public static String moneyRounded(Money money, Currency currency) {
    BigDecimal amount =
        BigDecimal.valueOf(money.minor(), currency.digits())
            .abs()
            .setScale(0, RoundingMode.HALF_UP);
    boolean below = money.isNegative() && amount.signum() != 0;
    return (below ? "−" : "") + currency.sign() + Fractions.grouped(amount.toBigInteger());
  }

  /** A whole number with commas between thousands. */
  public static String count(long number) {
    return (number < 0 ? "−" : "") + Fractions.grouped(BigInteger.valueOf(number).abs());
  }

  /** {@code no}, {@code one} .. {@code twelve}, then figures. */
  public static String number(long number) {
    return number >= 0 && number < NUMBERS.size() ? NUMBERS.get((int) number) : count(number);
  }

  /** {@code 1 night}, {@code 3 nights}. */
  public static String counted(long number, String one, String several) {
    return count(number) + " " + (number == 1 ? one : several);
  }

  /** {@code first}, {@code second}, {@code third}, {@code 4th}, {@code 21st}. */
  public static String ordinal(int number) {
    return switch (number) {
      case 1 -> "first";
      case 2 -> "second";
      case 3 -> "third";
      default -> number + ending(number);
    };
  }

  private static String ending(int number) {
    if (number % 100 >= 11 && number % 100 <= 13) {
      return "th";
    }
    return switch (number % 10) {
      case 1 -> "st";
      case 2 -> "nd";
      case 3 -> "rd";
      default -> "th";
    };
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last <= 0
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** {@code 14 March 2026}. */
  public static String day(LocalDate day) {
    return day.getDayOfMonth() + " " + month(YearMonth.from(day));
  }

  /** {@code Saturday 14 March 2026}. */
  public static String dayInFull(LocalDate day) {
    return weekday(day) + " " + day(day);
  }

  public static String weekday(LocalDate day) {
    return CalendarNames.of(day.getDayOfWeek());
  }

  /** {@code 14 Mar}. */
  public static String shortDay(LocalDate day) {
    return day.getDayOfMonth() + " " + shortMonth(YearMonth.from(day));
  }

  /** {@code March 2026}. */
  public static String month(YearMonth month) {
    return monthName(month) + " " + month.getYear();
  }

  /** {@code March}. */
  public static String monthName(YearMonth month) {
    return CalendarNames.of(month.getMonth());
  }

  /** {@code Mar}. */
  public static String shortMonth(YearMonth month) {
    return monthName(month).substring(0, 3);
  }

  /** {@code 20:25}. */
  public static String clock(LocalTime time) {
    return (time.getHour() < 10 ? "0" : "")
        + time.getHour()
        + (time.getMinute() < 10 ? ":0" : ":")
        + time.getMinute();
  }

  /** {@code 20:25}, with the day where it is not the one given. */
  public static String moment(LocalDateTime moment, LocalDate day) {
    String clock = clock(moment.toLocalTime());
    return moment.toLocalDate().equals(day) ? clock : clock + " on " + day(moment.toLocalDate());
  }

  /**
   * In the unit written, for the shop: in eighths where that is exact, else with at most two
   * decimals.
   */
  public static String quantity(Quantity quantity) {
    String number = Fractions.said(quantity.number());
    String unit = quantity.unit().name();
    return unit.isEmpty()
        ? number
        : number + " " + unit.replaceFirst("2$", "²").replaceFirst("3$", "³");
  }

  /** {@code 61 °F}. */
  public static String temperature(Temperature temperature) {
    String figures = temperature.degrees().stripTrailingZeros().toPlainString();
    return figures.replace('-', '−') + " °" + temperature.scale();
  }

  /** {@code 40%}. */
  public static String percent(Percent percent) {
    return percent.value().stripTrailingZeros().toPlainString() + "%";
  }

  /** The share of a whole as a whole number of hundredths, half up: {@code 37%}. */
  public static String share(long part, long whole) {
    if (whole == 0) {
      return "–";
    }
    BigDecimal hundredths =
        BigDecimal.valueOf(part)
            .multiply(BigDecimal.valueOf(100))
            .divide(BigDecimal.valueOf(whole), 0, RoundingMode.HALF_UP);
    boolean trace = hundredths.signum() == 0 && part > 0;
    boolean nearly = hundredths.intValue() == 100 && part < whole;
    if (nearly) {
      return ">99%";
    }
    return trace ? "<1%" : hundredths.toPlainString().replace('-', '−') + "%";
  }

  /** {@code 20 min}, {@code 8 h}, {@code 7 days}. */
  public static String span(Span span) {
    long minutes = span.seconds() / 60;
    if (minutes % 1440 == 0) {
      return counted(minutes / 1440, "day", "days");
    }
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
  }

  /** With a capital letter in front, as a heading has it. */
  public static String capitalised(String name) {
    int first = name.offsetByCodePoints(0, 1);
    return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
  }
}
