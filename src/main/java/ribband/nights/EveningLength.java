package ribband.nights;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
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
   * @param nights each date with hours
   * @param last the last that counts
   */
  public static EveningLength usual(Map<LocalDate, Hours> nights, LocalDate last) {
    NavigableMap<LocalDate, Hours> all = new TreeMap<>(nights).headMap(last, true);
    Map<LocalDate, Hours> late = all.tailMap(last.minusWeeks(WEEKS), false);
    List<Hours> hours = (late.isEmpty() ? all : late).values().stream().sorted().toList();
    return hours.isEmpty()
        ? new EveningLength(Optional.empty(), From.UNKNOWN)
        : new EveningLength(Optional.of(median(hours)), From.USUAL);
  }

  private static Hours median(List<Hours> sorted) {
    Hours both = sorted.get((sorted.size() - 1) / 2).plus(sorted.get(sorted.size() / 2));
    return new Hours((both.seconds() + 1) / 2);
  }
}
