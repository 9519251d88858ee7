package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.ahead.Ahead;
import ribband.ahead.AheadList;
import ribband.ahead.ForecastWords;
import ribband.ahead.PieceWords;
import ribband.ahead.Wish;
import ribband.jobs.Goal;
import ribband.jobs.JobWords;
import ribband.jobs.NotedJob;
import ribband.jobs.OpenJob;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.SheetCsv;
import ribband.measure.Hours;
import ribband.measure.ShopTalk;
import ribband.nights.NightWords;
import ribband.nights.Nightly;
import ribband.pieces.PieceCount;
import ribband.plan.Forecast;
import ribband.plan.StandingWords;
import ribband.problem.Problem;
import ribband.shop.Figure;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/**
 * Whatever one of four entries notes, a journal without errors has something ahead of it that can
 * be reckoned and told: work in an order that respects what waits for what, no pieces below none,
 * dates that do not come before likelier ones, and a night at least for what is open.
 */
class AheadFuzzTest {
  private static final String ENTRY = "2026-03-10-any.md";
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 24);
  private static final Instant NOW = Instant.parse("2026-03-24T22:10:00Z");
  private static final Wish WISH = new Wish(Optional.of(Hours.ofMinutes(150)), OptionalInt.of(25));
  private static final String PROJECT =
      """
      name: Dunlin
      currency: USD
      clamps: 20
      phases:
        - {id: planking, title: Planking, hours: 40, cost: 1400}
        - {id: fairing, title: Fairing, hours: 12}
        - {id: rigging, title: Rigging}
      materials:
        epoxy: {unit: fl oz, on hand: 40 fl oz}
      adhesives:
        epoxy:
          material: epoxy
          mix: 2 to 1 by volume
          rated at: 72 F
          clamp time: 8 h
          full cure: 7 days
          coldest: 50 F
          spread: 140 in2 per fl oz
      shop temperatures: {March: 48 F, April: 61 F}
      pieces:
        strakes:
          total: 16
          phase: planking
          sides: [port, starboard]
          adhesive: epoxy
          clamps: 10
          hours: 2
          glue area: 140 in2
        knees: {total: 4, phase: planking}
        cleats: {total: 3, clamps: 2, adhesive: epoxy}
      """;

  /**
   * What bytes stand for where a control character leads them: most of what is tried so is an entry
   * and no refusal.
   */
  private static final List<String> LINES =
      List.of(
          "pieces: {strakes: {port: [2, 3], starboard: [2]}, knees: 1}",
          "hours: {planking: 2:30, fairing: 1}",
          "phase: rigging",
          "todo: [{id: zinc, after: [rig, mask], hours: 9}, {id: alder, after: [zinc, cleats]}]",
          "done: [fair]",
          "complete: {fairing: 40%}",
          "joints: [{adhesive: epoxy, clamped at: 21:00, temperature: 45 F}]",
          "private: true",
          "materials: {epoxy: 39 fl oz}",
          "pieces: {strakes: {port: [-1]}}",
          "hours: 0:01",
          "phase: planking",
          "todo: [{id: keel, after: planking}, {id: bung, after: [keel, varnish], hours: 0.01}]",
          "done: [fair, rig]",
          "complete: {planking: 100%, rigging: 1%}",
          "joints: [{name: Cleat, adhesive: epoxy, clamped at: 20:40, temperature: 72 F}]",
          "pieces: {strakes: 14, knees: 3, cleats: 3}",
          "hours: 16",
          "todo: [{id: mask}, {id: caulk, after: [knees], hours: 10000}]",
          "complete: {planking: 0.01%, fairing: 99.99%}",
          "pieces: {cleats: 2}",
          "pieces: {strakes: {port: 1, starboard: -1}}");

  @TempDir static Path root;
  private static JournalFolder folder;

  @BeforeAll
  static void aJournalOfFourEntries() throws IOException {
    write(JournalFolder.PROJECT, PROJECT);
    write(
        "2026-03-02.md",
        """
        ---
        phase: planking
        hours: 3
        pieces: {strakes: {port: [1], starboard: [1]}}
        todo:
          - {id: fair, after: [strakes, mask], phase: fairing, hours: 6}
          - {id: mask}
          - {id: rig, after: [fairing, fair], phase: rigging, hours: 5}
        ---
        """);
    write(
        "2026-03-04.md", "---\nphase: planking\nhours: 2\npieces: {knees: 1}\ndone: [mask]\n---\n");
    write(ENTRY, "");
    write(
        "2026-03-17.md",
        """
        ---
        phase: planking
        hours: 4
        todo: [{id: varnish, after: [rig]}]
        joints: [{adhesive: epoxy, clamped at: 20:40, temperature: 61 F}]
        ---
        """);
    folder = JournalFolder.list(root, root.resolve("site"));
  }

  private static void write(String file, String text) throws IOException {
    Files.writeString(root.resolve(file), text, StandardCharsets.UTF_8);
  }

  @FuzzTest(maxDuration = "12s")
  void ahead(byte[] bytes) throws IOException {
    ByteArrayOutputStream entry = new ByteArrayOutputStream();
    entry.writeBytes("---\n".getBytes(StandardCharsets.UTF_8));
    entry.writeBytes(isLines(bytes) ? lines(bytes) : bytes);
    entry.writeBytes("\n---\n".getBytes(StandardCharsets.UTF_8));
    Files.write(root.resolve(ENTRY), entry.toByteArray());
    JournalReader.Read read = JournalReader.read(folder, TODAY);
    if (read.problems().stream().noneMatch(Problem::isError)) {
      Journal journal = read.journal();
      Stock stock = Stock.of(journal, TODAY, Told.TO_THE_BUILDER);
      Ahead ahead = Ahead.of(journal, stock, TODAY, NOW, WISH, Told.TO_THE_BUILDER);
      holds(ahead);
      tell(ahead);
      Stock told = Stock.of(journal, journal.asOf().orElseThrow(), Told.TO_READERS);
      holds(Ahead.forReaders(journal, told));
    }
  }

  private static boolean isLines(byte[] bytes) {
    return bytes.length > 0 && bytes[0] >= 0 && bytes[0] < '\t';
  }

  /** A line for each byte, none of a key that is there. */
  private static byte[] lines(byte[] bytes) {
    Map<String, String> lines = new LinkedHashMap<>();
    for (byte b : bytes) {
      String line = LINES.get(Byte.toUnsignedInt(b) % LINES.size());
      lines.putIfAbsent(line.substring(0, line.indexOf(':')), line);
    }
    return String.join("\n", lines.values()).getBytes(StandardCharsets.UTF_8);
  }

  private static void holds(Ahead ahead) {
    order(ahead.jobs().open());
    ahead.pieces().values().forEach(count -> assertTrue(count.left() >= 0, count::toString));
    if (!ahead.jobs().open().isEmpty() || !ahead.nightly().isEmpty()) {
      assertTrue(ahead.chain().nights() >= 1, () -> ahead.chain().toString());
    }
    Forecast forecast = ahead.forecast();
    assertFalse(sunday(forecast.p80()).isBefore(sunday(forecast.p50())), forecast::toString);
    assertFalse(sunday(forecast.p95()).isBefore(sunday(forecast.p80())), forecast::toString);
    assertEquals(forecast.p95().value().isEmpty(), ahead.fan().isEmpty());
  }

  /** What is open of that which a job waits for stands above it. */
  private static void order(List<OpenJob> open) {
    Set<Goal> below = new HashSet<>();
    open.forEach(job -> below.add(job.job().goal()));
    for (OpenJob job : open) {
      assertTrue(job.waitsFor().stream().noneMatch(below::contains), () -> job + " of " + open);
      below.remove(job.job().goal());
    }
  }

  private static LocalDate sunday(Figure<LocalDate> figure) {
    return figure.value().orElse(LocalDate.MAX);
  }

  private static void tell(Ahead ahead) throws IOException {
    List<String> said = new ArrayList<>();
    JobWords jobs =
        new JobWords(ahead.jobs(), NotedJob::id, id -> id, ahead.pieces(), ahead.zone());
    for (OpenJob job : ahead.jobs().open()) {
      said.add(job.job().id() + jobs.size(job.job()) + jobs.waitsFor(job));
      said.add(jobs.unlocks(job.frees(), job.helps()));
      job.hold().map(jobs::hold).ifPresent(said::add);
    }
    ahead.chain().links().forEach(link -> said.add(jobs.link(link)));
    ahead.evening().orElseThrow().together().forEach(item -> said.add(jobs.item(item)));
    for (PieceCount count : ahead.pieces().values()) {
      said.add(PieceWords.count(count));
      said.add(PieceWords.rate(count));
      said.add(PieceWords.pace(count, TODAY));
    }
    NightWords nights =
        new NightWords(new ShopTalk(ahead.journal().project().units()), ahead.zone());
    for (Nightly kind : ahead.nightly().values()) {
      said.add(nights.binding(kind));
      said.addAll(nights.limits(kind));
      said.addAll(nights.held(kind.held()));
    }
    ahead.changes().orElseThrow().kinds().forEach(kind -> said.add(nights.whatIf(kind.whatIf())));
    ahead.standing().phases().forEach(phase -> said.add(StandingWords.of(phase)));
    said.add(StandingWords.ofWhole(ahead.standing()));
    said.add(ForecastWords.left(ahead.forecast()));
    said.addAll(ForecastWords.dates(ahead.forecast()));
    said.add(ForecastWords.drawn(ahead.forecast()));
    said.addAll(ForecastWords.cold(ahead.cold()));
    ForecastWords.leftOut(ahead.left()).ifPresent(said::add);
    for (AheadList list : AheadList.values()) {
      SheetCsv.write(list.sheet(ahead), new StringBuilder());
    }
    assertTrue(said.stream().noneMatch(words -> words.contains("Optional")), said::toString);
  }
}
