package ribband.measure;

/** What a quantity measures; two quantities can be compared only within one. */
public enum Dimension {
  VOLUME("a volume", "2 fl oz"),
  MASS("a weight", "12 oz"),
  LENGTH("a length", "8 ft"),
  AREA("an area", "2 in x 8 ft"),
  BOARDS("board feet", "12 board feet"),
  COUNT("a count", "40");

  private final String words;
  private final String example;

  Dimension(String words, String example) {
    this.words = words;
    this.example = example;
  }

  public String words() {
    return words;
  }

  public String example() {
    return example;
  }
}
