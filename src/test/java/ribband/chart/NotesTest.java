package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NotesTest {
  private static final Box SHEET = new Box(0, 0, 320, 240);

  private static List<Callout> lay(Clearance clearance, Notes.Note... notes) {
    return new Notes(clearance, Arrays.asList(Notes.Side.values())).lay(List.of(notes));
  }

  @Test
  void aNoteStandsNearAboveAndLeftOfItsThing() {
    Callout note = lay(new Clearance(SHEET), new Notes.Note(200, 120, "Turned over")).get(0);
    assertEquals(new Label(202, 104, Label.Anchor.END, "Turned over"), note.label());
    assertEquals(108, note.head());
    assertEquals(120, note.foot());
  }

  @Test
  void whereTheFirstSideIsTakenTheNextIsTried() {
    Callout note = lay(new Clearance(SHEET), new Notes.Note(4, 120, "Turned over")).get(0);
    assertEquals(Label.Anchor.START, note.label().anchor());
    Clearance above = new Clearance(SHEET);
    above.take(new Box(0, 0, 320, 110));
    Callout below = lay(above, new Notes.Note(200, 120, "Turned over")).get(0);
    assertTrue(below.label().y() > 120 && below.head() > below.foot());
  }

  @Test
  void aLeaderMayCrossAShadeButNoTextStandsOnIt() {
    Clearance clearance = new Clearance(SHEET);
    clearance.shade(new Box(0, 60, 320, 240));
    Callout note = lay(clearance, new Notes.Note(200, 120, "Turned over")).get(0);
    assertTrue(note.label().box().bottom() < 60);
  }

  @Test
  void aNoteWithoutRoomIsLeftUntoldOnItsThing() {
    Clearance full = new Clearance(SHEET);
    full.take(SHEET);
    Callout note = lay(full, new Notes.Note(200, 120, "Turned over")).get(0);
    assertFalse(note.isTold());
    assertEquals(note.foot(), note.head());
  }

  @Test
  void noTextLiesOnAnotherOrOnALeaderAndAllStayOnTheSheet() {
    Random random = new Random(5);
    int told = 0;
    for (int run = 0; run < 500; run++) {
      List<Notes.Note> notes = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(12); i++) {
        notes.add(
            new Notes.Note(
                random.nextInt(320), 20 + random.nextInt(200), "n".repeat(1 + random.nextInt(30))));
      }
      List<Callout> laid = lay(new Clearance(SHEET), notes.toArray(new Notes.Note[0]));
      assertEquals(notes.size(), laid.size());
      List<Callout> shown = laid.stream().filter(Callout::isTold).toList();
      told += shown.size();
      for (Callout one : shown) {
        Box text = one.label().box();
        assertTrue(text.left() >= 0 && text.right() <= 320, one::toString);
        assertTrue(text.top() >= 0 && text.bottom() <= 240, one::toString);
        for (Callout other : shown) {
          Box leader =
              new Box(
                  other.x(),
                  Math.min(other.head(), other.foot()),
                  other.x(),
                  Math.max(other.head(), other.foot()));
          boolean touches =
              one != other && (text.overlaps(other.label().box()) || text.overlaps(leader));
          assertFalse(touches, () -> one + " on " + other);
        }
      }
    }
    assertTrue(told > 1500, "only " + told + " notes found room");
  }

  @Test
  void theCurvesHeightIsThatOfItsKnotsAndBetweenThem() {
    FairCurve curve = FairCurve.through(new double[] {10, 40, 70}, new double[] {90, 60, 60});
    assertEquals(
        List.of(90, 60, 60), List.of(curve.heightAt(10), curve.heightAt(40), curve.heightAt(70)));
    assertEquals(60, curve.heightAt(55));
    assertTrue(curve.heightAt(25) > 60 && curve.heightAt(25) < 90);
    assertEquals(90, curve.heightAt(0));
    assertEquals(60, curve.heightAt(400));
    assertEquals(10, curve.startX());
    assertEquals(70, curve.endX());
  }
}
