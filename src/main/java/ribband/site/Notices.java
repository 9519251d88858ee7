package ribband.site;

import java.util.ArrayList;
import java.util.List;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.measure.Saying;

/** Short notices of entries, for lists. */
final class Notices {
  private final Book book;
  private final String page;

  Notices(Book book, String page) {
    this.book = book;
    this.page = page;
  }

  /**
   * An entry in a list.
   *
   * @param titled whether its builder gave it a title
   * @param title that, else its first words
   * @param opening its text as it begins, without what stands in the title; may be empty
   * @param hours said; empty for none
   * @param cost said; empty for none or hidden
   * @param cover none or one
   */
  record View(
      boolean titled,
      String title,
      String href,
      String date,
      String weekday,
      String day,
      String phases,
      String hours,
      String cost,
      String opening,
      List<Prints.View> cover) {}

  List<View> of(List<Leaf> leaves, boolean firstOnPage) {
    List<View> views = new ArrayList<>();
    boolean first = firstOnPage;
    for (Leaf leaf : leaves) {
      View view = of(leaf, first);
      first &= view.cover().isEmpty();
      views.add(view);
    }
    return views;
  }

  private View of(Leaf leaf, boolean firstOnPage) {
    Entry entry = leaf.entry();
    String name = EntryNames.of(leaf);
    return new View(
        EntryNames.isTitled(entry) || leaf.opening().isEmpty(),
        name,
        Addresses.href(page, Addresses.entry(entry)),
        entry.date().toString(),
        Saying.weekday(entry.date()),
        Saying.day(entry.date()),
        phases(book, entry),
        entry.totalHours().isZero() ? "" : Saying.hoursInWords(entry.totalHours()),
        entry.totalCost().isZero() ? "" : book.words().money(entry.totalCost()),
        EntryNames.afterName(leaf),
        new Prints(page).cover(leaf, firstOnPage));
  }

  static String phases(Book book, Entry entry) {
    return Saying.list(entry.phases().stream().map(book::phaseTitle).toList());
  }
}
