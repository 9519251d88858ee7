package ribband.cli;

import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Consumer;
import ribband.measure.Saying;
import ribband.recap.Recap;
import ribband.recap.Recaps;

/** Finds the month or year to tell: the one asked for, else the last full month. */
final class PeriodChoice {
  private final Recaps recaps;
  private final LocalDate today;
  private final Consumer<String> note;

  /**
   * A choice among those of a journal.
   *
   * @param note is told where another month than the last full one has to do
   */
  PeriodChoice(Recaps recaps, LocalDate today, Consumer<String> note) {
    this.recaps = recaps;
    this.today = today;
    this.note = note;
  }

  /**
   * The one asked for; where it is not over yet, told so.
   *
   * @throws Refusal where the journal has none of it
   */
  Recap of(PeriodOptions.Asked asked) {
    if (recaps.months().isEmpty()) {
      throw Refusal.wrongUsage("the journal has no entry yet, so there is no month to tell");
    }
    Recap recap =
        asked
            .year()
            .map(this::year)
            .orElseGet(() -> month(asked.month().orElseGet(this::lastFullMonth)));
    return today.isAfter(recap.last()) ? recap : recap.soFar();
  }

  private Recap month(YearMonth month) {
    List<YearMonth> months = recaps.months();
    return recaps
        .month(month)
        .orElseThrow(
            () ->
                notThere(
                    Saying.month(month),
                    Saying.month(months.get(0)),
                    Saying.month(months.get(months.size() - 1))));
  }

  private Recap year(Year year) {
    List<Year> years = recaps.years();
    return recaps
        .year(year)
        .orElseThrow(
            () ->
                notThere(
                    year.toString(),
                    years.get(0).toString(),
                    years.get(years.size() - 1).toString()));
  }

  private static Refusal notThere(String asked, String first, String last) {
    return Refusal.wrongUsage(
        "the journal has nothing of "
            + asked
            + "; it has "
            + (first.equals(last) ? first + " alone" : first + " to " + last));
  }

  /** Or the nearest to it that the journal has. */
  private YearMonth lastFullMonth() {
    YearMonth full = YearMonth.from(today).minusMonths(1);
    YearMonth first = recaps.months().get(0);
    YearMonth last = recaps.months().get(recaps.months().size() - 1);
    if (full.isBefore(first)) {
      note.accept("the journal begins in " + Saying.month(first) + ", so that month is told");
      return first;
    }
    if (full.isAfter(last)) {
      note.accept("the last entry is of " + Saying.month(last) + ", so that month is told");
      return last;
    }
    return full;
  }
}
