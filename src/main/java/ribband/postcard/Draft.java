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

  /** Lines under one another, the first on this baseline. */
  void letter(Lines lines, double x, double baseline) {
    double at = baseline;
    for (String line : lines.lines()) {
      words.add(new Words(line, lines.hand(), lines.size(), x, at));
      at += lines.leading() * lines.size();
    }
  }

  Sheet done(Optional<Box> print) {
    return new Sheet(drawn, print, words);
  }
}
