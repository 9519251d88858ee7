package ribband.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/**
 * Reads the dates of one column: which of the day, the month and the year comes first is one for
 * all.
 */
final class DateCells {
  private static final Map<DayOrder, String> FIRST =
      Map.of(DayOrder.DAY_FIRST, "the day first", DayOrder.MONTH_FIRST, "the month first");

  private final Optional<DayOrder> order;
  private final boolean yearIsLast;
  private final boolean haveShortYears;

  private DateCells(Optional<DayOrder> order, boolean yearIsLast, boolean haveShortYears) {
    this.order = order;
    this.yearIsLast = yearIsLast;
    this.haveShortYears = haveShortYears;
  }

  /** A cell and what stands in it. */
  record Written(CellAt at, String text) {}

  private record Dated(Written cell, DateForm form) {}

  /**
   * Finds the order by any figure over 12, and tells where there is none, or both; so, too, where
   * years of two figures stand.
   *
   * @param asked the order, where the builder said it; the year is last then
   */
  static DateCells of(List<Written> cells, Optional<DayOrder> asked, Problems problems) {
    List<Dated> dates =
        cells.stream()
            .flatMap(cell -> DateForm.of(cell.text()).map(form -> new Dated(cell, form)).stream())
            .toList();
    boolean yearIsLast =
        asked.isPresent() || dates.stream().anyMatch(date -> date.form().endsWithYear());
    boolean haveShortYears = dates.stream().anyMatch(date -> date.form().hasShortYear());
    long told = problems.errors();
    Optional<DayOrder> order = asked.isPresent() ? asked : order(dates, problems);
    if (!yearIsLast && problems.errors() == told) {
      tellOpen(
          dates,
          DateForm::mayBeginWithYear,
          "may have the year first or last",
          "say --dates day-first if it is last, or " + DateForm.SHOW,
          problems);
    }
    return new DateCells(order, yearIsLast, haveShortYears);
  }

  private static Optional<DayOrder> order(List<Dated> dates, Problems problems) {
    Optional<Written> dayFirst = first(dates, DayOrder.DAY_FIRST);
    Optional<Written> monthFirst = first(dates, DayOrder.MONTH_FIRST);
    if (dayFirst.isPresent() && monthFirst.isPresent()) {
      tellBoth(dayFirst.get(), monthFirst.get(), problems);
      return Optional.empty();
    }
    if (dayFirst.isPresent() || monthFirst.isPresent()) {
      return Optional.of(dayFirst.isPresent() ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST);
    }
    tellOpen(
        dates,
        DateForm::isOpen,
        "may have the day or the month first",
        "say which with --dates day-first or --dates month-first",
        problems);
    return Optional.empty();
  }

  private static Optional<Written> first(List<Dated> dates, DayOrder order) {
    return dates.stream()
        .filter(date -> date.form().evident().filter(order::equals).isPresent())
        .map(Dated::cell)
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
            + "; "
            + DateForm.SHOW);
  }

  /** Tells once what is open in some of the dates. */
  private static void tellOpen(
      List<Dated> dates, Predicate<DateForm> isOpen, String what, String cure, Problems problems) {
    List<Written> open =
        dates.stream().filter(date -> isOpen.test(date.form())).map(Dated::cell).toList();
    if (!open.isEmpty()) {
      problems.error(
          open.get(0).at().place(),
          open.get(0).at()
              + " "
              + OneLine.quote(open.get(0).text())
              + " "
              + what
              + (open.size() > 1
                  ? ", and " + Saying.counted(open.size() - 1, "more date", "more dates") + " too"
                  : "")
              + "; "
              + cure);
    }
  }

  /** Whether some of the years have two figures, and are read as of this century. */
  boolean haveShortYears() {
    return haveShortYears;
  }

  /** The day a cell tells; empty where that could be two days, which has been told. */
  Optional<LocalDate> read(String text) throws Unreadable {
    Optional<DateForm> form = DateForm.of(text);
    if (form.isEmpty()) {
      throw DateForm.refusal(text);
    }
    Optional<LocalDate> day = form.get().day(order);
    return yearIsLast || !form.get().mayBeginWithYear() ? day : Optional.empty();
  }
}
