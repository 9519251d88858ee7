package ribband.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Dates;
import ribband.measure.Unreadable;

/**
 * A date as a cell has it, taken apart.
 *
 * @param first the day, except in figures, where it may be the month, or a year of two figures
 * @param second the month, or its name; in figures it may be the day
 * @param year of four figures or of two; in two figures it may be the day
 */
record DateForm(Kind kind, String first, String second, String year) {
  /** In which order its parts stand. */
  enum Kind {
    /** {@code 2026-03-14}. */
    YEAR_FIRST,
    /** {@code 14.3.2026}, which has the day first wherever it is written. */
    DOTTED,
    /** {@code 3/14/2026}. */
    FIGURES,
    /** {@code 14 Mar 2026} or {@code March 14, 2026}. */
    NAMED
  }

  static final String SHOW = "show the column as year-month-day, as 2026-03-14";

  private static final String WRITE = "write year-month-day, as 2026-03-14";
  private static final int MONTHS_A_YEAR = 12;
  private static final int DAYS_A_MONTH = 31;

  /** No journal tells of another century's nights. */
  private static final String CENTURY = "20";

  private static final Pattern WEEKDAY =
      Pattern.compile("(?i)(?:mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)[a-z]*[.,]* +");
  private static final Pattern CLOCK =
      Pattern.compile(
          "[T ]{1,9}[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.0{1,9})?)?(?: ?[AaPp][Mm])?Z?$");
  private static final Pattern YEAR_FIRST =
      Pattern.compile(
          "([0-9]{4})([-/.])([0-9]{1,2})\\2([0-9]{1,2})\\.?|([0-9]{4})([0-9]{2})([0-9]{2})");
  private static final Pattern DOTTED =
      Pattern.compile("([0-9]{1,2})\\. ?([0-9]{1,2})\\. ?([0-9]{4}|[0-9]{2})");
  private static final Pattern FIGURES =
      Pattern.compile("([0-9]{1,2})([-/])([0-9]{1,2})\\2([0-9]{4}|[0-9]{2})");
  private static final Pattern DAY_MONTH =
      Pattern.compile(
          "([0-9]{1,2})(?:st|nd|rd|th)?[., /-]*([A-Za-z]{3,9})[., /-]*'?([0-9]{4}|[0-9]{2})");
  private static final Pattern MONTH_DAY =
      Pattern.compile(
          "([A-Za-z]{3,9})[. -]*([0-9]{1,2})(?:st|nd|rd|th)?[, -]+'?([0-9]{4}|[0-9]{2})");
  private static final Pattern DAY_NUMBER = Pattern.compile("[0-9]{5}(?:[.,][0-9]{1,18})?");

  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  DateForm {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(first);
    Objects.requireNonNull(second);
    Objects.requireNonNull(year);
  }

  /** Takes a cell apart; empty where it is written as no date is. */
  static Optional<DateForm> of(String text) {
    String date = bare(text);
    Matcher yearFirst = YEAR_FIRST.matcher(date);
    if (yearFirst.matches()) {
      return Optional.of(
          yearFirst.group(1) == null
              ? form(Kind.YEAR_FIRST, yearFirst, 7, 6, 5)
              : form(Kind.YEAR_FIRST, yearFirst, 4, 3, 1));
    }
    Matcher dotted = DOTTED.matcher(date);
    if (dotted.matches()) {
      return Optional.of(form(Kind.DOTTED, dotted, 1, 2, 3));
    }
    Matcher figures = FIGURES.matcher(date);
    if (figures.matches()) {
      return Optional.of(form(Kind.FIGURES, figures, 1, 3, 4));
    }
    Matcher dayMonth = DAY_MONTH.matcher(date);
    if (dayMonth.matches()) {
      return Optional.of(form(Kind.NAMED, dayMonth, 1, 2, 3));
    }
    Matcher monthDay = MONTH_DAY.matcher(date);
    return monthDay.matches() ? Optional.of(form(Kind.NAMED, monthDay, 2, 1, 3)) : Optional.empty();
  }

  private static DateForm form(Kind kind, Matcher parts, int first, int second, int year) {
    return new DateForm(kind, parts.group(first), parts.group(second), parts.group(year));
  }

  /** Without a weekday before it and a clock time behind it. */
  private static String bare(String text) {
    Matcher weekday = WEEKDAY.matcher(text.strip());
    String day = weekday.lookingAt() ? weekday.replaceFirst("") : text;
    return CLOCK.matcher(day.strip()).replaceFirst("").strip();
  }

  /** Whether a text is a date, or begins with one that is beyond doubt. */
  static boolean begins(String text) {
    return YEAR_FIRST.matcher(bare(text)).lookingAt() || of(text).isPresent();
  }

  /** Why a text that is written as no date is refused. */
  static Unreadable refusal(String text) {
    return DAY_NUMBER.matcher(bare(text)).matches()
        ? new Unreadable("is a spreadsheet's day number", SHOW)
        : new Unreadable("is not a date", WRITE);
  }

  boolean hasShortYear() {
    return year.length() == 2;
  }

  /** The order of day and month that its figures tell by themselves. */
  Optional<DayOrder> evident() {
    if (kind != Kind.FIGURES || beginsWithYear()) {
      return Optional.empty();
    }
    boolean firstOver = number(first) > MONTHS_A_YEAR;
    boolean secondOver = number(second) > MONTHS_A_YEAR;
    return firstOver == secondOver
        ? Optional.empty()
        : Optional.of(firstOver ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST);
  }

  /** Whether it could be two days. */
  boolean isOpen() {
    return kind == Kind.FIGURES
        && number(first) != number(second)
        && number(first) <= MONTHS_A_YEAR
        && number(second) <= MONTHS_A_YEAR;
  }

  /** Whether its first figure is no day of any month. */
  private boolean beginsWithYear() {
    return isInFigures() && hasShortYear() && number(first) > DAYS_A_MONTH;
  }

  /** Whether its first figure may be a year of two figures, and the last one the day. */
  boolean mayBeginWithYear() {
    return isInFigures()
        && hasShortYear()
        && !beginsWithYear()
        && first.length() == 2
        && number(second) <= MONTHS_A_YEAR
        && number(year) > 0
        && number(year) <= DAYS_A_MONTH;
  }

  /** Whether it can be read only with the year behind the day and the month. */
  boolean endsWithYear() {
    return isInFigures() && !beginsWithYear() && !mayBeginWithYear();
  }

  private boolean isInFigures() {
    return kind == Kind.FIGURES || kind == Kind.DOTTED;
  }

  /** The day that it tells; empty where it could be two. */
  Optional<LocalDate> day(Optional<DayOrder> order) throws Unreadable {
    if (beginsWithYear()) {
      throw new Unreadable("begins with a year of two figures", SHOW);
    }
    if (kind == Kind.NAMED) {
      return Optional.of(day(month(second), first));
    }
    if (kind != Kind.FIGURES || number(first) == number(second)) {
      return Optional.of(day(second, first));
    }
    if (order.isEmpty()) {
      if (!isOpen() && evident().isEmpty()) {
        throw new Unreadable("is not in the calendar", WRITE);
      }
      return Optional.empty();
    }
    return Optional.of(
        order.get() == DayOrder.MONTH_FIRST ? day(first, second) : day(second, first));
  }

  private LocalDate day(String month, String day) throws Unreadable {
    String fullYear = hasShortYear() ? CENTURY + year : year;
    return Dates.readDay(fullYear + "-" + twoDigits(month) + "-" + twoDigits(day));
  }

  private static String twoDigits(String figures) {
    return figures.length() == 1 ? "0" + figures : figures;
  }

  private static String month(String name) throws Unreadable {
    String small = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).startsWith(small) || small.equals("sept") && i == 8) {
        return Integer.toString(i + 1);
      }
    }
    throw new Unreadable("names no month", WRITE);
  }

  private static int number(String figures) {
    return Integer.parseInt(figures);
  }
}
