package ribband.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Dates;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/** Reads the dates of one column: whether the day or the month comes first is one for all. */
final class DateCells {
  private static final Pattern WEEKDAY =
      Pattern.compile("(?i)(?:mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)[a-z]*[.,]* +");
  private static final Pattern CLOCK =
      Pattern.compile(
          "[T ]{1,9}[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.0{1,9})?)?(?: ?[AaPp][Mm])?Z?$");
  private static final Pattern YEAR_FIRST =
      Pattern.compile(
          "([0-9]{4})([-/.])([0-9]{1,2})\\2([0-9]{1,2})\\.?|([0-9]{4})([0-9]{2})([0-9]{2})");
  private static final Pattern DOTTED =
      Pattern.compile("([0-9]{1,2})\\. ?([0-9]{1,2})\\. ?([0-9]{4})");
  private static final Pattern FIGURES =
      Pattern.compile("([0-9]{1,2})([-/])([0-9]{1,2})\\2([0-9]{4})");
  private static final Pattern DAY_MONTH =
      Pattern.compile("([0-9]{1,2})(?:st|nd|rd|th)?[., /-]*([A-Za-z]{3,9})[., /-]*([0-9]{4})");
  private static final Pattern MONTH_DAY =
      Pattern.compile("([A-Za-z]{3,9})[. -]*([0-9]{1,2})(?:st|nd|rd|th)?[, -]+([0-9]{4})");
  private static final Pattern SHORT_YEAR =
      Pattern.compile(
          "(?i)[0-9]{1,2}([-/.])[0-9]{1,2}\\1[0-9]{2}|[0-9]{1,2}[ -/]*[a-z]{3,9}[., -/]*'?[0-9]{2}");
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

  private static final Map<DayOrder, String> FIRST =
      Map.of(DayOrder.DAY_FIRST, "the day first", DayOrder.MONTH_FIRST, "the month first");

  private final Optional<DayOrder> order;

  private DateCells(Optional<DayOrder> order) {
    this.order = order;
  }

  /** A cell and what stands in it. */
  record Written(CellAt at, String text) {}

  /**
   * Finds the order by any figure over 12, and tells where there is none, or both.
   *
   * @param asked the order, where the builder said it
   */
  static DateCells of(List<Written> cells, Optional<DayOrder> asked, Problems problems) {
    if (asked.isPresent()) {
      return new DateCells(asked);
    }
    Optional<Written> dayFirst = first(cells, DayOrder.DAY_FIRST);
    Optional<Written> monthFirst = first(cells, DayOrder.MONTH_FIRST);
    if (dayFirst.isPresent() && monthFirst.isPresent()) {
      tellBoth(dayFirst.get(), monthFirst.get(), problems);
      return new DateCells(Optional.empty());
    }
    if (dayFirst.isPresent() || monthFirst.isPresent()) {
      return new DateCells(
          Optional.of(dayFirst.isPresent() ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST));
    }
    List<Written> open = cells.stream().filter(cell -> isOpen(cell.text())).toList();
    if (!open.isEmpty()) {
      problems.error(
          open.get(0).at().place(),
          open.get(0).at()
              + " "
              + OneLine.quote(open.get(0).text())
              + " may have the day or the month first"
              + (open.size() > 1 ? ", and " + (open.size() - 1) + " more dates too" : "")
              + "; say which with --dates day-first or --dates month-first");
    }
    return new DateCells(Optional.empty());
  }

  private static Optional<Written> first(List<Written> cells, DayOrder order) {
    return cells.stream()
        .filter(cell -> evident(cell.text()).filter(order::equals).isPresent())
        .findFirst();
  }

  private static void tellBoth(Written dayFirst, Written monthFirst, Problems problems) {
    boolean inOrder = dayFirst.at().row() < monthFirst.at().row();
    Written one = inOrder ? dayFirst : monthFirst;
    Written other = inOrder ? monthFirst : dayFirst;
    problems.error(
        other.at().place(),
        other.at()
            + " "
            + OneLine.quote(other.text())
            + " has "
            + FIRST.get(inOrder ? DayOrder.MONTH_FIRST : DayOrder.DAY_FIRST)
            + ", but "
            + one.at()
            + " "
            + OneLine.quote(one.text())
            + " has "
            + FIRST.get(inOrder ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST)
            + "; show the column as year-month-day, as 2026-03-14");
  }

  private static Optional<DayOrder> evident(String text) {
    Matcher figures = FIGURES.matcher(bare(text));
    if (!figures.matches()) {
      return Optional.empty();
    }
    boolean firstOver = Integer.parseInt(figures.group(1)) > 12;
    boolean secondOver = Integer.parseInt(figures.group(3)) > 12;
    return firstOver == secondOver
        ? Optional.empty()
        : Optional.of(firstOver ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST);
  }

  /** Whether a date could be two days. */
  private static boolean isOpen(String text) {
    Matcher figures = FIGURES.matcher(bare(text));
    return figures.matches()
        && !figures.group(1).equals(figures.group(3))
        && Integer.parseInt(figures.group(1)) <= 12
        && Integer.parseInt(figures.group(3)) <= 12;
  }

  private static String bare(String text) {
    String day = WEEKDAY.matcher(text.strip()).lookingAt() ? afterWeekday(text.strip()) : text;
    return CLOCK.matcher(day.strip()).replaceFirst("").strip();
  }

  private static String afterWeekday(String text) {
    return WEEKDAY.matcher(text).replaceFirst("");
  }

  static boolean looksLikeDate(String text) {
    String day = bare(text);
    return YEAR_FIRST.matcher(day).lookingAt()
        || DOTTED.matcher(day).matches()
        || FIGURES.matcher(day).matches()
        || DAY_MONTH.matcher(day).matches()
        || MONTH_DAY.matcher(day).matches();
  }

  /** The day a cell tells; empty where that could be two days, which has been told. */
  Optional<LocalDate> read(String text) throws Unreadable {
    String day = bare(text);
    Matcher yearFirst = YEAR_FIRST.matcher(day);
    if (yearFirst.matches()) {
      return Optional.of(
          yearFirst.group(1) == null
              ? day(yearFirst.group(5), yearFirst.group(6), yearFirst.group(7))
              : day(yearFirst.group(1), yearFirst.group(3), yearFirst.group(4)));
    }
    Matcher dotted = DOTTED.matcher(day);
    if (dotted.matches()) {
      return Optional.of(day(dotted.group(3), dotted.group(2), dotted.group(1)));
    }
    Matcher figures = FIGURES.matcher(day);
    if (figures.matches()) {
      return inFigures(figures);
    }
    Matcher dayMonth = DAY_MONTH.matcher(day);
    if (dayMonth.matches()) {
      return Optional.of(day(dayMonth.group(3), month(dayMonth.group(2)), dayMonth.group(1)));
    }
    Matcher monthDay = MONTH_DAY.matcher(day);
    if (monthDay.matches()) {
      return Optional.of(day(monthDay.group(3), month(monthDay.group(1)), monthDay.group(2)));
    }
    throw refusal(day);
  }

  private Optional<LocalDate> inFigures(Matcher figures) throws Unreadable {
    String first = figures.group(1);
    String second = figures.group(3);
    boolean same = Integer.parseInt(first) == Integer.parseInt(second);
    if (order.isEmpty() && !same) {
      if (Integer.parseInt(first) > 12 && Integer.parseInt(second) > 12) {
        throw new Unreadable("is not in the calendar", "write year-month-day, as 2026-03-14");
      }
      return Optional.empty();
    }
    boolean monthFirst = order.filter(DayOrder.MONTH_FIRST::equals).isPresent();
    return Optional.of(
        monthFirst ? day(figures.group(4), first, second) : day(figures.group(4), second, first));
  }

  private static LocalDate day(String year, String month, String day) throws Unreadable {
    return Dates.readDay(year + "-" + twoDigits(month) + "-" + twoDigits(day));
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
    throw new Unreadable("names no month", "write year-month-day, as 2026-03-14");
  }

  private static Unreadable refusal(String day) {
    if (SHORT_YEAR.matcher(day).matches()) {
      return new Unreadable(
          "has a year of two figures", "show the column as year-month-day, as 2026-03-14");
    }
    if (DAY_NUMBER.matcher(day).matches()) {
      return new Unreadable(
          "is a spreadsheet's day number", "show the column as year-month-day, as 2026-03-14");
    }
    return new Unreadable("is not a date", "write year-month-day, as 2026-03-14");
  }
}
