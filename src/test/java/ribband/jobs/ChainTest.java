package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.measure.Hours;

class ChainTest {
  private static final Instant LATER = Instant.parse("2026-06-01T18:00:00Z");

  @TempDir Path folder;

  private Chain chain(Lasting lasting, String entry) throws Exception {
    Journal journal = Journals.read(folder, entry);
    return Chain.longest(Journals.list(journal, LATER), journal.project().pieces(), lasting);
  }

  private static List<String> said(Chain chain) {
    return chain.links().stream()
        .map(link -> link.goal().name() + " " + link.nights() + "+" + link.cure())
        .toList();
  }

  private static Lasting lasting(long strakes, long cure) {
    return new Lasting(
        Optional.of(Hours.ofMinutes(150)),
        Map.of("strakes", strakes, "knees", 1L),
        Map.of("strakes", cure),
        Map.of("fairing", 3L));
  }

  /** By hand: 2 nights of strakes, 1 of cure, 5 h in evenings of 2:30 are 2 nights, then 1. */
  @Test
  void aCureLiesBetweenPiecesAndTheJobThatFollows() throws Exception {
    Chain chain =
        chain(
            lasting(2, 1),
            "2026-03-01\ntodo: [{id: trim, after: [strakes], hours: 5}, {id: sand, after: trim}]");
    assertEquals(List.of("strakes 2+1", "trim 2+0", "sand 1+0"), said(chain));
    assertEquals(6, chain.nights());
  }

  @Test
  void aPhaseLastsAsLongAsItsPiecesOrItsHours() throws Exception {
    String jobs = "2026-03-01\ntodo: [{id: a, after: [planking]}, {id: b, after: [fairing]}]";
    assertEquals(List.of("strakes 4+0", "a 1+0"), said(chain(lasting(4, 0), jobs)));
    assertEquals(List.of("fairing 3+0", "b 1+0"), said(chain(lasting(1, 0), jobs)));
  }

  @Test
  void piecesAloneAreAChainOfTheirOwn() throws Exception {
    Chain chain = chain(lasting(3, 2), "2026-03-01\nhours: 0");
    assertEquals(List.of("strakes 3+0"), said(chain));
    assertEquals(3, chain.nights());
  }

  @Test
  void aShortJobIsANightOfItsOwnAndALongOneSeveral() throws Exception {
    Chain chain =
        chain(
            lasting(1, 0),
            """
            2026-03-01
            todo:
              - {id: a, hours: 0:10}
              - {id: b, hours: 2:30, after: a}
              - {id: c, hours: 2:31, after: b}
            """);
    assertEquals(List.of("a 1+0", "b 1+0", "c 2+0"), said(chain));
  }
}
