package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Journals;
import ribband.ledger.SheetCsv;
import ribband.pieces.Texts;

/** Whole files for other programs, of the journal in {@link Skiff}. */
class AheadSheetsTest {
  @TempDir Path folder;

  private void assertSheet(String rows, AheadList list, Wish wish) throws Exception {
    assertEquals(rows, Skiff.csv(Skiff.ahead(folder, wish), list));
  }

  @Test
  void jobsByTheirState() throws Exception {
    assertSheet(
        """
        id,state,what,phase,hours,waits_for,held_until,held_by,frees,helps,chain_nights,noted,done
        fair,waiting,Fair the hull,fairing,6,strakes,,,,prime,3,2026-03-02,
        rig,waiting,Step the mast,rigging,,fairing,,,,,1,2026-03-02,
        shed,ready,Clear the shed,planking,1.5,,,,,prime,2,2026-03-02,
        prime,waiting,prime,fairing,2,"fair, shed",,,,,1,2026-03-02,
        trim,held,Trim the stem,planking,1,,2026-03-18T08:54:00-05:00,Starboard 2,,,1,2026-03-17,
        glue-stem,done,glue-stem,planking,,,,,,,,2026-03-17,2026-03-17
        """,
        AheadList.JOBS,
        Wish.NONE);
  }

  /** The 5 h of 10 March are 3 for a strake and 2 for two knees, as they are planned. */
  @Test
  void piecesByKindAndSide() throws Exception {
    assertSheet(
        """
        kind,side,total,done,left,share,numbers_left,a_session,sessions_left,nights_left,hours_each,rate_from,hours_each_planned,hours_left
        strakes,,8,4,4,0.5,,1,4,4,3.75,kind,3,15
        strakes,port,4,2,2,0.5,3 4,1,,,3.75,kind,3,7.5
        strakes,starboard,4,2,2,0.5,3 4,1,,,3.75,kind,3,7.5
        knees,,4,2,2,0.5,,2,1,2,1,kind,1,2
        """,
        AheadList.PIECES,
        Wish.NONE);
  }

  @Test
  void piecesOfWhichNoneIsMadeGoByThePlan() throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            """
            phases: [planking]
            pieces:
              ribs: {total: 6, hours: 0.5}
              cleats: {total: 2, sides: [port, starboard]}
            """);
    assertEquals(
        """
        kind,side,total,done,left,share,numbers_left,a_session,sessions_left,nights_left,hours_each,rate_from,hours_each_planned,hours_left
        ribs,,6,0,6,0,1 2 3 4 5 6,,,,0.5,planned,0.5,3
        cleats,,2,0,2,0,,,,,,,,
        cleats,port,1,0,1,0,1,,,,,,,
        cleats,starboard,1,0,1,0,1,,,,,,,
        """,
        Skiff.csv(Skiff.at("2026-03-17T22:00", journal, Wish.NONE), AheadList.PIECES));
  }

  @Test
  void aNightAndWhatLimitsIt() throws Exception {
    assertSheet(
        """
        kind,left,evening_hours,clamps,clamps_held,by_clamps,by_cure,by_hours,by_resin,binding,a_night,nights_left,tonight,nights_saved,done_by,unknown
        strakes,4,4,10,10,1,1,1.0667,60,clamps,1,4,0,,,
        knees,2,4,10,10,,,4,,hours,4,1,2,,,knees hold no clamps in project.yaml; knees name no adhesive
        """,
        AheadList.NIGHTS,
        Wish.NONE);
  }

  @Test
  void aNightAsWished() throws Exception {
    assertSheet(
        """
        kind,left,evening_hours,clamps,clamps_held,by_clamps,by_cure,by_hours,by_resin,binding,a_night,nights_left,tonight,nights_saved,done_by,unknown
        strakes,4,5,36,10,3,3,1.3333,60,hours,1.3333,3,1,1,2026-04-05,
        knees,2,5,36,10,,,5,,hours,5,1,2,0,2026-03-29,knees hold no clamps in project.yaml; knees name no adhesive
        """,
        AheadList.NIGHTS,
        Skiff.both(5, 36));
  }

  @Test
  void aNightOfWhichNothingIsKnown() throws Exception {
    Journal journal = Texts.journal(folder, "pieces: {ribs: {total: 6, clamps: 2}}\n");
    assertEquals(
        """
        kind,left,evening_hours,clamps,clamps_held,by_clamps,by_cure,by_hours,by_resin,binding,a_night,nights_left,tonight,nights_saved,done_by,unknown
        ribs,6,,,0,,,,,,,,6,,,project.yaml does not say how many clamps the shop has; no evening is given and no hours are written; ribs name no adhesive
        """,
        Skiff.csv(Skiff.at("2026-03-17T22:00", journal, Wish.NONE), AheadList.NIGHTS));
  }

  /**
   * Strakes weigh 3 h and knees 1: 14 of 28 planned hours are done, half of 40. EAC is 40 x 17 / 20
   * for planking and 67 x 17 / 20 for the whole.
   */
  @Test
  void planAgainstActual() throws Exception {
    assertSheet(
        """
        phase,hours_planned,hours,complete,complete_from,ev,ac,cv,cpi,eac,etc,vac,tcpi,cost_planned,cost
        planking,40,17,0.5,pieces,20,17,3,1.1765,34,17,6,0.8696,900.00,300.00
        fairing,27,0,0,assumed,0,0,0,,,,,1,,0.00
        rigging,,0,,unknown,,,,,,,,,,0.00
        whole,67,17,0.2985,,20,17,3,1.1765,56.95,39.95,10.05,0.94,900.00,300.00
        """,
        AheadList.PLAN,
        Wish.NONE);
  }

  @Test
  void aPlanWithoutCurrencyHasNoMoney() throws Exception {
    Journals.write(folder, "project.yaml", "phases: [{id: planking, hours: 4}, rigging]\n");
    Journals.entry(folder, "2026-03-02", "phase: planking\nhours: 1");
    Journal journal = Journals.read(folder);
    assertEquals(
        """
        phase,hours_planned,hours,complete,complete_from,ev,ac,cv,cpi,eac,etc,vac,tcpi,cost_planned,cost
        planking,4,1,0.25,assumed,1,1,0,1,4,3,0,1,,
        rigging,,0,,unknown,,,,,,,,,,
        whole,4,1,0.25,,1,1,0,1,4,3,0,1,,
        """,
        Skiff.csv(Skiff.at("2026-03-17T22:00", journal, Wish.NONE), AheadList.PLAN));
  }

  @Test
  void theScreensPlanGoesWithoutTheIndices() throws Exception {
    Ahead ahead = Skiff.ahead(folder, Wish.NONE);
    StringBuilder csv = new StringBuilder();
    SheetCsv.write(PlanSheet.narrow(ahead.standing(), ahead.journal().project().currency()), csv);
    assertEquals(
        """
        phase,hours_planned,hours,complete,complete_from,cost_planned,cost
        planking,40,17,0.5,pieces,900.00,300.00
        fairing,27,0,0,assumed,,0.00
        rigging,,0,,unknown,,0.00
        whole,67,17,0.2985,,900.00,300.00
        """,
        csv.toString());
  }

  @Test
  void hoursLeftByPhase() throws Exception {
    assertSheet(
        """
        what,hours_left,from
        Planking,17,pieces
        Fairing,27,plan
        Rigging,,left out
        """,
        AheadList.LEFT,
        Wish.NONE);
  }

  @Test
  void usedUpHoursAreCalledSo() throws Exception {
    Journal journal =
        Texts.journal(
            folder,
            "phases: [{id: planking, title: Planking, hours: 4}]\n",
            "2026-03-02\nphase: planking\nhours: 5\n");
    assertEquals(
        "what,hours_left,from\nPlanking,0,used up\n",
        Skiff.csv(Skiff.at("2026-03-17T22:00", journal, Wish.NONE), AheadList.LEFT));
  }

  @Test
  void theSundaysOfTheForecast() throws Exception {
    assertSheet(
        """
        percentile,sunday,unknown,hours_left,weeks_drawn_from
        50,2026-05-10,,44,2
        80,2026-05-17,,44,2
        95,2026-05-17,,44,2
        """,
        AheadList.FORECAST,
        Wish.NONE);
  }

  @Test
  void noSundayButWhy() throws Exception {
    Journal journal = Texts.journal(folder, "");
    assertEquals(
        """
        percentile,sunday,unknown,hours_left,weeks_drawn_from
        50,,no phase has planned hours,,0
        80,,no phase has planned hours,,0
        95,,no phase has planned hours,,0
        """,
        Skiff.csv(Skiff.at("2026-03-17T22:00", journal, Wish.NONE), AheadList.FORECAST));
  }
}
