package ribband.site;

import java.util.ArrayList;
import java.util.List;
import ribband.journal.Entry;
import ribband.journal.Project;
import ribband.measure.Saying;

/** Makes the frame of each page. */
final class Frames {
  private final Book book;

  Frames(Book book) {
    this.book = book;
  }

  /**
   * The frame of a page with figures.
   *
   * @param page its path
   * @param sheet its name in the title block
   * @param title unique on the site, without the boat's name
   * @param description one sentence
   */
  Frame of(String page, String sheet, String title, String description) {
    String asOf = book.journal().asOf().map(Saying::day).orElse("");
    return frame(page, sheet, title, description, "", asOf);
  }

  /** The frame of an entry's page: later nights leave it as it is. */
  Frame of(Entry entry, String title, String description) {
    String written = Saying.day(entry.date());
    return frame(Addresses.entry(entry), entry.title(), title, description, written, "");
  }

  private Frame frame(
      String page, String sheet, String title, String description, String written, String asOf) {
    Project project = book.journal().project();
    return new Frame(
        project.name(),
        project.what().orElse(""),
        page.equals(Addresses.HOME) ? project.name() : title + " – " + project.name(),
        sheet,
        description,
        Addresses.href(page, ""),
        written,
        asOf,
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
    if (book.hasMaterials()) {
      nav.add(item(page, "Materials", Addresses.MATERIALS));
    }
    if (book.ahead().isPresent()) {
      nav.add(item(page, "Ahead", Addresses.AHEAD));
    }
    nav.add(item(page, "Records", Addresses.RECORDS));
    if (book.hasLessons()) {
      nav.add(item(page, "Lessons", Addresses.LESSONS));
    }
    nav.add(item(page, "Pictures", Addresses.PICTURES));
    return nav;
  }

  private static Frame.Nav item(String page, String title, String path) {
    return new Frame.Nav(title, Addresses.href(page, path), page.equals(path));
  }
}
