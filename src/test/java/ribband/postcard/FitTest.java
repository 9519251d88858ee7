package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FitTest {
  private static final Hand HAND = Hand.of(Weight.REGULAR, Ink.INK);

  @Test
  void aShortWordIsAsLargeAsAllowed() {
    Lines lines = new Fit(600, 50, 28, 1).fit("Dunlin", HAND);

    assertEquals(List.of("Dunlin"), lines.lines());
    assertEquals(50, lines.size());
    assertEquals(Said.WHOLE, lines.said());
    assertEquals(1.24, lines.leading());
    assertEquals(62, lines.height(), 1e-9);
    assertEquals(50, lines.firstBaseline(), 1e-9);
  }

  @Test
  void aLongerOneShrinksToTheWidth() {
    Lines lines = new Fit(120, 50, 28, 2).fit("Dunlin", HAND);

    assertEquals(List.of("Dunlin"), lines.lines());
    assertTrue(lines.size() < 50);
    assertEquals(120, lines.width(), 1e-9);
  }

  @Test
  void whatShrinksNoFurtherIsBrokenAtSpacesAndLargeAgain() {
    Lines lines = new Fit(500, 34, 28, 3).fit("third of 9 months with work (June and May)", HAND);

    assertEquals(List.of("third of 9 months with work", "(June and May)"), lines.lines());
    assertEquals(34, lines.size());
  }

  @Test
  void whatDoesNotFitIsLeftOutBehindAnEllipsis() {
    Lines lines = new Fit(270, 34, 28, 1).fit("third of 9 months with work", HAND);

    assertEquals(List.of("third of 9 months…"), lines.lines());
    assertEquals(28, lines.size());
    assertEquals(Said.SHORTENED, lines.said());
  }

  @Test
  void aWordThatIsTooLongIsBroken() {
    Lines lines = new Fit(100, 28, 28, 2).fit("xxxxxxxxxxxx", HAND);
    Lines one = new Fit(100, 28, 28, 1).fit("xxxxxxxxxxxx", HAND);

    assertEquals(List.of("xxxxxxx", "xxxxx"), lines.lines());
    assertEquals(Said.WHOLE, lines.said());
    assertEquals(List.of("xxxxxx…"), one.lines());
  }

  /** Also where little stands in the line without it. */
  @Test
  void aWordThatFitsTheNextLineIsNotBroken() {
    Lines lines = new Fit(205, 28, 28, 2).fit("A glued-lapstrake skiff", HAND);
    Lines one = new Fit(170, 28, 28, 1).fit("A glued-lapstrake", HAND);

    assertEquals(List.of("A", "glued-lapstrak…"), lines.lines());
    assertEquals(List.of("A glued-lap…"), one.lines());
  }

  @Test
  void noWordsAreNoLines() {
    Lines none = new Fit(100, 34, 28, 2).fit(" \n", HAND);

    assertTrue(none.isEmpty());
    assertEquals(0, none.height());
    assertEquals(0, none.width());
    assertEquals(0, none.reachAbove());
    assertEquals(0, none.reachBelow());
    assertEquals(0, none.leftBearing());
  }

  @Test
  void linesOfHighLettersStandFurtherApart() {
    Lines lines = new Fit(60, 28, 28, 2).fit("Ấg Ấg", HAND);

    assertTrue(lines.leading() > 1.4, lines::toString);
  }

  @Test
  void nothingIsSmallerThanAPhoneShows() {
    assertThrows(IllegalArgumentException.class, () -> new Fit(100, 50, 27, 1));
    assertThrows(IllegalArgumentException.class, () -> new Fit(100, 27, 28, 1));
    assertThrows(IllegalArgumentException.class, () -> new Fit(100, 28, 28, 0));
  }
}
