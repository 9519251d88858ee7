package ribband.site;

import java.util.ArrayList;
import java.util.List;
import ribband.journal.Project;
import ribband.measure.Saying;

/** Makes the frame of each page. */
final class Frames {
  private final Book book;

  Frames(Book book) {
    this.book = book;
  }

  /**
   * @param page its path
   * @param sheet its name in the title block
   * @param title unique on the site, without the boat's name
   * @param description one sentence
   */
  Frame of(String page, String sheet, String title, String description) {
    Project project = book.journal().project();
    return new Frame(
        project.name(),
        project.what().orElse(""),
        page.equals(Addresses.HOME) ? project.name() : title + " – " + project.name(),
        sheet,
        description,
        Addresses.href(page, ""),
        book.journal().asOf().map(Saying::day).orElse(""),
        nav(page),
        book.release());
  }

  private List<Frame.Nav> nav(String page) {
    List<Frame.Nav> nav = new ArrayList<>();
    nav.add(item(page, "Boat", Addresses.HOME));
    nav.add(
        new Frame.Nav(
            "Months", Addresses.href(page, "index.html#months"), page.startsWith("months/")));
    nav.add(
        new Frame.Nav(
            "Phases", Addresses.href(page, "index.html#phases"), page.startsWith("phases/")));
    if (book.showsMoney()) {
      nav.add(item(page, "Money", Addresses.MONEY));
    }
    nav.add(item(page, "Records", Addresses.RECORDS));
    nav.add(item(page, "Pictures", Addresses.PICTURES));
    return nav;
  }

  private static Frame.Nav item(String page, String title, String path) {
    return new Frame.Nav(title, Addresses.href(page, path), page.equals(path));
  }
}
