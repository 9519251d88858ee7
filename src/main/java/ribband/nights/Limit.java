package ribband.nights;

/** What can keep a night from bringing more pieces; of equal ones the first is told. */
public enum Limit {
  CLAMPS("clamps", "clamps are the limit"),
  CURE("cure", "cure is the limit"),
  HOURS("hours", "hours are the limit"),
  RESIN("resin", "resin is the limit");

  private final String word;
  private final String binds;

  Limit(String word, String binds) {
    this.word = word;
    this.binds = binds;
  }

  /** As data files have it. */
  public String word() {
    return word;
  }

  /** To a person. */
  public String binds() {
    return binds;
  }
}
