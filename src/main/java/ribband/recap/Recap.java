package ribband.recap;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A month or a year of a build, its figures said in words. Names are the builder's own, in one
 * line: who shows them escapes them.
 *
 * @param boat her name
 * @param title {@code March 2026}, {@code 2026}
 * @param first day of the month or year
 * @param last day of it
 * @param hours {@code 26½}; {@code 0} without work
 * @param unit {@code hours} or {@code hour}, to stand beside it
 * @param inWords the same for a sentence: {@code 26½ hours}, {@code 40 minutes}
 * @param sessions {@code 11 sessions}
 * @param nights {@code 9 nights}
 * @param rank by hours, and which ones beat it: {@code the best month so far}; empty without work
 * @param place the same without those that beat it, and with one level with it named at most:
 *     {@code the best month so far, level with May}
 * @param phases those with hours, most first
 * @param costs all empty where amounts are hidden
 * @param pieces those of a kind made or scrapped, in the project's order
 * @param longest night; of equals the first; empty without work
 * @param hoursToDate of the whole boat at its end, work carried in included: {@code 412½}
 * @param unitToDate to stand beside it
 * @param toDateInWords the same for a sentence
 */
public record Recap(
    String boat,
    String title,
    LocalDate first,
    LocalDate last,
    String hours,
    String unit,
    String inWords,
    String sessions,
    String nights,
    String rank,
    String place,
    List<PhaseShare> phases,
    Costs costs,
    List<PiecesMade> pieces,
    Optional<LongestNight> longest,
    String hoursToDate,
    String unitToDate,
    String toDateInWords) {
  public Recap {
    Objects.requireNonNull(boat);
    Objects.requireNonNull(title);
    Objects.requireNonNull(first);
    Objects.requireNonNull(last);
    phases = List.copyOf(phases);
    Objects.requireNonNull(costs);
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(longest);
  }

  /**
   * What a phase took.
   *
   * @param hours in the month or year: {@code 20¼}
   * @param seconds the same, for bars
   * @param inWords the same for a sentence: {@code 20¼ hours}
   * @param hoursToDate at its end: {@code 143½}
   * @param toDateInWords the same for a sentence
   * @param isNew whether no hour was worked on it before
   */
  public record PhaseShare(
      String title,
      String hours,
      long seconds,
      String inWords,
      String hoursToDate,
      String toDateInWords,
      boolean isNew) {}

  /**
   * What was spent.
   *
   * @param moved {@code $412.30 went out}, {@code $20.00 came back}; empty for none
   * @param toDate {@code $5,012.10} at its end; empty for none ever
   */
  public record Costs(String moved, String toDate) {}

  /**
   * Pieces of one kind.
   *
   * @param kind as project.yaml spells it, most often a plural
   * @param count made, less those taken back; below zero where more were
   * @param done at its end
   * @param total that the boat has
   */
  public record PiecesMade(String kind, long count, int done, int total) {}

  /**
   * A night.
   *
   * @param day {@code Saturday 14 March 2026}
   * @param hours {@code 4½ hours}
   */
  public record LongestNight(String day, String hours) {}

  /** Whether any hour was worked. */
  public boolean isWorked() {
    return !phases.isEmpty();
  }

  /** The same of a month or year that is not over yet. */
  public Recap soFar() {
    return new Recap(
        boat,
        title + " so far",
        first,
        last,
        hours,
        unit,
        inWords,
        sessions,
        nights,
        rank,
        place,
        phases,
        costs,
        pieces,
        longest,
        hoursToDate,
        unitToDate,
        toDateInWords);
  }
}
