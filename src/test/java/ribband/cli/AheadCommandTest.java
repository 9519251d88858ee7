package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ahead.Skiff;
import ribband.cli.InMemory.Run;

/** What the builder reads; the figures are worked out in {@code ahead/AheadTest}. */
class AheadCommandTest {
  @TempDir Path folder;

  private InMemory skiff() throws IOException {
    InMemory memory =
        new InMemory(folder)
            .with("project.yaml", "name: Dunlin\ncurrency: USD\nunits: us\n" + Skiff.PROJECT);
    for (String night : Skiff.NIGHTS) {
      String[] parts = night.split("\n", 2);
      memory.with(parts[0] + ".md", "---\n" + parts[1] + "---\n");
    }
    return memory;
  }

  private String ahead(String... words) throws IOException {
    return told(skiff(), words);
  }

  private static String told(InMemory memory, String... words) {
    List<String> all = new ArrayList<>(List.of("ahead", "-q"));
    all.addAll(List.of(words));
    Run run = memory.run(all.toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    return run.out();
  }

  /** The figures are checked in {@code ahead/AheadTest} and beside it. */
  @Test
  void allThatLiesAheadOnOneNight() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        Ready tonight
          shed: Clear the shed, 1½ hours, planking; with others frees prime

        Held by a joint in clamps
          trim: Trim the stem, 1 hour, planking; Starboard 2 is in clamps until 08:54 on
            18 March 2026

        Waiting
          fair: Fair the hull, 6 hours, fairing; waits for strakes (4 left); with others
            frees prime
          rig: Step the mast, rigging; waits for fairing
          prime: 2 hours, fairing; waits for fair and shed

        The longest chain: 8 nights in a row
          fairing, 7 nights
          rig, 1 night

        What fits 4 hours
          one after another: 2 knees, 2 hours; shed, 1½ hours

        Pieces
          strakes: 4 of 8 made, 4 left: port number 3 and 4; starboard number 3 and 4
            3¾ hours each, 3 hours planned
            1 a session, 4 sessions left; at the pace so far 4 nights left, the last on
              21 March 2026 if every night from 18 March 2026 is worked
            clamps are the limit: 10 hold one at a time (10 each), 12 h 14 min at 61 °F,
              the joint's
          knees: 2 of 4 made, 2 left
            1 hour each, 1 hour planned
            2 a session, 1 session left; at the pace so far 2 nights left, the last on
              19 March 2026 if every night from 18 March 2026 is worked
            hours are the limit: the usual evening of 4 hours makes four, at 1 hour each

        Plan against actual
          planking: at this rate 34 hours in all, 6 under plan
          all with a plan: at this rate 57 hours in all, 10 under plan

        When she floats
          44 hours are left.
          Even odds by Sunday 10 May 2026.
          Four in five by Sunday 17 May 2026.
          Nineteen in twenty by Sunday 17 May 2026.
          Drawn 10,000 times from the last 2 whole weeks, idle ones among them; a guess
            from the past, and no promise.
          Plan against actual comes to other hours, as it takes one rate for the whole
            of a phase and one for all of them; here pieces left go at their own rate,
            and each phase at its own.
          Left out, as no hours are planned for them: Rigging.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00"));
  }

  @Test
  void anEveningAndClampsAsWished() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        What a night can bring
          strakes: 6 nights left at best, none tonight; hours are the limit
            clamps: 36 hold three at a time (10 each), 12 h 14 min at 61 °F, the joint's
            cure: 12 h 14 min at 61 °F, the joint's, so the clamps are free the next
              evening
            hours: an evening of 2½ hours makes 0.67, at 3¾ hours each
            resin: epoxy for all that are left
          knees: 1 night left at best, 2 pieces tonight; hours are the limit
            hours: an evening of 2½ hours makes 2½, at 1 hour each
          clamps still on
            10 on strakes until 08:54 on 18 March 2026

        With evenings of 2½ hours and 36 clamps
          strakes: 6 nights instead of 4: 2 nights more
            every night theirs, even odds by 19 April 2026 instead of 12 April 2026
          knees: 1 night as before: hours are the limit
            every night theirs, even odds by 29 March 2026 as before
          the boat, every night so long: even odds by 14 June 2026 instead of 10 May
            2026

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead(
            "--now",
            "2026-03-17 22:00",
            "--evening",
            "2h30",
            "--clamps",
            "36",
            "--show",
            "nights"));
  }

  @Test
  void whatFitsAnEveningAsWished() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        Ready tonight
          shed: Clear the shed, 1½ hours, planking; with others frees prime

        Held by a joint in clamps
          trim: Trim the stem, 1 hour, planking; Starboard 2 is in clamps until 08:54 on
            18 March 2026

        Waiting
          fair: Fair the hull, 6 hours, fairing; waits for strakes (4 left); with others
            frees prime
          rig: Step the mast, rigging; waits for fairing
          prime: 2 hours, fairing; waits for fair and shed

        The longest chain: 12 nights in a row
          fairing, 11 nights
          rig, 1 night

        What fits 2½ hours
          one after another: 2 knees, 2 hours
          or instead: shed, 1½ hours

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--evening", "2h30", "--show", "jobs"));
  }

  @Test
  void fiveHoursAndMoreClampsSaveANight() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        What a night can bring
          strakes: 3 nights left at best, 1 piece tonight; hours are the limit
            clamps: 36 hold three at a time (10 each), 12 h 14 min at 61 °F, the joint's
            cure: 12 h 14 min at 61 °F, the joint's, so the clamps are free the next
              evening
            hours: an evening of 5 hours makes 1.33, at 3¾ hours each
            resin: epoxy for all that are left
          knees: 1 night left at best, 2 pieces tonight; hours are the limit
            hours: an evening of 5 hours makes five, at 1 hour each
          clamps still on
            10 on strakes until 08:54 on 18 March 2026

        With evenings of 5 hours and 36 clamps
          strakes: 3 nights instead of 4: 1 night saved
            every night theirs, even odds by 5 April 2026 instead of 12 April 2026
          knees: 1 night as before: hours are the limit
            every night theirs, even odds by 29 March 2026 as before
          the boat, every night so long: even odds by 3 May 2026 instead of 10 May 2026

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--evening", "5", "--clamps", "36", "--show", "nights"));
  }

  @Test
  void piecesAlone() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        Pieces
          strakes: 4 of 8 made, 4 left: port number 3 and 4; starboard number 3 and 4
            3¾ hours each, 3 hours planned
            1 a session, 4 sessions left; at the pace so far 4 nights left, the last on
              21 March 2026 if every night from 18 March 2026 is worked
            clamps are the limit: 10 hold one at a time (10 each), 12 h 14 min at 61 °F,
              the joint's
          knees: 2 of 4 made, 2 left
            1 hour each, 1 hour planned
            2 a session, 1 session left; at the pace so far 2 nights left, the last on
              19 March 2026 if every night from 18 March 2026 is worked
            hours are the limit: the usual evening of 4 hours makes four, at 1 hour each

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "pieces"));
  }

  @Test
  void nightsAlone() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        What a night can bring
          strakes: 4 nights left at best, none tonight; clamps are the limit
            clamps: 10 hold one at a time (10 each), 12 h 14 min at 61 °F, the joint's
            cure: 12 h 14 min at 61 °F, the joint's, so the clamps are free the next
              evening
            hours: the usual evening of 4 hours makes 1.07, at 3¾ hours each
            resin: epoxy for all that are left
          knees: 1 night left at best, 2 pieces tonight; hours are the limit
            hours: the usual evening of 4 hours makes four, at 1 hour each
          clamps still on
            10 on strakes until 08:54 on 18 March 2026

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "nights"));
  }

  @Test
  void planAlone() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        Plan against actual
          planking: at this rate 34 hours in all, 6 under plan
            EV 20, AC 17, CV 3, CPI 1.18
            EAC 34, ETC 17, VAC 6, TCPI 0.87
          all with a plan: at this rate 57 hours in all, 10 under plan
            EV 20, AC 17, CV 3, CPI 1.18
            EAC 56:57, ETC 39:57, VAC 10:03, TCPI 0.94

                    hours                   complete     cost
        phase     planned  hours  complete      from  planned     cost
        ──────────────────────────────────────────────────────────────
        planking       40     17       50%    pieces  $900.00  $300.00
        fairing        27      0        0%   assumed             $0.00
        rigging                0             unknown             $0.00
        whole          67     17       30%            $900.00  $300.00

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "plan"));
  }

  @Test
  void leftAlone() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        Hours left
          Planking: 17 hours, the pieces left, at their own rate
          Fairing: 27 hours, the plan's share still open, as there is no rate yet
          Plan against actual comes to other hours, as it takes one rate for the whole
            of a phase and one for all of them; here pieces left go at their own rate,
            and each phase at its own.
          Left out, as no hours are planned for them: Rigging.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "left"));
  }

  @Test
  void forecastAlone() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 17 March 2026 at 22:00

        When she floats
          44 hours are left.
          Even odds by Sunday 10 May 2026.
          Four in five by Sunday 17 May 2026.
          Nineteen in twenty by Sunday 17 May 2026.
          Drawn 10,000 times from the last 2 whole weeks, idle ones among them; a guess
            from the past, and no promise.
          Plan against actual comes to other hours, as it takes one rate for the whole
            of a phase and one for all of them; here pieces left go at their own rate,
            and each phase at its own.
          Left out, as no hours are planned for them: Rigging.

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--now", "2026-03-17 22:00", "--show", "forecast"));
  }

  /** A data file without {@code --show} is of jobs. */
  @Test
  void sixInTheEveningOfADay() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 5 March 2026 at 18:00

        Pieces
          strakes: 2 of 8 made, 6 left: port number 2 to 4; starboard number 2 to 4
            4 hours each, 3 hours planned
            1 a session, 6 sessions left; at the pace so far 6 nights left, the last on
              10 March 2026 if every night from 5 March 2026 is worked
            clamps are the limit: 10 hold one at a time (10 each), 8 h as rated at 72 °F
          knees: 0 of 4 made, 4 left
            1 hour each planned
            hours are the limit: the usual evening of 4 hours makes four, at 1 hour each
              as planned

        Resin and hardener irritate, and skin can become allergic to them for good: wear
        laminate or thick nitrile gloves, and never clean skin with solvent.
        The maker's data sheet and local rules govern.
        """,
        ahead("--today", "2026-03-05", "--show", "pieces"));
  }

  private String alone(String project, String... words) throws IOException {
    return told(new InMemory(folder).with("project.yaml", project), words);
  }

  @Test
  void aJournalOfNothingSaysWhatToWrite() throws IOException {
    assertEquals(
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No job is noted yet; note one in an entry, as todo: [{id: trim-ends}]

        When she floats
          No date: no phase has planned hours.
          Write them in project.yaml, as phases: [{id: planking, hours: 120}]

        The maker's data sheet and local rules govern.
        """,
        alone("name: Dunlin\n"));
  }

  @Test
  void eachPartOfNothingSaysWhatToWrite() throws IOException {
    String pieces =
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No piece is counted; list kinds in project.yaml, as
          pieces: {strakes: {total: 16}}

        The maker's data sheet and local rules govern.
        """;
    String plan =
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No phase has planned hours; write them in project.yaml, as
          phases: [{id: planking, hours: 120}]

        The maker's data sheet and local rules govern.
        """;
    assertEquals(pieces, alone("name: Dunlin\n", "--show", "pieces"));
    assertEquals(pieces, alone("name: Dunlin\n", "--show", "nights"));
    assertEquals(plan, alone("name: Dunlin\n", "--show", "plan"));
    assertEquals(plan, alone("name: Dunlin\n", "--show", "left"));
  }

  /** The wish has nothing to change but the boat's date, and no week to draw that from. */
  @Test
  void noWorkInHalfAYearIsNoPace() throws IOException {
    InMemory memory =
        new InMemory(folder)
            .with(
                "project.yaml",
                "name: Dunlin\nphases: [{id: fairing, title: Fairing, hours: 30}]\n")
            .with("2025-06-02.md", "---\nphase: fairing\nhours: 2\n---\n");
    assertEquals(
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No job is noted yet; note one in an entry, as todo: [{id: trim-ends}]

        What fits 3 hours
          nothing: no job is ready, and no piece can be made

        With evenings of 3 hours
          the boat, every night so long: no pace to go by

        Plan against actual
          fairing: 2 of 30 hours used, how far it stands is not noted
          all with a plan: 2 of 30 hours used, how far it stands is not noted

        When she floats
          28 hours are left.
          No date: no pace to go by.

        The maker's data sheet and local rules govern.
        """,
        told(memory, "--evening", "3"));
  }

  @Test
  void nothingLeft() throws IOException {
    InMemory memory =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                name: Dunlin
                phases: [{id: fairing, title: Fairing, hours: 3}]
                pieces: {ribs: {total: 2, phase: fairing}}
                """)
            .with(
                "2026-05-20.md",
                """
                ---
                phase: fairing
                hours: 2
                pieces: {ribs: 2}
                todo: [{id: sand}]
                done: [sand]
                ---
                """);
    assertEquals(
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No job is open.

        What fits 2 hours
          nothing: no job is ready, and no piece can be made

        Pieces
          ribs: both made
            1 hour each

        Plan against actual
          fairing: done in 2 hours, 1 under plan
          all with a plan: done in 2 hours, 1 under plan

        When she floats
          0 hours are left.
          No date: nothing left by the plan.

        The maker's data sheet and local rules govern.
        """,
        told(memory));
  }

  @Test
  void nothingLeftToMake() throws IOException {
    InMemory memory =
        new InMemory(folder)
            .with("project.yaml", "name: Dunlin\npieces: {ribs: {total: 2}}\n")
            .with("2026-05-20.md", "---\nhours: 2\npieces: {ribs: 2}\n---\n");
    assertEquals(
        """
        Dunlin, what lies ahead on 1 June 2026 at 20:00

        No pieces are left to make.

        The maker's data sheet and local rules govern.
        """,
        told(memory, "--show", "nights"));
  }

  @Test
  void aPlanWithLongNamesAndLargeSumsFitsTheScreen() throws IOException {
    String out =
        alone(
            """
            name: Dunlin
            currency: USD
            phases:
              - {id: fitting-out-of-everything-below-the-sheer, hours: 9999, cost: 123456.78}
            """,
            "--show",
            "plan");
    assertTrue(out.contains("$123,456.78"), out);
  }

  /** A clock time alone is one of today. */
  @Test
  void nowIsOfTheDayGiven() throws IOException {
    assertEquals(
        "Dunlin, what lies ahead on 18 March 2026 at 09:30",
        ahead("--today", "2026-03-18", "--now", "9:30").lines().findFirst().orElse(""));
    assertTrue(
        ahead("--today", "2026-03-18", "--now", "9:30", "--show", "jobs")
            .contains("  trim: Trim the stem, 1 hour, planking\n\nWaiting"));
  }
}
