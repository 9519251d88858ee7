package ribband.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.ahead.Ahead;
import ribband.ahead.Changes;
import ribband.ahead.PieceWords;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.nights.HeldClamps;
import ribband.nights.NightWords;
import ribband.nights.Nightly;
import ribband.pieces.PieceCount;
import ribband.problem.Paragraph;

/** Tells of counted work to the builder. */
final class PiecesText {
  private final Ahead ahead;
  private final PrintWriter out;
  private final NightWords nights;

  PiecesText(Ahead ahead, PrintWriter out) {
    this.ahead = ahead;
    this.out = out;
    this.nights = new NightWords(new ShopTalk(ahead.journal().project().units()), ahead.zone());
  }

  /** What to write, where no pieces are listed. */
  void noPieces() {
    if (ahead.pieces().isEmpty()) {
      out.println("No piece is counted; list kinds in project.yaml, as");
      out.println("  pieces: {strakes: {total: 16}}");
      out.println();
    }
  }

  /** How many are made and left, how fast, and what limits a night; nothing where none counts. */
  void pieces() {
    if (ahead.pieces().isEmpty()) {
      return;
    }
    out.println("Pieces");
    for (PieceCount count : ahead.pieces().values()) {
      String name = count.kind().name();
      sentence(name + ": " + PieceWords.count(count));
      detail(PieceWords.rate(count));
      detail(PieceWords.pace(count, ahead.nextNight()));
      Optional.ofNullable(ahead.nightly().get(Name.fold(name)))
          .ifPresent(kind -> detail(nights.binding(kind)));
    }
    out.println();
  }

  /** Every limit of a night, kind by kind. */
  void limits() {
    if (ahead.pieces().isEmpty()) {
      return;
    }
    out.println(
        ahead.nightly().isEmpty() ? "No pieces are left to make." : "What a night can bring");
    for (Nightly kind : ahead.nightly().values()) {
      sentence(kind.count().kind().name() + ": " + nights.left(kind));
      nights.limits(kind).forEach(this::detail);
    }
    ahead.nightly().values().stream()
        .findFirst()
        .map(Nightly::held)
        .map(HeldClamps::lots)
        .filter(lots -> !lots.isEmpty())
        .ifPresent(
            lots -> {
              sentence("clamps still on");
              nights.held(new HeldClamps(lots)).forEach(this::detail);
            });
    out.println();
  }

  /** What other clamps or evenings would change; nothing where none are wished. */
  void changes() {
    if (ahead.changes().isEmpty()) {
      return;
    }
    Changes changes = ahead.changes().get();
    out.println("With " + wished(changes));
    for (Changes.Kind kind : changes.kinds()) {
      sentence(kind.whatIf().now().count().kind().name() + ": " + nights.whatIf(kind.whatIf()));
      detail(dates(kind));
    }
    changes
        .launch()
        .ifPresent(
            launch ->
                sentence(
                    "the boat, every night so long: "
                        + launch
                            .p50()
                            .value()
                            .map(day -> "even odds by " + Saying.day(day))
                            .orElse(launch.p50().why())
                        + ahead
                            .forecast()
                            .p50()
                            .value()
                            .map(day -> " instead of " + Saying.day(day))
                            .orElse("")));
    if (changes.launch().isEmpty()) {
      sentence("the boat: her date goes by hours, which clamps do not change");
    }
    out.println();
  }

  private static String wished(Changes changes) {
    List<String> parts = new ArrayList<>();
    changes
        .wish()
        .evening()
        .ifPresent(hours -> parts.add("evenings of " + Saying.hoursInWords(hours)));
    if (changes.wish().clamps().isPresent()) {
      parts.add(Saying.counted(changes.wish().clamps().getAsInt(), "clamp", "clamps"));
    }
    return String.join(" and ", parts);
  }

  private static String dates(Changes.Kind kind) {
    return kind.after()
        .value()
        .map(
            after ->
                "every night theirs, even odds by "
                    + Saying.day(after)
                    + kind.before()
                        .value()
                        .map(
                            before ->
                                before.equals(after)
                                    ? " as before"
                                    : " instead of " + Saying.day(before))
                        .orElse(""))
        .orElse("");
  }

  private void detail(String words) {
    if (!words.isEmpty()) {
      out.print(Paragraph.of("    ", 6, words));
    }
  }

  private void sentence(String words) {
    out.print(Paragraph.of("  ", 4, words));
  }
}
