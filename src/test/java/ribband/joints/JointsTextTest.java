package ribband.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;

/** What the builder reads, whole; the figures are checked in {@code BondsTest}. */
class JointsTextTest {
  private static final String SKIFF =
      """
      name: Dunlin
      units: us
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
        glue: {clamp time: 1 h}
      """;

  @TempDir Path folder;

  private String told(String now, Which which) throws IOException {
    Journal journal = Journals.read(folder);
    return JointsText.of(
        Bonds.of(journal, LocalDateTime.parse(now).atZone(journal.project().zone()).toInstant()),
        which);
  }

  @Test
  void aNightInUsUnits() throws IOException {
    Journals.read(
        folder,
        SKIFF,
        "2026-03-14-garboard",
        """
        joints:
          - name: Starboard garboard scarf
            adhesive: epoxy
            spread at: 20:25
            clamped at: 20:40
            temperature: 61 F
            area: 2 1/2 in x 6 in
          - name: Breasthook
            adhesive: glue
            clamped at: 21:30
        coats:
          - what: Hull, inside
            adhesive: epoxy
            at: 21:10
            temperature: 49 F
        """);
    assertEquals(
        """
        Dunlin, joints and coats on 14 March 2026 at 22:10 (America/Chicago)

        Starboard garboard scarf: soft
          glued        14 March 2026, spread at 20:25, epoxy, at 61 °F
          closed       20:40, in time: the latest was 21:56
          last look    22:27, in 17 min
          soft until   22:42, in 32 min
          clamps off   08:54 on 15 March 2026, in 10 h 44 min
          full cure    13:17 on 25 March 2026, in 10 days
          mixed        ⅛ fl oz of epoxy, estimated from the area

        Breasthook: in clamps
          glued        14 March 2026, glue, as rated
          closed       21:30; whether in time is unknown: glue has no "open time" in
                       project.yaml
          last look    unknown: glue has no "soft for" in project.yaml
          soft until   unknown: glue has no "soft for" in project.yaml
          clamps off   22:30, in 20 min
          full cure    unknown: glue has no "full cure" in project.yaml

        Hull, inside: unknown how far
          laid         14 March 2026, at 21:10, epoxy, at 49 °F
          next coat    unknown: 49 °F is below the coldest for it, 50 °F; no time is
                       promised, see the maker's data sheet
          full cure    unknown: 49 °F is below the coldest for it, 50 °F; no time is
                       promised, see the maker's data sheet

        Next: Starboard garboard scarf, last look: 22:27, in 17 min.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        Wood dust can cause asthma and worse, and dust of half-cured resin is resin:
        draw it off at the tool and wear a mask that fits.
        Heating the shop: heaters that burn fuel without a flue can kill by carbon
        monoxide, open doors or not; fit an alarm.
        The maker's data sheet and local rules govern.
        """,
        told("2026-03-14T22:10", Which.LIVE));
  }

  /** 16 C is 4 C colder than rated: 2^0.4 times as long. */
  @Test
  void aNightInMetricUnits() throws IOException {
    Journals.read(
        folder,
        """
        name: Brachvogel
        units: metric
        time zone: Europe/Berlin
        adhesives:
          Harz:
            rated at: 20 C
            open time: 60 min
            soft for: 90 min
            clamp time: 8 h
            recoat: 3 h to 24 h
            full cure: 7 days
            spread: 200 cm2 per 10 ml
        shop temperatures: {may: 16 C}
        """,
        "2026-05-30-spant",
        """
        joints:
          - {name: Spant 3, adhesive: Harz, spread at: 19:00, clamped at: 20:30, area: 30 cm x 40 mm}
        coats:
          - {what: Schale innen, adhesive: Harz, at: 18:00}
        """);
    assertEquals(
        """
        Brachvogel, joints and coats on 30 May 2026 at 21:30 (Europe/Berlin)

        Spant 3: in clamps
          glued        30 May 2026, spread at 19:00, Harz, at 16 °C, the month's mean
          closed       20:30, 11 min late: the latest was 20:19
          last look    20:43, 47 min ago
          soft until   20:58, 32 min ago
          clamps off   07:04 on 31 May 2026, in 9 h 34 min
          full cure    02:11 on 9 June 2026, in 9 days
          mixed        6 ml of Harz, estimated from the area

        Schale innen: too soon to coat again
          laid         30 May 2026, at 18:00, Harz, at 16 °C, the month's mean
          next coat    from 21:58, in 28 min
          sand after   01:40 on 1 June 2026, in 28 h 10 min
          full cure    23:41 on 8 June 2026, in 9 days

        Next: Schale innen, may be coated again: 21:58, in 28 min.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        Wood dust can cause asthma and worse, and dust of half-cured resin is resin:
        draw it off at the tool and wear a mask that fits.
        The maker's data sheet and local rules govern.
        """,
        told("2026-05-30T21:30", Which.LIVE));
  }

  @Test
  void aCoveredCoatSaysHowTheNextWentOverIt() throws IOException {
    Journals.read(
        folder,
        SKIFF,
        "2026-04-14",
        """
        coats:
          - {what: Deck, adhesive: epoxy, at: 8:00, temperature: 72 F}
          - {what: Deck, adhesive: epoxy, at: 9:00, temperature: 72 F}
          - {what: Deck, adhesive: epoxy, at: 12:00, temperature: 72 F}
        """);
    Journals.entry(folder, "2026-04-15", "coats: [{what: Deck, at: 13:00}]");
    assertEquals(
        """
        Dunlin, joints and coats on 15 April 2026 at 13:00 (America/Chicago)

        Deck: coated over
          laid         14 April 2026, at 08:00, epoxy, at 72 °F
          coated over  09:00, too soon: without sanding from 11:00 to 08:00 on 15 April
                       2026
          full cure    08:00 on 21 April 2026

        Deck: coated over
          laid         14 April 2026, at 09:00, epoxy, at 72 °F
          coated over  12:00, in time: without sanding from 12:00 to 09:00 on 15 April
                       2026
          full cure    09:00 on 21 April 2026

        Deck: coated over
          laid         14 April 2026, at 12:00, epoxy, at 72 °F
          coated over  13:00 on 15 April 2026, after it had to be sanded: without
                       sanding from 15:00 to 12:00 on 15 April 2026
          full cure    12:00 on 21 April 2026

        Deck: unknown how far
          laid         15 April 2026, at 13:00
          next coat    unknown: no adhesive is named
          full cure    unknown: no adhesive is named

        Next: nothing that is known.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        Wood dust can cause asthma and worse, and dust of half-cured resin is resin:
        draw it off at the tool and wear a mask that fits.
        The maker's data sheet and local rules govern.
        """,
        told("2026-04-15T13:00", Which.ALL));
  }

  @Test
  void aJointNotClosedYetSaysByWhen() throws IOException {
    Journals.read(
        folder,
        SKIFF,
        "2026-04-14",
        "joints: [{name: Keel, adhesive: epoxy, spread at: 20:00, temperature: 54 F}]");
    String told = told("2026-04-14T20:00", Which.LIVE);
    assertTrue(told.contains("\n  close by     22:00, in 2 h\n"), told);
    assertTrue(told.contains("\nNext: Keel, close the joint: 22:00, in 2 h.\n"), told);
    assertTrue(told("2026-04-14T22:00", Which.LIVE).contains("\n  close by     22:00, now\n"));
    assertTrue(
        told("2026-04-14T22:01", Which.LIVE).contains("\n  close by     22:00, 1 min ago\n"));
    // Of one that is cured nothing is past that anybody waits for.
    assertTrue(told("2026-06-14T22:01", Which.ALL).contains("\n  close by     22:00\n"));
  }

  @Test
  void aLookThatCannotWaitIsDueAtOnce() throws IOException {
    Journals.read(
        folder,
        "adhesives: {quick: {soft for: 12 min}}",
        "2026-04-14",
        "joints: [{name: Keel, adhesive: quick, spread at: 20:00}]");
    String told = told("2026-04-14T19:00", Which.LIVE);
    assertTrue(told.contains("\n  last look    at once, 20:00, in 1 h\n"), told);
    assertTrue(told.contains("\nKeel: still ahead\n"), told);
  }

  @Test
  void nothingKnownAheadSaysSo() throws IOException {
    Journals.read(folder, "name: Dory", "2026-04-14", "joints: [{name: Keel}]");
    String told = told("2026-04-14T20:00", Which.LIVE);
    assertTrue(told.contains("\n  glued        14 April 2026\n"), told);
    assertTrue(told.contains("\nNext: nothing that is known.\n"), told);
  }

  @Test
  void nothingLiveSaysSoAndHowToSeeAll() throws IOException {
    Journals.read(
        folder, SKIFF, "2026-03-14", "joints: [{name: Keel, adhesive: glue, clamped at: 20:00}]");
    assertEquals(
        """
        Dunlin, joints and coats on 15 March 2026 at 08:00 (America/Chicago)

        Nothing is soft, in clamps or curing, and no coat waits for the next one; see
        all with: ribband joints --all
        """,
        told("2026-03-15T08:00", Which.LIVE));
    assertEquals(
        """
        Dunlin, joints and coats on 15 March 2026 at 08:00 (America/Chicago)

        Keel: curing
          glued        14 March 2026, glue, as rated
          closed       20:00; whether in time is unknown: glue has no "open time" in
                       project.yaml
          last look    unknown: glue has no "soft for" in project.yaml
          soft until   unknown: glue has no "soft for" in project.yaml
          clamps off   21:00
          full cure    unknown: glue has no "full cure" in project.yaml

        Nothing is soft, in clamps or curing, and no coat waits for the next one.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        told("2026-03-15T08:00", Which.ALL));
    assertEquals(
        """
        Dunlin, joints and coats on 13 March 2026 at 08:00 (America/Chicago)

        No joint and no coat is written down yet.
        """,
        told("2026-03-13T08:00", Which.ALL));
  }

  /** From two days on the hours do not matter. */
  @Test
  void aWaitOfDaysIsToldInDays() throws IOException {
    Journals.read(
        folder, SKIFF, "2026-04-14", "joints: [{name: Keel, adhesive: epoxy, clamped at: 20:00}]");
    assertTrue(
        told("2026-04-14T20:00", Which.LIVE)
            .contains("full cure    20:00 on 21 April 2026, in 7 days\n"));
    assertTrue(
        told("2026-04-19T20:00", Which.LIVE)
            .contains("full cure    20:00 on 21 April 2026, in 2 days\n"));
    String told = told("2026-04-19T20:01", Which.LIVE);
    assertTrue(told.contains("full cure    20:00 on 21 April 2026, in 47 h 59 min\n"), told);
    assertTrue(told.contains("  glued        14 April 2026, epoxy, as rated at 72 °F\n"), told);
    assertTrue(told("2026-04-14T19:59", Which.LIVE).contains("\nKeel: still ahead\n"));
  }

  /** Marks that steer a terminal are shown, not obeyed; a word too long for a line is cut. */
  @Test
  void oddNamesDoNoHarm() throws IOException {
    for (String name :
        List.of("x".repeat(100), "\u202ex", "word ".repeat(60) + "end", "🛶".repeat(90))) {
      Journals.read(folder, SKIFF, "2026-05-31", "joints: [{name: '" + name + "'}]");
      String told = told("2026-05-31T20:00", Which.LIVE);
      assertTrue(told.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), told);
      assertTrue(told.indexOf('\u202e') < 0, told);
    }
    Journals.read(folder, SKIFF, "2026-05-31", "joints: [{name: " + "x".repeat(100) + "}]");
    String told = told("2026-05-31T20:00", Which.LIVE);
    assertTrue(told.contains("\n" + "x".repeat(80) + "\n" + "x".repeat(20) + ": "), told);
  }
}
