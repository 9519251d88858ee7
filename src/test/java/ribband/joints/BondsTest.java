package ribband.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.journal.Journal;
import ribband.ledger.Sheet;

/**
 * The times of joints and coats. The rule that a rate doubles every 18 F is that of {@code
 * shop/CureTest}, with its sources; minutes are the rated ones times 2^((72 - T)/18), reckoned
 * apart from the code. At 54 F every time is exactly twice the rated one.
 */
class BondsTest {
  private static final String PROJECT =
      """
      time zone: America/Chicago
      adhesives:
        epoxy:
          rated at: 72 F
          open time: 60 min
          soft for: 90 min
          clamp time: 8 h
          recoat: 3 h to 24 h
          full cure: 7 days
          coldest: 50 F
          spread: 140 in2 per fl oz
        quick: {soft for: 15 min, clamp time: 1 h}
        bare: {}
      shop temperatures: {jan: 46 F, apr: 54 F}
      """;

  @TempDir Path folder;

  /** The one joint or coat of a night, as data files have it, without empty cells. */
  private Map<String, String> only(String name, String keys) throws IOException {
    List<Map<String, String>> rows =
        rows(Journals.read(folder, PROJECT, name, keys), "2030-01-01T00:00", Which.ALL);
    assertEquals(1, rows.size());
    return rows.get(0);
  }

  private static Bonds bonds(Journal journal, String now) {
    return Bonds.of(journal, LocalDateTime.parse(now).atZone(journal.project().zone()).toInstant());
  }

  private static List<Map<String, String>> rows(Journal journal, String now, Which which) {
    Sheet sheet = JointsSheet.of(bonds(journal, now), which);
    List<Map<String, String>> rows = new ArrayList<>();
    for (var row : sheet.rows()) {
      Map<String, String> cells = new TreeMap<>();
      for (int i = 0; i < row.size(); i++) {
        if (!row.get(i).data().isEmpty()) {
          cells.put(sheet.columns().get(i), row.get(i).data());
        }
      }
      rows.add(cells);
    }
    return rows;
  }

  private static List<String> states(Journal journal, String now) {
    return rows(journal, now, Which.LIVE).stream()
        .map(row -> row.get("name") + " " + row.get("state"))
        .toList();
  }

  private static String next(Journal journal, String now) {
    return bonds(journal, now)
        .next()
        .map(
            due ->
                due.of().made().name()
                    + ", "
                    + due.kind().said()
                    + " "
                    + due.at().atZone(journal.project().zone()).toLocalDateTime())
        .orElse("nothing");
  }

  /** 90 min at 61 F are 137.47 min: soft until 22:42, and the look is 15 minutes before. */
  @Test
  void aLookIsDueFifteenMinutesBeforeTheJointIsStiff() throws IOException {
    assertEquals(
        new TreeMap<>(
            Map.ofEntries(
                Map.entry("kind", "joint"),
                Map.entry("name", "Scarf"),
                Map.entry("entry", "2026-03-14-scarf"),
                Map.entry("adhesive", "epoxy"),
                Map.entry("temperature", "61 °F"),
                Map.entry("temperature_from", "entry"),
                Map.entry("state", "cured"),
                Map.entry("spread_at", "2026-03-14T20:25:00-05:00"),
                Map.entry("clamped_at", "2026-03-14T20:40:00-05:00"),
                Map.entry("close_by", "2026-03-14T21:56:00-05:00"),
                Map.entry("closed", "in time"),
                Map.entry("last_look", "2026-03-14T22:27:00-05:00"),
                Map.entry("soft_until", "2026-03-14T22:42:00-05:00"),
                Map.entry("clamps_off", "2026-03-15T08:54:00-05:00"),
                Map.entry("full_cure", "2026-03-25T13:17:00-05:00"),
                Map.entry("estimated_use", "0.1071"),
                Map.entry("estimated_unit", "fl oz"))),
        only(
            "2026-03-14-scarf",
            """
            joints:
              - name: Scarf
                adhesive: epoxy
                spread at: 20:25
                clamped at: 20:40
                temperature: 61 F
                area: 2 1/2 in x 6 in"""));
  }

  /** At 54 F the open time is 2 h to the minute. */
  @ParameterizedTest
  @CsvSource({"22:00, in time", "22:01, late", "23:30, late"})
  void aJointClosedAfterTheOpenTimeIsLate(String clamped, String closed) throws IOException {
    Map<String, String> joint =
        only(
            "2026-04-14",
            "joints: [{name: a, adhesive: epoxy, spread at: 20:00, clamped at: " + clamped + "}]");
    assertEquals(closed, joint.get("closed"));
    assertEquals("2026-04-14T22:00:00-05:00", joint.get("close_by"));
  }

  /** Elapsed time: the clock skips 02:00 to 03:00 in the one night and repeats 01:00 to 02:00. */
  @ParameterizedTest
  @CsvSource({
    "2026-03-07, 2026-03-08T07:00:00-05:00",
    "2026-03-14, 2026-03-15T06:00:00-05:00",
    "2026-10-31, 2026-11-01T05:00:00-06:00"
  })
  void aNightInWhichTheClockChangesIsAsLongAsItIs(String night, String off) throws IOException {
    assertEquals(
        off,
        only(night, "joints: [{name: a, adhesive: epoxy, clamped at: 22:00, temperature: 72 F}]")
            .get("clamps_off"));
  }

  /** Without `clamped at` clamps count from the spreading, and the look without `spread at`. */
  @Test
  void oneTimeStandsInForTheOther() throws IOException {
    Map<String, String> spread =
        only("2026-04-14", "joints: [{name: a, adhesive: epoxy, spread at: 20:00}]");
    assertEquals("2026-04-15T12:00:00-05:00", spread.get("clamps_off"));
    assertEquals("2026-04-14T22:00:00-05:00", spread.get("close_by"));
    Map<String, String> clamped =
        only("2026-04-14", "joints: [{name: a, adhesive: epoxy, clamped at: 20:00}]");
    assertEquals("2026-04-14T22:45:00-05:00", clamped.get("last_look"));
    assertEquals("\"spread at\" is not written", clamped.get("unknown"));
  }

  /** Where it is soft for 15 minutes or less. */
  @Test
  void aLookThatCannotWaitIsDueAtOnce() throws IOException {
    Map<String, String> joint =
        only("2026-05-14", "joints: [{name: a, adhesive: quick, spread at: 20:00}]");
    assertEquals(joint.get("spread_at"), joint.get("last_look"));
    assertEquals("2026-05-14T20:15:00-05:00", joint.get("soft_until"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {name: a, spread at: 20:00, clamped at: 20:10}                 | no adhesive is named
          {name: a, adhesive: epoxy}                                     | "spread at" is not written; neither "spread at" nor "clamped at" is written
          {name: a, adhesive: epoxy, spread at: 20:00}                   | "clamped at" is not written
          {name: a, adhesive: bare, spread at: 20:00, clamped at: 20:10} | bare has no "open time" in project.yaml; bare has no "soft for" in project.yaml; bare has no "clamp time" in project.yaml; bare has no "full cure" in project.yaml
          {name: a, adhesive: epoxy, spread at: 20:00, clamped at: 20:10, temperature: 49 F} | 49 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data sheet
          {name: a, adhesive: epoxy, spread at: 20:00, clamped at: 20:10, temperature: 95 F} | 95 °F is too far from 72 °F, which its times are rated at; no time is promised, see the maker's data sheet
          """)
  void whatIsUnknownOfAJointSaysWhy(String joint, String why) throws IOException {
    assertEquals(why, only("2026-05-14", "joints: [" + joint + "]").get("unknown"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {what: a, at: 20:00}                | no adhesive is named
          {what: a, adhesive: epoxy}          | "at" is not written
          {what: a, adhesive: bare, at: 20:00} | bare has no "recoat" in project.yaml; bare has no "full cure" in project.yaml
          {what: a, adhesive: epoxy, at: 20:00, temperature: 40 F} | 40 °F is below the coldest for it, 50 °F; no time is promised, see the maker's data sheet
          """)
  void whatIsUnknownOfACoatSaysWhy(String coat, String why) throws IOException {
    assertEquals(why, only("2026-05-14", "coats: [" + coat + "]").get("unknown"));
  }

  /**
   * 4 h at 77 F are 290.96 min of cure at 72 F; the other 189.04 of 480 take 311.87 min at 59 F.
   */
  @Test
  void temperaturesInSequenceAddUp() throws IOException {
    Map<String, String> joint =
        only(
            "2026-05-14",
            "joints: [{name: a, adhesive: epoxy, clamped at: 20:00, temperature: 77 F for 4 h then"
                + " 59 F}]");
    assertEquals("77 °F for 4 h, then 59 °F", joint.get("temperature"));
    assertEquals("2026-05-15T05:12:00-05:00", joint.get("clamps_off"));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-04-14, month, 54 °F, 2026-04-15T12:00:00-05:00",
    "2026-05-14, rated, , 2026-05-15T04:00:00-05:00"
  })
  void withoutATemperatureTheMonthsMeanStandsInElseTheRatedTimes(
      String night, String from, String temperature, String off) throws IOException {
    Map<String, String> joint =
        only(night, "joints: [{name: a, adhesive: epoxy, clamped at: 20:00}]");
    assertEquals(from, joint.get("temperature_from"));
    assertEquals(temperature, joint.get("temperature"));
    assertEquals(off, joint.get("clamps_off"));
  }

  /** The day it was spread counts, which may not be the entry's. */
  @Test
  void theMeanIsThatOfTheMonthItWasMadeIn() throws IOException {
    assertEquals(
        "rated",
        only("2026-04-30", "joints: [{name: a, adhesive: epoxy, clamped at: 2026-05-01 00:10}]")
            .get("temperature_from"));
  }

  /** 64 F: 3 h are 244.94 min and 24 h are 1959.54; a wait ends after them, a window before. */
  @Test
  void aWindowIsNeverToldWiderThanItIs() throws IOException {
    Map<String, String> coat =
        only(
            "2026-03-14",
            "coats: [{what: a, adhesive: epoxy, at: 21:10, temperature: 64 F, area: 280 in2}]");
    assertEquals("2026-03-15T01:15:00-05:00", coat.get("recoat_from"));
    assertEquals("2026-03-16T05:49:00-05:00", coat.get("recoat_to"));
    assertEquals("2026-03-24T09:47:00-05:00", coat.get("full_cure"));
    assertEquals("2 fl oz", coat.get("estimated_use") + " " + coat.get("estimated_unit"));
  }

  @Test
  void statesAndWhatIsNextFollowTheClock() throws IOException {
    Journal journal =
        Journals.read(
            folder,
            PROJECT,
            "2026-04-14",
            """
            joints: [{name: J, adhesive: epoxy, spread at: 20:00}]
            coats: [{what: C, adhesive: epoxy, at: 21:00}]""");
    for (String[] moment :
        new String[][] {
          {"2026-04-13T23:59", "", "nothing"},
          {"2026-04-14T00:00", "J ahead C ahead", "J, close the joint 2026-04-14T22:00"},
          {"2026-04-14T20:00", "J soft C ahead", "J, close the joint 2026-04-14T22:00"},
          {"2026-04-14T22:01", "J soft C setting", "J, last look 2026-04-14T22:45"},
          {"2026-04-14T22:45", "J soft C setting", "J, last look 2026-04-14T22:45"},
          {"2026-04-14T22:59", "J soft C setting", "C, may be coated again 2026-04-15T03:00"},
          {"2026-04-14T23:00", "J in clamps C setting", "C, may be coated again 2026-04-15T03:00"},
          {"2026-04-15T03:00", "J in clamps C recoat", "C, may be coated again 2026-04-15T03:00"},
          {"2026-04-15T11:59", "J in clamps C recoat", "J, clamps off 2026-04-15T12:00"},
          {
            "2026-04-15T12:01",
            "J curing C recoat",
            "C, last chance to coat without sanding 2026-04-16T21:00"
          },
          {
            "2026-04-16T21:00",
            "J curing C recoat",
            "C, last chance to coat without sanding 2026-04-16T21:00"
          },
          {"2026-04-16T21:01", "J curing C sand first", "J, full cure 2026-04-28T20:00"},
          {"2026-04-28T20:00", "C sand first", "C, full cure 2026-04-28T21:00"},
          {"2026-04-28T21:00", "", "nothing"},
        }) {
      assertEquals(moment[1], String.join(" ", states(journal, moment[0])), moment[0]);
      assertEquals(moment[2], next(journal, moment[0]), moment[0]);
    }
  }

  @Test
  void aJointOfWhichLittleIsKnownIsLiveUntilItsClampsAreOffElseForAWeek() throws IOException {
    Journal journal =
        Journals.read(
            folder,
            PROJECT,
            "2026-05-14",
            """
            joints:
              - {name: Q, adhesive: quick, spread at: 20:00}
              - {name: N}
            coats: [{what: C}]""");
    assertEquals(
        List.of("Q in clamps", "N unknown", "C unknown"), states(journal, "2026-05-14T20:59"));
    assertEquals(List.of("N unknown", "C unknown"), states(journal, "2026-05-14T21:00"));
    assertEquals(List.of("N unknown", "C unknown"), states(journal, "2026-05-21T23:59"));
    assertEquals(List.of(), states(journal, "2026-05-22T00:00"));
  }

  @Test
  void aCoatIsCoveredByTheNextOfTheSameWhateverItsCase() throws IOException {
    Journals.read(
        folder, PROJECT, "2026-04-14", "coats: [{what: Hull inside, adhesive: epoxy, at: 20:00}]");
    Journals.entry(
        folder,
        "2026-04-15",
        """
        coats:
          - {what: hull-inside, adhesive: epoxy, at: 20:00}
          - {what: Hull outside, adhesive: epoxy, at: 20:00}""");
    Journal journal = Journals.read(folder);
    assertEquals(
        List.of("Hull inside recoat", "hull-inside ahead", "Hull outside ahead"),
        states(journal, "2026-04-15T19:59"));
    assertEquals(
        List.of("hull-inside setting", "Hull outside setting"),
        states(journal, "2026-04-15T20:00"));
    Map<String, String> first = rows(journal, "2026-04-15T20:00", Which.ALL).get(0);
    assertEquals("covered", first.get("state"));
    assertEquals("2026-04-15T20:00:00-05:00", first.get("covered_at"));
    assertTrue(
        JointsCalendar.dues(bonds(journal, "2026-04-15T20:00"), Which.ALL).stream()
            .noneMatch(due -> due.of().made().name().equals("Hull inside")));
  }

  /** By their times, whatever the order they are written in; without one it is their night's. */
  @Test
  void coatsFollowEachOtherByTheirTimes() throws IOException {
    Journals.read(
        folder,
        PROJECT,
        "2026-05-14",
        """
        coats:
          - {what: Deck, adhesive: epoxy, at: 20:00}
          - {what: Deck, adhesive: epoxy, at: 12:00}""");
    Journals.entry(folder, "2026-05-16", "coats: [{what: Deck, adhesive: epoxy}]");
    Journal journal = Journals.read(folder);
    assertEquals(
        List.of("2026-05-16T00:00:00-05:00", "2026-05-14T20:00:00-05:00"),
        rows(journal, "2026-05-16T09:00", Which.ALL).stream()
            .filter(row -> row.containsKey("covered_at"))
            .map(row -> row.get("covered_at"))
            .toList());
    assertEquals(List.of("Deck unknown"), states(journal, "2026-05-16T09:00"));
  }

  /** Private entries are the builder's own, too; those of tomorrow do not count yet. */
  @Test
  void privateEntriesCountAndThoseOfTomorrowDoNot() throws IOException {
    Journals.read(
        folder,
        PROJECT,
        "2026-05-14",
        "private: true\njoints: [{name: P, adhesive: quick, spread at: 20:00}]");
    Journals.entry(folder, "2026-05-15", "joints: [{name: T, adhesive: quick, spread at: 0:10}]");
    assertEquals(List.of("P soft"), states(Journals.read(folder), "2026-05-14T20:01"));
  }

  /** 01:30 comes twice on 1 November and 02:30 never on 8 March. */
  @ParameterizedTest
  @CsvSource({
    "2026-11-01, 1:30, 2026-11-01T01:30:00-05:00",
    "2026-03-08, 2:30, 2026-03-08T03:30:00-05:00"
  })
  void aClockTimeThatIsRepeatedIsTheFirstAndOneThatIsSkippedIsLater(
      String night, String clock, String read) throws IOException {
    assertEquals(
        read,
        only(night, "joints: [{name: a, adhesive: quick, spread at: " + clock + "}]")
            .get("spread_at"));
  }
}
