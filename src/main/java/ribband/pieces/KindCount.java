package ribband.pieces;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;
import ribband.measure.Hours;
import ribband.measure.Name;

/** Counts the pieces of one kind, whole and by side; for one pass. */
final class KindCount {
  private final PieceKind kind;
  private final Lot whole = new Lot();
  private final List<String> names = new ArrayList<>();
  private final Map<String, Lot> sides = new LinkedHashMap<>();
  private Optional<LocalDate> lastNight = Optional.empty();
  private int nights;

  KindCount(PieceKind kind) {
    this.kind = kind;
    for (String side : kind.sides()) {
      if (sides.putIfAbsent(Name.fold(side), new Lot()) == null) {
        names.add(side);
      }
    }
  }

  PieceKind kind() {
    return kind;
  }

  void add(PieceWork work) {
    whole.add(work);
    work.side()
        .flatMap(side -> Optional.ofNullable(sides.get(Name.fold(side))))
        .ifPresent(side -> side.add(work));
  }

  /**
   * An entry that made some.
   *
   * @param hours that went into them
   */
  void made(Entry entry, Made made, Hours hours) {
    whole.made(entry, Lot.within(made.pieces(), kind.total()), hours);
    made.hoursBySide(hours)
        .forEach(
            (side, share) ->
                Optional.ofNullable(sides.get(side))
                    .ifPresent(
                        lot ->
                            lot.made(entry, Lot.within(made.pieces(side), kind.total()), share)));
    night(entry.date());
  }

  /** Work in its phase, which is at its pace once the first piece is made. */
  void worked(LocalDate night) {
    if (nights > 0) {
      night(night);
    }
  }

  private void night(LocalDate night) {
    if (lastNight.filter(night::equals).isEmpty()) {
      nights++;
      lastNight = Optional.of(night);
    }
  }

  PieceCount count() {
    return new PieceCount(
        kind,
        whole.done(kind.total()),
        bySide(),
        sides.isEmpty() ? whole.numbered(kind.total()) : Optional.empty(),
        whole.sessions(),
        nights);
  }

  /**
   * spec: the sides share the total; where it does not divide, the odd ones belong to the sides
   * that have made more than their share, then to the first.
   */
  private List<Side> bySide() {
    if (sides.isEmpty()) {
      return List.of();
    }
    int share = kind.total() / sides.size();
    List<Lot> order = new ArrayList<>(sides.values());
    // Sorting is stable, and false comes first.
    order.sort(Comparator.comparing(lot -> lot.done(share + 1) <= share));
    List<Lot> larger = order.subList(0, kind.total() % sides.size());
    return names.stream()
        .map(
            name -> {
              Lot lot = sides.get(Name.fold(name));
              int total = larger.contains(lot) ? share + 1 : share;
              return new Side(name, total, lot.done(total), lot.numbered(total), lot.sessions());
            })
        .toList();
  }
}
