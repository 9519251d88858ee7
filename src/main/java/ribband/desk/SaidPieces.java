package ribband.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ribband.measure.Ordered;
import ribband.spoken.Piece;

/**
 * Pieces that were said, in a form that an entry takes: of one kind all by side or none, of one
 * side all by number or none. What is told more exactly than the others of its kind is counted, and
 * how exactly it was told is lost.
 *
 * @param byKind as YAML, by name of the kind
 * @param lost in words
 */
record SaidPieces(Map<String, String> byKind, List<String> lost) {
  SaidPieces {
    byKind = Ordered.copy(byKind);
    lost = List.copyOf(lost);
  }

  static SaidPieces of(List<Piece> pieces) {
    Map<String, List<Piece>> kinds = new LinkedHashMap<>();
    pieces.forEach(
        piece -> kinds.computeIfAbsent(piece.kind().name(), n -> new ArrayList<>()).add(piece));
    Map<String, String> byKind = new LinkedHashMap<>();
    List<String> lost = new ArrayList<>();
    kinds.forEach((name, said) -> byKind.put(name, kind(said, lost)));
    return new SaidPieces(byKind, lost);
  }

  private static String kind(List<Piece> said, List<String> lost) {
    if (said.stream().allMatch(piece -> piece.side().isEmpty())) {
      return lot(said, lost);
    }
    if (said.stream().allMatch(piece -> piece.side().isPresent())) {
      Map<String, List<Piece>> sides = new LinkedHashMap<>();
      said.forEach(
          piece ->
              sides.computeIfAbsent(piece.side().orElseThrow(), s -> new ArrayList<>()).add(piece));
      return sides.entrySet().stream()
          .map(side -> Yaml.text(side.getKey()) + ": " + lot(side.getValue(), lost))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    said.stream()
        .filter(piece -> piece.side().isPresent() || isNumbered(piece))
        .forEach(piece -> lost.add(exactly(piece)));
    return count(said);
  }

  private static String lot(List<Piece> said, List<String> lost) {
    List<Integer> numbers = said.stream().flatMap(piece -> piece.numbers().stream()).toList();
    boolean areNumbered = said.stream().allMatch(SaidPieces::isNumbered);
    boolean isOnceEach = numbers.stream().map(Math::abs).distinct().count() == numbers.size();
    if (areNumbered && isOnceEach) {
      return numbers.toString();
    }
    said.stream().filter(SaidPieces::isNumbered).forEach(piece -> lost.add(exactly(piece)));
    return count(said);
  }

  private static boolean isNumbered(Piece piece) {
    return !piece.numbers().isEmpty();
  }

  private static String count(List<Piece> said) {
    return Integer.toString(said.stream().mapToInt(Piece::count).sum());
  }

  /** {@code strakes port 3}. */
  private static String exactly(Piece piece) {
    String which = isNumbered(piece) ? numbers(piece.numbers()) : Integer.toString(piece.count());
    return piece.kind().name() + piece.side().map(side -> " " + side).orElse("") + " " + which;
  }

  private static String numbers(List<Integer> numbers) {
    return numbers.stream().map(n -> Integer.toString(n)).collect(Collectors.joining(", "));
  }
}
