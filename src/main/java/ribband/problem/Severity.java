package ribband.problem;

/** How much a problem weighs: an error stops all figures, a warning only speaks. */
public enum Severity {
  ERROR("error"),
  WARNING("warning");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  @Override
  public String toString() {
    return word;
  }
}
