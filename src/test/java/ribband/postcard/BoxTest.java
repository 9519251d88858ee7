package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies in a place, and what touches it. */
class BoxTest {
  private static final Box PLACE = new Box(10, 20, 100, 50);

  @Test
  void aPlaceHoldsWhatReachesToItsEdges() {
    assertTrue(PLACE.holds(PLACE));
    assertTrue(PLACE.holds(new Box(11, 21, 98, 48)));
    for (Box beyond :
        List.of(
            new Box(9, 20, 100, 50),
            new Box(10, 19, 100, 50),
            new Box(10, 20, 101, 50),
            new Box(10, 20, 100, 51))) {
      assertFalse(PLACE.holds(beyond), beyond::toString);
    }
  }

  @Test
  void placesEdgeToEdgeDoNotMeet() {
    for (Box beside :
        List.of(
            new Box(110, 20, 5, 50),
            new Box(5, 20, 5, 50),
            new Box(10, 70, 100, 5),
            new Box(10, 15, 100, 5))) {
      assertFalse(PLACE.meets(beside), beside::toString);
      assertFalse(beside.meets(PLACE), beside::toString);
    }
    assertTrue(PLACE.meets(new Box(109, 69, 5, 5)));
    assertTrue(PLACE.meets(new Box(6, 16, 5, 5)));
  }

  @Test
  void aMarginIsTakenFromEverySide() {
    assertEquals(new Box(12, 22, 96, 46), PLACE.within(2));
  }
}
