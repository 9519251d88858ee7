package ribband.postcard;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Fits words into a width: in one line, as large as it holds, down to the smallest size; then in
 * more lines, broken at spaces; then with what does not fit left out behind an ellipsis. Nothing is
 * ever cut.
 *
 * @param width in units
 * @param largest size of the letters, in units
 * @param smallest in units; at most the largest
 * @param mostLines 1 or more
 */
record Fit(double width, double largest, double smallest, int mostLines) {
  /** Nothing is smaller on a card, so that it can be read on a phone. In units. */
  static final double SMALLEST = 28;

  private static final String ELLIPSIS = "…";
  private static final double STEP = 1;

  Fit {
    if (smallest > largest || smallest < SMALLEST || mostLines < 1) {
      throw new IllegalArgumentException(smallest + " to " + largest + ", lines: " + mostLines);
    }
  }

  Lines fit(String written, Hand hand) {
    String text = PlainWords.of(written);
    if (text.isEmpty()) {
      return Lines.of(List.of(), hand, smallest, Said.WHOLE);
    }
    double one = width / hand.width(text);
    if (one >= smallest) {
      return Lines.of(List.of(text), hand, Math.min(largest, one), Said.WHOLE);
    }
    return wrappedWhole(text, hand).orElseGet(() -> broken(text, hand));
  }

  /** In as few lines as can be, as large as they then are. */
  private Optional<Lines> wrappedWhole(String text, Hand hand) {
    List<String> fewest = List.of();
    double itsSize = 0;
    int most = mostLines;
    for (double size = largest; size >= smallest && most > 1; size -= STEP) {
      List<String> lines = wrapped(text, hand, size);
      if (lines.size() <= most && allFit(lines, hand, size)) {
        fewest = lines;
        itsSize = size;
        most = lines.size() - 1;
      }
    }
    return fewest.isEmpty()
        ? Optional.empty()
        : Optional.of(Lines.of(fewest, hand, itsSize, Said.WHOLE));
  }

  private boolean allFit(List<String> lines, Hand hand, double size) {
    return lines.stream().allMatch(line -> fits(line, hand, size));
  }

  private boolean fits(String line, Hand hand, double size) {
    return hand.width(line) * size <= width;
  }

  /** At spaces only: a word that is too long stands alone in its line. */
  private List<String> wrapped(String text, Hand hand, double size) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || fits(longer, hand, size)) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return lines;
  }

  /** At the smallest size, and a long word where it must be. */
  private Lines broken(String text, Hand hand) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (!fits(rest, hand, smallest) && lines.size() < mostLines - 1) {
      String line = longest(rest, "", hand);
      lines.add(line.strip());
      rest = rest.substring(line.length()).strip();
    }
    boolean whole = fits(rest, hand, smallest);
    lines.add(whole ? rest : longest(rest, ELLIPSIS, hand).strip() + ELLIPSIS);
    return Lines.of(lines, hand, smallest, whole ? Said.WHOLE : Said.SHORTENED);
  }

  /** The longest beginning that fits before an ending: of whole words, unless one fills lines. */
  private String longest(String text, String ending, Hand hand) {
    BreakIterator places = BreakIterator.getCharacterInstance(Locale.ROOT);
    places.setText(text);
    int fitting = 0;
    for (int end = places.next(); end != BreakIterator.DONE; end = places.next()) {
      if (!fits(text.substring(0, end).strip() + ending, hand, smallest)) {
        break;
      }
      fitting = end;
    }
    int space = text.lastIndexOf(' ', fitting);
    String next = space < 0 ? text : text.substring(space + 1).split(" ", 2)[0];
    return text.substring(0, fits(next, hand, smallest) ? space : fitting);
  }
}
