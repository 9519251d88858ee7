package ribband.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Calendar days, strictly, and the weeks of ISO 8601. */
class DatesTest {
  /**
   * 2005-01-01, 2006-12-31: the ISO week date's worked examples as an encyclopedia lists them;
   * 2008-12-29, 2010-01-03, 2012-12-31: a table of ISO weeks in a standards guide; the last two by
   * the Java platform.
   */
  @ParameterizedTest
  @CsvSource({
    "2005-01-01, 2004-W53", "2006-12-31, 2006-W52", "2008-12-29, 2009-W01", "2010-01-03, 2009-W53",
    "2012-12-31, 2013-W01", "2024-12-30, 2025-W01", "2027-01-01, 2026-W53", "2022-12-31, 2022-W52"
  })
  void isoWeeks(LocalDate day, String week) {
    assertEquals(week, Week.of(day).toString());
  }

  /** ISO 8601: week 1 is the one that holds 4 January; weeks begin on Monday. */
  @Test
  void everyWeekBeginsOnMondayAndTheNextFollows() {
    Week week = Week.of(LocalDate.of(1999, 1, 4));
    LocalDate monday = week.monday();
    for (int i = 0; i < 60 * 52; i++) {
      assertEquals(DayOfWeek.MONDAY, week.monday().getDayOfWeek());
      assertEquals(monday, week.monday());
      assertEquals(week, Week.of(monday.plusDays(6)));
      monday = monday.plusWeeks(1);
      week = week.next();
    }
    assertEquals(1, Week.of(LocalDate.of(2026, 1, 4)).number());
  }

  @ParameterizedTest
  @CsvSource({
    "2024-02-30, is not in the calendar; that month ends with 2024-02-29",
    "2023-02-29, is not in the calendar; that month ends with 2023-02-28",
    "2024-04-31, is not in the calendar; that month ends with 2024-04-30",
    "2024-13-01, has no such month; months go from 01 to 12",
    "1899-12-31, 'is too long ago; write the year in full, as 2026-03-14'",
    "2200-01-01, 'is too far ahead; check the year, as in 2026-03-14'",
    "20240101, is not a date; write 2024-01-01",
    "2024-1-5, is not a date; write 2024-01-05",
    "2024.1.5, is not a date; write 2024-01-05",
    "24-01-05, 'is not a date; write year-month-day, as 2026-03-14'",
    "2024-02-31T00, 'is not a date; write year-month-day, as 2026-03-14'"
  })
  void whatIsNoDayIsAnsweredWithTheNearest(String written, String told) {
    assertEquals(told, assertThrows(Unreadable.class, () -> Dates.readDay(written)).getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1900-01-01", "2199-12-31"})
  void theFirstAndTheLastDayTakenAreRead(String day) throws Unreadable {
    assertEquals(day, Dates.readDay(day).toString());
  }

  @Test
  void looseDaysAreMadeStrictOnlyWhereTheyExist() {
    assertEquals(Optional.of("2026-03-14"), Dates.strictly("2026-3-14"));
    assertEquals(Optional.empty(), Dates.strictly("2026-2-30"));
    assertEquals(Optional.empty(), Dates.strictly("20269999"));
  }
}
