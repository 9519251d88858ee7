package ribband.postcard;

import java.util.List;
import java.util.Objects;

/**
 * What stands on a card, in words as they will stand. All may be empty but boat, period and hours.
 *
 * @param boat her name
 * @param what what she is
 * @param period {@code March 2026}, {@code 2026}
 * @param hours the main figure, {@code 26½}
 * @param unit beside the figure, {@code hours}
 * @param rank how the period ranks, in a sentence or half of one
 * @param nights {@code 9 nights}
 * @param shares hours by phase, most first
 * @param money {@code $412.60 went out, $2,411.00 to date}, broken at a space alone; empty where
 *     money is hidden
 * @param pieces {@code 4 strakes}
 */
public record Face(
    String boat,
    String what,
    String period,
    String hours,
    String unit,
    String rank,
    String nights,
    List<Share> shares,
    String money,
    String pieces) {
  public Face {
    required(boat, "boat");
    required(period, "period");
    required(hours, "hours");
    Objects.requireNonNull(what);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(rank);
    Objects.requireNonNull(nights);
    Objects.requireNonNull(money);
    Objects.requireNonNull(pieces);
    shares = List.copyOf(shares);
  }

  private static void required(String words, String name) {
    if (words.isBlank()) {
      throw new IllegalArgumentException("a card without " + name);
    }
  }
}
