package ribband.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    return counted(said, lost);
  }

  private static String lot(List<Piece> said, List<String> lost) {
    List<Integer> numbers = said.stream().flatMap(piece -> piece.numbers().stream()).toList();
    boolean isNumbered = said.stream().noneMatch(piece -> piece.numbers().isEmpty());
    boolean isOnceEach = numbers.stream().map(Math::abs).distinct().count() == numbers.size();
    return isNumbered && isOnceEach ? numbers.toString() : counted(said, lost);
  }

  private static String counted(List<Piece> said, List<String> lost) {
    said.forEach(piece -> exactly(piece).ifPresent(lost::add));
    return Integer.toString(said.stream().mapToInt(Piece::count).sum());
  }

  /** {@code strakes port 3}; empty where a count tells it all. */
  private static Optional<String> exactly(Piece piece) {
    if (piece.side().isEmpty() && piece.numbers().isEmpty()) {
      return Optional.empty();
    }
    String which =
        piece.numbers().isEmpty() ? Integer.toString(piece.count()) : numbers(piece.numbers());
    return Optional.of(
        piece.kind().name() + piece.side().map(side -> " " + side).orElse("") + " " + which);
  }

  private static String numbers(List<Integer> numbers) {
    return numbers.stream().map(n -> Integer.toString(n)).collect(Collectors.joining(", "));
  }
}
