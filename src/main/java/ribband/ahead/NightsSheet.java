package ribband.ahead;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.measure.Hours;
import ribband.nights.Limit;
import ribband.nights.Nightly;
import ribband.shop.Figure;

/** What a night can bring for other programs: a row a kind with pieces left, in pieces a night. */
final class NightsSheet {
  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "left",
          "evening_hours",
          "clamps",
          "clamps_held",
          "by_clamps",
          "by_cure",
          "by_hours",
          "by_resin",
          "binding",
          "a_night",
          "nights_left",
          "tonight",
          "nights_saved",
          "done_by",
          "unknown");

  private NightsSheet() {}

  static Sheet of(Ahead ahead) {
    List<List<Cell>> rows = new ArrayList<>();
    ahead.nightly().forEach((fold, kind) -> rows.add(row(kind, change(ahead, kind))));
    return Sheet.of(COLUMNS, rows);
  }

  private static Optional<Changes.Kind> change(Ahead ahead, Nightly kind) {
    return ahead.changes().stream()
        .flatMap(changes -> changes.kinds().stream())
        .filter(change -> change.whatIf().changed().equals(kind))
        .findFirst();
  }

  private static List<Cell> row(Nightly kind, Optional<Changes.Kind> change) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.Words.of(kind.count().kind().name()));
    row.add(new Cell.Count(kind.count().left()));
    Optional<Hours> evening = kind.setting().evening().hours();
    row.add(evening.<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new));
    row.add(
        kind.setting().clamps().isPresent()
            ? new Cell.Count(kind.setting().clamps().getAsInt())
            : new Cell.Blank());
    row.add(new Cell.Count(kind.held().number()));
    for (Limit limit : Limit.values()) {
      row.add(exact(kind.by(limit).value()));
    }
    row.add(words(kind.binding().map(Limit::word)));
    row.add(exact(kind.piecesPerNight()));
    row.add(count(kind.nightsLeft().value()));
    row.add(new Cell.Count(kind.tonight()));
    row.add(count(change.flatMap(c -> c.whatIf().nightsSaved().value())));
    row.add(words(change.flatMap(c -> c.after().value()).map(day -> day.toString())));
    row.add(words(why(kind)));
    return row;
  }

  private static Optional<String> why(Nightly kind) {
    List<String> reasons =
        Arrays.stream(Limit.values())
            .map(kind::by)
            .map(Figure::why)
            .filter(reason -> !reason.isEmpty())
            .distinct()
            .toList();
    return Optional.of(String.join("; ", reasons)).filter(said -> !said.isEmpty());
  }

  private static Cell exact(Optional<BigFraction> number) {
    return number.<Cell>map(Cell.Exact::of).orElseGet(Cell.Blank::new);
  }

  private static Cell count(Optional<Long> number) {
    return number.<Cell>map(Cell.Count::new).orElseGet(Cell.Blank::new);
  }

  private static Cell words(Optional<String> text) {
    return text.<Cell>map(Cell.Words::of).orElseGet(Cell.Blank::new);
  }
}
