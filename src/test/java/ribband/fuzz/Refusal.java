package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Optional;
import java.util.regex.Pattern;
import ribband.measure.Reading;
import ribband.measure.Unreadable;

/** What a builder is told of a value that cannot be read. */
final class Refusal {
  private static final Pattern TO_WRITE =
      Pattern.compile("\\bwrite (?:[a-z -]+, as )?([^ ,]*[0-9][^ ,]*)(?:,|$)");

  private Refusal() {}

  /** Fails where the refusal of a text gives no advice, or advises what is refused in its turn. */
  static void isOfUse(String text, Unreadable refusal, Reading<?> reading) {
    String told = refusal.wrong() + "; " + refusal.cure();
    assertFalse(refusal.wrong().isBlank() || refusal.cure().isBlank(), text);
    Optional<String> advice =
        TO_WRITE.matcher(refusal.cure()).results().map(m -> m.group(1)).findFirst();
    if (advice.isPresent()) {
      try {
        reading.read(advice.get());
      } catch (Unreadable again) {
        throw new AssertionError("\"" + text + "\" " + told + ", which " + again.wrong(), again);
      }
    }
  }
}
