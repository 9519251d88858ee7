package ribband.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.measure.Saying;

/** Gives each entry's page a title that no other has. */
final class EntryTitles {
  private EntryTitles() {}

  /** Titles by the entries' files: the entry's own and its day; its address too where two agree. */
  static Map<String, String> of(List<Leaf> leaves) {
    Map<String, Integer> uses = new HashMap<>();
    leaves.forEach(leaf -> uses.merge(plain(leaf.entry()), 1, Integer::sum));
    Map<String, String> titles = new TreeMap<>();
    for (Leaf leaf : leaves) {
      Entry entry = leaf.entry();
      boolean unique = uses.get(plain(entry)) == 1;
      titles.put(entry.file(), unique ? plain(entry) : plain(entry) + ", " + entry.address());
    }
    return titles;
  }

  private static String plain(Entry entry) {
    String day = Saying.day(entry.date());
    return EntryNames.isTitled(entry) ? entry.title() + ", " + day : day;
  }
}
