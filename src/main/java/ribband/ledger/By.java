package ribband.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** What a tally has a row for each of. */
public enum By {
  MONTH,
  YEAR,
  PHASE,
  WEEK,
  ENTRY,
  RECORD;

  /**
   * Reads {@code month}, {@code year}, {@code phase}, {@code week}, {@code entry} or {@code
   * record}.
   */
  public static By read(String text) throws Unreadable {
    List<String> words = Arrays.stream(values()).map(By::word).toList();
    int which = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (which < 0) {
      throw new Unreadable("is nothing to add up by", Nearest.hint(text, words, ""));
    }
    return values()[which];
  }

  /** Also the name of the first column. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
