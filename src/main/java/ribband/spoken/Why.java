package ribband.spoken;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribband.problem.Nearest;
import ribband.problem.OneLine;

/** Says why a part was not understood, where its readers had nothing to say. */
final class Why {
  private static final Pattern FIGURE = Pattern.compile("[0-9]{1,40}(?:[.,][0-9]{1,40})?");

  /** Longer parts are remarks. */
  private static final int LONGEST_SLIP = 6;

  private Why() {}

  static String unknown(Part part, Lexeme word, String outcome) {
    if (!word.name().isNothing() || word.plain().matches("[-−]?[0-9].*")) {
      return "says more than one thing; put a comma between them";
    }
    return OneLine.quote(part.typed(word)) + " is not known here, so " + outcome;
  }

  /** Empty for what looks like a remark. */
  static Optional<String> of(Part part, Vocabulary names) {
    boolean figure = part.words().stream().anyMatch(Why::isFigure);
    if (figure && part.words().stream().allMatch(w -> isFigure(w) || w.isIn(SmallWords.AT_WORK))) {
      return Optional.of("may be hours, money or pieces; write 2.75 h, or say what it was for");
    }
    if (part.size() > LONGEST_SLIP || (!figure && part.size() > 1)) {
      return Optional.empty();
    }
    return part.words().stream()
        .filter(word -> word.isWord())
        .flatMap(word -> near(word, names).stream())
        .findFirst()
        .map(name -> "did you mean " + OneLine.quote(name) + "?");
  }

  /** The name a word is a slip of; a slip seldom changes the first letter. */
  static Optional<String> near(Lexeme word, Vocabulary names) {
    if (!word.name().isNothing()) {
      return Optional.empty();
    }
    return Stream.of(names.phases(), names.kinds())
        .flatMap(known -> Nearest.to(word.plain(), known).stream())
        .filter(name -> name.regionMatches(true, 0, word.plain(), 0, 1))
        .findFirst();
  }

  private static boolean isFigure(Lexeme word) {
    return word.whole().isPresent() || FIGURE.matcher(word.plain()).matches();
  }
}
