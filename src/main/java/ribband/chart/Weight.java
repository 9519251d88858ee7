package ribband.chart;

/** How much something stands out. */
public enum Weight {
  /** What a chart shows first of all. */
  STRONG("strong"),
  QUIET("quiet");

  private final String word;

  Weight(String word) {
    this.word = word;
  }

  /** As the style sheet has it. */
  public String word() {
    return word;
  }
}
