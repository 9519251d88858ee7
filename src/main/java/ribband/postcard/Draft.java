package ribband.postcard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sheet while it is laid out. */
final class Draft {
  private final List<Drawn> drawn = new ArrayList<>();
  private final List<Words> words = new ArrayList<>();

  void draw(Drawn line) {
    drawn.add(line);
  }

  void letter(String text, Hand hand, double size, double x, double baseline) {
    words.add(new Words(text, hand, size, x, baseline));
  }

  /** The right end of the words stands at x. */
  void letterBefore(String text, Hand hand, double size, double x, double baseline) {
    letter(text, hand, size, x - hand.width(text) * size, baseline);
  }

  /**
   * Lines under one another.
   *
   * @param top of the first
   */
  void letter(Fit.Lines lines, Hand hand, double x, double top) {
    double baseline = top + Lettering.ABOVE * lines.size();
    for (String line : lines.lines()) {
      letter(line, hand, lines.size(), x, baseline);
      baseline += Fit.LINE * lines.size();
    }
  }

  Sheet done(Optional<Box> print) {
    return new Sheet(drawn, print, words);
  }
}
