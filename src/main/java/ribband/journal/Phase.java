package ribband.journal;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Unreadable;

/**
 * A part of the build that hours and money are counted for.
 *
 * @param id as the builder spells it; letters, figures and hyphens
 * @param title for people
 * @param hours the plan, where there is one
 * @param cost the plan, where there is one
 */
public record Phase(String id, String title, Optional<Hours> hours, Optional<Money> cost) {
  /** Where hours and money go that name no phase. */
  public static final Phase UNSORTED =
      new Phase("unsorted", "Unsorted", Optional.empty(), Optional.empty());

  public Phase {
    Objects.requireNonNull(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(hours);
    Objects.requireNonNull(cost);
  }

  /** Reads an id: any name that hours and money may be counted under. */
  public static String readId(String text) throws Unreadable {
    return Readings.id(text);
  }

  /** A phase that only the entries name. */
  static Phase named(String id) {
    String words = id.replace('-', ' ');
    String title = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return new Phase(id, title, Optional.empty(), Optional.empty());
  }
}
