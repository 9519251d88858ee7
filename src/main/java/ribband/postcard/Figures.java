package ribband.postcard;

/** How digits stand: as wide as each is, or all as wide as one another, under others. */
enum Figures {
  PROPORTIONAL,
  TABULAR;

  int glyph(Alphabet alphabet, int character) {
    return switch (this) {
      case PROPORTIONAL -> alphabet.glyph(character);
      case TABULAR -> alphabet.tabular(character);
    };
  }
}
