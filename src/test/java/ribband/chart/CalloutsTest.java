package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CalloutsTest {
  @Test
  void labelsFarApartShareARow() {
    assertEquals(1, Callouts.rows(lay(new Callouts.Flag(0, "one"), new Callouts.Flag(90, "two"))));
  }

  @Test
  void theLeftOfTwoCloseLabelsStandsHigher() {
    List<Callouts.Placed> laid =
        lay(new Callouts.Flag(10, "planking"), new Callouts.Flag(30, "fairing"));
    assertEquals(List.of(1, 0), laid.stream().map(Callouts.Placed::row).toList());
  }

  @Test
  void aLabelNearTheRightEdgeTurnsLeft() {
    assertEquals(Label.Anchor.END, lay(new Callouts.Flag(310, "planking")).get(0).anchor());
  }

  @Test
  void noTwoTextsOverlapAndAllStayOnTheSheet() {
    Random random = new Random(5);
    for (int run = 0; run < 500; run++) {
      List<Callouts.Flag> flags = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(12); i++) {
        flags.add(new Callouts.Flag(random.nextInt(320), "n".repeat(1 + random.nextInt(60))));
      }
      List<Callouts.Placed> laid = Callouts.lay(flags, 320);
      assertEquals(flags.size(), laid.size());
      for (Callouts.Placed one : laid) {
        assertFalse(one.start() < 0 || one.end() > 320, one::toString);
        for (Callouts.Placed other : laid) {
          boolean sameRow = one != other && one.row() == other.row();
          assertFalse(
              sameRow && one.start() < other.end() && other.start() < one.end(),
              () -> one + " over " + other);
        }
      }
    }
  }

  private static List<Callouts.Placed> lay(Callouts.Flag... flags) {
    return Callouts.lay(List.of(flags), 320);
  }
}
