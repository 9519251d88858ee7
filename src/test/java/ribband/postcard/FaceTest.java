package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a card cannot do without. */
class FaceTest {
  private static Face face(List<String> words) {
    return new Face(
        words.get(0),
        words.get(1),
        words.get(2),
        words.get(3),
        words.get(4),
        words.get(5),
        words.get(6),
        List.of(),
        words.get(7),
        words.get(8));
  }

  @Test
  void boatPeriodAndHoursAreSaidAndNothingIsNull() {
    List<String> full = Collections.nCopies(9, "1");
    List<Integer> needed = new ArrayList<>();
    for (int i = 0; i < full.size(); i++) {
      List<String> without = new ArrayList<>(full);
      without.set(i, null);
      assertThrows(NullPointerException.class, () -> face(without), "word " + i);
      without.set(i, " ");
      try {
        face(without);
      } catch (IllegalArgumentException e) {
        needed.add(i);
      }
    }
    assertEquals(Arrays.asList(0, 2, 3), needed);
  }
}
