package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.jobs.Goal.Kind;
import ribband.jobs.OpenJob.State;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.stock.Stock.Told;

class PunchListTest {
  private static final Instant LATER = Instant.parse("2026-06-01T18:00:00Z");

  @TempDir Path folder;

  private PunchList list(String... entries) throws IOException {
    return Journals.list(Journals.read(folder, entries), LATER);
  }

  /** One line a job: its state, id, what it waits for, what it frees and helps. */
  private static List<String> said(PunchList list) {
    return list.open().stream().map(PunchListTest::said).toList();
  }

  private static String said(OpenJob open) {
    return open.state()
        + " "
        + open.job().id()
        + open.waitsFor().stream().map(Goal::name).toList()
        + ids(open.frees())
        + ids(open.helps());
  }

  private static List<String> ids(List<NotedJob> jobs) {
    return jobs.stream().map(NotedJob::id).toList();
  }

  @Test
  void whatWaitsForNothingIsReadyAndSaysWhatItFrees() throws Exception {
    PunchList list =
        list(
            """
            2026-03-01
            todo:
              - {id: sand, after: [trim]}
              - {id: prime, after: [sand, mask]}
              - {id: trim}
              - {id: mask}
            """);
    assertEquals(
        List.of(
            "READY mask[][][prime]",
            "READY trim[][sand][]",
            "WAITING sand[trim][][prime]",
            "WAITING prime[mask, sand][][]"),
        said(list).stream().map(s -> s.replace("[sand, mask]", "[mask, sand]")).toList());
  }

  @Test
  void aJobDoneLetsTheNextGoOn() throws Exception {
    PunchList list =
        list(
            "2026-03-01\ntodo: [{id: trim}, {id: sand, after: [TRIM]}, {id: prime, after: sand}]",
            "2026-03-02\ndone: [Trim]");
    assertEquals(List.of("READY sand[][prime][]", "WAITING prime[sand][][]"), said(list));
    assertEquals(List.of("trim"), ids(list.done()));
    assertEquals("2026-03-02.md", list.done().get(0).done().orElseThrow().file());
  }

  @Test
  void aKindOfPiecesIsOverWhenAllAreMade() throws Exception {
    String[] entries = {
      "2026-03-01\ntodo: [{id: trim, after: [strakes]}]\npieces: {strakes: 3}",
      "2026-03-02\npieces: {strakes: 1}",
      "2026-03-03\npieces: {strakes: -1}"
    };
    assertEquals(List.of("WAITING trim[strakes][][]"), said(list(entries[0])));
    assertEquals(List.of("READY trim[][][]"), said(list(entries[0], entries[1])));
    assertEquals(List.of("WAITING trim[strakes][][]"), said(list(entries)));
  }

  @Test
  void aPhaseIsOverWhenCompleteSaysSoOrAllItsPiecesAreMade() throws Exception {
    String jobs = "2026-03-01\ntodo: [{id: a, after: [planking]}, {id: b, after: [fairing]}]";
    assertEquals(List.of("WAITING a[planking][][]", "WAITING b[fairing][][]"), said(list(jobs)));
    assertEquals(
        List.of("WAITING a[planking][][]", "READY b[][][]"),
        said(list(jobs, "2026-03-02\ncomplete: {fairing: 100%}\npieces: {strakes: 4}")));
    assertEquals(
        List.of("READY a[][][]", "WAITING b[fairing][][]"),
        said(
            list(
                jobs,
                "2026-03-02\ncomplete: {fairing: 100%}\npieces: {strakes: 4}",
                "2026-03-03\ncomplete: {fairing: 90%}\npieces: {knees: 2}")));
    assertEquals(
        List.of("READY a[][][]", "WAITING b[fairing][][]"),
        said(list(jobs, "2026-03-02\ncomplete: {Planking: 100%}", "2026-03-03\nhours: 0")));
  }

  @Test
  void aJobIsHeldWhileTheJointsOfTheNightThatFreedItAreInClamps() throws Exception {
    String[] entries = {
      "2026-03-01\ntodo: [{id: trim, after: [strakes, glue]}, {id: glue}]\npieces: {strakes: 3}",
      """
      2026-03-02
      pieces: {strakes: 1}
      done: [glue]
      joints:
        - {name: Sheer, adhesive: epoxy, clamped at: 20:00, temperature: 72 F}
        - {name: Scarf, adhesive: epoxy, clamped at: 19:00, temperature: 72 F}
      """
    };
    PunchList held =
        Journals.list(Journals.read(folder, entries), Instant.parse("2026-03-03T03:59:00Z"));
    assertEquals(State.HELD, held.open().get(0).state());
    assertEquals(
        Optional.of(new Hold("Sheer", Optional.of(Instant.parse("2026-03-03T04:00:00Z")))),
        held.open().get(0).hold());
    PunchList free =
        Journals.list(Journals.read(folder, entries), Instant.parse("2026-03-03T04:00:00Z"));
    assertEquals(State.READY, free.open().get(0).state());
  }

  @Test
  void aJointTooColdToTellHoldsUntilItIsForgotten() throws Exception {
    String entry =
        """
        2026-03-02
        todo: [{id: glue}, {id: trim, after: [glue]}]
        done: [glue]
        joints: [{name: Sheer, adhesive: epoxy, clamped at: 20:00, temperature: 40 F}]
        """;
    PunchList held =
        Journals.list(Journals.read(folder, entry), Instant.parse("2026-03-05T03:59:00Z"));
    assertEquals(Optional.of(new Hold("Sheer", Optional.empty())), held.open().get(0).hold());
    assertEquals(State.READY, list(entry).open().get(0).state());
  }

  @Test
  void readersAreNotToldOfPrivateJoints() throws Exception {
    String[] entries = {
      "2026-03-01\ntodo: [{id: glue}, {id: trim, after: [glue]}]",
      "2026-03-02\nprivate: true\ndone: [glue]\n"
          + "joints: [{name: Gift, adhesive: epoxy, clamped at: 20:00, temperature: 72 F}]"
    };
    Journal journal = Journals.read(folder, entries);
    Instant night = Instant.parse("2026-03-02T22:00:00Z");
    assertEquals(State.READY, Journals.list(journal, night, Told.TO_READERS).open().get(0).state());
    assertEquals(State.HELD, Journals.list(journal, night).open().get(0).state());
  }

  @Test
  void jointsOfOtherNightsHoldNothing() throws Exception {
    PunchList list =
        Journals.list(
            Journals.read(
                folder,
                "2026-03-01\ntodo: [{id: a}, {id: b, after: [a]}]\ndone: [a]",
                "2026-03-02\njoints: [{adhesive: epoxy, clamped at: 20:00}]"),
            Instant.parse("2026-03-02T21:00:00Z"));
    assertEquals(List.of("READY b[][][]"), said(list));
  }

  @Test
  void notesOfOneJobArePutTogether() throws Exception {
    NotedJob job =
        list(
                "2026-03-01\nphase: planking\ntodo: [{id: trim, hours: 1}, {id: b}]",
                "2026-03-02\ntodo: [{id: Trim, what: Trim the ends, hours: 2, after: [b]}]",
                "2026-03-03\nphase: fairing\ntodo: [{id: trim, after: [strakes, b]}]")
            .in(State.WAITING)
            .get(0)
            .job();
    assertEquals("trim", job.id());
    assertEquals("Trim the ends", job.what());
    assertEquals(Optional.of("planking"), job.phase());
    assertEquals(Optional.of(Hours.ofMinutes(120)), job.hours());
    assertEquals(List.of("b", "strakes"), job.after().stream().map(Goal::name).toList());
    assertEquals("2026-03-01.md", job.noted().file());
  }

  @Test
  void entriesToComeDoNotCount() throws Exception {
    assertEquals(
        List.of("READY a[][][]"),
        said(
            list(
                "2026-05-31\ntodo: [{id: a, after: [later]}]",
                "2026-06-02\ntodo: [{id: later}]\ndone: [a]")));
  }

  @Test
  void readersAreNotToldOfPrivateJobs() throws Exception {
    String[] entries = {
      "2026-03-01\nprivate: true\ntodo: [{id: secret, what: A gift}, {id: b, what: Words}]",
      "2026-03-02\ntodo: [{id: b, after: [secret, c]}, {id: c}, {id: d, after: secret}]",
      "2026-03-03\nprivate: true\ndone: [c]",
    };
    PunchList told = Journals.list(Journals.read(folder, entries), LATER, Told.TO_READERS);
    assertEquals(List.of("b", "d"), ids(told.open().stream().map(OpenJob::job).toList()));
    assertEquals(
        List.of(Kind.UNTOLD), told.open().get(0).waitsFor().stream().map(Goal::kind).toList());
    assertEquals("b", told.open().get(0).job().what());
    assertEquals(3, list(entries).open().size());
    PunchList over =
        Journals.list(
            Journals.read(
                folder,
                entries[0],
                entries[1],
                entries[2] + "\ntodo: []",
                "2026-03-04\nprivate: true\ndone: [secret]"),
            LATER,
            Told.TO_READERS);
    assertEquals(List.of("READY b[][][]", "READY d[][][]"), said(over));
  }

  @Test
  void whatIsAwaitedNamesTheJobsItLetsGoOn() throws Exception {
    Map<Goal, List<OpenJob>> awaited =
        list("2026-03-01\ntodo: [{id: a, after: [strakes]}, {id: b, after: [strakes, fairing, a]}]")
            .awaited();
    assertEquals(
        "{strakes=[a, b], fairing=[b]}",
        awaited.entrySet().stream()
            .map(
                e ->
                    e.getKey().name() + "=" + e.getValue().stream().map(o -> o.job().id()).toList())
            .toList()
            .toString()
            .replace("[strakes=[a", "{strakes=[a")
            .replace("]]", "]}"));
  }

  @Test
  void fourHundredJobsInARowAreOneOrder() throws Exception {
    List<String> jobs = new ArrayList<>();
    for (int i = 399; i >= 0; i--) {
      jobs.add("  - {id: job" + i + (i == 0 ? "" : ", after: [job" + (i - 1) + "]") + "}");
    }
    PunchList list = list("2026-03-01\ntodo:\n" + String.join("\n", jobs));
    assertEquals(400, list.open().size());
    assertEquals("job0", list.open().get(0).job().id());
    assertEquals("job399", list.open().get(399).job().id());
    assertEquals(1, list.in(State.READY).size());
    Chain chain =
        Chain.longest(list, Map.of(), new Lasting(Optional.empty(), Map.of(), Map.of(), Map.of()));
    assertEquals(400, chain.nights());
    assertTrue(chain.behind(list.open().get(0).job().goal()) == 400);
  }
}
