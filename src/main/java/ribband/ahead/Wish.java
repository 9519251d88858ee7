package ribband.ahead;

import java.util.Optional;
import java.util.OptionalInt;
import ribband.measure.Hours;
import ribband.nights.Setting;

/**
 * What the builder asks about: other evenings, other clamps.
 *
 * @param evening more than none
 * @param clamps 0 or more
 */
public record Wish(Optional<Hours> evening, OptionalInt clamps) {
  /** Nothing asked. */
  public static final Wish NONE = new Wish(Optional.empty(), OptionalInt.empty());

  Setting over(Setting usual) {
    Setting wished = evening.map(usual::withEvening).orElse(usual);
    return clamps.isPresent() ? wished.withClamps(clamps.getAsInt()) : wished;
  }

  public boolean isNone() {
    return evening.isEmpty() && clamps.isEmpty();
  }
}
