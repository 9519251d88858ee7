package ribband.ahead;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.measure.Hours;
import ribband.pieces.Numbered;
import ribband.pieces.PieceCount;
import ribband.pieces.Rate;
import ribband.pieces.Sessions;
import ribband.pieces.Side;

/** Counted work for other programs: a row for each kind, and one for each of its sides below it. */
public final class PiecesSheet {
  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "side",
          "total",
          "done",
          "left",
          "share",
          "numbers_left",
          "a_session",
          "sessions_left",
          "nights_left",
          "hours_each",
          "rate_from",
          "hours_each_planned",
          "hours_left");

  private PiecesSheet() {}

  public static Sheet of(Collection<PieceCount> counts) {
    List<List<Cell>> rows = new ArrayList<>();
    for (PieceCount count : counts) {
      rows.add(row(count));
      count.sides().forEach(side -> rows.add(row(count, side)));
    }
    return Sheet.of(COLUMNS, rows);
  }

  private static List<Cell> row(PieceCount count) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.Words.of(count.kind().name()));
    row.add(new Cell.Blank());
    row.addAll(counts(count.kind().total(), count.done(), count.left(), count.numbered()));
    row.add(exact(count.sessions().median()));
    row.add(whole(count.sessionsLeft()));
    row.add(whole(count.nightsLeft()));
    row.addAll(rates(count, count.rate(), count.hoursLeft()));
    return row;
  }

  private static List<Cell> row(PieceCount count, Side side) {
    Sessions sessions = side.sessions();
    List<Cell> row = new ArrayList<>();
    row.add(Cell.Words.of(count.kind().name()));
    row.add(Cell.Words.of(side.name()));
    row.addAll(counts(side.total(), side.done(), side.left(), side.numbered()));
    row.add(exact(sessions.median()));
    row.add(new Cell.Blank());
    row.add(new Cell.Blank());
    row.addAll(rates(count, count.rate(side), count.hoursLeft(side)));
    return row;
  }

  private static List<Cell> counts(int total, int done, int left, Optional<Numbered> numbered) {
    return List.of(
        new Cell.Count(total),
        new Cell.Count(done),
        new Cell.Count(left),
        Cell.Exact.of(BigFraction.of(done, Math.max(1, total))),
        numbered
            .<Cell>map(
                n ->
                    Cell.Words.of(
                        n.left().stream().map(i -> "" + i).collect(Collectors.joining(" "))))
            .orElseGet(Cell.Blank::new));
  }

  private static List<Cell> rates(PieceCount count, Optional<Rate> rate, Optional<Hours> left) {
    return List.of(
        exact(rate.map(r -> r.secondsEach().divide(3600))),
        rate.<Cell>map(r -> Cell.Words.of(r.basis().name().toLowerCase(Locale.ROOT)))
            .orElseGet(Cell.Blank::new),
        count.kind().hours().<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new),
        left.<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new));
  }

  private static Cell exact(Optional<BigFraction> number) {
    return number.<Cell>map(Cell.Exact::of).orElseGet(Cell.Blank::new);
  }

  private static Cell whole(OptionalLong number) {
    return number.isEmpty() ? new Cell.Blank() : new Cell.Count(number.getAsLong());
  }
}
