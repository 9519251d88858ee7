package ribband.nights;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Hours;

/**
 * How long a night's work is.
 *
 * @param hours empty where nothing tells it
 */
public record EveningLength(Optional<Hours> hours, From from) {
  /** Where it is taken from. */
  public enum From {
    GIVEN,
    USUAL,
    UNKNOWN
  }

  private static final int WEEKS = 26;

  public static EveningLength given(Hours hours) {
    return new EveningLength(Optional.of(hours), From.GIVEN);
  }

  /**
   * spec: the median of the nights with hours in the last 26 weeks, else of all; to the second.
   *
   * @param night the last that counts
   */
  public static EveningLength usual(Journal journal, LocalDate night) {
    TreeMap<LocalDate, Hours> nights = new TreeMap<>();
    for (Entry entry : journal.entries()) {
      if (!entry.date().isAfter(night) && !entry.totalHours().isZero()) {
        nights.merge(entry.date(), entry.totalHours(), Hours::plus);
      }
    }
    Map<LocalDate, Hours> late = nights.tailMap(night.minusWeeks(WEEKS), false);
    List<Hours> hours = (late.isEmpty() ? nights : late).values().stream().sorted().toList();
    return hours.isEmpty()
        ? new EveningLength(Optional.empty(), From.UNKNOWN)
        : new EveningLength(Optional.of(median(hours)), From.USUAL);
  }

  private static Hours median(List<Hours> sorted) {
    Hours both = sorted.get((sorted.size() - 1) / 2).plus(sorted.get(sorted.size() / 2));
    return new Hours((both.seconds() + 1) / 2);
  }
}
