package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ribband.measure.Unreadable;

class AheadListTest {
  @ParameterizedTest
  @EnumSource(AheadList.class)
  void eachIsReadByItsWord(AheadList list) throws Unreadable {
    assertEquals(list, AheadList.read(list.word()));
    assertEquals(list, AheadList.read(" " + list.name() + " "));
  }

  @Test
  void anotherIsRefusedWithWhatThereIs() {
    Unreadable near = assertThrows(Unreadable.class, () -> AheadList.read("fourcast"));
    assertEquals("cannot be shown; did you mean \"forecast\"?", near.wrong() + "; " + near.cure());
    Unreadable far = assertThrows(Unreadable.class, () -> AheadList.read("x"));
    assertEquals("there are jobs, pieces, nights, plan, left, forecast", far.cure());
  }
}
