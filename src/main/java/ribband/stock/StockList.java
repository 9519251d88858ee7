package ribband.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** What can be listed of the stock. */
public enum StockList {
  SHELF,
  MOVES,
  KITS,
  SPREADS;

  public static StockList read(String text) throws Unreadable {
    List<String> words = Arrays.stream(values()).map(StockList::word).toList();
    int which = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (which < 0) {
      throw new Unreadable("cannot be shown", Nearest.hint(text, words, ""));
    }
    return values()[which];
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
