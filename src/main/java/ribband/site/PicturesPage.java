package ribband.site;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import ribband.album.Leaf;
import ribband.measure.Saying;

/** Every picture, month by month, the newest month first. */
final class PicturesPage {
  private final Book book;

  PicturesPage(Book book) {
    this.book = book;
  }

  /**
   * What the template shows.
   *
   * @param count how many pictures, in words
   */
  record View(String count, List<Month> months) {}

  /** A month's pictures. */
  record Month(String title, String href, List<Prints.View> prints) {}

  View view() {
    List<Map.Entry<YearMonth, List<Leaf>>> months = new ArrayList<>(book.shownByMonth().entrySet());
    Collections.reverse(months);
    List<Month> shown = new ArrayList<>();
    for (Map.Entry<YearMonth, List<Leaf>> month : months) {
      List<Prints.View> prints =
          new Prints(Addresses.PICTURES).gallery(month.getValue(), shown.isEmpty());
      if (!prints.isEmpty()) {
        shown.add(
            new Month(
                Saying.month(month.getKey()),
                Addresses.href(Addresses.PICTURES, Addresses.month(month.getKey())),
                prints));
      }
    }
    return new View(Saying.counted(book.album().pictures().size(), "picture", "pictures"), shown);
  }
}
