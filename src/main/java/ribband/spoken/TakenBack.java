package ribband.spoken;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.measure.Saying;

/** Refuses a part that takes back what was not done; what was said before it counts as done. */
final class TakenBack {
  private final Map<String, Integer> done = new HashMap<>();
  private final Set<String> numbered = new HashSet<>();

  private TakenBack(Journal journal, LocalDate night) {
    journal.entries().stream()
        .takeWhile(entry -> !entry.date().isAfter(night))
        .flatMap(entry -> entry.pieces().stream())
        .forEach(work -> add(work.kind(), work.side(), work.numbers(), work.count()));
  }

  /**
   * @param night entries after it do not count
   */
  static List<Found> check(List<Found> found, Journal journal, LocalDate night) {
    TakenBack before = new TakenBack(journal, night);
    List<Found> checked = new ArrayList<>();
    for (Found part : found) {
      Optional<String> why =
          part.heard()
              .filter(Heard.Count.class::isInstance)
              .flatMap(heard -> before.take((Heard.Count) heard));
      checked.add(why.map(part::unclear).orElse(part));
    }
    return checked;
  }

  /** Takes all of a part's pieces or none. */
  private Optional<String> take(Heard.Count count) {
    List<Piece> taken = new ArrayList<>();
    for (Piece piece : count.pieces()) {
      Optional<String> why = missing(piece);
      if (why.isPresent()) {
        taken.forEach(this::drop);
        return why;
      }
      add(piece.kind().name(), piece.side(), piece.numbers(), piece.count());
      taken.add(piece);
    }
    return Optional.empty();
  }

  private void drop(Piece piece) {
    List<Integer> back = piece.numbers().stream().map(number -> -number).toList();
    add(piece.kind().name(), piece.side(), back, -piece.count());
  }

  private Optional<String> missing(Piece piece) {
    String kind = piece.kind().name();
    String lot = lot(kind, piece.side());
    for (int number : piece.numbers()) {
      if (number < 0 && !numbered.contains(lot + "/" + -number)) {
        return Optional.of("takes back number " + -number + ", which was not done by then");
      }
    }
    boolean isCounted = piece.numbers().isEmpty() && piece.count() < 0;
    int most =
        Math.min(
            done.getOrDefault(Name.fold(kind), 0),
            piece.side().isEmpty() ? Integer.MAX_VALUE : done.getOrDefault(lot, 0));
    return isCounted && most + piece.count() < 0
        ? Optional.of("takes back more than the " + Saying.count(most) + " done by then")
        : Optional.empty();
  }

  private void add(String kind, Optional<String> side, List<Integer> numbers, int count) {
    String lot = lot(kind, side);
    done.merge(Name.fold(kind), count, Integer::sum);
    if (side.isPresent()) {
      done.merge(lot, count, Integer::sum);
    }
    for (int number : numbers) {
      String key = lot + "/" + Math.abs(number);
      if (number > 0) {
        numbered.add(key);
      } else {
        numbered.remove(key);
      }
    }
  }

  private static String lot(String kind, Optional<String> side) {
    return Name.fold(kind) + "/" + side.map(Name::fold).orElse("");
  }
}
