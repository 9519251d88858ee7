package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ConcordanceTest {
  private final Concordance concordance = new Concordance();

  private String packed(String... words) {
    return concordance.packed(List.of(words));
  }

  @Test
  void gapsBetweenEntriesAreCounted() {
    concordance.add(0, List.of("oak", "keel"));
    concordance.add(1, List.of("oak", "oak"));
    concordance.add(4, List.of("oak"));

    assertEquals("AAC A", packed("oak", "keel"));
  }

  @Test
  void aGapOfMoreThanOneDigitHasItsGreatestFirst() {
    concordance.add(31, List.of("a"));
    concordance.add(32, List.of("b"));
    concordance.add(32 + 31, List.of("c"));
    concordance.add(32 * 32 - 1, List.of("d"));
    concordance.add(32 * 32, List.of("e"));
    concordance.add(32 * 32 * 2 + 32 * 3 + 4, List.of("f", "b"));

    assertEquals("f", packed("a"));
    assertEquals("hAiiD", packed("b"));
    assertEquals("hf", packed("c"));
    assertEquals("_f", packed("d"));
    assertEquals("hgA", packed("e"));
    assertEquals("ijE", packed("f"));
  }

  @Test
  void aWordThatIsNowhereHasNoGaps() {
    concordance.add(3, List.of("keel"));

    assertEquals(" D ", packed("ash", "keel", "oak"));
    assertEquals("", packed());
    assertEquals(List.of("keel"), List.copyOf(concordance.words()));
  }
}
