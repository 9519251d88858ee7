package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribband.journal.Away;
import ribband.measure.Hours;

/** 2026-05-04 is a Monday (ISO 8601: 2026-W19-1). */
class WeeksWorkedTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 5, 4);

  private static WeeksWorked weeks(LocalDate asOf, List<Away> away, Object... nights) {
    Map<LocalDate, Hours> worked = new HashMap<>();
    for (int i = 0; i < nights.length; i += 2) {
      worked.put(LocalDate.parse((String) nights[i]), Boats.hours((Integer) nights[i + 1]));
    }
    return WeeksWorked.of(worked, away, asOf);
  }

  private static Away away(String from, String to) {
    return new Away(LocalDate.parse(from), LocalDate.parse(to), Optional.empty());
  }

  private static String said(WeeksWorked weeks) {
    StringBuilder said = new StringBuilder();
    weeks
        .weeks()
        .forEach(
            w ->
                said.append(w.week())
                    .append(": ")
                    .append(w.hours().decimal())
                    .append(" h in ")
                    .append(w.nights())
                    .append("; "));
    return said.toString();
  }

  @Test
  void wholeWeeksFromTheFirstNightOnWithThoseOfNothing() {
    assertEquals(
        "2026-W15: 3 h in 2; 2026-W16: 0 h in 0; 2026-W17: 4 h in 1; 2026-W18: 0 h in 0; ",
        said(
            weeks(
                MONDAY,
                List.of(),
                "2026-04-08",
                1,
                "2026-04-12",
                2,
                "2026-04-20",
                4,
                "2026-05-04",
                9)));
  }

  @Test
  void theWeekOfTheAsOfDayIsNotWhole() {
    Object[] nights = {"2026-04-27", 2, "2026-05-04", 9};
    assertEquals("2026-W18: 2 h in 1; ", said(weeks(MONDAY, List.of(), nights)));
    assertEquals("2026-W18: 2 h in 1; ", said(weeks(MONDAY.plusDays(6), List.of(), nights)));
    assertEquals(
        "2026-W18: 2 h in 1; 2026-W19: 9 h in 1; ",
        said(weeks(MONDAY.plusDays(7), List.of(), nights)));
    assertEquals("", said(weeks(MONDAY.minusDays(1), List.of(), nights)));
    assertEquals("", said(weeks(MONDAY, List.of())));
  }

  @Test
  void onlyTheLast26Count() {
    WeeksWorked weeks = weeks(MONDAY, List.of(), "2024-01-01", 5, "2025-11-03", 3);
    assertEquals(26, weeks.weeks().size());
    assertEquals(LocalDate.of(2025, 11, 3), weeks.weeks().get(0).week().monday());
    assertEquals(Boats.hours(3), weeks.weeks().get(0).hours());
    assertEquals(LocalDate.of(2026, 4, 27), weeks.weeks().get(25).week().monday());
  }

  @Test
  void weeksAwayAreNobodysAndOlderOnesTakeTheirPlace() {
    WeeksWorked weeks =
        weeks(MONDAY, List.of(away("2026-03-02", "2026-03-29")), "2025-10-06", 8, "2026-03-10", 7);
    assertEquals(26, weeks.weeks().size());
    assertEquals(LocalDate.of(2025, 10, 6), weeks.weeks().get(0).week().monday());
    assertEquals(1, weeks.weeks().stream().filter(week -> week.nights() > 0).count());
  }

  @Test
  void fourDaysAwayMakeAWeekAway() {
    Object[] night = {"2026-04-27", 2};
    assertEquals("", said(weeks(MONDAY, List.of(away("2026-04-20", "2026-04-30")), night)));
    assertEquals("", said(weeks(MONDAY, List.of(away("2026-04-30", "2026-05-20")), night)));
    assertEquals(
        "2026-W18: 2 h in 1; ",
        said(weeks(MONDAY, List.of(away("2026-04-20", "2026-04-29")), night)));
    assertEquals(
        "2026-W18: 2 h in 1; ",
        said(weeks(MONDAY, List.of(away("2026-05-01", "2026-05-20")), night)));
  }

  @Test
  void daysInTwoRangesAreAwayOnce() {
    Object[] night = {"2026-04-27", 2};
    Away three = away("2026-04-28", "2026-04-30");
    assertEquals("2026-W18: 2 h in 1; ", said(weeks(MONDAY, List.of(three, three), night)));
    Away one = away("2026-05-02", "2026-05-02");
    assertEquals("", said(weeks(MONDAY, List.of(three, one), night)));
  }

  @Test
  void otherEveningsKeepTheNights() {
    WeeksWorked weeks = weeks(MONDAY, List.of(), "2026-04-20", 4, "2026-04-22", 1, "2026-04-29", 2);
    assertArrayEquals(new long[] {2, 1}, weeks.nights());
    assertArrayEquals(new long[] {18_000, 7200}, weeks.seconds());
    assertArrayEquals(new long[] {6000, 3000}, weeks.withEvenings(new Hours(3000)).seconds());
    assertArrayEquals(new long[] {2, 1}, weeks.withEvenings(new Hours(3000)).nights());
    assertArrayEquals(new long[] {0, 0}, weeks.withEvenings(Hours.ZERO).nights());
  }
}
