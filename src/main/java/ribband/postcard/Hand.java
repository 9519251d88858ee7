package ribband.postcard;

import java.util.Objects;

/** How words are lettered, whatever their size. */
record Hand(Weight weight, Figures figures, Ink ink) {
  Hand {
    Objects.requireNonNull(weight);
    Objects.requireNonNull(figures);
    Objects.requireNonNull(ink);
  }

  static Hand of(Weight weight, Ink ink) {
    return new Hand(weight, Figures.PROPORTIONAL, ink);
  }

  /** The width of words an em high, in ems. */
  double width(String text) {
    return Lettering.of(text, this).width();
  }
}
