package ribband.measure;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;

/** A week of ISO 8601: Monday to Sunday, week 1 holds the year's first Thursday. */
public record Week(int year, int number) implements Comparable<Week> {
  public static Week of(LocalDate day) {
    return new Week(day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
  }

  /** The Monday it begins with. */
  public LocalDate monday() {
    return LocalDate.of(year, 1, 4)
        .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, number)
        .with(DayOfWeek.MONDAY);
  }

  public Week next() {
    return of(monday().plusWeeks(1));
  }

  @Override
  public int compareTo(Week other) {
    return year == other.year
        ? Integer.compare(number, other.number)
        : Integer.compare(year, other.year);
  }

  /** {@code 2026-W53}. */
  @Override
  public String toString() {
    return year + "-W" + (number < 10 ? "0" : "") + number;
  }
}
