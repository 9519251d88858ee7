package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.jobs.Evening.Item;
import ribband.jobs.Evening.Offer;
import ribband.jobs.Goal.Kind;
import ribband.jobs.OpenJob.State;
import ribband.journal.Journal;
import ribband.measure.Hours;

class EveningTest {
  @TempDir Path folder;

  private Evening evening(int minutes, List<Offer> pieces, String jobs) throws Exception {
    Journal journal = Journals.read(folder, "2026-03-01\ntodo: " + jobs);
    PunchList list = Journals.list(journal, Instant.parse("2026-06-01T18:00:00Z"));
    Lasting lasting = new Lasting(Optional.empty(), Map.of(), Map.of(), Map.of());
    Chain chain = Chain.longest(list, Map.of(), lasting);
    return Evening.of(Hours.ofMinutes(minutes), list.in(State.READY), pieces, chain);
  }

  private static List<String> said(List<Item> items) {
    return items.stream()
        .map(
            item ->
                item.goal().name()
                    + " x"
                    + item.pieces()
                    + item.hours().map(h -> " " + h.seconds() / 60).orElse(""))
        .toList();
  }

  /** By hand: 2:30 holds b (1:00, two jobs behind it) and a (1:15); c (0:45) no more. */
  @Test
  void whatHoldsUpMostIsTakenFirst() throws Exception {
    Evening evening =
        evening(
            150,
            List.of(),
            "[{id: a, hours: 1:15}, {id: b, hours: 1}, {id: c, hours: 0:45}, {id: d, hours: 2:31},"
                + " {id: e}, {id: f, after: b, hours: 1}, {id: g, after: f}]");
    assertEquals(List.of("b x1 60", "a x1 75"), said(evening.together()));
    assertEquals(List.of("c x1 45"), said(evening.instead()));
    assertEquals(List.of("e x1"), said(evening.unknown()));
    assertEquals(List.of("d x1 151"), said(evening.tooLong()));
  }

  @Test
  void asManyPiecesAsTheEveningAndTheClampsAllow() throws Exception {
    Offer strakes =
        new Offer(new Goal(Kind.PIECES, "strakes"), "strakes", 2, Optional.of(Hours.ofMinutes(60)));
    assertEquals(List.of("strakes x2 120"), said(evening(300, List.of(strakes), "[]").together()));
    assertEquals(List.of("strakes x1 60"), said(evening(119, List.of(strakes), "[]").together()));
    assertEquals(List.of("strakes x1 60"), said(evening(59, List.of(strakes), "[]").tooLong()));
  }

  @Test
  void anEveningWithNothingToOfferIsEmpty() throws Exception {
    assertTrue(evening(60, List.of(), "[]").isEmpty());
    for (String job : List.of("hours: 1", "hours: 2", "what: unknown")) {
      assertFalse(evening(60, List.of(), "[{id: a, " + job + "}]").isEmpty(), job);
    }
    assertFalse(
        evening(60, List.of(), "[{id: a, hours: 1}, {id: b, hours: 1}]").instead().isEmpty());
  }

  @Test
  void whatFillsTheEveningExactlyFits() throws Exception {
    assertEquals(
        List.of("a x1 90", "b x1 60"),
        said(evening(150, List.of(), "[{id: a, hours: 1.5}, {id: b, hours: 1}]").together()));
  }
}
