package ribband.joints;

/** How far a joint or a coat has come. */
public enum State {
  AHEAD("ahead", "still ahead"),
  SOFT("soft", "soft"),
  CLAMPED("in clamps", "in clamps"),
  CURING("curing", "curing"),
  CURED("cured", "cured"),
  SETTING("setting", "too soon to coat again"),
  OPEN("recoat", "may be coated again"),
  SHUT("sand first", "sand before the next coat"),
  COVERED("covered", "coated over"),
  UNKNOWN("unknown", "unknown how far");

  private final String word;
  private final String said;

  State(String word, String said) {
    this.word = word;
    this.said = said;
  }

  /** As data files have it. */
  public String word() {
    return word;
  }

  /** To a person. */
  public String said() {
    return said;
  }
}
