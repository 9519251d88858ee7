package ribband.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How warm it is while something cures: one temperature, or several in sequence.
 *
 * @param stays in their order, at least one; the last goes on
 */
public record Warmth(List<Stay> stays) {
  private static final Pattern THEN = Pattern.compile("\\s*,?\\s+then\\s+");
  private static final Pattern FOR = Pattern.compile("\\s+for\\s+");
  private static final String WRITE = "write 61 F, or 77 F for 4 h then 59 F";

  /**
   * A time at one temperature.
   *
   * @param lasting empty for the last, which goes on
   */
  public record Stay(Temperature at, Optional<Span> lasting) {}

  public Warmth {
    stays = List.copyOf(stays);
    int last = stays.size() - 1;
    for (int i = 0; i <= last; i++) {
      if (stays.get(i).lasting().isPresent() == (i == last)) {
        throw new IllegalArgumentException("the last stay alone goes on: " + stays);
      }
    }
    if (stays.isEmpty()) {
      throw new IllegalArgumentException("no temperature");
    }
  }

  /** The same temperature all the time. */
  public static Warmth of(Temperature temperature) {
    return new Warmth(List.of(new Stay(temperature, Optional.empty())));
  }

  /** Reads {@code 61 F} or {@code 77 F for 4 h then 59 F}. */
  public static Warmth read(String text) throws Unreadable {
    String[] parts = THEN.split(text.strip(), -1);
    if (parts.length == 1 && FOR.split(parts[0], -1).length == 1) {
      return of(Temperature.read(text));
    }
    List<Stay> stays = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      stays.add(stay(FOR.split(parts[i], -1), i == parts.length - 1));
    }
    return new Warmth(stays);
  }

  private static Stay stay(String[] parts, boolean last) throws Unreadable {
    if (last && parts.length == 2) {
      throw new Unreadable(
          "does not say how warm it is after that", "write 77 F for 4 h then 59 F");
    }
    if (parts.length != (last ? 1 : 2)) {
      throw new Unreadable("does not say for how long", WRITE);
    }
    Optional<Span> lasting = last ? Optional.empty() : Optional.of(Span.read(parts[1]));
    return new Stay(Temperature.read(parts[0]), lasting);
  }
}
