package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.jobs.Chain.Link;
import ribband.jobs.Evening.Item;
import ribband.jobs.Goal.Kind;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.pieces.PieceCount;
import ribband.stock.Stock.Told;

class JobWordsTest {
  private static final Goal STRAKES = new Goal(Kind.PIECES, "strakes");

  @TempDir Path folder;

  private JobWords words(PunchList list, Journal journal) {
    return new JobWords(
        list,
        NotedJob::what,
        id -> "Phase " + id,
        PieceCount.of(journal, LocalDate.of(2026, 6, 1)),
        ZoneId.of("Europe/Berlin"));
  }

  @Test
  void whatIsSaidOfAJob() throws Exception {
    Journal journal =
        Journals.read(
            folder,
            """
            2026-03-01
            pieces: {strakes: 3}
            todo:
              - {id: trim, what: Trim the ends, hours: 1.5, phase: fairing}
              - {id: sand, what: Sand, after: [trim, strakes, planking]}
              - {id: prime, what: Prime, after: [trim]}
              - {id: paint, what: Paint, after: [sand, mask], hours: 2}
              - {id: mask, what: Mask}
            """,
            "2026-03-02\nprivate: true\ntodo: [{id: gift}]",
            "2026-03-03\ntodo: [{id: wait, after: [gift]}]");
    PunchList list = Journals.list(journal, Instant.parse("2026-06-01T18:00:00Z"), Told.TO_READERS);
    JobWords words = words(list, journal);
    assertEquals(
        List.of(
            "Mask||;with others frees Paint",
            "Trim the ends|1½ hours, Phase fairing|;frees Prime; with others Sand",
            "Prime||Trim the ends;",
            "Sand||Trim the ends, strakes (1 left) and Phase planking;with others frees Paint",
            "Paint|2 hours|Sand and Mask;",
            "wait||a job not listed;"),
        list.open().stream()
            .map(
                open ->
                    open.job().what()
                        + "|"
                        + words.size(open.job())
                        + "|"
                        + words.waitsFor(open)
                        + ";"
                        + words.unlocks(open.frees(), open.helps()))
            .toList());
    Goal trim = new Goal(Kind.JOB, "trim");
    assertEquals("Trim the ends", words.goal(trim));
    assertEquals("done-long-ago", words.goal(new Goal(Kind.JOB, "done-long-ago")));
    assertEquals(
        "one of the strakes, 2 nights, then 1 night of cure", words.link(link(STRAKES, 2, 1)));
    assertEquals("Trim the ends, 1 night", words.link(link(trim, 1, 0)));
    assertEquals("Trim the ends, then 2 nights of cure", words.link(link(trim, 0, 2)));
    assertEquals(
        "2 strakes, 2½ hours",
        words.item(new Item(STRAKES, "strakes", 2, Optional.of(Hours.ofMinutes(150)))));
    assertEquals("Trim the ends", words.item(new Item(trim, "Trim", 1, Optional.empty())));
  }

  private static Link link(Goal goal, long nights, long cure) {
    return new Link(goal, Optional.empty(), nights, cure);
  }

  @Test
  void aHoldIsToldOnTheClockOfTheShop() throws Exception {
    Journal journal = Journals.read(folder, "2026-03-01\nhours: 1");
    PunchList list = Journals.list(journal, Instant.parse("2026-06-01T18:00:00Z"));
    assertEquals(
        "Sheer is in clamps until 00:30 on 15 July 2026",
        words(list, journal)
            .hold(new Hold("Sheer", Optional.of(Instant.parse("2026-07-14T22:30:00Z")))));
    assertEquals(
        "Sheer is glued too cold to tell when it is hard",
        words(list, journal).hold(new Hold("Sheer", Optional.empty())));
    assertEquals(
        Map.of(Kind.JOB, "job", Kind.PIECES, "pieces", Kind.PHASE, "phase", Kind.UNTOLD, "untold"),
        Arrays.stream(Kind.values()).collect(Collectors.toMap(k -> k, Kind::word)));
  }
}
