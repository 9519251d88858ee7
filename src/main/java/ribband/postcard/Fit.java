package ribband.postcard;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Fits words into a width: as large as one line holds, down to the smallest size; then in more
 * lines, broken at spaces; then with what does not fit left out behind an ellipsis. Nothing is ever
 * cut.
 *
 * @param width in units
 * @param largest size of the letters, in units
 * @param smallest in units; at most the largest
 * @param mostLines 1 or more
 */
record Fit(double width, double largest, double smallest, int mostLines) {
  /** From baseline to baseline, in ems: letters of two lines never touch. */
  static final double LINE = Lettering.ABOVE + Lettering.BELOW;

  private static final String ELLIPSIS = "…";
  private static final double STEP = 1;

  /** Nothing is smaller on a card, so that it can be read on a phone. */
  static final double SMALLEST = 28;

  Fit {
    if (smallest > largest || smallest < SMALLEST || mostLines < 1) {
      throw new IllegalArgumentException(largest + " to " + smallest + ", lines: " + mostLines);
    }
  }

  /**
   * Words in lines.
   *
   * @param size of the letters, in units
   */
  record Lines(List<String> lines, double size) {
    Lines {
      lines = List.copyOf(lines);
    }

    /** From the top of the first line to the bottom of the last, in units. */
    double height() {
      return lines.size() * LINE * size;
    }
  }

  Lines fit(String written, Hand hand) {
    String text = PlainWords.of(written);
    if (text.isEmpty()) {
      return new Lines(List.of(), smallest);
    }
    double one = width / hand.width(text);
    if (one >= smallest) {
      return new Lines(List.of(text), Math.min(largest, one));
    }
    for (int most = 2; most <= mostLines; most++) {
      for (double size = largest; size >= smallest; size -= STEP) {
        List<String> lines = wrapped(text, hand, size);
        if (lines.size() <= most && lines.stream().allMatch(line -> fits(line, hand, smallest))) {
          double widest = lines.stream().mapToDouble(hand::width).max().orElse(1);
          if (widest * size <= width) {
            return new Lines(lines, size);
          }
        }
      }
    }
    return new Lines(shortened(text, hand), smallest);
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

  /** At the smallest size, a long word broken where it must be. */
  private List<String> shortened(String text, Hand hand) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (!rest.isEmpty() && !fits(rest, hand, smallest) && lines.size() < mostLines - 1) {
      String line = longest(rest, "", hand);
      lines.add(line.strip());
      rest = rest.substring(line.length()).strip();
    }
    lines.add(fits(rest, hand, smallest) ? rest : longest(rest, ELLIPSIS, hand).strip() + ELLIPSIS);
    return lines;
  }

  /**
   * The longest beginning that fits before an ending: of whole words, if that is not too little.
   */
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
    boolean wholeWords = space > fitting / 2;
    return text.substring(0, wholeWords ? space : fitting);
  }
}
