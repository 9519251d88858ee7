package ribband.postcard;

/** How digits stand: each as wide as it is, or all as wide as one another. */
enum Figures {
  PROPORTIONAL,
  TABULAR;

  boolean isFigure(int character) {
    return this == TABULAR && character >= '0' && character <= '9';
  }
}
