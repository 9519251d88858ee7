package ribband.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.PieceWork;
import ribband.measure.Hours;
import ribband.problem.Place;

/** Whatever is made and taken back: the sides add up to the whole, and no hour counts twice. */
class PiecesAddUpTest {
  private static final String PROJECT =
      """
      phases: [{id: planking}, {id: rig}]
      pieces:
        strakes: {total: 17, phase: planking, sides: [port, starboard], hours: 5}
        frames: {total: 9, phase: planking, hours: 2}
        spars: {total: 4, phase: rig}
      """;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void sidesAndWhole(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    Journal journal = Texts.journal(folder, PROJECT, "2026-01-01\nhours: 1");
    List<Entry> entries = new ArrayList<>();
    LocalDate day = LocalDate.of(2026, 1, 1);
    for (int i = 0; i < 60; i++) {
      day = day.plusDays(random.nextInt(3));
      entries.add(entry(journal.entries().get(0), day, random));
    }
    Journal random60 = new Journal(journal.folder(), journal.project(), journal.phases(), entries);
    Collection<PieceCount> counts = PieceCount.of(random60, day.minusDays(2)).values();
    counts.forEach(PiecesAddUpTest::check);
    long planking =
        entries.stream()
            .flatMap(e -> Optional.ofNullable(e.hours().get("planking")).stream())
            .mapToLong(Hours::seconds)
            .sum();
    long counted =
        counts.stream()
            .filter(count -> count.kind().phase().equals(Optional.of("planking")))
            .mapToLong(count -> seconds(count.sessions()))
            .sum();
    assertTrue(counted > 0 && counted <= planking, counted + " of " + planking);
  }

  private static void check(PieceCount count) {
    int total = count.kind().total();
    assertTrue(count.done() >= 0 && count.done() <= total);
    assertEquals(total, count.done() + count.left());
    if (!count.sides().isEmpty()) {
      assertEquals(total, count.sides().stream().mapToInt(Side::total).sum());
      int untold = count.done() - count.sides().stream().mapToInt(Side::done).sum();
      assertEquals(count.left(), count.sides().stream().mapToInt(Side::left).sum() - untold);
      long onSides = count.sides().stream().mapToLong(side -> seconds(side.sessions())).sum();
      assertTrue(onSides <= seconds(count.sessions()));
    }
    assertTrue(
        count.nights()
            >= count.sessions().all().stream().map(s -> s.entry().date()).distinct().count());
    count.sessionsLeft();
    count.nightsLeft();
    count.hoursLeft();
    count
        .sides()
        .forEach(
            side -> side.numbered().ifPresent(n -> assertEquals(side.left(), n.left().size())));
  }

  private static long seconds(Sessions sessions) {
    return sessions.all().stream().mapToLong(session -> session.hours().seconds()).sum();
  }

  /** Any entry, those too that would be told as errors. */
  private static Entry entry(Entry from, LocalDate day, SplittableRandom random) {
    List<PieceWork> pieces = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      pieces.add(work(from, random));
    }
    return new Entry(
        from.file(),
        day,
        from.address(),
        from.title(),
        from.phase(),
        random.nextInt(4) == 0
            ? Map.of()
            : Map.of(
                "planking",
                new Hours(random.nextInt(1, 20_000)),
                "rig",
                new Hours(random.nextInt(1, 9_000))),
        List.of(),
        List.of(),
        List.of(),
        pieces,
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        from.mark(),
        List.of(),
        from.shown(),
        "",
        1);
  }

  private static PieceWork work(Entry from, SplittableRandom random) {
    String kind =
        List.of("strakes", "strakes", "frames", "spars", "unheard").get(random.nextInt(5));
    Optional<String> side =
        kind.equals("strakes")
            ? List.of(
                    Optional.of("port"),
                    Optional.of("starboard"),
                    Optional.of("aft"),
                    Optional.<String>empty())
                .get(random.nextInt(4))
            : Optional.empty();
    List<Integer> numbers =
        random.nextInt(3) == 0
            ? List.of(random.nextInt(1, 9), -random.nextInt(1, 9), 7)
            : List.of();
    int count = numbers.isEmpty() ? random.nextInt(-1, 3) : 1;
    return new PieceWork(kind, side, count, numbers, Place.of(from.file()));
  }
}
