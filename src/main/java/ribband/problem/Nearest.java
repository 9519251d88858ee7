package ribband.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the right name nearest to a mistyped one. */
public final class Nearest {
  private static final int FARTHEST = 2;
  private static final int MOST_LISTED = 12;
  private static final int LONGEST = 255;

  private Nearest() {}

  /**
   * The name that is at most two slips of the hand away (a third of the word at most), or that
   * begins like it; the first in the given order among equals.
   */
  public static Optional<String> to(String typed, Collection<String> names) {
    String wanted = fold(typed);
    if (wanted.length() > LONGEST) {
      return Optional.empty();
    }
    int limit = Math.min(FARTHEST, wanted.length() / 3);
    DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance();
    return names.stream()
        .filter(
            name ->
                distance.apply(wanted, fold(name)) <= limit
                    || (wanted.length() >= 3 && fold(name).startsWith(wanted)))
        .min(Comparator.comparingInt(name -> distance.apply(wanted, fold(name))));
  }

  /**
   * What to say after an unknown name: {@code did you mean "hours"?}, or the names there are.
   *
   * @param none what to say where there are no names at all
   */
  public static String hint(String typed, Collection<String> names, String none) {
    if (names.isEmpty()) {
      return none;
    }
    return to(typed, names)
        .map(name -> "did you mean " + OneLine.quote(name) + "?")
        .orElseGet(
            () -> "there " + (names.size() == 1 ? "is " : "are ") + list(List.copyOf(names)));
  }

  private static String list(List<String> names) {
    if (names.size() <= MOST_LISTED) {
      return String.join(", ", names);
    }
    return String.join(", ", names.subList(0, MOST_LISTED))
        + " and "
        + (names.size() - MOST_LISTED)
        + " more";
  }

  private static String fold(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }
}
