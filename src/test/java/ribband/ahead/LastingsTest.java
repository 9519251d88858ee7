package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.jobs.Lasting;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.pieces.Texts;

class LastingsTest {
  @TempDir Path folder;

  private Lasting of(Ahead ahead) {
    return Lastings.of(
        ahead.pieces(), ahead.nightly(), ahead.standing(), ahead.left(), ahead.setting());
  }

  /** Fairing has 27 h, 6 ¾ evenings; planking 17 h, 4 ¼; nothing tells of rigging. */
  @Test
  void piecesGoByPaceAndPhasesByTheirHours() throws Exception {
    Lasting lasting = of(Skiff.ahead(folder, Wish.NONE));
    assertEquals(Optional.of(Hours.ofMinutes(240)), lasting.evening());
    assertEquals(Map.of("strakes", 4L, "knees", 2L), lasting.pieces());
    assertEquals(Map.of("strakes", 0L, "knees", 0L), lasting.cures());
    assertEquals(Map.of("planking", 5L, "fairing", 7L), lasting.phases());
  }

  /** One strake each night was the pace: an evening of 1 h takes fifteen for 15 h all the same. */
  @Test
  void aNightThatBringsLessThanThePaceTakesLonger() throws Exception {
    assertEquals(15, of(Skiff.ahead(folder, Skiff.evening(1))).pieces().get("strakes"));
  }

  /** Two strakes, one a load: glued on night 1, on night 3, and off the clamps before night 5. */
  @Test
  void clampsThatStayOnOverTheNextEveningAreACure() throws Exception {
    Ahead ahead = slow("30 h");
    assertEquals(Map.of("strakes", 1L), of(ahead).cures());
    assertEquals(Map.of("strakes", 3L), of(ahead).pieces());
    assertEquals(3 + 1 + 1, ahead.chain().nights());
    assertEquals(
        List.of("3+1", "1+0"),
        ahead.chain().links().stream().map(link -> link.nights() + "+" + link.cure()).toList());
  }

  @Test
  void clampsThatAreOffByTheNextEveningAreNone() throws Exception {
    assertEquals(Map.of("strakes", 0L), of(slow("24 h")).cures());
  }

  private Ahead slow(String clampTime) throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            """
            clamps: 10
            adhesives: {slow: {clamp time: %s}}
            pieces: {strakes: {total: 3, adhesive: slow, clamps: 10}}
            """
                .formatted(clampTime),
            """
            2026-03-02
            hours: 2
            pieces: {strakes: 1}
            todo: [{id: fair, after: [strakes]}]
            """);
    return Skiff.at("2026-03-17T22:00", journal, Wish.NONE);
  }

  @Test
  void anUnknownEveningMakesOneNightOfAPhaseAndOfPieces() throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            """
            phases: [{id: fairing, title: Fairing, hours: 90}]
            pieces: {ribs: {total: 6}}
            """);
    Lasting lasting = of(Skiff.at("2026-03-17T22:00", journal, Wish.NONE));
    assertEquals(
        new Lasting(Optional.empty(), Map.of("ribs", 1L), Map.of("ribs", 0L), Map.of()), lasting);
  }

  /** What is used up or done has no hours left, and takes a night where something waits for it. */
  @Test
  void aPhaseWithoutHoursLeftIsANight() throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            "phases: [{id: Fairing, title: All fair, hours: 1}]\n",
            "2026-03-02\nphase: fairing\nhours: 2\n");
    assertEquals(
        Map.of("fairing", 1L), of(Skiff.at("2026-03-17T22:00", journal, Wish.NONE)).phases());
  }
}
