package ribband.measure;

/** What a quantity measures; two quantities can be compared only within one. */
public enum Dimension {
  VOLUME("a volume", "2 fl oz", "fl oz"),
  MASS("a weight", "12 oz", "oz"),
  LENGTH("a length", "8 ft", "in"),
  AREA("an area", "2 in x 8 ft", "in2"),
  BOARDS("board feet", "12 board feet", "board feet"),
  COUNT("a count", "40", "screws");

  private final String words;
  private final String example;
  private final String unit;

  Dimension(String words, String example, String unit) {
    this.words = words;
    this.example = example;
    this.unit = unit;
  }

  public String words() {
    return words;
  }

  public String example() {
    return example;
  }

  /** One that it is measured in, for advice. */
  public String unit() {
    return unit;
  }
}
