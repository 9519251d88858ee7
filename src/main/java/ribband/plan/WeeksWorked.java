package ribband.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Away;
import ribband.measure.Hours;
import ribband.measure.Week;

/**
 * The builder's last whole weeks, as a forecast draws from them.
 *
 * @param weeks in order, those without work too; at most {@link #MOST}
 */
public record WeeksWorked(List<Worked> weeks) {
  /** How far back a forecast looks. */
  public static final int MOST = 26;

  /**
   * One week.
   *
   * @param nights on how many of its days there was work
   */
  public record Worked(Week week, Hours hours, int nights) {}

  public WeeksWorked {
    weeks = List.copyOf(weeks);
  }

  /**
   * spec: whole ISO weeks before the as-of date, the last 26, weeks without work counted as zeros,
   * {@code away} left out. No week stands before that of the first night: nobody built then.
   *
   * @param nights each date with hours
   */
  public static WeeksWorked of(Map<LocalDate, Hours> nights, List<Away> away, LocalDate asOf) {
    AwayWeeks awayWeeks = new AwayWeeks(away);
    Optional<LocalDate> first = nights.keySet().stream().min(LocalDate::compareTo);
    List<Worked> weeks = new ArrayList<>();
    if (first.isPresent()) {
      LocalDate start = monday(first.get());
      LocalDate monday = monday(asOf).minusWeeks(1);
      for (; !monday.isBefore(start) && weeks.size() < MOST; monday = monday.minusWeeks(1)) {
        if (!awayWeeks.has(monday)) {
          weeks.add(week(monday, nights));
        }
      }
    }
    Collections.reverse(weeks);
    return new WeeksWorked(weeks);
  }

  static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private static Worked week(LocalDate monday, Map<LocalDate, Hours> nights) {
    List<Hours> worked =
        monday
            .datesUntil(monday.plusWeeks(1))
            .map(day -> nights.getOrDefault(day, Hours.ZERO))
            .filter(hours -> !hours.isZero())
            .toList();
    return new Worked(Week.of(monday), Hours.sum(worked), worked.size());
  }

  /** The seconds worked in each week. */
  public long[] seconds() {
    return weeks.stream().mapToLong(week -> week.hours.seconds()).toArray();
  }

  /** The nights of each week. */
  public long[] nights() {
    return weeks.stream().mapToLong(Worked::nights).toArray();
  }

  /** The same nights, each of them so long: what an evening of that length would have brought. */
  public WeeksWorked withEvenings(Hours evening) {
    return new WeeksWorked(
        weeks.stream()
            .map(
                week ->
                    new Worked(
                        week.week,
                        new Hours(Math.multiplyExact(evening.seconds(), (long) week.nights)),
                        evening.isZero() ? 0 : week.nights))
            .toList());
  }
}
