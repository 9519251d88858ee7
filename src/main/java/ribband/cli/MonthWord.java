package ribband.cli;

import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import ribband.measure.Dates;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** A typed word that is a month, or is meant for one. */
final class MonthWord {
  private static final Pattern STRICT = Pattern.compile("[0-9]{4}-[0-9]{2}");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("([0-9]{4})[-./_ ]?([0-9]{1,2}|\\p{L}+)(?:[-./_ ]?[0-9]{1,2})?");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("([0-9]{1,2}|\\p{L}+)\\.?[-./_, ]*([0-9]{4})");

  private static final List<String> NAMES =
      IntStream.rangeClosed(1, 12)
          .mapToObj(m -> Saying.monthName(YearMonth.of(2000, m)).toLowerCase(Locale.ROOT))
          .toList();

  private MonthWord() {}

  /** Reads {@code 2026-03}; nothing else. */
  static Optional<YearMonth> read(String typed) {
    if (!STRICT.matcher(typed).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(YearMonth.from(Dates.readDay(typed + "-01")));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  /** Whether a word that is no month was most likely meant for one. */
  static boolean isMeant(String typed) {
    return meant(typed).isPresent()
        || typed.matches("[0-9][0-9 ./_-]*")
        || month(typed).isPresent();
  }

  /** What is wrong with it, and what to write instead. */
  static Unreadable wrong(String typed) {
    if (STRICT.matcher(typed).matches()) {
      try {
        Dates.readDay(typed + "-01");
      } catch (Unreadable e) {
        return e.wrong().equals("has no such month")
            ? e
            : new Unreadable(e.wrong(), "write the year in full, as 2026-03");
      }
    }
    if (typed.matches("[0-9]{4}")) {
      return new Unreadable("is a year and no month", "write --year " + typed);
    }
    return new Unreadable(
        "is no month", "write " + meant(typed).map(m -> m + "").orElse("it as 2026-03"));
  }

  /** The month that another way of writing tells. */
  private static Optional<YearMonth> meant(String typed) {
    Matcher yearFirst = YEAR_FIRST.matcher(typed.strip());
    if (yearFirst.matches()) {
      return of(yearFirst.group(1), yearFirst.group(2));
    }
    Matcher monthFirst = MONTH_FIRST.matcher(typed.strip());
    return monthFirst.matches() ? of(monthFirst.group(2), monthFirst.group(1)) : Optional.empty();
  }

  private static Optional<YearMonth> of(String year, String month) {
    return month(month).flatMap(number -> read(year + (number < 10 ? "-0" : "-") + number));
  }

  /**
   * By its figures or its English name; three letters tell it, and a slip of the hand is no matter.
   */
  private static Optional<Integer> month(String word) {
    if (word.matches("[0-9]{1,2}")) {
      return Optional.of(Integer.valueOf(word)).filter(number -> number >= 1 && number <= 12);
    }
    String name = word.strip().toLowerCase(Locale.ROOT);
    // Mar is one slip from May, and means March.
    return NAMES.stream()
        .filter(whole -> name.length() >= 3 && whole.startsWith(name))
        .findFirst()
        .or(() -> Nearest.to(name, NAMES))
        .map(whole -> NAMES.indexOf(whole) + 1);
  }
}
