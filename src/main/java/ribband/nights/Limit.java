package ribband.nights;

/** What can keep a night from bringing more pieces; of equal ones the first is told. */
public enum Limit {
  CLAMPS("clamps", "clamps bind"),
  CURE("cure", "cure binds"),
  HOURS("hours", "hours bind"),
  RESIN("resin", "resin binds");

  private final String word;
  private final String binds;

  Limit(String word, String binds) {
    this.word = word;
    this.binds = binds;
  }

  /** Whether its word is one of several things. */
  public boolean isPlural() {
    return this == CLAMPS || this == HOURS;
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
