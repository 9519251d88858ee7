package ribband.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Project;
import ribband.journal.SiteSettings.Robots;
import ribband.measure.Saying;
import ribband.site.Faces.Face;

/** Makes the frame of each page. */
final class Frames {
  private final Book book;
  private final Optional<WholeAddresses> addresses;

  Frames(Book book) {
    this.book = book;
    this.addresses = book.journal().project().site().address().uri().map(WholeAddresses::new);
  }

  /**
   * The frame of a page with figures.
   *
   * @param page its path
   * @param sheet its name in the title block
   * @param title unique on the site, without the boat's name
   * @param description one sentence
   * @param face the picture that stands for it
   */
  Frame of(String page, String sheet, String title, String description, Optional<Face> face) {
    String asOf = book.journal().asOf().map(Saying::day).orElse("");
    String shared = page.equals(Addresses.HOME) ? book.journal().project().name() : title;
    return frame(page, sheet, title, description, "", asOf, shared(page, shared, "", face));
  }

  /** The frame of an entry's page: later nights leave it as it is. */
  Frame of(Entry entry, String title, String description, Optional<Face> face) {
    String page = Addresses.entry(entry);
    String written = Saying.day(entry.date());
    List<Frame.Shared> shared = shared(page, entry.title(), entry.date().toString(), face);
    return frame(page, entry.title(), title, description, written, "", shared);
  }

  private List<Frame.Shared> shared(String page, String title, String day, Optional<Face> face) {
    return addresses.stream()
        .map(
            whole ->
                new Frame.Shared(
                    whole.of(page),
                    title,
                    day.isEmpty() ? "website" : "article",
                    day,
                    face.stream().map(shown -> image(whole, shown)).toList(),
                    whole.of(Addresses.FEED_XML),
                    whole.of(Addresses.FEED_JSON)))
        .toList();
  }

  private static Frame.Image image(WholeAddresses whole, Face face) {
    return new Frame.Image(whole.of(face.path()), face.width(), face.height(), face.alt());
  }

  private Frame frame(
      String page,
      String sheet,
      String title,
      String description,
      String written,
      String asOf,
      List<Frame.Shared> shared) {
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
        book.release(),
        project.site().robots() == Robots.NONE ? "none" : "",
        shared);
  }

  private List<Frame.Nav> nav(String page) {
    List<Frame.Nav> nav = new ArrayList<>();
    for (MainPage main : MainPage.of(book)) {
      nav.add(
          new Frame.Nav(main.title(), Addresses.href(page, main.path()), page.equals(main.path())));
      if (main == MainPage.BOAT) {
        nav.add(part(page, "Months", "months"));
        nav.add(part(page, "Phases", "phases"));
      }
    }
    return nav;
  }

  /** A part of the first page, and the folder of the pages that it lists. */
  private static Frame.Nav part(String page, String title, String name) {
    return new Frame.Nav(
        title, Addresses.href(page, Addresses.HOME + "#" + name), page.startsWith(name + "/"));
  }
}
