package ribband.past;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** What a column of the spreadsheet tells, and the plain words that name it. */
public enum What {
  DATE(Set.of("date", "dates"), Set.of("day", "when", "night", "evening")),

  /** An entry's name, as {@code tally --by entry} tells it; it begins with the date. */
  ENTRY(Set.of("entry"), Set.of()),

  /** Minutes are hours in another unit: a sheet that has both has to say which to take. */
  HOURS(
      Set.of("hours", "minutes", "min", "mins"),
      Set.of("hour", "h", "hr", "hrs", "time", "duration", "worked", "time-spent", "time-worked")),

  PHASE(
      Set.of("phase", "phases"),
      Set.of("stage", "task", "part", "job", "work", "category", "section")),

  COST(
      Set.of("cost", "costs"),
      Set.of("money", "spent", "price", "amount", "paid", "expense", "expenses", "money-spent")),

  NOTE(
      Set.of("note", "notes"),
      Set.of(
          "what",
          "comment",
          "comments",
          "description",
          "details",
          "remark",
          "remarks",
          "done",
          "work-done",
          "what-was-done",
          "text"));

  private final Set<String> own;
  private final Set<String> others;

  What(Set<String> own, Set<String> others) {
    this.own = own;
    this.others = others;
  }

  /** As it is written in {@code --column hours=B}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static What read(String text) throws Unreadable {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    List<String> words = Arrays.stream(values()).map(What::word).toList();
    int which = words.indexOf(wanted);
    if (which < 0) {
      throw new Unreadable("names nothing that is brought", Nearest.hint(wanted, words, ""));
    }
    return values()[which];
  }

  /**
   * How well a word names it: 2 its own name, 1 another word for it, 0 neither.
   *
   * @param word in small letters, joined by hyphens
   */
  int fit(String word) {
    return own.contains(word) ? 2 : others.contains(word) ? 1 : 0;
  }
}
