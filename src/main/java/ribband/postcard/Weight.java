package ribband.postcard;

/** The weights that cards are lettered in. */
enum Weight {
  LIGHT,
  REGULAR,
  BOLD;

  private volatile Alphabet alphabet;

  /** Read from the program when first used. */
  Alphabet alphabet() {
    Alphabet known = alphabet;
    if (known == null) {
      synchronized (this) {
        known = alphabet;
        if (known == null) {
          known = Alphabet.read(this);
          alphabet = known;
        }
      }
    }
    return known;
  }
}
