package ribband.ahead;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import ribband.journal.Journal;
import ribband.ledger.SheetCsv;
import ribband.measure.Hours;
import ribband.pieces.Texts;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/**
 * An invented journal of four nights, small enough to reckon by hand: 4 h on 2 March 2026, 4 h on
 * 4, 5 h on 10 and 4 h on 17. The weeks before the 17th brought 8 h in two nights and 5 h in one.
 */
public final class Skiff {
  public static final String PROJECT =
      """
      time zone: America/Chicago
      clamps: 10
      phases:
        - {id: planking, title: Planking, hours: 40, cost: 900}
        - {id: fairing, title: Fairing, hours: 27}
        - {id: rigging, title: Rigging}
      materials:
        epoxy: {unit: fl oz, on hand: 60 fl oz}
      adhesives:
        epoxy:
          material: epoxy
          rated at: 72 F
          clamp time: 8 h
          full cure: 7 days
          coldest: 50 F
          spread: 140 in2 per fl oz
      pieces:
        strakes:
          total: 8
          phase: planking
          sides: [port, starboard]
          adhesive: epoxy
          clamps: 10
          hours: 3
          glue area: 140 in2
        knees: {total: 4, phase: planking, hours: 1}
      """;

  public static final String[] NIGHTS = {
    """
    2026-03-02
    phase: planking
    hours: 4
    cost: 300
    pieces: {strakes: {port: [1]}}
    todo:
      - {id: fair, what: Fair the hull, after: [strakes], phase: fairing, hours: 6}
      - {id: prime, after: [fair, shed], phase: fairing, hours: 2}
      - {id: shed, what: Clear the shed, hours: 1.5}
      - {id: rig, what: Step the mast, after: [fairing], phase: rigging}
    """,
    """
    2026-03-04
    phase: planking
    hours: 4
    pieces: {strakes: {starboard: [1]}}
    """,
    """
    2026-03-10
    phase: planking
    hours: 5
    pieces: {strakes: {port: [2]}, knees: 2}
    """,
    """
    2026-03-17
    phase: planking
    hours: 4
    pieces: {strakes: {starboard: [2]}}
    joints: [{name: Starboard 2, adhesive: epoxy, clamped at: "20:40", temperature: 61 F}]
    todo:
      - {id: trim, what: Trim the stem, after: [glue-stem], hours: 1}
      - {id: glue-stem}
    done: [glue-stem]
    """
  };

  private Skiff() {}

  static Journal journal(Path folder) throws IOException {
    return Texts.journal(folder, PROJECT, NIGHTS);
  }

  /** As it is at 22:00 on the last night. */
  static Ahead ahead(Path folder, Wish wish) throws IOException {
    return at("2026-03-17T22:00", journal(folder), wish);
  }

  static Ahead at(String now, Journal journal, Wish wish) {
    LocalDateTime moment = LocalDateTime.parse(now);
    LocalDate day = moment.toLocalDate();
    return Ahead.of(
        journal,
        Stock.of(journal, day, Told.TO_THE_BUILDER),
        day,
        moment.atZone(journal.project().zone()).toInstant(),
        wish,
        Told.TO_THE_BUILDER);
  }

  static Wish evening(int hours) {
    return new Wish(Optional.of(Hours.ofMinutes(60L * hours)), OptionalInt.empty());
  }

  static Wish clamps(int clamps) {
    return new Wish(Optional.empty(), OptionalInt.of(clamps));
  }

  static Wish both(int hours, int clamps) {
    return new Wish(evening(hours).evening(), OptionalInt.of(clamps));
  }

  static String csv(Ahead ahead, AheadList list) throws IOException {
    StringBuilder csv = new StringBuilder();
    SheetCsv.write(list.sheet(ahead), csv);
    return csv.toString();
  }
}
