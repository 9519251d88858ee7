package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Entry;
import ribband.journal.PieceKind;
import ribband.journal.Project;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.spoken.Loose;
import ribband.spoken.Piece;
import ribband.spoken.Spent;
import ribband.spoken.Spoken;
import ribband.spoken.Worked;

/** What was said is what the journal's own reader finds in the entry. */
class SaidTest {
  @TempDir private Path folder;
  private Desk desk;
  private Project project;

  @BeforeEach
  void boat() throws IOException {
    desk =
        new Desk(folder)
            .with(
                "project.yaml",
                "currency: USD",
                "phases: [{id: planking}, {id: fairing}, {id: 'no'}]",
                "materials: {epoxy: {unit: ml}}",
                "pieces:",
                "  strakes: {total: 16, sides: [port, starboard]}",
                "  ribs: {total: 12}");
    project = desk.journal().project();
  }

  private final List<Worked> worked = new ArrayList<>();
  private final List<Spent> spent = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Loose> loose = new ArrayList<>();
  private Optional<String> phase = Optional.empty();

  private SaidTest worked(String phase, String hours) throws Exception {
    worked.add(new Worked(Optional.ofNullable(phase), Hours.read(hours)));
    return this;
  }

  private SaidTest spent(String what, long cents) {
    spent.add(new Spent(what, new Money(cents)));
    return this;
  }

  private SaidTest pieces(String kind, String side, int count, Integer... numbers) {
    PieceKind of = project.pieceKind(kind).orElseThrow();
    pieces.add(new Piece(of, Optional.ofNullable(side), List.of(numbers), count));
    return this;
  }

  private Spoken spoken() {
    return new Spoken(worked, phase, spent, pieces, loose);
  }

  private Said said(String phase) {
    return Said.of(spoken(), project, Optional.ofNullable(phase));
  }

  /** The entry as it is read, and without a problem but those named. */
  private Entry entry(String... problems) throws IOException {
    Path file =
        new Tonight(
                desk.journal(), Desk.NIGHT, Instant.EPOCH, Optional.empty(), Optional.of(spoken()))
            .write()
            .file();
    assertEquals(List.of(problems), desk.problems(), () -> file.toString());
    return desk.journal().entries().get(0);
  }

  @Test
  void hoursOfThePhaseAreOneFigure() throws Exception {
    worked("planking", "2:45");
    assertEquals(List.of("hours: 2:45"), said("planking").hours());
    assertEquals(List.of("hours: {planking: 2:45}"), said("fairing").hours());
    assertEquals(List.of("hours: {planking: 2:45}"), said(null).hours());
    worked(null, "0:05");
    assertEquals(List.of("hours: 2:50"), said("planking").hours());
    worked("fairing", "10");
    assertEquals(List.of("hours: {planking: 2:50, fairing: 10:00}"), said("planking").hours());
    phase = Optional.of("planking");
    assertEquals(
        "{planking=Hours[seconds=10200], fairing=Hours[seconds=36000]}",
        entry().hours().toString());
  }

  @Test
  void minutesHaveTwoFigures() throws Exception {
    assertEquals(List.of("hours: 0:09"), worked("planking", "0:09").said("planking").hours());
    assertEquals(List.of("hours: 0:10"), worked("planking", "0:01").said("planking").hours());
  }

  @Test
  void hoursWithoutAPhaseAreUnsorted() throws Exception {
    worked(null, "2");
    assertEquals(List.of("hours: 2:00"), said(null).hours());
    assertEquals(
        "{unsorted=Hours[seconds=7200]}",
        entry(
                "2026/2026-03-14.md:4:1: warning: hours of this entry name no phase and count under"
                    + " unsorted; write phase: planking")
            .hours()
            .toString());
  }

  @Test
  void secondsAreKeptAndNamesQuoted() throws Exception {
    worked("no", "0.0003").worked("planking", "1.3333");
    assertEquals(List.of("hours: {'no': 0.0003, planking: 1:20}"), said("planking").hours());
    phase = Optional.of("no");
    assertEquals("{no=Hours[seconds=1], planking=Hours[seconds=4800]}", entry().hours().toString());
  }

  @Test
  void noHoursAreNoLine() {
    assertEquals(List.of(), said("planking").hours());
    assertEquals(List.of(), said("planking").cost());
    assertEquals(List.of(), said("planking").text());
    assertEquals("{}", said("planking").pieces().toString());
  }

  @Test
  void moneyWithWordsIsAnItemInsideTheCost() throws Exception {
    phase = Optional.of("planking");
    spent("sanding discs, 80 grit", 2370).spent("", 500).spent("Epoxy", 6450).spent("#3", 1);
    assertEquals(
        """
        cost: 93.21
        materials:
          bought:
            - item: 'sanding discs, 80 grit'
              cost: 23.70
            - item: Epoxy
              cost: 64.50              # for the shelf write material: and amount:
            - item: '#3'
              cost: 0.01
        """
            .strip(),
        String.join("\n", said("planking").cost()));
    assertEquals(
        "[sanding discs, 80 grit 2370, Epoxy 6450, #3 1, rest 500]", outlays(entry()).toString());
  }

  private static List<String> outlays(Entry entry) {
    return entry.outlays().stream()
        .map(o -> o.purchase().map(p -> p.what()).orElse("rest") + " " + o.amount().minor())
        .toList();
  }

  @Test
  void moneyWithoutWordsIsTheCostAlone() throws Exception {
    phase = Optional.of("planking");
    spent("", 2370).spent(" ", -370);
    assertEquals(List.of("cost: 20.00"), said("planking").cost());
    assertEquals("[rest 2000]", outlays(entry()).toString());
  }

  @Test
  void aRefundBesideAPurchaseIsAnItemToo() throws Exception {
    phase = Optional.of("planking");
    spent("glue", 1000).spent("", -2500);
    assertEquals(
        """
        cost: -15.00
        materials:
          bought:
            - item: glue
              cost: 10.00
            - item: money back
              cost: -25.00
        """
            .strip(),
        String.join("\n", said("planking").cost()));
    assertEquals("[glue 1000, money back -2500]", outlays(entry()).toString());
    spent("oak", -100).spent("", 2500);
    assertEquals(List.of("cost: 9.00"), said("planking").cost().subList(0, 1));
    assertEquals(7, said("planking").cost().size());
  }

  /** What was said, what the entry has, and what stands in the text. */
  private void become(String yaml, String... lost) throws IOException {
    Said said = said("planking");
    assertEquals(
        yaml,
        said.pieces().entrySet().stream()
            .map(e -> e.getKey() + ": " + e.getValue())
            .collect(Collectors.joining("; ")));
    assertEquals(List.of(lost), said.text());
    int count = pieces.stream().mapToInt(Piece::count).sum();
    assertEquals(count, entry().pieces().stream().mapToInt(work -> work.count()).sum());
  }

  @Test
  void countsAddUp() throws Exception {
    pieces("strakes", null, 2)
        .pieces("ribs", null, 1)
        .pieces("strakes", null, 1)
        .become("strakes: 3; ribs: 1");
  }

  @Test
  void sidesStandBesideEachOther() throws Exception {
    pieces("strakes", "port", 2)
        .pieces("strakes", "starboard", 1, 3)
        .pieces("strakes", "port", 1)
        .become("strakes: {port: 3, starboard: [3]}");
  }

  @Test
  void numbersStandInAList() throws Exception {
    pieces("ribs", null, 2, 3, 4).pieces("ribs", null, 1, 7).become("ribs: [3, 4, 7]");
  }

  @Test
  void numbersBesideACountAreCounted() throws Exception {
    pieces("ribs", null, 2, 3, 4).pieces("ribs", null, 1).become("ribs: 3", "ribs 3, 4");
  }

  @Test
  void numbersBesideACountOfTheirSideAreCounted() throws Exception {
    pieces("strakes", "port", 1, 2)
        .pieces("strakes", "port", 1)
        .pieces("strakes", "starboard", 1)
        .become("strakes: {port: 2, starboard: 1}", "strakes port 2");
  }

  @Test
  void whatIsTakenBackIsToldSo() throws Exception {
    desk.entry("2026/2026-03-10.md", "pieces: {ribs: [1, 2], strakes: 4}");
    pieces("ribs", null, -1, -2).pieces("strakes", null, -1);
    assertEquals("{ribs=[-2], strakes=-1}", said("planking").pieces().toString());
  }

  @Test
  void sidesBesideNoneAreCounted() throws Exception {
    pieces("strakes", "port", 2)
        .pieces("strakes", null, 1)
        .pieces("strakes", "starboard", 1, 2)
        .become("strakes: 4", "strakes port 2", "strakes starboard 2");
  }

  @Test
  void aNumberSaidTwiceIsCounted() throws Exception {
    pieces("ribs", null, 1, 3).pieces("ribs", null, 1, 3).become("ribs: 2", "ribs 3", "ribs 3");
  }

  @Test
  void whatWasNotUnderstoodIsTextALineEach() throws Exception {
    pieces("ribs", null, 1, 3).pieces("ribs", null, 1);
    loose.add(new Loose("# cold", Optional.of("no")));
    loose.add(new Loose("ate pie", Optional.empty()));
    assertEquals(List.of("ribs 3", "\\# cold", "ate pie"), said("planking").text());
    assertEquals("\nribs 3\n\n\\# cold\n\nate pie\n", entry().text());
  }
}
