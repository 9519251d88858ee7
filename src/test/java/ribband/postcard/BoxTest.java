package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies in a place and what touches it, as the tests of whole sheets look at it. */
class BoxTest {
  private static final Box PLACE = new Box(10, 20, 100, 50);

  @Test
  void aPlaceHoldsWhatReachesToItsEdges() {
    assertTrue(Sheets.holds(PLACE, PLACE));
    assertTrue(Sheets.holds(PLACE, new Box(11, 21, 98, 48)));
    for (Box beyond :
        List.of(
            new Box(9, 20, 100, 50),
            new Box(10, 19, 100, 50),
            new Box(10, 20, 101, 50),
            new Box(10, 20, 100, 51))) {
      assertFalse(Sheets.holds(PLACE, beyond), beyond::toString);
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
      assertFalse(Sheets.meet(PLACE, beside), beside::toString);
      assertFalse(Sheets.meet(beside, PLACE), beside::toString);
    }
    assertTrue(Sheets.meet(PLACE, new Box(109, 69, 5, 5)));
    assertTrue(Sheets.meet(PLACE, new Box(6, 16, 5, 5)));
  }

  @Test
  void aMarginIsTakenFromEverySide() {
    assertEquals(new Box(12, 22, 96, 46), PLACE.within(2));
  }
}
